package outline_test

import (
	"testing"

	"pgregory.net/rapid"

	"contralay/calc/formula/outline"
	"contralay/model/unit"
)

// inside is whether a point lies within a box, and near how far it is from it, by hand.
func near(b outline.Box, p outline.Point) unit.Millimetre {
	x, y := max(b.Low.X-p.X, 0, p.X-b.High.X), max(b.Low.Y-p.Y, 0, p.Y-b.High.Y)
	return outline.Point{X: x, Y: y}.To(outline.Point{})
}

// Texts lie on no run and on no other text, however many belong to one place.
func TestTextsKeepClear(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tree := trees(t, 30)
		p := outline.Lay(tree)
		var f outline.Field
		for i, l := range p.Lines {
			f.Line(l, tree.Runs[i].Width)
		}
		var boxes []outline.Box
		for range rapid.IntRange(1, 40).Draw(t, "texts") {
			of := p.Places[rapid.IntRange(0, len(p.Places)-1).Draw(t, "place")]
			b, _, _ := f.Put(outline.Frame{Of: of, Wide: unit.Millimetre(rapid.IntRange(2, 60).Draw(t, "wide")),
				High: unit.Millimetre(rapid.IntRange(2, 12).Draw(t, "high")), Clear: unit.Millimetre(rapid.IntRange(0, 20).Draw(t,
					"clear")),
				Toward: unit.Degree(rapid.IntRange(-180, 180).Draw(t, "toward"))})
			for _, o := range boxes {
				if b.Low.X < o.High.X && o.Low.X < b.High.X && b.Low.Y < o.High.Y && o.Low.Y < b.High.Y {
					t.Fatalf("%v lies on %v", b, o)
				}
			}
			boxes = append(boxes, b)
			for i, r := range tree.Runs { // every half millimetre of a run, by hand
				for s := unit.Millimetre(0); s < r.Length; s += 0.5 {
					at, _ := p.Lines[i].At(s)
					if near(b, at) < r.Width/2-0.01 {
						t.Fatalf("%v lies on run %d", b, i)
					}
				}
			}
		}
	})
}

// By hand: 400 mm straight, 10 wide, 50 of it not free at each end. 300 mm take two pegs, each a
// quarter of them from its end: at 125 and 275 mm, one to the left and one to the right, 5 + 0.5 + 3
// from the centre line.
func TestPegsOfAStraight(t *testing.T) {
	p := outline.Lay(outline.Tree{Places: 2, Datum: 0, Runs: []outline.Run{{From: 0, To: 1, Length: 400, Width: 10}}})
	pegs := outline.Pegs(p.Lines, []unit.Millimetre{10}, 6, func(int) (a, b unit.Millimetre) { return 50, 50 })
	want := []outline.Point{{X: 125, Y: 8.5}, {X: 275, Y: -8.5}}
	if len(pegs) != 2 || pegs[0].At.To(want[0]) > 1e-9 || pegs[1].At.To(want[1]) > 1e-9 {
		t.Errorf("%v, by hand %v", pegs, want)
	}
}

// A bend to the left has a peg on its left before it and behind it.
func TestPegsOfABend(t *testing.T) {
	p := outline.Lay(outline.Tree{Places: 2, Datum: 0, Runs: []outline.Run{{From: 0, To: 1, Length: 200, Width: 10,
		Bends: []outline.Bend{{At: 100, Turn: 90, Radius: 20}}}}})
	pegs := outline.Pegs(p.Lines, []unit.Millimetre{10}, 6, func(int) (a, b unit.Millimetre) { return 0, 0 })
	var before, behind bool
	for _, g := range pegs { // its arc begins at x = 84.29; its straight up stands at x = 104.29
		before = before || g.At.To(outline.Point{X: 84.292, Y: 8.5}) < 0.01
		behind = behind || g.At.To(outline.Point{X: 104.292 - 8.5, Y: 20}) < 0.01
	}
	if !before || !behind {
		t.Errorf("%v", pegs)
	}
}

// No peg stands on a bundle or on another peg.
func TestPegsStandClear(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tree := trees(t, 25)
		p := outline.Lay(tree)
		widths := make([]unit.Millimetre, len(tree.Runs))
		for i, r := range tree.Runs {
			widths[i] = r.Width
		}
		pegs := outline.Pegs(p.Lines, widths, 6, func(int) (a, b unit.Millimetre) { return 10, 10 })
		for n, g := range pegs {
			for _, o := range pegs[:n] {
				if g.At.To(o.At) < 6 {
					t.Fatalf("pegs at %v and %v", g.At, o.At)
				}
			}
			for i, r := range tree.Runs {
				for s := unit.Millimetre(0); s < r.Length; s += 0.5 {
					if at, _ := p.Lines[i].At(s); g.At.To(at) < 3+r.Width/2 {
						t.Fatalf("a peg at %v stands on run %d", g.At, i)
					}
				}
			}
		}
	})
}

// A text whose nearest free place lies behind another text goes further off, where a line can lead to
// it: here straight up through the gap from x = -10 to 12, past y = 60.
func TestLeadsGoThroughNoText(t *testing.T) {
	var f outline.Field
	box := func(x, y, toX, toY unit.Millimetre) {
		f.Take(outline.Box{Low: outline.Point{X: x, Y: y}, High: outline.Point{X: toX, Y: toY}})
	}
	box(-200, -200, -10, 60)
	box(-10, -200, 200, -4)
	box(2, -3, 32, 3)
	box(12, 4, 200, 60)
	b, _, led := f.Put(outline.Frame{Wide: 30, High: 6, Clear: 2})
	if !led || b.Low.Y < 60 || b.Low.X > 12 || b.High.X < -10 {
		t.Errorf("it lies at %v, led %v", b, led)
	}
}
