// Package farcolumn finds the column of the far ends of a table by what its heading says of a side and by all of its cells, where no
// heading is a word for an end.
//
// It is asked for columns that nobody else knows. What a person said of a column holds.
package farcolumn
