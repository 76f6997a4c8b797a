package outline_test

import (
	"testing"

	"contralay/calc/formula/outline"
	"contralay/model/unit"
)

// A run of 100 mm that turns by 90° at its very end has no room for the arc: it ends in a corner, and what goes on from there
// goes on by the turned heading. By hand: from (0, 0) to (100, 0), then up to (100, 50); a told turn of 30° comes on top.
func TestCornerAtTheEnd(t *testing.T) {
	for _, c := range []struct {
		told bool
		turn unit.Degree
		want outline.Point
	}{{false, 0, outline.Point{X: 0, Y: 50}}, {true, 90, outline.Point{X: -50, Y: 0}}, {true, -90, outline.Point{X: 50, Y: 0}}} {
		p := outline.Lay(outline.Tree{Places: 3, Datum: 0, Room: 10, Runs: []outline.Run{
			{From: 0, To: 1, Length: 100, Width: 2, Bends: []outline.Bend{{At: 100, Turn: 90, Radius: 10}}},
			{From: 1, To: 2, Length: 50, Width: 2, Turn: c.turn, Told: c.told}}})
		first, then := p.Places[1].Minus(p.Places[0]), p.Places[2].Minus(p.Places[1])
		if first.To(outline.Point{X: 100}) > 1e-9 || then.To(c.want) > 1e-9 {
			t.Errorf("%+v: %v, then %v", c, first, then)
		}
		if len(p.Trouble) != 1 || p.Trouble[0] != (outline.Trouble{Run: 0, Bend: 0}) {
			t.Errorf("%+v: no arc is left, and %v is said", c, p.Trouble)
		}
	}
}

// At a corner to the left pegs stand inside it, before and behind it by the width and the peg. By hand: 40 mm along x and 40 up,
// 10 wide, pegs of 6: at 40 − 16 = 24 and at 40 + 16 = 56 mm, both 5 + 0.5 + 3 = 8.5 mm to the left of the line: (24, 8.5) and
// (31.5, 16). Nothing is free beyond, so that no other stands.
func TestPegsOfACorner(t *testing.T) {
	line := outline.Line{{Length: 40}, {From: outline.Point{X: 40}, Heading: 90, Length: 40}}
	pegs := outline.Pegs([]outline.Line{line}, []unit.Millimetre{10}, 6, func(int) (a, b unit.Millimetre) { return 24, 24 })
	want := map[unit.Millimetre]outline.Point{24: {X: 24, Y: 8.5}, 56: {X: 31.5, Y: 16}}
	met := 0
	for _, p := range pegs {
		if at, ok := want[p.Station]; ok {
			met++
			if p.At.To(at) > 1e-9 {
				t.Errorf("at %v mm: %v, by hand %v", p.Station, p.At, at)
			}
		}
	}
	if met != 2 {
		t.Errorf("%v", pegs)
	}
}
