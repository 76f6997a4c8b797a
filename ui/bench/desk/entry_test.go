package desk_test

import (
	"strings"
	"testing"

	"contralay/ui/bench/benchtest"
)

// Letters never get into a number.
func TestNoLettersInNumbers(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	benchtest.Press(m, "2", "a", "x", ".", "5")
	if m.Entry == nil || m.Entry.Draft() != "2.5" {
		t.Errorf("draft %+v", m.Entry)
	}
}

// What changes nothing is no step to undo, and what is as the file has it is saved.
func TestNothingIsNoChange(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	// an empty reel where none was measured
	benchtest.Press(m, "enter", "enter", "backspace", "backspace", "backspace", "backspace", "backspace", "enter")
	if m.History.Steps() != 0 || m.Dirty() {
		t.Errorf("%d steps, dirty %v: %s", m.History.Steps(), m.Dirty(), m.Says)
	}
	benchtest.Press(m, "esc", "+", "-")
	if m.History.Steps() != 2 || m.Dirty() {
		t.Errorf("there and back: %d steps, dirty %v", m.History.Steps(), m.Dirty())
	}
	benchtest.Press(m, "+", "q")
	if v := benchtest.View(m); !strings.Contains(v, "discard 1 change:") {
		t.Errorf("one thing differs from the file:\n%s", v)
	}
}
