package audit

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
)

// ends looks at the ends of the wires of a table: those read out of a longer text, and those that stand in a column of no
// ends.
func (a *auditor) ends(t *Table) {
	if t.Grid {
		return // a line has the ends of several rows
	}
	var read, signal, joined []table.Row
	cols := map[int]bool{}
	for _, r := range t.Rows {
		if a.tellsNone(t, r) {
			continue
		}
		for _, it := range a.row(t, r).items {
			if it.Place.Row != r.Line {
				continue
			}
			for _, e := range []draft.End{it.From, it.To} {
				if e.Term == nil || e.Pin == "" {
					continue
				}
				if !e.Term.Titled && couldBeSeveral(called(e.Term)) {
					joined = append(joined, r)
				}
				switch col := a.columnOf(t, r, e); {
				case col < 0:
				case a.longer(r.Cells[col], a.row(t, r).wires):
					read = append(read, r)
				case !t.Points && !t.Cols[col].Given && isOfNoEnds(t.Cols[col].Field) && !a.named(t, r, e):
					signal, cols[col] = append(signal, r), true
				}
			}
		}
	}
	a.doubt("an end that could be several", t.At, "", "taken as one; say them with a comma and a cavity each if they are more", joined)
	a.doubt("an end read out of a text", t.At, "", "look whether it is that one", read)
	a.doubt("an end out of a column that is of no ends", t.At, heads(t, cols), "say what the column means if it is none", signal)
}

// couldBeSeveral reports whether the name of an end has a sign between two pieces with a number each, "Lamp L 1 / Lamp R 1",
// or with one word at their heads, or a word for two.
func couldBeSeveral(called string) bool {
	if !strings.ContainsAny(called, " /+&,;") {
		return false // most names
	}
	for _, sign := range []string{" / ", ", ", "; ", " & ", " + ", " and "} {
		front, back, ok := strings.Cut(called, sign)
		one, _, _ := strings.Cut(front, " ")
		other, _, _ := strings.Cut(back, " ")
		if ok && (strings.ContainsAny(front, "0123456789") && strings.ContainsAny(back, "0123456789") ||
			strings.EqualFold(one, other) && one != front) {
			return true
		}
	}
	if strings.Count(called, ", ") > 1 || strings.Contains(called, " ") && slices.ContainsFunc(name.Words(table.Fold(called)), saysBoth) {
		return true
	}
	all := strings.FieldsFunc(called, func(r rune) bool { return strings.ContainsRune("/+&,;", r) })
	return len(all) > 1 && !strings.Contains(called, " ") && !slices.ContainsFunc(all, func(p string) bool {
		return !name.IsDesignator(p) || !strings.ContainsAny(p, "0123456789") || strings.Trim(p, "0123456789") == ""
	})
}

// saysBoth reports whether a folded word says that there are two of what it stands beside.
func saysBoth(w string) bool {
	switch w {
	case "both", "beide", "beiden", "ambos", "ambas", "entrambi", "entrambe", "begge", "bada", "oba", "deux":
		return true
	}
	return false
}

// isOfNoEnds reports whether a field says no end.
func isOfNoEnds(f name.Field) bool {
	return f == name.FieldSignal || f == name.FieldNote || f == name.FieldKeep
}

// named reports whether the connector of an end stands where connectors do: in a column of ends, in a heading, or above the row.
func (a *auditor) named(t *Table, r table.Row, e draft.End) bool {
	if e.Term.Titled || e.Term.Unsaid {
		return true
	}
	of := a.wordsOf(e.Term)
	says := func(c string) bool {
		return slices.ContainsFunc(a.look(c).pieces, func(p string) bool { return len(p) > 1 && slices.Contains(of, p) })
	}
	for i, c := range r.Cells {
		if i < len(t.Cols) && !isOfNoEnds(t.Cols[i].Field) && (says(c) || c == "" && says(lastAbove(t, r, i))) {
			return true
		}
	}
	return slices.ContainsFunc(t.Above, func(h table.Row) bool { return slices.ContainsFunc(h.Cells, says) })
}

