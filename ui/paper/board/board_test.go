package board_test

import (
	"bytes"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/drawing"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/board"
	"contralay/ui/paper/plot"
	"contralay/ui/paper/tile"
)

// laid is the sheet of a file of testdata, worked out once for all tests.
func laid(t testing.TB, name string) *sheet.Sheet {
	if sheets[name] == nil {
		sheets[name] = calctest.Laid(t, name)
	}
	return sheets[name]
}

// some are the looms that are looked at: one where the tests run short.
func some(all ...string) []string {
	if testing.Short() {
		return all[:1]
	}
	return all
}

var sheets = map[string]*sheet.Sheet{}

// drawn is a harness at full size.
func drawn(s *sheet.Sheet) (*plot.Sheet, drawing.Drawing) {
	d := drawing.Of(s)
	return board.Draw(s, &d, board.FullSize(unit.MM)), d
}

// texts are all that is written.
func texts(p *plot.Sheet) (out []string) {
	for _, s := range p.Shapes {
		if s.Text != "" {
			out = append(out, s.Text)
		}
	}
	return out
}

// At full size each branch's centre line, read off the drawing itself, is as long as the file says.
func TestCentreLinesAreFullSize(t *testing.T) {
	for _, name := range some("demo", "whole") {
		s := laid(t, name)
		p, _ := drawn(s)
		var got, want []float64
		for _, shape := range p.Shapes {
			if shape.Layer != plot.Centre {
				continue
			}
			long := 0.0
			for k := 1; k < len(shape.Way); k++ {
				long += float64(shape.Way[k-1].To(shape.Way[k]))
			}
			got = append(got, long)
		}
		for i := range s.H.Branches {
			want = append(want, float64(s.H.Branches[i].LengthMM))
		}
		slices.Sort(got)
		slices.Sort(want)
		if len(got) != len(want) {
			t.Fatalf("%s: %d centre lines of %d branches", name, len(got), len(want))
		}
		for k := range want {
			if math.Abs(got[k]-want[k]) > 0.1 {
				t.Errorf("%s: %v drawn, %v in the file", name, got[k], want[k])
			}
		}
	}
}

// corners are those of the letters of a text, as it is turned: from its base line to the top of its capitals.
func corners(s *plot.Shape) (out [4]plot.Point) {
	sin, cos := math.Sincos(float64(s.Turn) * math.Pi / 180)
	wide, high := float64(s.Width()), 0.7*float64(s.Size)
	for k, c := range [4][2]float64{{0, 0}, {wide, 0}, {wide, high}, {0, high}} {
		out[k] = s.Middle.Plus(plot.Point{X: unit.Millimetre(c[0]*cos - c[1]*sin), Y: unit.Millimetre(c[0]*sin + c[1]*cos)})
	}
	return out
}

// overlap is whether no side of one rectangle has the whole of another on its outside: where that is so both
// ways, they overlap (the separating axis theorem).
func overlap(a, b [4]plot.Point) bool {
	for k := range a {
		p, q := a[k], a[(k+1)%4]
		outside := true
		for _, c := range b {
			turn := (q.X-p.X)*(c.Y-p.Y) - (q.Y-p.Y)*(c.X-p.X)
			outside = outside && float64(turn) <= 0.01*float64(p.To(q))
		}
		if outside {
			return false
		}
	}
	return true
}

// No text lies on another, at full size and to scale, in looms of every size.
func TestNoTextLiesOnAnother(t *testing.T) {
	for _, name := range some("demo", "whole", "feeds", "trunk") {
		s := laid(t, name)
		d := drawing.Of(s)
		page, _ := board.Page(s, 186, 226, unit.MM)
		for what, p := range map[string]*plot.Sheet{"at full size": board.Draw(s, &d, board.FullSize(unit.MM)),
			"to scale": board.Draw(s, &d, board.Scaled(&d, 277, 170, unit.MM)), "on a page": page} {
			var boxes [][4]plot.Point
			var says []string
			for k := range p.Shapes {
				shape := &p.Shapes[k]
				if shape.Text == "" {
					continue
				}
				b := corners(shape)
				for n, other := range boxes {
					if overlap(b, other) && overlap(other, b) {
						t.Errorf("%s %s: %q lies on %q", name, what, shape.Text, says[n])
					}
				}
				boxes, says = append(boxes, b), append(says, shape.Text)
			}
		}
	}
}

// On an upright page a long loom goes up the page, where it is larger than across it, and its words stand upright, but
// for those along a branch, which are read from below or from the right. Each branch has its length on it once, with the
// end that it runs to where it has no room along itself.
func TestPageIsReadUpright(t *testing.T) {
	s := laid(t, "demo") // from P1 to CRK1 it is 1,580 mm long
	p, _ := board.Page(s, 186, 226, unit.MM)
	if size := p.Box.High.Minus(p.Box.Low); size.X > 186 || size.Y > 226 {
		t.Errorf("it takes %v x %v", size.X, size.Y)
	}
	all := texts(p)
	if !slices.ContainsFunc(all, func(x string) bool { return strings.Contains(x, "Scale 1:10, ") }) {
		t.Errorf("it is not at 1:10: %q", all)
	}
	for i := range s.H.Branches {
		b, n := &s.H.Branches[i], 0
		for k := range p.Shapes {
			shape := &p.Shapes[k]
			if shape.Text == "" {
				continue
			}
			if strings.HasPrefix(shape.Text, fmt.Sprintf("%s  %.0f", b.ID, float64(b.LengthMM))) {
				n++
			}
			turn := math.Remainder(float64(shape.Turn), 360)
			if turn != 0 && !strings.Contains(shape.Text, "  ") || turn > 90.1 || turn < -89.9 {
				t.Fatalf("%q is turned by %v", shape.Text, shape.Turn)
			}
		}
		if n != 1 {
			t.Errorf("%s has its length on it %d times", b.ID, n)
		}
	}
}

