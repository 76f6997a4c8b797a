package tile

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"contralay/calc/formula/outline"
	"contralay/model/unit"
	"contralay/ui/paper/font"
	"contralay/ui/paper/plot"
)

// Paper is what a drawing is printed on. A roll is as high as it is wide off the roll, and as
// long as the drawing needs.
type Paper struct {
	Name       string
	Says       string // to a person
	Wide, High unit.Millimetre
	Roll       bool
}

// Papers are all that there are. The sizes of sheets are those of ISO 216 and, for Letter,
// ANSI/ASME Y14.1; rolls of 24, 36 and 42 inches are sold by these numbers of millimetres.
var Papers = []Paper{
	{"a4", "A4", 297, 210, false}, {"a3", "A3", 420, 297, false}, {"letter", "Letter", 279.4, 215.9, false},
	{"roll610", "roll, 610 mm", 0, 610, true}, {"roll914", "roll, 914 mm", 0, 914, true}, {"roll1067", "roll, 1067 mm", 0, 1067, true},
}

// Names are what papers are called.
func Names() []string {
	var out []string
	for _, p := range Papers {
		out = append(out, p.Name)
	}
	return out
}

// Find is the paper of a name.
func Find(name string) (Paper, bool) {
	for _, p := range Papers {
		if p.Name == strings.ToLower(name) {
			return p, true
		}
	}
	return Paper{}, false
}

// mm: the margin round what a page shows, the overlap of two pages, and the longest page that is
// made of a roll, which readers still show.
const (
	Margin  unit.Millimetre = 10
	Overlap unit.Millimetre = 10
	longest unit.Millimetre = 5000
)

// Cell is a page of the drawing.
type Cell struct {
	Col, Row int
	Name     string
	Live     plot.Box // of the drawing
	Empty    bool     // it shows nothing that its neighbours do not show, so it is left out
}

// Cut is a drawing cut into cells.
type Cut struct {
	Paper      Paper
	Wide, High unit.Millimetre // of a page
	Cols, Rows int
	Cells      []Cell // row by row
}

// Of cuts a drawing.
func Of(s *plot.Sheet, p Paper) Cut {
	size := s.Box.High.Minus(s.Box.Low)
	c := Cut{Paper: p, Wide: p.Wide, High: p.High}
	if p.Roll {
		c.Wide = min(longest, max(size.X+2*Margin, 2*Margin+300))
	}
	live := plot.Point{X: c.Wide - 2*Margin, Y: c.High - 2*Margin}
	count := func(long, live unit.Millimetre) int {
		return max(1, int(math.Ceil(float64((long-Overlap)/(live-Overlap))-1e-9)))
	}
	c.Cols, c.Rows = count(size.X, live.X), count(size.Y, live.Y)
	// what is left over lies on both sides alike; lengths of a roll meet where they cut the least
	spare := plot.Point{X: unit.Millimetre(c.Cols)*(live.X-Overlap) + Overlap - size.X,
		Y: unit.Millimetre(c.Rows)*(live.Y-Overlap) + Overlap - size.Y}
	top := plot.Point{X: s.Box.Low.X - spare.X/2, Y: s.Box.High.Y + spare.Y/2}
	if p.Roll && c.Rows > 1 {
		top.Y = s.Box.High.Y + spare.Y*leastCut(s, spare.Y, live.Y-Overlap, c.Rows)
	}
	for row := range c.Rows {
		for col := range c.Cols {
			low := plot.Point{X: top.X + unit.Millimetre(col)*(live.X-Overlap), Y: top.Y - unit.Millimetre(row)*(live.Y-Overlap) - live.Y}
			cell := Cell{Col: col, Row: row, Name: name(col, row), Live: plot.Box{Low: low, High: low.Plus(live)}}
			c.Cells = append(c.Cells, cell)
		}
	}
	c.leaveOut(s)
	return c
}

// leaveOut marks the cells that show nothing but what cells beside them show, too: those whose inner part is empty, unless
// something lies in an overlap of which no other cell is printed.
func (c *Cut) leaveOut(s *plot.Sheet) {
	for k := range c.Cells {
		c.Cells[k].Empty = !shows(s, c.parts(k)[0])
	}
	alone := func(k int) bool { // something lies on it that is on no other page
		return slices.ContainsFunc(c.parts(k)[1:], func(part plot.Box) bool { return shows(s, part) && !c.held(part, k) })
	}
	var added []int
	for k := range c.Cells {
		if c.Cells[k].Empty && alone(k) {
			c.Cells[k].Empty = false
			added = append(added, k)
		}
	}
	for _, k := range added { // one that came later may show it, too
		c.Cells[k].Empty = !alone(k)
	}
}

