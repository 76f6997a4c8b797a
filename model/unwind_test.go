package model_test

import (
	"testing"

	"contralay/model"
	"contralay/model/unit"
)

// A centre that is built up stays so until it holds something else; then its tape goes, and with
// it what the next lay-up would be judged by.
func TestTapeGoesWithItsCentre(t *testing.T) {
	start := func() *model.Harness {
		w := func(id string) model.Wire { return model.Wire{ID: id, Spec: "AS22759/32", Size: "22"} }
		h := &model.Harness{Terminations: []model.Termination{{ID: "A"}, {ID: "B"}},
			Wires: []model.Wire{w("1"), w("2"), w("3"), w("4"), w("5"), w("6")}}
		h.Branches = []model.Branch{{ID: "T1", From: "A", To: "B", LengthMM: 100, Layers: []model.Layer{
			{Of: []string{"1", "2"}, BindMM: model.Some(unit.Millimetre(0.8)), BindPart: model.Some("PTFE tape")},
			{Of: []string{"3", "4", "5"}, BindMM: model.Some(unit.Millimetre(0.15))}}}}
		return h
	}
	move := func(id string, to int) func(h *model.Harness) (*model.Harness, error) {
		return func(h *model.Harness) (*model.Harness, error) { return h.Move(0, id, to) }
	}
	plain := func(f func(h *model.Harness) *model.Harness) func(h *model.Harness) (*model.Harness, error) {
		return func(h *model.Harness) (*model.Harness, error) { return f(h), nil }
	}
	for _, c := range []struct {
		name  string
		do    func(h *model.Harness) (*model.Harness, error)
		stays bool
	}{
		{"out of the centre", move("1", 1), false},
		{"into the centre", move("3", 0), false},
		{"a layer further out", move("3", 2), true},
		{"out of an outer layer", move("4", -1), true},
		{"out of the lay-up", move("2", -1), false},
		{"a wire of the centre removed", func(h *model.Harness) (*model.Harness, error) { return h.RemoveWire(0) }, false},
		{"another wire removed", func(h *model.Harness) (*model.Harness, error) { return h.RemoveWire(4) }, true},
		{"the centre made up into a unit", plain(func(h *model.Harness) *model.Harness {
			return h.AddUnit(model.Unit{ID: "U1", Wires: []string{"1", "2"}})
		}), false},
		{"others made up into a unit", plain(func(h *model.Harness) *model.Harness {
			return h.AddUnit(model.Unit{ID: "U1", Wires: []string{"4", "5"}})
		}), true},
		{"a wire more, outermost", plain(func(h *model.Harness) *model.Harness {
			return h.AddWire(model.Wire{ID: "7"}, []int{0})
		}), true},
		{"one laid into the centre", plain(func(h *model.Harness) *model.Harness {
			return h.EditBranch(0, func(b *model.Branch) { b.AddTo(0, "6") })
		}), false},
	} {
		was := start()
		h, err := c.do(was)
		if err != nil {
			t.Fatal(c.name, err)
		}
		l := h.Branches[0].Layers
		if got := l[0].BindMM.V == 0.8 && l[0].BindPart.V == "PTFE tape"; got != c.stays || !c.stays &&
			(l[0].BindMM.Set || l[0].BindPart.Set) {
			t.Errorf("%s: the centre is %+v", c.name, l[0])
		}
		if l[1].BindMM.V != 0.15 {
			t.Errorf("%s: the binder of layer 1 is %v", c.name, l[1].BindMM)
		}
		if b := was.Branches[0].Layers[0]; b.BindMM.V != 0.8 {
			t.Errorf("%s: what it was is changed too: %+v", c.name, b)
		}
	}
	// A centre that is gone leaves layer 1 as the centre, with a binder of its own.
	h, _ := start().Move(0, "1", 1)
	if h, _ = h.Move(0, "2", 1); len(h.Branches[0].Layers) != 1 || h.Branches[0].Layers[0].BindMM.V != 0.15 {
		t.Errorf("%+v", h.Branches[0].Layers)
	}
}
