package bundle

import (
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
)

// What a component is for the wish to keep data from power: a wire by its role, a unit by the loudest of its wires, whichever
// stands first, and also where one of them is not in the harness.
func TestKinOfAComponent(t *testing.T) {
	role := func(id string, r model.Role) model.Wire { return model.Wire{ID: id, Role: model.Some(r)} }
	h := &model.Harness{Wires: []model.Wire{role("p", model.RolePower), role("d", model.RoleData), role("g", model.RoleGround),
		role("s", model.RoleSignal)},
		Units: []model.Unit{{ID: "lost", Wires: []string{"nope", "p"}}, {ID: "both", Wires: []string{"d", "p"}},
			{ID: "quiet", Wires: []string{"g", "s"}}, {ID: "bus", Wires: []string{"nope", "d"}}, {ID: "none", Wires: []string{"nope"}}}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h)}
	for id, want := range map[string]kin{"lost": shouts, "both": shouts, "quiet": listens, "bus": listens,
		"none": neutral, "nonesuch": neutral} {
		if got := kinOf(s, id); got != want {
			t.Errorf("%s: %d, want %d", id, got, want)
		}
	}
}
