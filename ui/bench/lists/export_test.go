package lists

import (
	"contralay/ui/bench/desk"
)

// Taking is the list that is open.
func Taking(m *desk.Model) *importing { return opened(m).list }
