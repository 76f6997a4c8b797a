package parthead

import (
	"cmp"
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/strokes"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

const (
	leastRows   = 3  // rows below the headings where that is no chance (no source)
	mostColumns = 8  // of such a table (no source)
	mostHead    = 32 // bytes of one heading (no source)
)

// Found is one table that was read so: its headings as they stand in the list, the parts, its rows.
type Found struct {
	Line  int
	Parts string
	Sure  bool // words for cavities in both headings say so
	Rows  []table.Row
}

// Rows are the rows of a sheet, those of such tables with headings of their own.
func Rows(h shape.Headings, t *table.Table) (rows []table.Row, all []Found) {
	rows = t.Rows
	if h.HeadLine() > 0 || h.Numbered() || h.Recipe != nil {
		return rows, nil
	}
	for i := 0; i+leastRows < len(rows); i++ {
		if !starts(t, rows, i) {
			continue
		}
		end := i + 1
		for end < len(rows) && goesOn(t, rows[end-1], rows[end]) {
			end++
		}
		if end-i <= leastRows {
			continue
		}
		made, parts, sure := tableOf(h, rows[i:end])
		if made == nil {
			made, parts = dottedTable(h, rows[i:end])
		}
		if made == nil {
			if isCounted(h, t, rows[i:end]) {
				rows = slices.Clone(rows)
				rows[i].Ruled = true
			}
			continue
		}
		of := Found{Line: rows[i].Line, Parts: parts, Sure: sure, Rows: made[1:]}
		rows = slices.Concat(rows[:i], made, rows[end:])
		all = append(all, of)
		i += len(made) - 1
	}
	return rows, all
}

// goesOn reports whether a row is of the table of the one above it; a rule may stand between two rows of a marked text.
func goesOn(t *table.Table, above, r table.Row) bool {
	last := above.Line + 1
	if t.Marked {
		last++
	}
	return !r.First && !r.Prose && len(r.Cells) > 1 && r.Line <= last
}

// starts reports whether a row can be the first of the headings of such a table: a few short words, with no row of a table right above.
func starts(t *table.Table, rows []table.Row, i int) bool {
	r := rows[i]
	if n, _ := r.Filled(); n < 2 || len(r.Cells) > mostColumns || r.Prose || t.Marked && !r.First {
		return false
	}
	return AreWords(r) && (i == 0 || t.Marked || shape.IsText(rows[i-1]) || rows[i-1].Line+1 < r.Line)
}

// AreWords reports whether a row could be headings: every cell is short, has a letter and is no value.
func AreWords(r table.Row) bool {
	for _, c := range r.Cells {
		if c == "" {
			continue
		}
		if len(c) > mostHead || strings.ContainsAny(c, ":;=?,") || !strings.ContainsFunc(c, isLetter) || value.IsNothing(c) {
			return false
		}
	}
	return true
}

func isLetter(r rune) bool { return r > 127 || r|0x20 >= 'a' && r|0x20 <= 'z' }

// tableOf is the headings and the rows of a table in columns for both ends, and the parts that it joins; nil where they can't be told.
// sure is true where both of their headings have a word for cavities.
func tableOf(h shape.Headings, rows []table.Row) (made []table.Row, parts string, sure bool) {
	head, n := joined(h, rows)
	if n == 0 || len(rows)-n < leastRows || rows[0].Ruled && (n < 2 || !areNamed(rows[n:])) {
		return nil, "", false // a rule below says that the first row is the headings
	}
	x := &columns{head: head, rows: rows[n:]}
	x.look(h)
	near, far := x.ends(h.IsHead(rows[0]), n)
	if near < 0 {
		return nil, "", false
	}
	top := []string{"From", "From pin", "To", "To pin", "Signal", "Colour", "Note"}
	var more []int
	for k := range x.head {
		if k != near && k != far && k != x.signal && k != x.colour && k != x.names {
			more = append(more, k)
			top = append(top, x.head[k])
		}
	}
	of, to := x.part(near), x.part(far)
	line := rows[0]
	line.Cells, line.Made, line.First = top, true, rows[0].First
	line.Ruled = line.First
	made = append(made, line)
	for _, r := range x.rows {
		if free := x.free(r, near, far); free != nil {
			for _, pin := range free {
				r.Cells = []string{of, pin, "", "", "", "", ""}
				made = append(made, r)
			}
			continue
		}
		made = append(made, x.row(r, near, far, of, to, more))
	}
	return made, of + ", " + to, x.saysPins(near) && x.saysPins(far)
}

// row is a row in the columns for both ends. A pin that nothing is opposite is an empty one, where no colour says that it has a wire.
func (x *columns) row(r table.Row, near, far int, of, to string, more []int) table.Row {
	at, nearName := pinOf(x.cell(r, near))
	there, farName := pinOf(x.cell(r, far))
	if isNothing(there) {
		there = ""
	}
	if isNothing(at) {
		at = ""
	}
	signal, colour := x.cell(r, x.signal), x.cell(r, x.colour)
	names := x.cell(r, x.names)
	said, _, note := strokes.Said([]string{nearName, names, farName}, nil)
	if signal == "" {
		signal = cmp.Or(said, names) // a column of its own says what the far pin carries; the note has what both are called
	} else if said != "" && !strings.EqualFold(said, signal) {
		note = strings.TrimPrefix(note+", "+said, ", ")
	}
	cells := []string{of, at, to, there, signal, colour, note}
	switch {
	case at != "" && there == "" && colour == "":
		cells = []string{of, at, "", "", "", "", note}
	case at != "" && there == "":
		cells[2] = ""
	case at == "" && there != "":
		cells = []string{to, there, "", "", signal, colour, note}
	}
	for _, k := range more {
		if c := x.cell(r, k); cells[4] == "" && note == "" && x.saysWhat(k) && isCalled(c) && strings.Count(c, " ") < 2 {
			cells[4] = c // and the part that it is called so at stays in the note
		}
		cells = append(cells, x.cell(r, k))
	}
	r.Cells = cells
	return r
}

// saysWhat reports whether a heading of a part ends with a word for what a wire carries, "Debug func": such a cell is a signal where it is
// short and nothing else says one. A sentence stays what it is, and what a pin could be used for is none.
func (x *columns) saysWhat(k int) bool {
	w := strings.Fields(table.Fold(x.head[k]))
	return len(w) > 1 && !slices.Contains(w, "use") && !slices.Contains(w, "spare") &&
		slices.Contains([]string{"func", "function", "signal", "funktion", "fonction", "funcion", "funzione"}, w[len(w)-1])
}

// free are the pins of a row that says of several at once that nothing is opposite, "1, 4, 6" and NC; nil of every other row.
func (x *columns) free(r table.Row, near, far int) []string {
	n, _ := r.Filled()
	there := x.cell(r, far)
	if !strings.ContainsAny(x.cell(r, near), ",;") || n > 2 || there != "" && !isNothing(there) || n == 2 && there == "" {
		return nil
	}
	return strings.FieldsFunc(x.cell(r, near), func(r rune) bool { return strings.ContainsRune(",; ", r) })
}

// isNothing reports whether a cell says that nothing is there.
func isNothing(cell string) bool { return value.IsNothing(cell) || name.StateOf(cell) == name.Blank }

// pinOf parts a cell in the pin and what it is called there: "2 (GND)", "J3.1 (PA0)".
func pinOf(cell string) (pin, called string) {
	front, back, ok := strings.Cut(cell, "(")
	back, closed := strings.CutSuffix(back, ")")
	if front = strings.TrimSpace(front); !ok || !closed || strings.ContainsAny(back, "()") || !isPin(front) {
		return strings.TrimSpace(cell), ""
	}
	return front, strings.TrimSpace(back)
}

// isPin reports whether a text is the number of a pin, or a connector and one: "12", "J3.1", "A4".
func isPin(text string) bool {
	return text != "" && len(text) < 8 && strings.ContainsAny(text, "0123456789") && !strings.ContainsAny(text, " ,/+%-:_") &&
		!strings.HasPrefix(text, "0x")
}
