package model

import "testing"

// A branch between two places begins without a length, with the letter of what it is: a trunk from a
// termination, a leg to one, a run between breakouts; the harness before stays as it was.
func TestConnect(t *testing.T) {
	h := &Harness{Terminations: []Termination{{ID: "P1"}, {ID: "X1"}}}
	trunk, a := h.Connect("P1", "")
	leg, b := trunk.Connect("J1", "X1")
	run, c := leg.Connect("J1", "")
	if a != "T1" || b != "L1" || c != "R1" || len(run.Breakouts) != 2 || len(h.Branches)+len(h.Breakouts) != 0 {
		t.Errorf("%s, %s, %s: %+v", a, b, c, run.Branches)
	}
	for i := range run.Branches {
		if run.Branches[i].Measured() {
			t.Errorf("%+v has a length", run.Branches[i])
		}
	}
	if f := run.Check(); len(f) > 0 {
		t.Errorf("%+v", f)
	}
	if way, ok := NewIndex(run).Between("P1", "X1"); !ok || len(way) != 2 {
		t.Errorf("from P1 to X1 by %v", way)
	}
}
