package draw

import "unicode/utf8"

// Cell is one character and its look.
type Cell struct {
	Rune  rune
	Style Style
}

// Canvas is a picture of exactly H lines of W cells.
type Canvas struct {
	W, H  int
	Cells []Cell // row by row, W×H of them

	// NotShown lists the ids that have no label of their own on the map, in the
	// order of the section: those under a +, and those that cannot be drawn.
	NotShown []string
	// OutOfView lists the ids that lie outside a zoomed window.
	OutOfView []string
	// Shortened lists the labels that had to be cut, in the order of the section.
	Shortened []Short
}

// Short is a label that was cut: the disc, and what the map shows.
type Short struct{ ID, Label string }

func newCanvas(w, h int) Canvas {
	w, h = max(w, 0), max(h, 0)
	c := Canvas{W: w, H: h, Cells: make([]Cell, w*h)}
	for i := range c.Cells {
		c.Cells[i].Rune = ' '
	}
	return c
}

// NewCanvas is an empty picture of h lines of w cells.
func NewCanvas(w, h int) Canvas { return newCanvas(w, h) }

// Put writes one cell; outside the picture it does nothing.
func (c *Canvas) Put(col, row int, r rune, s Style) { c.put(col, row, r, s) }

// Centred writes text in the middle of a line, cut to the width.
func (c *Canvas) Centred(row int, text string, s Style) { c.centred(row, text, s) }

// inside reports whether the cell exists.
func (c *Canvas) inside(col, row int) bool { return col >= 0 && row >= 0 && col < c.W && row < c.H }

// put writes one cell; outside the grid it does nothing.
func (c *Canvas) put(col, row int, r rune, s Style) {
	if c.inside(col, row) {
		c.Cells[row*c.W+col] = Cell{r, s}
	}
}

// write puts text from col on, one rune a cell.
func (c *Canvas) write(col, row int, text string, s Style) {
	for _, r := range text {
		c.put(col, row, r, s)
		col++
	}
}

// centred writes text in the middle of a line, cut to the width.
func (c *Canvas) centred(row int, text string, s Style) {
	n := utf8.RuneCountInString(text)
	if n > c.W {
		text = cutRunes(text, c.W)
		n = utf8.RuneCountInString(text)
	}
	c.write((c.W-n)/2, row, text, s)
}

// cutRunes keeps n runes, the last of them ~ where something was lost.
func cutRunes(text string, n int) string {
	if n <= 0 {
		return ""
	}
	rs := []rune(text)
	if len(rs) <= n {
		return text
	}
	return string(rs[:n-1]) + "~"
}

// Lines returns the picture as plain text: H lines of W cells, blanks included.
func (c Canvas) Lines() []string {
	out := make([]string, c.H)
	buf := make([]byte, 0, c.W*3)
	for row := range out {
		buf = buf[:0]
		for _, cell := range c.Cells[row*c.W : (row+1)*c.W] {
			buf = utf8.AppendRune(buf, cell.Rune)
		}
		out[row] = string(buf)
	}
	return out
}

// Styled returns the lines with colour. A sequence is written only where the
// look changes, and each line ends as it began, so that lines can stand beside
// other text. With a Styler that writes nothing it equals Lines.
func (c Canvas) Styled(r Styler) []string {
	out := make([]string, c.H)
	buf := make([]byte, 0, c.W*8)
	for row := range out {
		buf = buf[:0]
		last := Style(0)
		for _, cell := range c.Cells[row*c.W : (row+1)*c.W] {
			if cell.Style != last && !(cell.Rune == ' ' && cell.Style.sameGround(last)) {
				buf = r.AppendSGR(buf, cell.Style)
				last = cell.Style
			}
			buf = utf8.AppendRune(buf, cell.Rune)
		}
		if last != 0 {
			buf = r.AppendSGR(buf, 0)
		}
		out[row] = string(buf)
	}
	return out
}
