package bothends

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// FarPins takes a column that is headed by a word for cavities and a name for the cavities of that at the far end, beside the cavities of
// the device that the title names: each of its cells is a cavity.
//
//	## Fan
//	Pin | Pin C1 | Colour        Pin-Nr. | pin Fuse box | Farbe        Pin | Plug M | Colour
func FarPins(cols []shape.Column, prof []column.Profile) {
	pin, far := -1, -1
	for i, c := range cols {
		switch {
		case c.Field == name.FieldPin && c.Of == "" && prof[i].Filled > 0:
			if pin >= 0 {
				return
			}
			pin = i
		case c.Field == name.FieldKeep && !c.Given && ofAnother(c.Head) && prof[i].Filled > 0 && prof[i].All(prof[i].Cavities),
			(c.Field == name.FieldConnector || c.Field == name.FieldKeep) && !c.Given && PlugOf(c.Head) != "" && prof[i].Filled > 0 &&
				prof[i].All(prof[i].Cavities) && prof[i].Distinct == prof[i].Filled:
			if far >= 0 {
				return
			}
			far = i
		case isEndField(c.Field) || c.Field == name.FieldFromPin || c.Field == name.FieldToPin:
			return
		}
	}
	if pin < 0 || far < 0 {
		return
	}
	of := PlugOf(cols[far].Head)
	if of == "" {
		_, of, _ = strings.Cut(strings.TrimSpace(cols[far].Head), " ")
	}
	cols[far].Field, cols[far].Of, cols[far].Headed = name.FieldToPin, strings.TrimSpace(of), true
	cols[far].Know()
}

// ofAnother reports whether a heading is a word for cavities and behind it a name, with a capital letter: "pin name" asks for another
// thing.
func ofAnother(head string) bool {
	const most = 3 // words of a device (no source)
	first, of, ok := strings.Cut(strings.TrimSpace(head), " ")
	of = strings.TrimSpace(of)
	r, _ := utf8.DecodeRuneInString(of)
	w := name.Words(table.Fold(of))
	if !ok || len(w) == 0 || len(w) > most || !name.IsPinWord(table.Fold(first)) || !unicode.IsUpper(r) {
		return false
	}
	switch w[0] {
	case "no", "nr", "number", "name", "size", "type", "function", "colour", "color", "label", "count", "id", "part", "p", "art", "nummer",
		"funktion", "bezeichnung", "farbe", "fonction", "couleur", "funcion", "numero", "funzione", "nome", "colore", "signal",
		"description",
		"desc", "gender", "contact", "note", "notes", "in", "out", "length", "seal":
		return false
	}
	return true
}
