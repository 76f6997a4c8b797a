package bothends

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// FullSide turns the rows round where they hang on the far end: each row has it, connector and cavity, and stands before a plug
// and its cavity that some rows do not have. Else what the box has no plug for would be no wire.
//
//	Box out | Limit | Load    | Plug | Plug pin
//	P1-1    | 20A   | Horn    | X31  | A
//	P1-2    |       | spare   |      |
func FullSide(cols []shape.Column, prof []column.Profile, rows []table.Row) {
	far, plug, pin := -1, -1, -1
	for i, c := range cols {
		if i >= len(prof) || prof[i].Filled == 0 {
			continue
		}
		at := map[name.Field]*int{name.FieldTo: &far, name.FieldConnector: &plug, name.FieldPin: &pin}[c.Field]
		switch {
		case c.Field == name.FieldFrom || c.Field == name.FieldFromPin || c.Field == name.FieldRun || c.Field == name.FieldToPin:
			return
		case at == nil:
		case *at >= 0 || c.Given:
			return
		default:
			*at = i
		}
	}
	if far < 0 || plug < far || pin < far || prof[pin].Filled >= prof[far].Filled ||
		!(prof[far].All(prof[far].Ends) || column.AllParted(rows, far)) {
		return
	}
	cols[far].Field, cols[plug].Field, cols[pin].Field = name.FieldFrom, name.FieldTo, name.FieldToPin
}