// lastAbove is the cell of a column that stands nearest above a row; "" where none does. A connector that is written once holds on.
func lastAbove(t *Table, r table.Row, col int) string {
	if f := t.Cols[col].Field; f != name.FieldConnector && f != name.FieldFrom && f != name.FieldTo {
		return ""
	}
	for _, above := range slices.Backward(t.Rows) {
		if above.Line < r.Line && col < len(above.Cells) && above.Cells[col] != "" {
			return above.Cells[col]
		}
	}
	return ""
}

// endWords are the words of the ends of some wires.
func (a *auditor) endWords(wires []int) (words []string) {
	for _, w := range wires {
		for _, end := range []string{a.im.H.Wires[w].From.V, a.im.H.Wires[w].To.V} {
			id, pin, _ := strings.Cut(end, ":")
			words = append(words, pieces(table.Fold(pin))...)
			if t := a.term(id); t != nil {
				words = append(words, a.wordsOf(t)...)
			} else {
				words = append(words, pieces(table.Fold(id))...)
			}
		}
	}
	return words
}

// wordsOf are the words of the name of a termination.
func (a *auditor) wordsOf(t *draft.Term) []string {
	words, ok := a.names[t]
	if !ok {
		words = append(pieces(table.Fold(t.Name.V)), pieces(table.Fold(t.ID))...)
		a.names[t] = words
	}
	return words
}

// longer reports whether a cell holds two words or more besides the ends of its wires.
func (a *auditor) longer(cell string, wires []int) bool {
	if strings.Count(cell, " ") < 2 {
		return false
	}
	all := a.look(cell).pieces
	if len(all) < 4 {
		return false // a connector and a cavity, and one word more
	}
	n := 0
	known := a.endWords(wires)
	for _, p := range all {
		if f := a.words[p].Field; len(p) > 1 && f != name.FieldPin && f != name.FieldConnector && !slices.Contains(known, p) {
			n++
		}
	}
	return n > 1
}

// columnOf is the column whose cell names an end; −1 where none does: the end is one of another table, or has no name there.
func (a *auditor) columnOf(t *Table, r table.Row, e draft.End) int {
	for i, c := range r.Cells {
		if i < len(t.Cols) && !isOfNoEnds(t.Cols[i].Field) && (stands(c, e.Term.ID) || e.Term.Name.Set && stands(c, e.Term.Name.V)) {
			return i
		}
	}
	for i := range r.Cells {
		if i < len(t.Cols) && r.Cells[i] == "" && called(e.Term) == lastAbove(t, r, i) {
			return -1 // it is written once for its rows
		}
	}
	if e.Term.Titled {
		return -1 // its name stands above the table: a number of it in a remark is none of its own
	}
	of := a.wordsOf(e.Term)
	best, at := 0, -1
	for i, c := range r.Cells {
		n := 0
		if c == "" || i < len(t.Cols) && isOfCores(&t.Cols[i]) {
			continue
		}
		for _, p := range a.look(c).pieces {
			if slices.Contains(of, p) {
				n++
			}
		}
		if n > best && i < len(t.Cols) {
			best, at = n, i
		}
	}
	return at
}

// isOfCores reports whether a column numbers the cores of cables or says their size: "5x1.5" names no X1.
func isOfCores(c *shape.Column) bool {
	return c.CoreSize || c.Spared && column.HeadsCores(c.Head)
}

// below names the rows below a short text between the rows of a table that was left out: it could be a heading of theirs.
func (a *auditor) below(t *Table) {
	var rows []table.Row
	what := ""
	under := false
	for _, r := range t.Rows {
		_, text := r.Filled()
		switch {
		case shape.IsText(r):
			under = a.row(t, r).remark && len(strings.Fields(text)) < 6 && !strings.HasSuffix(text, ".")
			if under && what == "" {
				what = text
			}
		case under && a.lacksEnd(t, r):
			rows = append(rows, r)
		}
	}
	a.doubt("rows below a text that is left out", t.At, table.Short(what), "look whether it says something of them", rows)
}

// lacksEnd reports whether a wire of a row has one end, or one at a connector that nothing names.
func (a *auditor) lacksEnd(t *Table, r table.Row) bool {
	return slices.ContainsFunc(a.row(t, r).items, func(it *draft.Item) bool {
		return it.To.String() == "" && !t.pinTable() || it.From.Term != nil && it.From.Term.Unsaid
	})
}

