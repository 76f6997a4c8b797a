package shape

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// pinsOfDevice takes the one column with such a heading for the cavities of that device, where no other is of its cavities.
func (h Headings) pinsOfDevice(cols []Column) {
	at := -1
	for i, c := range cols {
		switch {
		case c.Field == name.FieldPin && i > 0 && cols[i-1].Field == name.FieldTo && !c.Given:
			// the cavities there, behind "To"
		case c.Field == name.FieldPin || c.Field == name.FieldFromPin || c.Field == name.FieldDevicePin || c.Field == name.FieldFrom:
			return
		case c.Field != name.FieldKeep || c.Given || !h.isPinOfDevice(c.Head):
		case at >= 0:
			return
		default:
			at = i
		}
	}
	if at >= 0 {
		cols[at].Field, cols[at].known = name.FieldPin, true
		_, cols[at].Of, _ = strings.Cut(cols[at].Head, " ")
	}
}

// isPinOfDevice reports whether a heading is a word for a cavity and then the device that it is of, as German and French write it.
//
//	Pin Steuergerät | Funktion
func (h Headings) isPinOfDevice(head string) bool {
	first, rest, ok := strings.Cut(strings.TrimSpace(head), " ")
	w := name.Words(table.Fold(rest))
	if !ok || len(w) == 0 || len(w) > 3 || h.Words[table.Fold(first)].Field != name.FieldPin {
		return false
	}
	return slices.ContainsFunc(w, func(w string) bool {
		switch w {
		case "steuergerat", "steuergeraet", "motorsteuergerat", "steuerung", "calculateur", "boitier", "centralina", "centralita", "ecu",
			"ecm",
			"stg", "sterownik", "sterownika", "regelapparaat", "styrenhet", "regler", "logger":
			return true
		}
		return name.IsDeviceWord(w)
	})
}
