package drawing_test

import (
	"math"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/drawing"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// What a drawing lies within, told a second time: every line with half its width to all sides, the four corners of every end, every
// peg with half its size; the sides touch something.
func TestDrawingLiesWithin(t *testing.T) {
	for name, d := range map[string]drawing.Drawing{"small": drawing.Of(built(t, nil)), "turned": drawing.Of(built(t,
		func(h *model.Harness) {
			h.Branches[1].LeavesDeg, h.Branches[2].LeavesDeg = model.Some(unit.Degree(120)), model.Some(unit.Degree(-100))
		})), "trunk": drawing.Of(calctest.Laid(t, "trunk"))} {
		low, high := drawing.Point{X: 1e9, Y: 1e9}, drawing.Point{X: -1e9, Y: -1e9}
		take := func(x, y, room unit.Millimetre) {
			low.X, low.Y, high.X, high.Y = min(low.X, x-room), min(low.Y, y-room), max(high.X, x+room), max(high.Y, y+room)
		}
		for _, b := range d.Branches {
			for _, p := range b.Line.Points(0.02) {
				take(p.X, p.Y, b.WidthMM/2)
			}
		}
		for _, e := range d.Ends {
			sin, cos := math.Sincos(float64(e.Heading) * math.Pi / 180)
			for _, along := range []unit.Millimetre{e.FrontMM, -e.BackMM} {
				for _, across := range []unit.Millimetre{-e.WideMM / 2, e.WideMM / 2} {
					take(e.At.X+along*unit.Millimetre(cos)-across*unit.Millimetre(sin),
						e.At.Y+along*unit.Millimetre(sin)+across*unit.Millimetre(cos), 0)
				}
			}
		}
		for _, p := range d.Pegs {
			take(p.At.X, p.At.Y, d.PegMM/2)
		}
		for what, v := range map[string][2]unit.Millimetre{"left": {d.Low.X, low.X}, "bottom": {d.Low.Y, low.Y}, "right": {d.High.X,
			high.X},
			"top": {d.High.Y, high.Y}} {
			calctest.Near(t, name+": "+what, float64(v[0]), float64(v[1]), 0.1)
		}
		if len(d.Pegs) == 0 || !(d.High.X > d.Low.X) || !(d.High.Y > d.Low.Y) {
			t.Errorf("%s: %d pegs, %v to %v", name, len(d.Pegs), d.Low, d.High)
		}
	}
}

// Covers inside out, by hand: what lies beneath, the sheath once, what lies over it. Zones, lay and bends of that trunk: a zone of 25 mm
// and a diameter before it; a bend of 40 mm inside has half the OD more along its axis.
func TestABranchBeforeItIsLaid(t *testing.T) {
	text := strings.Replace(small, "id = \"T1\"\nfrom = \"P1\"\nto = \"J1\"\nlength_mm = 450.0\n", `id = "T1"
from = "P1"
to = "J1"
length_mm = 450.0
bend_mm = 40.0
  [[branch.cover]]
  what = "tape"
  part = "T-1"
  from_mm = 10.0
  to_mm = 200.0
  [[branch.cover]]
  what = "sheath"
  part = "AS23053/16 3.2"
  from_mm = 20.0
  to_mm = 300.0
  [[branch.cover]]
  what = "sleeve"
  part = "S-1"
  thick_mm = 0.5
  from_mm = 50.0
  to_mm = 100.0
  [[branch.via]]
  at_mm = 200.0
  turn_deg = 30.0
  [[branch.via]]
  at_mm = 350.0
  turn_deg = -30.0
  radius_mm = 90.0
`, 1)
	s := calctest.Built(t, text)
	d := drawing.Of(s)
	b := &d.Branches[0]
	if len(b.Covers) != 3 {
		t.Fatalf("%+v", b.Covers)
	}
	for k, want := range []drawing.Cover{{What: "tape", Part: "T-1", From: 10, To: 200}, {What: "sheath", Part: "AS23053/16 3.2",
		From: 20, To: 300},
		{What: "sleeve", Part: "S-1", From: 50, To: 100}} {
		c := b.Covers[k]
		c.OverMM = 0
		if c != want {
			t.Errorf("cover %d is %+v, want %+v", k, c, want)
		}
	}
	if !(b.Covers[0].OverMM > b.BundleMM && b.Covers[1].OverMM > b.Covers[0].OverMM && b.Covers[2].OverMM > b.Covers[1].OverMM) ||
		b.WidthMM != b.Covers[2].OverMM {
		t.Errorf("from %v: %+v, wide %v", b.BundleMM, b.Covers, b.WidthMM)
	}
	if len(b.Bends) != 2 || b.Bends[0].Station != 200 || b.Bends[0].Turn != 30 || b.Bends[0].Radius != 40+b.BundleMM/2 ||
		b.Bends[1].Radius != 90 || b.Bends[1].Turn != -30 || !d.Keyed {
		t.Errorf("%+v", b.Bends)
	}
	if b.Zones != [2]unit.Millimetre{0, 25} || b.Lay != [2]unit.Millimetre{0, 450 - 25 - b.BundleMM} {
		t.Errorf("zones %v, lay %v", b.Zones, b.Lay)
	}
	// A leg that comes from the breakout has its zone first; one that is straight has no lay.
	h := calctest.Parse(t, text)
	h.Branches[1].Make = model.Some(model.MakeStraight)
	other := drawing.Of(builtOf(t, h))
	if l := other.Branches[1]; l.Zones != [2]unit.Millimetre{25, 0} || l.Lay != [2]unit.Millimetre{} {
		t.Errorf("%+v", l)
	}
	if l := d.Branches[1]; l.Lay != [2]unit.Millimetre{25 + l.BundleMM, 300} {
		t.Errorf("%+v", l.Lay)
	}
}

func builtOf(t *testing.T, h *model.Harness) *sheet.Sheet {
	t.Helper()
	return calc.Build(h, calctest.Catalogue(t), nil)
}
