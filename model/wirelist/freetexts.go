package wirelist

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/freesaid"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// takeFree takes in what the sentences right behind a table of the cavities of one connector say is free there; its wires are those read
// last, from the item on.
func takeFree(im *draft.Importer, t *table.Table, b *shape.Block, from int) {
	if !b.IsPinTable() || from >= len(im.Items) || len(b.Rows) == 0 {
		return
	}
	term := im.Items[from].From.Term
	if at := (table.Place{File: t.File, Sheet: t.Sheet, Row: b.Rows[len(b.Rows)-1].Line + 1}); im.NamedFarAbove(at) != nil {
		return // takeFreeOfRuns asks the other ends
	}
	if term == nil || !term.Titled || slices.ContainsFunc(im.Items[from:], func(it *draft.Item) bool { return it.From.Term != term }) {
		return
	}
	last := b.Rows[len(b.Rows)-1].Line
	first := slices.IndexFunc(t.Rows, func(r table.Row) bool { return r.Line >= b.Rows[0].Line })
	for _, r := range t.Rows[max(0, first):] {
		_, text := r.Filled()
		var all []string
		for sentence := range strings.SplitSeq(text, ". ") {
			all = append(all, freesaid.Cavities(sentence)...)
		}
		switch {
		case r.Line > last && (!shape.IsText(r) || r.Level > 0 || !strings.HasSuffix(strings.TrimSpace(text), ".") && all == nil):
			return // what stands further down is of something else
		case !shape.IsText(r) || len(all) == 0:
			continue
		}
		at := table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}
		for _, pin := range all {
			term.Pin(pin, name.Blank, at)
		}
		im.Say(report.Note, "cavities that a text says are free", at, text, "taken for "+term.ID+": "+strings.Join(all, ", "))
	}
}

// takeFreeOfRuns takes in what sentences say is free in the one connector that all wires of the list of both ends above them start at. A
// cavity that some row names is left as that row has it.
//
//	GB1 pin 1 -> pot pin A, red
//	GB1 pin 2 -> pot pin B, white
//	Pin 8 is empty.
func takeFreeOfRuns(im *draft.Importer, tables []table.Table) {
	read := itemRows(im)
	for _, t := range tables {
		wires := read[[2]string{t.File, t.Sheet}]
		below := false // wires stand above, and no heading between
		for _, r := range t.Rows {
			at := table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}
			_, text := r.Filled()
			if wires[r.Line] || !shape.IsText(r) || r.Level > 0 || strings.HasSuffix(text, ":") {
				below = wires[r.Line]
			} else if below {
				takeFreeText(im, at, text)
			}
		}
	}
}

// takeFreeText takes in what one text says is free.
func takeFreeText(im *draft.Importer, at table.Place, text string) {
	var all []string
	for sentence := range strings.SplitSeq(text, ". ") {
		all = append(all, freesaid.Cavities(sentence)...)
	}
	if len(all) == 0 {
		return
	}
	term := im.ConnectorAbove(at)
	if far := im.NamedFarAbove(at); far != nil {
		term = far
	}
	if term == nil || slices.ContainsFunc(all, func(pin string) bool { _, named := term.At[pin]; return named }) {
		return
	}
	for _, pin := range all {
		term.Pin(pin, name.Blank, at)
	}
	im.Say(report.Note, "cavities that a text says are free", at, text, "taken for "+term.ID+": "+strings.Join(all, ", "))
}

// itemRows are the rows that items were made of, by file and sheet.
func itemRows(im *draft.Importer) map[[2]string]map[int]bool {
	all := map[[2]string]map[int]bool{}
	var last [2]string
	var rows map[int]bool // of the last one
	for _, it := range im.Items {
		if of := [2]string{it.Place.File, it.Place.Sheet}; rows == nil || of != last {
			if last, rows = of, all[of]; rows == nil {
				rows = make(map[int]bool, len(im.Items)/(1+len(all)))
				all[of] = rows
			}
		}
		rows[it.Place.Row] = true
	}
	return all
}
