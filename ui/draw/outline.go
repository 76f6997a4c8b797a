package draw

import "math"

// The characters of the lines.
const (
	lineRune   = '.'
	sheathRune = ':'
)

// boundary draws the line round the bundle, and the sheath outside it where the
// two are at least a row apart; else the sheath alone.
func boundary(c *Canvas, s Section, f frame, p Palette) {
	over, sheath := s.boundary(), s.sheath()
	if sheath > 0 {
		dotted(c, f, sheath, sheathRune, lineStyle(p))
	}
	if over > 0 && (sheath <= 0 || math.Abs(sheath-over)*f.k >= 1) {
		dotted(c, f, over, lineRune, lineStyle(p))
	}
}

func lineStyle(p Palette) Style {
	if !p.Colour {
		return 0
	}
	return MakeStyle(InkLine, InkNone, false)
}

// dotted draws a circle about the axis: a dot in each row where the line is
// steep, in every second column where it is flat, so that dots look evenly spaced.
func dotted(c *Canvas, f frame, r float64, mark rune, st Style) {
	ax, ay := f.at(0, 0)
	ry := r * f.k
	rx := ry / f.aspect
	dot := func(x, y float64) {
		if row := cell(y); row >= 0 && row < f.h {
			c.put(cell(x), row, mark, st)
		}
	}
	steep, flat := int(ry*math.Sqrt2/2+tie), int(rx*math.Sqrt2/2+tie)
	for i := -steep; i <= steep; i++ {
		y := math.Round(ay) + float64(i)
		t := (y - ay) / ry
		half := rx * math.Sqrt(max(1-t*t, 0))
		dot(ax-half, y)
		dot(ax+half, y)
	}
	for i := -(flat / 2); i <= flat/2; i++ {
		x := math.Round(ax) + float64(2*i)
		t := (x - ax) / rx
		half := ry * math.Sqrt(max(1-t*t, 0))
		dot(x, ay-half)
		dot(x, ay+half)
	}
}

// outlineRows is the least height, in cells, of a disc with an outline.
const outlineRows = 3

// outlined reports whether a disc is large enough for its outline to be seen
// round a core of n characters.
func (f frame) outlined(d Disc, n int) bool {
	rows := float64(d.D) * f.k
	return rows+tie >= outlineRows && rows/f.aspect+tie >= float64(n+2)
}

// outlines draws the discs that are large enough.
func outlines(c *Canvas, s Section, f frame, core []string, p Palette) {
	for i, d := range s.Discs {
		if n := len([]rune(core[i])); d.usable() && f.outlined(d, n) {
			outline(c, f, d, n, lineStyle(p))
		}
	}
}

// outline draws one disc as the largest shape of whole cells that fits inside it,
// so that equal discs look equal and two that touch stay two. The shape has its
// middle in the row of the label, and is even or odd in width as the label is:
//
//	 .--.       .-------.
//	| 12 |     /         \
//	 '--'     |     1     |
//	           \         /
//	            '-------'
func outline(c *Canvas, f frame, d Disc, n int, st Style) {
	x, y := f.at(float64(d.X), float64(d.Y))
	rows := float64(d.D) * f.k
	high := int((rows + tie - 1) / 2) // rows above and below the middle one
	wide := int(rows/f.aspect + tie)
	wide -= (wide - n) & 1
	row := cell(y)
	first := cell(x-float64(n-1)/2) - (wide-n)/2
	for k := -high; k <= high; k++ {
		t := float64(k) / (float64(high) + 0.5)
		in := int(math.Round(float64(wide) / 2 * (1 - math.Sqrt(1-t*t))))
		if k != 0 {
			in = max(in, 1)
		}
		left, right := '|', '|'
		switch {
		case k == -high:
			left, right = '.', '.'
		case k == high:
			left, right = '\'', '\''
		case k < 0:
			left, right = '/', '\\'
		case k > 0:
			left, right = '\\', '/'
		}
		from, to := first+in, first+wide-1-in
		for col := from; col <= to; col++ {
			g := ' '
			switch {
			case col == from:
				g = left
			case col == to:
				g = right
			case k == -high || k == high:
				g = '-'
			}
			stroke(c, f, col, row+k, g, st)
		}
		if left == lineRune || left == '\'' {
			blankDot(c, from-1, row+k) // a dot beside a corner reads as part of it
			blankDot(c, to+1, row+k)
		}
	}
}

// blankDot takes one dot of the boundary away.
func blankDot(c *Canvas, col, row int) {
	if !c.inside(col, row) {
		return
	}
	if at := &c.Cells[row*c.W+col]; at.Rune == lineRune || at.Rune == sheathRune {
		*at = Cell{' ', 0}
	}
}

// stroke writes one cell of an outline. It takes the boundary's dots away, but
// leaves other outlines as they are.
func stroke(c *Canvas, f frame, col, row int, g rune, st Style) {
	if row < 0 || row >= f.h || !c.inside(col, row) {
		return
	}
	at := &c.Cells[row*c.W+col]
	if at.Rune != ' ' && at.Rune != lineRune && at.Rune != sheathRune {
		return
	}
	if g == ' ' {
		st = 0
	}
	*at = Cell{g, st}
}
