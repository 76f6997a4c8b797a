package page

import (
	"fmt"
	"html/template"
	"strings"

	"contralay/model/unit"
)

// all is every row of it, and how high that is.
func (c *Cut) all() (template.HTML, unit.Millimetre) { return c.columns(c.balanced(len(c.Rows))) }

// High is how high a block is that is not cut.
func (b *Block) high() unit.Millimetre {
	if b.Cut == nil {
		return b.High
	}
	_, high := b.Cut.spread(len(b.Cut.Rows))
	return high
}

func (c *Cut) count() int { return max(1, c.Columns) }

// balanced is the first n rows in its columns, as even in height as their order allows.
func (c *Cut) balanced(n int) [][]Row {
	out, _ := c.spread(n)
	return out
}

// spread is the first n rows in columns, and the height of the highest of them with its head. A
// column is as high as it has to be, and no row that stays with the next ends one.
func (c *Cut) spread(n int) ([][]Row, unit.Millimetre) {
	rows := c.Rows[:n]
	total, most := unit.Millimetre(0), unit.Millimetre(0)
	for _, r := range rows {
		total += r.High
		most = max(most, r.High)
	}
	if c.count() == 1 {
		return [][]Row{rows}, c.HeadHigh + total
	}
	for room := max(most, total/unit.Millimetre(c.count())); ; room += most / 4 {
		out := filled(rows, room)
		if len(out) <= c.count() {
			high := unit.Millimetre(0)
			for _, column := range out {
				high = max(high, sum(column))
			}
			return out, c.HeadHigh + high
		}
	}
}

// filled is rows in columns of a height, as many as it takes.
func filled(rows []Row, room unit.Millimetre) [][]Row {
	var out [][]Row
	for len(rows) > 0 {
		n := fitting(rows, room)
		out = append(out, rows[:n])
		rows = rows[n:]
	}
	return out
}

// fitting is how many rows fit into a height: one at least, and none that has to stay with the next
// is the last where that can be.
func fitting(rows []Row, room unit.Millimetre) int {
	high, n := unit.Millimetre(0), 0
	for n < len(rows) && high+rows[n].High <= room+1e-6 {
		high += rows[n].High
		n++
	}
	if n == len(rows) {
		return n
	}
	whole := n
	for n > 0 && rows[n-1].KeepNext {
		n--
	}
	if n == 0 {
		n = max(1, whole)
	}
	return n
}

func sum(rows []Row) unit.Millimetre {
	high := unit.Millimetre(0)
	for _, r := range rows {
		high += r.High
	}
	return high
}

// columns is rows in columns as HTML, and how high they are with their heads.
func (c *Cut) columns(columns [][]Row) (template.HTML, unit.Millimetre) {
	high := unit.Millimetre(0)
	var b strings.Builder
	several := c.count() > 1
	if several {
		b.WriteString(`<div class="beside">`)
	}
	for k, rows := range columns {
		if several {
			left := unit.Millimetre(0)
			if k > 0 {
				left = c.Gutter
			}
			fmt.Fprintf(&b, `<div style="width:%s;margin-left:%s">`, mm(c.Wide), mm(left))
		}
		b.WriteString(string(c.Open) + string(c.Head))
		for _, r := range rows {
			b.WriteString(string(r.HTML))
		}
		b.WriteString(string(c.Close))
		if several {
			b.WriteString("</div>")
		}
		high = max(high, c.HeadHigh+sum(rows))
	}
	if several {
		b.WriteString("</div>")
	}
	return template.HTML(b.String()), high // #nosec: made of rows
}

// part is as many of its rows as fit into a height, as HTML with its height, and what is left of it;
// nothing where not even the first rows fit.
func (c *Cut) part(room unit.Millimetre) (text template.HTML, high unit.Millimetre, rest *Cut) {
	n := len(c.Rows)
	if _, all := c.spread(n); all > room {
		n = c.fits(room)
	}
	if n == 0 {
		return "", 0, c
	}
	text, high = c.columns(c.balanced(n))
	if n == len(c.Rows) {
		return text, high, nil
	}
	left := *c
	left.Rows = c.Rows[n:]
	return text, high, &left
}

// fits is how many rows fit into a height.
func (c *Cut) fits(room unit.Millimetre) int {
	room -= c.HeadHigh
	n := 0
	for range c.count() {
		rows := c.Rows[n:]
		if len(rows) == 0 {
			break
		}
		k := fitting(rows, room)
		if sum(rows[:k]) > room+1e-6 { // not even one
			break
		}
		n += k
	}
	for n > 0 {
		if _, high := c.spread(n); high <= room+c.HeadHigh+1e-6 {
			break
		}
		n--
	}
	for n > 0 && n < len(c.Rows) && c.Rows[n-1].KeepNext {
		n--
	}
	return n
}

// first is the least of it that may stand on a page: its head and its first rows.
func (c *Cut) first() unit.Millimetre {
	high := c.HeadHigh
	for _, r := range c.Rows {
		high += r.High
		if !r.KeepNext {
			break
		}
	}
	return high
}
