package several_test

import (
	"slices"
	"strings"
	"testing"

	"contralay/model"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
)

// board is a box with four lamps, at one plug for two of them and one each for the others.
const board = `format = 1
[[termination]]
id = "BOX"
cavities = ["1", "2", "3", "4", "5", "6", "7", "8", "A"]
contacts = { "20" = ["1", "2", "3", "4", "5", "6", "7", "8"], "12" = ["A"] }
[[termination]]
id = "L1"
name = "Lamps"
cavities = ["1", "2", "3", "4", "5"]
[[termination]]
id = "L2"
cavities = ["1", "2"]
[[breakout]]
id = "J1"
[[wire]]
id = "101"
from = "BOX:1"
to = "L1:1"
spec = "AS22759/32"
size = "22"
amps = 1.0
role = "power"
[[wire]]
id = "102"
from = "BOX:2"
to = "L1:2"
spec = "AS22759/32"
size = "22"
amps = 1.0
role = "power"
[[wire]]
id = "103"
from = "BOX:3"
to = "L2:1"
spec = "AS22759/32"
size = "22"
amps = 1.0
role = "power"
[[wire]]
id = "104"
from = "BOX:4"
to = "L2:2"
spec = "AS22759/32"
size = "20"
role = "ground"
[[branch]]
id = "T"
from = "BOX"
to = "J1"
length_mm = 400
[[branch]]
id = "B1"
from = "J1"
to = "L1"
length_mm = 100
[[branch]]
id = "B2"
from = "J1"
to = "L2"
length_mm = 100
`

// marking is the bench on the page of several wires, with those like 101 marked.
func marking(t *testing.T) *desk.Model {
	t.Helper()
	m := benchtest.Typed(t, board)
	benchtest.To(t, m, "change several")
	benchtest.Press(m, "enter", "+")
	return m
}

func wire(t *testing.T, m *desk.Model, id string) model.Wire {
	t.Helper()
	k, ok := m.Sheet.Index.Wire[id]
	if !ok {
		t.Fatalf("no wire %s:\n%s", id, benchtest.View(m))
	}
	return m.H.Wires[k]
}

// lines are the rows of the page in front.
func lines(m *desk.Model) string {
	var out []string
	for _, r := range m.Page(m.ListWidth()).Rows {
		out = append(out, r.Line())
	}
	return strings.Join(out, "\n")
}

// Keys alone mark wires: one by Enter, those like it by + and −, by what they have in common on
// the first row. Marks are gone when the page is left.
func TestMarking(t *testing.T) {
	m := marking(t)
	if got := strings.Count(lines(m), "[x]"); got != 3 {
		t.Errorf("+ on 101 marked %d:\n%s", got, lines(m))
	}
	benchtest.Press(m, "enter")
	if !strings.Contains(lines(m), "[ ] 101") || strings.Count(lines(m), "[x]") != 2 {
		t.Errorf("Enter did not unmark it:\n%s", lines(m))
	}
	benchtest.Press(m, "-")
	if strings.Count(lines(m), "[x]") != 0 {
		t.Errorf("- left some marked:\n%s", lines(m))
	}
	benchtest.To(t, m, "mark like ones")
	seen := map[string]int{}
	for range 10 {
		benchtest.Press(m, "+")
		seen[strings.TrimPrefix(m.Page(78).Rows[0].Text, "mark like ones: ")] = strings.Count(lines(m), "[x]")
	}
	for name, want := range map[string]int{"none": 0, "all": 4, "22 AWG": 3, "20 AWG": 1, "power": 3, "ground": 1, "to L1": 2, "to L2": 2} {
		if got, is := seen[name]; !is || got != want {
			t.Errorf("%s marks %d (%v), want %d of %v", name, got, is, want, seen)
		}
	}
	benchtest.Press(m, "enter")
	was := m.H
	benchtest.Press(m, "esc", "enter")
	if strings.Contains(lines(m), "[x]") || m.H != was {
		t.Errorf("marks outlive their page:\n%s", lines(m))
	}
	benchtest.Press(m, "right")
	if !m.Trouble || m.Top() != desk.KindSeveral {
		t.Errorf("goes on with nothing marked: %s", m.Says)
	}
}

