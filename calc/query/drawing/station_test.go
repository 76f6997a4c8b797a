package drawing_test

import (
	"math"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/formula/outline"
	"contralay/calc/query/drawing"
	"contralay/model"
	"contralay/model/unit"
)

// A branch of 1,000 mm of which 400 to 700 are left out, by hand: what lies before is where it is, what lies beyond 300 nearer, what is
// left out at the break; no station lies off the line. One whose length is not known is drawn as it is.
func TestStationsOverABreak(t *testing.T) {
	line := outline.Line{{Length: 700}}
	b := drawing.Branch{Line: line, Measured: true, LengthMM: 1000, Break: model.Some(drawing.Break{From: 400, To: 700})}
	for station, want := range map[unit.Millimetre]unit.Millimetre{-5: 0, 0: 0, 399: 399, 400: 400, 401: 400, 550: 400,
		699: 400, 700: 400, 701: 401,
		1000: 700, 1200: 700} {
		if got := b.Drawn(station); got != want {
			t.Errorf("station %v is drawn at %v, want %v", station, got, want)
		}
		if at, heading := b.At(station); at.X != want || at.Y != 0 || heading != 0 {
			t.Errorf("station %v is drawn at %v", station, at)
		}
	}
	if got := b.Break.V.Long(); got != 300 {
		t.Errorf("%v are left out", got)
	}
	for _, c := range [][3]unit.Millimetre{{100, 200, 100}, {300, 800, 200}, {450, 600, 0}, {0, 1000, 700}} {
		part := b.Part(c[0], c[1])
		if got := part.Length(); math.Abs(float64(got-c[2])) > 1e-9 {
			t.Errorf("from %v to %v it is %v long as drawn, want %v", c[0], c[1], got, c[2])
		}
	}
	b.Measured = false
	if b.Drawn(550) != 550 || b.Drawn(900) != 700 {
		t.Error("a branch without a length is drawn otherwise than it is")
	}
	b.Measured, b.Break = true, model.Opt[drawing.Break]{}
	if b.Drawn(550) != 550 {
		t.Error("without a break it is drawn otherwise than it is")
	}
}

// Everything of a drawing keeps to the lengths of the file: as drawn, with what is left out, each branch is as long as it is;
// its ends lie at
// its places, so that branches meet; what belongs to a station lies there.
func TestDrawingKeepsToLengths(t *testing.T) {
	for _, name := range calctest.Files("demo", "whole", "trunk", "feeds", "example", "every-key") {
		s := calc.Build(calctest.Load(t, name+".toml"), calctest.Catalogue(t), nil) // of a branch that waits for a lay-up no OD is known
		d := drawing.Of(s)
		places := map[string][]outline.Point{}
		for i := range d.Branches {
			b, mb := &d.Branches[i], &s.H.Branches[i]
			long := b.Line.Length()
			if b.Break.Set {
				long += b.Break.V.Long()
			}
			want := mb.LengthMM
			if !mb.Measured() {
				want = 100 // as drawing says of a branch whose length is not known
			}
			if math.Abs(float64(long-want)) > 1e-6 || b.Measured != mb.Measured() {
				t.Errorf("%s: %s is drawn %v long, want %v", name, mb.ID, long, want)
			}
			first, _ := b.Line.At(0)
			last, _ := b.Line.At(b.Line.Length())
			near, far := mb.From, mb.To
			if b.Near != mb.From && b.Near != mb.To {
				t.Errorf("%s: %s comes from %s", name, mb.ID, b.Near)
			}
			places[near], places[far] = append(places[near], first), append(places[far], last)
			if b.WidthMM < s.Branches[i].OverMM-1e-9 || !(b.WidthMM > 0) {
				t.Errorf("%s: %s is %v wide and %v thick", name, mb.ID, b.WidthMM, s.Branches[i].OverMM)
			}
			if s.Branches[i].OverMM <= 0 && b.WidthMM != 4 { // common practice, no source: see thin
				t.Errorf("%s: %s of no known OD is drawn %v wide", name, mb.ID, b.WidthMM)
			}
		}
		for place, all := range places {
			for _, p := range all {
				if p.To(all[0]) > 1e-6 {
					t.Errorf("%s: branches meet at %s at %v and at %v", name, place, all[0], p)
				}
			}
		}
	}
}
