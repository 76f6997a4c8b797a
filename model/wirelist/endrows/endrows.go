// Package endrows makes one row of the two that a list has for each wire, one for either end.
package endrows

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Who crimps needs for each end its connector, its cavity, its contact and its seal, and gives the ends of a wire a row each, below the
// number of the wire, which is written once, or in cells that are joined.
//
//	Wire | Size | Colour | End | Connector | Cavity | Contact | Seal
//	K7   | 1    | red    | A   | XC1       | 1      | pin     | green
//	     |      |        | B   | XC2       | 4      | socket  | green

// The headings of the columns that are made; what else each end has stands in the last of them.
const (
	fromHead    = "From connector"
	fromPinHead = "From pin"
	toHead      = "To connector"
	toPinHead   = "To pin"
	noteHead    = "Note"
	endsHead    = "At its ends" // where the table has a column of notes
)

// ends are the columns of such a table.
type ends struct {
	end, connector, pin int
	more                []int // columns of each end, beside those
	wire                []int // columns of the wire
	first, second       string
	noted               bool // it has a column of notes
}

// Rows makes the rows of such a table; lines are those of the two rows of each wire, by the line of the first; nil where the sheet has no
// such table.
func Rows(h shape.Headings, t *table.Table) (rows []table.Row, lines map[int][]int) {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows, nil // a person has said where its columns are
	}
	for i := 0; i+4 < len(t.Rows); i++ {
		if !slices.ContainsFunc(t.Rows[i].Cells, isEnd) || !h.IsHead(t.Rows[i]) {
			continue
		}
		head, below := t.Rows[i], t.Rows[i+1:]
		n := 0
		for n < len(below) && !shape.IsText(below[n]) && !h.IsHead(below[n]) {
			n++
		}
		cols, _ := h.Columns([]table.Row{head}, 0)
		e, ok := look(cols, head, below[:n])
		if !ok {
			continue
		}
		lines = map[int][]int{}
		one := head
		one.Cells = e.heads(head)
		rows = append(slices.Clone(t.Rows[:i]), one)
		for k := 0; k+1 < n; k += 2 {
			r := below[k]
			r.Cells = e.joined(head, below[k].Cells, below[k+1].Cells)
			rows = append(rows, r)
			lines[r.Line] = []int{r.Line, below[k+1].Line}
		}
		return append(rows, below[n:]...), lines
	}
	return t.Rows, nil
}

// look finds the columns of a table by its rows: one says which end each row is of, by two words in turn; behind it stand the connector
// and the cavity. In the second row of a wire every other column up to there is empty, or says the same again.
func look(cols []shape.Column, head table.Row, rows []table.Row) (e ends, ok bool) {
	e.end = slices.IndexFunc(head.Cells, isEnd)
	if len(rows) < 4 || len(rows)%2 > 0 {
		return e, false
	}
	e.first, e.second = cell(rows[0].Cells, e.end), cell(rows[1].Cells, e.end)
	if !areEnds(e.first, e.second) {
		return e, false
	}
	for k, r := range rows {
		if table.Fold(cell(r.Cells, e.end)) != table.Fold([]string{e.first, e.second}[k%2]) {
			return e, false
		}
	}
	e.connector, e.pin = -1, -1
	e.noted = slices.ContainsFunc(cols, func(c shape.Column) bool { return c.Field == name.FieldNote })
	for i := range head.Cells {
		switch {
		case i == e.end:
		case i > e.end && e.connector < 0 && most(rows, i, name.IsDesignator):
			e.connector = i
		case i == e.connector+1 && e.connector >= 0 && e.pin < 0 && most(rows, i, name.IsCavities):
			e.pin = i
		case saidOnce(rows, i) || sameTwice(rows, i) && (i < e.end || i < len(cols) && cols[i].Field != name.FieldKeep):
			e.wire = append(e.wire, i)
		case i > e.end:
			e.more = append(e.more, i)
		default:
			return e, false
		}
	}
	return e, e.connector >= 0 && e.pin >= 0 && len(e.wire) > 0
}

