// Package manywires makes tables of lines without headings that tell several wires each: all of one plug, all of one colour, or both
// sides of one terminal.
//
//	brake left, 2 way: black gnd / white cut
//	J3 (coils) 1 brown left coil, 2 red right coil, 3 key
//	blue: pump 1 to stud 4 (1.5); lamp 2 to lamp 3 (1)
//	X1.4  outside brown 2.5 from mains L1  |  inside black 2.5 to Q1.1
//
// What the pieces are is told by all lines together (package toldcells).
package manywires
