package paper

import (
	"fmt"

	"contralay/calc/phase/wires"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
	"contralay/ui/paper/set"
)

// cards is the lay cards of all branches.
func (m maker) cards() []page.Block {
	out := []page.Block{page.Section(set.CardsName)}
	for _, k := range wires.Walked(m.S) {
		c := m.card(k.Branch)
		head := page.SubHeading(c.Title + ", " + c.Length)
		head.Part = c.ID
		out = append(out, head)
		for _, says := range append(append(append([]string(nil), c.Says...), c.Ends...), c.Splices...) {
			out = append(out, page.Text(says, page.Small))
		}
		if len(c.Layers) == 0 {
			continue
		}
		out = append(out, page.Picture(c.Section, 70))
		for _, l := range c.Layers {
			g := page.Grid{Cols: []page.Col{{Head: "", Align: list.ToRight}, {Head: "piece", Bold: true}, {Head: "size"}, {Head: "colour"},
				{Head: "to"}}, Columns: 2}
			for _, x := range l.Members {
				id := x.ID
				if x.Tracer {
					id += " tracer"
				}
				g.Lines = append(g.Lines, page.Cells(fmt.Sprint(x.N), id, x.Size, x.Colour, x.Leads))
			}
			out = append(out, page.SubHeading(fmt.Sprintf("%s: %d, %s, turn %s, turns %s, over %s, fillers %s, spares %s, binder %s %s", l.Name, l.Count,
				l.Hand, l.Turn, l.Turns, l.Over, l.Fillers, l.Spares, l.Binder, l.First)), g.Block())
		}
		if len(c.Covers.Rows) > 0 {
			out = append(out, page.TableOf(c.Covers).Block())
		}
	}
	return out
}
