package block

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
)

// arrowPoints is how many rows from one on are the cavities of a connector, a point each, of which the most say what the wire is in
// brackets and behind an arrow where it goes; 0 where they are none. A list of both ends has its values behind the far end.
//
//	## P4 bilge (6 way)
//	- 1: pump (brown, 16 AWG) → switch 3
//	- 2: horn (pink, 18 AWG) → horn button
//	- 3: not connected
func (f *finder) arrowPoints(i int) int {
	rows := f.t.Rows
	if !f.isPoint(rows, i) || i > 0 && f.isPoint(rows, i-1) && rows[i-1].Deep == rows[i].Deep && rows[i-1].Point == rows[i].Point {
		return 0
	}
	n, arrows := 0, 0
	seen := map[string]bool{}
	for _, r := range rows[i:] {
		if i+n > len(rows)-1 || !f.isPoint(rows, i+n) || r.Deep != rows[i].Deep || r.Point != rows[i].Point || n > 0 &&
			r.Line != rows[i+n-1].Line+1 {
			break
		}
		pin, text, ok := point.Cut(r.Cells[0])
		if !ok || seen[pin] {
			return 0
		}
		seen[pin] = true
		front, far := point.CutArrow(text)
		switch _, values := point.ValuesBehind(front); {
		case far != "" && len(values) > 0 && point.IsShortName(far):
			arrows++
		case far != "" || !point.IsShortName(f.parts.Of(text).Signal) || name.StateOf(text) == name.Used && text != "" &&
			len(values) == 0:
			return 0
		}
		n++
	}
	if arrows < 2 || 2*arrows < n {
		return 0
	}
	return n
}
