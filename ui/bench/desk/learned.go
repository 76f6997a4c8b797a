package desk

import (
	"contralay/model/unit"
)

// PlusMinus is a difference with its sign.
func (m *Model) PlusMinus(v unit.Millimetre) string {
	if v < 0 {
		return "-" + m.Sys.Fine(-v)
	}
	return "+" + m.Sys.Fine(v)
}
