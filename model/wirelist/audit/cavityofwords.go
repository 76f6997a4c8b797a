package audit

import (
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// cavityOfWords reports whether an end of a wire is at a cavity of two words that no pin table names, or at one called after a colour while
// the wire has none: cells may have slipped into another column.
//
//	From      | Pin       | To | Pin
//	LOGGER 5  | WHEEL SPD | 1  | white
func cavityOfWords(_ *Table, _ table.Row, it *draft.Item) (what string, is bool) {
	for _, e := range []draft.End{it.From, it.To} {
		if e.Term == nil || e.Term.Titled || len(e.Pin) < 3 {
			continue
		}
		if at := strings.IndexByte(e.Pin, ' '); at > 1 && strings.IndexByte(e.Pin, '(') < 0 {
			return e.Term.ID + ":" + e.Pin, true
		}
		if _, ok := value.ParseColour(e.Pin, ""); ok && len(it.Colour) == 0 && strings.IndexAny(e.Term.ID, "0123456789") == 0 {
			return e.Term.ID + ":" + e.Pin, true
		}
	}
	return "", false
}
