package customer

import (
	"strings"

	"contralay/model/unit"
	"contralay/ui/paper/connector"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// between is the room between two faces side by side, mm.
const between unit.Millimetre = 5

// pins is the faces of the connectors, and what is in each cavity.
func (c Set) pins() []page.Block {
	out := c.faces()
	g := page.Grid{Columns: 2, Cols: []page.Col{{Head: "cavity"}, {Head: "wire", Bold: true}, {Head: "colour"}, {Head: "signal"},
		{Head: "leads to", Ends: true}}, Plain: true}
	var closed []page.Block
	for t := range c.H.Terminations {
		leads, before := connector.Leads(c.Maker, t), c.H.Terminations[t].ID+":"
		if _, insert := c.S.Cat.Insert(c.H.Terminations[t].Insert.V); insert && len(leads) > 0 {
			g.Lines = append(g.Lines, page.Line{Title: c.title(t), KeepNext: true})
			before = ""
		}
		for k, l := range leads {
			g.Lines = append(g.Lines, page.Line{Cells: []page.Cell{l.Cell(before, before == "" || k == 0), {Text: l.Wire}, {Text: l.Colour},
				{Text: l.Signal}, {Text: shortEnd(l.To)}}})
		}
		closed = append(closed, connector.Empty(c.Maker, t, page.Wide)...)
	}
	if len(g.Lines) == 0 {
		return append(out, page.Text("No cavity has a wire in it.", page.Small))
	}
	breaks(&g, 20, 3)
	if len(c.H.Splices) > 0 {
		out = append(out, kept(page.Text("What leads to no cavity leads to that splice.", page.Small)))
	}
	out = append(out, g.Block())
	return append(out, closed...)
}

// shortEnd is an end on one line: a splice by its id alone.
func shortEnd(to string) string {
	return strings.ReplaceAll(strings.TrimPrefix(to, "splice "), " ", "\u00a0")
}

// title is what a connector with an insert is.
func (c Set) title(t int) string {
	e := &c.H.Terminations[t]
	return strings.Join(list.NonEmpty(strings.TrimSpace(e.ID+"  "+e.Name.V), list.Word("insert ", e.Insert.V), connector.Gendered(e),
		list.Word("key ", e.Key.V)), ", ")
}

// faces are those that the catalogue has, in rows; below them why others are not drawn.
func (c Set) faces() []page.Block {
	var out []page.Block
	var row []page.Column
	var whys []string
	used := unit.Millimetre(0)
	end := func() {
		if len(row) > 0 {
			out = append(out, page.Beside(between, row...))
		}
		row, used = nil, 0
	}
	var legend []page.Block
	without, drawn := false, false
	for t := range c.H.Terminations {
		p, ok, why := connector.Face(c.Maker, t)
		id := c.H.Terminations[t].ID
		if !ok {
			without = without || why == ""
			if why != "" {
				whys = append(whys, id+": "+why)
			}
			continue
		}
		title := page.TextIn(strings.TrimSpace(id+"  "+c.H.Terminations[t].Name.V), page.Strong, max(p.Wide, 40))
		wide := max(p.Wide, 40)
		if used > 0 && used+between+wide > page.Wide {
			end()
		}
		row, used = append(row, page.Column{Wide: wide, Blocks: []page.Block{title, p.Picture}}), used+between+wide
		legend, drawn = p.Legend(page.Wide), true
	}
	if rest := page.Wide - used - between; len(row) == 1 && rest > 50 { // room for the words beside the only one
		legend = nil
		for t := range c.H.Terminations {
			if p, ok, _ := connector.Face(c.Maker, t); ok {
				row = append(row, page.Column{Wide: rest, Blocks: p.Legend(rest)})
				break
			}
		}
	}
	end()
	out = append(out, legend...)
	for _, why := range whys {
		out = append(out, page.Text(why, page.Small))
	}
	if without && drawn {
		out = append(out, page.Text("Ends that are not drawn have no insert in the catalogue: the pinout has them.", page.Small))
	}
	return out
}

// pinout is the pinout as a file: a row for each thing in a cavity.
func (c Set) pinout() list.Table {
	var rows []connector.Lead
	for t := range c.H.Terminations {
		rows = append(rows, connector.Leads(c.Maker, t)...)
	}
	return list.Of(list.Table{File: "pinout", Title: "Pinout"}, []list.Column[connector.Lead]{
		list.Text("end", func(l connector.Lead) string { return l.End }),
		list.Text("cavity", func(l connector.Lead) string { return l.Cavity }),
		list.Text("wire", func(l connector.Lead) string { return l.Wire }),
		list.Text("colour", func(l connector.Lead) string { return l.Colour }),
		list.Text("signal", func(l connector.Lead) string { return l.Signal }),
		list.Text("leads to", func(l connector.Lead) string { return l.To }),
	}, rows)
}
