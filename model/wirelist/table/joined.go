package table

import "contralay/model/wirelist/strokes"

// joinedPins adds to the tables of a text those that strokes between the pins of two parts make, in the place of what else the same
// lines were taken for.
func joinedPins(all map[int]setIn, lines []string) map[int]setIn {
	for _, run := range strokes.Find(lines) {
		for at, in := range all {
			if at < run.At+run.Lines && run.At < at+in.n {
				delete(all, at)
			}
		}
		var rows []Row
		for _, r := range run.Rows {
			row := Row{Line: r.At + 1, Cells: allMarked(r.Cells), Prose: r.Text, First: r.Head, Ruled: r.Head, Sketch: r.Drawn}
			rows = append(rows, row)
		}
		all[run.At] = setIn{rows, run.Lines}
	}
	return all
}
