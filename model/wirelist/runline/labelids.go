package runline

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// idAt is the column of the id in the rows of a run list.
const idAt = 8

// LabelIDs takes what stands before the ends in every line for the ids of the wires, where these are letters alike with a number each, no
// two of them the same.
//
//	W1: PDM-1 → Fan-3 (red, 12 AWG)
//	W2: PDM-2 → Pump-1 (red/white, 14 AWG)
func LabelIDs(rows []table.Row) {
	seen, letters := map[string]bool{}, ""
	for _, r := range rows {
		if len(r.Cells) <= signalAt || len(r.Cells) > idAt && r.Cells[idAt] != "" {
			return
		}
		label := r.Cells[signalAt]
		of := strings.TrimRight(label, "0123456789")
		if !name.IsDesignator(label) || seen[label] || letters != "" && of != letters {
			return
		}
		seen[label], letters = true, of
	}
	if len(seen) < 2 || name.IsSpliceName(rows[0].Cells[signalAt]) {
		return
	}
	for i, r := range rows {
		cells := make([]string, max(len(r.Cells), idAt+1))
		copy(cells, r.Cells)
		cells[idAt], cells[signalAt] = cells[signalAt], ""
		rows[i].Cells = cells
	}
}
