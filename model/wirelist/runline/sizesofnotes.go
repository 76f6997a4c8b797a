package runline

import (
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// sizeAt and colourAt are the columns of the size and the colour in the rows of a run list.
const (
	colourAt = 4
	sizeAt   = 5
)

// SizesOfNotes takes what stands behind the colours for the sizes, where every line that tells a wire has a cross section there and no
// size: lines of free cavities among them keep the others from being read together.
//
//   - X4:7 → S5:13, white, 0.5
//   - X4:8 → S5:14, brown, 0.5
//   - X4:11 free
func SizesOfNotes(rows []table.Row) {
	n := 0
	for _, r := range rows {
		if len(r.Cells) <= signalAt || isFree(r) {
			continue
		}
		if r.Cells[sizeAt] != "" || r.Cells[colourAt] == "" || !value.IsSection(r.Cells[noteAt]) {
			return
		}
		n++
	}
	if n < 2 {
		return
	}
	for _, r := range rows {
		if len(r.Cells) > signalAt && !isFree(r) {
			r.Cells[sizeAt], r.Cells[noteAt] = r.Cells[noteAt], ""
		}
	}
}
