package column

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/placehead"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// NumberBesideNames reports whether one of two columns is of numbers alone and the other of names, so that the number is as likely an
// address: headings that name a place each, or end with a word for connectors each, say that both are cavities.
//
//	Name | Id           Old plug | New plug
//	A1   | 3            A1       | 3
func NumberBesideNames(cols []shape.Column, rows []table.Row, a, b int) bool {
	isPlug := func(head string) bool {
		w := name.Words(table.Fold(head))
		return len(w) > 1 && name.IsConnectorWord(w[len(w)-1])
	}
	return onlyNumbers(rows, a) != onlyNumbers(rows, b) && !Addresses(rows, a) && !Addresses(rows, b) &&
		(placehead.Of(cols[a].Head) == "" || placehead.Of(cols[b].Head) == "") && !(isPlug(cols[a].Head) && isPlug(cols[b].Head))
}

// onlyNumbers reports whether the cells of a column are numbers, or a few of them together, "4 and 5", and nothing else.
func onlyNumbers(rows []table.Row, i int) bool {
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
