// Package record makes a table of a list that tells each wire by a block of rows, of which each begins with the heading of what it says.
//
//	Wire 1
//	From: valve block, pin 3
//	To: box J2, pin 7
//	Colour: red
//
// It says nothing of what the values mean; it is asked before anyone looks for tables.
package record
