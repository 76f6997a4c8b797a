package runline

import (
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// The cells of a row of both ends are these two with their cavities, then colour, size, remark, name, number and length of the wire.
const (
	noteAt   = 6
	signalAt = 7
	lengthAt = 9
)

// Lengths takes a length out of the remark of each of such rows into a cell of its own: one with its unit, or, where every remark is a
// number alone, that. A few millimetres are of a stud or a sleeve.
func Lengths(rows []table.Row) {
	const least = 50 // mm (no source)
	bare := true
	for _, r := range rows {
		n := r.Cells[noteAt]
		mm, ok := value.ParseLength(n, "mm", value.MarkUnknown)
		bare = bare && ok && mm >= least && strings.Trim(n, "0123456789") == "" && len(r.Cells) <= lengthAt
	}
	for i, r := range rows {
		if len(r.Cells) > lengthAt || r.Cells[noteAt] == "" {
			continue
		}
		var left []string
		length, times := "", 0
		for p := range strings.SplitSeq(r.Cells[noteAt], "; ") {
			mm, ok := value.ParseLength(p, "", value.MarkUnknown)
			if bare && len(rows) > 1 || ok && mm >= least && strings.Trim(p, "0123456789.,") != "" {
				length = p
				times++
			} else {
				left = append(left, p)
			}
		}
		if times != 1 { // of two a person reads which is of what
			continue
		}
		cells := make([]string, lengthAt+1)
		copy(cells, r.Cells)
		cells[noteAt], cells[lengthAt] = strings.Join(left, "; "), length
		rows[i].Cells = cells
	}
}
