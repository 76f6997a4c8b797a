// Package runon adds to the row of a cavity the rows below it that only go on with its texts, as a table drawn in narrow columns
// has them. And it fills in what a row takes of the row above: what a mark says, and what is written once for several rows.
//
// It takes formulas without a value out of a row, too.
//
// It reads no value: package row does, of the rows that are left.
package runon
