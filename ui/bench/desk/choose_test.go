package desk_test

import (
	"strings"
	"testing"

	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
)

// A number and Enter take a row of a numbered list, wherever the cursor is; one that is not there
// says which are.
func TestNumberedRows(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	took := ""
	choose := func() {
		m.Open(desk.ChooseScreen("a fruit", func(*desk.Model) bool { return true }, func(*desk.Model) []desk.Choice {
			var out []desk.Choice
			for _, n := range strings.Fields("apple pear plum fig date lime kiwi melon grape peach cherry") {
				out = append(out, desk.Choice{Value: n, Says: n})
			}
			return out
		}, func(*desk.Model) string { return "" }, func(_ *desk.Model, v string) { took = v }, nil))
	}
	choose()
	deep := len(m.Stack)
	benchtest.Press(m, "1", "1", "enter")
	if took != "cherry" || len(m.Stack) != deep-1 || m.Entry != nil || m.Trouble {
		t.Errorf("row 11: %q, %d screens, %q", took, len(m.Stack), m.Says)
	}
	choose()
	benchtest.Press(m, "1", "2", "enter")
	if !m.Trouble || !strings.Contains(m.Says, "there is no row 12: 1 to 11") {
		t.Errorf("row 12: %q", m.Says)
	}
	benchtest.Press(m, "esc", "down", "down", "enter")
	if took != "plum" {
		t.Errorf("by arrows: %q", took)
	}
}

// Like values are typed one after another: the row below is in hand once one is taken, and not
// where it was refused.
func TestNextRowAfterAValue(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	got := [3]string{}
	m.Open(desk.Screen{Kind: desk.KindChoice, Title: "lengths", Page: func(*desk.Model, int) desk.Page {
		var p desk.Page
		for k := range got {
			p.Rows = append(p.Rows, desk.Row{Key: string(rune('a' + k)), Text: got[k], Field: &desk.Field{Number: true, Next: true,
				Set: func(_ *desk.Model, text string) error { got[k] = text; return nil }}})
		}
		return p
	}})
	benchtest.Press(m, "7", "enter", "8", "x", "enter", "9", "esc", "6", "enter", "5", "enter")
	if got != [3]string{"7", "8", "5"} {
		t.Errorf("typed one after another: %q", got)
	}
}

// Where rows stand for wires or sizes, digits are the wire or the size and never the number of a row.
func TestNumbersThatRowsStandFor(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	took := ""
	choose := func() {
		m.Open(desk.ChooseScreen("a size", func(*desk.Model) bool { return true }, func(*desk.Model) []desk.Choice {
			var out []desk.Choice
			for _, n := range strings.Fields("24 22 20 4 2 0.35mm2") {
				out = append(out, desk.Choice{Value: n, Says: n + " wire"})
			}
			return out
		}, func(*desk.Model) string { return "" }, func(_ *desk.Model, v string) { took = v }, nil))
	}
	choose()
	if v := benchtest.View(m); strings.Contains(v, "1 24 wire") || strings.Contains(v, "1   24 wire") {
		t.Errorf("a second number stands before each row:\n%s", v)
	}
	benchtest.Press(m, "2", "enter") // not the second row, which is 22
	if took != "2" || m.Trouble {
		t.Errorf("2: %q, %q", took, m.Says)
	}
	choose()
	benchtest.Press(m, "3", "enter") // there is a third row, and no size 3
	if !m.Trouble || !strings.Contains(m.Says, "3 is not in the list") {
		t.Errorf("3: %q", m.Says)
	}
}
