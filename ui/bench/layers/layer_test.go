package layers_test

import (
	"testing"

	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
)

// + moves a component out and - takes it back, with the cursor on it all the way.
func TestMovedComponentStaysInHand(t *testing.T) {
	m := benchtest.OpenAt(t, "example.toml", "layer")
	before := m.H
	p := m.Page(m.ListWidth())
	id := p.Rows[m.At(p)].Id
	benchtest.Press(m, "+")
	p = m.Page(m.ListWidth())
	if got := p.Rows[m.At(p)].Id; got != id || m.Trouble || m.H == before {
		t.Fatalf("moved %s, in hand is %s: %s", id, got, m.Says)
	}
	benchtest.Press(m, "-")
	was, now := before.Branches[0].Layers, m.H.Branches[0].Layers
	for k := range was {
		if !desk.SameSet(was[k].Of, now[k].Of) {
			t.Errorf("layer %d holds %v, before %v", k, now[k].Of, was[k].Of)
		}
	}
}
