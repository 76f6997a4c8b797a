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

// By hand: six of 1 mm round one of 1 mm is 3 mm over. A number of three figures at 4.8 mm is
// 3 × 0.556 × 4.8 = 8.01 mm wide and, in the tallest face, 3.63 mm high: 8.79 mm across its corners,
// and 9.73 with line and gap on both sides. So 1 mm of bundle takes 9.73 mm of paper and the bundle
// 29.2; with a gap of 1 mm and positions of one figure (11 pt: 3.88 mm; 2.16 × 2.94, across 3.65) it
// is 38.5 mm wide, and 60 are wanted at least.
func TestWidthByHand(t *testing.T) {
	a := ring(6, 1, three)
	a.Least = 0
	if got, want := section.Inside(a), 3*(math.Hypot(8.01, 3.63)+2*0.47)+2*(1+math.Hypot(2.16, 2.94)); math.Abs(got-want) > 0.1 {
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

// Whatever is in hand, every number is in the picture once, high enough, and covers no other text,
// no line of a disc and no leader; no two leaders cross.
func TestEveryPicture(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 60).Draw(t, "pieces")
		letters := rapid.IntRange(1, 5).Draw(t, "letters")
		marks := rapid.IntRange(0, 6).Draw(t, "marks")
		ids := func(k int) string { return fmt.Sprintf("%0*d", letters, k)[:max(letters, len(fmt.Sprint(k)))] }
		a := ring(n, rapid.Float64Range(0.6, 4).Draw(t, "diameter"), ids)
		a.Most = rapid.Float64Range(90, 180).Draw(t, "most")
		for k := range min(marks, n) {
			a.Pieces[1+k].Mark = fmt.Sprintf("S%d", k)
		}
		if rapid.Bool().Draw(t, "fillers") {
			for k := 2; k <= n; k += 2 {
				a.Pieces[k].Kind = section.Filler
			}
		}
		p := section.Of(a)
		if len(p.Left) > 0 {
			t.Skip("there is no room for so many")
		}
		readback.Check(t, p.SVG("a bundle"), a)
	})
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
