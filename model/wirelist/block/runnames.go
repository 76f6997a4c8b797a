package block

import (
	"slices"

	"contralay/model/wirelist/point"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/table"
)

// Cells of a row that package runline has parted.
const (
	runNote   = 6
	runSignal = 7
)

// tellBothEnds reports whether each of some rows tells both ends of a wire beyond doubt, so that the word it begins with is no cavity.
func tellBothEnds(rows []table.Row) bool {
	return !slices.ContainsFunc(rows, func(r table.Row) bool { return !runline.IsPlain(r.Cells[0]) })
}

// namesBehind takes what stands behind the values in every line for the names of the wires, where no line has a name and these are names
// of nets, hardly one of them twice. Remarks stand behind a few of the lines.
//
//	C1-1 to C7-1, 22 AWG yellow, CAN H
//	C1-2 to C7-2, 22 AWG green, CAN L
func namesBehind(rows []table.Row) {
	seen, nets := map[string]bool{}, 0
	for _, r := range rows {
		if len(r.Cells) <= runSignal || r.Cells[runSignal] != "" || r.Cells[runNote] == "" || !point.IsShortName(r.Cells[runNote]) {
			return
		}
		seen[table.Fold(r.Cells[runNote])] = true
		if point.IsNetLike(r.Cells[runNote]) {
			nets++
		}
	}
	if len(rows) < 2 || 4*len(seen) < 3*len(rows) || 2*nets < len(rows) {
		return
	}
	for i := range rows {
		rows[i].Cells[runNote], rows[i].Cells[runSignal] = "", rows[i].Cells[runNote]
	}
}
