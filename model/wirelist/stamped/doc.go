// Package stamped makes a table of the lines of a log or of a chat that tell a wire each, among others that tell none: each begins with
// its day or its hour, and who said it.
//
//	04 Mar  New wire: lift pump, from DB1 terminal 4 to LP1 pin 1, 2.5 mm2, red.
//	04 Mar  Ran engine 20 min, no leaks.
//	[18:03] Teo: dash plug pin 2 to relay box pin 86. white 20awg. fan trigger
//
// It is asked before anyone looks for tables; lines in the short forms of a language are for package penned.
package stamped