// parts are the inner part of a cell, which no other shows, and then its overlaps: along each edge where it has a
// neighbour, and at each corner.
func (c *Cut) parts(k int) []plot.Box {
	cell := c.Cells[k]
	live, inner := cell.Live, cell.Live
	if cell.Col > 0 {
		inner.Low.X += Overlap
	}
	if cell.Col < c.Cols-1 {
		inner.High.X -= Overlap
	}
	if cell.Row > 0 {
		inner.High.Y -= Overlap
	}
	if cell.Row < c.Rows-1 {
		inner.Low.Y += Overlap
	}
	out := []plot.Box{inner}
	for _, x := range [][2]unit.Millimetre{{live.Low.X, inner.Low.X}, {inner.Low.X, inner.High.X}, {inner.High.X, live.High.X}} {
		for _, y := range [][2]unit.Millimetre{{live.Low.Y, inner.Low.Y}, {inner.Low.Y, inner.High.Y}, {inner.High.Y, live.High.Y}} {
			b := plot.Box{Low: plot.Point{X: x[0], Y: y[0]}, High: plot.Point{X: x[1], Y: y[1]}}
			if x[0] < x[1] && y[0] < y[1] && b != inner {
				out = append(out, b)
			}
		}
	}
	return out
}

// held reports whether a cell that is printed, other than the k-th, holds all of a box.
func (c *Cut) held(b plot.Box, k int) bool {
	return slices.ContainsFunc(c.Cells, func(o Cell) bool {
		const near = 1e-6
		return !o.Empty && o.Name != c.Cells[k].Name && o.Live.Low.X <= b.Low.X+near && o.Live.Low.Y <= b.Low.Y+near &&
			o.Live.High.X >= b.High.X-near && o.Live.High.Y >= b.High.Y-near
	})
}

// leastCut is how much of the spare height lies above a drawing, as a share of it, so that the seams of its rows cut the
// fewest shapes; of alike ones the least, so that the first length is full.
func leastCut(s *plot.Sheet, spare, step unit.Millimetre, rows int) unit.Millimetre {
	const tried = 16
	best, fewest := unit.Millimetre(0), -1
	for k := range tried + 1 {
		part, n := unit.Millimetre(k)/tried, 0
		for row := 1; row < rows; row++ {
			y := s.Box.High.Y + spare*part - step*unit.Millimetre(row) // the seam is the overlap below it
			for i := range s.Shapes {
				if b := s.Shapes[i].Bounds(); b.Low.Y < y && b.High.Y > y-Overlap {
					n++
				}
			}
		}
		if fewest < 0 || n < fewest {
			best, fewest = part, n
		}
	}
	return best
}

// name is the name of a cell: A1, B1 … Z1, AA1.
func name(col, row int) string {
	letters := ""
	for col++; col > 0; col = (col - 1) / 26 {
		letters = string(rune('A'+(col-1)%26)) + letters
	}
	return fmt.Sprint(letters, row+1)
}

// shows reports whether anything of a sheet comes into a box, or lies along its edge, as a line at the very edge of a drawing
// does. A way is looked at line by line, and a text or a disc by its bounds.
func shows(s *plot.Sheet, b plot.Box) bool {
	hair := plot.Point{X: 0.01, Y: 0.01}
	b.Low, b.High = b.Low.Minus(hair), b.High.Plus(hair)
	for k := range s.Shapes {
		h := &s.Shapes[k]
		if !h.Bounds().Meets(b) {
			continue
		}
		if len(h.Way) == 0 {
			return true
		}
		for n := range h.Way {
			before := (n + len(h.Way) - 1) % len(h.Way)
			if (n > 0 || h.Closed) && outline.Through(h.Way[before], h.Way[n], b) {
				return true
			}
		}
	}
	return false
}

// at is the cell of a column and a row, if it is printed.
func (c *Cut) at(col, row int) (Cell, bool) {
	if col < 0 || row < 0 || col >= c.Cols || row >= c.Rows {
		return Cell{}, false
	}
	cell := c.Cells[row*c.Cols+col]
	return cell, !cell.Empty
}

// Printed are the cells that are printed, and Empty the names of the others.
func (c *Cut) Printed() (cells []Cell, empty []string) {
	for _, cell := range c.Cells {
		if cell.Empty {
			empty = append(empty, cell.Name)
		} else {
			cells = append(cells, cell)
		}
	}
	return cells, empty
}

// Measure is the sentence at the bar of every page.
const Measure = "100 mm: measure it. If it is not 100.0 +-0.3, print at 100 %, not fitted to the page."

