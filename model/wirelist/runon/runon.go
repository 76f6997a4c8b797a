package runon

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Join adds the rows that only go on with the texts of the row above to it: they have no cavity, and nothing but more of what
// the row above says in the same columns.
//
//	Pin | Name      | Type | Description
//	3   | DRUM_CLK  | out  | clock of the drum
//	    |           |      | (max. 300 mA)
//
// A name goes on only where it is plainly broken off; else the rest is kept in the note, and told.
func Join(im *draft.Importer, b *shape.Block, here func(int) table.Place) {
	pin := slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.Field == name.FieldPin })
	if pin < 0 {
		return
	}
	signal := slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.Field == name.FieldSignal })
	widest := widestName(b, signal)
	out := make([]table.Row, 0, len(b.Rows))
	for _, r := range b.Rows {
		last := len(out) - 1
		if last < 0 || !runsOn(b, out[last], r, pin) {
			out = append(out, r)
			continue
		}
		to := &out[last]
		to.Cells = slices.Clone(to.Cells)
		for i, more := range r.Cells {
			switch {
			case more == "":
			case i != signal:
				to.Cells[i] += " " + more
			case goesOnWith(to.Cells[i]):
				to.Cells[i] += " " + more
			case widest > 0 && len(to.Cells[i])+1 >= widest && !strings.Contains(more, " "):
				to.Cells[i] += more
				im.Doubt("a name that goes on in the next row", here(r.Line), to.Cells[i], "put together", []table.Row{*to})
			default:
				to.Cells = append(to.Cells, make([]string, max(0, len(b.Cols)-len(to.Cells)))...)
				to.Cells[noteOf(b, to.Cells)] += " " + more
				im.Doubt("a name that may go on in the next row", here(r.Line), more, "kept in the note", []table.Row{*to})
			}
		}
		im.Say(report.Note, "goes on with the row above", here(r.Line), shape.RowText(r.Cells), "added to it")
	}
	b.Rows = out
}

// runsOn reports whether a row only goes on with the texts of the row above it.
func runsOn(b *shape.Block, above, r table.Row, pin int) bool {
	n, first := r.Filled()
	full, _ := above.Filled()
	if n == 0 || n >= full-1 || len(r.Cells) > len(above.Cells) || pin >= len(above.Cells) || value.IsNothing(above.Cells[pin]) ||
		r.Level > 0 || r.Prose || r.Cells[0] != "" && n == 1 || name.SaysConnector(first) || signoff.Is(r) || signoff.IsTotal(first) {
		return false
	}
	for i, c := range r.Cells {
		if c == "" {
			continue
		}
		if i == pin || i >= len(b.Cols) || value.IsNothing(above.Cells[i]) || value.IsNothing(c) || value.IsDitto(c) {
			return false
		}
		switch b.Cols[i].Field {
		case name.FieldSignal, name.FieldNote, name.FieldKeep:
		default:
			return false
		}
		if !b.Table.Marked && !goesOnWith(above.Cells[i]) && !startsWithin(c) {
			return false
		}
	}
	return true
}

// startsWithin reports whether a text begins as the rest of a sentence does: with a small letter or a bracket.
func startsWithin(text string) bool {
	r := []rune(text)[0]
	return r == '(' || unicode.IsLower(r)
}

// goesOnWith reports whether a text ends with a word or a sign that something must follow.
func goesOnWith(text string) bool {
	all := strings.Fields(table.Fold(text))
	if len(all) == 0 {
		return false
	}
	switch last := all[len(all)-1]; last {
	case "or", "and", "oder", "und", "ou", "et", "o", "y", "e", "of", "the", "for", "to", "from", "with", "&", "/", "+":
		return len(all) > 1
	default:
		return strings.HasSuffix(last, ",") || strings.HasSuffix(last, "/") && len(last) > 1
	}
}

// widestName is the length of the longest name of a net, where each is one word and several are about as long, so that the column
// could not hold more; else 0.
func widestName(b *shape.Block, signal int) int {
	if signal < 0 {
		return 0
	}
	widest, near := 0, 0
	each := func(see func(string)) {
		for _, r := range b.Rows {
			if signal < len(r.Cells) && !shape.IsText(r) {
				see(r.Cells[signal])
			}
		}
	}
	each(func(s string) {
		if !strings.Contains(s, " ") {
			widest = max(widest, len(s))
		}
	})
	each(func(s string) {
		if !strings.Contains(s, " ") && len(s)+1 >= widest {
			near++
		}
	})
	if near < 2 || widest < 8 {
		return 0
	}
	return widest
}

// noteOf is the column of the notes, of which a cell is filled rather than an empty one; the last column where there is none.
func noteOf(b *shape.Block, cells []string) int {
	at := len(b.Cols) - 1
	for i, c := range b.Cols {
		if c.Field == name.FieldNote || c.Field == name.FieldKeep && !c.Alias {
			if at = i; cells[i] != "" {
				return i
			}
		}
	}
	return at
}
