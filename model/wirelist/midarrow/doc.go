// Package midarrow reads tables in which a column of arrows stands between the two ends of the wires.
//
// Words. An arrow is dashes with a head or without, a stroke the same in a cell of its own. A side is the columns on one side of the
// arrows: those next to them hold the end, a pin and the name of the pin, in two columns or in one cell. What the headings of a side say
// beside the words for columns is its part.
//
//	Winch | Pin | Direction | Helm
//	HOIST | 3   | -->       | UP 5
//	GND   | 25  | -         | GND 7
//	ACK   | 13  | <--       | OK 1
//
// It makes rows with headings of their own. A table whose sides can't be told so stays as it is.
package midarrow
