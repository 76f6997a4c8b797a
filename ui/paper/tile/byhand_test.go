package tile

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/model/unit"
	"contralay/ui/paper/font"
	"contralay/ui/paper/plot"
)

// strokes are shapes, each in one line, to a thousandth.
func strokes(all []plot.Shape) (out []string) {
	pt := func(p plot.Point) string {
		return strings.NewReplacer(".000", "", "-0.000", "0").Replace(fmt.Sprintf("%.3f,%.3f", float64(p.X)+1e-9, float64(p.Y)+1e-9))
	}
	for _, s := range all {
		says := fmt.Sprintf("%s %v", strings.ToLower(string(s.Layer)), float64(s.Line.Wide))
		switch {
		case s.Text != "":
			says = fmt.Sprintf("%v %v %s %q", float64(s.Size), s.Bold, pt(s.Middle), s.Text)
		case s.Closed:
			says += " closed"
		}
		for _, p := range s.Way {
			says += " " + pt(p)
		}
		out = append(out, says)
	}
	return out
}

func same(t *testing.T, what string, got []plot.Shape, want ...string) {
	t.Helper()
	if all := strokes(got); !slices.Equal(all, want) {
		t.Errorf("%s:\n%s\nwant\n%s", what, strings.Join(all, "\n"), strings.Join(want, "\n"))
	}
}

func box(x0, y0, x1, y1 unit.Millimetre) plot.Box {
	return plot.Box{Low: plot.Point{X: x0, Y: y0}, High: plot.Point{X: x1, Y: y1}}
}

// The papers: sheets lying down, by ISO 216 and ANSI/ASME Y14.1 (11 by 8.5 inches), and rolls of 24, 36 and 42 inches.
func TestPapers(t *testing.T) {
	if got := strings.Join(Names(), " "); got != "a4 a3 letter roll610 roll914 roll1067" {
		t.Errorf("%s", got)
	}
	for name, want := range map[string]string{"A4": "A4 297 x 210 false", "a3": "A3 420 x 297 false",
		"Letter":  "Letter 279.4 x 215.9 false",
		"roll610": "roll, 610 mm 0 x 610 true", "ROLL914": "roll, 914 mm 0 x 914 true", "roll1067": "roll, 1067 mm 0 x 1067 true"} {
		p, ok := Find(name)
		if got := fmt.Sprintf("%s %v x %v %v", p.Says, float64(p.Wide), float64(p.High), p.Roll); !ok || got != want {
			t.Errorf("%s: %s, want %s", name, got, want)
		}
	}
	if p, ok := Find("a5"); ok || p != (Paper{}) {
		t.Errorf("%+v", p)
	}
	for _, c := range []struct {
		col, row int
		want     string
	}{{0, 0, "A1"}, {1, 0, "B1"}, {25, 8, "Z9"}, {26, 9, "AA10"}, {27, 0, "AB1"}, {51, 0, "AZ1"}, {52, 0, "BA1"}, {701, 0, "ZZ1"}, {702,
		0, "AAA1"}} {
		if got := name(c.col, c.row); got != c.want {
			t.Errorf("%d, %d: %s, want %s", c.col, c.row, got, c.want)
		}
	}
}

// Bars of 100 mm along x and y with eleven marks, by hand: 1.6 mm to both sides at their ends, half as long between.
func TestBarsByHand(t *testing.T) {
	out := &plot.Sheet{}
	bars(out, plot.Point{X: 20, Y: 5}, plot.Point{X: 5, Y: 20})
	want := []string{"frame 0.25 20,5 120,5"}
	for n := range 11 {
		low, high := "4.200", "5.800"
		if n == 0 || n == 10 {
			low, high = "3.400", "6.600"
		}
		want = append(want, fmt.Sprintf("frame 0.25 %d,%s %d,%s", 20+10*n, low, 20+10*n, high))
	}
	want = append(want, "frame 0.25 5,20 5,120")
	for n := range 11 {
		low, high := "4.200", "5.800"
		if n == 0 || n == 10 {
			low, high = "3.400", "6.600"
		}
		want = append(want, fmt.Sprintf("frame 0.25 %s,%d %s,%d", high, 20+10*n, low, 20+10*n))
	}
	same(t, "bars", out.Shapes, want...)
}

