package doubt

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/sidehead"
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

// Reading is a table and how it is read.
type Reading struct {
	Block    *shape.Block     // with what each column means
	Rows     []table.Row      // as the list has them
	Profiles []column.Profile // of the columns
	Words    map[string]name.Meaning
	Lang     string
}

// Of is what speaks against the columns of a reading.
func Of(d Reading) (all []Doubt) {
	for i, c := range d.Block.Cols {
		if i >= len(d.Profiles) || d.Profiles[i].Filled == 0 || c.Given || c.Alias {
			continue
		}
		if (c.Field == name.FieldKeep || c.Spared) && !(c.Spared && column.HeadsCores(c.Head)) && d.couldBeEnd(i) {
			all = append(all, Doubt{Rule: "a column that could say an end is not read", What: shape.At(d.Block.Cols, i),
				Did: "kept in the notes; say what it means if it is an end", Rows: d.rowsOf(i)})
		}
		if c.Field == name.FieldFuse && d.isBehindGap(i) {
			all = append(all, Doubt{Rule: "fuses behind an empty column", What: shape.At(d.Block.Cols, i),
				Did: "taken for those of their rows; look whether they are a table of their own", Rows: filled(d.Rows, i)})
		}
		if c.Spared && d.isEndWord(c.Head) {
			all = append(all, Doubt{Rule: "a second column of ends is not read", What: shape.At(d.Block.Cols, i),
				Did: "kept in the notes; it stands apart from the first", Rows: d.rowsOf(i)})
		}
		if c.Field == name.FieldSignal && d.namesColours(i) {
			all = append(all, Doubt{Rule: "names that hold a colour", What: shape.At(d.Block.Cols, i),
				Did: "read as names; no colour is taken from them", Rows: filled(d.Rows, i)})
		}
	}
	for _, f := range []name.Field{name.FieldPin, name.FieldFromPin, name.FieldToPin, name.FieldColour} {
		if second, rows := d.differing(f); second >= 0 {
			first := slices.IndexFunc(d.Block.Cols, func(c shape.Column) bool { return c.Field == f })
			all = append(all, Doubt{Rule: "two columns of one kind that differ", What: shape.At(d.Block.Cols, first) + " | " +
				shape.At(d.Block.Cols, second), Did: "the first counts, the other is kept in the notes", Rows: rows})
		}
	}
	return all
}

// couldBeEnd reports whether an unread column is headed as an end of a wire, or its cells are ends or the connectors of groups.
func (d Reading) couldBeEnd(i int) bool {
	c, p := &d.Block.Cols[i], &d.Profiles[i]
	w := name.Words(name.WithoutBrackets(table.Fold(c.Head)))
	if name.IsSpent(c.Head) || len(w) > 4 || p.Prose > 0 || sidehead.NumbersPart(c.Head, "", name.FieldConnector) {
		return false
	}
	if column.Addresses(d.Rows, i) && d.Block.Has(name.FieldPin) && d.Block.Has(name.FieldTo) {
		return false // how the controller calls the channel whose terminal stands beside it
	}
	last := ""
	if len(w) > 0 {
		last = w[len(w)-1]
	}
	if len(w) > 1 && len(last) == 1 && d.Words[w[len(w)-2]].Field == name.FieldConnector { // "Conn 3"
		last = w[len(w)-2]
	}
	headed := d.Words[last].Field == name.FieldPin && len(w) > 1 && p.Most(p.Cavities+p.Ends) ||
		d.Words[last].Field == name.FieldConnector && len(w) > 1 && last != "unit" && !name.IsRemark(w)
	switch {
	case headed:
		return true
	case d.namesSplices(i):
		return true
	case p.Filled > 1 && (p.Most(p.Ends) || column.AllParted(d.Rows, i)):
		return !d.saysCable(w)
	case i == 0 && d.Block.Cols[i].Head != "" && d.Block.IsPinTable() && !d.Block.Has(name.FieldConnector) &&
		column.StartsGroups(d.Rows, d.Profiles, i):
		return true
	case !d.Block.Has(name.FieldPin, name.FieldFrom, name.FieldFromPin, name.FieldRun, name.FieldDevicePin) && c.Field == name.FieldKeep:
		return column.CountsUp(d.Rows, i) && d.isFirst(i)
	}
	return false
}

// namesSplices reports whether every cell of an unread column is a splice, in a table that says one end of its wires.
//
//	Splice | Wire | Goes to
//	SP1    | 301  | left lamp
//	       | 302  | right lamp
func (d Reading) namesSplices(i int) bool {
	if d.Block.Has(name.FieldFrom, name.FieldFromPin, name.FieldRun) && d.Block.Has(name.FieldTo, name.FieldToPin, name.FieldRun) {
		return false
	}
	rows := filled(d.Rows, i)
	return len(rows) > 0 && !slices.ContainsFunc(rows, func(r table.Row) bool { return !name.IsSpliceName(r.Cells[i]) })
}

