package column

import (
	"strings"

	"contralay/model/wirelist/table"
)

// IsAside reports whether a row below the headings says more of them, each of its cells in brackets, "(24 way)".
func IsAside(r table.Row) bool {
	n := 0
	for _, c := range r.Cells {
		if c == "" {
			continue
		}
		if !strings.HasPrefix(c, "(") || !strings.HasSuffix(c, ")") {
			return false
		}
		n++
	}
	return n > 1
}
