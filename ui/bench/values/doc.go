// Package values is the pages on which every key of the file format is changed: one page a record,
// one row a key. The rows are made from model/file/schema; a new key needs only its label (package label).
//
// Its words:
//
//   - record: one table of a file, such as a termination or a layer of a branch.
//   - left out: a key that the file does not give; its row then shows what holds instead.
package values
