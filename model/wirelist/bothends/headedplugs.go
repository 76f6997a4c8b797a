package bothends

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// EndsUnderPlugs takes a column for the ends themselves where its heading asks for a connector and its cavity, "Plug A / Pin": each
// cell has both.
//
//	Signal | Plug A / Pin | Plug B / Pin
//	Temp + | X2/4         | B7/1
func EndsUnderPlugs(cols []shape.Column, rows []table.Row) {
	var at [2]int
	n := 0
	for i, c := range cols {
		switch c.Field {
		case name.FieldFrom, name.FieldTo, name.FieldRun:
			return
		case name.FieldPin, name.FieldConnector:
			return
		case name.FieldFromPin, name.FieldToPin, name.FieldKeep:
			switch both := asksForBoth(c.Head) && column.AllParted(rows, i); {
			case !both && c.Field == name.FieldKeep:
				continue
			case !both || c.Given || n == len(at):
				return
			}
			at[n] = i
			n++
		}
	}
	if n < len(at) {
		return
	}
	for k, i := range at {
		cols[i].Field, cols[i].Of = []name.Field{name.FieldFrom, name.FieldTo}[k], ""
		cols[i].Know()
	}
}

// asksForBoth reports whether a heading has a word for a connector and behind it one for a cavity.
func asksForBoth(head string) bool {
	w := name.Words(table.Fold(head))
	plug := slices.IndexFunc(w, name.IsConnectorWord)
	return plug >= 0 && len(w) > plug+1 && slices.ContainsFunc(w[plug+1:], name.IsPinWord) && strings.ContainsAny(head, "/-.,+&")
}

// PlugsOfUnits takes a column right before the cavities of a unit, headed by the unit and a word for a connector, for the plugs that
// they are of. A letter or a number alone is that of a plug of the unit. isPlug tells the
// words for connectors.
//
//	Signal | ECU conn | ECU pin | Device | Device pin
//	CKP    | A        | 12      | CKP    | 1
//	CLT    | B        | 3       | CLT    | 1
func PlugsOfUnits(cols []shape.Column, rows []table.Row, isPlug func(word string) bool) []table.Row {
	for i := 1; i < len(cols); i++ {
		pin, plug := &cols[i], &cols[i-1]
		side := map[name.Field]name.Field{name.FieldFromPin: name.FieldFrom, name.FieldToPin: name.FieldTo,
			name.FieldPin: name.FieldConnector}[pin.Field]
		if side == "" || pin.Given || plug.Given || plug.Field != name.FieldKeep && plug.Field != side {
			continue
		}
		w := strings.Fields(plug.Head)
		if len(w) < 2 || !isPlug(table.Fold(w[len(w)-1])) || !everyRow(rows, i-1, i) {
			continue
		}
		unit := strings.Join(w[:len(w)-1], " ")
		if pin.Of == "" && !words.HeadsUnit(name.Words(table.Fold(unit))) || pin.Of != "" && table.Fold(unit) != table.Fold(pin.Of) ||
			pin.Of == "" && !strings.HasPrefix(table.Fold(pin.Head), table.Fold(unit)+" ") {
			continue
		}
		rows = callPlugs(rows, i-1, unit)
		plug.Field, pin.Of = side, ""
		plug.Know()
	}
	return rows
}

// everyRow reports whether each row with a cavity has its plug, a name without blanks.
func everyRow(rows []table.Row, plug, pin int) bool {
	for _, r := range rows {
		if pin < len(r.Cells) && !value.IsNothing(r.Cells[pin]) && !shape.IsText(r) &&
			(value.IsNothing(r.Cells[plug]) || strings.Contains(r.Cells[plug], " ")) {
			return false
		}
	}
	return true
}

// callPlugs writes the unit before each plug that is one letter or number, in rows of its own.
func callPlugs(rows []table.Row, at int, unit string) []table.Row {
	all := slices.Clone(rows)
	for k, r := range all {
		if at >= len(r.Cells) || value.IsNothing(r.Cells[at]) {
			continue
		}
		if c := r.Cells[at]; len(c) < 3 && !(value.IsLetter(c[0]) && value.HasDigit(c)) {
			all[k].Cells = slices.Clone(r.Cells)
			all[k].Cells[at] = unit + " " + r.Cells[at]
		}
	}
	return all
}
