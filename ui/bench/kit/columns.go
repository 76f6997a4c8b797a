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
}

// Columns are columns side by side, measured.
type Columns[T any] struct {
	columns []Column[T]
	widths  []int
	ascii   bool
}

// columnGap parts two columns.
const columnGap = "  "

// leastGiven is how far a column that gives is cut before the line is.
const leastGiven = 6

// MakeColumns measures columns over their rows, in lines of at most w cells; 0 is
// without limit. Texts are cleaned, and spelled out in plain characters.
func MakeColumns[T any](columns []Column[T], rows []T, w int, ascii bool) Columns[T] {
	c := Columns[T]{columns: columns, widths: make([]int, len(columns)), ascii: ascii}
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
	n := (len(c.widths) - 1) * len(columnGap)
	for _, w := range c.widths {
		n += w
	}
	return max(n, 0)
}

// Head is the line of heads.
func (c Columns[T]) Head() string {
	return c.line(func(k int) string { return c.columns[k].Head })
}

// Line is the line of a row.
func (c Columns[T]) Line(row T) string {
	return c.line(func(k int) string { return c.columns[k].Cell(row) })
}

// Lines are the heads and all rows.
func (c Columns[T]) Lines(rows []T) []string {
	out := []string{c.Head()}
	for _, row := range rows {
		out = append(out, c.Line(row))
	}
	return out
}

func (c Columns[T]) line(cell func(k int) string) string {
	var b strings.Builder
	for k, column := range c.columns {
		if k > 0 {
			b.WriteString(columnGap)
		}
		text := draw.Cut(c.text(cell(k)), c.widths[k], c.ascii)
		if column.Align == ToRight {
			b.WriteString(draw.PadLeft(text, c.widths[k]))
			continue
		}
		b.WriteString(draw.Pad(text, c.widths[k]))
	}
	return strings.TrimRight(b.String(), " ")
}
