package layers_test

import (
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/shorttest"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/layers"
)

// Whatever is tried, a locked layer keeps its members and its hand, and what is
// pinned its layer; the bench says so each time and changes nothing.
func TestHeldStays(t *testing.T) {
	held := func(lock bool) *desk.Model {
		m := benchtest.Open(t, "demo.toml")
		m.Step = layers.Step
		m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) {
			if lock {
				b.Layers[1].Locked = model.Some(true)
			} else {
				b.Layers[1].Pinned = []string{b.Layers[1].Of[0]}
			}
		}), "")
		return m
	}
	for _, c := range []struct {
		name string
		lock bool
		do   func(m *desk.Model)
		says string
	}{
		{"move out of a locked layer", true, func(m *desk.Model) { layers.Shift(m, 1, 1) }, "locked"},
		{"move into it", true, func(m *desk.Model) { layers.Shift(m, 2, -1) }, "locked"},
		{"a filler more", true, func(m *desk.Model) { layers.AddFiller(m, 1, 1, 0) }, "locked"},
		{"a new layer outside turns them", true, func(m *desk.Model) { layers.Shift(m, 2, 1) }, "turn its hand"},
		{"make it twisted", true, func(m *desk.Model) {
			m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) { b.Layers = nil }), "")
		}, "locked or pinned"},
		{"move what is pinned", false, func(m *desk.Model) {
			layers.Move(m, m.H.Branches[m.Branch].Layers[1].Pinned[0], 2)
		}, "pinned"},
	} {
		t.Run(c.name, func(t *testing.T) {
			m := held(c.lock)
			before := m.H
			c.do(m)
			if m.H != before || !m.Trouble || !strings.Contains(m.Says, c.says) {
				t.Errorf("changed %v, says %q", m.H != before, m.Says)
			}
		})
	}
	m := held(true)
	layers.Lock(m, 1, false)
	if m.Trouble || layers.Locked(m, 1) {
		t.Errorf("the lock does not open: %q", m.Says)
	}
}

// The branch as it is, kept as a variant and taken up again, gives the same figures; the cursor stays on its row
// though rows come above it.
func TestAsideAndBack(t *testing.T) {
	shorttest.Turn(t)
	m := benchtest.WaysAlone(benchtest.Open(t, "demo.toml"))
	m.Step = layers.Step
	before := m.Tally()
	benchtest.OnRow(t, m, "as it is")
	later(m, "enter")
	later(m, "enter")
	if all := m.H.Branches[m.Branch].Asides; len(all) != 1 || all[0].Letter != model.Some(model.Letter("A")) {
		t.Fatalf("%d kept, %q", len(all), m.Says)
	}
	if p := m.Page(m.ListWidth()); p.Rows[m.At(p)].Key != "now" {
		t.Errorf("the cursor is on %q now", p.Rows[m.At(p)].Line())
	}
	layers.Shift(m, 2, -1)
	if m.Tally() == before {
		t.Fatal("moving one changes no figure")
	}
	benchtest.Ready(m)
	r := benchtest.OnRow(t, m, "  A  as it was")
	if !strings.Contains(r.More(), "Variant A  as it was: ") {
		t.Errorf("%q", r.More())
	}
	benchtest.Press(m, "enter")
	later(m, "enter")
	if got := m.Tally(); got != before {
		t.Errorf("taken up %+v, was %+v", got, before)
	}
}

// Moving along the lay-ups draws each and changes nothing; Enter takes what was drawn.
func TestOptionIsDrawnBeforeItIsTaken(t *testing.T) {
	shorttest.Turn(t)
	m := benchtest.Open(t, "demo.toml")
	m.Step = layers.Step
	benchtest.WaysAlone(m)
	was, h := benchtest.View(m), m.H
	r := benchtest.OnRow(t, m, " A  ")
	seen := benchtest.View(m)
	if m.H != h || seen == was {
		t.Fatalf("changed %v, drawn the same %v", m.H != h, seen == was)
	}
	want := r.Show(m).Tally()
	later(m, "enter")
	if got := m.Tally(); got != want {
		t.Errorf("taken %+v, drawn %+v", got, want)
	}
}
