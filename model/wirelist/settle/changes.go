package settle

import "contralay/model/wirelist/name"

// A list that is kept with its log says in each row who changed the wire last, and when: it is no table of changes.
//
//	Rev | Date  | By | Wire | From  | To     | Gauge | Colour | Change
//	A   | 3 May | ko | W1   | BOX:1 | LAMP:2 | 18    | red    | first issue

// TellsWires reports whether columns of the block tell wires: both ends, or a cavity, and what wire it is.
func (l *Look) TellsWires() bool {
	has := func(fields ...name.Field) bool { return l.Holds(l.Cols, fields...) >= 0 }
	return has(name.FieldColour, name.FieldGauge, name.FieldSpec) &&
		(has(name.FieldFrom, name.FieldFromPin) && has(name.FieldTo, name.FieldToPin) || has(name.FieldPin) || has(name.FieldRun))
}
