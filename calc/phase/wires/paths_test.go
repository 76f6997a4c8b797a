package wires_test

import (
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/phase/wires"
)

// The tree is walked once through, from the termination with the most wires, each
// branch after the one it hangs on.
func TestWalked(t *testing.T) {
	for _, name := range calctest.Files("demo", "whole", "example", "feeds") {
		s := calctest.Laid(t, name)
		reached := map[string]bool{}
		seen := map[int]bool{}
		for n, w := range wires.Walked(s) {
			if n == 0 {
				reached[w.From] = true
				for k := range s.Terms {
					if s.Terms[k].Used > s.Terms[s.Index.Termination[w.From]].Used {
						t.Errorf("%s: walked from %s, %s has more", name, w.From, s.H.Terminations[k].ID)
					}
				}
			}
			if !reached[w.From] || seen[w.Branch] {
				t.Errorf("%s: %s comes before %s, or twice", name, s.H.Branches[w.Branch].ID, w.From)
			}
			seen[w.Branch], reached[w.To] = true, true
		}
		if len(seen) != len(s.H.Branches) {
			t.Errorf("%s: %d of %d branches", name, len(seen), len(s.H.Branches))
		}
	}
}
