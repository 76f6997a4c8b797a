// Package label chooses the sleeve a harness end is named on. A marker sleeve shrinks like
// a tube, and is chosen by the same window: what it lies on fills at most four fifths of
// it as supplied and stands at least a tenth over what it recovers to.
//
// Where it sits is common practice, no source: 25 to 50 mm off the boot's tail, read from
// the connector, on the clocked side; AC 43.13-1B fig. 11-23 wants it within 76 mm of the
// termination.
package label

import "contralay/model/unit"

// Sleeve is a size of marker sleeve.
type Sleeve struct{ SuppliedMM, RecoveredMM, WallMM unit.Millimetre }

// sleeves are the 2:1 sizes of AS81531 type marker sleeves. Source: a maker's marker-tube
// specification.
var sleeves = [...]Sleeve{
	{3.2, 1.6, 0.25}, {4.8, 2.4, 0.25}, {6.4, 3.2, 0.30}, {9.5, 4.8, 0.30}, {12.7, 6.4, 0.30}, {19, 9.5, 0.43}, {25.4, 12.7, 0.48},
	{38, 19, 0.51},
}

// The window: a tubing maker's size-selection guide.
const (
	fill = 0.80
	grip = 1.10
	full = 0.85 // where no window holds: 2:1 sizes half as large again leave a gap of a twentieth
	hair = 1e-9 // mm: what the arithmetic loses
)

// Off is how far from the boot's tail a label sits.
const (
	OffLeast unit.Millimetre = 25
	OffMost  unit.Millimetre = 50
)

// For is the smallest sleeve whose window holds a diameter, that over the sheath, or,
// between two windows, one it fills a little further; false where none does.
func For(over unit.Millimetre) (Sleeve, bool) {
	for _, most := range []unit.Millimetre{fill, full} {
		for _, s := range sleeves {
			if over <= most*s.SuppliedMM+hair && over >= grip*s.RecoveredMM-hair {
				return s, true
			}
		}
	}
	return Sleeve{}, false
}
