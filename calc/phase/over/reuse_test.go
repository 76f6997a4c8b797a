package over

import (
	"testing"

	"contralay/model"
	"contralay/model/unit"
)

// Which keys of a wire make another one of it here: CappedAt, FoldMM, Role. Any other key leaves it as it was.
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
		{"CappedAt", func(w *model.Wire) { w.CappedAt = model.Some("J") }, false},
		{"Spec", func(w *model.Wire) { w.Spec = "x" }, true},
		{"Size", func(w *model.Wire) { w.Size = "20" }, true},
		{"Role", func(w *model.Wire) { w.Role = model.Some(model.RoleSpare) }, false},
		{"Colour", func(w *model.Wire) { w.Colour = model.Some("5") }, true},
		{"FoldMM", func(w *model.Wire) { w.FoldMM = model.Some[unit.Millimetre](60) }, false},
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
		{"Make", func(b *model.Branch) { b.Make = model.Some(model.MakeTwisted) }, true},
		{"Outer", func(b *model.Branch) { b.Outer = model.Some(model.HandLeft) }, true},
		{"BendMM", func(b *model.Branch) { b.BendMM = model.Some[unit.Millimetre](40) }, true},
		{"BendDeg", func(b *model.Branch) { b.BendDeg = model.Some[unit.Degree](90) }, true},
		{"Supported", func(b *model.Branch) { b.Supported = model.Some(true) }, false},
		{"AmbientC", func(b *model.Branch) { b.AmbientC = model.Some[unit.Celsius](60) }, false},
		{"LeaversOut", func(b *model.Branch) { b.LeaversOut = model.Some(false) }, true},
		{"UnitsIn", func(b *model.Branch) { b.UnitsIn = model.Some(false) }, true},
		{"DataApart", func(b *model.Branch) { b.DataApart = model.Some(true) }, true},
		{"Environment", func(b *model.Branch) { b.Environment = []model.Surrounding{model.Oil} }, false},
		{"Layers", func(b *model.Branch) { b.Layers = []model.Layer{{Of: []string{"a"}}} }, true},
		{"Covers", func(b *model.Branch) { b.Covers = []model.Cover{{What: model.CoverTape}} }, false},
		{"Name", func(b *model.Branch) { b.Name = model.Some("n") }, true},
		{"LeavesDeg", func(b *model.Branch) { b.LeavesDeg = model.Some[unit.Degree](9) }, true},
		{"Asides", func(b *model.Branch) { b.Asides = []model.Aside{{}} }, true},
		{"Covers, none by name", func(b *model.Branch) { b.Covers = []model.Cover{} }, false},
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
		"Terminations": {func(h *model.Harness) { h.Terminations = []model.Termination{{}} }, false},
		"Splices":      {func(h *model.Harness) { h.Splices = []model.Splice{{}} }, false},
		"Units":        {func(h *model.Harness) { h.Units = []model.Unit{{}} }, true},
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
