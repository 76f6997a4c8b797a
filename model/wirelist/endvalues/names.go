package endvalues

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Names gives what stands in brackets behind the cavities of far ends a column of names, where no column has the names of the wires: each
// wire of a device says another one, and one of them is a supply or a ground.
//
//	red   -> Controller pin 4 (5V)
//	black -> Controller pin 5 (GND)
//	green -> Controller pin 6 (signal)
func Names(b *shape.Block) {
	at, to := columnOf(b, name.FieldTo), columnOf(b, name.FieldSignal)
	if at < 0 || b.Has(name.FieldToPin) {
		return
	}
	if to < 0 {
		to = len(b.Cols)
	}
	of := map[string]*named{}
	for _, r := range b.Rows {
		if len(r.Cells) > len(b.Cols) {
			return
		}
		if at >= len(r.Cells) || value.IsNothing(r.Cells[at]) || shape.IsText(r) {
			continue
		}
		from := b.Cell(r.Cells, name.FieldFrom)
		if of[from] == nil {
			of[from] = &named{seen: map[string]bool{}}
		}
		of[from].add(r.Cells[at])
		of[from].others = of[from].others || to < len(r.Cells) && r.Cells[to] != ""
	}
	var rows []table.Row
	for k, r := range b.Rows {
		if n := of[b.Cell(r.Cells, name.FieldFrom)]; n == nil || !n.holds() || at >= len(r.Cells) || value.IsNothing(r.Cells[at]) {
			continue
		}
		if rows == nil {
			rows = slices.Clone(b.Rows)
		}
		cells := make([]string, max(len(b.Cols), to+1))
		copy(cells, r.Cells)
		cells[at], cells[to] = name.RemarkBehind(r.Cells[at])
		rows[k].Cells = cells
	}
	if rows == nil {
		return
	}
	b.Rows = rows
	if to == len(b.Cols) {
		b.Cols = append(slices.Clone(b.Cols), shape.Column{Field: name.FieldSignal, Head: b.Cols[at].Head})
	}
}

// named is what stands in brackets behind the far ends of one device.
type named struct {
	seen   map[string]bool
	supply bool
	others bool // a text is no name, or comes again, or a wire has its name elsewhere
}

// add takes in a far end.
func (n *named) add(cell string) {
	const longest = 20 // bytes of a name (no source)
	end, called := name.RemarkBehind(cell)
	if _, pin, ok := name.SplitEnd(end); !ok || !name.IsCavity(pin) || !isName(called) || len(called) > longest || n.seen[called] {
		n.others = true
	}
	n.seen[called] = true
	n.supply = n.supply || pads.IsSupply(called)
}

// holds reports whether they are the names of the wires.
func (n *named) holds() bool {
	const least = 2 // wires (no source)
	return !n.others && n.supply && len(n.seen) >= least
}

// isName reports whether a text in brackets can be what a wire carries: a word or two, no size, no colour and no state.
func isName(text string) bool {
	if text == "" || strings.Count(text, " ") > 1 || strings.ContainsAny(text, ",;:?") || value.NamesColour(text) ||
		name.StateOf(text) != name.Used || strings.Trim(text, "0123456789") == "" {
		return false
	}
	return !slices.ContainsFunc(strings.Fields(table.Fold(text)), func(w string) bool {
		return slices.Contains([]string{"was", "old", "ex", "former", "formerly", "alt", "fruher", "ancien"}, w)
	})
}
