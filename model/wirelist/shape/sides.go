package shape

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// devicePins settles the headings "ECU pin" and "Sensor pin" of a row that names no other ends: the
// wires run from the one device to the other, and what a third says stays text. One alone is
// the cavities of its device; beside a plain "Pin" it is the other end.
func (h Headings) devicePins(cols []Column) bool {
	h.pinsBehindFar(cols)
	var of, plain []int
	other, connector := false, -1
	if (&Block{Cols: cols}).Has(name.FieldDevicePin) {
		return false // said already
	}
	for i, c := range cols {
		last := endsWith(c.Head)
		switch {
		case c.Given, c.Alias, c.Headed, name.StateOf(c.Head) != name.Used: // "spare way" is a cell
		case (c.Field == name.FieldKeep || c.Of != "") && c.Field != name.FieldVia && (h.Words[last].Field == name.FieldPin ||
			words.IsPlaceOf(c.Head, last)):
			of = append(of, i)
		case c.Field == name.FieldFrom || c.Field == name.FieldTo:
			other = true
		case c.Field == name.FieldPin:
			plain = append(plain, i)
		case c.Field == name.FieldConnector || c.Field == name.FieldKeep && h.Words[last].Field == name.FieldConnector:
			connector = i
		case c.Field == name.FieldFromPin || c.Field == name.FieldToPin:
			return false
		}
	}
	switch {
	case len(of) == 0 || other && len(of) > 1 || len(plain) > 1:
		return false
	case len(plain) == 1 && len(of) == 1 && words.IsPortName(cols[plain[0]].Head) && !cols[plain[0]].Given:
		// What the board's maker calls the cavity, beside its number: "GPIO" beside "Board pin".
		cols[plain[0]].Field = name.FieldKeep
		h.ofDevice(&cols[of[0]], name.FieldPin)
		return true
	case len(plain) == 1 && len(of) == 1 && !other:
		h.ofDevice(&cols[of[0]], name.FieldToPin)
		if connector >= 0 && of[0] < connector { // "ECU pin | Engine connector | Pin"
			cols[of[0]].Field, cols[plain[0]].Field, cols[connector].Field = name.FieldFromPin, name.FieldToPin, name.FieldTo
		}
		return true
	case len(plain) == 0 && len(of) == 2 && connector > of[0] && of[1] == connector+1 && cols[connector].Field == name.FieldConnector &&
		words.Shortens(cols[of[1]].Head, cols[connector].Head): // "ECU pin | Label | Device | Dev pin"
		h.ofDevice(&cols[of[0]], name.FieldPin)
		cols[connector].Field, cols[of[1]].Field = name.FieldTo, name.FieldToPin
		return true
	case len(plain) == 1 || connector >= 0 && cols[connector].Field == name.FieldConnector && len(of) > 1:
		return false
	}
	fields := []name.Field{name.FieldFromPin, name.FieldToPin}
	if len(of) == 1 {
		fields[0] = name.FieldPin
	}
	for k, i := range of[:min(len(of), 2)] {
		h.ofDevice(&cols[i], fields[k])
	}
	h.devicesBeside(cols)
	return true
}

// endsWith is the last of the two to four words of a heading, which those before may be the device of: "pin" of "ECU pin"; "" of others.
func endsWith(head string) string {
	w := name.Words(name.WithoutBrackets(table.Fold(head)))
	if len(w) > 1 && len(w) < 5 && strings.Trim(w[0], "0123456789") != "" && !strings.Contains(head, ",") {
		return name.PinWordBehind(w)
	}
	return ""
}

// ofDevice makes a column the cavities of the device that its heading names.
func (h Headings) ofDevice(c *Column, f name.Field) {
	c.Field, c.Of = f, c.Head
	bare := strings.TrimSpace(name.WithoutBrackets(c.Head)) // "Screen pin (left)"
	if first, of, _ := strings.Cut(bare, " "); h.Words[table.Fold(first)].Field == name.FieldPin && len(h.pinHead(bare)) == 2 &&
		h.Words[table.Fold(of)].Field == "" {
		c.Of = of // "Pin FT"
		return
	}
	if cut := strings.LastIndexAny(bare, " -_/."); cut > 0 && !words.IsPortOfKind(table.Fold(bare)) {
		c.Of = strings.TrimRight(bare[:cut], " -_/.")
	}
}

// endsInValue reports whether the last word of a heading is one for what a wire is or does, "Loom side colour".
func (h Headings) endsInValue(head string) bool {
	switch h.Words[endsWith(head)].Field {
	case name.FieldColour, name.FieldGauge, name.FieldSignal, name.FieldLength, name.FieldCurrent, name.FieldNote, name.FieldSpec:
		return true
	}
	return false
}

// devicesBeside finds the column that names the device of a column of its cavities, "Sensor" beside "Sensor pin"; right before them it
// may be called a side of the thing, "Rig side" before "Rig pin".
func (h Headings) devicesBeside(cols []Column) {
	for i, pin := range cols {
		for k := range cols {
			c := &cols[k]
			beside := c.Field == name.FieldKeep && (k == i-1 && words.HeadsSide(c.Head, pin.Of) ||
				words.Shortens(pin.Of, c.Head) && !h.endsInValue(c.Head))
			if pin.Of == "" || c.Given || c.Field == pin.Field || table.Fold(c.Head) != table.Fold(pin.Of) && !beside {
				continue
			}
			switch pin.Field {
			case name.FieldFromPin:
				c.Field = name.FieldFrom
			case name.FieldToPin:
				c.Field = name.FieldTo
			case name.FieldPin:
				c.Field = name.FieldConnector
			}
		}
	}
}

