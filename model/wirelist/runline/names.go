package runline

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
)

// TellBothEnds reports whether each of some rows tells both ends of a wire beyond doubt, so that the word it begins with is no cavity.
func TellBothEnds(rows []table.Row) bool {
	return !slices.ContainsFunc(rows, func(r table.Row) bool { return !IsPlain(r.Cells[0]) })
}

// NamesBehind takes what stands behind the values in every line for the names of the wires, where no line has a name and these are names
// of nets, hardly one of them twice. Remarks stand behind a few of the lines.
//
//	C1-1 to C7-1, 22 AWG yellow, CAN H
//	C1-2 to C7-2, 22 AWG green, CAN L
func NamesBehind(rows []table.Row) {
	seen, nets := map[string]bool{}, 0
	all := rows
	rows = slices.DeleteFunc(slices.Clone(rows), isFree)
	for _, r := range rows {
		if len(r.Cells) <= signalAt || r.Cells[signalAt] != "" || r.Cells[noteAt] == "" || !point.IsShortName(r.Cells[noteAt]) {
			return
		}
		seen[table.Fold(r.Cells[noteAt])] = true
		if point.IsNetLike(r.Cells[noteAt]) {
			nets++
		}
	}
	if len(rows) < 2 || 4*len(seen) < 3*len(rows) || 2*nets < len(rows) {
		return
	}
	for _, r := range all {
		if !isFree(r) {
			r.Cells[noteAt], r.Cells[signalAt] = "", withoutEnd(r)
		}
	}
}

// withoutEnd is the note of a row without the far end that it says it stands behind, "fan relay pin 85: fan control".
func withoutEnd(r table.Row) string {
	if end, called, ok := strings.Cut(r.Cells[noteAt], ": "); ok && r.Cells[farAt] != "" && strings.HasPrefix(end, r.Cells[farAt]) {
		return called
	}
	return r.Cells[noteAt]
}

// farAt is the column of the far end in the rows of a run list.
const farAt = 2

// isFree reports whether a row of a run list has the state of its cavity in the place of the far end.
func isFree(r table.Row) bool {
	return len(r.Cells) > farAt && name.StateOf(r.Cells[farAt]) != name.Used
}
