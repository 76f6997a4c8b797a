package board

import (
	"slices"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/drawing"
	"contralay/model/unit"
	"contralay/ui/paper/plot"
	"contralay/ui/paper/tile"
)

// The round scales, one after another.
func TestRoundScales(t *testing.T) {
	var got []string
	for s := 1.0; s < 100; s = next(s) {
		got = append(got, num(s))
		if s > 1 && num(next(larger(s))) != num(s) {
			t.Errorf("after %v comes %v", larger(s), next(larger(s)))
		}
	}
	if all := strings.Join(got, " "); all != "1 2 2.5 4 5 6 8 10 12 15 20 25 30 40 50 75" {
		t.Errorf("%s", all)
	}
}

// trunk is how long the centre line of T1 is drawn, the longest of all.
func trunk(p *plot.Sheet) (long unit.Millimetre) {
	for _, s := range p.Shapes {
		if s.Layer == plot.Centre {
			long = max(long, s.Way[0].To(s.Way[len(s.Way)-1]))
		}
	}
	return long
}

// A loom in small takes its room, less 14 mm at both sides and three sizes of its letters in height: whichever is less. A loom without
// branches is no drawing.
func TestInSmall(t *testing.T) {
	s := forked(t)
	d := drawing.Of(s)
	span := d.High.Minus(d.Low)
	for _, c := range []struct{ wide, high, scale unit.Millimetre }{
		{100, 1000, (100 - 28) / span.X}, {1000, 60, (60 - 9.6) / span.Y},
	} {
		p := Small(s, c.wide, c.high)
		if got := trunk(p); num(float64(got)) != num(float64(400*c.scale)) {
			t.Errorf("in %v x %v the trunk is %v long, by hand %v", c.wide, c.high, got, 400*c.scale)
		}
		for _, x := range p.Shapes {
			if x.Text != "" && x.Size != 3.2 {
				t.Errorf("%s", stroke(x))
			}
		}
	}
	none := calctest.Built(t, "format = 1\n")
	one := calctest.Built(t, "format = 1\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Z\"\n[[branch]]\nid = \"T1\"\nfrom = "+
		"\"A\"\nto = \"Z\"\nlength_mm = 100.0\n")
	if p, notes := Page(none, 100, 100, unit.MM); Small(none, 100, 100) != nil || p != nil || notes != nil {
		t.Error("a loom without branches is drawn")
	}
	if p, _ := Page(one, 100, 100, unit.MM); Small(one, 100, 100) == nil || p == nil {
		t.Error("a loom of one branch is not drawn")
	}
	if _, err := Make(none, tile.Papers[0], Meta{}); err == nil ||
		err.Error() != "it has no branch yet, so there is nothing to draw. Add one on the map of branches" {
		t.Errorf("%v", err)
	}
	if out, err := Make(one, tile.Papers[0], Meta{}); err != nil || out.Pages == 0 {
		t.Errorf("%v", err)
	}
}

// On a page a loom lies across it or goes up it, whichever makes it larger, at the largest round scale with its words in the room, its
// caption below.
func TestLargestOnAPage(t *testing.T) {
	s := forked(t)
	for _, c := range []struct{ wide, high unit.Millimetre }{{186, 226}, {226, 100}, {186, 300}, {300, 120}, {200, 90}} {
		p, notes := Page(s, c.wide, c.high, unit.MM)
		size := p.Box.High.Minus(p.Box.Low)
		if size.X > c.wide || size.Y > c.high {
			t.Errorf("in %v x %v it takes %v", c.wide, c.high, size)
		}
		scale := 400 / float64(trunk(p))
		if !slices.ContainsFunc(scales, func(s float64) bool { return num(s) == num(scale) }) {
			t.Errorf("in %v x %v it is drawn at 1:%v", c.wide, c.high, scale)
		}
		d := drawing.Of(s)
		if len(notes) != len(d.Notes) || len(notes) == 0 {
			t.Errorf("%d notes of %d", len(notes), len(d.Notes))
		}
		larger := larger(scale)
		if larger == scale {
			continue
		}
		for _, way := range []drawing.Drawing{d, turned(d)} { // no larger scale has room, but one more than twice as large
			o := Scaled(&way, c.wide, c.high, unit.MM)
			if o.Scale < 1/larger/1.001 && 1/o.Scale > larger {
				continue
			}
			box := Draw(s, &way, Options{Scale: 1 / larger, Size: 3.2}).Box
			if b := box.High.Minus(box.Low); b.X <= c.wide && b.Y+captionHigh <= c.high {
				t.Errorf("in %v x %v it is drawn at 1:%v, and has room at 1:%v", c.wide, c.high, scale, larger)
			}
		}
	}
}

