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

// Two pegs of 6 mm stand 6 apart at least, whichever way they lie to each other. Two runs, 17 mm from each other, go opposite ways: the
// one peg of each would stand between them, 8.5 mm from both, and as far from the other as the runs are shifted. Nearer than 6 the second
// stands on its other side.
func TestPegsStandClearOfPegs(t *testing.T) {
	for _, shift := range []unit.Millimetre{-5.9, 5.9, -6.01, 6.01} {
		for _, up := range []bool{false, true} {
			turned := func(x, y unit.Millimetre) outline.Point { // by a quarter to the left
				if up {
					return outline.Point{X: -y, Y: x}
				}
				return outline.Point{X: x, Y: y}
			}
			heading := unit.Degree(0)
			if up {
				heading = 90
			}
			lines := []outline.Line{{{Heading: heading, Length: 100}},
				{{From: turned(100+shift, 17), Heading: heading + 180, Length: 100}}}
			pegs := outline.Pegs(lines, []unit.Millimetre{10, 10}, 6, func(int) (a, b unit.Millimetre) { return 0, 0 })
			second := turned(50+shift, 8.5)
			if shift > -6 && shift < 6 {
				second = turned(50+shift, 25.5)
			}
			if len(pegs) != 2 || pegs[0].At.To(turned(50, 8.5)) > 1e-9 || pegs[1].At.To(second) > 1e-9 {
				t.Errorf("shifted by %v, upward %v: %+v, want the second at %v", shift, up, pegs, second)
			}
		}
	}
}
