package over_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model/catalogue"
)

// A boot, a tape and a braid that are in no catalogue are said, each at its place; a tape or a braid of no given thickness
// counts as a thin one: tape 0.1 mm, braid 0.3 (both from memory), twice on the diameter, and marked as a guess.
func TestPartsOfNoCatalogue(t *testing.T) {
	s := calctest.Ringed(t, 2, 0, 300, []int{2}, "[[termination]]\nid = \"P\"\nboot = \"nonesuch\"\n", "")
	if got := fmt.Sprint(calctest.SaidOf(s, "boot.part")); got != "[warn P]" {
		t.Errorf("boot: %s", got)
	}
	for what, thick := range map[string]float64{"tape": 0.1, "braid": 0.3} {
		s := calctest.Ringed(t, 2, 0, 300, []int{2}, "", calctest.CoverText(what, ""))
		c := s.Branches[0].Covers[0]
		if !c.ThickGuess || float64(c.ThickMM) != thick {
			t.Errorf("%s: %v mm thick, a guess %v", what, c.ThickMM, c.ThickGuess)
		}
		calctest.Near(t, what, float64(c.OverMM), 4+2*thick, 1e-9) // two of 2 mm side by side
	}
}

// Where no tube of a kind goes over a bundle, what it would have to grip is named, with what lies beneath the sheath in it:
// two of 2.00 ± 0.05 mm lie under tape on 1.95·(2 + π)/π = 3.19 mm at their smallest, with a braid of 0.5 mm on 4.19.
func TestNoTubeGoesOver(t *testing.T) {
	braided := calctest.CoverText("braid", "thick_mm = 0.5\n") + calctest.CoverText("sheath", "")
	for cover, want := range map[string]string{"": "3.19", braided: "4.19"} {
		s := calctest.Ringed(t, 2, 0.05, 300, []int{2}, "", cover)
		cat := *s.Cat
		cat.Tubes = []catalogue.Tube{{ID: "AS23053/16 own", Kind: "AS23053/16", SuppliedMM: 4, RecoveredMM: 2, WallMM: 0.8, Density: 1.3,
			Flexible: true, ServiceMaxC: 150}}
		g, ok := calctest.Snag(calc.Build(s.H, &cat, nil), "sheath.none", "T")
		if !ok || g.Level != sheet.Warn || !strings.Contains(g.Says, "grips a tape diameter of "+want+" mm") {
			t.Errorf("%q: %+v", cover, g)
		}
	}
}
