package spokenpins

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/toldcells"
)

// Cards makes rows of blocks of lines, each below the cavity that it tells. lines are those of each block, by its first.
//
//	pin 1
//	 brown 0.75
//	 supply
//	 to K1 pin 3
func Cards(h shape.Headings, t *table.Table) (rows []table.Row, lines map[int][]int) {
	if h.HeadLine() > 0 || h.Numbered() || len(t.Rows) < 2*least || len(t.Rows) > mostLines {
		return t.Rows, nil
	}
	const most = 6 // lines of a block (no source)
	var all []toldcells.Line
	with := map[int]int{}
	for i := 0; i < len(t.Rows); i++ {
		w := strings.Fields(toldcells.Text(t.Rows[i].Cells))
		if len(w) != 2 || !name.IsPinWord(table.Fold(w[0])) || !name.IsCavity(strings.TrimRight(w[1], ":.")) {
			continue
		}
		l := toldcells.Line{Row: i, Cells: []string{strings.TrimRight(w[1], ":.")}}
		k := i + 1
		for ; k < len(t.Rows) && t.Rows[k].Line == t.Rows[k-1].Line+1 && k <= i+most; k++ {
			text := toldcells.Text(t.Rows[k].Cells)
			if w := strings.Fields(text); len(w) == 2 && name.IsPinWord(table.Fold(w[0])) || len(w) > 2*most {
				break
			}
			l.Cells = append(l.Cells, text)
			with[k] = i
		}
		if len(l.Cells) > 1 {
			all = append(all, l)
		}
		i = k - 1
	}
	if len(all) < least {
		return t.Rows, nil
	}
	told := toldcells.Tell(all, toldcells.Unit(t.Rows), false)
	good, coloured, _ := told.Good()
	if 5*good < 4*len(told.Wires) || coloured < 2 || 2*coloured < good {
		return t.Rows, nil
	}
	told.Below(t.Rows)
	return told.Spread(t, with)
}
