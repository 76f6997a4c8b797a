package grid

import (
	"math"
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Turned gives a table that stands on its side its rows back: its headings are the first cells of its lines.
//
//	Pin    | 1    | 2      | 3
//	Signal | Feed | Lamp   | Horn
//	Colour | red  | yellow | blue
//
// Every row of it is at the line of the first. rows is nil where the table does not stand so.
func Turned(h shape.Headings, t *table.Table) (rows []table.Row) {
	const most = 12 // lines that are still headings (no source)
	if h.HeadLine() > 0 || h.Numbered() || slices.ContainsFunc(t.Rows, h.IsHead) {
		return nil
	}
	var titles, lines []table.Row
	for _, r := range t.Rows {
		if len(lines) == 0 && shape.IsText(r) {
			titles = append(titles, r)
			continue
		}
		lines = append(lines, r)
	}
	if len(lines) < 2 || len(lines) > most {
		return nil
	}
	col := slices.IndexFunc(lines[0].Cells, func(c string) bool { return c != "" })
	if col < 0 {
		return nil
	}
	heads, wide := table.Row{Line: lines[0].Line}, 0
	for _, r := range lines {
		if col >= len(r.Cells) || r.Cells[col] == "" {
			return nil
		}
		heads.Cells = append(heads.Cells, r.Cells[col])
		wide = max(wide, len(r.Cells))
	}
	// The first line of a table that stands upright is headings, too.
	if wide < col+3 || !h.IsHead(heads) || !h.SaysNets(heads) || h.HeadWords(table.Row{Cells: lines[0].Cells[col+1:]}) ||
		headsColours(h, lines, col+1) {
		return nil
	}
	rows = append(titles, heads)
	spans := uint8(min(lines[len(lines)-1].Line-lines[0].Line+1, math.MaxUint8))
	for k := col + 1; k < wide; k++ {
		row := table.Row{Line: lines[0].Line, Spans: spans}
		for _, r := range lines {
			cell := ""
			if k < len(r.Cells) {
				cell = r.Cells[k]
			}
			row.Cells = append(row.Cells, cell)
		}
		if strings.Join(row.Cells, "") != "" {
			rows = append(rows, row)
		}
	}
	return rows
}

// headsColours reports whether a cell of the first line is headed as colours and all cells below it are some: the table stands upright,
// whatever its first column has. "Start" and "Stop" are names of nets there, and elsewhere the two ends of a wire.
//
//	Signal | Door plug | Colour
//	Start  | 1         | blue
//	Stop   | 2         | red
func headsColours(h shape.Headings, lines []table.Row, from int) bool {
	for k := from; k < len(lines[0].Cells); k++ {
		if h.Words[table.Fold(lines[0].Cells[k])].Field == name.FieldColour &&
			!slices.ContainsFunc(lines[1:], func(r table.Row) bool { return !value.NamesColour(cellOf(r, k)) }) {
			return true
		}
	}
	return false
}
