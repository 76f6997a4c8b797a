package page

import (
	"fmt"
	"html"
	"html/template"
	"strings"

	"contralay/model/unit"
	"contralay/ui/paper/list"
)

// Col is one column of a grid.
type Col struct {
	Head  string
	Align list.Align
	Wide  unit.Millimetre // 0: as its words need
	Least unit.Millimetre // of a width that is not given
	Bold  bool
	Size  float64 // points of its letters; 0: those of the grid

	Upright bool // its head is written upward
	Ends    bool // its cells name ends: cavities with a small letter are underlined
}

// Cell is one cell of a row: a text, or a picture of a width and a height.
type Cell struct {
	Text       string
	Bold       bool
	Shade      bool
	Picture    template.HTML
	Wide, High unit.Millimetre // of the picture
}

// Line is one row of a grid. One with a title alone goes over all columns.
type Line struct {
	Cells    []Cell
	Title    string
	Shade    bool
	High     unit.Millimetre // at least
	KeepNext bool
}

// Grid is a table on a page.
type Grid struct {
	Cols    []Col
	Lines   []Line
	Letter  Letter          // of its cells; the zero value is Small
	Wide    unit.Millimetre // 0: a page
	Columns int             // side by side; 0 is 1
	Bare    bool            // without a head row
	Loose   bool            // higher rows, to write in
	Shrink  bool            // no wider than its words need
	Plain   bool            // without lines between its cells
}

// Measures of a cell, mm.
const (
	padX     unit.Millimetre = 0.9
	padY     unit.Millimetre = 0.25
	border   unit.Millimetre = 25.4 / 96 // what the style asks for is less, but a browser draws a whole pixel
	gutter   unit.Millimetre = 3
	loose    unit.Millimetre = 1.6 // more of a row that is written in
	handWide unit.Millimetre = 11  // of a cell that is written in
)

// TableOf is a list as a grid.
func TableOf(t list.Table) Grid {
	g := Grid{}
	for k, head := range t.Head {
		g.Cols = append(g.Cols, Col{Head: head, Align: t.Align[k], Ends: head == "from" || head == "to"})
	}
	for _, row := range t.Rows {
		g.Lines = append(g.Lines, Cells(row...))
	}
	return g
}

// List is a list with its title as a section, and its note; nothing where it has no row.
func List(t list.Table) []Block {
	if len(t.Rows) == 0 {
		return nil
	}
	out := []Block{Section(t.Title)}
	if t.Note != "" {
		note := Text(t.Note, Small)
		note.KeepNext = true
		out = append(out, note)
	}
	return append(out, TableOf(t).Block())
}

// Cells is a row of texts.
func Cells(texts ...string) Line {
	var l Line
	for _, text := range texts {
		l.Cells = append(l.Cells, Cell{Text: text})
	}
	return l
}

// Block is a grid as a block that is cut between its rows, its head on every page.
func (g Grid) Block() Block {
	if g.Letter.Point == 0 {
		g.Letter = Small
	}
	if g.Wide == 0 {
		g.Wide = Wide
	}
	c := Cut{Columns: max(1, g.Columns), Gutter: gutter}
	c.Wide = (g.Wide - gutter*unit.Millimetre(c.Columns-1)) / unit.Millimetre(c.Columns)
	wide := g.widths(c.Wide - border) // half of the outer lines lie outside
	total := unit.Millimetre(0)
	var open strings.Builder
	for _, w := range wide {
		total += w
	}
	class := g.Letter.Class()
	if g.Plain {
		class += " plain"
	}
	fmt.Fprintf(&open, `<table class="%s" style="width:%s"><colgroup>`, class, mm(total))
	for _, w := range wide {
		fmt.Fprintf(&open, `<col style="width:%s">`, mm(w))
	}
	open.WriteString("</colgroup>")
	c.Open, c.Close = template.HTML(open.String()), "</tbody></table>" // #nosec: numbers alone
	c.Head = "<tbody>"
	if !g.Bare {
		head, high := g.row(g.headLine(), wide, true)
		c.Head, c.HeadHigh = "<thead>"+head+"</thead><tbody>", high+border
	}
	for _, line := range g.Lines {
		text, high := g.row(line, wide, false)
		c.Rows = append(c.Rows, Row{HTML: text, High: high, KeepNext: line.KeepNext})
	}
	return Block{Cut: &c, Gap: 1}
}