// Sides settles what one heading alone does not say: of two headings "pin" the one
// behind "from" is its, a "No." is the wire's id in a from-to list and the pin in a
// table that has no other.
func (h Headings) Sides(cols []Column) {
	h.pinsOfDevice(cols)
	h.devicePins(cols)
	has := func(f name.Field) bool {
		return slices.ContainsFunc(cols, func(c Column) bool { return c.Field == f })
	}
	ends := has(name.FieldFrom) || has(name.FieldTo) || has(name.FieldFromPin) || has(name.FieldRun)
	h.italian(cols)
	side, seen := name.Field(""), map[name.Field]int{}
	for i := range cols {
		f := cols[i].Field
		switch {
		case f == name.FieldFrom || f == name.FieldTo:
			side = f
		case f == name.FieldPin && cols[i].Of == "" && ends && side == name.FieldFrom && !has(name.FieldFromPin):
			cols[i].Field = name.FieldFromPin
		case f == name.FieldPin && cols[i].Of == "" && ends && side == name.FieldTo && !has(name.FieldToPin):
			cols[i].Field = name.FieldToPin
		case f == name.FieldNumber && has(name.FieldTo) && has(name.FieldWire) && !has(name.FieldPin) && !has(name.FieldFrom) &&
			!has(name.FieldFromPin) && !has(name.FieldRun) && !has(name.FieldConnector):
			cols[i].Field = name.FieldPin // ids stand beside it, and nothing else says where the wires start
		case f == name.FieldNumber && i > 0 && !has(name.FieldPin) && !has(name.FieldFromPin) &&
			(cols[i-1].Field == name.FieldFrom || cols[i-1].Field == name.FieldConnector): // "From | Position", "Plug | No."
			cols[i].Field = name.FieldPin
			if cols[i-1].Field == name.FieldFrom {
				cols[i].Field = name.FieldFromPin
			}
		case f == name.FieldNumber && (ends || has(name.FieldPin)):
			another := has(name.FieldWire)
			cols[i].Field = name.FieldWire
			if another || !ends {
				cols[i].Field, cols[i].Running = name.FieldIgnore, true // a running number beside ids or pins
			}
		case f == name.FieldNumber:
			cols[i].Field = name.FieldPin
		}
		seen[cols[i].Field]++
	}
	for i := 1; i < len(cols); i++ {
		switch before := cols[i-1].Field; before {
		case name.FieldLength, name.FieldGauge, name.FieldCurrent:
			if cols[i].Field == name.FieldUnit || words.IsUnitHead(cols[i].Head) && !h.Given(cols[i].Head, i) &&
				cols[i].Field != name.FieldFrom {
				cols[i].Field, cols[i-1].Measured = name.FieldUnit, i
			}
		}
	}
	if has(name.FieldPin) && has(name.FieldFrom) && !has(name.FieldTo) && !has(name.FieldToPin) {
		// A pin table that says where its wires come from.
		for i := range cols {
			switch cols[i].Field {
			case name.FieldFrom:
				cols[i].Field = name.FieldTo
			case name.FieldFromPin:
				cols[i].Field = name.FieldToPin
			}
		}
	}
	if ends || seen[name.FieldConnector] < 2 && seen[name.FieldPin] < 2 {
		return
	}
	if seen[name.FieldConnector] > 2 && seen[name.FieldPin] == 2 {
		// Device, plug, pin, and the same of the other end.
		behind := false
		for i := range cols {
			switch f := cols[i].Field; {
			case f == name.FieldConnector && !behind:
				cols[i].Field = name.FieldFrom
			case f == name.FieldConnector:
				cols[i].Field = name.FieldTo
			case f == name.FieldPin && !behind:
				cols[i].Field, behind = name.FieldFromPin, true
			case f == name.FieldPin:
				cols[i].Field = name.FieldToPin
			}
		}
		return
	}
	// Connector, pin, connector, pin: the first of each is the from side.
	nth := map[name.Field]int{}
	for i := range cols {
		f := cols[i].Field
		nth[f]++
		switch {
		case f == name.FieldConnector && nth[f] == 1 && seen[f] == 2:
			cols[i].Field = name.FieldFrom
		case f == name.FieldConnector && nth[f] == 2:
			cols[i].Field = name.FieldTo
		case f == name.FieldPin && nth[f] == 1 && seen[name.FieldConnector] == 2:
			cols[i].Field = name.FieldFromPin
		case f == name.FieldPin && nth[f] == 2 && seen[name.FieldConnector] == 2:
			cols[i].Field = name.FieldToPin
		}
	}
}

// italian settles the one word "a": it is "to" where another heading says "from" and none
// "to", ampere where there is one, and in "A connettore" beside "Da connettore" no side A.
func (h Headings) italian(cols []Column) {
	from, to := false, false
	for i, c := range cols {
		switch f := table.Fold(c.Head); {
		case f == "a" || strings.HasPrefix(f, "a "):
		case c.Field == name.FieldToPin && i > 0 && table.Fold(cols[i-1].Head) == "a": // the cavity of that end
		case c.Field == name.FieldFrom || c.Field == name.FieldFromPin:
			from = true
		case c.Field == name.FieldTo || c.Field == name.FieldToPin:
			to = true
		}
	}
	for i, c := range cols {
		f := table.Fold(c.Head)
		switch {
		case h.Given(c.Head, i):
		case f == "a" && c.Field == name.FieldTo && to:
			cols[i].Field = name.FieldCurrent
		case strings.HasPrefix(f, "a ") && from && !to && c.Field == name.FieldFrom:
			cols[i].Field = name.FieldTo
		case strings.HasPrefix(f, "a ") && from && !to && c.Field == name.FieldFromPin:
			cols[i].Field = name.FieldToPin
		}
	}
}
