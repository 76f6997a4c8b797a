package bundle

import (
	"slices"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Which keys of a wire make another one of it here: Spec, Size, Colour, Role. Any other key leaves it as it was.
func TestSameWireByKeys(t *testing.T) {
	was := model.Wire{ID: "a", From: model.Some("P:1"), To: model.Some("Q:1"), Spec: "own", Size: "22"}
	if now := was; !SameWire(&was, &now) {
		t.Error("nothing changed")
	}
	for _, c := range []struct {
		key    string
		change func(w *model.Wire)
		same   bool
	}{
		{"From", func(w *model.Wire) { w.From = model.Some("P:2") }, true},
		{"To", func(w *model.Wire) { w.To = model.Some("Q:2") }, true},
		{"CappedAt", func(w *model.Wire) { w.CappedAt = model.Some("J") }, true},
		{"Spec", func(w *model.Wire) { w.Spec = "x" }, false},
		{"Size", func(w *model.Wire) { w.Size = "20" }, false},
		{"Role", func(w *model.Wire) { w.Role = model.Some(model.RoleSpare) }, false},
		{"Colour", func(w *model.Wire) { w.Colour = model.Some("5") }, false},
		{"FoldMM", func(w *model.Wire) { w.FoldMM = model.Some[unit.Millimetre](60) }, true},
		{"Signal", func(w *model.Wire) { w.Signal = model.Some("B") }, true},
		{"Note", func(w *model.Wire) { w.Note = model.Some("n") }, true},
	} {
		now := was
		if c.change(&now); SameWire(&was, &now) != c.same {
			t.Errorf("%s changed: the same %v", c.key, !c.same)
		}
	}
}

// Which keys of a branch make another one of it here. A list that is copied counts as changed.
func TestSameBranchByKeys(t *testing.T) {
	was := model.Branch{ID: "T", LengthMM: 500}
	if now := was; !SameBranch(&was, &now) {
		t.Error("nothing changed")
	}
	for _, c := range []struct {
		key    string
		change func(b *model.Branch)
		same   bool
	}{
		{"LengthMM", func(b *model.Branch) { b.LengthMM = 501 }, false},
		{"Make", func(b *model.Branch) { b.Make = model.Some(model.MakeTwisted) }, false},
		{"Outer", func(b *model.Branch) { b.Outer = model.Some(model.HandLeft) }, false},
		{"BendMM", func(b *model.Branch) { b.BendMM = model.Some[unit.Millimetre](40) }, false},
		{"BendDeg", func(b *model.Branch) { b.BendDeg = model.Some[unit.Degree](90) }, false},
		{"Supported", func(b *model.Branch) { b.Supported = model.Some(true) }, false},
		{"AmbientC", func(b *model.Branch) { b.AmbientC = model.Some[unit.Celsius](60) }, false},
		{"LeaversOut", func(b *model.Branch) { b.LeaversOut = model.Some(false) }, false},
		{"UnitsIn", func(b *model.Branch) { b.UnitsIn = model.Some(false) }, false},
		{"DataApart", func(b *model.Branch) { b.DataApart = model.Some(true) }, false},
		{"Environment", func(b *model.Branch) { b.Environment = []model.Surrounding{model.Oil} }, false},
		{"Layers", func(b *model.Branch) { b.Layers = []model.Layer{{Of: []string{"a"}}} }, false},
		{"Covers", func(b *model.Branch) { b.Covers = []model.Cover{{What: model.CoverTape}} }, true},
		{"Name", func(b *model.Branch) { b.Name = model.Some("n") }, true},
		{"LeavesDeg", func(b *model.Branch) { b.LeavesDeg = model.Some[unit.Degree](9) }, true},
		{"Asides", func(b *model.Branch) { b.Asides = []model.Aside{{}} }, true},
		{"Layers, none by name", func(b *model.Branch) { b.Layers = []model.Layer{} }, false},
	} {
		now := was
		if c.change(&now); SameBranch(&was, &now) != c.same || SameBranch(&now, &was) != c.same {
			t.Errorf("%s changed: the same %v", c.key, !c.same)
		}
	}
}

// Which lists of a harness bound it here.
func TestSamePlacesByLists(t *testing.T) {
	was := model.Harness{}
	if now := was; !SamePlaces(&was, &now) {
		t.Error("nothing changed")
	}
	for key, c := range map[string]struct {
		change func(h *model.Harness)
		same   bool
	}{
		"Terminations": {func(h *model.Harness) { h.Terminations = []model.Termination{{}} }, true},
		"Splices":      {func(h *model.Harness) { h.Splices = []model.Splice{{}} }, true},
		"Units":        {func(h *model.Harness) { h.Units = []model.Unit{{}} }, false},
		"Breakouts":    {func(h *model.Harness) { h.Breakouts = []model.Breakout{{}} }, false},
		"Head.Use":     {func(h *model.Harness) { h.Head.Use = model.Some(model.Use("x")) }, true},
		"Head.Name":    {func(h *model.Harness) { h.Head.Name = model.Some("x") }, true},
	} {
		now := was
		if c.change(&now); SamePlaces(&was, &now) != c.same {
			t.Errorf("%s changed: the same %v", key, !c.same)
		}
	}
}

// The branches that a wire has a say in, by hand: those it runs through and ran through, with those of the other wire of its unit, and
// those
// whose layers name it or its unit. A proposal stays only where nothing changed and nothing was planned anew.
func TestWhoHasASay(t *testing.T) {
	of := func(ids ...string) []model.Layer { return []model.Layer{{}, {Of: ids}} }
	h := &model.Harness{Wires: []model.Wire{{ID: "a"}, {ID: "b"}, {ID: "c"}}, Units: []model.Unit{{ID: "U", Wires: []string{"a", "b",
		"nobody"}}},
		Branches: []model.Branch{{ID: "0"}, {ID: "1"}, {ID: "2"}, {ID: "3"}, {ID: "4", Layers: of("a")}, {ID: "5", Layers: of("x", "U")},
			{ID: "6", Layers: of("c")}, {ID: "7", Layers: of("b")}}}
	path := func(a, b, c []int) []sheet.Wire { return []sheet.Wire{{Path: a}, {Path: b}, {Path: c}} }
	prior := &sheet.Sheet{H: h, Wires: path([]int{1}, []int{3}, []int{0}), Branches: []sheet.Branch{{}, {Proposed: true}}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Wires: path([]int{0}, []int{2}, nil), Reuse: sheet.Reuse{Prior: prior}}
	for k, want := range [][]int{{0, 1, 2, 3, 4, 5}, {0, 1, 2, 3, 5, 7}, {0, 6}} {
		got := HasASayIn(s, k)
		slices.Sort(got)
		if got = slices.Compact(got); !slices.Equal(got, want) {
			t.Errorf("%s: %v, want %v", h.Wires[k].ID, got, want)
		}
	}
	for _, c := range []struct {
		branch       int
		all, planned bool
		want         bool
	}{{0, false, false, true}, {1, true, true, true}, {1, true, false, false}, {1, false, true, false}} {
		s.Reuse.All, s.Reuse.Planned = c.all, c.planned
		if got := StaysLaid(s, c.branch); got != c.want {
			t.Errorf("%+v: %v", c, got)
		}
	}
}
