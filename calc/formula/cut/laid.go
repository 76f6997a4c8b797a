package cut

import "contralay/model/unit"

// LaidLength is how much of a branch is laid, in mm:
//
//	laid = length − Σ (zone + over), not below 0
//
// over each end at a breakout, zone its length along the branch from the
// breakout's centre and over the bundle's diameter, before which the wires are
// already brought straight. A branch between two terminations has no zones. A
// zone below zero counts as none. That lay stops a diameter before the zone is
// common practice, no source. False for a negative length or over.
func LaidLength(length unit.Millimetre, zones []unit.Millimetre, over unit.Millimetre) (unit.Millimetre, bool) {
	if !(length >= 0) || !(over >= 0) || !finite(float64(length)) {
		return 0, false
	}
	for _, zone := range zones {
		if zone != zone {
			return 0, false
		}
		length -= max(zone, 0) + over
	}
	return max(length, 0), true
}

// Turns is how many turns a component makes in a branch: laid ÷ lay length. False
// for a lay length that is not above zero, and for a negative laid length.
func Turns(laid, lay unit.Millimetre) (unit.Ratio, bool) {
	turns := float64(laid) / float64(lay)
	if !(laid >= 0) || !(lay > 0) || !finite(turns) {
		return 0, false
	}
	return unit.Ratio(turns), true
}

func finite(vs ...float64) bool {
	for _, v := range vs {
		if !unit.Finite(v) {
			return false
		}
	}
	return true
}
