package parthead

import (
	"strings"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// A column that a board heads may say the connector and the pin in each cell, and behind them what the board calls the pin. The other
// columns say what the wires are, and values of the program.
//
//	signal | Board      | offset
//	LAMP   | J3.1 (PA0) | 0
//	GND    | J3.12 (GND)|

// dottedTable is such a table in columns for one end, and what was taken for the connectors; nil where it is none.
func dottedTable(h shape.Headings, rows []table.Row) (made []table.Row, parts string) {
	head, n := joined(h, rows)
	if n != 1 || h.IsHead(rows[0]) {
		return nil, ""
	}
	x := &columns{head: head, rows: rows[1:]}
	x.look(h)
	at := -1
	for k, is := range x.pins {
		switch {
		case is == other:
		case is == numbers && at < 0 && x.areDotted(k):
			at = k
		default:
			return nil, ""
		}
	}
	if at < 0 || x.signal < 0 || x.placed || x.numbersIn(at) < leastRows {
		return nil, ""
	}
	line := rows[0]
	line.Cells, line.Made, line.Ruled = []string{"Connector", "Pin", "Signal", "Note"}, true, line.First
	var more []int
	for k, c := range head {
		if k != at && k != x.signal {
			more = append(more, k)
			line.Cells = append(line.Cells, c)
		}
	}
	made = append(made, line)
	for _, r := range x.rows {
		pin, called := pinOf(x.cell(r, at))
		con, cavity, _ := strings.Cut(pin, ".")
		if signal := x.cell(r, x.signal); strings.EqualFold(called, signal) {
			called = ""
		}
		cells := []string{con, cavity, x.cell(r, x.signal), called}
		for _, k := range more {
			cells = append(cells, x.cell(r, k))
		}
		r.Cells = cells
		made = append(made, r)
	}
	return made, head[at]
}

// areDotted reports whether every cell of a column is a connector, a dot and a number of a pin, "J3.12 (GND)".
func (x *columns) areDotted(k int) bool {
	for _, r := range x.rows {
		pin, _ := pinOf(x.cell(r, k))
		con, cavity, ok := strings.Cut(pin, ".")
		if !ok || !strings.ContainsFunc(con, isLetter) || cavity == "" || strings.Trim(cavity, "0123456789") != "" {
			return false
		}
	}
	return true
}
