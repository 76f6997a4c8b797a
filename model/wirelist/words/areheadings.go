package words

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// AreHeadings reports whether a text is the headings of cavities and of what is in them, and no name of a connector: "Pin Signal",
// "Klemme Funktion".
func AreHeadings(text string) bool {
	w := strings.Fields(table.Fold(text))
	if len(w) < 2 || len(w) > 4 {
		return false
	}
	all := vocabulary()
	if all[w[0]].Field != name.FieldPin {
		return false
	}
	for _, one := range w[1:] {
		switch all[one].Field {
		case name.FieldSignal, name.FieldColour, name.FieldGauge, name.FieldNote, name.FieldTo, name.FieldLength:
		default:
			return false
		}
	}
	return true
}
