package settle

import (
	"slices"
	"strconv"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// cablesNamedOnce writes the cable into the rows below the one that names it, where its cores go on: each cable begins with core 1 and
// its rows count on, or each begins with one core and has none twice.
//
//	Multi | Core | Signal
//	M1    | 1    | live
//	      | 2    | neutral
//	M2    | 1    | live
func (l *Look) cablesNamedOnce() {
	cable := l.Holds(l.Cols, name.FieldCable)
	if cable < 0 || cable+1 >= len(l.Cols) || l.Prof[cable].Filled >= l.Prof[cable+1].Filled || !l.Prof[cable].Unique() {
		return
	}
	core, rows := cable+1, slices.Clone(l.Src.Rows)
	of, first, last, named, filled := "", "", 0, 0, 0
	counts, kinds := true, true
	seen := map[string]bool{} // in the cable in hand
	for k, r := range rows {
		if shape.IsText(r) || core >= len(r.Cells) {
			continue
		}
		text := table.Fold(r.Cells[core])
		n, err := strconv.Atoi(text)
		counts = counts && err == nil
		switch {
		case value.IsDitto(r.Cells[cable]):
		case r.Cells[cable] != "":
			of, seen = r.Cells[cable], map[string]bool{}
			if named++; named == 1 {
				first = text
			}
			counts, kinds = counts && n == 1, kinds && text == first
		default:
			counts, kinds = counts && of != "" && n == last+1, kinds && of != "" && text != "" && !seen[text]
			rows[k].Cells = slices.Clone(r.Cells)
			rows[k].Cells[cable] = of
			filled++
		}
		last, seen[text] = n, true
		if !counts && !kinds {
			return
		}
	}
	if filled == 0 || !counts && (named < 2 || !l.isCoreColumn(core)) {
		return
	}
	l.Src.Rows = rows
	l.Prof[cable] = column.Of(rows, cable, l.Lang, l.Mark, l.Heads.Colours)
}

// isCoreColumn reports whether a heading is of the cores of cables.
func (l *Look) isCoreColumn(i int) bool { return column.HeadsCores(l.Cols[i].Head) }
