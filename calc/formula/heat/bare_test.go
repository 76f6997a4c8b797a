package heat

import (
	"testing"

	"contralay/model/unit"
)

// A sheath whose outside is its bore is none: the same temperatures as of bare wires.
func TestSheathWithoutAWall(t *testing.T) {
	solve := func(outside float64) Result {
		s := Section{Discs: round(1.09, 0.76, 1, 6), InsideMM: 3.27, OutsideMM: unit.Millimetre(outside), Ambient: 60}
		for n := range s.Discs {
			s.Discs[n].Amps, s.Discs[n].Ohm = 5, 0.05
		}
		r, ok := Trace(s)
		if !ok {
			t.Fatal("it is not traced")
		}
		out, ok := r.Solve(s)
		if !ok {
			t.Fatal("no steady temperature")
		}
		return out
	}
	bare := solve(0)
	for _, outside := range []float64{3.27, 2} {
		got := solve(outside)
		if got.Surface != bare.Surface || got.Heat != bare.Heat || got.Discs[0] != bare.Discs[0] {
			t.Errorf("outside of %v mm: %+v, bare %+v", outside, got, bare)
		}
	}
	if thick := solve(4.5); thick.Discs[0] == bare.Discs[0] {
		t.Error("a wall changes nothing")
	}
}
