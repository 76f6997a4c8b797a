package huelines

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// The wires of a device stand in one cell of its row.
//
//	Device    | Wires
//	Throttle  | red +, black −, white signal
//	Headlight | Blue: high beam; Black: ground

// Cells makes a row of each wire in such cells. The table has two columns, and every cell of its second is such a list.
func Cells(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows
	}
	for i := range min(len(t.Rows), mostText) {
		if r := t.Rows[i]; len(r.Cells) != 2 || r.Level > 0 || plugHead(r.Cells[0], r.Cells[1]) {
			continue
		}
		if all := cellsBelow(t.Rows, i); areWires(all) {
			return spreadCells(t, i, all)
		}
	}
	return t.Rows
}

// mostText is how many rows stand above the headings of a table (no source).
const mostText = 60

// plugHead reports whether two cells have the wires of a device themselves: they are no headings.
func plugHead(device, wires string) bool {
	return device == "" || wires == "" || isWire(wires) || strings.ContainsAny(device+wires, ",;:=")
}

// isWire reports whether a text is the colour of a wire with what it does.
func isWire(text string) bool {
	_, ok := wireOf(text)
	return ok
}

// cellsBelow are the devices of the rows below two headings; none where a row is another.
func cellsBelow(rows []table.Row, i int) (all []group) {
	several := false
	lists := func(r table.Row) bool { return len(r.Cells) == 2 && strings.ContainsAny(r.Cells[1], ",;") }
	if !slices.ContainsFunc(rows[min(i+1, len(rows)):min(i+4, len(rows))], lists) {
		return nil
	}
	for k := i + 1; k < len(rows); k++ {
		r := rows[k]
		if len(r.Cells) != 2 || r.Level > 0 || r.Prose {
			if len(r.Cells) == 2 && !r.Prose {
				return nil
			}
			break
		}
		g := group{device: r.Cells[0], first: k, n: 1}
		g.wires = wiresIn(r.Cells[1])
		if len(g.wires) == 0 || g.device == "" || !point.IsShortName(g.device) || name.IsGeneric(g.device) || name.IsCavity(g.device) {
			return nil
		}
		several = several || len(g.wires) > 1
		all = append(all, g)
	}
	if !several {
		return nil
	}
	return all
}

// wiresIn are the wires that a cell lists; none where a piece of it is no wire.
func wiresIn(cell string) (all []wire) {
	sign := ","
	if strings.Contains(cell, ";") {
		sign = ";"
	}
	for piece := range strings.SplitSeq(cell, sign) {
		w, ok := wireOf(piece)
		if colour, size := point.WireValues(strings.TrimSpace(piece)); !ok && colour != "" {
			w, ok = wire{colour: colour, size: size}, true // and nobody says what it does
		}
		if !ok || strings.ContainsAny(w.signal+w.to, ",;") {
			return nil
		}
		all = append(all, w)
	}
	return all
}

// spreadCells puts the wires in the place of the rows of their devices.
func spreadCells(t *table.Table, head int, all []group) []table.Row {
	rows := slices.Clone(t.Rows[:head+1])
	rows[head].Cells = slices.Clone(heads)
	for _, g := range all {
		for _, w := range g.wires {
			rows = w.addTo(rows, t.Rows[g.first], g)
		}
	}
	return append(rows, t.Rows[all[len(all)-1].first+1:]...)
}
