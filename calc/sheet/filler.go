package sheet

import (
	"contralay/model/unit"
)

// SameSize is the difference below which two diameters are one size: half the last
// place a reel is measured to.
const SameSize unit.Millimetre = 0.005
