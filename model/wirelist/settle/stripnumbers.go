package settle

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

// stripNumbers takes a column of numbers for the cavities of what a title names, where each row says one end alone, the far one: the
// title has a word for a strip or a plug, some number is free, or the numbers begin again below another title.
//
//	## Terminal strip T4
//	No | Function | Colour | To
//	1  | live     | black  | Heater 1
//	2  | spare    |        |
func (l endColumns) stripNumbers() {
	if l.AnotherPin(-1) || l.Has(l.Cols, name.FieldFrom, name.FieldFromPin, name.FieldToPin, name.FieldRun, name.FieldVia,
		name.FieldConnector, name.FieldDevicePin) || l.Titled() == "" {
		return
	}
	if i := l.Holds(l.Cols, name.FieldWire); i >= 0 && (l.Prof[i].Most(l.Prof[i].Ids) || l.Cols[i].Given) {
		return // "Circuit" is as often a name
	}
	number, to := l.Holds(l.Cols, name.FieldNumber), l.Holds(l.Cols, name.FieldTo)
	if number < 0 || to < 0 || l.Cols[number].Given || l.Cols[to].Given {
		return
	}
	p := &l.Prof[number]
	if !p.Unique() || !p.All(p.Cavities) || p.Filled < 2 || !words.NamesStrip(l.Titled()) && !l.saysFree(number, to) && !l.beginsAgain() {
		return
	}
	l.Cols[number].Field = name.FieldPin
}

// saysFree reports whether some row has a number, no far end, and nothing else but a word that the place is free.
func (l endColumns) saysFree(number, to int) bool {
	return slices.ContainsFunc(l.Src.Rows[:min(len(l.Src.Rows), column.MostLooked)], func(r table.Row) bool {
		free := false
		for i, c := range r.Cells {
			switch {
			case i == number || value.IsNothing(c):
			case i == to || name.StateOf(c) == name.Used:
				return false
			default:
				free = true
			}
		}
		return free && number < len(r.Cells) && r.Cells[number] != "" && !shape.IsText(r)
	})
}

// beginsAgain reports whether the sheet has the headings of the block more than once, each with a count from one below it.
func (l endColumns) beginsAgain() bool {
	if len(l.Src.Head) != 1 {
		return false
	}
	rows, n := l.Src.Table.Rows, 0
	for i, r := range rows[:min(len(rows), column.MostLooked)] {
		if i+1 < len(rows) && slices.Equal(r.Cells, l.Src.Head[0].Cells) {
			_, first := rows[i+1].Filled()
			if strings.Trim(first, " .)") != "1" {
				return false
			}
			n++
		}
	}
	return n > 1
}