func (g Grid) headLine() Line {
	var l Line
	for _, c := range g.Cols {
		l.Cells = append(l.Cells, Cell{Text: c.Head, Bold: true})
	}
	return l
}

// letter is that of a cell of a column.
func (g Grid) letter(k int, bold bool) Letter {
	l := g.Letter
	if s := g.Cols[k].Size; s > 0 {
		l.Point = s
	}
	l.Bold = bold || g.Cols[k].Bold
	return l
}

// edges is what a row takes beside its lines.
func (g Grid) edges() unit.Millimetre {
	if g.Plain {
		return 0.2
	}
	return 2*padY + border
}

// headLetter is that of the head row, which is not larger than it needs to be.
func (g Grid) headLetter() Letter { return Strong }

// row is one row as HTML, and how high it is.
func (g Grid) row(line Line, wide []unit.Millimetre, head bool) (template.HTML, unit.Millimetre) {
	high := line.High
	texts := make([]template.HTML, len(line.Cells))
	for k, cell := range line.Cells {
		l := g.letter(k, cell.Bold)
		if head {
			l = g.headLetter()
		}
		if head && g.Cols[k].Upright {
			texts[k] = template.HTML(`<span class="upright">` + html.EscapeString(cell.Text) + `</span>`) // #nosec: escaped
			high = max(high, l.Wide(cell.Text)+2*padX+border)
			continue
		}
		if cell.Picture != "" {
			texts[k] = cell.Picture
			high = max(high, cell.High+g.edges())
			continue
		}
		lines := l.Lines(cell.Text, wide[k]-2*padX-border)
		if texts[k] = joined(lines); g.Cols[k].Ends && !head {
			texts[k] = EndLines(lines, false)
		}
		high = max(high, unit.Millimetre(len(lines))*l.Line()+g.edges())
	}
	if line.Title != "" {
		l := g.Letter
		l.Bold = true
		total := unit.Millimetre(0)
		for _, w := range wide {
			total += w
		}
		lines := l.Lines(line.Title, total-2*padX-border)
		high = max(high, unit.Millimetre(len(lines))*l.Line()+g.edges())
		return template.HTML(fmt.Sprintf(`<tr class="title" style="height:%s"><td colspan="%d" class="%s">%s</td></tr>`, // #nosec: escaped
			mm(high), len(wide), l.Class(), joined(lines))), high
	}
	if g.Loose && !head {
		high += loose
	}
	var b strings.Builder
	class := ""
	if line.Shade {
		class = ` class="shade"`
	}
	fmt.Fprintf(&b, `<tr%s style="height:%s">`, class, mm(high))
	for k := range line.Cells {
		g.cell(&b, k, line.Cells[k], texts[k], head)
	}
	b.WriteString("</tr>\n")
	return template.HTML(b.String()), high // #nosec: its texts are escaped
}

func (g Grid) cell(b *strings.Builder, k int, cell Cell, text template.HTML, head bool) {
	tag, l := "td", g.letter(k, cell.Bold)
	if head {
		tag, l = "th", g.headLetter()
	}
	var class []string
	if l != g.Letter {
		class = append(class, l.Class())
	}
	if g.Cols[k].Align == list.ToRight {
		class = append(class, "r")
	}
	if cell.Shade {
		class = append(class, "shade")
	}
	b.WriteString("<" + tag)
	if len(class) > 0 {
		b.WriteString(` class="` + strings.Join(class, " ") + `"`)
	}
	b.WriteString(">" + string(text) + "</" + tag + ">")
}

