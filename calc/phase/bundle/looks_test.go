package bundle

import (
	"slices"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// What tells a component by eye: a filler is white, a wire has its colour, a unit its make; what runs nowhere looks like nothing.
// The one that looks like no other is the one to count from.
func TestLooksOfAComponent(t *testing.T) {
	h := &model.Harness{Wires: []model.Wire{{ID: "1", Colour: model.Some("2")}, {ID: "2", Colour: model.Some("2")},
		{ID: "3", Colour: model.Some("5")},
		{ID: "4"}, {ID: "5"}, {ID: "6"}},
		Units: []model.Unit{{ID: "U", Wires: []string{"4"}, Build: model.Some(model.UnitBuild("pair"))},
			{ID: "V", Wires: []string{"5"}, Build: model.Some(model.UnitBuild("pair")), Shield: model.Some(true)}}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h)}
	for id, want := range map[string]string{"filler": "9", "1": "2", "3": "5", "U": "pair", "V": "shielded pair", "6": "", "nobody": ""} {
		if got := Looks(s, id); got != want {
			t.Errorf("%s looks like %q, want %q", id, got, want)
		}
	}
	if got := stopOf(s, "Z:1"); got.at <= pastSplices {
		t.Errorf("what ends nowhere comes last: %+v", got)
	}
}

// Clockwise from the first, seen from the from end: up, right, down, left; one in the very middle before them, and one at the same
// hour as the first, but for what rounding does, with it and not behind all others.
func TestClockwiseFromTheFirst(t *testing.T) {
	at := func(id string, x, y float64) sheet.Member {
		return sheet.Member{ID: id, X: unit.Millimetre(x), Y: unit.Millimetre(y)}
	}
	got := clockwise([]sheet.Member{at("up", 0, 1), at("left", -1, 0), at("down", 0, -1), at("middle", 0, 0),
		at("right", 1, 0), at("hair", -1e-9, 2)})
	var ids []string
	for _, m := range got {
		ids = append(ids, m.ID)
	}
	if want := []string{"middle", "up", "hair", "right", "down", "left"}; !slices.Equal(ids, want) {
		t.Errorf("%v, want %v", ids, want)
	}
	if got := clockwise([]sheet.Member{at("middle", 0, 0)}); len(got) != 1 {
		t.Errorf("%v", got)
	}
}
