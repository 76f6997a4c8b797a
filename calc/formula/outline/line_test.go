package outline

import (
	"math"
	"testing"

	"contralay/model/unit"
)

// TestBeside: a line 5 mm to the left of 10 mm along x, a quarter turn left round 3 mm, and 10 mm up. The arc is inside
// of it, so it becomes a corner: two straights are left. To the right it is a quarter of a circle of 8 mm.
func TestBeside(t *testing.T) {
	quarter := unit.Millimetre(3 * math.Pi / 2)
	l := Line{{Length: 10}, {From: Point{10, 0}, Length: quarter, Radius: 3}, {From: Point{13, 3}, Heading: 90, Length: 10}}
	left := l.Beside(5)
	if len(left) != 2 || left[0].From != (Point{0, 5}) || left[1].From != (Point{8, 3}) || left[1].Length != 10 {
		t.Errorf("left: %+v", left)
	}
	right := l.Beside(-5)
	if len(right) != 3 || right[1].Radius != 8 || math.Abs(float64(right[1].Length)-8*math.Pi/2) > 1e-9 {
		t.Errorf("right: %+v", right)
	}
}

// TestTriedAngles: side ways are tried at whole steps of 15°, as a set square gives them, once each, from 30 to 135; 45 first.
func TestTriedAngles(t *testing.T) {
	seen := map[unit.Degree]bool{}
	for _, a := range tried {
		if math.Mod(float64(a), 15) != 0 || a < 30 || a > 135 || seen[a] {
			t.Errorf("%v is tried", a)
		}
		seen[a] = true
	}
	if len(seen) != 8 || tried[0] != 45 {
		t.Errorf("%v", tried)
	}
}

// TestPart: a part that begins or ends where two pieces meet has nothing of the other.
func TestPart(t *testing.T) {
	l := Line{{Length: 10}, {From: Point{10, 0}, Length: 20}, {From: Point{30, 0}, Length: 5}}
	if p := l.Part(10, 30); len(p) != 1 || p[0].From != (Point{10, 0}) || p[0].Length != 20 {
		t.Errorf("the middle: %+v", p)
	}
	if p := l.Part(4, 32); len(p) != 3 || p[0].Length != 6 || p[2].Length != 2 {
		t.Errorf("over all three: %+v", p)
	}
	if p := l.Part(10, 10); len(p) != 0 {
		t.Errorf("nothing: %+v", p)
	}
}

// TestPutTurnsLeftFirst: where the preferred direction is taken, a text goes 15° to the left of it before it goes to the right.
func TestPutTurnsLeftFirst(t *testing.T) {
	var f Field
	f.Take(Box{Low: Point{18, -0.5}, High: Point{28, 0.5}})
	b, _, _ := f.Put(Frame{Wide: 4, High: 2, Clear: 20})
	if mid := (b.Low.Y + b.High.Y) / 2; !(mid > 2 && mid < 10) {
		t.Errorf("it lies at %+v", b)
	}
}

// TestPointsOfAnArc: a chord of angle a lies r·(1 − cos a/2) off its arc. Of 100 mm, 0.5 mm off, a = 2·acos(0.995) = 0.2001: a quarter
// turn takes
// 1.5708/0.2001 = 7.85, so eight. To a millionth of a millimetre it would be thousands: 720 are the most. A straight is one.
func TestPointsOfAnArc(t *testing.T) {
	quarter := Piece{Length: 50 * math.Pi, Radius: 100}
	for _, c := range []struct {
		l    Line
		near unit.Millimetre
		want int
	}{{Line{quarter}, 0.5, 9}, {Line{{Length: 50 * math.Pi, Radius: -100}}, 0.5, 9}, {Line{quarter}, 1e-6, 721}, {Line{quarter}, 500, 2},
		{Line{{Length: 9}}, 0.5, 2},
		{Line{{Length: 9}, {From: Point{9, 0}, Length: 50 * math.Pi, Radius: 100}}, 0.5, 10}, {nil, 0.5, 0}} {
		points := c.l.Points(c.near)
		if len(points) != c.want {
			t.Errorf("%+v to %v: %d points, want %d", c.l, c.near, len(points), c.want)
		}
		for _, p := range points {
			if c.l[0].Radius != 0 && math.Abs(float64(p.To(c.l[0].Centre()))-100) > 1e-9 {
				t.Errorf("%v lies off the arc", p)
			}
		}
	}
}

// TestPointsKeepNear: of n chords over an arc of radius r and turn a each is r·(1 − cos(a/2n)) off it in its middle. They are as
// few as keep that within near, whatever the turn.
func TestPointsKeepNear(t *testing.T) {
	off := func(r, deg float64, n int) float64 {
		sin := math.Sin(deg / 180 * math.Pi / 4 / float64(n)) // 1 − cos x = 2·sin²(x/2), without losing digits
		return 2 * r * sin * sin
	}
	for _, r := range []float64{0.5, 12, 100, -100} {
		for deg := 1.0; deg <= 360; deg++ {
			for _, near := range []float64{0.01, 0.02, 0.3} {
				turn := Piece{Length: unit.Millimetre(math.Abs(r) * deg / 180 * math.Pi), Radius: unit.Millimetre(r)}
				n := len(Line{turn}.Points(unit.Millimetre(near))) - 1
				if n < 1 || off(math.Abs(r), deg, n) > near*(1+1e-9) || n > 1 && off(math.Abs(r), deg, n-1) < near*(1-1e-9) {
					t.Fatalf("%v degrees of radius %v to %v mm: %d chords, %v mm off", deg, r, near, n, off(math.Abs(r), deg, n))
				}
			}
		}
	}
}
