package bundle_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// asked is nine wires over a breakout to two ends, with cavities for spares.
const asked = `format = 1
[[termination]]
id = "A"
cavities = ["1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11"]
[[termination]]
id = "B"
cavities = ["1", "2", "3", "4", "5", "6", "7"]
[[termination]]
id = "C"
cavities = ["1", "2", "3", "4", "5"]
[[breakout]]
id = "J"
WIRES[[branch]]
id = "T"
from = "A"
to = "J"
length_mm = 500.0
make = "laid"
  [[branch.layer]]
  of = ["0"]
  [[branch.layer]]
  of = ["1", "2", "3", "4", "5", "6", "7", "8"]
[[branch]]
id = "L"
from = "J"
to = "B"
length_mm = 300.0
[[branch]]
id = "M"
from = "C"
to = "J"
length_mm = 200.0
`

func nineWires(t *testing.T) *sheet.Sheet {
	t.Helper()
	text := ""
	for k := range 9 {
		to := fmt.Sprintf("B:%d", k+1)
		if k > 5 {
			to = fmt.Sprintf("C:%d", k-5)
		}
		text += fmt.Sprintf("[[wire]]\nid = \"%d\"\nfrom = \"A:%d\"\nto = %q\nspec = \"AS22759/32\"\nsize = \"22\"\n", k, k+1, to)
	}
	return calctest.Built(t, strings.Replace(asked, "WIRES", text, 1))
}

// Whatever a plan hangs on makes another question of it; what it does not hang on, and the same sheet once more, the same.
func TestWhatMakesAnotherQuestion(t *testing.T) {
	s := nineWires(t)
	branch := func(f func(b *model.Branch)) func(h *model.Harness) *model.Harness {
		return func(h *model.Harness) *model.Harness { return h.EditBranch(0, f) }
	}
	layer := func(f func(l *model.Layer)) func(h *model.Harness) *model.Harness {
		return branch(func(b *model.Branch) { f(&b.Layers[1]) })
	}
	rules := func(f func(r *model.Rules)) func(h *model.Harness) *model.Harness {
		return func(h *model.Harness) *model.Harness { n := *h; f(&n.Rules); return &n }
	}
	mm := model.Some[unit.Millimetre]
	for name, c := range map[string]struct {
		edit  func(h *model.Harness) *model.Harness
		other bool
	}{
		"nothing": {func(h *model.Harness) *model.Harness { return h }, false},
		"a note": {func(h *model.Harness) *model.Harness {
			return h.EditWire(0, func(w *model.Wire) { w.Note = model.Some("x") })
		}, false},
		"a length": {branch(func(b *model.Branch) { b.LengthMM = 700 }), false},
		"a name":   {branch(func(b *model.Branch) { b.Name = model.Some("trunk") }), false},
		"a size":   {func(h *model.Harness) *model.Harness { return h.EditWire(3, func(w *model.Wire) { w.Size = "20" }) }, true},
		"an end": {func(h *model.Harness) *model.Harness {
			return h.EditWire(3, func(w *model.Wire) { w.To = model.Some("C:5") })
		}, true},
		"a cavity": {func(h *model.Harness) *model.Harness {
			return h.EditWire(3, func(w *model.Wire) { w.To = model.Some("B:7") })
		}, true},
		"leavers":        {branch(func(b *model.Branch) { b.LeaversOut = model.Some(false) }), true},
		"units":          {branch(func(b *model.Branch) { b.UnitsIn = model.Some(false) }), true},
		"the ratio":      {rules(func(r *model.Rules) { r.LayRatio = model.Some(unit.Ratio(13)) }), true},
		"the lift":       {rules(func(r *model.Rules) { r.LiftMax = model.Some(unit.Ratio(0.06)) }), true},
		"the tight lift": {rules(func(r *model.Rules) { r.LiftTight = model.Some(unit.Ratio(0.09)) }), true},
		"a gap":          {rules(func(r *model.Rules) { r.GapInner = model.Some(unit.Ratio(0.11)) }), true},
		"the outer gap":  {rules(func(r *model.Rules) { r.GapOuter = model.Some(unit.Ratio(0.16)) }), true},
		"lumps":          {rules(func(r *model.Rules) { r.LumpyAt = model.Some(unit.Ratio(1.4)) }), true},
		"fillers":        {rules(func(r *model.Rules) { r.FillerWeight = model.Some(unit.Ratio(0.2)) }), true},
		"a spare's gain": {rules(func(r *model.Rules) { r.SpareGain = model.Some(unit.Ratio(0.2)) }), true},
		"the weight":     {rules(func(r *model.Rules) { r.LeaverWeight = mm(0.3) }), true},
		"spares wanted":  {rules(func(r *model.Rules) { r.SparesWanted = model.Some(2) }), true},
		"the zone":       {rules(func(r *model.Rules) { r.ZoneMM = mm(30) }), false},
		"a pin":          {layer(func(l *model.Layer) { l.Pinned = []string{"2"} }), true},
		"another pin":    {layer(func(l *model.Layer) { l.Pinned = []string{"3"} }), true},
		"a lock":         {layer(func(l *model.Layer) { l.Locked = model.Some(true) }), true},
		"a lay":          {layer(func(l *model.Layer) { l.LayMM = mm(80) }), true},
		"an open order":  {layer(func(l *model.Layer) { slices.Reverse(l.Of) }), false},
	} {
		t.Run(name, func(t *testing.T) {
			other := calc.Build(c.edit(s.H), s.Base, nil)
			if got := bundle.Question(other, 0) != bundle.Question(s, 0); got != c.other {
				t.Errorf("another question: %v", got)
			}
			if bundle.PlanKey(other, 0) != bundle.Question(other, 0) {
				t.Error("its key is not its question")
			}
		})
	}
	// A layer that is pinned whole may get more, one that is locked may not: another question, whatever else is locked.
	outer := func(lock bool) string {
		h := s.H.EditBranch(0, func(b *model.Branch) {
			b.Layers[0].Locked = model.Some(true)
			if b.Layers[1].Locked = model.Some(lock); !lock {
				b.Layers[1].Pinned = b.Layers[1].Of
			}
		})
		return bundle.Question(calc.Build(h, s.Base, nil), 0)
	}
	if outer(true) == outer(false) {
		t.Error("locked or pinned whole: the same question")
	}
	// What a locked layer is, counts whole.
	lock := func(f func(l *model.Layer)) string {
		h := s.H.EditBranch(0, func(b *model.Branch) { b.Layers[1].Locked = model.Some(true); f(&b.Layers[1]) })
		return bundle.Question(calc.Build(h, s.Base, nil), 0)
	}
	was := lock(func(*model.Layer) {})
	for name, f := range map[string]func(l *model.Layer){"fillers": func(l *model.Layer) { l.Fillers = model.Some(1) },
		"their size": func(l *model.Layer) { l.FillerMM = mm(0.9) }, "tape": func(l *model.Layer) { l.BindMM = mm(0.2) },
		"lay": func(l *model.Layer) { l.LayMM = mm(70) }, "order": func(l *model.Layer) { slices.Reverse(l.Of) }} {
		if lock(f) == was {
			t.Errorf("other %s of a locked layer: the same question", name)
		}
	}
}

