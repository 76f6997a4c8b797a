package model

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model/unit"
)

// A branch that is not measured yet is split nowhere, and what is said is why.
func TestSplitNotMeasured(t *testing.T) {
	h := bundle()
	h.Branches[0].LengthMM = 0
	if n, _, err := h.Split(0, 100); err == nil || n != h || !strings.Contains(err.Error(), "length of T is not known yet") {
		t.Errorf("%v", err)
	}
}

// A branch split in two runs on under a new breakout: every wire's way goes through
// both parts, and the lengths add up.
func TestSplit(t *testing.T) {
	h := bundle()
	h.Branches[0].LengthMM = 300
	h.Splices = []Splice{{ID: "S", At: "J", Toward: Some("T")}, {ID: "U", At: "J", Toward: Some("R")}}
	n, j, err := h.Split(0, 100)
	if err != nil {
		t.Fatal(err)
	}
	a, b := n.Branches[0], n.Branches[len(n.Branches)-1]
	if a.ID != "T" || a.To != j || b.From != j || b.To != "J" || a.LengthMM != 100 || b.LengthMM != 200 {
		t.Errorf("%+v\n%+v", a, b)
	}
	if d := cmp.Diff(a.Layers, b.Layers); d != "" || len(a.Layers) != 3 {
		t.Errorf("other lay-ups: %s", d)
	}
	if n.Splices[0].Toward.V != b.ID || n.Splices[1].Toward.V != "R" {
		t.Errorf("splices lie toward %s and %s", n.Splices[0].Toward.V, n.Splices[1].Toward.V)
	}
	if f := n.Check(); len(f) > 0 {
		t.Errorf("%+v", f)
	}
	way, ok := NewIndex(n).Between("A", "Z")
	if !ok || len(way) != 4 {
		t.Errorf("from A to Z by %v", way)
	}
	if len(h.Branches) != 4 || h.Branches[0].LengthMM != 300 {
		t.Error("the harness before the edit changed")
	}
	for _, at := range []float64{0, 300, 400, -1} {
		if _, _, err := h.Split(0, unit.Millimetre(at)); err == nil {
			t.Errorf("split at %v", at)
		}
	}
}

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
