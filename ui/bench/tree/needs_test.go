package tree_test

import (
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/missing"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
)

// Each need is a row at the top of the map. Enter leads to where it is given; the value typed,
// chosen or stepped there, the need is gone. One undo brings it back.
func TestNeedsAreOneEnterAway(t *testing.T) {
	cut := func(old, text string) string { return strings.Replace(calctest.LacksNothing, old, text, 1) }
	for _, c := range []struct {
		kind missing.Kind
		text string
		keys []string // after Enter
	}{
		{missing.Ends, cut("from = \"P1:A\"\nto = \"S1\"\n", ""), []string{"enter", "@P1:A", "enter"}},
		{missing.End, cut("to = \"S1\"\n", ""), []string{"enter", "@S1", "enter"}},
		{missing.End, cut("from = \"P1:B\"\n", ""), []string{"enter", "@P1:", "enter"}},
		{missing.Size, cut("size = \"20\"", "size = \"\""), []string{"enter", "@20 AWG", "enter"}},
		{missing.Spec, cut("\"S1\"\nspec = \"AS22759/32\"", "\"S1\"\nspec = \"\""), []string{"enter", "@AS22759/32", "enter"}},
		{missing.Way, cut("[[branch]]\nid = \"L2\"\nfrom = \"J1\"\nto = \"LEAD\"\nlength_mm = 100.0\n", ""), []string{"@from J1", "enter"}},
		{missing.Way, cut("[[breakout]]", "[[termination]]\nid = \"NEW\"\n[[breakout]]"), []string{"@from J1", "enter"}},
		{missing.Way, "format = 1\n[[termination]]\nid = \"P1\"\n", []string{"@new breakout", "enter"}},
		{missing.Length, cut("100.0", "0.0"), []string{"1", "8", "0", "enter"}},
		{missing.UnitWires, cut("wires = [\"4\", \"5\"]", "wires = []"), []string{"@4  P1:B", "enter"}},
		{missing.Filler, cut("  of = [\"1\"]\n  fillers = 5\n  filler_mm = 1.27\n", "  fillers = 5\n"), []string{"1", ".", "1", "enter"}},
		{missing.Contacts, cut("contacts = { \"20\" = [\"1\", \"2\", \"3\"] }\n", ""), []string{"enter", "@size 20", "enter"}},
		{missing.Contacts, cut("{ \"20\" = [\"1\", \"2\", \"3\"] }", "{ \"20\" = [\"1\"] }"), []string{"enter", "@size 20", "enter"}},
		{missing.Gender, cut("gender = \"pin\"\n", ""), []string{"+"}},
		{missing.Current, cut("amps = 2.0\n", ""), []string{"2", "enter"}},
		{missing.Supply, cut("supply_v = 13.8\n", ""), []string{"1", "3", ".", "8", "enter"}},
		{missing.Device, cut("device = \"electronic\"\n", ""), []string{"+"}},
		{missing.Device, cut("amps = 5.0\n", ""), []string{"5", "enter"}},
		{missing.Trip, cut("trip_s = 0.01\n", ""), []string{"0", ".", "1", "enter"}},
		{missing.Short, cut("short_a = 400.0\n", ""), []string{"4", "0", "0", "enter"}},
		{missing.Cover, cut("  thick_mm = 0.5\n", ""), []string{".", "5", "enter"}},
		{missing.Number, cut("number = \"A1\"\n", ""), []string{"1", "2", "enter"}},
		{missing.Number, cut("revision = \"A\"\n", ""), []string{"1", "enter"}},
		{missing.Colour, cut("colour = \"5\"\n", ""), []string{"+"}},
	} {
		m := benchtest.Typed(t, c.text)
		toMap(t, m)
		before := m.H
		key := "need " + string(c.kind)
		if !onNeed(m, key) {
			t.Errorf("%s: no row on the map:\n%s", c.kind, benchtest.View(m))
			continue
		}
		benchtest.Press(m, "enter")
		if m.Trouble {
			t.Errorf("%s: Enter says %q", c.kind, m.Says)
		}
		benchtest.GoTo(t, m, c.keys...)
		if m.H == before || m.Trouble {
			t.Errorf("%s: %q changes nothing (%q):\n%s", c.kind, c.keys, m.Says, benchtest.View(m))
			continue
		}
		for _, n := range missing.Of(m.Sheet) {
			if n.Kind == c.kind {
				t.Errorf("%s: %q leaves %q", c.kind, c.keys, n.Says)
			}
		}
		m.Undo()
		if m.H != before {
			t.Errorf("%s: one undo does not take it back", c.kind)
		}
	}
}

