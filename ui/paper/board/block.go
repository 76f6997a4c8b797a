package board

import (
	"fmt"
	"strings"

	"contralay/calc/query/drawing"
	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/model/visible"
	"contralay/ui/paper/font"
	"contralay/ui/paper/plot"
	"contralay/ui/paper/tile"
)

// Meta is what a drawing is told from outside.
type Meta struct {
	On   string // the day it was drawn
	File string

	Identity string
	Sys      unit.System // of the words beside the drawing
}

// row is a line of the block: one text, or texts in columns.
type row struct {
	cells []string
	at    []unit.Millimetre // where each begins, mm from the left
	size  unit.Millimetre
	bold  bool
	gap   unit.Millimetre // above it
	whole int             // so many rows from here stay together where one column holds them
}

// small and large are the sizes of the block: 9 points and more.
const (
	small unit.Millimetre = 3.6
	large unit.Millimetre = 6
)

// blockWide is how wide a column of the block is, mm.
const blockWide unit.Millimetre = 180

// blockRows are the rows of the block.
func blockRows(s *sheet.Sheet, d *drawing.Drawing, world *plot.Sheet, c *tile.Cut, m Meta) []row {
	var out []row
	say := func(text string) {
		for _, line := range wrapped(text, blockWide, small) {
			out = append(out, row{cells: []string{line}, size: small})
		}
	}
	head := func(text string) {
		out = append(out, row{cells: []string{text}, size: small + 0.8, bold: true, gap: 3})
	}
	for _, line := range wrapped(visible.Line(title(s)), blockWide, large) {
		out = append(out, row{cells: []string{line}, size: large, bold: true})
	}
	out = append(out, row{cells: []string{"drawing at full size, 1:1", "lengths in " + m.Sys.Name() + ", pegs in mm"},
		at: []unit.Millimetre{0, 90}, size: small + 0.8, gap: 2},
		row{cells: []string{"serial ____________", "drawn ____________", "checked ____________", "released ____________"},
			at: []unit.Millimetre{0, 44, 88, 134}, size: small, gap: 4})
	out = append(out, row{gap: 2})
	say(strings.Join(filled("Drawn "+m.On, visible.Line(m.File), "identity "+m.Identity), ", ") + ".")
	if c != nil {
		say("Print at 100 %, not fitted to the page. " + printed(c))
	}
	size := world.Box.High.Minus(world.Box.Low)
	say(fmt.Sprintf("The drawing is %s x %s mm. x runs to the right and y up, from %s. It is seen from above the board.",
		unit.Fixed(size.X, 0),
		unit.Fixed(size.Y, 0), d.Datum))
	if d.Keyed {
		say("Branches leave and bend as the file says; the rest lies by rule.")
	} else {
		say("Branches lie by rule: the longest way is straight, legs leave to both sides in turn. The angles are not those of the vehicle.")
	}
	say("A length without a tolerance beside it has none in the file.")
	notes := d.Notes
	if len(notes) > 0 {
		head("Read this first")
	}
	for _, n := range notes {
		say(visible.Line(m.Sys.Says(n.Says)) + ".")
	}
	head("Signs")
	say("Hatched: sorted zone, wires run straight. Grey: under a sheath or a sleeve. Heavy line across: a cover starts or stops. " +
		"Thin line across: the lay starts or stops. Dark box: splice. White box on a bundle: label.")
	say("Cross at an end: the length is measured from there. Triangle at an end: its key, black where it faces you. " +
		"Round dial: the end seen from its wire side, with its key inside and its boot outside. Dashed: a size or a length is not known.")
	say(fmt.Sprintf("Circle with a cross: peg of %s mm, numbered. Bundles are as wide as they are over their covers.",
		unit.Fixed(d.PegMM, 1)))
	out = append(out, pegRows(d)...)
	return out
}

// printed says what pages there are.
func printed(c *tile.Cut) string {
	cells, empty := c.Printed()
	switch {
	case c.Paper.Roll && len(cells) == 1:
		return fmt.Sprintf("One length of %s.", c.Paper.Says)
	case c.Paper.Roll:
		return fmt.Sprintf("%d lengths of %s, %s of each of them shown on the next too.", len(cells), c.Paper.Says,
			unit.Fixed(tile.Overlap, 0)+" mm")
	}
	says := fmt.Sprintf("%d pages of %s. Each shows 10 mm of the page beside it: lay cross on cross and diamond on diamond.", len(cells),
		c.Paper.Says)
	if len(empty) > 0 {
		says += " Left out, as nothing is on them that those beside them do not show: " + strings.Join(empty, ", ") + "."
	}
	return says
}

// pegRows is the table of pegs.
func pegRows(d *drawing.Drawing) []row {
	if len(d.Pegs) == 0 {
		return nil
	}
	out := []row{{cells: []string{"Pegs, mm from the datum"}, size: small + 0.8, bold: true, gap: 3}}
	const columns = 3
	var at []unit.Millimetre
	var head []string
	for k := range columns {
		for n, text := range []string{"no.", "x", "y", "on"} {
			at = append(at, unit.Millimetre(60*k)+[...]unit.Millimetre{0, 10, 27, 44}[n])
			head = append(head, text)
		}
	}
	out = append(out, row{cells: head, at: at, size: small, bold: true})
	high := (len(d.Pegs) + columns - 1) / columns
	for n := range high {
		var cells []string
		for k := range columns {
			if i := n + k*high; i < len(d.Pegs) {
				p := d.Pegs[i]
				cells = append(cells, pegNumber(p.No), unit.Fixed(p.At.X, 1), unit.Fixed(p.At.Y, 1), d.Branches[p.Branch].ID)
			}
		}
		out = append(out, row{cells: cells, at: at[:len(cells)], size: small})
	}
	out[0].whole = len(out)
	return out
}

// wrapped is a text in lines that are no wider than a width.
func wrapped(text string, wide, size unit.Millimetre) []string {
	var out []string
	line := ""
	for _, word := range strings.Fields(text) {
		next := strings.TrimSpace(line + " " + word)
		if line != "" && font.Of(true).Width(next, size) > wide {
			out = append(out, line)
			next = word
		}
		line = next
	}
	return append(out, line)
}

// flowed are rows in columns of a height; each column's top left is at (0, 0).
func flowed(rows []row, high unit.Millimetre) [][]plot.Shape {
	var out [][]plot.Shape
	var column []plot.Shape
	y := unit.Millimetre(0)
	for n, r := range rows {
		step := r.gap + r.size*leading
		keep := step
		if r.bold && n+1 < len(rows) { // a head does not stand alone
			keep += rows[n+1].size * leading
		}
		together := unit.Millimetre(0)
		for _, o := range rows[n : n+r.whole] {
			together += o.gap + o.size*leading
		}
		if together <= high {
			keep = max(keep, together)
		}
		if y+keep > high && len(column) > 0 {
			out, column, y = append(out, column), nil, 0
			step -= r.gap
		}
		y += step
		for k, text := range r.cells {
			x := unit.Millimetre(0)
			if k < len(r.at) {
				x = r.at[k]
			}
			if text != "" {
				column = append(column, plot.Shape{Layer: plot.Frame, Text: text, Size: r.size, Bold: r.bold,
					Middle: plot.Point{X: x, Y: -y + 0.25*r.size}})
			}
		}
	}
	return append(out, column)
}
