package plugindex

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// toSheets reports whether the columns are those of a short index: the first one names the connectors, each once, and beside it stands how
// many ways they have, or on which sheet their cavities are, by its name or its number, or both, and nothing of a wire. "Pins" alone may be
// the cavities, and is no such count.
//
//	Plug | What     | Ways | Sheet
//	C1   | ECU main | 26   | C1 ECU
//	C2   | Dash     | 12   | C2 Dash
func toSheets(cols []shape.Column, prof []column.Profile) bool {
	if len(cols) < 2 || len(prof) < len(cols) || !namesConnectors(&cols[0], &prof[0]) {
		return false
	}
	found := false
	for i := 1; i < len(cols); i++ {
		switch c, p := &cols[i], &prof[i]; {
		case p.Filled == 0:
		case c.Given:
			return false
		case says(c.Head, sheets), p.All(p.Numbers) && says(c.Head, ways):
			found = true
		case p.Ends > 0 || p.Units > 0 || p.Most(p.Numbers) || p.Most(p.Colours):
			return false
		case slices.Contains([]name.Field{name.FieldFrom, name.FieldTo, name.FieldRun, name.FieldGauge, name.FieldPin, name.FieldFromPin,
			name.FieldToPin, name.FieldColour, name.FieldWire, name.FieldSpec, name.FieldVia}, c.Field):
			return false
		}
	}
	return found
}

// says reports whether a heading of a few words has one of some words.
func says(head, words string) bool {
	w := name.Words(table.Fold(head))
	return len(w) > 0 && len(w) < 4 && slices.ContainsFunc(w, func(w string) bool { return strings.Contains(words, " "+w+" ") })
}

// The words for a sheet of the list, and for how many ways a connector has, folded. From memory, no source.
const (
	sheets = " sheet page tab blatt seite tabelle feuille folio onglet hoja pagina foglio scheda blad arkusz strona list sida side "
	ways   = " ways poles cavities positions polzahl polig voies vias polos vie poli polen poler biegunow polu "
)
