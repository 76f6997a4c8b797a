package desk

import (
	"fmt"

	"contralay/calc/phase/ends"
)

// CapText is where a cap lies.
func (m *Model) CapText(c ends.Cap) string {
	if c.Branch < 0 {
		return "at " + c.Place
	}
	b := &m.H.Branches[c.Branch]
	return fmt.Sprintf("%s %s from %s on %s", m.Sys.Length(c.AtMM), m.Sys.Name(), b.From, b.ID)
}