// areEnds reports whether two words are those for the two ends of a wire; left and right are two things. From memory, no source.
func areEnds(first, second string) bool {
	switch table.Fold(first) + " " + table.Fold(second) {
	case "a b", "1 2", "i ii", "from to", "near far", "start end", "start finish", "x y", "von nach", "anfang ende", "start ziel", "de a",
		"debut fin",
		"da a", "inizio fine", "de para", "desde hasta", "van naar", "begin eind", "fran till", "fra til", "od do", "z do":
		return true
	}
	return false
}

// saidOnce reports whether every second row has nothing in a column, or what the row above it has, and some first row has something.
func saidOnce(rows []table.Row, i int) bool {
	said := false
	for k := 0; k+1 < len(rows); k += 2 {
		a, b := cell(rows[k].Cells, i), cell(rows[k+1].Cells, i)
		if b != "" && b != a {
			return false
		}
		said = said || a != "" && b == ""
	}
	return said
}

// sameTwice reports whether the cells of a column stand twice each, as where the cells of a wire are joined.
func sameTwice(rows []table.Row, i int) bool {
	return len(rows) > 2 && cell(rows[0].Cells, 0) == cell(rows[1].Cells, 0) && cell(rows[0].Cells, i) != "" && !differs(rows, i)
}

// differs reports whether the two rows of some wire have two things in a column.
func differs(rows []table.Row, i int) bool {
	for k := 0; k+1 < len(rows); k += 2 {
		if cell(rows[k].Cells, i) != cell(rows[k+1].Cells, i) {
			return true
		}
	}
	return false
}

// most reports whether seven in ten cells of a column are of a kind, and one is filled.
func most(rows []table.Row, i int, is func(string) bool) bool {
	n, all := 0, 0
	for _, r := range rows {
		if c := cell(r.Cells, i); !value.IsNothing(c) {
			all++
			if is(c) {
				n++
			}
		}
	}
	return all > 0 && 10*n >= 7*all
}

// heads are the headings of the table of wires.
func (e ends) heads(head table.Row) (out []string) {
	for _, i := range e.wire {
		out = append(out, head.Cells[i])
	}
	out = append(out, fromHead, fromPinHead, toHead, toPinHead)
	if len(e.more) > 0 && e.noted {
		return append(out, endsHead)
	} else if len(e.more) > 0 {
		return append(out, noteHead)
	}
	return out
}

// joined is the row of a wire.
func (e ends) joined(head table.Row, a, b []string) (out []string) {
	for _, i := range e.wire {
		out = append(out, cell(a, i))
	}
	out = append(out, cell(a, e.connector), cell(a, e.pin), cell(b, e.connector), cell(b, e.pin))
	if len(e.more) == 0 {
		return out
	}
	var all []string
	for _, of := range []struct {
		side  string
		cells []string
	}{{e.first, a}, {e.second, b}} {
		var says []string
		for _, i := range e.more {
			if c := cell(of.cells, i); !value.IsNothing(c) {
				says = append(says, value.JoinNonEmpty(" ", head.Cells[i], c))
			}
		}
		if len(says) > 0 {
			all = append(all, of.side+" "+strings.Join(says, ", "))
		}
	}
	return append(out, strings.Join(all, "; "))
}

// longest is how long such a heading is, in bytes.
const longest = 16

// isEnd reports whether a heading says which end of a wire a row is of.
func isEnd(head string) bool {
	if len(head) > longest {
		return false
	}
	switch table.Fold(strings.Trim(head, " .:")) {
	case "end", "ends", "side", "wire end", "end of wire", "ende", "seite", "leitungsende", "extremite", "bout", "cote", "estremita",
		"capo", "lato", "extremo", "lado", "uiteinde", "einde", "zijde", "kant", "anda", "sida", "koniec", "strona", "paa", "puoli":
		return true // from memory, no source
	}
	return false
}

func cell(cells []string, i int) string {
	if i < 0 || i >= len(cells) {
		return ""
	}
	return strings.TrimSpace(cells[i])
}
