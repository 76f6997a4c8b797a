package audit

import (
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// namedSizes names the rows whose wire has no size and a name that ends in one, where other rows of the table have theirs: the name was
// likely a colour that nobody reads and a size.
//
//	A1 - zw 1,5 - to the frame
//	A2 - rd 1,5 - to fuse 3
func (a *auditor) namedSizes(t *Table) {
	var rows []table.Row
	what, sized := "", false
	for _, r := range t.Rows {
		for _, i := range a.row(t, r).wires {
			w := &a.im.H.Wires[i]
			if w.Size != "" {
				sized = true
				continue
			}
			if at := strings.LastIndexByte(w.Signal.V, ' '); at > 0 && isSizeInName(w.Signal.V[at+1:]) {
				rows = append(rows, r)
				if what == "" {
					what = w.Signal.V
				}
			}
		}
	}
	if sized {
		a.doubt("a name that ends in a size", t.At, what, "kept as the name, the wire has no size; part the two", rows)
	}
}

// isSizeInName reports whether the last word of a name is a size with decimals, as numbers of things have none.
func isSizeInName(word string) bool {
	if !strings.ContainsAny(word, ".,") || !value.IsDigit(word[len(word)-1]) {
		return false
	}
	_, ok := value.ParseGauge(word, value.BareMM2, value.MarkUnknown)
	return ok
}
