package laycard

import (
	"fmt"
	"html"
	"html/template"
	"strings"

	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/ui/paper/page"
)

// The order of a layer as a table: position and wire in the largest letters that the rows have room
// for, then what tells the wire from the others and where it goes.

// field is one column of the order.
type field struct {
	head string
	key  bool // read at arm's length: set large and bold
	cell func(r Row) string
}

// ends reports whether its cells name ends; alone, whether they are cavities of the end in its head.
func (f field) ends() bool { return f.alone() || f.head == "ends at" }
func (f field) alone() bool {
	return strings.HasPrefix(f.head, "from ") || strings.HasPrefix(f.head, "to ")
}

// form is where an order stands, which says how many columns it has room for.
type form int

const (
	overPage form = iota // over the width of a page
	inColumn             // beside the picture of a page
	inBlock              // in a block
)

// fieldsOf is the columns that say something of a card: a cavity at the near end where one ends
// there, a code where colours have codes, the branch a wire goes on into where that is not plain from
// where it ends.
// What is narrower than a page has no column for marks, and a block none to tick.
func fieldsOf(c *Card, layers []Layer, form form) []field {
	any := func(is func(r Row) bool) bool {
		for k := range layers {
			for _, r := range layers[k].Rows {
				if is(r) {
					return true
				}
			}
		}
		return false
	}
	out := []field{
		{"no", true, func(r Row) string { return fmt.Sprint(r.Position) }},
		{"wire", true, func(r Row) string { return r.ID }},
	}
	if any(func(r Row) bool { return r.Starts != "" }) {
		out = append(out, field{"from " + c.From, false, func(r Row) string { return r.Starts }})
	}
	out = append(out, field{"colour", false, func(r Row) string { return r.Colour }})
	if any(func(r Row) bool { return r.Code != "" }) {
		out = append(out, field{"code", false, func(r Row) string { return r.Code }})
	}
	if any(func(r Row) bool { return !strings.HasSuffix(r.Size, " AWG") && r.Kind == sheet.OfWire }) {
		out = append(out, field{"size", false, func(r Row) string { return r.Size }})
	} else {
		out = append(out, field{"AWG", false, func(r Row) string {
			if form != overPage && r.Kind == sheet.OfFiller {
				return "" // said beside the picture
			}
			return strings.TrimSuffix(r.Size, " AWG")
		}})
	}
	if any(func(r Row) bool { return r.leaves(c) != "" }) {
		out = append(out, field{"into", false, func(r Row) string { return r.leaves(c) }})
	}
	switch {
	case !any(func(r Row) bool { return r.Kind != sheet.OfFiller && !strings.HasPrefix(r.To, c.To+":") }):
		out = append(out, field{"to " + c.To, false, func(r Row) string { return strings.TrimPrefix(r.To, c.To+":") }})
	default:
		out = append(out, field{"ends at", false, func(r Row) string { return r.To }})
	}
	switch form {
	case inBlock:
		return out
	case inColumn:
		return append(out, field{"laid", false, func(Row) string { return "" }})
	}
	if any(func(r Row) bool { return r.mark() != "" }) {
		out = append(out, field{"", false, Row.mark})
	}
	return append(out, field{"laid", false, func(Row) string { return "" }})
}

// leaves is the branch that a piece goes on into; "" where it ends where this branch ends.
func (r Row) leaves(c *Card) string {
	if r.Kind == sheet.OfFiller || r.Leaves == c.To || r.Leaves == c.ID {
		return ""
	}
	return r.Leaves
}

// mark is what is special of a piece.
func (r Row) mark() string {
	switch {
	case r.Tracer && r.Kind == sheet.OfSpare:
		return "tracer, spare"
	case r.Tracer:
		return "tracer"
	case r.Kind == sheet.OfSpare:
		return "spare"
	case r.Splice != "":
		return "ends here"
	}
	return ""
}

// Letters of the order: the key columns and the others, largest first.
var orderLetters = [][2]page.Letter{
	{page.Heading, {Point: 12}}, {page.Heading, {Point: 11}}, {page.Heading, page.Body}, {{Point: 12, Bold: true}, page.Body},
	{{Point: 12, Bold: true}, page.Small}, {page.Sub, page.Small},
}

// Measures of a table, mm: what stands round a text in a cell, and the cell that is ticked.
const (
	cellPad  unit.Millimetre = 2.2
	tickWide unit.Millimetre = 8
	tight    unit.Millimetre = 1.04 // distance of two lines in a row of one line, in sizes
)

// grid is the order of layers, set: the width of its columns, its letters, the height of its rows.
type grid struct {
	fields       []field
	wide         []unit.Millimetre
	total        unit.Millimetre
	large, other page.Letter
	row          unit.Millimetre
	heads        []page.Row // one above the rows of each layer; nil where there is one layer alone
}

// leastRow is the least height of a row in the smallest letters, mm.
const leastRow unit.Millimetre = 4.4

// gridOf sets the order of layers in a width, with rows of a height at most: the largest letters that
// have room both ways.
func gridOf(c *Card, layers []Layer, wide, row unit.Millimetre, form form) grid {
	g := grid{fields: fieldsOf(c, layers, form)}
	for k, l := range orderLetters {
		g.large, g.other = l[0], l[1]
		fits := g.measure(layers, wide, false) || k == len(orderLetters)-1 && g.measure(layers, wide, true)
		if least := g.large.Size()*tight + 0.4; (fits && least <= row) || k == len(orderLetters)-1 {
			g.row = max(min(row, g.large.Line()+1.2), least, leastRow)
			break
		}
	}
	return g
}