// Each change is for all that are marked, by keys of a numeric pad, and one Backspace takes it
// back whole.
func TestChangesAreForAllMarked(t *testing.T) {
	for _, c := range []struct {
		name string
		keys []string
		want func(w model.Wire) bool
		says string
	}{
		{"size", []string{"@size ", "+"}, func(w model.Wire) bool { return w.Size == "20" }, "3 wires: 20 AWG"},
		{"size from the list", []string{"@size ", "enter", "@24 AWG", "enter"}, func(w model.Wire) bool { return w.Size == "24" },
			"3 wires: 24 AWG"},
		{"spec", []string{"@spec ", "enter", "@AS22759/44", "enter"}, func(w model.Wire) bool { return w.Spec == "AS22759/44" },
			"3 wires: AS22759/44"},
		{"colour", []string{"@colour ", "9", "6", "enter"}, func(w model.Wire) bool { return w.Colour.V == "96" },
			"3 wires: colour white/blue"},
		{"colour by +", []string{"@colour ", "+"}, func(w model.Wire) bool { return w.Colour.V == "0" }, "3 wires: colour black"},
		{"role", []string{"@role ", "+"}, func(w model.Wire) bool { return w.Role.V == model.RoleGround }, "3 wires: role ground"},
		{"current", []string{"@current ", "2", ".", "5", "enter"}, func(w model.Wire) bool { return w.Amps.V == 2.5 }, "3 wires: 2.5 A"},
		{"colours", []string{"@propose for the 3", "enter"}, func(w model.Wire) bool { return w.Colour.V == string("012"[w.ID[2]-'1']) },
			"3 wires coloured"},
	} {
		m := marking(t)
		was := m.H
		benchtest.Press(m, "right")
		benchtest.GoTo(t, m, c.keys...)
		for _, id := range []string{"101", "102", "103"} {
			if w := wire(t, m, id); !c.want(w) {
				t.Errorf("%s: %+v", c.name, w)
			}
		}
		if m.Says != c.says || m.Trouble || wire(t, m, "104") != was.Wires[3] {
			t.Errorf("%s says %q (%v)", c.name, m.Says, m.Trouble)
		}
		benchtest.Press(m, "backspace")
		if !m.H.Same(was) {
			t.Errorf("%s: one Backspace does not take it back", c.name)
		}
	}
}

// What cannot have the value is named, and stays as it was.
func TestRefusalsAreNamed(t *testing.T) {
	m := benchtest.Typed(t, strings.Replace(board, `cavities = ["1", "2"]`, "cavities = [\"1\", \"2\"]\nseal_mm = [1.0, 1.2]", 1))
	was := m.H
	benchtest.To(t, m, "change several")
	benchtest.Press(m, "enter", "+", "right", "+")
	if wire(t, m, "103").Size != "22" || wire(t, m, "101").Size != "20" || !m.Trouble ||
		m.Says != "2 wires: 20 AWG. Left as it was: 103: L2 does not take 20 AWG of AS22759/32" {
		t.Errorf("%q", m.Says)
	}
	benchtest.Press(m, "backspace")
	if !m.H.Same(was) {
		t.Error("one Backspace does not take it back")
	}
}

// What the stock lacks stands on the page before colours are taken: three wires of BOX, two colours.
func TestPageSaysWhatTheStockLacks(t *testing.T) {
	m := benchtest.Typed(t, strings.Replace(board, "format = 1\n", "format = 1\n[rules]\ncolour_stock = [\"BU\", \"92\"]\n", 1))
	benchtest.To(t, m, "change several")
	benchtest.Press(m, "enter", "+", "right")
	const lack = "BOX needs 1 colour more in stock: 103 gets none"
	if !strings.Contains(lines(m), lack) {
		t.Errorf("%s", lines(m))
	}
	benchtest.To(t, m, "propose for the 3")
	benchtest.Press(m, "enter")
	if a, b, c := wire(t, m, "101"), wire(t, m, "102"), wire(t, m, "103"); a.Colour.V != "BU" || b.Colour.V != "92" || c.Colour.Set ||
		!m.Trouble || m.Says != "2 wires coloured. "+lack {
		t.Errorf("%s %s %s: %s", a.Colour.V, b.Colour.V, c.Colour.V, m.Says)
	}
}

