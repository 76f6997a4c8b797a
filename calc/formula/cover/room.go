package cover

import "contralay/model/unit"

// Room is how much wider than what it passes a sleeve should be to slide
// easily, in mm, by the length it covers:
//
//	up to 100 mm 0.3 · at 500 mm 1.2 · at 1000 mm 2.0, linear between,
//	beyond + 0.16 per further 100 mm
//
// Common practice, no source: friction grows with length, and a sleeve that
// slides over a hand's breadth sticks over a metre. A length of zero or less
// needs what 100 mm needs.
func Room(length unit.Millimetre) unit.Millimetre {
	switch {
	case length > 500: // the slope beyond 1000 mm is that of 500 … 1000 mm: 0.8 in 500
		return min(1.2+(length-500)*0.8/500, longest)
	case length > 100:
		return 0.3 + (length-100)*0.9/400
	}
	return 0.3
}

// longest bounds Room so that an infinite length still gives a number; no
// tubing is anywhere near it.
const longest unit.Millimetre = 1e9
