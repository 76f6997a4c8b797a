package reading

import (
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// connectionNames takes a column headed as connections, the only one beside cavities, for the names of the nets, where its cells
// are short names, and no devices with a place in them.
//
//	Pin | Connection
//	1   | CLK
//	2   | GND
func (l *look) connectionNames() {
	if !l.has(l.cols, name.FieldPin) || l.has(l.cols, name.FieldSignal, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin) {
		return
	}
	for i := range l.cols {
		c, n, short := &l.cols[i], 0, 0
		if w := strings.Join(name.Words(table.Fold(c.Head)), " "); c.Given || c.Field != name.FieldRun || w != "connection" && w != "connections" {
			continue
		}
		for _, r := range l.src.Rows[:min(len(l.src.Rows), column.MostLooked)] {
			if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) {
				continue
			}
			n++
			bare := strings.TrimSpace(name.WithoutBrackets(r.Cells[i]))
			if _, pin, ok := name.SplitEnd(bare); (!strings.Contains(bare, " ") && len(bare) < 9 || len(bare) < 7) && !(ok && name.IsCavity(pin)) {
				short++
			}
		}
		if n > 1 && 4*short >= 3*n {
			c.Field = name.FieldSignal
		}
	}
}
