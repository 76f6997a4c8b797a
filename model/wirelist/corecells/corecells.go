// Package corecells parts the cells of a column that name a cable and the colour of its core, "TSP-1 white", where other cells of the
// column are the colours and sizes of single wires, and those that have the number of a wire and its colour, "W1 red".
package corecells

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// said is what a cell says of a wire: the cable that it is a core of, its colour, its size.
type said struct{ cable, colour, size string }

// Spread gives cables, colours and sizes columns of their own behind the last. ok is false where no column has such cells, or where the
// table names its cables elsewhere.
//
//	Pin | Signal | Wire            | Goes to
//	1   | MIC HI | TSP-1 white     | J2-3
//	2   | MIC LO | TSP-1 blue      | J2-4
//	3   | PTT    | 22 AWG orange   | J2-5
func Spread(h shape.Headings, head table.Row, rows []table.Row) (newHead table.Row, out []table.Row, ok bool) {
	at := holdCores(rows)
	if at == nil {
		return head, rows, false
	}
	cols, _ := h.Columns([]table.Row{head}, 0)
	has := func(f name.Field) bool {
		return slices.ContainsFunc(cols, func(c shape.Column) bool { return c.Field == f })
	}
	if has(name.FieldCable) {
		return head, rows, false
	}
	for i, c := range cols {
		if !at[i] || c.Field != name.FieldWire && c.Field != name.FieldColour && c.Field != name.FieldGauge {
			continue
		}
		if cells := wiresOf(rows, i); cells != nil {
			p := parter{at: i, cells: cells, colour: c.Field == name.FieldColour || !has(name.FieldColour),
				size: c.Field == name.FieldGauge || !has(name.FieldGauge)}
			newHead, out = p.part(head, rows)
			return newHead, out, true
		}
		if cells := numbersOf(rows, i); cells != nil && c.Field == name.FieldWire && !has(name.FieldColour) && !has(name.FieldGauge) {
			p := parter{at: i, cells: cells, colour: true, size: true, numbered: true}
			newHead, out = p.part(head, rows)
			return newHead, out, true
		}
	}
	return head, rows, false
}

// holdCores are the columns in which two cells or more can be cores; nil where none has them.
func holdCores(rows []table.Row) (at map[int]bool) {
	var n []int
	for _, r := range rows {
		for i, cell := range r.Cells {
			if cutCore(cell).cable == "" {
				continue
			}
			for len(n) <= i {
				n = append(n, 0)
			}
			if n[i]++; n[i] > 1 {
				if at == nil {
					at = map[int]bool{}
				}
				at[i] = true
			}
		}
	}
	return at
}

// wiresOf reads the cells of a column; nil where they are no cores of cables: a cable is named by several cores, as two of three are,
// and the cores of each have colours of their own. What is no core is the colour or the size of a wire in four of five cells.
func wiresOf(rows []table.Row, i int) map[int]said {
	cells, colours := map[int]said{}, map[string]map[string]bool{}
	several, others, filled := 0, 0, 0
	for k, r := range rows {
		if shape.IsText(r) || i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || name.StateOf(r.Cells[i]) != name.Used {
			continue
		}
		filled++
		c := cutCore(r.Cells[i])
		if c.cable == "" {
			if c = cutWire(r.Cells[i]); c.colour == "" && c.size == "" {
				others++
				continue
			}
			cells[k] = c
			continue
		}
		of := colours[c.cable]
		if of == nil {
			of = map[string]bool{}
			colours[c.cable] = of
		}
		if of[table.Fold(c.colour)] {
			return nil // one wire in two rows
		}
		if of[table.Fold(c.colour)] = true; len(of) == 2 {
			several++
		}
		cells[k] = c
	}
	if several == 0 || 3*several < 2*len(colours) || 5*others > filled {
		return nil
	}
	return cells
}

