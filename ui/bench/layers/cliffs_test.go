package layers_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/model"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/layers"
)

// nineteen is wires of 22 AWG, 1.09 mm, from one connector to another with so many cavities.
func nineteen(n, cavities int) string {
	var b strings.Builder
	b.WriteString("format = 1\n[rules]\nspares_wanted = 0\n")
	for _, id := range []string{"A", "Z"} {
		var c []string
		for k := range cavities {
			c = append(c, fmt.Sprintf("%q", fmt.Sprint(k)))
		}
		fmt.Fprintf(&b, "[[termination]]\nid = %q\ncavities = [%s]\n", id, strings.Join(c, ", "))
	}
	for k := range n {
		fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"A:%d\"\nto = \"Z:%d\"\nspec = \"AS22759/32\"\nsize = \"22\"\n", k, k, k)
	}
	return b.String() + "[[branch]]\nid = \"T1\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 500.0\n"
}

// At every size, from the step Layers: the row says what the next wire costs, Enter opens the bars, the arrows go along the
// counts with the figures of each, and Backspace comes back to the row, with nothing changed. The OD is 1.09 mm times that of
// the geometry notes: 16 in 5-11 are 4.701 wires thick, 17 to 19 in 1-6-12 are 5.023, and on a centre that is built up to 1.336 wires
// seven close, which with a layer more are 1.336 + 4 = 5.336.
func TestOneMoreOneFewerByKeys(t *testing.T) {
	for _, c := range []struct {
		w, h  int
		ascii bool
	}{{80, 24, false}, {120, 40, false}, {40, 12, false}, {80, 24, true}, {40, 12, true}} {
		m := benchtest.Typed(t, nineteen(19, 21))
		m.ShownOn(m.Cfg.Palette, c.ascii)
		benchtest.Size(m, c.w, c.h)
		benchtest.GoTo(t, m, "to layers")
		before := m.H
		row := benchtest.OnRow(t, m, "one more wire")
		if got := row.Line(); got != "one more wire   OD 5.8 mm" {
			t.Errorf("%+v: the row says %q", c, got)
		}
		if want := "Size 22: The 20th needs a built-up centre: OD 5.8 mm."; !strings.HasPrefix(row.Detail, want) {
			t.Errorf("%+v: %q", c, row.Detail)
		}
		benchtest.Press(m, "enter")
		bars := map[string]int{}
		for _, k := range []struct{ key, count, over string }{{"", "19", "OD 5.5"}, {"down", "20", "OD 5.8"}, {"up", "19", "OD 5.5"},
			{"up", "18", "OD 5.5"}, {"up", "17", "OD 5.5"}, {"up", "16", "OD 5.1"}} {
			if k.key != "" {
				benchtest.Press(m, k.key)
			}
			_, r := m.Hand()
			view := benchtest.View(m)
			foot := view[strings.LastIndex(view, "\n "+k.over)+1:]
			if c.w == 40 {
				foot = view[strings.LastIndex(view, "\n"+k.over)+1:]
			}
			if r == nil || r.Key != k.count || !strings.HasPrefix(strings.TrimSpace(foot), k.over) {
				t.Fatalf("%+v: %s after %q, want %s:\n%s", c, r.Key, k.key, k.over, view)
			}
			for _, g := range r.Show(m).Sheet.Snags {
				if g.Where != "T1" { // the wire that is counted up has no cavity of its own, and nobody means it to
					t.Errorf("%s shows %+v", k.count, g)
				}
			}
			bars[k.count] = 2*strings.Count(r.Line(), "█") + strings.Count(r.Line(), "▌") + 2*strings.Count(r.Line(), "#")
		}
		if bars["20"] < bars["19"] || bars["19"] != bars["17"] || bars["17"] < bars["16"] || bars["20"] <= bars["16"] {
			t.Errorf("%+v: bars of %v half cells", c, bars)
		}
		if _, r := m.Hand(); strings.Contains(r.Line(), "layer") {
			t.Errorf("16 begins no layer: %q", r.Line())
		}
		benchtest.Press(m, "down")
		if _, r := m.Hand(); !strings.Contains(r.Line(), "layer") {
			t.Errorf("17 begins a layer: %q", r.Line())
		}
		benchtest.Press(m, "backspace")
		if _, r := m.Hand(); m.H != before || len(m.Stack) != 0 || r.Key != "cliffs" {
			t.Errorf("%+v: Backspace leads to %s, row %s, changed %v", c, m.Title(), r.Key, m.H != before)
		}
	}
}