// Everything that the loom has is on its drawing once: ends, breakouts, splices, branches, pegs.
func TestEverythingIsOnTheDrawing(t *testing.T) {
	s := laid(t, "demo")
	p, d := drawn(s)
	all := texts(p)
	count := func(begins string) (n int) {
		for _, text := range all {
			if text == begins || strings.HasPrefix(text, begins+"  ") {
				n++
			}
		}
		return n
	}
	for i := range s.H.Branches {
		b := &s.H.Branches[i]
		if count(b.ID) != 1 || !slices.ContainsFunc(all, func(x string) bool {
			return strings.HasPrefix(x, fmt.Sprintf("%s  %.0f mm", b.ID, float64(b.LengthMM)))
		}) {
			t.Errorf("branch %s is written %d times", b.ID, count(b.ID))
		}
	}
	for i := range s.H.Terminations {
		if id := s.H.Terminations[i].ID; count(id) != 1 {
			t.Errorf("%s is written %d times", id, count(id))
		}
	}
	for i := range s.H.Breakouts {
		if id := s.H.Breakouts[i].ID; count(id) != 1 {
			t.Errorf("%s is written %d times", id, count(id))
		}
	}
	for i := range s.H.Splices {
		if id := s.H.Splices[i].ID; count(id) != 1 {
			t.Errorf("splice %s is written %d times", id, count(id))
		}
	}
	rings := 0
	for _, shape := range p.Shapes {
		if shape.Layer == plot.PegLayer && shape.Radius == 3 {
			rings++
		}
	}
	if rings != len(d.Pegs) || rings == 0 {
		t.Errorf("%d pegs drawn of %d", rings, len(d.Pegs))
	}
	for n := 1; n <= rings; n++ {
		if count(fmt.Sprint(n)) != 1 {
			t.Errorf("peg %d is numbered %d times", n, count(fmt.Sprint(n)))
		}
	}
	for _, want := range []string{"key 12, boot 6", "length from boot lip", "T1  560 mm -0 +10", "label P1"} {
		if !slices.Contains(all, want) {
			t.Errorf("the drawing lacks %q", want)
		}
	}
}

// The pages say what a person has to know to print, to glue and to drill, and the table of pegs has each peg with
// its x and y.
func TestPagesSayWhatToDo(t *testing.T) {
	s := laid(t, "demo")
	p, d := drawn(s)
	for _, paper := range tile.Papers {
		var says []string
		pages := board.Pages(s, &d, p, paper, board.Meta{On: "2026-05-31", File: "demo.toml", Identity: "1234-5678"})
		for _, page := range pages {
			for _, v := range page.Views {
				says = append(says, texts(v.Of)...)
			}
			if page.Wide > 5000 || page.High != paper.High {
				t.Errorf("%s: a page of %v x %v", paper.Name, page.Wide, page.High)
			}
		}
		all := strings.Join(says, " ")
		for _, want := range []string{"HC2-ENG-01 C Hill-climb single-seater, engine loom", "serial ____", "checked ____",
			"released ____", "1234-5678",
			"2026-05-31", "Print at 100 %, not fitted to the page.", tile.Measure, "Pegs, mm from the datum",
			"The angles are not those of the vehicle"} {
			if !strings.Contains(all, want) {
				t.Errorf("%s lacks %q", paper.Name, want)
			}
		}
		for _, g := range d.Pegs {
			x, y := fmt.Sprintf("%.1f", float64(g.At.X)), fmt.Sprintf("%.1f", float64(g.At.Y))
			k := 0
			for k < len(says) && !(says[k] == fmt.Sprint(g.No) && k+2 < len(says) && says[k+1] == x && says[k+2] == y) {
				k++
			}
			if k == len(says) {
				t.Errorf("%s: the table lacks peg %d at %s, %s", paper.Name, g.No, x, y)
			}
		}
	}
}

// All forms are made, the same twice, and a name that the face cannot letter is told.
func TestMake(t *testing.T) {
	s := laid(t, "example")
	paper, _ := tile.Find("a4")
	a, err := board.Make(s, paper, board.Meta{On: "2026-05-31", File: "x.toml"})
	if err != nil || len(a.Notes) > 0 {
		t.Fatalf("%v %v", err, a.Notes)
	}
	b, _ := board.Make(s, paper, board.Meta{On: "2026-05-31", File: "x.toml"})
	if !bytes.Equal(a.PDF, b.PDF) || !bytes.Equal(a.SVG, b.SVG) || !bytes.Equal(a.DXF, b.DXF) || a.Identity != b.Identity {
		t.Error("the same drawing is another one the second time")
	}
	h := *s.H
	h.Breakouts = slices.Clone(h.Breakouts)
	h.Breakouts[0].Name = model.Some("主分岐")
	other := *s
	s = &other
	s.H = &h
	if c, err := board.Make(s, paper, board.Meta{}); err != nil || len(c.Notes) != 1 || !strings.Contains(c.Notes[0],
		"has no letters for 主 分 岐") {
		t.Errorf("%v %v", err, c.Notes)
	}
}

func BenchmarkMake(b *testing.B) {
	for _, name := range []string{"demo", "whole"} {
		s := laid(b, name)
		paper, _ := tile.Find("a4")
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				if _, err := board.Make(s, paper, board.Meta{}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