// strangers names the rows with an end at a cavity that the table of its connector does not list.
func (a *auditor) strangers(tables []Table) {
	if !slices.ContainsFunc(tables, func(t Table) bool { return t.pinTable() }) {
		return
	}
	own := map[*draft.Term]map[int]bool{} // the tables that list the cavities of a connector
	at := map[place]int{}
	for i := range tables {
		for _, r := range tables[i].Rows {
			at[a.place(tables[i].of(r))] = i
		}
	}
	listed := map[*draft.Term]int{}
	for _, t := range a.im.Terms {
		if !t.Titled || t.Numbered {
			continue
		}
		for _, p := range t.At {
			i, ok := at[a.place(p)]
			if !ok || !tables[i].pinTable() ||
				slices.ContainsFunc(tables[i].Cols, func(c shape.Column) bool { return c.Field == name.FieldPin && c.Guessed }) {
				continue // one that only goes on with the device of others lists a part of it
			}
			if own[t] == nil {
				own[t] = map[int]bool{}
			}
			own[t][i] = true
			listed[t]++
		}
	}
	rows := map[int][]table.Row{}
	whats := map[int][]string{}
	for i := range tables {
		for _, r := range tables[i].Rows {
			for _, it := range a.row(&tables[i], r).items {
				for _, e := range []draft.End{it.From, it.To} {
					if e.Term == nil || own[e.Term] == nil || own[e.Term][i] || listed[e.Term] < leastRows {
						continue
					}
					p, ok := e.Term.At[e.Pin]
					if j, known := at[a.place(p)]; ok && known && !own[e.Term][j] {
						rows[i] = append(rows[i], r)
						if s := e.String(); !slices.Contains(whats[i], s) && len(whats[i]) < 6 {
							whats[i] = append(whats[i], s)
						}
					}
				}
			}
		}
	}
	for i := range tables {
		a.doubt("an end at a cavity that the table of its connector does not have", tables[i].At, strings.Join(whats[i], ", "),
			"kept; look at its number", rows[i])
	}
}

// pinTable reports whether the rows of a table are the cavities of a connector.
func (t *Table) pinTable() bool {
	pin, ends := false, false
	for _, c := range t.Cols {
		pin = pin || c.Field == name.FieldPin
		ends = ends || c.Field == name.FieldFrom || c.Field == name.FieldFromPin || c.Field == name.FieldRun
	}
	return t.Wires && pin && !ends
}

// guessedNames names the tables whose connector is called after the file, although the list has other texts that
// could name it.
func (a *auditor) guessedNames(lists []table.Table, tables []Table) {
	for i := range tables {
		t := &tables[i]
		if !t.pinTable() || t.Said {
			continue
		}
		var rows []table.Row
		called := ""
		for _, r := range t.Rows {
			for _, it := range a.row(t, r).items {
				if it.Place.Row == r.Line && it.From.Term != nil && a.afterPaper(t, it.From.Term) {
					rows, called = append(rows, r), it.From.Term.ID
				}
			}
		}
		if rows != nil && a.otherText(lists, tables, t) {
			a.doubt("a connector called after its file", t.At, called, "say what it is called if it is not that", rows)
		}
	}
}

// afterPaper reports whether a termination has the name of the file of a table, and nothing in the table names it.
func (a *auditor) afterPaper(t *Table, of *draft.Term) bool {
	called := name.Key(of.ID)
	if of.Name.Set {
		called = name.Key(of.Name.V)
	}
	if !of.Unsaid && called != name.Key(name.BaseName(t.At.File)) {
		return false
	}
	for _, r := range slices.Concat(t.Above, t.Rows) {
		for _, c := range r.Cells {
			if strings.Contains(name.Key(c), called) {
				return false
			}
		}
	}
	return true
}

// otherText reports whether the list of a table has a text that no wire and no connector is called by.
func (a *auditor) otherText(lists []table.Table, tables []Table, t *Table) bool {
	for _, l := range lists {
		if l.File != t.At.File || l.Sheet != t.At.Sheet {
			continue
		}
		heads := map[int]bool{}
		for i := range tables {
			if tables[i].At.File == l.File && tables[i].At.Sheet == l.Sheet && tables[i].At.Row > 0 {
				heads[tables[i].At.Row] = true
			}
		}
		for _, r := range l.Rows {
			if shape.IsText(r) && !heads[r.Line] && !signoff.Is(r) {
				return true
			}
		}
	}
	return false
}
