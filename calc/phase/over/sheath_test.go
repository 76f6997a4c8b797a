package over_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
)

// tubeCase is one branch of wires in a written sheath.
func tubeCase(t *testing.T, wires int, size, part string, reel float64) *sheet.Sheet {
	t.Helper()
	var b strings.Builder
	b.WriteString("format = 1\n")
	if reel > 0 {
		fmt.Fprintf(&b, "[[reel]]\nspec = \"AS22759/32\"\nsize = %q\nover_mm = %v\n", size, reel)
	}
	b.WriteString("[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Z\"\n")
	for i := range wires {
		fmt.Fprintf(&b, "[[wire]]\nid = \"%d\"\nfrom = \"A:%d\"\nto = \"Z:%d\"\nspec = \"AS22759/32\"\nsize = %q\n", i, i, i, size)
	}
	fmt.Fprintf(&b, "[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 300\n[[branch.cover]]\nwhat = \"sheath\"\npart = %q\n",
		part)
	return calc.Complete(calctest.Parse(t, b.String()), calctest.Catalogue(t), nil)
}

// No verdict goes from easy to refused on a hundredth: 0.80 × 9.53 = 7.624 is the
// advice for the 9.5 tube, and it is no more than advice.
func TestVerdictDoesNotHangOnAHundredth(t *testing.T) {
	var got []string
	for _, over := range []float64{7.59, 7.61, 7.63} {
		s := tubeCase(t, 1, "22", "AS23053/16 9.5", over)
		calctest.Near(t, "over", float64(s.Branches[0].OverMM), over, 1e-9)
		worst := "nothing"
		for _, g := range sheet.Worst(s.Snags) {
			if strings.HasPrefix(g.Rule, "sheath.") {
				worst = g.Level.String()
				break
			}
		}
		got = append(got, worst)
	}
	if got[0] != got[1] || got[2] == "stop" {
		t.Errorf("verdicts of 7.59, 7.61, 7.63 in a 9.5 bore: %v", got)
	}
}

// Two 24 AWG: over 1.88, tape 0.94·(2+π)/π = 1.54; a 3.2/1.6 tube recovers to
// 1.57 (AS23053/16 size 1/8, a maker's sheet) and hangs loose.
func TestLooseLeg(t *testing.T) {
	s := tubeCase(t, 2, "24", "AS23053/16 3.2", 0)
	calctest.Near(t, "over", float64(s.Branches[0].OverMM), 1.88, 1e-9)
	calctest.Near(t, "tape", float64(s.Branches[0].TapeMM), 1.54, 5e-3)
	g, ok := calctest.Snag(s, "sheath.loose", "T")
	if !ok || g.Level != sheet.Stop || !strings.Contains(g.Says, "loose") {
		t.Errorf("a loose leg must stop: %+v", s.Snags)
	}
}

// A sheath that cannot slide says by how much and where.
func TestCannotSlide(t *testing.T) {
	s := tubeCase(t, 16, "22", "AS23053/16 4.8", 0)
	g, ok := calctest.Snag(s, "sheath.slide", "T")
	if !ok || g.Level != sheet.Stop {
		t.Fatalf("no stop: %+v", s.Snags)
	}
	by := fmt.Sprintf("%.2f mm too small", float64(s.Branches[0].OverMaxMM)-4.75)
	if !strings.Contains(g.Says, by) || !strings.Contains(g.Says, "from 0 to 300 mm of T") {
		t.Errorf("says %q, want %q and the station", g.Says, by)
	}
}

// A branch shorter than its sorted zone has no place for a sheath, and a single
// wire that is thinner than any tube grips is no fault of the harness.
func TestNoPlaceForASheath(t *testing.T) {
	h := calctest.Load(t, "example.toml")
	l1 := slices.IndexFunc(h.Branches, func(b model.Branch) bool { return b.ID == "L1" })
	s := calc.Complete(h.EditBranch(l1, func(b *model.Branch) { b.LengthMM = 20 }), calctest.Catalogue(t), nil)
	if g, ok := calctest.Snag(s, "sheath.place", "L1"); !ok || g.Level != sheet.Note || s.Branches[l1].Sheath.Part != "" {
		t.Errorf("20 mm with a zone of 25: %+v, sheath %q", g, s.Branches[l1].Sheath.Part)
	}
	one := calctest.Parse(t, "format = 1\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Z\"\n[[wire]]\nid = \"1\"\nfrom = "+
		"\"A:1\"\nto = "+
		"\"Z:1\"\nspec = \"AS22759/32\"\nsize = \"22\"\n[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 100\n")
	for _, g := range calc.Complete(one, calctest.Catalogue(t), nil).Snags {
		if g.Level != sheet.Note {
			t.Errorf("one plain wire shows %+v", g)
		}
	}
}
