package planning_test

import (
	"strconv"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/planning"
	"contralay/model"
)

// What a unit would make of a branch is counted layer by layer: all pieces but those in the unit, the unit, and the fillers; the wires
// of it are
// loose ones of one size with the same ends, no spare among them and none that is pinned. Where nothing is laid there is none.
func TestUnitsAreCounted(t *testing.T) {
	offers := func(h *model.Harness) []planning.UnitOffer {
		return planning.UnitOffers(calc.Complete(h, calctest.Catalogue(t), nil), 0)
	}
	var h *model.Harness
	var all []planning.UnitOffer
	n := 6
	for ; len(all) == 0 && n < 21; n++ { // the first count of thick and thin that gains by one
		h = calctest.Parse(t, calctest.OneSize(n, "22", "length_mm = 400.0\nunits_inside = false\n"))
		for k := n % 4; k < n-2; k++ {
			h = h.EditWire(k, func(w *model.Wire) { w.Size = "14" })
		}
		all = offers(h)
	}
	if n--; len(all) == 0 || len(all) > 3 {
		t.Fatalf("%d offers: the test shows nothing", len(all))
	}
	for _, o := range all {
		pieces, want := 0, n-len(o.Wires)+1+o.Fillers
		for k, n := range o.Counts {
			pieces += n
			if k == 0 && o.Plan.Layers[0].Fillers > 0 { // the rod in a centre of five is no piece
				want -= o.Plan.Layers[0].Fillers
			}
		}
		if pieces != want || len(o.Counts) != len(o.Plan.Layers) || len(o.Wires) != map[model.UnitBuild]int{"pair": 2, "triple": 3,
			"quad": 4}[o.Build] {
			t.Errorf("%s of %v: %v of %d layers, %d fillers", o.Build, o.Wires, o.Counts, len(o.Plan.Layers), o.Fillers)
		}
	}
	first := all[0].Wires
	s0, _ := strconv.Atoi(first[0]) // its number is its place
	if got := offers(h.EditWire(s0, func(w *model.Wire) { w.Role = model.Some(model.RoleSpare) })); len(got) > 0 {
		for _, o := range got {
			for _, id := range o.Wires {
				if id == first[0] {
					t.Errorf("a spare is made up: %v", o.Wires)
				}
			}
		}
	}
	straight := h.EditBranch(0, func(b *model.Branch) { b.Make = model.Some(model.MakeStraight) })
	if got := offers(straight); got != nil {
		t.Errorf("a branch that is not laid: %v", got)
	}
	unknown := h.EditWire(n-1, func(w *model.Wire) { w.Spec = "none" })
	if got := offers(unknown); got != nil {
		t.Errorf("with a wire of no known diameter: %v", got)
	}
}
