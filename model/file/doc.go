// Package file reads and writes the TOML file of one harness.
//
// Reading is strict. An unknown key, a wrong type, a word outside its list, a
// number that is none, a negative length, an id given twice, a reference to an id
// that is not there, a loop in the tree: each is an Error with file, line, key and
// what is allowed, and all of them are reported at once. Nothing is dropped or
// repaired in silence. What can be drawn but not built loads; calc says what is
// wrong with it.
//
// Writing is stable: a harness has one text. Keys stand in one order, "=" aligned
// within a table, floats with a decimal point; what was left out stays out. A text
// that was written here is read and written again byte for byte.
//
// The package schema names the keys of each table in order, each with its kind and its
// place in the Go struct, and drives both ways, so that they cannot drift.
//
// The comment block at the head of a file is kept. Other comments are counted
// (Document.LostComments) so that a program can say what a save would lose.
//
// Saving is atomic: the file is at every moment the whole old or the whole new
// one, and the old one stays as FILE.bak.
//
// The package knows nothing of unsaved edits, of standard input or of catalogues.
package file
