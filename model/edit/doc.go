// Package edit changes the tree of a harness and the names in it: it hangs, splits, joins and
// turns branches, makes a place into another kind of place, renames what has an id and removes
// it.
//
// Each edit takes a harness and returns a new one that shares whatever did not change; the one
// it took is left as it was and is its own undo. Where an edit cannot be made the error says
// what is wrong, where, and what is allowed, and the harness comes back as it was.
//
// What an edit leaves without an end or a way is no error: it loads, and the sheet says stop.
// Lost puts it into words, so that whoever asked for the edit hears of it at once.
//
// Every place of a harness where an id may be named is one line of the table in mentions.go.
// Renaming, removing and finding go through that table alone.
package edit
