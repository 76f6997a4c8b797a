// Package add makes what a few answers ask for: devices of a kind with their ends, wires, feeds
// and legs; a connector; spares. Each returns a whole new harness, of which the old one is the
// undo, and tells every value in it that nobody typed.
package add

import (
	"contralay/model"
	"contralay/model/catalogue"
)

// Added is a harness with something added to it, and what was taken for it.
type Added struct {
	H    *model.Harness
	Says []Guess

	// The ids of what is new, in file order.
	Terminations, Wires, Splices, Units, Branches []string
}

// Guess is one value, or several that are one decision, that nobody typed: what it is, of what,
// how far it can be trusted and where it comes from.
type Guess struct {
	Kind   GuessKind
	About  string             // what it is: "id", "size", "amps", "cavity", "colour" … a key of the file where there is one
	Of     []string           // ids of the terminations, wires, splices, units or branches that have it
	Says   string             // one plain sentence
	Taken                     // zero where the program chose by itself and no figure hangs on it
	Source []catalogue.Source // the documents that From refers to
}

// Taken is how far a value can be trusted and where it comes from.
type Taken = catalogue.Taken

// GuessKind is what a person does about a guess.
type GuessKind int

// The kinds of guess.
const (
	Chosen  GuessKind = iota // it is in the harness: look at it
	Ask                      // such devices differ in it: ask
	Missing                  // it could not be made, or is still to be given
	Outside                  // it is outside what the sheet rates
)
