package flat_test

import (
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
)

// open is the drawing of the demonstration, with the row of a branch in hand.
func open(t *testing.T, branch string) *desk.Model {
	t.Helper()
	m := benchtest.Open(t, "demo.toml")
	benchtest.Press(m, "esc")
	benchtest.To(t, m, "drawing of the board")
	benchtest.Press(m, "enter")
	benchtest.To(t, m, branch+"  ")
	return m
}

func leaves(m *desk.Model, id string) model.Opt[unit.Degree] {
	return m.H.Branches[m.Sheet.Index.Branch[id]].LeavesDeg
}

// Keys turn a branch: + to the left by five degrees from where it lies by rule, digits to any turn, . back
// to the rule; one undo takes each back. By hand: L21 leaves J1 by rule.
func TestKeysTurnABranch(t *testing.T) {
	m := open(t, "L20") // 45 degrees to the right, the first side way of its breakout
	benchtest.Press(m, "+")
	if got := leaves(m, "L20"); got != model.Some[unit.Degree](-40) {
		t.Errorf("+ gives %v", got)
	}
	benchtest.Press(m, "-", "-")
	if got := leaves(m, "L20"); got != model.Some[unit.Degree](-50) {
		t.Errorf("- gives %v", got)
	}
	benchtest.Press(m, "9", "0", "enter")
	if got := leaves(m, "L20"); got != model.Some[unit.Degree](90) {
		t.Errorf("90 gives %v", got)
	}
	if v := benchtest.View(m); !strings.Contains(v, "90 left  given") {
		t.Errorf("its row does not say so:\n%s", v)
	}
	was := m.H
	benchtest.Press(m, "1", "7", "1", "enter")
	if m.H != was || !strings.Contains(m.Says, "Allowed: -170 to 170 degrees") {
		t.Errorf("171 gives %v, %q", leaves(m, "L20"), m.Says)
	}
	benchtest.Press(m, "esc", ".")
	if leaves(m, "L20").Set {
		t.Errorf(". leaves %v", leaves(m, "L20"))
	}
	benchtest.Press(m, "backspace")
	if got := leaves(m, "L20"); got != model.Some[unit.Degree](90) {
		t.Errorf("undone, it is %v", got)
	}
}

// A branch that is turned into another is marked, and the page says which two cross.
func TestCrossingIsSaid(t *testing.T) {
	m := open(t, "L22")
	benchtest.Press(m, "1", "6", "0", "enter") // back across the trunk's other legs
	benchtest.To(t, m, "L21  ")
	benchtest.Press(m, "1", "3", "5", "enter")
	benchtest.To(t, m, "L22  ")
	benchtest.Press(m, "1", "3", "5", "enter")
	if v := benchtest.View(m); !strings.Contains(strings.Join(strings.Fields(v), " "), "L21 and L22 cross on the drawing") {
		t.Errorf("nothing is said:\n%s", v)
	}
}

// Beside the rows the harness is drawn, with its ends named; in plain characters there are no others.
func TestDrawnBesideTheRows(t *testing.T) {
	m := open(t, "T1")
	benchtest.Size(m, 120, 40)
	if v := benchtest.View(m); !strings.Contains(v, "CRK1") || !strings.ContainsRune(v, '⣀') {
		t.Errorf("no drawing:\n%s", v)
	}
	m.Cfg.ASCII = true
	m.Theme.ASCII = true
	if v := benchtest.View(m); !strings.Contains(v, "CRK1") || strings.ContainsFunc(v, func(r rune) bool {
		return r >= 0x2800 &&
			r < 0x2900
	}) ||
		!strings.Contains(v, "####") {
		t.Errorf("no plain drawing:\n%s", v)
	}
}
