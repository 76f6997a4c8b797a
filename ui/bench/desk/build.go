package desk

import (
	"fmt"

	"contralay/model"
)

// LengthText is a branch's length with where it is taken from, its tolerance, and who
// took it.
func (m *Model) LengthText(b *model.Branch) string {
	end := func(id string) string {
		if t, ok := m.Sheet.X.Termination[id]; ok {
			if d := m.H.Terminations[t].Datum.V; d != "" {
				return string(d) + " of " + id
			}
			return id
		}
		return "the centre of " + id
	}
	text := fmt.Sprintf("%s %s from %s to %s", m.Sys.Length(b.LengthMM), m.Sys.Name(), end(b.From), end(b.To))
	if t := b.ToleranceMM; len(t) == 2 {
		text += fmt.Sprintf(", -%s +%s", m.Sys.Length(t[0]), m.Sys.Length(t[1]))
	}
	if m.H.Head.MockUp.V != "" {
		text += "; mock-up: " + m.H.Head.MockUp.V
	}
	return text
}
