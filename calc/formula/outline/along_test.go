package outline_test

import (
	"math"
	"testing"

	"contralay/calc/formula/outline"
	"contralay/model/unit"
)

func pt(x, y unit.Millimetre) outline.Point { return outline.Point{X: x, Y: y} }

// A text of 40 by 6 along a straight of 200 mm, 5 clear of it, by hand: on the left of the line as it is read, from 80 to 120, its lower
// edge 5 above; then, that being taken, below, its upper edge 5 under the line; then it has no room there and takes the second station.
func TestTextAlongARun(t *testing.T) {
	for _, c := range []struct {
		name    string
		heading unit.Degree
		reads   unit.Degree // the way the text is read
	}{{"to the right", 0, 0}, {"to the left", 180, 360}, {"up", 90, 90}, {"down", -90, 90}, {"slanting", 30, 30},
		{"slanting down", 210, 390}} {
		line := outline.Line{{From: pt(10, 20), Heading: c.heading, Length: 200}}
		var f outline.Field
		f.Line(line, 2)
		text := outline.Along{Wide: 40, High: 6, Clear: 5, Stations: []unit.Millimetre{19, 181, 100, 40}}
		for n, want := range []struct{ station, side unit.Millimetre }{{100, 1}, {100, -1}, {40, 1}, {40, -1}} {
			at, heading, ok := f.PutAlong(line, text)
			if !ok || math.Abs(float64(heading-c.reads)) > 1e-9 {
				t.Fatalf("%s, text %d: %v read at %v, want %v", c.name, n, ok, heading, c.reads)
			}
			low := unit.Millimetre(5)
			if want.side < 0 {
				low = -5 - 6
			}
			middle := pt(10, 20).Away(c.heading, want.station)
			corner := middle.Away(c.reads, -20).Away(c.reads+90, low)
			if at.To(corner) > 1e-9 {
				t.Errorf("%s, text %d lies at %v, by hand %v", c.name, n, at, corner)
			}
		}
		if at, heading, ok := f.PutAlong(line, text); ok || at != pt(0, 0) || heading != 0 {
			t.Errorf("%s: a fifth text has room at %v", c.name, at)
		}
	}
}

// A text has no room along an arc, over a corner, past an end, in a box or beside a line that comes too near; a hair's breadth
// off it has.
func TestTextAlongIsRefused(t *testing.T) {
	bent := outline.Line{{From: pt(0, 0), Length: 50}, {From: pt(50, 0), Length: 60, Radius: 40}}
	corner := outline.Line{{From: pt(0, 0), Length: 50}, {From: pt(50, 0), Heading: 90, Length: 50}}
	straight := outline.Line{{From: pt(0, 0), Length: 100}}
	for _, c := range []struct {
		name string
		line outline.Line
		at   unit.Millimetre
		box  outline.Box
		ok   bool
	}{
		{"straight", straight, 50, outline.Box{}, true},
		{"exactly at the start", straight, 10, outline.Box{}, true},
		{"exactly at the end", straight, 90, outline.Box{}, true},
		{"past the start", straight, 9.9, outline.Box{}, false},
		{"past the end", straight, 90.1, outline.Box{}, false},
		{"before the arc", bent, 39, outline.Box{}, true},
		{"into the arc", bent, 45, outline.Box{}, false},
		{"in the arc", bent, 80, outline.Box{}, false},
		{"over the corner", corner, 50, outline.Box{}, false},
		{"a box on both sides", straight, 50, outline.Box{Low: pt(45, -9), High: pt(55, 9)}, false},
		{"a box that ends before", straight, 50, outline.Box{Low: pt(20, -9), High: pt(39.9, 9)}, true},
	} {
		var f outline.Field
		f.Line(c.line, 1)
		if c.box != (outline.Box{}) {
			f.Take(c.box)
		}
		if _, _, ok := f.PutAlong(c.line, outline.Along{Wide: 20, High: 4, Clear: 3, Stations: []unit.Millimetre{c.at}}); ok != c.ok {
			t.Errorf("%s: %v", c.name, ok)
		}
	}
	// The text is a bar 4 high whose axis lies 5 above the line: a line 1 wide over it must be 2.5 from the axis, at 7.5.
	for _, c := range []struct {
		high unit.Millimetre
		ok   bool
	}{{7.49, false}, {7.51, true}} {
		var f outline.Field
		f.Line(straight, 1)
		f.Line(outline.Line{{From: pt(0, c.high), Length: 100}}, 1)
		f.Take(outline.Box{Low: pt(0, -20), High: pt(100, -3)})
		if _, _, ok := f.PutAlong(straight, outline.Along{Wide: 20, High: 4, Clear: 3, Stations: []unit.Millimetre{50}}); ok != c.ok {
			t.Errorf("a line %v mm over: %v", c.high, ok)
		}
	}
}

