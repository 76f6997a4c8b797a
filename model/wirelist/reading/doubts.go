package reading

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Doubt is what speaks against a reading: something of the table that it leaves unread, or reads in one way where it could be
// another, so that its wires could be wrong.
type Doubt struct {
	Rule string // "a column that could say an end is not read"
	What string // the headings
	Did  string
	Rows []table.Row // the rows that could be wrong
}

// doubter looks at a block and at how it is read.
type doubter struct {
	*look
	b *shape.Block
}

// doubts are what speaks against the columns of a block.
func (d doubter) doubts() (all []Doubt) {
	for i, c := range d.b.Cols {
		if i >= len(d.prof) || d.prof[i].Filled == 0 || c.Given {
			continue
		}
		if (c.Field == name.FieldKeep || c.Spared) && d.couldBeEnd(i) {
			all = append(all, Doubt{Rule: "a column that could say an end is not read", What: shape.At(d.b.Cols, i),
				Did: "kept in the notes; say what it means if it is an end", Rows: d.rowsOf(i)})
		}
		if c.Field == name.FieldSignal && d.namesColours(i) {
			all = append(all, Doubt{Rule: "names that hold a colour", What: shape.At(d.b.Cols, i),
				Did: "read as names; no colour is taken from them", Rows: d.filledRows(i)})
		}
	}
	for _, f := range []name.Field{name.FieldPin, name.FieldFromPin, name.FieldToPin, name.FieldColour} {
		if second, rows := d.differing(f); second >= 0 {
			all = append(all, Doubt{Rule: "two columns of one kind that differ", What: shape.At(d.b.Cols, d.find(d.b.Cols, f)) + " | " +
				shape.At(d.b.Cols, second), Did: "the first counts, the other is kept in the notes", Rows: rows})
		}
	}
	return all
}

// couldBeEnd reports whether an unread column is headed as an end of a wire, or its cells are ends or the connectors of groups.
func (d doubter) couldBeEnd(i int) bool {
	c, p := &d.b.Cols[i], &d.prof[i]
	w := name.Words(name.WithoutBrackets(table.Fold(c.Head)))
	if name.IsSpent(c.Head) || len(w) > 4 || p.Prose > 0 {
		return false
	}
	last := ""
	if len(w) > 0 {
		last = w[len(w)-1]
	}
	headed := d.h.Words[last].Field == name.FieldPin && len(w) > 1 && p.Most(p.Cavities+p.Ends) ||
		d.h.Words[last].Field == name.FieldConnector && len(w) > 1 && last != "unit" && !name.IsRemark(w)
	switch {
	case headed:
		return true
	case p.Filled > 1 && (p.Most(p.Ends) || d.allParted(i)):
		return !d.saysCable(w)
	case i == 0 && d.b.Cols[i].Head != "" && d.b.IsPinTable() && !d.b.Has(name.FieldConnector) && d.startsGroups(i):
		return true
	case !d.b.Has(name.FieldPin, name.FieldFrom, name.FieldFromPin, name.FieldRun, name.FieldDevicePin) && c.Field == name.FieldKeep:
		return column.CountsUp(d.src.Rows, i) && d.isFirst(i)
	}
	return false
}

// saysCable reports whether a heading is of cables or cores, which are numbered as ends are, "W12/1".
func (d doubter) saysCable(words []string) bool {
	return slices.ContainsFunc(words, func(w string) bool {
		f := d.h.Words[w].Field
		return f == name.FieldCable || f == name.FieldWire
	})
}

// namesColours reports whether most names begin with a colour and a sign behind it, "red, to lamp", or end with one in brackets,
// and no column is of colours.
func (d doubter) namesColours(i int) bool {
	if d.b.Has(name.FieldColour) {
		return false
	}
	n := 0
	for _, r := range d.src.Rows[:min(len(d.src.Rows), column.MostLooked)] {
		if i >= len(r.Cells) {
			continue
		}
		if open := strings.LastIndexByte(r.Cells[i], '('); open > 0 && strings.HasSuffix(r.Cells[i], ")") {
			if _, ok := value.ParseColour(r.Cells[i][open+1:len(r.Cells[i])-1], d.lang); ok {
				n++
				continue
			}
		}
		at := strings.IndexAny(r.Cells[i], ",:;-–")
		if at < 1 {
			continue
		}
		if _, ok := value.ParseColour(strings.TrimSpace(r.Cells[i][:at]), d.lang); ok && at > 2 {
			n++
		}
	}
	return n > 1 && 2*n > min(d.prof[i].Filled, column.MostLooked)
}

// isFirst reports whether no column before one holds anything.
func (d doubter) isFirst(i int) bool {
	return !slices.ContainsFunc(d.prof[:i], func(p column.Profile) bool { return p.Filled > 0 })
}

// rowsOf are the rows that a column is of: those with something in it, and all where it is written once for a group of rows.
func (d doubter) rowsOf(i int) []table.Row {
	rows := d.filledRows(i)
	for k := range d.prof {
		if k == i+1 && d.prof[k].Filled > d.prof[i].Filled && d.h.Words[table.Fold(d.b.Cols[k].Head)].Field == name.FieldPin {
			return d.filledRows(k)
		}
	}
	return rows
}

// filledRows are the rows of the block with something in a column.
func (d doubter) filledRows(i int) (rows []table.Row) {
	for _, r := range d.src.Rows {
		if i < len(r.Cells) && !value.IsNothing(r.Cells[i]) && !shape.IsText(r) {
			rows = append(rows, r)
		}
	}
	return rows
}

// differing finds a second column of a field that says something else than the first, and the rows where it does; −1 where
// there is none.
func (d doubter) differing(f name.Field) (second int, rows []table.Row) {
	first, second := -1, -1
	for i, c := range d.b.Cols {
		if c.Field != f || i >= len(d.prof) || d.prof[i].Filled == 0 {
			continue
		}
		if first < 0 {
			first = i
			continue
		}
		for _, r := range d.filledRows(i) {
			if first < len(r.Cells) && !value.IsNothing(r.Cells[first]) && table.Fold(r.Cells[first]) != table.Fold(r.Cells[i]) {
				rows = append(rows, r)
			}
		}
		if len(rows) > 0 {
			return i, rows
		}
	}
	return -1, nil
}

// looksLikeWires reports whether a table that is read as something else holds a column of colours, of sizes with their unit, or
// of ends; and its rows.
func looksLikeWires(l *look) []table.Row {
	for i := range l.prof {
		p := &l.prof[i]
		if p.Filled > 1 && (p.Coloured() && p.Distinct > 1 || p.All(p.Units) || p.Most(p.Ends) || l.allParted(i)) {
			return doubter{look: l}.filledRows(i)
		}
	}
	return nil
}
