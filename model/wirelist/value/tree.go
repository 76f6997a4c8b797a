package value

import (
	"math"

	"contralay/model/unit"
)

// MmText is a length to 0.1 mm, for a message.
func MmText(mm unit.Millimetre) string {
	return FormatLength(unit.Millimetre(math.Round(float64(mm)*10) / 10))
}