// Where each wire of that trunk goes on and ends, at either end of it, by hand.
func TestWhereWiresGoOn(t *testing.T) {
	s := nineWires(t)
	for _, c := range []struct {
		branch int
		end    string
		id     string
		next   int
		is     bool
	}{
		{0, "J", "0", 1, true}, {0, "J", "8", 2, true}, {0, "A", "0", -1, true}, {1, "J", "0", 0, true}, {1, "B", "0", -1, true},
		{2, "J", "8", 0, true}, {2, "C", "8", -1, true}, {2, "J", "0", 0, false}, {1, "J", "8", 0, false}, {0, "J", "none", 0, false},
	} {
		if next, is := bundle.NextAt(s, c.branch, c.end, c.id); next != c.next || is != c.is {
			t.Errorf("%s at %s of branch %d goes into %d %v, want %d %v", c.id, c.end, c.branch, next, is, c.next, c.is)
		}
	}
	for _, c := range []struct {
		branch     int
		id         string
		after, far string
	}{{0, "0", "L", "B:1"}, {0, "8", "M", "C:3"}, {1, "0", "B", "B:1"}, {2, "8", "T", "A:9"}, {0, "none", "", ""}} {
		if got := bundle.NextAfter(s, c.branch, c.id); got != c.after {
			t.Errorf("%s goes on into %q, want %q", c.id, got, c.after)
		}
		if got := bundle.FarEnd(s, c.branch, c.id); got != c.far {
			t.Errorf("%s ends at %q, want %q", c.id, got, c.far)
		}
	}
	// How many branches each still runs through where the trunk parts: one; a leg at the other end of it, too.
	r := bundle.RanksOf(s, 0)
	for id, want := range map[string]int{"0": 1, "8": 1} {
		if r.Depth[id] != want {
			t.Errorf("%s: %d", id, r.Depth[id])
		}
	}
	if m := bundle.RanksOf(s, 2); m.Depth["8"] != 1 || m.Next["8"] != 0 {
		t.Errorf("%+v", m)
	}
	if r.Way["0"].Compare(r.Way["8"]) >= 0 || r.Way["0"].Tail == r.Way["8"].Tail || r.Way["0"].Tail != r.Way["5"].Tail ||
		r.Way["0"].Compare(r.Way["1"]) >= 0 {
		t.Errorf("%+v", r.Way)
	}
}
