package section_test

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"contralay/ui/paper/laycard/section"
	"contralay/ui/paper/laycard/section/readback"
)

// ring is a bundle with one ring of n pieces of a diameter in hand round a core, all touching it.
func ring(n int, d float64, id func(k int) string) section.Asked {
	core := max(d, d/math.Sin(math.Pi/float64(max(n, 3)))-d)
	a := section.Asked{OverMM: core + 2*d, Least: 60, Most: 100}
	a.Pieces = append(a.Pieces, section.Piece{ID: "core", D: core, Position: 1})
	for k := range n {
		angle := 2 * math.Pi * float64(k) / float64(n)
		a.Pieces = append(a.Pieces, section.Piece{ID: id(k), X: (core + d) / 2 * math.Sin(angle), Y: (core + d) / 2 * math.Cos(angle), D: d,
			InHand: true, Outside: true, Position: k + 1, Tracer: k == 0})
	}
	return a
}

func three(k int) string { return fmt.Sprint(101 + k) }

// By hand: six of 1 mm round one of 1 mm is 3 mm over. A number of three figures at 4.62 mm is
// 3 × 0.556 × 4.62 = 7.71 mm wide and 0.76 × 4.62 = 3.51 mm high, and line and gap are 0.47 mm on both
// sides. So 1 mm of bundle takes 9.41 mm of paper and the bundle 28.2; with a gap of 1 mm and positions
// of one figure (11 pt: 3.88 mm; 2.16 × 2.95) it is 37.5 mm wide, and 60 are wanted at least.
func TestWidthByHand(t *testing.T) {
	a := ring(6, 1, three)
	a.Least = 0
	if got, want := section.Inside(a), 3*(math.Hypot(7.71, 3.51)+2*0.47)+2*(1+math.Hypot(2.16, 2.95)); math.Abs(got-want) > 0.1 {
		t.Errorf("the picture needs %.2f mm, by hand %.2f", got, want)
	}
	a.Least = 60
	if p := section.Of(a); p.W != 60 || p.H != 60 || len(p.Leaders) != 0 {
		t.Errorf("it is %.1f by %.1f mm with %d leaders, and should be 60 by 60 with none", p.W, p.H, len(p.Leaders))
	}
}

// What has no room inside at the width there is stands outside, on leaders; the picture is then as
// wide as it may be.
func TestTooSmallForItsDisc(t *testing.T) {
	p := section.Of(ring(40, 1.1, func(k int) string { return fmt.Sprint(1101 + k) }))
	if len(p.Leaders) != 40 || p.W != 100 {
		t.Errorf("%d leaders of 40, %.1f mm wide of 100", len(p.Leaders), p.W)
	}
	for _, l := range p.Labels {
		if l.What == section.Number && math.Hypot(l.X-p.CX, l.Y-p.CY) < p.Over {
			t.Errorf("%s stands in the bundle", l.Text)
		}
	}
}

// mixed is a ring of pieces of different diameters round a core, side by side from the top, in any
// order in the list.
func mixed(t *rapid.T, id func(k int) string) section.Asked {
	n := rapid.IntRange(1, 60).Draw(t, "pieces")
	thin, thick := rapid.Float64Range(0.6, 1.5).Draw(t, "thin"), rapid.Float64Range(1.5, 6).Draw(t, "thick")
	var ds []float64
	sum := 0.0
	for range n {
		d := thin
		if rapid.IntRange(0, 9).Draw(t, "is thick") == 0 {
			d = thick
		}
		ds, sum = append(ds, d), sum+d
	}
	r := max(sum/2/math.Pi*1.02, thick) // of their middles, so that they do not cover each other
	a := section.Asked{OverMM: 2*r + thick, Least: 60, Pieces: []section.Piece{{ID: "core", D: 2*r - thick, Position: 1}}}
	angle := 0.0
	for k, d := range ds {
		step := d * rapid.Float64Range(1.01, 1.02).Draw(t, "room") / r / 2
		if k > 0 {
			angle += step
		}
		a.Pieces = append(a.Pieces, section.Piece{ID: id(k), X: r * math.Sin(angle), Y: r * math.Cos(angle), D: d, InHand: true,
			Outside: true, Position: k + 1, Tracer: k == 0})
		angle += step
	}
	return a
}

// Whatever is in hand, every number is in the picture once, high enough, and covers no other text,
// no line of a disc and no leader; no two leaders cross.
func TestEveryPicture(t *testing.T) {
	led := 0
	rapid.Check(t, func(t *rapid.T) {
		letters := rapid.IntRange(1, 5).Draw(t, "letters")
		a := mixed(t, func(k int) string { return fmt.Sprintf("%0*d", letters, k) })
		a.Most = rapid.Float64Range(90, 180).Draw(t, "most")
		for k := range a.Pieces[1:] {
			switch rapid.IntRange(0, 5).Draw(t, "kind") {
			case 0:
				a.Pieces[1+k].Mark = fmt.Sprintf("S%d", k)
			case 1:
				a.Pieces[1+k].Kind = section.Filler
			}
		}
		a.Pieces = rapid.Permutation(a.Pieces).Draw(t, "order")
		p := section.Of(a)
		if len(p.Left) > 0 {
			return // said, and held by another test
		}
		if len(p.Leaders) > 0 {
			led++
		}
		readback.Check(t, p.SVG("a bundle"), a)
	})
	if led == 0 {
		t.Error("no picture had a leader")
	}
}

// Pieces in two crowds on both sides of the widest gap and a few opposite: the numbers of the crowds
// would run into each other there.
func TestCrowdsOnBothSidesOfTheGap(t *testing.T) {
	a := section.Asked{OverMM: 10, Least: 60, Most: 90}
	for k := range 51 {
		angle := 1.15 + 0.002*float64(k)
		switch {
		case k >= 27:
			angle = 5.13 - 0.002*float64(51-k)
		case k >= 24:
			angle = 3.13 + 0.002*float64(k)
		}
		a.Pieces = append(a.Pieces, section.Piece{ID: three(k), X: 4.9 * math.Sin(angle), Y: 4.9 * math.Cos(angle), D: 0.01, InHand: true,
			Outside: true, Position: 0})
	}
	p := section.Of(a)
	if len(p.Left) > 0 {
		t.Fatalf("%d have no number", len(p.Left))
	}
	readback.Check(t, p.SVG("a bundle"), a)
}

// Where even leaders have no room, what has no number is said.
func TestNoRoomIsSaid(t *testing.T) {
	p := section.Of(ring(200, 1, func(k int) string { return fmt.Sprint(1000 + k) }))
	if len(p.Left) != 200 {
		t.Errorf("%d of 200 are said to have no number", len(p.Left))
	}
	if q := section.Of(section.Asked{}); q.SVG("") != "" {
		t.Error("nothing gives a picture")
	}
}
