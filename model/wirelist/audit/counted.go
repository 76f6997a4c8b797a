package audit

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// counted names the rows of a table of which each has another connector, below a heading that could count its cavities, and nothing else of
// a wire: it could be a list of the connectors, of which no wire is.
//
//	Connector | Type | Pins | Mates with
//	X1        | DT 4 | 4    | X11
//	X2        | DT 6 | 6    | X12
func (a *auditor) counted(t *Table) {
	connector, pins := -1, -1
	for i, c := range t.Cols {
		switch c.Field {
		case name.FieldConnector:
			connector = i
		case name.FieldPin:
			if w := name.Words(table.Fold(c.Head)); len(w) > 0 && name.CountWord(w[len(w)-1]) != "" {
				pins = i
			}
		case name.FieldSignal, name.FieldColour, name.FieldGauge, name.FieldWire, name.FieldFrom, name.FieldToPin, name.FieldRun:
			return
		}
	}
	if connector < 0 || pins < 0 {
		return
	}
	seen := map[string]bool{}
	var rows []table.Row
	for _, r := range t.Rows {
		if a.row(t, r).wires == nil {
			continue
		}
		if pins >= len(r.Cells) || value.IsNothing(r.Cells[pins]) || strings.Trim(r.Cells[pins], "0123456789") != "" ||
			seen[r.Cells[connector]] || r.Cells[connector] == "" {
			return
		}
		seen[r.Cells[connector]] = true
		rows = append(rows, r)
	}
	if len(rows) > 1 {
		a.doubt("a table that could count the cavities of connectors", t.At, "",
			"read as a wire in each; leave it out if it has none", rows)
	}
}
