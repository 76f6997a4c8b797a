package over_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
)

// A trunk of 1 · 6 RH · 12 LH of which all twelve leave at J1: what goes on is 1 · 6, RH
// if it runs through and LH if it is laid anew by the rule of the outer hand. Both are
// named, and with RH outside nothing is said.
func TestRunThroughOrLayAnew(t *testing.T) {
	var b strings.Builder
	b.WriteString("format = 1\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Z\"\n[[termination]]\nid = \"Y\"\n[[breakout]]\nid = " +
		"\"J1\"\n")
	var inner, outer []string
	for k := range 19 {
		to := "Z"
		if k >= 7 {
			to = "Y"
		}
		fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"A:%d\"\nto = \"%s:%d\"\nspec = \"AS22759/32\"\nsize = \"22\"\n", k, k, to, k)
		id := fmt.Sprintf("\"w%d\"", k)
		if k >= 1 && k < 7 {
			inner = append(inner, id)
		} else if k >= 7 {
			outer = append(outer, id)
		}
	}
	b.WriteString("[[branch]]\nid = \"T1\"\nfrom = \"A\"\nto = \"J1\"\nlength_mm = 500.0\n  [[branch.layer]]\n  of = [\"w0\"]\n  " +
		"[[branch.layer]]\n  of = [" + strings.Join(inner, ", ") + "]\n  [[branch.layer]]\n  of = [" + strings.Join(outer, ", ") + "]\n")
	b.WriteString("[[branch]]\nid = \"R1\"\nfrom = \"J1\"\nto = \"Z\"\nlength_mm = 500.0\n  [[branch.layer]]\n  of = [\"w0\"]\n  " +
		"[[branch.layer]]\n  of = [" + strings.Join(inner, ", ") + "]\n")
	b.WriteString("[[branch]]\nid = \"R2\"\nfrom = \"J1\"\nto = \"Y\"\nlength_mm = 500.0\n")
	s := calctest.Built(t, b.String())
	s = calc.Complete(s.H, s.Cat, s)
	g, ok := calctest.Snag(s, "through.hand", "R1")
	if !ok || !strings.Contains(g.Says, "Layer 1 of T1 goes on into R1 at J1 and would turn from RH to LH there: run it "+
		"through with RH outside, or lay it again LH") {
		t.Errorf("%+v", g)
	}
	h := s.H.EditBranch(1, func(b *model.Branch) { b.Outer = model.Some(model.HandRight) })
	if g, ok := calctest.Snag(calc.Build(h, s.Cat, s), "through.hand", ""); ok {
		t.Errorf("RH outside: %s", g.Says)
	}
}

// What is clocked apart on a short run, what can be swapped, what looks alike, and too
// many shields on one lead are told; what is sound is not.
func TestClockTwinsAndShields(t *testing.T) {
	s := calctest.Carrying(t, 40, "", []string{"20 1.0", "20 1.0"}, nil, "")
	with := func(edit func(h *model.Harness)) *sheet.Sheet {
		h := *s.H
		h.Terminations = slices.Clone(h.Terminations)
		edit(&h)
		return calc.Complete(&h, s.Cat, nil)
	}
	for _, c := range []struct {
		name, rule string
		edit       func(h *model.Harness)
		said       bool
	}{
		{"clocked apart, far", "clock", func(h *model.Harness) {
			h.Terminations[0].Clock, h.Terminations[1].Clock = model.Some(12), model.Some(3)
		}, false},
		{"clocked apart, near", "clock", func(h *model.Harness) {
			h.Terminations[0].Clock, h.Terminations[1].Clock = model.Some(12), model.Some(3)
			*h = *h.EditBranch(0, func(b *model.Branch) { b.LengthMM = 60 })
		}, true},
		{"same insert and key within reach", "twins", func(h *model.Harness) {
			for k := range h.Terminations {
				h.Terminations[k].Insert, h.Terminations[k].Key, h.Terminations[k].Cavities = model.Some("8-35"), model.Some("N"), nil
			}
			*h = *h.EditBranch(0, func(b *model.Branch) { b.LengthMM = 400 })
		}, true},
		{"another key", "twins", func(h *model.Harness) {
			for k := range h.Terminations {
				h.Terminations[k].Insert, h.Terminations[k].Key, h.Terminations[k].Cavities = model.Some("8-35"),
					model.Some([]string{"N", "A"}[k]), nil
			}
			*h = *h.EditBranch(0, func(b *model.Branch) { b.LengthMM = 400 })
		}, false},
		{"the same colour twice", "colour.same", func(h *model.Harness) {
			*h = *h.EditWire(0, func(w *model.Wire) { w.Colour = model.Some("3") })
			*h = *h.EditWire(1, func(w *model.Wire) { w.Colour = model.Some("3") })
		}, true},
		{"two colours", "colour.same", func(h *model.Harness) {
			*h = *h.EditWire(0, func(w *model.Wire) { w.Colour = model.Some("3") })
			*h = *h.EditWire(1, func(w *model.Wire) { w.Colour = model.Some("4") })
		}, false},
		{"four shields on one lead", "shield.many", func(h *model.Harness) {
			for k := range 4 {
				h.Units = append(h.Units, model.Unit{ID: fmt.Sprint("u", k), DrainFrom: model.Some("A:1")})
			}
		}, false},
		{"five", "shield.many", func(h *model.Harness) {
			for k := range 5 {
				h.Units = append(h.Units, model.Unit{ID: fmt.Sprint("u", k), DrainFrom: model.Some("A:1")})
			}
		}, true},
	} {
		if g, ok := calctest.Snag(with(c.edit), c.rule, ""); ok != c.said {
			t.Errorf("%s: said %v %s", c.name, ok, g.Says)
		}
	}
}
