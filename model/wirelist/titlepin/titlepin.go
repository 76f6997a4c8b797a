// Package titlepin makes headings plain that name the plug of the title above them, "A pin" below "ECU plug A", and those that shorten the
// heading before them, "Dev. pin" behind "Device".
package titlepin

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Headed is the row of headings with such headings written as others write them.
//
//	Tram controller plug A (12 way)
//	A pin | Label | Device    | Dev. pin      ->      Pin | Label | Device    | Device pin
//	1     | Bell  | Bell coil | 2                     1   | Bell  | Bell coil | 2
func Headed(h shape.Headings, titles []table.Row, head table.Row) table.Row {
	at, several := -1, false
	isShort := false
	for i, c := range head.Cells {
		w := name.Words(table.Fold(c))
		if len(w) != 2 || !isPin(h, w[1]) {
			continue
		}
		if full := shortOf(head.Cells, i, w[0]); full != "" {
			isShort = true
			continue
		}
		if len(w[0]) < 3 && len(w[0]) > 0 {
			several = several || at >= 0
			at = i
		}
	}
	named := at >= 0 && !several && namesPlug(titles, name.Words(table.Fold(head.Cells[at]))[0])
	if !named && !isShort {
		return head
	}
	cells := slices.Clone(head.Cells)
	for i, c := range head.Cells {
		w := strings.Fields(c)
		if i == at && named {
			cells[i] = w[len(w)-1]
		} else if f := name.Words(table.Fold(c)); len(f) == 2 && isPin(h, f[1]) {
			if full := shortOf(head.Cells, i, f[0]); full != "" {
				cells[i] = full + " " + f[1]
			}
		}
	}
	head.Cells = cells
	return head
}

// isPin reports whether a word heads cavities.
func isPin(h shape.Headings, w string) bool { return h.Words[w].Field == name.FieldPin }

// shortOf is the heading right before one, where the first word of the one is short for it: "Dev." for "Device".
func shortOf(cells []string, i int, word string) string {
	const shortest = 3 // letters, "dev" (no source)
	if i == 0 || len(word) < shortest || !strings.Contains(cells[i], ".") {
		return ""
	}
	before := table.Fold(cells[i-1])
	if len(before) <= len(word) || !strings.HasPrefix(before, word) || strings.Contains(before, " ") {
		return ""
	}
	return cells[i-1]
}

// namesPlug reports whether a text above the table has a word for a connector and behind it the name of one.
func namesPlug(titles []table.Row, of string) bool {
	return slices.ContainsFunc(titles, func(r table.Row) bool {
		_, first := r.Filled()
		w := name.Words(table.Fold(first))
		for i := 1; i < len(w); i++ {
			if w[i] == of && name.IsConnectorWord(w[i-1]) {
				return true
			}
		}
		return false
	})
}
