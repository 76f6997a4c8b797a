// Package shape says what the headings of a table mean, which side each column is of, and what
// the cells of a column change in that.
//
// Its words:
//
//   - block: a row of headings, the titles above it and the rows below.
//   - column: one column of a block, with its field and how its numbers are read.
//   - headings: the vocabulary and the recipe that columns are looked up in.
//   - pin table: a block whose rows are the cavities of one connector.
//   - run: one cell that holds both ends of a wire.
//   - to settle: to decide what a heading alone leaves open, from the rows below it.
//
// It reads no value into a wire and reports nothing: package row does both.
package shape
