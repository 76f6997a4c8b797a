package column

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// OnlyNumbers reports whether the cells of a column are numbers, or a few of them together, "4 and 5", and nothing else.
func OnlyNumbers(rows []table.Row, i int) bool {
	n := 0
	for _, r := range rows {
		if i >= len(r.Cells) || shape.IsText(r) || value.IsNothing(r.Cells[i]) {
			continue
		}
		isNumber := func(pin string) bool { return pin != "" && strings.Trim(pin, "0123456789") == "" }
		if n++; slices.ContainsFunc(name.SplitPins(r.Cells[i]), func(pin string) bool { return !isNumber(pin) }) {
			return false
		}
	}
	return n > 0
}