// A quarter circle of 100 mm radius to the left from the datum: its middle, its end, its half, the same at half its size.
func TestLineByHand(t *testing.T) {
	quarter := unit.Millimetre(50 * math.Pi)
	l := outline.Line{{Length: quarter, Radius: 100}, {From: pt(100, 100), Heading: 90, Length: 30}}
	same := func(what string, got, want outline.Point) {
		t.Helper()
		if got.To(want) > 1e-9 {
			t.Errorf("%s: %v, by hand %v", what, got, want)
		}
	}
	same("centre", l[0].Centre(), pt(0, 100))
	if turn := l[0].Turn(); math.Abs(float64(turn-90)) > 1e-9 || l[1].Turn() != 0 {
		t.Errorf("it turns %v", turn)
	}
	half, heading := l.At(quarter / 2)
	same("half way", half, pt(100*math.Sqrt2/2, 100-100*math.Sqrt2/2))
	calcNear(t, "heading half way", float64(heading), 45)
	end, _ := l.At(quarter + 30)
	same("end", end, pt(100, 130))
	small := l.Times(0.5)
	smallEnd, _ := small.At(quarter/2 + 15)
	same("end at half size", smallEnd, pt(50, 65))
	calcNear(t, "length at half size", float64(small.Length()), float64(quarter/2+15))
	calcNear(t, "radius at half size", float64(small[0].Radius), 50)
	if l[0].Radius != 100 || l[1].From != pt(100, 100) {
		t.Error("the line itself was changed")
	}
	if p, h := (outline.Line)(nil).At(5); p != pt(0, 0) || h != 0 {
		t.Errorf("a line of nothing is at %v", p)
	}
}

// Boxes by hand.
func TestBoxByHand(t *testing.T) {
	b := outline.Box{Low: pt(1, 2), High: pt(5, 10)}
	if b.Middle() != pt(3, 6) {
		t.Errorf("middle %v", b.Middle())
	}
	for p, want := range map[outline.Point]outline.Box{pt(3, 3): b, pt(0, 11): {Low: pt(0, 2), High: pt(5, 11)},
		pt(7, 1): {Low: pt(1, 1), High: pt(7, 10)}} {
		if got := b.And(p); got != want {
			t.Errorf("with %v: %v", p, got)
		}
	}
	for _, c := range []struct {
		from, to outline.Point
		want     bool
	}{{pt(0, 0), pt(6, 12), true}, {pt(2, 3), pt(3, 4), true}, {pt(0, 0), pt(0, 12), false}, {pt(0, 0), pt(6, 1), false},
		{pt(-5, 5), pt(9, 5), true}, {pt(3, 5), pt(90, 50), true}} {
		if outline.Through(c.from, c.to, b) != c.want || outline.Through(c.to, c.from, b) != c.want {
			t.Errorf("%v to %v goes through: %v", c.from, c.to, !c.want)
		}
	}
}

func calcNear(t *testing.T, what string, got, want float64) {
	t.Helper()
	if math.Abs(got-want) > 1e-9 {
		t.Errorf("%s: %v, by hand %v", what, got, want)
	}
}