// Marks of a cell from (0, 0) to (277, 190), by hand: crosses of 8 mm in the corners of what lies 5 mm within, diamonds of 6 mm in the
// middles between.
func TestMarksByHand(t *testing.T) {
	c := &Cut{Cells: []Cell{{Live: box(0, 0, 277, 190)}}}
	var want []string
	for _, m := range []struct{ x, y, dx, dy float64 }{{5, 5, 138.5, 5}, {272, 5, 272, 95}, {272, 185, 138.5, 185}, {5, 185, 5, 95}} {
		at := func(x, y float64) string {
			return strokes([]plot.Shape{{Way: []plot.Point{{X: unit.Millimetre(x),
				Y: unit.Millimetre(y)}}}})[0][3:]
		}
		want = append(want, "frame 0.13 "+at(m.x-4, m.y)+" "+at(m.x+4, m.y), "frame 0.13 "+at(m.x, m.y-4)+" "+at(m.x, m.y+4),
			"frame 0.13 closed "+at(m.dx+3, m.dy)+" "+at(m.dx, m.dy+3)+" "+at(m.dx-3, m.dy)+" "+at(m.dx, m.dy-3))
	}
	same(t, "marks", c.marks().Shapes, want...)
}

// What stands in the margin of B1 of three by two on A4, by hand: the bars, and behind them from 124 mm on how to measure; its name and
// what is drawn above the page, its neighbours at
// the right end of that line; a frame.
func TestMarginByHand(t *testing.T) {
	c := &Cut{Wide: 297, High: 210, Cols: 3, Rows: 3}
	for row := range 3 {
		for col := range 3 {
			c.Cells = append(c.Cells, Cell{Col: col, Row: row, Name: name(col, row), Empty: col == 2})
		}
	}
	margin := func(k int, head string) []string { return strokes(c.border(c.Cells[k], head).Shapes)[24:] }
	right := func(says string) string {
		return fmt.Sprintf("%.3f,203.200", 287+1e-9-float64(font.Of(false).Width(says, 3.2)))
	}
	const frame = "frame 0.1 closed 10,10 287,10 287,200 10,200"
	measure := fmt.Sprintf("3.2 false 124,3.900 %q", Measure)
	for k, says := range map[int]string{0: "right B1, below A2", 1: "left A1, right C1 (empty), below B2",
		4: "above B1, left A2, right C2 (empty), below B3",
		8: "above C2 (empty), left B3", 6: "above A2, right B3"} {
		want := []string{measure, fmt.Sprintf("3.2 true 10,203.200 %q", c.Cells[k].Name), `3.2 false 26,203.200 "head"`,
			fmt.Sprintf("3.2 false %s %q", right(says), says), frame}
		if got := margin(k, "head"); !slices.Equal(got, want) {
			t.Errorf("%s:\n%s\nwant\n%s", c.Cells[k].Name, strings.Join(got, "\n"), strings.Join(want, "\n"))
		}
	}
	bar := strokes(c.border(c.Cells[0], "head").Shapes)
	if bar[0] != "frame 0.25 20,5 120,5" || bar[12] != "frame 0.25 5,20 5,120" {
		t.Errorf("%s and %s", bar[0], bar[12])
	}
	one := &Cut{Wide: 297, High: 210, Cols: 1, Rows: 1, Cells: []Cell{{Name: "A1"}}}
	if got := strokes(one.border(one.Cells[0], "head").Shapes)[24:]; len(got) != 4 {
		t.Errorf("%q", got)
	}
	// A long head has 297 − 20 − 90 = 187 mm, and how to measure on a narrow page what is left of it.
	f := font.Of(false)
	long := margin(0, strings.Repeat("n", 300))[2]
	text := strings.Split(long, `"`)[1]
	if w := f.Width(text, 3.2); !strings.HasSuffix(text, "n...") || w > 187 || f.Width(text+"n", 3.2) <= 187 {
		t.Errorf("%v mm of 187: %s", w, text)
	}
	c.Wide = 200
	text = strings.Split(margin(0, "head")[0], `"`)[1]
	if w := f.Width(text, 3.2); !strings.HasSuffix(text, "...") || w > 66 || w < 60 {
		t.Errorf("%v mm of 66: %s", w, text)
	}
	if got := fitted("loom", f.Width("loom", 5), 5); got != "loom" {
		t.Errorf("%q", got)
	}
	if got := fitted("loom", 0.1, 5); got != "..." {
		t.Errorf("%q", got)
	}
}

