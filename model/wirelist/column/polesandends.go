package column

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// PolesAndEnds reports whether each cell of a column is a connector and one of its cavities or poles: "Pump 2", "Winch pin +".
func PolesAndEnds(rows []table.Row, i int) bool {
	n := 0
	for _, r := range rows {
		if i >= len(r.Cells) || shape.IsText(r) || value.IsNothing(r.Cells[i]) {
			continue
		}
		of, pin, ok := name.SplitEnd(r.Cells[i])
		if !ok || of == "" || !name.IsCavity(pin) && pin != "+" && pin != "-" {
			return false
		}
		n++
	}
	return n > 1
}
