// Package label is the words of every key and table of the file format on the screens that change
// them: what a key is called and does, what it is chosen from, and what holds where it is left out.
//
// A new key needs one line here, in the table of its table.
package label
