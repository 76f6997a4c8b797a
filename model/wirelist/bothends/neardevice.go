package bothends

import (
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// NearDevice takes a column right before the near cavities for the devices that they are of, whatever its heading, beside a column of
// far ends: its cells come again as far ends, or are several names of which none has one of its cavities twice where the far ends have
// cavities of their own.
//
//	Piece    | Pin | Colour | Goes to  | Pin
//	Dimmer   | 1   | red    | Fuse box | 4
//	Dimmer   | 2   | white  | Lamp     | 1
//	Fuse box | 9   | blue   | Dimmer   | 3
func NearDevice(cols []shape.Column, prof []column.Profile, rows []table.Row) {
	pin, to, farPins := -1, -1, false
	for i := range prof {
		if prof[i].Filled == 0 {
			continue
		}
		switch cols[i].Field {
		case name.FieldFrom, name.FieldFromPin, name.FieldRun, name.FieldVia, name.FieldConnector, name.FieldDevicePin:
			return
		case name.FieldPin:
			if pin >= 0 {
				return
			}
			pin = i
		case name.FieldTo:
			to = i
		case name.FieldToPin:
			farPins = true
		}
	}
	if pin < 1 || to < pin || cols[pin].Of != "" {
		return
	}
	l, near := look{cols, prof, rows}, pin-1
	if c, p := &cols[near], &prof[near]; l.areNear(near) && p.Ends == 0 && p.States == 0 &&
		(l.comeAsEnds(near, to) || farPins && p.Distinct > 1 && p.Distinct < p.Filled && p.Most(p.Long) && !prof[pin].Unique() &&
			!isClass(c.Head) && column.PairsOnce(rows, near, pin)) {
		c.Field = name.FieldConnector
		c.Know()
	}
}

// areNear reports whether a column holds names that nobody knows, or stands below a word for a row of the list and has no numbers: "Item"
// over "Hitch box".
func (l look) areNear(i int) bool {
	switch l.cols[i].Field {
	case name.FieldKeep:
		return l.areThings(i)
	case name.FieldWire, name.FieldNumber:
		p := &l.prof[i]
		return !l.cols[i].Given && p.Filled > 0 && p.Numbers+p.Colours+p.Sized == 0 && p.Distinct < p.Filled && 4*p.Prose <= p.Filled
	}
	return false
}

// comeAsEnds reports whether a cell of a column of devices is a far end of another row, alone or before its cavity.
func (l look) comeAsEnds(near, to int) bool {
	devices := map[string]bool{}
	for _, r := range l.rows[:min(len(l.rows), column.MostLooked)] {
		if near < len(r.Cells) && r.Cells[near] != "" && !shape.IsText(r) {
			devices[table.Fold(r.Cells[near])] = true
		}
	}
	for _, r := range l.rows[:min(len(l.rows), column.MostLooked)] {
		if to >= len(r.Cells) || r.Cells[to] == "" || near >= len(r.Cells) || shape.IsText(r) {
			continue
		}
		end := table.Fold(r.Cells[to])
		if at := strings.LastIndexAny(end, " :.-/"); at > 0 && !devices[end] && name.IsCavity(strings.ToUpper(end[at+1:])) {
			end = strings.TrimRight(end[:at], " :")
		}
		if devices[end] && end != table.Fold(r.Cells[near]) {
			return true
		}
	}
	return false
}

// isClass reports whether a heading sorts the rows and names no devices.
func isClass(head string) bool {
	for _, w := range name.Words(table.Fold(head)) {
		switch w {
		case "type", "group", "kind", "class", "category", "zone", "bay", "area", "side", "layer", "direction", "mode", "system",
			"typ", "gruppe", "art", "bereich", "seite", "groupe", "genre", "cote", "tipo", "grupo", "gruppo", "zona", "lado", "lato",
			"groep", "soort", "grupp", "grupa", "rodzaj", "skupina", "druh":
			return true
		}
	}
	return false
}
