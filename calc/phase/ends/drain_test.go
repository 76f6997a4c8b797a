package ends_test

import (
	"slices"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
)

// A drain that ends in a cavity takes it: no spare is offered there, and the four
// states still add up.
func TestDrainTakesItsCavity(t *testing.T) {
	h := calctest.Load(t, "example.toml")
	before := calc.Build(h, calctest.Catalogue(t), nil)
	g := *h
	g.Units = slices.Clone(h.Units)
	g.Units[0].DrainFrom = model.Some("P1:L")
	s := calc.Build(&g, calctest.Catalogue(t), nil)
	p := s.Index.Termination["P1"]
	a, b := before.Terms[p], s.Terms[p]
	if b.Used != a.Used+1 || b.Blank != a.Blank-1 || slices.Contains(b.Free, "L") || b.Used+b.Spare+b.Reserved+b.Blank != len(b.Cavities) ||
		b.Contacts != a.Contacts || b.SealPlugs != a.SealPlugs-1 {
		t.Errorf("before %+v\nafter %+v", a, b)
	}
	for drain, rule := range map[string]string{"P1:A": "cavity.twice", "P1:I": "cavity.none"} {
		g.Units = slices.Clone(h.Units)
		g.Units[0].DrainFrom = model.Some(drain)
		if got, ok := calctest.Snag(calc.Build(&g, calctest.Catalogue(t), nil), rule, ""); !ok || got.Level != sheet.Stop {
			t.Errorf("a drain in %s: want a stop %s, got %+v", drain, rule, got)
		}
	}
}
