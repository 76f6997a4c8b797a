package audit

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/placehead"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// mostLooked is how many rows show what a column that is not read holds (no source).
const mostLooked = 100

// unread names the rows of columns that are kept as text although their cells are colours or sizes of wires: a second wire
// may stand in the row.
func (a *auditor) unread(t *Table) {
	cols := map[int]bool{}
	var rows []table.Row
	ofCores := !slices.ContainsFunc(t.Cols, func(c shape.Column) bool { return c.Field == name.FieldColour }) // which give their colours
	for i, c := range t.Cols {
		if c.Field != name.FieldKeep || c.Given || t.Points || ofCores && column.HeadsCores(c.Head) ||
			sidehead.IsFitting(table.Fold(c.Head)) {
			continue
		}
		filled, is := 0, 0
		for _, r := range t.Rows[:min(len(t.Rows), mostLooked)] {
			if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || a.row(t, r).wires == nil {
				continue
			}
			filled++
			_, both := value.SizeAndColour(r.Cells[i], value.BareAWG, t.Lang, t.Mark)
			if both || a.kindOf(r.Cells[i], t) == colour {
				is++
			}
		}
		if filled > 1 && 10*is >= 7*filled {
			cols[i] = true
		}
	}
	for _, r := range t.Rows {
		for i := range cols {
			if i < len(r.Cells) && r.Cells[i] != "" && a.row(t, r).wires != nil {
				rows = append(rows, r)
				break
			}
		}
	}
	a.doubt("columns of colours or sizes that are not read", t.At, heads(t, cols),
		"kept in the notes; a second wire may stand in the row", rows)
}

// columns names the columns whose meaning their cells alone say, and their rows: nobody knows the heading, or there is none.
func (a *auditor) columns(t *Table) {
	cols := map[int]bool{}
	headed := false
	devices := map[int]bool{}
	for i, c := range t.Cols {
		if c.Of != "" && c.Of == c.Head && !c.Given && !a.namesDevice(c.Head) && !(c.Vague && a.saysGuess(t)) {
			devices[i] = true
		}
		headed = headed || c.Head != ""
		switch c.Field {
		case name.FieldColour, name.FieldGauge, name.FieldSpec, name.FieldLength, name.FieldCurrent, name.FieldFuse, name.FieldNote:
			continue // a value is what it looks like
		}
		if c.Field == name.FieldConnector && a.namesDevice(c.Head) ||
			c.Field == name.FieldWire && len(c.Head) < 4 && column.CountsUp(t.Rows, i) { // "N.": it counts the rows
			continue
		}
		if c.Head != "" && !c.Known() && !c.Given && c.Field != name.FieldKeep && c.Field != name.FieldIgnore && !c.Spared && c.Of == "" &&
			!pairs(t.Cols, i) {
			cols[i] = true
		}
	}
	if headed && len(cols)+len(devices) == 0 || t.Points || slices.ContainsFunc(t.Rows, func(r table.Row) bool { return r.Point }) {
		return
	}
	var rows []table.Row
	for _, r := range t.Rows {
		if a.row(t, r).wires != nil {
			rows = append(rows, r)
		}
	}
	switch {
	case !headed:
		a.doubt("a table without headings", t.At, "", "its columns are taken by their cells; say what they mean if they are something else",
			rows)
	case len(devices) > 0:
		a.doubt("headings taken for the names of devices", t.At, heads(t, devices), "look whether they are, and their cells cavities", rows)
	case len(cols) > 0 && !a.namesHeads(t, cols):
		a.doubt("headings that are not known", t.At, heads(t, cols), "taken by their cells; say what they mean if they are something else",
			rows)
	}
}

// pairs reports whether a heading and one beside it say a device and its cavity in so many words.
func pairs(cols []shape.Column, i int) bool {
	return i > 0 && words.SayDeviceAndPin(cols[i-1].Head, cols[i].Head) ||
		i+1 < len(cols) && words.SayDeviceAndPin(cols[i].Head, cols[i+1].Head)
}

// namesHeads reports whether the report says of some columns already that their headings are not known.
func (a *auditor) namesHeads(t *Table, cols map[int]bool) bool {
	for _, f := range a.im.Rep.Findings {
		if f.Rule == "headings that are not known" && f.Sheet == t.At.Sheet && f.File == t.At.File {
			for i := range cols {
				if !t.Cols[i].Guessed {
					return false
				}
			}
			return true
		}
	}
	return false
}

// saysGuess reports whether the report says of the connector of a table already that its name is a guess.
func (a *auditor) saysGuess(t *Table) bool {
	return slices.ContainsFunc(a.im.Rep.Findings, func(f report.Finding) bool {
		return f.Rule == "the name of the connector is a guess" && f.Sheet == t.At.Sheet && f.File == t.At.File
	})
}

// namesDevice reports whether a heading has a word for a device or a connector, or is a designator.
func (a *auditor) namesDevice(head string) bool {
	return name.IsDesignator(head) || placehead.Of(head) != "" || slices.ContainsFunc(pieces(table.Fold(head)), func(w string) bool {
		f := a.words[w].Field
		return f == name.FieldConnector || f == name.FieldPin || f == name.FieldFuse || name.IsDeviceWord(w) || name.IsUnit(w) ||
			words.HeadsThings([]string{w})
	})
}
