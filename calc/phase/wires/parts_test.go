package wires_test

import (
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// What is read off a part takes the place of the catalogue's, and what hung on memory hangs
// on it no longer; taken away again, memory is back.
func TestReadOffThePart(t *testing.T) {
	const boot = "[[termination]]\nid = \"P\"\ninsert = \"18-32\"\nboot = \"boot-straight-18\"\n"
	s := calctest.Ringed(t, 2.0, 0.1, 500, []int{1, 6}, boot, "")
	g, ok := calctest.Snag(s, "boot.grip", "P")
	if !ok || g.Level != sheet.Warn {
		t.Fatalf("by memory: %+v", g)
	}
	h := *s.H
	h.Parts = []model.Part{{ID: "boot-straight-18", CableRecMM: model.Some[unit.Millimetre](5.5), LengthMM: model.Some[unit.Millimetre](70),
		SuppliedMM: model.Some[unit.Millimetre](18.5)}}
	n := calc.Build(&h, s.Base, s)
	if g, ok := calctest.Snag(n, "boot.grip", "P"); ok {
		t.Errorf("it recovers to 5.5: %+v", g)
	}
	if b, _ := n.Cat.Boot("boot-straight-18"); b.CableRecoveredMM != 5.5 || b.LengthMM != 70 ||
		b.From(b.Read.CableRecovered).Standing != catalogue.House || b.From(b.Read.CableSupplied).Standing != catalogue.Memory ||
		!b.Read.Length {
		t.Errorf("%+v", b)
	}
	wide := *s.H
	wide.Parts = []model.Part{{ID: "boot-straight-18", CableRecMM: model.Some[unit.Millimetre](9)}}
	if g, ok := calctest.Snag(calc.Build(&wide, s.Base, n), "boot.grip", "P"); !ok || g.Level != sheet.Stop {
		t.Errorf("read off and too wide: %+v", g)
	}
	back := calc.Build(s.H, s.Base, n)
	if g, ok := calctest.Snag(back, "boot.grip", "P"); !ok || g.Level != sheet.Warn {
		t.Errorf("memory again: %+v", g)
	}
	wall := *s.H
	wall.Parts = []model.Part{{ID: "AS23053/16 15.9", WallMM: model.Some[unit.Millimetre](1.4)}, {ID: "nobody"}}
	n = calc.Build(&wall, s.Base, s)
	if tube, _ := n.Cat.Tube("AS23053/16 15.9"); tube.WallMM != 1.4 || tube.WallStanding != catalogue.House {
		t.Errorf("%+v", tube)
	}
	if _, ok := calctest.Snag(n, "part.none", "nobody"); !ok {
		t.Errorf("nothing of a part that nobody knows: %v", n.Snags)
	}
}
