// Package block finds the tables of a sheet: the runs of rows that are one table, side by side or
// below one another, with the texts above each and the row of its headings.
//
// Its words:
//
//   - block: one table, before anything is said of what its columns mean.
//   - head: the row of its headings; a block may have none.
//   - path: the headings of Markdown that a block stands below, the outermost first.
//   - band: the columns of a sheet that one of several tables beside each other takes.
//   - point: one line of a list, "* 3 - Horn"; a run of such lines may be a pin table.
//
// A table ends where another begins: at a row that is headings, known or strange, at the first row
// of the next table of Markdown. Every row of the sheet is in one block or is given back as left over.
//
// It says nothing about what a table is of, and reads no value: packages reading and row do.
package block