// Pages are the printed cells as pages, each under a name of its own. head identifies the
// drawing on each of them.
func (c *Cut) Pages(s *plot.Sheet, head string) []plot.Page {
	marks := c.marks()
	cells, _ := c.Printed()
	var out []plot.Page
	for _, cell := range cells {
		move := plot.Point{X: Margin, Y: Margin}.Minus(cell.Live.Low)
		window := plot.Box{Low: plot.Point{X: Margin, Y: Margin}, High: plot.Point{X: c.Wide - Margin, Y: c.High - Margin}}
		whole := plot.Box{High: plot.Point{X: c.Wide, Y: c.High}}
		out = append(out, plot.Page{Name: cell.Name, Wide: c.Wide, High: c.High, Views: []plot.View{{Of: s, Window: window, Move: move},
			{Of: marks, Window: window, Move: move}, {Of: c.border(cell, head), Window: whole}}})
	}
	return out
}

// marks are the crosses and diamonds in the middle of every overlap.
func (c *Cut) marks() *plot.Sheet {
	out := &plot.Sheet{}
	half := plot.Point{X: Overlap / 2, Y: Overlap / 2}
	for _, cell := range c.Cells {
		low, high := cell.Live.Low.Plus(half), cell.Live.High.Minus(half)
		corners := []plot.Point{low, {X: high.X, Y: low.Y}, high, {X: low.X, Y: high.Y}}
		for k, p := range corners {
			const arm = 4
			out.Way(plot.Frame, 0.13, p.Away(0, -arm), p.Away(0, arm))
			out.Way(plot.Frame, 0.13, p.Away(90, -arm), p.Away(90, arm))
			next := corners[(k+1)%4]
			m := p.Plus(next).Times(0.5)
			const d = 3
			out.Add(plot.Shape{Layer: plot.Frame, Line: plot.Line{Wide: 0.13}, Closed: true,
				Way: []plot.Point{m.Away(0, d), m.Away(90, d), m.Away(180, d), m.Away(270, d)}})
		}
	}
	return out
}

// border is what stands in the margin of a page: its name, those of its neighbours, the bars and
// what the drawing is.
func (c *Cut) border(cell Cell, head string) *plot.Sheet {
	out := &plot.Sheet{}
	const size, base = 3.2, 5
	text := func(x, y unit.Millimetre, bold bool, says string) {
		out.Write(plot.TextLayer, plot.Point{X: x, Y: y}, size, bold, says)
	}
	bars(out, plot.Point{X: Margin + 10, Y: base}, plot.Point{X: base, Y: Margin + 10})
	x := Margin + 10 + 100 + 4
	text(x, base-1.1, false, fitted(Measure, c.Wide-Margin-x, size))
	y := c.High - Margin + 3.2
	text(Margin, y, true, cell.Name)
	text(Margin+16, y, false, fitted(head, c.Wide-2*Margin-90, size))
	var beside []string
	for _, n := range []struct {
		col, row int
		says     string
	}{{0, -1, "above "}, {-1, 0, "left "}, {1, 0, "right "}, {0, 1, "below "}} {
		if o, printed := c.at(cell.Col+n.col, cell.Row+n.row); printed {
			beside = append(beside, n.says+o.Name)
		} else if o.Name != "" {
			beside = append(beside, n.says+o.Name+" (empty)")
		}
	}
	says := strings.Join(beside, ", ")
	text(c.Wide-Margin-font.Of(false).Width(says, size), y, false, says)
	out.Rect(plot.Frame, 0.1, plot.None, plot.Box{Low: plot.Point{X: Margin, Y: Margin}, High: plot.Point{X: c.Wide - Margin,
		Y: c.High - Margin}})
	return out
}

// fitted is a text cut to a width, with dots where something is cut.
func fitted(text string, wide, size unit.Millimetre) string {
	f := font.Of(false)
	if f.Width(text, size) <= wide {
		return text
	}
	r := []rune(text)
	for len(r) > 0 && f.Width(string(r)+"...", size) > wide {
		r = r[:len(r)-1]
	}
	return string(r) + "..."
}

// bars are 100 mm along x and along y.
func bars(out *plot.Sheet, x, y plot.Point) {
	const long, tick = 100, 1.6
	for _, b := range []struct {
		at      plot.Point
		heading unit.Degree
	}{{x, 0}, {y, 90}} {
		end := b.at.Away(b.heading, long)
		out.Way(plot.Frame, 0.25, b.at, end)
		for n := range 11 {
			p := b.at.Away(b.heading, unit.Millimetre(10*n))
			t := unit.Millimetre(tick)
			if n%10 != 0 {
				t /= 2
			}
			out.Way(plot.Frame, 0.25, p.Away(b.heading+90, -t), p.Away(b.heading+90, t))
		}
	}
}
