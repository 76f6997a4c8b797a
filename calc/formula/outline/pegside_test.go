package outline_test

import (
	"testing"

	"contralay/calc/formula/outline"
	"contralay/model/unit"
)

// A peg that has no room on its side stands on the other: beside a straight of 100 mm along x, 10 mm wide, its one peg of 6 mm
// would stand 8.5 mm to the left of the middle, and there lies another run; so it stands 8.5 mm to the right.
func TestPegOnTheOtherSide(t *testing.T) {
	lines := []outline.Line{{{Length: 100}}, {{From: outline.Point{X: 0, Y: 12}, Length: 100}}}
	pegs := outline.Pegs(lines, []unit.Millimetre{10, 4}, 6, func(run int) (a, b unit.Millimetre) {
		if run == 1 {
			return 100, 0 // nothing of the other run is free
		}
		return 0, 0
	})
	if len(pegs) != 1 || pegs[0].At.To(outline.Point{X: 50, Y: -8.5}) > 1e-9 {
		t.Errorf("%+v", pegs)
	}
}
