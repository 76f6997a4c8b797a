package audit

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// misplaced names the rows with a colour or a size where the column has ends or names, and with the number of a size where it has
// colours in words: a cell is missing in the row, or one too many stands in it.
func (a *auditor) misplaced(t *Table) {
	cols := map[int]bool{}
	var rows []table.Row
	for i, c := range t.Cols {
		switch c.Field {
		case name.FieldFrom, name.FieldTo, name.FieldConnector, name.FieldSignal, name.FieldColour:
		default:
			continue
		}
		var odd []table.Row
		n := 0
		for _, r := range t.Rows {
			if i >= len(r.Cells) || r.Cells[i] == "" || a.row(t, r).wires == nil {
				continue
			}
			n++
			cell := r.Cells[i]
			switch c.Field {
			case name.FieldFrom, name.FieldTo, name.FieldConnector, name.FieldSignal:
				if len(cell) > 2 && a.kindOf(cell, t) == colour && strings.Trim(cell, "0123456789/-") != "" ||
					isSizeAlone(cell, t.Mark) {
					odd = append(odd, r)
				}
			case name.FieldColour:
				if shape.IsMadeSize(cell) {
					odd = append(odd, r)
				}
			}
		}
		if len(odd) > 0 && 5*len(odd) <= n {
			cols[i], rows = true, append(rows, odd...)
		}
	}
	a.doubt("a cell that belongs in another column", t.At, heads(t, cols), "read as it stands; look whether a cell of its row is missing",
		rows)
}

// isSizeAlone reports whether a cell is a size of wire with its unit and nothing else.
func isSizeAlone(cell string, mark value.Mark) bool {
	if cell[0] < '0' || cell[0] > '9' {
		return false
	}
	g, ok := value.ParseGauge(cell, value.BareAWG, mark)
	return ok && g.Size != "" && strings.Trim(cell, "0123456789.,/ ") != "" &&
		(!strings.HasSuffix(strings.ToLower(cell), "g") || strings.HasSuffix(strings.ToLower(cell), "awg"))
}
