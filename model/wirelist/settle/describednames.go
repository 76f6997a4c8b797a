package settle

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// describedNames takes a column that describes what another one names for notes: the short name is that of the net, where each
// cavity with a description has one, but for those that are free by it.
//
//	Pin | Signal name | Description
//	1   | X_CS0       | select of the first drum
//	2   | -           | not connected
func (l *Look) describedNames() {
	signal := l.Holds(l.Cols, name.FieldSignal)
	if signal < 0 || !words.SaysNameOfNet(l.Cols[signal].Head) {
		return
	}
	for i := signal + 1; i < len(l.Cols); i++ {
		c := &l.Cols[i]
		if c.Field != name.FieldSignal || c.Given || l.Prof[i].Filled == 0 || l.Prof[i].Sized > 0 || !words.IsDescription(c.Head) {
			continue
		}
		if !slices.ContainsFunc(l.Src.Rows, func(r table.Row) bool {
			return i < len(r.Cells) && !shape.IsText(r) && !value.IsNothing(r.Cells[i]) && value.IsNothing(r.Cells[signal]) &&
				name.StateOfNote(r.Cells[i]) == name.Used
		}) {
			c.Field = name.FieldNote
		}
	}
}
