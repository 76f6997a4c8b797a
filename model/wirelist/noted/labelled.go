package noted

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/stripname"
	"contralay/model/wirelist/table"
)

// The head of a paper has its labels in cells of one row, and among them the strip or the plug that the rows below are of.
//
//	Plant: | Conveyor 3 |  | Terminal strip: | -X4

// labelled gives the label of a strip or a plug, and its name in the next cell, a row of their own behind the others.
func (n *notes) labelled() {
	for i := 0; i < len(n.rows); i++ {
		r := n.rows[i]
		if k, _ := r.Filled(); k < 3 || r.Struck {
			continue
		}
		for c := range r.Cells {
			label, is := strings.CutSuffix(r.Cells[c], ":")
			at := c + 1
			for is && at < len(r.Cells) && r.Cells[at] == "" {
				at++
			}
			if !is || at >= len(r.Cells) || !name.IsDesignator(strings.Trim(r.Cells[at], "-= ")) {
				continue
			}
			text := label + ": " + r.Cells[at]
			if strip, _ := stripname.In(text); strip == "" && !name.IsConnectorWord(table.Fold(label)) {
				continue
			}
			rest := slices.Clone(r.Cells)
			rest[c], rest[at] = "", ""
			n.rows, n.own = slices.Insert(slices.Clone(n.rows), i+1, table.Row{Line: r.Line, Cells: []string{text}}), true
			n.rows[i].Cells = rest
			i++
			break
		}
	}
}