// numbersOf reads the cells of a column in which every wire has a number of its own and its colour, "W1 red"; nil where one has not.
func numbersOf(rows []table.Row, i int) map[int]said {
	cells, seen := map[int]said{}, map[string]bool{}
	for k, r := range rows {
		if shape.IsText(r) || i >= len(r.Cells) || value.IsNothing(r.Cells[i]) {
			continue
		}
		c := cutCore(r.Cells[i])
		if c.cable == "" || seen[c.cable] {
			return nil
		}
		seen[c.cable], cells[k] = true, c
	}
	if len(cells) < 2 {
		return nil
	}
	return cells
}

// cutWire parts a cell that says the colour of a wire, its size, or both.
func cutWire(cell string) said {
	if value.NamesColour(cell) {
		return said{colour: cell}
	}
	if isSize(cell) {
		return said{size: cell}
	}
	w := strings.Fields(cell)
	for n := 1; n < len(w); n++ {
		front, back := strings.TrimRight(strings.Join(w[:n], " "), ",;"), strings.Join(w[n:], " ")
		switch {
		case isSize(front) && value.NamesColour(back):
			return said{colour: back, size: front}
		case isSize(back) && value.NamesColour(front):
			return said{colour: front, size: back}
		}
	}
	return said{}
}

// isSize reports whether a text is the size of a single wire.
func isSize(text string) bool {
	g, ok := value.ParseGauge(text, value.BareAWG, value.MarkUnknown)
	return ok && g.Size != "" && !g.IsCable()
}

// cutCore parts "TSP-1 white", "TSP-1: white", "TSP-1/white", "white (TSP-1)" and "white, TSP-1"; cable is "" where the cell is no core.
func cutCore(cell string) said {
	for _, mark := range []string{": ", " / ", "/", ", ", " - ", " "} {
		front, back, ok := strings.Cut(cell, mark)
		if !ok {
			continue
		}
		if front = strings.TrimSpace(front); isCable(front) {
			if c := cutWire(strings.TrimSpace(back)); c.colour != "" {
				c.cable = front
				return c
			}
		}
		at := strings.LastIndex(cell, mark)
		if back = strings.Trim(cell[at+len(mark):], "()[] "); isCable(back) {
			front = strings.TrimSuffix(strings.TrimSuffix(strings.TrimSpace(cell[:at]), " of"), " in")
			if c := cutWire(front); c.colour != "" {
				c.cable = back
				return c
			}
		}
	}
	return said{}
}

// isCable reports whether a word can be the name of a cable: letters and a number, and neither a size nor a colour with one.
func isCable(word string) bool {
	if word == "" || !value.IsDigit(word[len(word)-1]) {
		return false // most words
	}
	letters := strings.TrimRight(word, "0123456789-_")
	if letters == "" || letters == word || len(letters) > 5 || strings.ToUpper(letters) != letters ||
		strings.ContainsFunc(letters, func(r rune) bool { return !unicode.IsLetter(r) && r != '-' }) ||
		len(letters) > 1 && value.NamesColour(letters) {
		return false
	}
	return !isSize(word)
}

// parter makes the new columns.
type parter struct {
	at           int
	cells        map[int]said
	colour, size bool // what has a column of its own made, too
	numbered     bool // what stands in the place of a cable is the number of the wire
}

func (p parter) part(head table.Row, rows []table.Row) (newHead table.Row, out []table.Row) {
	fill := Filler(head, rows)
	newHead, out = head, slices.Clone(rows)
	newHead.Cells = append(fill(head.Cells), "Cable", "Colour", "Size")
	for k, c := range p.cells {
		if c.colour != "" && !p.colour || c.size != "" && !p.size {
			if c.cable == "" {
				continue
			}
			cells := append(fill(rows[k].Cells), c.cable, "", "")
			cells[p.at], out[k].Cells = c.colour, cells
			continue
		}
		cells := append(fill(rows[k].Cells), c.cable, c.colour, c.size)
		if cells[p.at] = ""; p.numbered {
			cells[p.at], cells[len(cells)-3] = c.cable, "" // the column of cables
		}
		out[k].Cells = cells
	}
	return newHead, out
}
