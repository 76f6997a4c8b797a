package over_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// A straight boot of 55 mm on two wires of 2 mm, 4 mm over, no sheath: the bend behind it takes 6 · 4 = 24 mm to its middle
// line (10 · 2 = 20 is less), and the bundle is 4 mm: 83 mm. As much room is enough, a tenth less is said; nothing is said
// of a branch that nobody has laid.
func TestSpaceBehindABoot(t *testing.T) {
	boot := catalogue.Boot{ID: "own", Shape: "straight", Shell: 10, LipSuppliedMM: 24, LipRecoveredMM: 13, CableSuppliedMM: 24,
		CableRecoveredMM: 2, LengthMM: 55, Origin: catalogue.Origin{Source: "measured", Standing: catalogue.House}}
	s := calctest.Ringed(t, 2, 0, 300, []int{2}, "[[termination]]\nid = \"P\"\nboot = \"own\"\n", "")
	bare := *s.Cat
	bare.Tubes = nil
	cat := catalogue.Merge(&bare, &catalogue.Catalogue{Boots: map[string]catalogue.Boot{"own": boot}})
	end := s.Index.Termination["P"]
	for space, said := range map[unit.Millimetre]bool{83: false, 82.9: true} {
		h := s.H.EditTermination(end, func(t *model.Termination) { t.SpaceMM = model.Some(space) })
		b := calc.Build(h, cat, nil)
		if g, ok := calctest.Snag(b, "boot.space", "P"); ok != said {
			t.Errorf("%v mm: said %v %s, bend %v", space, ok, g.Says, b.Branches[0].Bend.MinMM)
		}
	}
	h := s.H.EditTermination(end, func(t *model.Termination) { t.SpaceMM = model.Some[unit.Millimetre](10) })
	h = h.EditBranch(0, func(b *model.Branch) { b.Layers, b.Make = nil, model.Opt[model.Make]{} })
	h = h.EditWire(0, func(w *model.Wire) { w.Spec = "nonesuch" })
	if g, ok := calctest.Snag(calc.Build(h, cat, nil), "boot.space", "P"); ok {
		t.Errorf("not laid: %s", g.Says)
	}
}

// A sleeve that is filled past 80 % is a warning where another size of its kind keeps all advice, and a note where none does:
// 4.00 mm in a bore of 4.80 is 83 %; the other size, 8.0 to 2.5, is filled to half, and lies under tape on 3.27 = 1.31 · 2.5.
func TestAdviceByWhatTheKindHas(t *testing.T) {
	tube := func(id string, supplied, recovered unit.Millimetre) catalogue.Tube {
		return catalogue.Tube{ID: id, Kind: "own", SuppliedMM: supplied, RecoveredMM: recovered, WallMM: 0.5, Density: 1.3, Flexible: true,
			ServiceMaxC: 150, Origin: catalogue.Origin{Source: "measured", Standing: catalogue.House}}
	}
	s := calctest.Ringed(t, 2, 0, 300, []int{2}, "", calctest.CoverText("sleeve", "part = \"small\"\nfrom_mm = 100.0\nto_mm = 200.0\n"))
	for n, want := range map[int]string{1: "note", 2: "warn"} {
		all := []catalogue.Tube{tube("small", 4.8, 2), tube("right", 8, 2.5)}[:n]
		b := calc.Build(s.H, catalogue.Merge(s.Cat, &catalogue.Catalogue{Tubes: all}), nil)
		var said []string
		for _, g := range b.Snags {
			if strings.HasPrefix(g.Rule, "cover.") {
				said = append(said, fmt.Sprint(g.Level, " ", g.Rule))
			}
		}
		if g, ok := calctest.Snag(b, "cover.stretch", "T"); !ok || g.Level.String() != want {
			t.Errorf("%d sizes: %v, want a %s of cover.stretch", n, said, want)
		}
	}
}
