package column

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// ArePlugEnds reports whether a column that is headed by a word for connectors has a cavity of one in each cell, behind a few letters that
// are no designator: no cell comes again, and the letters before the sign do.
//
//	Signal     | Board J4 | Wheel plug
//	Motor FL + | 1        | FL-A
//	Motor FL - | 2        | FL-B
//	Motor FR + | 3        | FR-A
//	Motor FR - | 4        | FR-B
func ArePlugEnds(head string, rows []table.Row, i int) bool {
	const most = 8 // letters (no source)
	if !slices.ContainsFunc(name.Words(table.Fold(name.WithoutBrackets(head))), name.IsConnectorWord) {
		return false
	}
	plugs, seen := map[string]int{}, map[string]bool{}
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) || name.StateOf(r.Cells[i]) != name.Used {
			continue
		}
		cell := strings.TrimSpace(r.Cells[i])
		of, pin, ok := name.SplitEnd(cell)
		if !ok || !name.IsCavity(pin) || len(of) > most || seen[cell] ||
			strings.ContainsFunc(of, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) }) {
			return false
		}
		plugs[table.Fold(of)]++
		seen[cell] = true
	}
	again := 0
	for _, n := range plugs {
		if n > 1 {
			again += n
		}
	}
	return len(seen) > 3 && 3*again >= 2*len(seen)
}