func TestMoreUnitSpliceRemove(t *testing.T) {
	for _, c := range []struct {
		name string
		keys []string
		want func(m *desk.Model) bool
	}{
		{"more of each", []string{"esc", "left", "@change several", "enter", "enter", "right", "@one more like", "2", "enter"},
			func(m *desk.Model) bool {
				return len(m.H.Wires) == 6 && wire(t, m, "105").From.V == "BOX:5" && wire(t, m, "106").To.V == "L1:4"
			}},
		{"as many as there is room for", []string{"@one more like", "enter"}, func(m *desk.Model) bool {
			return len(m.H.Wires) == 6 && m.Trouble && strings.Contains(m.Says, "103: nothing is made: L2 has no free cavity left")
		}},
		{"unit", []string{"esc", "@change several", "enter", "enter", "down", "enter", "right", "@make a pair", "enter", "@shield", "+",
			"@make it", "enter"},
			func(m *desk.Model) bool {
				return len(m.H.Units) == 1 && m.H.Units[0].Shield.V && m.H.Units[0].DrainFrom.V == "BOX:5" &&
					slices.Equal(m.H.Units[0].Wires, []string{"101", "102"})
			}},
		{"splice", []string{"@join all 3", "enter", "enter"}, func(m *desk.Model) bool {
			return len(m.H.Splices) == 1 && m.H.Splices[0].At == "J1" && len(m.H.Wires) == 5 && wire(t, m, "104").From.V == "BOX:4" &&
				wire(t, m, "105").From.V == "BOX:1" && wire(t, m, "105").Amps.V == 3
		}},
		{"remove", []string{"@remove", "enter"}, func(m *desk.Model) bool { return len(m.H.Wires) == 1 && m.Top() == desk.KindSeveral }},
	} {
		m := marking(t)
		was := m.H
		benchtest.Press(m, "right")
		if c.keys[0] == "esc" { // begins with other marks
			benchtest.Press(m, "esc")
		}
		benchtest.GoTo(t, m, c.keys...)
		if !c.want(m) {
			t.Errorf("%s: %s\n%s", c.name, m.Says, benchtest.View(m))
		}
		benchtest.Press(m, "backspace")
		if !m.H.Same(was) {
			t.Errorf("%s: one Backspace does not take it back: %s", c.name, m.Says)
		}
	}
}

// From a free cavity: Enter twice makes one wire to where most of the connector's wires go; a
// number makes that many; what there is no room for is said before it is taken.
func TestWiresFromACavity(t *testing.T) {
	m := benchtest.Typed(t, board)
	was := m.H
	benchtest.GoTo(t, m, "esc", "@terminations", "enter", "enter", "@5    size 20", "enter")
	if got := lines(m); !strings.HasPrefix(got, "make 1 wire, 22 AWG: BOX:5 to L1:3\n") {
		t.Fatalf("%s", got)
	}
	benchtest.Press(m, "down", "3", "enter")
	if got := lines(m); !strings.HasPrefix(got, "make 3 wires, 22 AWG: BOX:5 6 7 to L1:3 4 5\n") {
		t.Errorf("%s", got)
	}
	benchtest.Press(m, "9", "enter", "up")
	if _, r := m.Hand(); r.Mark != "?" || r.Detail != "L1 has only 3 free that take it" || !strings.HasPrefix(r.Text, "make 3 wires") {
		t.Errorf("%+v", r)
	}
	benchtest.GoTo(t, m, "@role", "+", "@size", "+", "@make", "enter")
	if w := wire(t, m, "107"); len(m.H.Wires) != 7 || w.From.V != "BOX:7" || w.To.V != "L1:5" || w.Size != "20" ||
		w.Role.V != model.RolePower {
		t.Errorf("%+v: %s", w, m.Says)
	}
	benchtest.Press(m, "backspace")
	if !m.H.Same(was) {
		t.Error("one Backspace does not take it back")
	}
	// A thick contact takes none of the harness's sizes: one that it takes is offered, and no other.
	benchtest.GoTo(t, m, "@A    size 12", "enter")
	if got := lines(m); !strings.HasPrefix(got, "make 1 wire, 1") {
		t.Errorf("%s", got)
	}
}
