package tail

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// IsBelowPins reports whether a row below a table of cavities is of a table of fuses or parts that its title names: what stands below the
// cavities is counted otherwise than those above, and it has no colour and no size.
//
//	Pin | Signal | Colour
//	1   | Lamp   | red
//
//	Fuses
//	F1  | 5 A    | lamps
func IsBelowPins(cols []shape.Column, above []table.Row, r table.Row, title string) bool {
	if !slices.ContainsFunc(name.Words(table.Fold(title)), func(w string) bool {
		of := name.OtherKind(w)
		return of == "fuses" || of == "parts" || sidehead.IsFitting(w)
	}) {
		return false
	}
	for i, cell := range r.Cells {
		if cell == "" || i >= len(cols) {
			continue
		}
		switch cols[i].Field {
		case name.FieldPin:
			if slices.ContainsFunc(above, func(o table.Row) bool { return i < len(o.Cells) && counts(o.Cells[i]) == counts(cell) }) {
				return false
			}
		case name.FieldColour:
			if _, ok := value.ParseColour(cell, ""); ok {
				return false
			}
		case name.FieldGauge:
			if g, ok := value.ParseGauge(cell, value.BareAWG, value.MarkUnknown); ok && g.Size != "" {
				return false
			}
		}
	}
	return true
}

// counts is what a designator has before its number: "F" of "F12", "" of "12".
func counts(cell string) string { return strings.TrimRight(table.Fold(cell), "0123456789") }
