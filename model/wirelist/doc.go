// Package wirelist reads wire lists that other people made and turns them into a
// harness.
//
// Words. A table is one sheet of a workbook or the whole of a text file, its rows
// with the line each stands on. A block is a header row with what belongs to it:
// the title rows above, the data rows below. A pin table says what is in each
// cavity of one connector; a from-to list gives both ends of each wire. A field is
// what a column means. A recipe is what a person said a column means. A finding is
// one thing the report says about a place in a list.
//
// Two steps, both pure functions of what they are given: Read, of package table, makes
// tables of bytes, Import makes a harness and a report of tables. Neither opens a file.
//
// The way through Import, a file each: struck.go leaves out what a workbook does not
// show, beside.go parts tables that stand side by side, block.go a table into blocks;
// header.go finds their headings, headwords.go and sides.go what these mean, settle.go
// and run.go what their rows say of that, title.go and rows.go which connector a block
// is of, aside.go what among its rows is none. row.go reads one row, pins.go and
// rowends.go its ends, values.go and notes.go the rest, state.go whether a place is
// free. nets.go joins what two tables say of one wire, cables.go and drains.go make
// units, judge.go holds the whole against itself, tree.go finds the branches, make.go
// makes the harness.
//
// What is not understood is never guessed away. It stays as text in the note of its
// wire and as a finding with file, row and column. A connector, a far end, a length
// that the list does not give is left out and the report says so.
//
// What it does not do: it does not judge whether the harness can be built; that is
// the work of calc.
package wirelist
