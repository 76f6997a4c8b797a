package layers_test

import (
	"strings"
	"testing"

	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
)

// Whatever shows the centre says what it is built up to and with how much tape.
func TestBuiltUpCentreIsSaid(t *testing.T) {
	const says = "K1 built up to 4.0 with 1.00 mm of PTFE tape"
	said := func(m *desk.Model) string { return strings.Join(strings.Fields(benchtest.View(m)), " ") }
	m := benchtest.WaysAlone(benchtest.Open(t, "built-up.toml"))
	benchtest.Press(m, "right")
	if v := said(m); strings.Count(v, says) < 2 || !strings.Contains(v, "K1 built up 4.0") || strings.Contains(v, "1 filler") {
		t.Errorf("the lay-up and its centre:\n%s", benchtest.View(m))
	}
	benchtest.Press(m, "down", "down", "down") // past what it is now
	// The tape of an option is worked out: 3.0 mm is to become 1.336 x 3.0 = 4.01 (lay.md, 7 round a built-up single).
	if v := said(m); !strings.Contains(v, "K1 built up to 4.0 with 1.01 mm of tape") {
		t.Errorf("the what-if with a built-up centre:\n%s", benchtest.View(m))
	}
	benchtest.Press(m, "up", "up", "up", "enter")
	if v := said(m); !strings.Contains(v, "K1 built up to 4.0 with 1.00 mm of") || !strings.Contains(v, "tape PTFE tape") {
		t.Errorf("the layer:\n%s", benchtest.View(m))
	}
	benchtest.Press(m, "esc", "w") // on the row of the centre
	if v := said(m); !strings.Contains(v, "tape that builds it up") {
		t.Errorf("its why:\n%s", benchtest.View(m))
	}
}

// The tape goes with the centre that it was wound for: what is asked next is judged without it.
func TestTapeIsOffWithItsCentre(t *testing.T) {
	m := benchtest.Open(t, "built-up.toml")
	benchtest.Press(m, "right", "+") // K1 is moved out of the centre, and with it goes the centre
	benchtest.Press(m, "backspace")
	if b := m.H.Branches[0].Layers[0]; b.BindMM.V != 1 {
		t.Fatalf("undone, the tape is %v", b.BindMM)
	}
	benchtest.Press(m, "down", "-") // one of layer 1 comes into the centre
	l := m.H.Branches[0].Layers[0]
	if len(l.Of) != 2 || l.BindMM.Set || l.BindPart.Set || !strings.Contains(m.Says, "its tape is off") {
		t.Errorf("%+v: %s", l, m.Says)
	}
	// 3.0 and 1.09 in contact are 4.09 across.
	if got := float64(m.Sheet.Branches[0].Layers[0].OverMM); got < 4.08 || got > 4.1 {
		t.Errorf("the centre is %v mm", got)
	}
}
