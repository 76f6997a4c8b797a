// Package side holds one of two harnesses that are compared, under the names they have in common.
//
// It finds which terminations and splices of two lists are the same: by their names and, of two
// revisions, by what they hold. It reads what an import kept in the notes of wires: the text of a
// value that it did not understand, a shade, an end without a cavity.
//
// Its words are those of package compare. It finds no differences.
package side
