// Package schema holds the keys of a harness file: one table of keys for each TOML
// table, in the order they are written, each with its kind, its bounds and its place
// in the Go struct. The same tables read and write, so that the two cannot drift.
//
// Its words:
//
//   - table: the schema of one TOML table that fills a struct of model.
//   - key: one key of it, with how its value is read and how its text is written.
//   - part: a table, or a list of tables, inside a table.
//   - place: where a reader is, as a path for the program and in words for a person.
//   - fault: what is wrong with a value, and what is allowed.
//
// To add a key, add one line to the table it belongs to, and set it in
// testdata/every-key.toml; a test fails without.
//
// The package knows no lines, no comments and no disk: model/file finds the line of a
// fault and reads and saves the text. It does not judge what can be built.
package schema
