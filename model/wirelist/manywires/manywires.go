package manywires

import (
	"strings"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/toldcells"
)

const (
	least     = 3    // wires (no source)
	mostLines = 2000 // a longer list is made by a program, which does not write lines of this kind (no source)
	longest   = 600  // bytes of a line (no source)
)

// signs part the wires of a line.
var signs = []string{" / ", "; ", " | ", ", "}

// Rows makes rows of a table of such lines; they are as they were where there are none.
func Rows(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() || len(t.Rows) > mostLines || toldcells.HasHeads(h, t.Rows) {
		return t.Rows // a person has said where its columns are
	}
	texts := make([]string, len(t.Rows))
	some := false
	for i, r := range t.Rows {
		if r.Drawn != nil || r.Sketch {
			return t.Rows // others read it
		}
		if r.Level > 0 || r.Struck {
			continue
		}
		if texts[i] = toldcells.Text(r.Cells); len(texts[i]) > longest {
			texts[i] = ""
		}
		for _, s := range signs {
			some = some || strings.Contains(texts[i], s)
		}
	}
	if !some {
		return t.Rows
	}
	unit := toldcells.Unit(t.Rows)
	for _, of := range []func([]string, string) (toldcells.Told, bool){byColour, ofPlugs, ofStrip} {
		if told, ok := of(texts, unit); ok {
			told.Below(t.Rows)
			rows, _ := told.Spread(t, nil)
			return rows
		}
	}
	return t.Rows
}