// toMap shows the whole harness, from wherever the bench began.
func toMap(t *testing.T, m *desk.Model) {
	t.Helper()
	for range 3 {
		if m.Top() != "branches" {
			benchtest.Press(m, "esc")
		}
	}
	if m.Top() != "branches" {
		t.Fatalf("the map is not reached:\n%s", benchtest.View(m))
	}
}

// onNeed puts the cursor on the row of a need, on the map or on the page that lists them all.
func onNeed(m *desk.Model, key string) bool {
	for i, r := range m.Page(m.ListWidth()).Rows {
		if r.Key == key {
			m.Put(i, key)
			return true
		}
	}
	return false
}

// An end that no wire ends at leads to its page, and is not missed once a wire ends there.
func TestUnwiredEnd(t *testing.T) {
	m := benchtest.Typed(t, strings.Replace(calctest.LacksNothing, "to = \"LEAD:1\"", "to = \"P1:F\"", 1))
	toMap(t, m)
	if !onNeed(m, "need wire") {
		t.Fatalf("no row:\n%s", benchtest.View(m))
	}
	benchtest.Press(m, "enter")
	if m.Top() != "end" || m.Subject() != "LEAD" {
		t.Errorf("Enter leads to %s of %q", m.Top(), m.Subject())
	}
}

// A harness that lacks nothing has no row for it; of many needs the map shows three and how many
// more there are, and the page all of them.
func TestNeedsOnTheMap(t *testing.T) {
	m := benchtest.OpenAt(t, "demo.toml", "branches")
	if v := benchtest.View(m); strings.Contains(v, "missing") || strings.HasPrefix(m.Page(m.ListWidth()).Rows[0].Key, "need") {
		t.Errorf("the demonstration harness lacks something:\n%s", v)
	}
	text := strings.NewReplacer("number = \"A1\"\n", "", "amps = 2.0\n", "", "100.0", "0.0", "to = \"ECU:1\"\n", "",
		"gender = \"pin\"\n", "", "colour = \"5\"\n", "").Replace(calctest.LacksNothing)
	m = benchtest.Typed(t, text)
	toMap(t, m)
	at := m.At(m.Page(m.ListWidth()))
	var keys []string
	for _, r := range m.Page(m.ListWidth()).Rows[:4] {
		keys = append(keys, r.Key)
	}
	if got := strings.Join(keys, ", "); got != "need end, need length, need gender, needs" || at < 4 {
		t.Errorf("%q, the cursor on row %d", got, at)
	}
	if v := benchtest.View(m); !strings.Contains(v, "6 things missing") {
		t.Errorf("how many:\n%s", v)
	}
	benchtest.GoTo(t, m, "@And 3 more", "enter")
	if n := len(m.Page(m.ListWidth()).Rows); n != 6 || m.Top() != "still needed" {
		t.Errorf("%d rows on %s:\n%s", n, m.Top(), benchtest.View(m))
	}
	benchtest.GoTo(t, m, "@length of L2", "enter", "9", "0", "enter")
	if i := m.Sheet.Index.Branch["L2"]; m.Top() != "branches" || m.H.Branches[i].LengthMM != 90 {
		t.Errorf("a length from the page: %v on %s", m.H.Branches[i].LengthMM, m.Top())
	}
}
