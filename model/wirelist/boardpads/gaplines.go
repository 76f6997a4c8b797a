package boardpads

import (
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Gaps are the rows of a sheet, those of lines with a gap below a line that names both devices made a table, where the right of them are
// pads of a board.
//
//	Encoder to Pico:
//	                        Encoder pin | Pico pin
//	  A     GP10       ->   A           | GP10
//	  VCC   3V3             VCC         | 3V3
//	  GND   GND             GND         | GND
func Gaps(h shape.Headings, t *table.Table) []table.Row {
	rows := t.Rows
	if h.HeadLine() > 0 || h.Numbered() || h.Recipe != nil {
		return rows
	}
	for i := 0; i+leastRows < len(rows); i++ {
		if rows[i+1].Gap == nil || len(rows[i].Cells) != 1 {
			continue // most rows
		}
		near, far := arrow.TwoDevices(rows[i].Cells[0])
		x := columns{near: 1, far: 0, rows: gapsFrom(rows[i+1:]), wide: 2}
		if near == "" || strings.Contains(rows[i].Cells[0], " and ") || len(x.rows) < leastRows || !x.arePads() {
			continue
		}
		head := table.Row{Line: x.rows[0].Line, Cells: []string{near + " pin", far + " pin"}, Made: true, First: t.Marked, Ruled: t.Marked}
		rows = slices.Concat(rows[:i+1], []table.Row{head}, x.rows, rows[i+1+len(x.rows):])
		i += len(x.rows) + 1
	}
	return rows
}

// gapsFrom are the two parts of the lines with a gap that some rows begin with, up to the end of their paragraph; nil where some line of it
// has none, or more than the names of two pads.
func gapsFrom(rows []table.Row) (pairs []table.Row) {
	for k, r := range rows {
		if k > 0 && r.Line != rows[k-1].Line+1 {
			break
		}
		if r.Gap == nil || len(r.Cells) != 1 || strings.Contains(r.Gap[0], " ") || strings.Contains(r.Gap[1], " ") {
			return nil
		}
		one := r
		one.Cells, one.Gap, one.Drawn = []string{r.Gap[0], r.Gap[1]}, nil, nil
		one.Level, one.Prose, one.Point, one.Deep = 0, false, false, 0
		pairs = append(pairs, one)
	}
	return pairs
}
