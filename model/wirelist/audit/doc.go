// Package audit holds what an import made against the lists it made it of, after all of it is
// done. It knows no habit of any list: it walks over every row that has cells and asks whether
// the row became a wire, whether each of its cells stands in that wire, and what could be wrong
// with it.
//
// Its words:
//
//   - table: one table of a list with the meaning that each column was given, or none.
//   - missing: a cell of a row that became a wire, and that stands nowhere in the wire.
//   - odd: a row whose cells are others than those of the rows about it.
//   - doubt: one line of the report for a table, with the rows that it is said of.
//
// It changes nothing of the harness. A plain, sound list shows no doubt.
//
// The shares by which a column or a row is taken for unlike (nine of ten, a half, a third) have no source: they are those at
// which plain lists of our own show no doubt and damaged ones do.
package audit
