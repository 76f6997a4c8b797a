// Package grid takes apart tables whose rows are no cavities and no wires, and gives each cell a row: the face of a connector, a
// row for each device, a row for each circuit with a column for each pole, a table that stands on its side, tables beside each other.
//
// It says what the columns of the rows it makes are by their headings alone; packages block and reading go on from there.
package grid