// isBehindGap reports whether an empty column without heading stands before a column, which is filled from the first row on and ends
// before the last: as a table of its own would.
func (d Reading) isBehindGap(i int) bool {
	if i == 0 || d.Block.Cols[i-1].Head != "" || d.Profiles[i-1].Filled > 0 {
		return false
	}
	rows, n := filled(d.Rows, i), d.Profiles[i].Filled
	return n > 1 && n < len(d.Rows) && len(rows) == n && rows[0].Line == d.Rows[0].Line && rows[n-1].Line == d.Rows[n-1].Line
}

// isEndWord reports whether a heading is of an end of wires.
func (d Reading) isEndWord(head string) bool {
	f := d.Words[table.Fold(head)].Field
	return f == name.FieldFrom || f == name.FieldTo
}

// saysCable reports whether a heading is of cables or cores, which are numbered as ends are, "W12/1".
func (d Reading) saysCable(words []string) bool {
	return slices.ContainsFunc(words, func(w string) bool {
		f := d.Words[w].Field
		return f == name.FieldCable || f == name.FieldWire
	})
}

// namesColours reports whether most names begin with a colour and a sign behind it, "red, to lamp", or end with one in brackets,
// and no column is of colours.
func (d Reading) namesColours(i int) bool {
	if d.Block.Has(name.FieldColour) {
		return false
	}
	n := 0
	for _, r := range d.Rows[:min(len(d.Rows), column.MostLooked)] {
		if i >= len(r.Cells) {
			continue
		}
		if open := strings.LastIndexByte(r.Cells[i], '('); open > 0 && strings.HasSuffix(r.Cells[i], ")") {
			if _, ok := value.ParseColour(r.Cells[i][open+1:len(r.Cells[i])-1], d.Lang); ok {
				n++
				continue
			}
		}
		at := strings.IndexAny(r.Cells[i], ",:;-–")
		if at < 1 {
			continue
		}
		if _, ok := value.ParseColour(strings.TrimSpace(r.Cells[i][:at]), d.Lang); ok && at > 2 {
			n++
		}
	}
	return n > 1 && 2*n > min(d.Profiles[i].Filled, column.MostLooked)
}

// isFirst reports whether no column before one holds anything.
func (d Reading) isFirst(i int) bool {
	return !slices.ContainsFunc(d.Profiles[:i], func(p column.Profile) bool { return p.Filled > 0 })
}

// rowsOf are the rows that a column is of: those with something in it, and all where it is written once for a group of rows.
func (d Reading) rowsOf(i int) []table.Row {
	rows := filled(d.Rows, i)
	for k := range d.Profiles {
		if k == i+1 && d.Profiles[k].Filled > d.Profiles[i].Filled && d.Words[table.Fold(d.Block.Cols[k].Head)].Field == name.FieldPin {
			return filled(d.Rows, k)
		}
	}
	return rows
}

// filled are those of some rows with something in a column.
func filled(all []table.Row, i int) []table.Row {
	is := func(r table.Row) bool { return i < len(r.Cells) && !value.IsNothing(r.Cells[i]) && !shape.IsText(r) }
	n := 0
	for _, r := range all {
		if is(r) {
			n++
		}
	}
	if n == 0 {
		return nil
	}
	rows := make([]table.Row, 0, n)
	for _, r := range all {
		if is(r) {
			rows = append(rows, r)
		}
	}
	return rows
}

// differing finds a second column of a field that says something else than the first, and the rows where it does; −1 where
// there is none.
func (d Reading) differing(f name.Field) (second int, rows []table.Row) {
	first := -1
	for i, c := range d.Block.Cols {
		if c.Field != f || i >= len(d.Profiles) || d.Profiles[i].Filled == 0 {
			continue
		}
		if first < 0 {
			first = i
			continue
		}
		for _, r := range filled(d.Rows, i) {
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

// LooksLikeWires reports whether a table that is read as something else holds a column of colours, of sizes with their unit, or
// of ends; and its rows.
func LooksLikeWires(rows []table.Row, profiles []column.Profile) []table.Row {
	for i := range profiles {
		p := &profiles[i]
		if p.Filled > 1 && (p.Coloured() && p.Distinct > 1 || p.All(p.Units) || p.Most(p.Ends) || column.AllParted(rows, i)) {
			return filled(rows, i)
		}
	}
	return nil
}
