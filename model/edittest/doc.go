// Package edittest is the table of every edit of a harness, each made with what rapid draws, and
// the harnesses to begin with. Only tests import it.
//
// A new edit gets a line in the table: the tests that go through it then hold that whatever it
// makes loads, is saved alike, and is undone.
package edittest

import (
	"slices"

	"pgregory.net/rapid"

	"contralay/model"
	"contralay/model/edit"
)

// Edit is one edit. Do makes it with what it draws; false where this harness has nothing to do
// it to, or where the edit was refused.
type Edit struct {
	Name string
	Do   func(t *rapid.T, h *model.Harness) (*model.Harness, bool)
}

// Edits are all edits of a harness.
func Edits() []Edit { return slices.Concat(treeEdits, nameEdits, wireEdits, valueEdits) }

// Some makes so many edits, one after the other, and calls each with every harness that came of
// it, named by the edit. An edit that was refused is not counted.
func Some(t *rapid.T, h *model.Harness, n int, each func(name string, was, is *model.Harness)) *model.Harness {
	return SomeOf(t, Edits(), h, n, each)
}

// SomeOf is as Some, for a table of edits that others have added to.
func SomeOf(t *rapid.T, all []Edit, h *model.Harness, n int, each func(name string, was, is *model.Harness)) *model.Harness {
	for range n {
		for { // there is always one that can be made
			e := rapid.SampledFrom(all).Draw(t, "edit")
			if is, made := e.Do(t, h); made {
				each(e.Name, h, is)
				h = is
				break
			}
		}
	}
	return h
}

// pick draws one of a list; false where it is empty.
func pick[T any](t *rapid.T, all []T, what string) (one T, ok bool) {
	if len(all) == 0 {
		return one, false
	}
	return rapid.SampledFrom(all).Draw(t, what), true
}

// at draws the index of one of n; false where there is none.
func at(t *rapid.T, n int, what string) (int, bool) {
	if n == 0 {
		return 0, false
	}
	return rapid.IntRange(0, n-1).Draw(t, what), true
}

// done is what an edit that may be refused gives back. One that is refused must give back the
// harness that it was given.
func done(t *rapid.T, h, n *model.Harness, err error) (*model.Harness, bool) {
	if err != nil && n != h {
		t.Fatalf("refused, and yet another harness came of it: %v", err)
	}
	if err != nil && err.Error() == "" {
		t.Fatal("refused without a word")
	}
	return n, err == nil
}

// places are the terminations and breakouts.
func places(h *model.Harness) []string {
	return slices.Concat(edit.IDs(h, edit.Termination), edit.IDs(h, edit.Breakout))
}
