// Package row reads a block of a list row by row: each cavity or wire that a row names
// becomes an item of the draft, with its ends, values, cable, state and notes.
//
// Its words:
//
//   - item: what one row says of one cavity or one wire.
//   - owner: the connector of a pin table, for the rows that do not name it.
//   - title: a row above the headings that says which connector the table is of.
//
// What it does not understand it keeps in the note of its wire and enters as a finding.
//
// It does not join the two ends of a wire, make units, or judge one row by another table:
// package join does, once every list is read.
package row
