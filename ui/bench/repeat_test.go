package bench_test

import (
	"slices"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/file"
	"contralay/ui/bench"
	"contralay/ui/bench/desk"
	"contralay/ui/draw"
)

// rowWith is where a row stands whose text has these words.
func rowWith(t *testing.T, m *desk.Model, words string) int {
	t.Helper()
	p := m.Page(m.ListWidth())
	at := slices.IndexFunc(p.Rows, func(r desk.Row) bool { return strings.Contains(r.Line(), words) })
	if at < 0 {
		t.Fatalf("no row with %q on %s:\n%s", words, m.Top(), bench.View(m))
	}
	return at
}

// to goes to a row by the arrows and says how many it took.
func to(t *testing.T, m *desk.Model, words string) int {
	t.Helper()
	n := 0
	for want := rowWith(t, m, words); ; n++ {
		switch at := m.At(m.Page(m.ListWidth())); {
		case at < want:
			press(m, "down")
		case at > want:
			press(m, "up")
		default:
			return n
		}
	}
}

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

func typed(t *testing.T, text string) *desk.Model {
	t.Helper()
	d, err := file.Parse([]byte(text), "test")
	if err != nil {
		t.Fatal(err)
	}
	return ready(bench.New(desk.Config{Doc: d, Path: "test.toml", Cat: entries(t), Palette: draw.Palette{}}))
}

func idsOf(ws []model.Wire) []string {
	var out []string
	for _, w := range ws {
		out = append(out, w.ID+" "+w.Signal.V+" "+w.From.V+" "+w.To.V)
	}
	return out
}

// Two wires typed, the row of like legs in three keys, as one change.
func TestARowOfLikeLegs(t *testing.T) {
	m := typed(t, likeLegs)
	press(m, "enter")
	to(t, m, "all INJ1 again for INJ2 INJ3")
	press(m, "enter")
	want := []string{"103 Injector 2 feed P1:3 INJ2:1", "104 Injector 2 switched P1:4 INJ2:2", "105 Injector 3 feed P1:5 INJ3:1",
		"106 Injector 3 switched P1:6 INJ3:2"}
	if got := idsOf(m.H.Wires[2:]); !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
	if len(m.Undo) != 1 {
		t.Errorf("%d changes, want one", len(m.Undo))
	}
	press(m, "backspace")
	if len(m.H.Wires) != 2 {
		t.Error("one undo takes all back")
	}
	to(t, m, "all INJ1 again")
	press(m, "+")
	if len(m.H.Wires) != 4 {
		t.Errorf("+ is for one: %q", idsOf(m.H.Wires))
	}
}

// One more, many more by a number, and a plain refusal where there is no room.
func TestMoreLikeTheLast(t *testing.T) {
	m := typed(t, strings.ReplaceAll(likeLegs, `to = "INJ1:1"`, `to = "S1"`)+"[[splice]]\nid = \"S1\"\nat = \"J1\"\n")
	press(m, "enter")
	to(t, m, "one more like 101")
	press(m, "enter")
	press(m, "3", "enter")
	if got := idsOf(m.H.Wires[2:]); len(got) != 4 || got[3] != "106 Injector 1 feed P1:6 S1" || len(m.Undo) != 2 {
		t.Errorf("%q, %d changes", got, len(m.Undo))
	}
	press(m, "9", "enter")
	if !m.Trouble || len(m.H.Wires) != 6 || !strings.Contains(m.Says, "no free cavity for 9 more") {
		t.Errorf("%q with %d wires", m.Says, len(m.H.Wires))
	}
	press(m, "esc")
}

// Lists begin with what the harness uses, oftenest first.
func TestListsBeginWithWhatIsUsed(t *testing.T) {
	m := open(t, "demo.toml")
	press(m, "enter")
	to(t, m, "size ")
	press(m, "enter")
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
	press(m, "down", "enter")
	if m.Top() != "wire" || len(m.Undo) != 1 {
		t.Errorf("on %s with %d changes: %s", m.Top(), len(m.Undo), m.Says)
	}
}

// Every number that can be typed can be stepped with + -, and one step back is where
// it was.
func TestNumbersStep(t *testing.T) {
	for name, keys := range map[string][]string{"wire": {"enter"}, "duty": {"enter", "@duty", "enter"},
		"feed": {"@protection", "enter", "enter"}, "layer": {"right", "down", "enter"}, "sheath": {"right", "right", "right"}} {
		m := openAt(t, map[bool]string{true: "feeds.toml", false: "example.toml"}[name == "feed" || name == "duty"], "wires")
		goTo(t, m, keys...)
		for at, r := range m.Page(m.ListWidth()).Rows {
			if r.Field == nil || !r.Field.Number || r.Key == "more" {
				continue
			}
			if r.Step == nil {
				t.Errorf("%s: %q can be typed and not stepped", name, r.Line())
				continue
			}
			m.Cursor[m.CursorKey()] = at
			delete(m.On, m.CursorKey())
			press(m, "+")
			if m.Trouble {
				t.Errorf("%s: %q: %s", name, r.Line(), m.Says)
			}
			up := m.Page(m.ListWidth()).Rows[at].Line()
			if up == r.Line() {
				t.Errorf("%s: + leaves %q (%s)", name, r.Line(), m.Says)
			}
			press(m, "backspace")
		}
	}
}
