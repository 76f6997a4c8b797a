// Package values is the pages on which every key of the file format is changed: one page a record,
// one row a key. The rows are made from model/file/schema; a new key needs only its label here.
//
// Its words:
//
//   - record: one table of a file, such as a termination or a layer of a branch.
//   - label: what a key is called, what it does, and what it is chosen from.
//   - left out: a key that the file does not give; its row then shows what holds instead.
package values
