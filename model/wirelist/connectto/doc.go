// Package connectto reads lines that tell the pins of one thing alone, below a sentence that says what the thing is wired to.
//
// Words. The thing is what is wired, the place what it is wired to: "For the bell push solder the wires onto the gate port this way".
//
//	For the bell push solder          Tide gauge wired to pins 4 to 6:     Header to lamp chip for the lamps:
//	the wires onto the gate port:
//	  (pin 1) ---> Supply             BEAT: pin 4                          pin 3  BELL   GPIO4
//	  (pin 3) ---> Ring               RUN: pin 5                           pin 5  LAMP   GPIO7
//	  (pin 5) ---> Return             LIFT: pin 6                          pin 8  LIFT   GPIO9
//
// It makes rows with headings of their own, before anyone looks for tables. Lines below a sentence that names no two things stay as they
// are: other packages read them.
package connectto
