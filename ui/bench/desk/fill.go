package desk

import (
	"contralay/calc/phase/ends"
	"contralay/model"
)

// Offer is one use of a vacant place.
type Offer struct {
	Layer int
	Says  string
	What  string
	Make  func(m *Model) (*model.Harness, string)
	Why   []Reason
}

func (m *Model) FreeFor(t int, w model.Wire) []string {
	var out []string
	for _, c := range m.Sheet.Terms[t].Free {
		if ends.Takes(m.Sheet, t, c, w.Spec, w.Size) {
			out = append(out, c)
		}
	}
	return out
}
