package wires_test

import (
	"math"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// A wall that was measured stands over the catalogue's, one read off the reel over both.
func TestLearnedWall(t *testing.T) {
	s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "", calctest.CoverText("sheath", "  part = \"AS23053/16 9.5\"\n"))
	was := s.Branches[0].Sheath.Tube.V.WallMM
	cat := calctest.Corrected(s, catalogue.Correction{Of: "wall, AS23053/16", Bias: 0.1, Readings: 9})
	n := calc.Build(s.H, cat, s)
	if tube := n.Branches[0].Sheath.Tube.V; math.Abs(float64(tube.WallMM-was*1.1)) > 1e-9 || tube.WallStanding != catalogue.House {
		t.Errorf("wall %v, was %v", tube.WallMM, was)
	}
	h := *s.H
	h.Parts = []model.Part{{ID: "AS23053/16 9.5", WallMM: model.Some[unit.Millimetre](1.0)}}
	if tube := calc.Build(&h, cat, n).Branches[0].Sheath.Tube.V; tube.WallMM != 1.0 {
		t.Errorf("read off the reel: %v", tube.WallMM)
	}
	if tube := calc.Build(s.H, s.Cat, n).Branches[0].Sheath.Tube.V; tube.WallMM != was {
		t.Errorf("the catalogue itself was changed: %v", tube.WallMM)
	}
}
