package titled

import (
	"slices"
	"strings"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// headBelow reports whether headings stand below a row, right below it or below rows that say more of the connector; keys are how many of
// those there are.
//
//	Connector: | X1 | Tiller box
//	Location:  | under the seat
//	Pin | Signal | Colour
func headBelow(h shape.Headings, rows []table.Row) (keys int, ok bool) {
	const most = 4 // rows between (no source)
	for keys < min(most, len(rows)-1) && isKey(rows[keys]) && !isHead(h, rows[keys]) {
		keys++
	}
	return keys, len(rows) > keys && isHead(h, rows[keys])
}

// isKey reports whether a row is a word with a colon behind it and what it says.
func isKey(r table.Row) bool {
	n, first := r.Filled()
	return n == 2 && len(first) > 1 && strings.HasSuffix(first, ":") && r.Cells[0] == first
}

// amongPins makes one text of each row that names a connector among the rows of a table of cavities: right below its headings, or where
// the cavities begin anew below it.
//
//	Pin | Signal | mm²
//	Connector X1 | Tiller box |
//	1   | Ahead  | 0.5
func amongPins(h shape.Headings, rows []table.Row, change func(i int, text string)) {
	if !slices.ContainsFunc(rows, func(r table.Row) bool { return inThree(h, r) != "" }) {
		return
	}
	pins, under := map[string]bool{}, false // under: the headings are of the cavities of one connector
	for i, r := range rows[:max(0, len(rows)-1)] {
		first := cell(r)
		if isConnectorFront(h, first) {
			below := cell(rows[i+1])
			text := inThree(h, r)
			if text != "" && under && below != "" && (len(pins) == 0 || pins[below]) && !isHead(h, rows[i+1]) {
				change(i, text)
				clear(pins)
				continue
			}
		}
		if isNumber(first) {
			pins[first] = first != ""
		} else if isHead(h, r) {
			clear(pins)
			under = h.PinColumn(r) == 0 && isOfOne(h, r)
		}
	}
}

// cell is the first cell of a row; "" where it has none.
func cell(r table.Row) string {
	if len(r.Cells) == 0 {
		return ""
	}
	return r.Cells[0]
}

// isConnectorFront reports whether a cell begins with a word for a connector.
func isConnectorFront(h shape.Headings, first string) bool {
	word, _, _ := strings.Cut(strings.TrimRight(first, ":.# "), " ")
	if strings.ContainsAny(word, "0123456789") {
		return false
	}
	return word != "" && isConnectorWord(h, strings.TrimRight(word, ":"))
}
