package model

import (
	"testing"
)

func TestAddLeg(t *testing.T) {
	h := bundle()
	n, branch, term := h.AddLeg("J", 250, 3)
	b := n.Branches[len(n.Branches)-1]
	if b.ID != branch || b.From != "J" || b.To != term || b.LengthMM != 250 || len(n.Terminations[len(n.Terminations)-1].Cavities) != 3 {
		t.Errorf("%+v", b)
	}
	if f := n.Check(); len(f) > 0 {
		t.Errorf("%+v", f)
	}
	if again, _, other := n.AddLeg("J", 250, 3); other == term || len(again.Check()) > 0 {
		t.Errorf("the next is %s, too", other)
	}
}

func TestLayAnew(t *testing.T) {
	h := bundle()
	n, took := h.LayAnew([]int{0, 1})
	if took != 1 || n.Branches[0].Layers != nil || len(h.Branches[0].Layers) != 3 {
		t.Errorf("%d taken: %+v", took, n.Branches[0])
	}
	h.Branches[0].Layers[1].Locked = Some(true)
	if n, took := h.LayAnew([]int{0}); took != 0 || len(n.Branches[0].Layers) != 3 {
		t.Errorf("%d taken of what is locked", took)
	}
}
