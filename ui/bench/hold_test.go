package bench

import (
	"slices"
	"strings"
	"testing"

	"contralay/model"
)

// onRow puts the cursor on the first row whose text holds words.
func onRow(t *testing.T, m *Model, words string) row {
	t.Helper()
	p := m.page(m.listWidth())
	i := slices.IndexFunc(p.rows, func(r row) bool { return strings.Contains(r.line(), words) })
	if i < 0 {
		t.Fatalf("no row with %q", words)
	}
	m.cursor[m.cursorKey()], m.on[m.cursorKey()] = i, p.rows[i].key
	return p.rows[i]
}

// Whatever is tried, a locked layer keeps its members and its hand, and what is
// pinned its layer; the bench says so each time and changes nothing.
func TestHeldStays(t *testing.T) {
	held := func(lock bool) *Model {
		m := open(t, "demo.toml")
		m.step = Layers
		m.change(m.h.EditBranch(m.branch, func(b *model.Branch) {
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
		do   func(m *Model)
		says string
	}{
		{"move out of a locked layer", true, func(m *Model) { m.shift(1, 1) }, "locked"},
		{"move into it", true, func(m *Model) { m.shift(2, -1) }, "locked"},
		{"a filler more", true, func(m *Model) { m.addFiller(1, 1, 0) }, "locked"},
		{"turn the hands", true, func(m *Model) { m.flipOuter() }, "turn its hand"},
		{"a new layer outside turns them", true, func(m *Model) { m.shift(2, 1) }, "turn its hand"},
		{"make it twisted", true, func(m *Model) {
			m.change(m.h.EditBranch(m.branch, func(b *model.Branch) { b.Layers = nil }), "")
		}, "held"},
		{"move what is pinned", false, func(m *Model) {
			m.move(m.h.Branches[m.branch].Layers[1].Pinned[0], 2)
		}, "pinned"},
	} {
		t.Run(c.name, func(t *testing.T) {
			m := held(c.lock)
			before := m.h
			c.do(m)
			if m.h != before || !m.trouble || !strings.Contains(m.says, c.says) {
				t.Errorf("changed %v, says %q", m.h != before, m.says)
			}
		})
	}
	m := held(true)
	m.lock(1, false)
	if m.trouble || m.locked(1) {
		t.Errorf("the lock does not open: %q", m.says)
	}
}

// A lay-up set aside and taken up again gives the same figures, by Enter alone;
// the cursor stays on its row though rows come above it.
func TestAsideAndBack(t *testing.T) {
	m := open(t, "demo.toml")
	m.step = Layers
	before := m.tally()
	onRow(t, m, "set this lay-up aside")
	m.Update(message("enter"))
	m.Update(message("enter"))
	if n := len(m.h.Branches[m.branch].Asides); n != 1 {
		t.Fatalf("%d aside: %q", n, m.says)
	}
	if p := m.page(m.listWidth()); p.rows[m.at(p)].key != "set aside" {
		t.Errorf("the cursor is on %q now", p.rows[m.at(p)].line())
	}
	m.shift(2, -1)
	if m.tally() == before {
		t.Fatal("moving one changes no figure")
	}
	r := onRow(t, m, "lay-up 1")
	if !strings.Contains(r.more(), "Enter takes it up") {
		t.Errorf("%q", r.more())
	}
	m.Update(message("enter"))
	if got := m.tally(); got != before {
		t.Errorf("taken up %+v, was %+v", got, before)
	}
}

// Moving along the options draws each and changes nothing; Enter takes what was
// drawn.
func TestOptionIsDrawnBeforeItIsTaken(t *testing.T) {
	m := open(t, "demo.toml")
	m.step = Layers
	was, h := m.View(), m.h
	r := onRow(t, m, " A  ")
	seen := m.View()
	if m.h != h || seen == was {
		t.Fatalf("changed %v, drawn the same %v", m.h != h, seen == was)
	}
	want := r.show(m).tally()
	m.Update(message("enter"))
	ready(m)
	if got := m.tally(); got != want {
		t.Errorf("taken %+v, drawn %+v", got, want)
	}
}
