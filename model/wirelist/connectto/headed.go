package connectto

import (
	"regexp"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/table"
)

// A line names both parts, and each line below has a pin of the first, what it carries, and a pad of the chip that the second is.
//
//	Header to lamp chip for the lamps:
//
//	  pin 3  BELL   GPIO4
//	  pin 5  LAMP   GPIO7 (bus 1)
var padLine = regexp.MustCompile(`^(?i:pin) (\d{1,3}) (?:- )?([^\s-]\S{0,15}) - (\S+)(?: \(([^()]*)\))?$`)

// headed are the rows of such lines from row i on, and how many they are; nil where they are none.
func headed(t *table.Table, rows []table.Row, i int) (made []table.Row, n int) {
	if !rows[i].Point && len(rows[i].Cells) != 3 || !isText(rows[i-1]) || rows[i-1].Line+2 < rows[i].Line {
		return nil, 0
	}
	title, ok := strings.CutSuffix(rows[i-1].Cells[0], ":")
	if title, _, _ = strings.Cut(title, " for "); !ok || strings.Contains(title, " and ") {
		return nil, 0
	}
	near, far := arrow.TwoDevices(title)
	if near == "" {
		return nil, 0
	}
	seen := map[string]bool{}
	for ; i+n < len(rows) && rows[i+n].Point == rows[i].Point && rows[i+n].Line == rows[i].Line+n; n++ {
		p := padLine.FindStringSubmatch(strings.Join(rows[i+n].Cells, " - "))
		if p == nil || seen[p[1]] || !pads.IsChipPad(p[3]) && !pads.IsSupply(p[3]) {
			return nil, 0
		}
		seen[p[1]] = true
		made = append(made, cellsOf(rows[i+n], near, p[1], far, p[3], p[2], p[4]))
	}
	if n < leastRows {
		return nil, 0
	}
	return append([]table.Row{head(t, rows[i].Line, "From", "From pin", "To", "To pin", "Signal", "Note")}, made...), n
}
