package grid

import (
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// across takes apart a table that has a row for each connector and a column for each of its cavities, which count on from the first; its
// cells are the names of the wires, or where they go. A column of none of them stays a column of every wire of its row.
//
//	Connector | Pin 1 | Pin 2 | Pin 3 | Part no.
//	J1        | 12V   | GND   | CAN H | 4-way
//	J2        | 5V    | SIG   |       | 3-way
func across(h shape.Headings, rows []table.Row) (made []table.Row, n int) {
	const least = 3 // cavities (no source)
	head := rows[0]
	if len(head.Cells) < least+1 || h.Words[table.Fold(head.Cells[0])].Field != name.FieldConnector {
		return nil, 0
	}
	var pins, rest []int
	for i, c := range head.Cells[1:] {
		switch word, number := cavityHead(h, c); {
		case number == strconv.Itoa(len(pins)+1) && (word || len(pins) == 0 || head.Cells[pins[0]] == "1"):
			pins = append(pins, i+1)
		case c != "":
			rest = append(rest, i+1)
		}
	}
	if len(pins) < least || pins[len(pins)-1]-pins[0] != len(pins)-1 {
		return nil, 0
	}
	called := "Signal"
	if mostEnds(rows[1:], pins) {
		called = "To"
	}
	at := head
	at.Cells = []string{head.Cells[0], "Cavity", called}
	for _, k := range rest {
		at.Cells = append(at.Cells, head.Cells[k])
	}
	made = append(made, at)
	seen := map[string]bool{}
	for _, r := range rows[1:] {
		if r.First || shape.IsText(r) || cellAt(r, 0) == "" || h.IsHead(r) {
			break
		}
		if seen[r.Cells[0]] {
			return nil, 0 // a row for a wire, not for a connector
		}
		seen[r.Cells[0]] = true
		for k, i := range pins {
			cell := cellAt(r, i)
			if cell == "" {
				continue
			}
			row := r
			row.Cells = []string{r.Cells[0], strconv.Itoa(k + 1), cell}
			for _, o := range rest {
				row.Cells = append(row.Cells, cellAt(r, o))
			}
			made = append(made, row)
		}
		n++
	}
	if n < 2 {
		return nil, 0
	}
	return made, n + 1
}

// cavityHead parts a heading of one cavity, "Pin 3" or "3", in its number and whether a word for cavities stands before it.
func cavityHead(h shape.Headings, head string) (word bool, number string) {
	front, last, two := strings.Cut(head, " ")
	if !two {
		return false, head
	}
	return h.Words[table.Fold(front)].Field == name.FieldPin, last
}

// mostEnds reports whether most cells of some columns are a connector with its cavity.
func mostEnds(rows []table.Row, cols []int) bool {
	ends, filled := 0, 0
	for _, r := range rows {
		for _, i := range cols {
			cell := cellAt(r, i)
			if cell == "" || value.IsNothing(cell) {
				continue
			}
			filled++
			if connector, pin, ok := strings.Cut(cell, ":"); ok && name.IsDesignator(connector) && name.IsCavity(pin) {
				ends++
			}
		}
	}
	return 2*ends > filled
}
