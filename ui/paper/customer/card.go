package customer

import (
	"fmt"
	"strings"

	"contralay/calc/phase/over"
	"contralay/calc/query/lists"
	"contralay/model"
	"contralay/ui/paper/connector"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// repairRow is an end as whoever pins it again needs it.
type repairRow struct {
	over.LoopRoom
	end, name string
	used      int // contacts of it that were made anew while it was built
	contacts  []string
	boot      string
	sleeve    string
}

// left is how often a contact can still be made anew.
func (r repairRow) left() int { return max(0, r.LoopRoom.Again-r.used) }

func (c Set) repairRows() []repairRow {
	sleeves := map[string]string{}
	for _, l := range lists.Labels(c.S) {
		sleeves[l.Of] = strings.TrimPrefix(l.Sleeve, "marker sleeve ")
	}
	var out []repairRow
	for t := range c.H.Terminations {
		e := &c.H.Terminations[t]
		row := repairRow{LoopRoom: over.LoopRoomOf(c.S, t), end: e.ID, name: e.Name.V, boot: e.Boot.V,
			contacts: connector.Contacts(c.Maker, t), sleeve: sleeves[e.ID]}
		if c.Record != nil {
			for _, a := range c.Record.Again {
				if list.TermOf(a.End) == e.ID {
					row.used = max(row.used, a.Times)
				}
			}
		}
		out = append(out, row)
	}
	return out
}

// repair is the ends as a file.
func (c Set) repair() list.Table {
	return list.Of(list.Table{File: "repair", Title: "Loops and parts to pin again"}, []list.Column[repairRow]{
		list.Text("end", func(r repairRow) string { return r.end }),
		list.Text("name", func(r repairRow) string { return list.Dash(r.name) }),
		list.Figure(c.In("loop"), func(r repairRow) string { return c.Sys.Length(r.LoopMM) }),
		list.Figure("contacts left", func(r repairRow) string { return fmt.Sprint(r.left()) }),
		list.Text("contacts", func(r repairRow) string { return list.Dash(strings.Join(r.contacts, "; ")) }),
		list.Text("boot", func(r repairRow) string { return list.Dash(r.boot) }),
		list.Text("label sleeve", func(r repairRow) string { return list.Dash(r.sleeve) }),
	}, c.repairRows())
}

// alike are rows that say the same of several things, in the order they are met: the things with commas, then
// what is said.
func alike(cols []page.Col, rows [][]string) page.Grid {
	g := page.Grid{Cols: cols, Plain: true}
	at := map[string]int{}
	for _, r := range rows {
		key := strings.Join(r[1:], "\n")
		if k, met := at[key]; met {
			g.Lines[k].Cells[0].Text += ", " + r[0]
			continue
		}
		at[key] = len(g.Lines)
		g.Lines = append(g.Lines, page.Cells(r...))
	}
	return g
}

// ends is the repair of the ends, alike ones together.
func (c Set) ends() page.Grid {
	t := c.repair()
	cols, rows := []page.Col{{Head: "ends", Bold: true}}, make([][]string, len(t.Rows))
	for k := 2; k < len(t.Head); k++ { // all but end and name
		cols = append(cols, page.Col{Head: t.Head[k], Align: t.Align[k]})
	}
	for k, r := range t.Rows {
		rows[k] = append([]string{r[0]}, r[2:]...)
	}
	g := alike(cols, rows)
	breaks(&g, 80, 0, 3)
	return g
}

// sleeves is what is over each branch, to cover it again.
func (c Set) sleeves() page.Grid {
	var rows [][]string
	for i := range c.S.Branches {
		b, id := &c.S.Branches[i], c.H.Branches[i].ID
		for _, x := range b.Covers {
			rows = append(rows, []string{id, string(x.What), list.Dash(x.Part)})
		}
		if b.Sheath.Part != "" {
			rows = append(rows, []string{id, string(model.CoverSheath), b.Sheath.Part})
		}
	}
	g := alike([]page.Col{{Head: "branches", Bold: true}, {Head: "cover"}, {Head: "part"}}, rows)
	breaks(&g, 40, 0)
	return g
}

// card is what goes with the harness for whoever mends it: it is cut out and folded.
func (c Set) card() []page.Block {
	head := page.Section(CardName)
	body := []page.Block{page.Text("Cut out along the dashes, fold to a card, and keep it with the harness.", page.Small)}
	if len(c.Spares.Rows) > 0 {
		g := page.TableOf(c.Spares)
		g.Plain = true
		body = append(body, g.Block())
	} else {
		body = append(body, page.Text("There is no spare wire in it.", page.Small))
	}
	if g := c.ends(); len(g.Lines) > 0 {
		body = append(body, kept(page.Text("Each new contact takes some of the loop at its end. Contacts left: how many times one there "+
			"can be made again.", page.Small)), g.Block())
	}
	if g := c.sleeves(); len(g.Lines) > 0 {
		body = append(body, g.Block())
	}
	whole := page.Stack(body...)
	if head.High+whole.High+2 > page.BodyHigh { // too much for one card: it is cut between its rows
		return append([]page.Block{head}, body[1:]...)
	}
	whole.HTML = `<div style="outline:.3mm dashed #000;outline-offset:.7mm">` + whole.HTML + `</div>`
	whole.Gap = 1.5
	return []page.Block{head, whole}
}
