package reading

import (
	"strings"
	"unicode"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// partedEnds are the two columns of a table without headings whose cells are a device and its cavity, most of them, with any sign
// between, where the devices come again; nil where there are not just two.
//
//	W1 | PL1/A | WHEEL SPEED + | PL5/A        Fuse box-1A | Oil pressure | SP1
func (l *look) partedEnds() (of []int) {
	for i, p := range l.Prof {
		if p.Filled < 3 || p.All(p.Ends) || !l.arePartedEnds(i) {
			continue
		}
		of = append(of, i)
	}
	if len(of) != 2 {
		return nil
	}
	return of
}

// arePartedEnds reports whether a column holds such ends.
func (l *look) arePartedEnds(i int) bool {
	devices := map[string]int{}
	ends, filled := 0, 0
	for _, r := range l.Src.Rows[:min(len(l.Src.Rows), column.MostLooked)] {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) {
			continue
		}
		filled++
		device, pin, ok := name.SplitEnd(r.Cells[i])
		if !ok || !name.IsCavity(pin) && pin != "+" && pin != "-" || !strings.ContainsFunc(device, unicode.IsLetter) {
			continue
		}
		ends++
		devices[table.Fold(device)]++
	}
	return 5*ends >= 3*filled && 3*len(devices) <= 2*ends
}
