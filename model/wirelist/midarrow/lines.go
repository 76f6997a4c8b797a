package midarrow

import (
	"strings"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// leastLines is how many rows with an arrow stand together without headings where that is no chance (no source).
const leastLines = 2

// isNoHead reports whether a row above arrows heads no columns: it is a text, or names none.
func isNoHead(h shape.Headings, r table.Row, at int) bool {
	n, _ := r.Filled()
	return n < 3 || !h.HeadWords(r) && !isStrokeAt(r, at)
}

// lineOf writes a row that has no headings as the line that it is: what stands between wide gaps behind the far end is parted by commas.
//
//	battery +        ->  fuse holder in   red    12 AWG
//	fuse holder out  ->  controller B+    red    12 AWG
func lineOf(cells []string, at int) string {
	join := func(cells []string) string {
		var all []string
		for _, c := range cells {
			if c != "" {
				all = append(all, c)
			}
		}
		return strings.Join(all, ", ")
	}
	return join(cells[:at]) + " " + cells[at] + " " + join(cells[at+1:])
}
