package pdf_test

import (
	"bytes"
	"math"
	"strings"
	"testing"

	reader "rsc.io/pdf"

	"contralay/model/unit"
	"contralay/ui/paper/pdf"
	"contralay/ui/paper/plot"
	"contralay/ui/paper/tile"
)

// world is a drawing of 1,000 x 500 mm: a frame, a diagonal, a word.
func world() *plot.Sheet {
	s := &plot.Sheet{Title: "x", Box: plot.Box{High: plot.Point{X: 1000, Y: 500}}}
	s.Rect(plot.Frame, 0.25, plot.None, s.Box)
	s.Way(plot.Bundle, 0.25, plot.Point{}, s.Box.High)
	s.Write(plot.TextLayer, plot.Point{X: 400, Y: 300}, 5, true, "Kühler Ω Жгут")
	return s
}

// mm is a length in points of a page.
func mm(points float64) float64 { return points * 25.4 / 72 }

// lines are the straights of a page in mm, as another program reads them.
func lines(t *testing.T, p reader.Page) (out [][4]float64) {
	t.Helper()
	var at [2]float64
	reader.Interpret(p.V.Key("Contents"), func(stack *reader.Stack, op string) {
		args := make([]float64, stack.Len())
		for k := len(args) - 1; k >= 0; k-- {
			args[k] = stack.Pop().Float64()
		}
		switch op {
		case "m":
			at = [2]float64{mm(args[0]), mm(args[1])}
		case "l":
			to := [2]float64{mm(args[0]), mm(args[1])}
			out = append(out, [4]float64{at[0], at[1], to[0], to[1]})
			at = to
		}
	})
	return out
}

// Every page is as large as its paper, and has a bar of 100 mm along both of its sides, to a
// hundredth of a millimetre, as another reader of PDF finds them. The sizes are those of ISO 216 and
// of Letter, 11 x 8 1/2 inches.
func TestPagesAndBarsAreTrue(t *testing.T) {
	for name, size := range map[string][2]float64{"a4": {297, 210}, "a3": {420, 297}, "letter": {11 * 25.4, 8.5 * 25.4},
		"roll610": {1020, 610}} {
		p, _ := tile.Find(name)
		c := tile.Of(world(), p)
		text, err := pdf.Bytes("x", c.Pages(world(), "head"))
		if err != nil {
			t.Fatal(err)
		}
		r, err := reader.NewReader(bytes.NewReader(text), int64(len(text)))
		if err != nil {
			t.Fatal(err)
		}
		cells, _ := c.Printed()
		if r.NumPage() != len(cells) || r.NumPage() == 0 {
			t.Fatalf("%s: %d pages of %d cells", name, r.NumPage(), len(cells))
		}
		for n := 1; n <= r.NumPage(); n++ {
			page := r.Page(n)
			box := page.V.Key("MediaBox")
			for k, want := range size {
				if got := mm(box.Index(k + 2).Float64()); math.Abs(got-want) > 0.01 {
					t.Errorf("%s, page %d: %.3f mm, wanted %.3f", name, n, got, want)
				}
			}
			var along, up bool
			for _, l := range lines(t, page) {
				x, y := math.Abs(l[2]-l[0]), math.Abs(l[3]-l[1])
				along = along || math.Abs(x-100) < 0.01 && y < 0.005 && l[1] < 10
				up = up || math.Abs(y-100) < 0.01 && x < 0.005 && l[0] < 10
			}
			if !along || !up {
				t.Errorf("%s, page %d: bar along %v, up %v", name, n, along, up)
			}
		}
	}
}

// The diagonal of the drawing, gathered from all pages, is as long as it is: each page shows its part of it
// where its cell is.
func TestTheDrawingIsFullSize(t *testing.T) {
	p, _ := tile.Find("a4")
	c := tile.Of(world(), p)
	text, _ := pdf.Bytes("x", c.Pages(world(), "head"))
	r, _ := reader.NewReader(bytes.NewReader(text), int64(len(text)))
	found := 0
	for n := 1; n <= r.NumPage(); n++ {
		for _, l := range lines(t, r.Page(n)) {
			if math.Abs(math.Hypot(l[2]-l[0], l[3]-l[1])-math.Hypot(1000, 500)) < 0.01 {
				found++
			}
		}
	}
	if found < 4 {
		t.Errorf("the diagonal is on %d pages", found)
	}
}

// The same pages are the same bytes; every face is inside; a page that no reader shows is refused.
func TestSameBytesAndFacesInside(t *testing.T) {
	pages := []plot.Page{plot.Whole(world())}
	a, err := pdf.Bytes("x", pages)
	b, err2 := pdf.Bytes("x", pages)
	if err != nil || err2 != nil || !bytes.Equal(a, b) {
		t.Fatalf("%v %v, %d and %d bytes", err, err2, len(a), len(b))
	}
	r, err := reader.NewReader(bytes.NewReader(a), int64(len(a)))
	if err != nil {
		t.Fatal(err)
	}
	fonts := r.Page(1).Resources().Key("Font")
	if len(fonts.Keys()) == 0 {
		t.Fatal("no face")
	}
	for _, name := range fonts.Keys() {
		inside := fonts.Key(name).Key("DescendantFonts").Index(0).Key("FontDescriptor").Key("FontFile2")
		if inside.Kind() != reader.Stream {
			t.Errorf("face %s is not inside", name)
		}
	}
	long := plot.Page{Name: "long", Wide: 5081, High: 100}
	if _, err := pdf.Bytes("x", []plot.Page{long}); err == nil || !strings.Contains(err.Error(), "5081 x 100 mm") {
		t.Errorf("%v", err)
	}
	if unit.Millimetre(14400*25.4/72) != pdf.Longest {
		t.Error("the longest page is not 14,400 points")
	}
}

// Every text is black, whatever was filled before it on the page and with what: the grey in force where a
// text is shown, as another reader follows it through the saved states.
func TestTextIsBlack(t *testing.T) {
	s := world()
	for k, fill := range []plot.Grey{plot.White, plot.Black, plot.Light} { // the last of a page, page after page
		at := plot.Point{X: 100 + 350*unit.Millimetre(k), Y: 480}
		s.Write(plot.TextLayer, at, 5, false, "x")
		s.Add(plot.Shape{Layer: plot.Bundle, Fill: fill, Middle: at, Radius: 5})
	}
	p, _ := tile.Find("a3")
	c := tile.Of(s, p)
	text, err := pdf.Bytes("x", c.Pages(s, "head"))
	if err != nil {
		t.Fatal(err)
	}
	r, _ := reader.NewReader(bytes.NewReader(text), int64(len(text)))
	texts := 0
	for n := 1; n <= r.NumPage(); n++ {
		grey := []float64{0} // black is what a page begins with
		reader.Interpret(r.Page(n).V.Key("Contents"), func(stack *reader.Stack, op string) {
			args := make([]reader.Value, stack.Len())
			for k := len(args) - 1; k >= 0; k-- {
				args[k] = stack.Pop()
			}
			switch op {
			case "q":
				grey = append(grey, grey[len(grey)-1])
			case "Q":
				grey = grey[:len(grey)-1]
			case "g":
				grey[len(grey)-1] = args[0].Float64()
			case "rg":
				t.Fatal("a colour")
			case "Tj":
				if texts++; grey[len(grey)-1] != 0 {
					t.Errorf("page %d: a text in a grey of %v", n, grey[len(grey)-1])
				}
			}
		})
	}
	if texts < 10 {
		t.Errorf("only %d texts", texts)
	}
}