// A page is the drawing, the marks and the margin, moved so that its cell lies within the margin.
func TestPageByHand(t *testing.T) {
	s := &plot.Sheet{Box: box(0, 0, 600, 300)}
	s.Way(plot.Bundle, 0.25, plot.Point{Y: 300}, plot.Point{X: 600, Y: 300})
	a4, _ := Find("a4")
	c := Of(s, a4)
	// 3 · 267 + 10 = 811 for 600 and 2 · 180 + 10 = 370 for 300: 105.5 and 35 are left over at each side.
	if c.Cells[0].Live != box(-105.5, 145, 171.5, 335) || c.Cells[4].Live != box(161.5, -35, 438.5, 155) || c.Cells[4].Name != "B2" ||
		c.Cells[4].Col != 1 || c.Cells[4].Row != 1 {
		t.Errorf("%+v", c.Cells)
	}
	pages := c.Pages(s, "head")
	if len(pages) != 3 {
		t.Fatalf("%d pages", len(pages))
	}
	p := pages[1]
	window := box(10, 10, 287, 200)
	if p.Name != "B1" || p.Wide != 297 || p.High != 210 || len(p.Views) != 3 || p.Views[0].Of != s || p.Views[0].Window != window ||
		p.Views[1].Window != window ||
		p.Views[2].Window != box(0, 0, 297, 210) || p.Views[0].Move != (plot.Point{X: 10 - 161.5, Y: 10 - 145}) ||
		p.Views[1].Move != p.Views[0].Move || p.Views[2].Move != (plot.Point{}) ||
		len(p.Views[1].Of.Shapes) != 6*12 || len(p.Views[2].Of.Shapes) != 24+5 {
		t.Errorf("%+v", p)
	}
	cells, empty := c.Printed()
	if len(cells) != 3 || strings.Join(empty, " ") != "A2 B2 C2" {
		t.Errorf("%v, %v", cells, empty)
	}
}

// How many cells, by hand: what just fits takes no more; a roll is as long as the drawing and its margins, from 320 mm to 5 m, in as few
// lengths as can be.
func TestHowManyCells(t *testing.T) {
	for _, c := range []struct {
		paper      string
		x, y, wide unit.Millimetre
		cols, rows int
	}{
		{"a4", 277, 190, 297, 1, 1}, {"a4", 277.1, 190.1, 297, 2, 2}, {"a4", 544, 370, 297, 2, 2}, {"a4", 1, 1, 297, 1, 1}, {"a4", 545,
			371, 297, 3, 3},
		{"roll610", 300, 590, 320, 1, 1}, {"roll610", 299, 590.1, 320, 1, 2}, {"roll610", 301, 1170, 321, 1, 2}, {"roll610", 4980, 100,
			5000, 1, 1}, {"roll610", 4981, 1171, 5000, 2, 3},
	} {
		p, _ := Find(c.paper)
		got := Of(&plot.Sheet{Box: box(7, -3, 7+c.x, c.y-3)}, p)
		if got.Cols != c.cols || got.Rows != c.rows || got.Wide != c.wide || len(got.Cells) != c.cols*c.rows || got.Paper != p {
			t.Errorf("%v x %v on %s: %d x %d of %v", c.x, c.y, c.paper, got.Cols, got.Rows, got.Wide)
		}
	}
}

