// Package twoside makes one table of cavities of a table that is drawn as a connector lies, with its two sides beside each other,
// or with two kinds of its pins, those that go out and those that come in.
//
// It says nothing of what the cavities hold; package block asks it before it looks for tables.
package twoside