// The same page counts spares, and says why where none can be added.
func TestSparesByKeys(t *testing.T) {
	m := benchtest.Typed(t, nineteen(19, 21))
	benchtest.GoTo(t, m, "to layers", "@one more wire", "enter", "@count spares", "enter")
	p := m.Page(m.ListWidth())
	if len(p.Rows) != 4 || !strings.Contains(p.Lines[0], "Both ends have cavities for 2 more") { // 0, 1, 2 and the way back
		t.Errorf("%d rows, %q", len(p.Rows), p.Lines)
	}
	benchtest.GoTo(t, m, "@count wires", "enter")
	if len(m.Stack) != 1 || m.Subject() != "wires" {
		t.Errorf("%d screens, about %s", len(m.Stack), m.Subject())
	}
	full := benchtest.Typed(t, nineteen(19, 19))
	benchtest.GoTo(t, full, "to layers", "@one more wire", "enter", "@count spares", "enter")
	if view := benchtest.View(full); !strings.Contains(view, "No spare can be added: no cavity is free at the A end") {
		t.Errorf("%s", view)
	}
	benchtest.Press(full, "enter") // the one row leads back to the wires
	if full.Subject() != "wires" {
		t.Errorf("about %s", full.Subject())
	}
}

// Each count is worked out once, beside the screen; what comes of it when the harness has gone on is kept under its own
// question and is in nobody's way, and nothing is begun for ever.
func TestCountsAreWorkedOutOnceAndBeside(t *testing.T) {
	m := benchtest.Typed(t, nineteen(19, 21))
	benchtest.GoTo(t, m, "to layers")
	m.Show(layers.CliffsKind, "wires")
	take := func() (string, bool) {
		w, ok := layers.PlanStrip(m)
		if ok {
			w.Do()(m)
		}
		return w.Key, ok
	}
	seen := map[string]bool{}
	for range 40 {
		key, more := take()
		if !more {
			break
		}
		if seen[key] {
			t.Fatal("a count is worked out twice")
		}
		seen[key] = true
	}
	if _, more := layers.PlanStrip(m); more {
		t.Error("there is no end of counts")
	}
	rows := m.Page(m.ListWidth()).Rows
	m.Change(m.H.EditWire(0, func(w *model.Wire) { w.Colour = model.Some("6") }), "")
	if _, more := layers.PlanStrip(m); more {
		t.Error("a colour has the strip worked out again")
	}
	// The work of one harness ends in another.
	m.Change(m.H.EditBranch(0, func(b *model.Branch) { b.LengthMM = 300 }), "")
	old, more := layers.PlanStrip(m)
	if !more {
		t.Fatal("another length has the same sheaths as a matter of course")
	}
	done := old.Do()
	h := *m.H
	h.Wires = slices.Clone(h.Wires)
	for k := range h.Wires {
		h.Wires[k].Size = "20" // thicker, and as many
	}
	m.Change(&h, "")
	benchtest.Ready(m)
	done(m)
	if n := len(m.Page(m.ListWidth()).Rows); n != len(rows) {
		t.Errorf("%d rows, %d before", n, len(rows))
	}
	for range 40 {
		if _, more := take(); !more {
			break
		}
	}
	s := calc.Complete(m.H, m.Cfg.Cat, nil)
	r := rowOf(t, m, "19")
	if want := m.Sys.Diameter(s.Branches[0].OverMM); !strings.Contains(r.Line(), want) {
		t.Errorf("%q, and the branch has %s", r.Line(), want)
	}
}

func rowOf(t *testing.T, m *desk.Model, key string) desk.Row {
	t.Helper()
	for _, r := range m.Page(m.ListWidth()).Rows {
		if r.Key == key {
			return r
		}
	}
	t.Fatalf("no row %s", key)
	return desk.Row{}
}

// The key path plans nothing: a page that is asked for before anything is worked out says so, with every row in its place.
func TestTheStripFillsInPlace(t *testing.T) {
	m := benchtest.Typed(t, nineteen(19, 21))
	m.Step = layers.Step // nothing is worked out for it yet
	r := benchtest.OnRow(t, m, "one more wire")
	if r.Line() != "one more wire   working out" {
		t.Errorf("%q", r.Line())
	}
	m.Show(layers.CliffsKind, "wires")
	empty := m.Page(m.ListWidth())
	benchtest.Ready(m)
	full := m.Page(m.ListWidth())
	if len(empty.Rows) != len(full.Rows) || len(empty.Rows) != 18 {
		t.Fatalf("%d rows before, %d after", len(empty.Rows), len(full.Rows))
	}
	for k := range empty.Rows {
		if empty.Rows[k].Key != full.Rows[k].Key {
			t.Errorf("row %d was %s and is %s", k, empty.Rows[k].Key, full.Rows[k].Key)
		}
	}
}
