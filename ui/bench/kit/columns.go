package kit

import (
	"strings"

	"contralay/ui/draw"
)

// Align is the side on which a column's cells stand.
type Align uint8

// Sides of a column.
const (
	ToLeft  Align = iota
	ToRight       // figures
)

// Column is one column of a list or a printed table: its head and its cells are
// defined together, so that they cannot part.
type Column[T any] struct {
	Head  string
	Align Align
	Cell  func(T) string
	Least int  // narrowest, in cells; 0 is the width of its widest cell
	Gives bool // is cut first where the line has no room
	Lead  int  // blanks before it, beside the gap, where widths are given
}

// Columns are columns side by side: measured, or of widths that are given.
type Columns[T any] struct {
	columns []Column[T]
	widths  []int
	gap     int
	given   bool
	ascii   bool
}

// columnGap parts two columns that are measured. Those of given widths stand on a list, which
// has less room than a page: givenGap is enough there.
const (
	columnGap = 2
	givenGap  = 1
)

// leastGiven is how far a column that gives is cut before the line is.
const leastGiven = 6

// MakeColumns measures columns over their rows, in lines of at most w cells; 0 is
// without limit. Texts are cleaned, and spelled out in plain characters.
func MakeColumns[T any](columns []Column[T], rows []T, w int, ascii bool) Columns[T] {
	c := Columns[T]{columns: columns, widths: make([]int, len(columns)), gap: columnGap, ascii: ascii}
	for k, column := range columns {
		c.widths[k] = max(column.Least, draw.Width(c.text(column.Head)))
		for _, row := range rows {
			c.widths[k] = max(c.widths[k], draw.Width(c.text(column.Cell(row))))
		}
	}
	if w <= 0 {
		return c
	}
	for over := c.Width() - w; over > 0; {
		widest := -1
		for k, column := range columns {
			if column.Gives && c.widths[k] > leastGiven && (widest < 0 || c.widths[k] > c.widths[widest]) {
				widest = k
			}
		}
		if widest < 0 {
			break
		}
		c.widths[widest]--
		over--
	}
	return c
}

// GivenColumns are columns whose widths are the Least of each, so that a list stands as it is
// whatever its rows hold, and a row is made only when it is on the screen. 0 is as wide as
// its text, for the last one. Words are cut to their column; a figure is never cut: it takes
// the blanks before it but one.
func GivenColumns[T any](columns []Column[T], ascii bool) Columns[T] {
	c := Columns[T]{columns: columns, widths: make([]int, len(columns)), gap: givenGap, given: true, ascii: ascii}
	for k, column := range columns {
		c.widths[k] = column.Least
	}
	return c
}

// text is one cell made safe for its line.
func (c *Columns[T]) text(s string) string {
	s = draw.Clean(s)
	if c.ascii {
		s = draw.Plain(s)
	}
	return s
}

// Width is the width of a whole line.
func (c Columns[T]) Width() int {
	n := 0
	for k, w := range c.widths {
		n += c.before(k) + w
	}
	return n
}

// before is the blanks that stand before column k.
func (c *Columns[T]) before(k int) int {
	if k == 0 || k >= len(c.columns) {
		return 0
	}
	if !c.given {
		return c.gap
	}
	return c.gap + c.columns[k].Lead
}

// Head is the line of heads.
func (c Columns[T]) Head() string {
	return c.line(0, func(k int) (string, int) {
		room := c.widths[k]
		if c.given { // a head may fill the gap behind its column
			room += c.before(k + 1)
		}
		return c.columns[k].Head, room
	})
}

// Line is the line of a row.
func (c Columns[T]) Line(row T) string {
	return c.line(1, func(k int) (string, int) { return c.columns[k].Cell(row), c.widths[k] })
}

// Tinted is the line of a row, and which parts of it have a look of their own: look is asked for
// that of each column.
func (c Columns[T]) Tinted(row T, look func(column int) Look) (string, []Tint) {
	var tints []Tint
	text := c.put(1, func(k int) (string, int) { return c.columns[k].Cell(row), c.widths[k] }, func(k, from, wide int) {
		if l := look(k); l != Text && wide > 0 {
			tints = append(tints, Tint{From: from, Wide: wide, Look: l})
		}
	})
	return text, tints
}

// Lines are the heads and all rows.
func (c Columns[T]) Lines(rows []T) []string {
	out := []string{c.Head()}
	for _, row := range rows {
		out = append(out, c.Line(row))
	}
	return out
}

// line sets each text where its column stands, and at least apart blanks behind the one
// before. cell is the text of column k, and the room that it is cut to.
func (c *Columns[T]) line(apart int, cell func(k int) (text string, room int)) string {
	return c.put(apart, cell, func(int, int, int) {})
}

// put is line, and says where each column's text came to stand.
func (c *Columns[T]) put(apart int, cell func(k int) (text string, room int), stands func(k, from, wide int)) string {
	var b strings.Builder
	start, at := 0, 0 // where the column starts, and what is written
	for k, column := range c.columns {
		start += c.before(k)
		text, room := cell(k)
		text = c.text(text)
		if !c.given || c.widths[k] > 0 && column.Align == ToLeft {
			text = draw.Cut(text, room, c.ascii)
		}
		from, wide := start, draw.Width(text)
		if column.Align == ToRight {
			from += c.widths[k] - wide
		}
		if k > 0 && wide > 0 {
			from = max(from, at+apart)
		}
		for ; at < from; at++ {
			b.WriteByte(' ')
		}
		b.WriteString(text)
		stands(k, from, wide)
		at += wide
		start += c.widths[k]
	}
	return strings.TrimRight(b.String(), " ")
}
