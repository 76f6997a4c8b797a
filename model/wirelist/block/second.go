package block

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// goesOnHead reports whether a row right below the headings is the second line of them: all of its cells stand in brackets.
//
//	Signal | ECU      | Dash
//	       | (24 way) | (8 way)
func (f *finder) goesOnHead(r table.Row) bool {
	c := f.current
	if c == nil || len(c.Rows) > 0 || len(c.Head) != 1 || len(r.Cells) > len(c.Head[0].Cells) {
		return false
	}
	n, _ := r.Filled()
	return n > 1 && !slices.ContainsFunc(r.Cells, func(cell string) bool {
		return cell != "" && !(strings.HasPrefix(cell, "(") && strings.HasSuffix(cell, ")"))
	})
}

// below puts the second line of headings behind the first, cell by cell.
func below(head, second table.Row) table.Row {
	head.Cells = slices.Clone(head.Cells)
	for i, c := range second.Cells {
		head.Cells[i] = value.JoinNonEmpty(" ", head.Cells[i], c)
	}
	return head
}

// saysConnector reports whether a row is two cells, the word for a connector and another.
func saysConnector(r table.Row) bool {
	n, first := r.Filled()
	return n == 2 && name.ConnectorName(first+" x1") == "x1"
}

// isLabelled reports whether a row is the word for a connector and its name, and no headings.
func (f *finder) isLabelled(r table.Row) bool {
	if !saysConnector(r) {
		return false
	}
	last := slices.DeleteFunc(slices.Clone(r.Cells), func(c string) bool { return c == "" })[1]
	return !f.h.HeadWords(table.Row{Cells: []string{last}})
}

// amongLabels reports whether a row is one of a few of two cells, right below one another, of which one is labelled so.
func (f *finder) amongLabels(i int) bool {
	const most = 8 // lines of labels (no source)
	rows := f.t.Rows
	two := func(k int) bool { n, _ := rows[k].Filled(); return n == 2 }
	for k := i; k >= max(0, i-most) && two(k) && (k == i || rows[k].Line+1 == rows[k+1].Line); k-- {
		if f.isLabelled(rows[k]) {
			return true
		}
	}
	for k := i; k < min(len(rows), i+most) && two(k) && (k == i || rows[k].Line == rows[k-1].Line+1); k++ {
		if f.isLabelled(rows[k]) {
			return true
		}
	}
	return false
}

// labelled makes one text of each title of two cells, a label and what it says, where one of the labels is the word for a connector.
//
//	Connector | P3
//	Location  | behind the seat
//
//	Pin | Circuit
func labelled(titles []table.Row) []table.Row {
	if !slices.ContainsFunc(titles, saysConnector) {
		return titles
	}
	out := slices.Clone(titles)
	for i, r := range out {
		if n, first := r.Filled(); n == 2 && !strings.HasSuffix(first, ":") {
			cells := slices.DeleteFunc(slices.Clone(r.Cells), func(c string) bool { return c == "" })
			out[i].Cells = []string{cells[0] + ": " + cells[1]}
		}
	}
	return out
}
