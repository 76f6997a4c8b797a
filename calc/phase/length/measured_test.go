package length_test

import (
	"slices"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
)

// A branch that is drawn before it is measured is one stop and nothing else: no wire through it has
// a length, a drop or a mass that counts on it, no cover is judged, and the others stay as they were.
func TestNotMeasuredYet(t *testing.T) {
	for _, name := range []string{"example", "demo", "feeds"} {
		s := calctest.Laid(t, name)
		had := map[[2]string]bool{}
		for _, g := range s.Snags {
			had[[2]string{g.Rule, g.Where}] = true
		}
		for i := range s.H.Branches {
			id := s.H.Branches[i].ID
			h := s.H.EditBranch(i, func(b *model.Branch) { b.LengthMM = 0 })
			got, fresh := calc.Build(h, s.Base, s), calc.Build(h, s.Base, &sheet.Sheet{Proposals: s.Proposals})
			if !slices.Equal(got.Snags, fresh.Snags) {
				t.Fatalf("%s, %s: %v on the sheet before, fresh %v", name, id, got.Snags, fresh.Snags)
			}
			for _, g := range got.Snags {
				if at := [2]string{g.Rule, g.Where}; g.Rule == "branch.length" && (g.Level != sheet.Stop || g.Where != id) ||
					g.Rule != "branch.length" && !had[at] {
					t.Errorf("%s, %s not measured: %+v", name, id, g)
				}
			}
			if n := len(calctest.SaidOf(got, "branch.length")); n != 1 {
				t.Errorf("%s, %s: %d stops", name, id, n)
			}
			b := &got.Branches[i]
			if len(b.Components) > 0 && b.OverMM != s.Branches[i].OverMM || b.Gram.Set || got.Totals.Gram.Set || len(b.Covers) > 0 ||
				b.Sheath.Part != "" || b.LaidMM > 0 {
				t.Errorf("%s, %s: OD %v, was %v, %v g, sheath %q", name, id, b.OverMM, s.Branches[i].OverMM, b.Gram, b.Sheath.Part)
			}
			for k := range got.Wires {
				w, was := &got.Wires[k], &s.Wires[k]
				if through := slices.Contains(w.Path, i); through && (w.Cut != 0 || w.Finished != 0 || w.Drop.Set) ||
					!through && w.Cut != was.Cut {
					t.Errorf("%s, %s: wire %s is cut to %v, was %v; drop %v", name, id, s.H.Wires[k].ID, w.Cut, was.Cut, w.Drop)
				}
			}
		}
	}
}
