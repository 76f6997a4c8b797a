// Package stripsides makes rows of wires of the tables of a strip of terminals, or of a junction box, that tell in each row what comes in
// on one side of a terminal and what goes out on the other, each with its own colour, size or number: these are two wires.
//
//	JB1 left wall
//	         | Incoming          | Outgoing          |
//	Terminal | From | Pin | Col. | To  | Pin | Col.  | Signal          From | Pin | To  | Pin | Col. | Signal
//	1        | X5   | 1   | red  | Y1  | 1   | black | Brush up   ->   X5   | 1   | JB1 | 1   | red  | Brush up
//	                                                                  JB1  | 1   | Y1  | 1   | black | Brush up
//
// Where both sides have their values together, a wire goes through its terminal: that is for the readers of bulkheads.
package stripsides