// The parts of the middle cell of three by three, by hand: its inner part, and eight overlaps; of a corner three; of one alone none.
func TestPartsByHand(t *testing.T) {
	c := &Cut{Cols: 3, Rows: 3}
	for row := range 3 {
		for col := range 3 {
			x, y := unit.Millimetre(90*col), unit.Millimetre(-90*row)
			c.Cells = append(c.Cells, Cell{Col: col, Row: row, Name: name(col, row), Live: box(x, y, x+100, y+100)})
		}
	}
	for k, want := range map[int][]plot.Box{
		4: {box(100, -80, 180, 0), box(90, -90, 100, -80), box(90, -80, 100, 0), box(90, 0, 100, 10), box(100, -90, 180, -80),
			box(100, 0, 180, 10),
			box(180, -90, 190, -80), box(180, -80, 190, 0), box(180, 0, 190, 10)},
		0: {box(0, 10, 90, 100), box(0, 0, 90, 10), box(90, 0, 100, 10), box(90, 10, 100, 100)},
		8: {box(190, -180, 280, -90), box(180, -180, 190, -90), box(180, -90, 190, -80), box(190, -90, 280, -80)},
	} {
		if got := c.parts(k); !slices.Equal(got, want) {
			t.Errorf("%s: %v, by hand %v", c.Cells[k].Name, got, want)
		}
	}
	one := &Cut{Cols: 1, Rows: 1, Cells: []Cell{{Live: box(0, 0, 100, 100)}}}
	if got := one.parts(0); len(got) != 1 || got[0] != box(0, 0, 100, 100) {
		t.Errorf("%v", got)
	}
	// A part is held by another cell that is printed and holds all of it.
	c.Cells[1].Empty = true
	for _, p := range []struct {
		b    plot.Box
		k    int
		want bool
	}{{box(90, -80, 100, 0), 4, true}, {box(90, -80, 100, 0), 3, true}, {box(100, 0, 180, 10), 4, false}, {box(100, 0, 180, 10), 0,
		true}, {box(90, 0, 100, 10), 4, true},
		{box(89, -80, 99, 0), 3, false}, {box(90, -91, 99, 0), 3, false}, {box(170, 0, 191, 5), 5, false}, {box(170, 5, 185, 11), 5,
			false}} {
		if got := c.held(p.b, p.k); got != p.want {
			t.Errorf("%v of %s is held: %v", p.b, c.Cells[p.k].Name, got)
		}
	}
	for _, p := range []struct {
		col, row int
		want     string
	}{{0, 0, "A1 true"}, {2, 2, "C3 true"}, {1, 0, "B1 false"}, {-1, 0, " false"}, {0, -1, " false"}, {3, 0, " false"}, {0, 3,
		" false"}, {1, 2, "B3 true"}} {
		cell, ok := c.at(p.col, p.row)
		if got := fmt.Sprint(cell.Name, " ", ok); got != p.want {
			t.Errorf("%d, %d: %s, want %s", p.col, p.row, got, p.want)
		}
	}
}

// What comes into a box from (0, 0) to (10, 10), by hand: lines one by one, a closed way's last as well; discs and texts by their bounds.
func TestWhatComesIntoABox(t *testing.T) {
	way := func(closed bool, at ...unit.Millimetre) plot.Shape {
		s := plot.Shape{Closed: closed}
		for k := 0; k < len(at); k += 2 {
			s.Way = append(s.Way, plot.Point{X: at[k], Y: at[k+1]})
		}
		return s
	}
	for what, c := range map[string]struct {
		s    plot.Shape
		want bool
	}{
		"through": {way(false, -5, 5, 15, 5), true}, "beside": {way(false, -5, 11, 15, 11),
			false}, "round the corner": {way(false, -5, 5, -5, 15, 5, 15), false},
		"closed through it": {way(true, -5, 5, -5, 15, 15, 15, 15, 16), true}, "open beside it": {way(false, -5, 5, -5, 15, 15, 15, 15, 16),
			false},
		"over a corner": {way(false, -8, 14, 14, -8), true}, "past a corner": {way(false, -2, 16, 16, 8),
			false}, "a level line on its lower edge": {way(false, 2, 0, 8, 0), true},
		"a disc": {plot.Shape{Middle: plot.Point{X: 12, Y: 5}, Radius: 3}, true}, "a far disc": {plot.Shape{Middle: plot.Point{X: 14,
			Y: 5}, Radius: 3}, false},
		"a text": {plot.Shape{Text: "loom", Size: 4, Middle: plot.Point{X: -3, Y: 5}}, true},
	} {
		s := &plot.Sheet{Shapes: []plot.Shape{way(false, 50, 50, 60, 60), c.s}}
		if got := shows(s, box(0, 0, 10, 10)); got != c.want {
			t.Errorf("%s: %v", what, got)
		}
	}
	if shows(&plot.Sheet{}, box(0, 0, 10, 10)) {
		t.Error("nothing is shown")
	}
}

