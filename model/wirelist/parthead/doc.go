// Package parthead reads tables whose columns are headed by the parts that the wires join, with the pins of each below it.
//
// Words. A part is what has pins: a board, a plug, a chip. The near part is the one in the first column of pins, the far part the other
// one that the wires go to. A heading may stand in two rows: the part above, what of it below.
//
//	Probe    | Target | Lead    | Test         Signal | Desk | Lamp
//	plug     | pins   | colours | header              | 1, 4 | NC
//	1 (CLK)  |        | black   |              TXD    | 2    | 2
//	2 (GND)  | GND    | white   | 6            RXD    | 3    | 1
//
// It makes rows with headings of their own, and the report says which parts it took. A table that could be of something else stays
// as it is.
package parthead
