package sheet

import (
	"slices"

	"contralay/model/unit"
)

// SameSize is the difference below which two diameters are one size: half the last
// place a reel is measured to.
const SameSize unit.Millimetre = 0.005

// Stocked reports whether filler of a diameter comes off the shop's shelf, whatever else has
// that diameter: the shop says what its filler is of or withstands, and stocks that size, or
// does not say which sizes it stocks. Filler that does not, and is as thick as a wire, is
// that wire in white.
func Stocked(s *Sheet, d unit.Millimetre) bool {
	if s.Limits.FillerOf == "" && !s.Limits.FillerC.Set {
		return false
	}
	return len(s.Limits.FillerStock) == 0 || slices.ContainsFunc(s.Limits.FillerStock, func(stock unit.Millimetre) bool {
		return stock-d < SameSize && d-stock < SameSize
	})
}
