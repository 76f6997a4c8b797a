package desk

import (
	"strings"

	"contralay/model/unit"
)

// Big is the one number that is being worked on: what is typed, else that of the
// row in hand, else over.
func (m *Model) Big(r *Row) (figure, words string) {
	if e := m.Entry; e != nil {
		if e.Number {
			return e.Draft, strings.TrimSpace(e.Unit + "  " + e.Label)
		}
		return "", ""
	}
	if r != nil && r.Big != "" {
		return r.Big, r.BigSays
	}
	seen := m
	if r != nil && r.Show != nil {
		seen = r.Show(m)
	}
	mb, b, ok := seen.B()
	if !ok || b.OverMM <= 0 {
		return "", ""
	}
	return m.Sys.Diameter(b.OverMM), m.Sys.Name() + "  over of " + mb.ID
}

// Of fills in a row's large figure.
func (r Row) Of(figure, words string) Row {
	r.Big, r.BigSays = figure, words
	return r
}

// DiameterOf is a row with a diameter as its large figure.
func (m *Model) DiameterOf(r Row, v unit.Millimetre, words string) Row {
	return r.Of(m.Sys.Diameter(v), m.Sys.Name()+"  "+words)
}
