package lay

import (
	"math"
	"slices"

	"contralay/model/unit"
)

const twoPi = 2 * math.Pi

func sortUp(d []unit.Millimetre) { slices.Sort(d) }
