package set

import (
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// Spares is the card that goes with the harness: what is free in it and where, and how often the
// contacts of each end can be made again.
func Spares(spares, loops list.Table) []page.Block {
	out := []page.Block{page.Section(SparesName)}
	if len(spares.Rows) > 0 {
		out = append(out, page.TableOf(spares).Block())
	} else {
		out = append(out, page.Text("No spare wires.", page.Small))
	}
	if len(loops.Rows) > 0 {
		g := page.TableOf(loops)
		g.Columns = 2
		note := page.Text(loops.Note, page.Small)
		note.KeepNext = true
		out = append(out, page.SubHeading("Service loops"), note, g.Block())
	}
	return out
}