// A cell that shows in an overlap alone what no other printed page shows is printed; one that came later makes one before needless.
func TestWhatIsLeftOut(t *testing.T) {
	a4, _ := Find("a4")
	// Two columns of 277 with 10 shared, 544 together: A from 0 to 277, B from 267 to 544.
	for what, c := range map[string]struct {
		from, to plot.Point
		want     string
	}{
		"both":               {plot.Point{X: 10, Y: 50}, plot.Point{X: 500, Y: 50}, ""},
		"the first":          {plot.Point{X: 10, Y: 50}, plot.Point{X: 270, Y: 50}, "B1"},
		"the second":         {plot.Point{X: 272, Y: 50}, plot.Point{X: 500, Y: 50}, "A1"},
		"the overlap alone":  {plot.Point{X: 272, Y: 50}, plot.Point{X: 272, Y: 60}, "B1"},
		"just into the next": {plot.Point{X: 10, Y: 50}, plot.Point{X: 278, Y: 50}, ""},
	} {
		s := &plot.Sheet{Box: box(0, 0, 544, 190)}
		s.Way(plot.Bundle, 0.25, c.from, c.to)
		cut := Of(s, a4)
		if _, empty := cut.Printed(); strings.Join(empty, " ") != c.want {
			t.Errorf("%s: without %v, want %s", what, empty, c.want)
		}
	}
}

// How much of 40 mm of spare height lies above a drawing whose two lengths meet at 580, by hand: none where the seam cuts nothing; else
// the first sixteenth
// at which it is clear. A way from 405 to 425 lies in the seam of 410 to 420, and out of it once the seam lies at 425: 15 of 160 up is
// 1.5 sixteenths.
func TestLeastCutByHand(t *testing.T) {
	for _, c := range []struct {
		low, high, want unit.Millimetre
	}{{100, 200, 0}, {405, 425, 2. / 16}, {405, 435, 3. / 16}, {300, 410, 0}, {300, 411, 1. / 16}, {420, 500, 0}, {0, 1000, 0}, {405, 575,
		0}} {
		s := &plot.Sheet{Box: box(0, 0, 100, 1000)}
		s.Way(plot.Bundle, 0.25, plot.Point{Y: c.low}, plot.Point{Y: c.high})
		if got := leastCut(s, 160, 580, 2); got != c.want {
			t.Errorf("%v to %v: %v, by hand %v", c.low, c.high, got, c.want)
		}
	}
	s := &plot.Sheet{Box: box(0, 0, 100, 1000)} // of three lengths the second seam counts as well: at 1000 − 2 · 400 = 200
	s.Way(plot.Bundle, 0.25, plot.Point{Y: 185}, plot.Point{Y: 205})
	if got, two := leastCut(s, 160, 400, 3), leastCut(s, 160, 400, 2); got != 2./16 || two != 0 {
		t.Errorf("%v, of two %v", got, two)
	}
}

// A line at the very edge of a drawing, as wide as the page, is on a page: nothing else lies on it.
func TestLineAtTheEdgeIsPrinted(t *testing.T) {
	s := &plot.Sheet{}
	s.Way(plot.Bundle, 0.25, plot.Point{X: 0, Y: 30}, plot.Point{X: 0, Y: 284})
	s.Way(plot.Bundle, 0.25, plot.Point{}, plot.Point{X: -300, Y: -307})
	s.Box = plot.Box{Low: plot.Point{X: -300, Y: -307}, High: plot.Point{X: 0, Y: 284}}
	p, found := Find("roll610")
	if !found {
		t.Fatal("no such roll")
	}
	c := Of(s, p)
	if cells, left := c.Printed(); len(cells) != 2 || len(left) != 0 {
		t.Errorf("%d pages are printed, %q are not; want 2", len(cells), left)
	}
}
