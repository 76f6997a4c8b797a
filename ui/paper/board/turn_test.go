package board

import (
	"testing"

	"contralay/calc/formula/outline"
	"contralay/calc/query/drawing"
)

// A quarter turn to the left, by hand: what lay at (x, y) lies at (−y, x), what headed east heads north; the drawing that was turned stays.
func TestAQuarterTurn(t *testing.T) {
	was := drawing.Drawing{Branches: []drawing.Branch{{Line: outline.Line{{From: drawing.Point{X: 10, Y: 20}, Heading: 30, Length: 5}}}},
		Ends:    []drawing.End{{ID: "A", At: drawing.Point{X: 1, Y: 2}, Heading: 180}},
		Joints:  []drawing.Joint{{At: drawing.Point{X: 3, Y: -4}}},
		Sleeves: []drawing.Sleeve{{At: drawing.Point{X: 5, Y: 6}, Heading: -10}}, Pegs: []drawing.Peg{{No: 1, At: drawing.Point{X: -7,
			Y: 8}}},
		Low: drawing.Point{X: -7, Y: -4}, High: drawing.Point{X: 10, Y: 20}}
	got := turned(was)
	if l := got.Branches[0].Line[0]; l.From != (drawing.Point{X: -20, Y: 10}) || l.Heading != 120 || l.Length != 5 {
		t.Errorf("%+v", l)
	}
	if e := got.Ends[0]; e.ID != "A" || e.At != (drawing.Point{X: -2, Y: 1}) || e.Heading != 270 {
		t.Errorf("%+v", e)
	}
	if got.Joints[0].At != (drawing.Point{X: 4, Y: 3}) || got.Sleeves[0].At != (drawing.Point{X: -6, Y: 5}) ||
		got.Sleeves[0].Heading != 80 ||
		got.Pegs[0].At != (drawing.Point{X: -8, Y: -7}) || got.Pegs[0].No != 1 {
		t.Errorf("%+v %+v %+v", got.Joints, got.Sleeves, got.Pegs)
	}
	if got.Low != (drawing.Point{X: -20, Y: -7}) || got.High != (drawing.Point{X: 4, Y: 10}) {
		t.Errorf("%v to %v", got.Low, got.High)
	}
	if was.Branches[0].Line[0].Heading != 30 || was.Ends[0].Heading != 180 || was.Joints[0].At.X != 3 || was.Sleeves[0].Heading != -10 ||
		was.Pegs[0].At.X != -7 {
		t.Errorf("it was turned itself: %+v", was)
	}
}