// What is made is the drawing in all its forms: the identity is on its pages, the pages are counted, lengths are in the unit of the file.
func TestAllThatIsMade(t *testing.T) {
	s := forked(t)
	s.H.Head.Units.V = "in"
	a4, _ := tile.Find("a4")
	out, err := Make(s, a4, Meta{On: "2026-05-31", File: "x.toml"})
	if err != nil {
		t.Fatal(err)
	}
	if n := strings.Count(string(out.PDF), "/Type /Page\n"); out.Pages < 2 || n != out.Pages {
		t.Errorf("%d pages are told, %d are in the PDF", out.Pages, n)
	}
	svg := string(out.SVG)
	if !strings.Contains(svg, "identity "+out.Identity) || !strings.Contains(svg, "lengths in in, pegs in mm") ||
		!strings.Contains(svg, "L2  "+unit.Inch.Length(100)+" in") ||
		len(out.DXF) < 1000 {
		t.Errorf("%s is not in %.3000s", out.Identity, svg)
	}
	if other, _ := Make(s, a4, Meta{On: "2026-06-01", File: "x.toml"}); other.Identity == out.Identity {
		t.Error("another day has the same identity")
	}
}

// Everything is drawn once, whatever it is: the edges of each branch, the datum, a dial.
func TestAllIsDrawn(t *testing.T) {
	s := forked(t)
	d := drawing.Of(s)
	count := map[plot.Layer]int{}
	for _, x := range Draw(s, &d, FullSize(unit.MM)).Shapes {
		if x.Fill == plot.None && x.Text == "" {
			count[x.Layer]++
		}
	}
	if count[plot.Bundle] != 2*3 || count[plot.Centre] != 3 || count[plot.Frame] != 4+2*3 { // four arms of the datum, a cross at each end
		t.Errorf("%v", count)
	}
}

// The key plan stands on the first page beside the block: from 198 to 287 and from 20 to 200 mm of A4 lying down.
func TestWhereTheKeyPlanStands(t *testing.T) {
	world := &plot.Sheet{Box: plot.Box{High: plot.Point{X: 600, Y: 300}}}
	world.Way(plot.Centre, 0.13, plot.Point{Y: 300}, plot.Point{X: 600, Y: 300})
	a4, _ := tile.Find("a4")
	c := tile.Of(world, a4)
	want := &plot.Sheet{}
	keyPlan(want, world, &c, plot.Box{Low: plot.Point{X: 198, Y: 20}, High: plot.Point{X: 287, Y: 200}})
	var lines []string
	for _, s := range want.Shapes {
		lines = append(lines, stroke(s))
	}
	page := fronts(headed(), &drawing.Drawing{}, world, &c, Meta{})[0]
	same(t, "key plan", page.Views[0].Of.Shapes[:len(lines)], lines...)
	high := &plot.Sheet{Box: plot.Box{High: plot.Point{X: 200, Y: 1500}}} // here its height decides
	high.Way(plot.Centre, 0.13, plot.Point{}, plot.Point{Y: 1500})
	c = tile.Of(high, a4)
	want = &plot.Sheet{}
	keyPlan(want, high, &c, plot.Box{Low: plot.Point{X: 198, Y: 20}, High: plot.Point{X: 287, Y: 200}})
	if got := fronts(headed(), &drawing.Drawing{}, high, &c, Meta{})[0].Views[0].Of.Shapes[0]; stroke(got) != stroke(want.Shapes[0]) {
		t.Errorf("%s, want %s", stroke(got), stroke(want.Shapes[0]))
	}
}
