package set

import (
	"fmt"

	"contralay/calc/phase/over"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// Spares is the card that goes with the harness: what is free in it and where, and how often the
// contacts of each end can be made again. used is how often they were, by end.
func Spares(m list.Maker, spares list.Table, used map[string]int) []page.Block {
	out := []page.Block{page.Section(SparesName)}
	if len(spares.Rows) > 0 {
		out = append(out, page.TableOf(spares).Block())
	} else {
		out = append(out, page.Text("No spare wires.", page.Small))
	}
	type alike struct {
		loop       string
		good, used int
	}
	var order []alike
	ends := map[alike][]string{}
	for k := range m.H.Terminations {
		id, l := m.H.Terminations[k].ID, over.LoopRoomOf(m.S, k)
		a := alike{m.Sys.Length(l.LoopMM), l.Again, used[id]}
		if ends[a] == nil {
			order = append(order, a)
		}
		ends[a] = append(ends[a], id)
	}
	if len(order) == 0 {
		return out
	}
	out = append(out, page.Text("Service loops: each contact that is made again takes some; count it in the box of its end.", page.Strong))
	for _, a := range order {
		says := fmt.Sprintf("Loop %s %s, good for %d, used so far %d, left %d: ", a.loop, m.Sys.Name(), a.good, a.used, max(0,
			a.good-a.used))
		for _, id := range ends[a] {
			says += id + "\u00a0[\u00a0\u00a0] "
		}
		out = append(out, page.Text(says, page.Small))
	}
	return out
}
