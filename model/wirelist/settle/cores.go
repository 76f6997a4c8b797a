package settle

import (
	"slices"

	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/cableheads"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// countsCores reports whether a column headed as wires counts the cores of each cable, beside a column that names the cable:
// a number comes again, and never twice in one cable.
//
//	Cable | Core | Colour
//	W1    | 1    | red
//	W1    | 2    | black
//	W2    | 1    | brown
func (l *Look) countsCores(i int) bool {
	cable := l.Holds(l.Cols, name.FieldCable)
	if cable < 0 && column.HeadsCores(l.Cols[i].Head) {
		cable = l.Holds(l.Cols, name.FieldConnector)
	}
	if cable >= 0 && column.HeadsCores(l.Cols[i].Head) && cableheads.Made(l.Cols) {
		return true // another table counts its own from one again
	}
	if cable < 0 || cable == i || l.Prof[i].Filled < 2 || l.Prof[i].Distinct == l.Prof[i].Filled {
		return false
	}
	seen, of := map[string]bool{}, ""
	for _, r := range l.Src.Rows {
		if i >= len(r.Cells) || r.Cells[i] == "" || shape.IsText(r) {
			continue
		}
		if cable < len(r.Cells) && (r.Cells[cable] != "" || l.Cols[cable].Field == name.FieldCable) {
			of = r.Cells[cable]
		}
		if seen[of+"\x00"+r.Cells[i]] || seen["\x00"+r.Cells[i]] {
			return false // or the number of a wire that goes on in a cable
		}
		seen[of+"\x00"+r.Cells[i]] = true
	}
	return true
}

// cableWords reports whether each cell of a column is a kind of cable.
func (l *Look) cableWords(i int) bool {
	return !slices.ContainsFunc(l.Src.Rows, func(r table.Row) bool {
		return i < len(r.Cells) && r.Cells[i] != "" && !shape.IsText(r) && !cable.Words(r.Cells[i]).IsCable()
	})
}
