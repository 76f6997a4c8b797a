package ends

import (
	"testing"

	"contralay/model"
	"contralay/model/unit"
)

// Which keys of a wire make another one of it here: From, To, CappedAt, Spec, Size, Role. Any other key leaves it as it was.
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
		{"From", func(w *model.Wire) { w.From = model.Some("P:2") }, false},
		{"To", func(w *model.Wire) { w.To = model.Some("Q:2") }, false},
		{"CappedAt", func(w *model.Wire) { w.CappedAt = model.Some("J") }, false},
		{"Spec", func(w *model.Wire) { w.Spec = "x" }, false},
		{"Size", func(w *model.Wire) { w.Size = "20" }, false},
		{"Role", func(w *model.Wire) { w.Role = model.Some(model.RoleSpare) }, false},
		{"Colour", func(w *model.Wire) { w.Colour = model.Some("5") }, true},
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
		"Units":        {func(h *model.Harness) { h.Units = []model.Unit{{}} }, false},
		"Breakouts":    {func(h *model.Harness) { h.Breakouts = []model.Breakout{{}} }, true},
		"Head.Use":     {func(h *model.Harness) { h.Head.Use = model.Some(model.Use("x")) }, false},
		"Head.Name":    {func(h *model.Harness) { h.Head.Name = model.Some("x") }, true},
	} {
		now := was
		if c.change(&now); SamePlaces(&was, &now) != c.same {
			t.Errorf("%s changed: the same %v", key, !c.same)
		}
	}
}
