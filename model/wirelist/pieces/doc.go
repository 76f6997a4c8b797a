// Package pieces makes a table of lines that no other package could read: each is parted at its marks, and each piece is asked what it is.
//
//	inj 1 pin 1, blue, 20
//	inj 1 pin 2, red, to relay 87
//	Fan relay 87 to Fan motor 1      black/green   fan
//
// It is asked last, about the rows that belong to no table of wires. A line counts where every piece of it is understood: an end, a
// colour, a size, a short name or a remark in brackets. It makes a table only where nearly all of the lines count.
package pieces
