package ends_test

import (
	"testing"

	"contralay/ui/bench/benchtest"
)

// A connector that is only counted has no contact size before somebody gives one: none is taken for granted.
func TestCountedConnectorHasNoContacts(t *testing.T) {
	m := benchtest.Typed(t, "format = 1\n")
	benchtest.GoTo(t, m, "@a connector", "enter", "7", "enter", "@none of these", "enter", "@take it", "enter")
	if n := len(m.H.Terminations); n != 1 {
		t.Fatalf("%d terminations: %s", n, m.Says)
	}
	if got := m.H.Terminations[0]; len(got.Cavities) != 7 || len(got.Contacts) > 0 {
		t.Errorf("%+v", got)
	}
	// On the row of contacts + - says one, and then it has it.
	m = benchtest.Typed(t, "format = 1\n")
	benchtest.GoTo(t, m, "@a connector", "enter", "7", "enter", "@none of these", "enter", "@contacts", "-", "@gender", "+", "@take it",
		"enter")
	if got := m.H.Terminations[0]; len(got.Contacts) != 1 || got.Gender.V != "pin" || got.Key.Set || got.Mount.Set {
		t.Errorf("%+v: %s", got, m.Says)
	}
}
