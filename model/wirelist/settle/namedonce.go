package settle

import (
	"slices"

	"contralay/model/wirelist/cableonce"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// cablesNamedOnce writes the cable into the rows below the one that names it, where its cores go on.
func (l *Look) cablesNamedOnce() {
	cable := l.Holds(l.Cols, name.FieldCable)
	if cable < 0 || cable+1 >= len(l.Cols) || l.Prof[cable].Filled >= l.Prof[cable+1].Filled || !l.Prof[cable].Unique() {
		return
	}
	if rows, ok := cableonce.Named(l.Src.Rows, cable, l.isCoreColumn(cable+1)); ok {
		l.Src.Rows = rows
		l.Prof[cable] = column.Of(rows, cable, l.Lang, l.Mark, l.Heads.Colours)
	}
}

// isCoreColumn reports whether a heading, or one that stands above it, is of the cores of cables.
func (l *Look) isCoreColumn(i int) bool {
	return column.HeadsCores(l.Cols[i].Head) || slices.ContainsFunc(l.Src.Head, func(r table.Row) bool {
		return i < len(r.Cells) && column.HeadsCores(r.Cells[i])
	})
}
