package wires_test

import (
	"slices"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/shorttest"
	"contralay/ui/bench/benchtest"
)

const likeLegs = `format = 1
[[termination]]
id = "P1"
cavities = ["1", "2", "3", "4", "5", "6", "7", "8", "9", "10"]
[[termination]]
id = "INJ1"
cavities = ["1", "2"]
[[termination]]
id = "INJ2"
cavities = ["1", "2"]
[[termination]]
id = "INJ3"
cavities = ["1", "2"]
[[breakout]]
id = "J1"
[[wire]]
id = "101"
signal = "Injector 1 feed"
from = "P1:1"
to = "INJ1:1"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "102"
signal = "Injector 1 switched"
from = "P1:2"
to = "INJ1:2"
spec = "AS22759/32"
size = "22"
[[branch]]
id = "T1"
from = "P1"
to = "J1"
length_mm = 300
[[branch]]
id = "L1"
from = "J1"
to = "INJ1"
length_mm = 90
[[branch]]
id = "L2"
from = "J1"
to = "INJ2"
length_mm = 90
[[branch]]
id = "L3"
from = "J1"
to = "INJ3"
length_mm = 90
`

func idsOf(ws []model.Wire) []string {
	var out []string
	for _, w := range ws {
		out = append(out, w.ID+" "+w.Signal.V+" "+w.From.V+" "+w.To.V)
	}
	return out
}

// Two wires typed, the row of like legs in three keys, as one change.
func TestARowOfLikeLegs(t *testing.T) {
	m := benchtest.Typed(t, likeLegs)
	benchtest.Press(m, "enter")
	benchtest.To(t, m, "repeat INJ1 on INJ2 INJ3")
	benchtest.Press(m, "enter")
	want := []string{"103 Injector 2 feed P1:3 INJ2:1", "104 Injector 2 switched P1:4 INJ2:2", "105 Injector 3 feed P1:5 INJ3:1",
		"106 Injector 3 switched P1:6 INJ3:2"}
	if got := idsOf(m.H.Wires[2:]); !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
	if m.History.Steps() != 1 {
		t.Errorf("%d changes, want one", m.History.Steps())
	}
	benchtest.Press(m, "backspace")
	if len(m.H.Wires) != 2 {
		t.Error("one undo takes all back")
	}
	benchtest.To(t, m, "repeat INJ1 on")
	benchtest.Press(m, "+")
	if len(m.H.Wires) != 4 {
		t.Errorf("+ is for one: %q", idsOf(m.H.Wires))
	}
}

// One more, many more by a number, as many as there is room for, and a plain refusal where there is none.
func TestMoreLikeTheLast(t *testing.T) {
	m := benchtest.Typed(t, strings.ReplaceAll(likeLegs, `to = "INJ1:1"`, `to = "S1"`)+"[[splice]]\nid = \"S1\"\nat = \"J1\"\n")
	benchtest.Press(m, "enter")
	benchtest.To(t, m, "one more like 101")
	benchtest.Press(m, "enter")
	benchtest.Press(m, "3", "enter")
	if got := idsOf(m.H.Wires[2:]); len(got) != 4 || got[3] != "106 Injector 1 feed P1:6 S1" || m.History.Steps() != 2 {
		t.Errorf("%q, %d changes", got, m.History.Steps())
	}
	benchtest.Press(m, "9", "enter")
	if !m.Trouble || len(m.H.Wires) != 10 || !strings.Contains(m.Says, "No more than 4: P1 has no free cavity left") {
		t.Errorf("%q with %d wires", m.Says, len(m.H.Wires))
	}
	benchtest.Press(m, "enter")
	if !m.Trouble || len(m.H.Wires) != 10 || m.Says != "nothing is made: P1 has no free cavity left" {
		t.Errorf("%q with %d wires", m.Says, len(m.H.Wires))
	}
	benchtest.Press(m, "esc")
}

// Lists begin with what the harness uses, oftenest first.
func TestListsBeginWithWhatIsUsed(t *testing.T) {
	shorttest.Turn(t)
	m := benchtest.Open(t, "demo.toml")
	benchtest.Press(m, "enter")
	benchtest.To(t, m, "size ")
	benchtest.Press(m, "enter")
	p := m.Page(m.ListWidth())
	used := map[string]int{}
	for _, w := range m.H.Wires {
		used[w.Size]++
	}
	last := 1 << 30
	for k, r := range p.Rows[:len(used)] {
		if used[r.Key] == 0 || used[r.Key] > last {
			t.Errorf("row %d is %s, used %d times after %d", k, r.Key, used[r.Key], last)
		}
		last = used[r.Key]
	}
	benchtest.Press(m, "down", "enter")
	if m.Top() != "wire" || m.History.Steps() != 1 {
		t.Errorf("on %s with %d changes: %s", m.Top(), m.History.Steps(), m.Says)
	}
}
