package draw

import "math"

// Plan is a tree of lines as it lies flat, seen from above: x to the right and y up, in any unit.
type Plan struct {
	Ways  []PlanWay
	Names []PlanName // the most needed first
}

// PlanWay is one line through points.
type PlanWay struct {
	Points [][2]float64
	Heavy  bool // it is in hand
}

// PlanName is a name at a point.
type PlanName struct {
	Text string
	X, Y float64
}

// braille are the bits of the eight dots of a cell, by row and column (ISO/IEC 10646, U+2800).
var braille = [4][2]rune{{0x01, 0x08}, {0x02, 0x10}, {0x04, 0x20}, {0x40, 0x80}}

// Draw draws a plan in w×h cells, as large as it fits: in dots of a half by a quarter of a cell, in ASCII
// as strokes. A name stands beside its point where there is room, on no line and no other name;
// Canvas.NotShown are those without room.
func (p Plan) Draw(w, h int, pal Palette, ascii bool) Canvas {
	c := newCanvas(w, h)
	low, high, any := p.bounds()
	if !any || w < 4 || h < 3 {
		for _, n := range p.Names {
			c.NotShown = append(c.NotShown, n.Text)
		}
		return c
	}
	const room = 5 // cells at each side for names
	wide, tall := math.Max(high[0]-low[0], 1e-9), math.Max(high[1]-low[1], 1e-9)
	side := float64(w - 1)
	if w > 30 {
		side -= 2 * room
	}
	scale := math.Min(side/wide, float64(h-1)/tall/pal.aspect()) // cells a unit, along x
	at := func(x, y float64) (float64, float64) {
		return (float64(w)-1)/2 + 0.5 + (x-(low[0]+high[0])/2)*scale, (float64(h)-1)/2 + 0.5 - (y-(low[1]+high[1])/2)*scale*pal.aspect()
	}
	for _, heavy := range []bool{false, true} { // what is in hand lies over the rest
		for _, way := range p.Ways {
			if way.Heavy != heavy {
				continue
			}
			for k := 1; k < len(way.Points); k++ {
				x, y := at(way.Points[k-1][0], way.Points[k-1][1])
				toX, toY := at(way.Points[k][0], way.Points[k][1])
				c.stroke(x, y, toX, toY, heavy, ascii, pal)
			}
		}
	}
	for _, n := range p.Names {
		x, y := at(n.X, n.Y)
		if !c.name(int(x), int(y), n.Text) {
			c.NotShown = append(c.NotShown, n.Text)
		}
	}
	return c
}

func (p Plan) bounds() (low, high [2]float64, any bool) {
	for _, way := range p.Ways {
		for _, at := range way.Points {
			if !any {
				low, high, any = at, at, true
			}
			for k := range at {
				low[k], high[k] = math.Min(low[k], at[k]), math.Max(high[k], at[k])
			}
		}
	}
	return low, high, any
}

// stroke draws a straight from one place of the canvas to another, in cells.
func (c *Canvas) stroke(x, y, toX, toY float64, heavy, ascii bool, pal Palette) {
	style := lineStyle(pal)
	if heavy {
		style = MakeStyle(style.Text(), InkNone, true)
	}
	sign := '\\'
	switch dx, dy := math.Abs(toX-x), math.Abs(toY-y); {
	case dx >= 2.5*dy:
		sign = '-'
	case dy >= 2*dx:
		sign = '|'
	case (toX-x)*(toY-y) < 0:
		sign = '/'
	}
	if heavy {
		sign = '#'
	}
	steps := int(math.Ceil(math.Max(math.Abs(toX-x)*2, math.Abs(toY-y)*4))) + 1
	for k := range steps + 1 {
		t := float64(k) / float64(steps)
		px, py := x+(toX-x)*t, y+(toY-y)*t
		col, row := int(math.Floor(px)), int(math.Floor(py))
		if !c.inside(col, row) {
			continue
		}
		r := sign
		if !ascii {
			r = 0x2800 | braille[min(3, int((py-math.Floor(py))*4))][min(1, int((px-math.Floor(px))*2))]
			if was := c.Cells[row*c.W+col].Rune; was >= 0x2800 && was < 0x2900 {
				r |= was
			}
		}
		c.put(col, row, r, style)
	}
}

// name writes a name beside a cell: to the right, to the left, above, below.
func (c *Canvas) name(col, row int, text string) bool {
	n := len([]rune(text))
	for _, try := range [][2]int{{col + 1, row}, {col - n, row}, {col - n/2, row - 1}, {col - n/2, row + 1}, {col + 1, row - 1},
		{col + 1, row + 1},
		{col - n, row - 1}, {col - n, row + 1}} {
		free := true
		for k := -1; k <= n && free; k++ { // one blank on each side, but at the point itself
			x := try[0] + k
			switch {
			case k >= 0 && k < n && !c.inside(x, try[1]):
				free = false
			case c.inside(x, try[1]) && c.Cells[try[1]*c.W+x].Rune != ' ' && (k >= 0 && k < n || x != col || try[1] != row):
				free = false
			}
		}
		if free {
			c.write(try[0], try[1], text, 0)
			return true
		}
	}
	return false
}
