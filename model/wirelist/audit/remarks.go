package audit

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/strands"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// remarks names the rows with a remark that is a size, a colour or an end which the wire of its row does not have: it stays in the note,
// and the wire could be made by it.
//
//	From | To   | Colour | AWG | Remark
//	J1:1 | P1:1 | red    | 20  | 22 AWG
//	J1:2 |      | blue   | 20  | to pump 2
func (a *auditor) remarks(t *Table) {
	var sizes, colours, ends, choices []table.Row
	for i, c := range t.Cols {
		if c.Field == name.FieldColour || c.Field == name.FieldGauge {
			choices = append(choices, a.choices(t, i)...)
		}
		if c.Field != name.FieldNote && c.Field != name.FieldKeep || c.Given {
			continue
		}
		for _, r := range t.Rows {
			wires := a.row(t, r).wires
			if i >= len(r.Cells) || len(wires) != 1 || a.isNothing(r.Cells[i]) {
				continue
			}
			cell, w := r.Cells[i], &a.im.H.Wires[wires[0]]
			switch {
			case isSizeAlone(cell, t.Mark) && !a.sizesOf(cell, t.Mark).is(w.Size):
				sizes = left(sizes, r, w.Note.V, cell)
			case c.Field == name.FieldNote && a.kindOf(cell, t) == colour && !a.textOf(wires[0]).isColour(cell, t.Lang) && len(cell) > 2:
				colours = left(colours, r, w.Note.V, cell)
			case leadsOn(cell) && (w.To.V == "" || strings.ContainsAny(cell, "0123456789") && !a.sharesEnd(cell, wires)):
				ends = left(ends, r, w.Note.V, cell)
			}
		}
	}
	a.doubt("a choice of two", t.At, "", "kept in the note; say which of them the wire has", choices)
	a.doubt("a remark that is a size", t.At, "", "kept in the note; look whether the wire has it", sizes)
	a.doubt("a remark that is a colour", t.At, "", "kept in the note; look whether the wire has it", colours)
	a.doubt("a remark that reads as an end", t.At, "", "kept in the note; look whether the wire goes there", ends)
}

// left adds a row to some where a cell of it stands in the note of its wire; else it was taken.
func left(rows []table.Row, r table.Row, note, cell string) []table.Row {
	if !strings.Contains(table.Fold(note), table.Fold(cell)) {
		return rows
	}
	return append(rows, r)
}

// leadsOn reports whether a text is a word that leads to where a wire goes and a few words behind it, "to pump 2".
func leadsOn(cell string) bool {
	const most = 5 // words (no source)
	if !strings.Contains(cell, " ") {
		return false
	}
	all := strings.Fields(table.Fold(cell))
	return len(all) > 1 && len(all) <= most && all[0] != "a" && all[0] != "al" && all[0] != "an" && words.GoesTo(all[0]) &&
		!slices.ContainsFunc(all, func(w string) bool { return value.IsNothing(w) }) && !isVerb(all[1])
}

// isVerb reports whether a folded word behind "to" says what is to be done: "to be checked".
func isVerb(w string) bool {
	switch w {
	case "be", "do", "check", "come", "follow", "fit", "order", "verify", "confirm", "replace", "test", "make", "cut", "add", "find", "see",
		"avoid", "keep", "protect", "allow", "prevent", "match", "suit", "measure", "spec", "length", "taste":
		return true
	}
	return false
}

// sharesEnd reports whether a text has a word of the name of a connector that some wires are at.
func (a *auditor) sharesEnd(cell string, wires []int) bool {
	all := name.Words(table.Fold(cell))
	for _, w := range wires {
		for _, end := range []string{a.im.H.Wires[w].From.V, a.im.H.Wires[w].To.V} {
			id, _, _ := strings.Cut(end, ":")
			if t := a.term(id); t != nil && slices.ContainsFunc(name.Words(table.Fold(called(t))), func(word string) bool {
				return slices.Contains(all, word)
			}) {
				return true
			}
		}
	}
	return false
}

// choices are the rows that leave open which of two colours or sizes a wire has, "white or grey", "2.5 / 4.0", so that it has none.
func (a *auditor) choices(t *Table, col int) (rows []table.Row) {
	for _, r := range t.Rows {
		wires := a.row(t, r).wires
		if col >= len(r.Cells) || len(wires) != 1 {
			continue
		}
		w := &a.im.H.Wires[wires[0]]
		first, second, two := strings.Cut(r.Cells[col], "/")
		switch {
		case value.IsChoice(r.Cells[col]):
			rows = append(rows, r)
		case t.Cols[col].Field == name.FieldGauge && two && w.Size == "" && !strands.Inches(r.Cells[col]):
			x, ok := value.ParseGauge(strings.TrimSpace(first), value.BareMM2, t.Mark)
			y, is := value.ParseGauge(strings.TrimSpace(second), value.BareMM2, t.Mark)
			if ok && is && x.Size != "" && y.Size != "" {
				rows = append(rows, r)
			}
		}
	}
	return rows
}
