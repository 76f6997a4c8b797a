package block

import (
	"strings"

	"contralay/model/wirelist/alike"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// drawnLines are what the rows from one on say, which draw an arrow from the cavities of what stands above them, each to a device, with
// its cavity and its values in columns; nil where they do not.
func (f *finder) drawnLines(i int) (lines []alike.Line) {
	rows := f.t.Rows
	if drawnCells(rows[i]) == nil || i > 0 && rows[i-1].Line == rows[i].Line-1 && drawnCells(rows[i-1]) != nil ||
		len(f.pending) == 0 && (f.current == nil || len(f.current.Rows) == 0) && len(f.path) == 0 {
		return nil
	}
	var cells [][]string
	drawn := 0
	for k, r := range rows[i:] {
		c := drawnCells(r)
		if c == nil || k > 0 && r.Line != rows[i+k-1].Line+1 {
			break
		}
		if r.Drawn != nil {
			drawn++
		}
		cells = append(cells, c)
	}
	if drawn < 2 {
		return nil
	}
	lines, _ = alike.Drawn(cells)
	return lines
}

// drawnCells are the cells of such a row, or of one among them whose cavity is free, "D7  not used"; nil of any other.
func drawnCells(r table.Row) []string {
	if r.Drawn != nil || !r.Prose || r.Level > 0 || len(r.Cells) != 1 {
		return r.Drawn
	}
	pin, rest, ok := strings.Cut(r.Cells[0], " ")
	if !ok || name.StateOf(rest) == name.Used {
		return nil
	}
	return []string{pin, strings.TrimSpace(rest)}
}

// listDrawn makes the block of such rows.
func (f *finder) listDrawn(rows []table.Row, lines []alike.Line) {
	for i, r := range rows {
		f.cavities[r.Line] = lines[i]
	}
	f.listAlike(rows)
}
