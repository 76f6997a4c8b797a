package audit

import (
	"slices"
	"strings"

	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// twisted names the rows of a table of which no wire is made up with another, although a text above it speaks of twisted or
// shielded wires, or one below it. Where it has a word in capitals that only some rows have, "CAN", it speaks of these.
//
//	H and L of each line are one twisted pair.
//	Pin  | Signal  | To
//	J3-1 | Bus 1 H | B1-3
func (a *auditor) twisted(t *Table) {
	says := ""
	for _, r := range slices.Concat(t.Above, t.Rows) {
		if _, text := r.Filled(); shape.IsText(r) && len(strings.Fields(text)) > 3 && cable.Words(text).Twisted && !a.pairs(t, r) {
			says = text
		}
	}
	if says == "" {
		return
	}
	var rows []table.Row
	for _, r := range t.Rows {
		wires := a.row(t, r).wires
		for _, w := range wires {
			if _, ok := a.units[a.im.H.Wires[w].ID]; ok {
				return
			}
		}
		if wires != nil {
			rows = append(rows, r)
		}
	}
	if some := spokenOf(says, rows); len(some) > 0 {
		rows = some
	}
	a.doubt("a text speaks of twisted wires", t.At, table.Short(says), "no unit made by it; make the units that it means", rows)
}

// pairs reports whether a row is a text by which wires are paired already, of whichever table.
func (a *auditor) pairs(t *Table, r table.Row) bool {
	return slices.ContainsFunc(a.im.Rep.Findings, func(f report.Finding) bool {
		return f.Rule == report.TextPairs && f.Row == r.Line && f.File == t.At.File && f.Sheet == t.At.Sheet
	})
}

// spokenOf gives those of some rows that have a word of a text which it writes in capitals.
func spokenOf(says string, rows []table.Row) (some []table.Row) {
	capitals := map[string]bool{}
	for _, w := range name.Words(says) {
		if len(w) > 2 && w == strings.ToUpper(w) && strings.Trim(w, "0123456789") != "" {
			capitals[table.Fold(w)] = true
		}
	}
	for _, r := range rows {
		if len(capitals) > 0 && slices.ContainsFunc(r.Cells, func(c string) bool {
			return slices.ContainsFunc(name.Words(table.Fold(c)), func(w string) bool { return capitals[w] })
		}) {
			some = append(some, r)
		}
	}
	return some
}
