package layers

import (
	"slices"
	"strings"

	"contralay/ui/bench/desk"
)

// What the tests reach for.
var (
	AddFiller = addFiller
	Lock      = lock
	Locked    = isLocked
	Move      = move
	Shift     = shift
)

// Working reports whether a row of the table waits for its figures.
func Working(m *desk.Model) bool {
	return slices.ContainsFunc(m.Page(m.ListWidth()).Rows, func(r desk.Row) bool { return strings.Contains(r.Line(), workingItOut) })
}