// measure makes the columns as wide as their words, and shares out what is left; false where they are
// wider together than the width: then the widest of the words are broken. The rows of units, which have
// two of everything, may be left to take two lines.
func (g *grid) measure(layers []Layer, wide unit.Millimetre, without bool) bool {
	g.wide, g.total = nil, 0
	for _, f := range g.fields {
		w := cellPad
		for _, word := range strings.Fields(f.head) {
			w = max(w, page.Strong.Wide(word)+cellPad)
		}
		for k := range layers {
			for _, r := range layers[k].Rows {
				if without && r.Kind == sheet.OfUnit && !f.key {
					continue
				}
				w = max(w, g.letter(f).Wide(f.cell(r))+cellPad)
			}
		}
		if f.head == "laid" {
			w = max(w, tickWide)
		}
		g.wide = append(g.wide, w)
		g.total += w
	}
	fits := g.total <= wide
	if !fits {
		g.narrow(wide)
	}
	if left := wide - g.total; fits && left > 0 {
		for k := range g.wide {
			g.wide[k] += left / unit.Millimetre(len(g.wide))
		}
		g.total = wide
	}
	return fits
}

// narrow takes from the widest columns what is too much.
func (g *grid) narrow(wide unit.Millimetre) {
	low, high := unit.Millimetre(0), wide
	for range 40 {
		most, sum := (low+high)/2, unit.Millimetre(0)
		for _, w := range g.wide {
			sum += min(w, most)
		}
		if sum > wide {
			high = most
		} else {
			low = most
		}
	}
	g.total = 0
	for k := range g.wide {
		g.wide[k] = min(g.wide[k], low)
		g.total += g.wide[k]
	}
}

func (g *grid) letter(f field) page.Letter {
	if f.key {
		return g.large
	}
	return g.other
}

// headHigh is the height of the head row, or of the name of a layer above its rows.
func (g *grid) headHigh() unit.Millimetre { return page.Strong.Line() + 0.9 }

// headLines are the heads of the columns in lines, and how high they are.
func (g *grid) headLines() (lines []string, high unit.Millimetre) {
	most := 1
	for k, f := range g.fields {
		all := page.Strong.Lines(f.head, g.wide[k]-cellPad+0.3)
		most = max(most, len(all))
		for n := range all {
			all[n] = html.EscapeString(all[n])
		}
		lines = append(lines, strings.Join(all, "<br>"))
	}
	return lines, unit.Millimetre(most)*page.Strong.Line() + 0.9
}

// block is layers one below the other as one table, each under its name where there are several.
func (g *grid) block(layers []Layer) page.Block {
	var open, head strings.Builder
	fmt.Fprintf(&open, `<table class="order" style="width:%s"><colgroup>`, mm(g.total))
	for _, w := range g.wide {
		fmt.Fprintf(&open, `<col style="width:%s">`, mm(w))
	}
	open.WriteString("</colgroup>")
	heads, headHigh := g.headLines()
	fmt.Fprintf(&head, `<thead><tr style="height:%s">`, mm(headHigh))
	for _, says := range heads {
		fmt.Fprintf(&head, `<th class="p9b">%s</th>`, says)
	}
	head.WriteString("</tr></thead><tbody>")
	c := page.Cut{Open: template.HTML(open.String()), Head: template.HTML(head.String()), HeadHigh: headHigh + 0.2, // #nosec: escaped
		Close: "</tbody></table>", Wide: g.total}
	for k := range layers {
		l := &layers[k]
		if k < len(g.heads) {
			c.Rows = append(c.Rows, g.heads[k])
		}
		for _, r := range l.Rows {
			c.Rows = append(c.Rows, g.tr(r))
		}
	}
	return page.Block{Cut: &c, Gap: 1}
}

// tr is one row.
func (g *grid) tr(r Row) page.Row {
	var b strings.Builder
	high := g.row
	for k, f := range g.fields {
		l := g.letter(f)
		lines := l.Lines(f.cell(r), g.wide[k]-cellPad+0.3)
		if n := len(lines); n > 1 {
			high = max(high, unit.Millimetre(n)*l.Size()*tight+0.4)
		}
		text := page.EndLines(lines, f.alone())
		if !f.ends() {
			for n := range lines {
				lines[n] = html.EscapeString(lines[n])
			}
			text = template.HTML(strings.Join(lines, "<br>")) // #nosec: escaped
		}
		class := ""
		if r.Kind == sheet.OfFiller {
			class = " shade"
		}
		fmt.Fprintf(&b, `<td class="%s%s" style="line-height:%s;padding-top:0;padding-bottom:0;vertical-align:middle">%s</td>`, l.Class(),
			class, mm(l.Size()*tight), text)
	}
	return page.Row{High: high, HTML: template.HTML(fmt.Sprintf(`<tr data-of="%s" style="height:%s">%s</tr>`+"\n", // #nosec: escaped
		html.EscapeString(r.ID), mm(high), b.String()))}
}

// high is how high the order of layers is, its head counted.
func (g *grid) high(layers []Layer) unit.Millimetre {
	block := g.block(layers)
	sum := block.Cut.HeadHigh
	for _, r := range block.Cut.Rows {
		sum += r.High
	}
	return sum
}

// over is a row over all columns, of a height; text is HTML.
func (g *grid) over(high unit.Millimetre, text string) page.Row {
	return page.Row{High: high, KeepNext: true, HTML: template.HTML(fmt.Sprintf( // #nosec: escaped by who calls
		`<tr class="title" style="height:%s"><td class="p9b" style="padding-top:0;padding-bottom:0;vertical-align:middle" colspan="%d">%s</td></tr>`,
		mm(high), len(g.fields), text))}
}

func mm(v unit.Millimetre) string { return unit.Fixed(v, 2) + "mm" }
