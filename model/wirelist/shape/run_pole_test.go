package shape

import "testing"

// The dash of an arrow is none of its near end; a single one with a blank on either side is the pole of the device.
func TestSplitRunKeepsThePole(t *testing.T) {
	for cell, want := range map[string][2]string{
		"BATTERY - -> FRAME STUD": {"BATTERY -", "FRAME STUD"},
		"Battery - → Frame":       {"Battery -", "Frame"},
		"BATTERY + -> FUSE":       {"BATTERY +", "FUSE"},
		"PSU V- -> X1":            {"PSU V-", "X1"},
		"P1:2 --> X2:1":           {"P1:2", "X2:1"},
		"P1:2 ---> X2:1":          {"P1:2", "X2:1"},
		"P1:2 - - -> X2:1":        {"P1:2", "X2:1"},
		"P1:2 <-> X2:1":           {"P1:2", "X2:1"},
		"P1:2->X2:1":              {"P1:2", "X2:1"},
	} {
		from, to, ok := SplitRun(cell)
		if !ok || from != want[0] || to != want[1] {
			t.Errorf("%q: %q and %q, want %q and %q", cell, from, to, want[0], want[1])
		}
	}
}
