package calc_test

import (
	"slices"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/phase/length"
	"contralay/model/unit"
)

// Every conductor is once in each branch of its way and nowhere else; the states of a
// termination's cavities add up to their count; no wire is cut shorter than its way.
func TestHarnessAddsUp(t *testing.T) {
	for _, name := range []string{"demo", "whole", "example", "feeds", "trunk"} {
		s := calctest.Laid(t, name)
		for i := range s.Branches {
			n := map[string]int{}
			for _, l := range s.Branches[i].Layers {
				for _, m := range l.Members {
					n[m.ID]++
				}
			}
			for k := range s.Wires {
				id := s.H.Wires[k].ID
				if u, in := s.Index.UnitOf[id]; in {
					id = s.H.Units[u].ID
				}
				want := calctest.Once(slices.Contains(s.Wires[k].Path, i))
				if n[id] != want {
					t.Errorf("%s: %s is %d times in %s, want %d", name, id, n[id], s.H.Branches[i].ID, want)
				}
			}
		}
		for i, term := range s.Terms {
			if term.Used+term.Spare+term.Reserved+term.Blank != len(term.Cavities) {
				t.Errorf("%s: %s: %d + %d + %d + %d are not %d", name, s.H.Terminations[i].ID, term.Used, term.Spare, term.Reserved,
					term.Blank, len(term.Cavities))
			}
		}
		for k, w := range s.Wires {
			long := unit.Millimetre(0)
			for _, b := range w.Path {
				long += s.H.Branches[b].LengthMM
			}
			long += length.SpliceOffset(s, s.H.Wires[k].From.V, w.Path) + length.SpliceOffset(s, s.H.Wires[k].To.V, w.Path)
			if w.Cut > 0 && w.Cut < long || w.Cut < w.Finished {
				t.Errorf("%s: wire %s is cut %v, its way is %v and finished %v", name, s.H.Wires[k].ID, w.Cut, long, w.Finished)
			}
		}
	}
}
