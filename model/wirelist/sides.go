package wirelist

import (
	"slices"
	"strings"
)

// devicePins settles two headings "ECU pin" and "Sensor pin" of a row that names no
// other ends: the wires run from the one device to the other.
func (h headings) devicePins(cols []column) bool {
	var of []int
	for i, c := range cols {
		w := words(fold(c.head))
		switch {
		case c.field == FieldKeep && len(w) > 1 && h.words[w[len(w)-1]].field == FieldPin:
			of = append(of, i)
		case c.field == FieldFrom || c.field == FieldTo || c.field == FieldPin || c.field == FieldFromPin || c.field == FieldToPin || c.field == FieldConnector:
			return false
		}
	}
	if len(of) != 2 {
		return false
	}
	for k, i := range of {
		cols[i].field = []Field{FieldFromPin, FieldToPin}[k]
		cols[i].of = cols[i].head
		if cut := strings.LastIndexAny(cols[i].head, " -_/."); cut > 0 {
			cols[i].of = strings.TrimRight(cols[i].head[:cut], " -_/.")
		}
	}
	return true
}

// sides settles what one heading alone does not say: of two headings "pin" the one
// behind "from" is its, a "No." is the wire's id in a from-to list and the pin in a
// table that has no other.
func (h headings) sides(cols []column) {
	has := func(f Field) bool { return slices.ContainsFunc(cols, func(c column) bool { return c.field == f }) }
	ends := has(FieldFrom) || has(FieldTo) || has(FieldFromPin) || has(FieldRun)
	h.italian(cols)
	side, seen := Field(""), map[Field]int{}
	for i := range cols {
		f := cols[i].field
		switch {
		case f == FieldFrom || f == FieldTo:
			side = f
		case f == FieldPin && ends && side == FieldFrom && !has(FieldFromPin):
			cols[i].field = FieldFromPin
		case f == FieldPin && ends && side == FieldTo && !has(FieldToPin):
			cols[i].field = FieldToPin
		case f == fieldNumber && (ends || has(FieldPin)):
			another := has(FieldWire)
			cols[i].field = FieldWire
			if another || !ends {
				cols[i].field, cols[i].running = FieldIgnore, true // a running number beside ids or pins
			}
		case f == fieldNumber:
			cols[i].field = FieldPin
		}
		seen[cols[i].field]++
	}
	for i := 1; i < len(cols); i++ {
		switch before := cols[i-1].field; before {
		case FieldLength, FieldGauge, FieldCurrent:
			if cols[i].field == FieldUnit || isUnitHeading(cols[i].head) && !h.given(cols[i].head, i) {
				cols[i].field, cols[i-1].measured = FieldUnit, i
			}
		}
	}
	if has(FieldPin) && has(FieldFrom) && !has(FieldTo) && !has(FieldToPin) {
		// A pin table that says where its wires come from.
		for i := range cols {
			switch cols[i].field {
			case FieldFrom:
				cols[i].field = FieldTo
			case FieldFromPin:
				cols[i].field = FieldToPin
			}
		}
	}
	if ends || seen[FieldConnector] < 2 && seen[FieldPin] < 2 {
		return
	}
	if seen[FieldConnector] > 2 && seen[FieldPin] == 2 {
		// Device, plug, pin, and the same of the other end.
		behind := false
		for i := range cols {
			switch f := cols[i].field; {
			case f == FieldConnector && !behind:
				cols[i].field = FieldFrom
			case f == FieldConnector:
				cols[i].field = FieldTo
			case f == FieldPin && !behind:
				cols[i].field, behind = FieldFromPin, true
			case f == FieldPin:
				cols[i].field = FieldToPin
			}
		}
		return
	}
	// Connector, pin, connector, pin: the first of each is the from side.
	nth := map[Field]int{}
	for i := range cols {
		f := cols[i].field
		nth[f]++
		switch {
		case f == FieldConnector && nth[f] == 1 && seen[f] == 2:
			cols[i].field = FieldFrom
		case f == FieldConnector && nth[f] == 2:
			cols[i].field = FieldTo
		case f == FieldPin && nth[f] == 1 && seen[FieldConnector] == 2:
			cols[i].field = FieldFromPin
		case f == FieldPin && nth[f] == 2 && seen[FieldConnector] == 2:
			cols[i].field = FieldToPin
		}
	}
}

// italian settles the one word "a": it is "to" where another heading says "from" and none
// "to", ampere where there is one, and in "A connettore" beside "Da connettore" no side A.
func (h headings) italian(cols []column) {
	from, to := false, false
	for _, c := range cols {
		switch f := fold(c.head); {
		case f == "a" || strings.HasPrefix(f, "a "):
		case c.field == FieldFrom || c.field == FieldFromPin:
			from = true
		case c.field == FieldTo || c.field == FieldToPin:
			to = true
		}
	}
	for i, c := range cols {
		f := fold(c.head)
		switch {
		case h.given(c.head, i):
		case f == "a" && c.field == FieldTo && to:
			cols[i].field = FieldCurrent
		case strings.HasPrefix(f, "a ") && from && !to && c.field == FieldFrom:
			cols[i].field = FieldTo
		case strings.HasPrefix(f, "a ") && from && !to && c.field == FieldFromPin:
			cols[i].field = FieldToPin
		}
	}
}

// isUnitHeading: a column of units, behind one of values.
func isUnitHeading(head string) bool {
	switch strings.Join(words(fold(head)), " ") {
	case "unit", "units", "uom", "unit of measure", "einheit", "unite", "unidad", "unita", "u m", "um":
		return true
	}
	return false
}