// widths are those of the columns, which together are a width: what is given as it is; of the others,
// each as wide as its longest text where there is room for that; else those that want most give, down to
// their longest words.
func (g Grid) widths(total unit.Millimetre) []unit.Millimetre {
	n := len(g.Cols)
	out, least, want := make([]unit.Millimetre, n), make([]unit.Millimetre, n), make([]unit.Millimetre, n)
	for k, c := range g.Cols {
		if c.Wide > 0 {
			out[k], least[k], want[k] = c.Wide, c.Wide, c.Wide
			continue
		}
		least[k] = max(c.Least, g.headLetter().longest(c.Head)+2*padX+border)
		if c.Align == list.ByHand {
			least[k] = max(least[k], handWide)
		}
		want[k] = least[k] // a head may take two lines
		for _, line := range g.Lines {
			if k >= len(line.Cells) {
				continue
			}
			cell, l := line.Cells[k], g.letter(k, line.Cells[k].Bold)
			least[k] = max(least[k], l.longest(cell.Text)+2*padX+border, cell.Wide+2*padX+border)
			want[k] = max(want[k], l.widest(cell.Text)+2*padX+border, least[k])
			if c.Align == list.ToRight { // a figure is never parted from its unit
				least[k] = max(least[k], l.widest(cell.Text)+2*padX+border)
			}
		}
	}
	sum := func(all []unit.Millimetre) (s unit.Millimetre) {
		for _, v := range all {
			s += v
		}
		return s
	}
	switch needs, wants := sum(least), sum(want); {
	case wants <= total:
		copy(out, want)
		if !g.Shrink {
			g.share(out, g.heads(out, total-wants))
		}
	case needs <= total: // those that want most give, so that the others stay on one line
		low, high := unit.Millimetre(0), total
		for range 50 {
			most, s := (low+high)/2, unit.Millimetre(0)
			for k := range out {
				s += max(least[k], min(want[k], most))
			}
			if s > total {
				high = most
			} else {
				low = most
			}
		}
		for k := range out {
			out[k] = max(least[k], min(want[k], low))
		}
	default: // words are broken: the widest columns give, down to one width for all
		for k := range out {
			out[k] = least[k]
		}
		narrow(out, total)
	}
	return out
}

// heads makes columns as wide as their heads, where there is room for that, and gives what is left then.
func (g Grid) heads(out []unit.Millimetre, left unit.Millimetre) unit.Millimetre {
	for k, c := range g.Cols {
		more := g.headLetter().Wide(c.Head) + 2*padX + border - out[k]
		if c.Wide == 0 && !g.Bare && more > 0 && more <= left {
			out[k] += more
			left -= more
		}
	}
	return left
}

// share gives what is left of a width to the columns: to those that are written in, else to all
// whose width is not given.
func (g Grid) share(out []unit.Millimetre, left unit.Millimetre) {
	of := func(is func(Col) bool) (ks []int) {
		for k, c := range g.Cols {
			if c.Wide == 0 && is(c) {
				ks = append(ks, k)
			}
		}
		return ks
	}
	ks := of(func(c Col) bool { return c.Align == list.ByHand })
	if len(ks) > 0 {
		most := 3 * handWide // a cell to write in is wide enough at some point
		for _, k := range ks {
			more := min(left/unit.Millimetre(len(ks)), max(0, most-out[k]))
			out[k] += more
			left -= more
			ks = ks[1:]
		}
	}
	if ks = of(func(c Col) bool { return c.Align != list.ByHand }); len(ks) == 0 {
		ks = of(func(Col) bool { return true })
	}
	for _, k := range ks {
		out[k] += left / unit.Millimetre(len(ks))
	}
}

// narrow makes the widest columns narrower until all together are a width.
func narrow(out []unit.Millimetre, total unit.Millimetre) {
	low, high := unit.Millimetre(0), total
	for range 50 {
		most, s := (low+high)/2, unit.Millimetre(0)
		for _, v := range out {
			s += min(v, most)
		}
		if s > total {
			high = most
		} else {
			low = most
		}
	}
	for k := range out {
		out[k] = min(out[k], low)
	}
}
