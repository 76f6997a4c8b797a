package settle

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// Titled is the text that names the block: the last heading or short text above it; "" where there is
// none.
func (l *Look) Titled() string {
	for _, r := range slices.Backward(l.Src.Titles) {
		if _, text := r.Filled(); !r.Point && text != "" && !name.IsGeneric(text) && !(r.Prose && strings.HasSuffix(text, ".") &&
			strings.Contains(text, " ")) {
			return text
		}
	}
	return l.called()
}

// EndsInPin reports whether a heading is a device and a word for its cavities, "ECU pin".
func (l *Look) EndsInPin(head string) bool {
	w := name.Words(name.WithoutBrackets(table.Fold(head)))
	return len(w) > 1 && strings.Trim(w[0], "0123456789") != "" && l.Heads.Words[w[len(w)-1]].Field == name.FieldPin
}

// ShortNames counts the cells of a column that are one short word, as the cavities of boards are: "D0",
// "GND", "+5".
func (l *Look) ShortNames(i int) int { return column.ShortNames(l.Src.Rows, i) }
