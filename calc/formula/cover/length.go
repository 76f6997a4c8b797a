package cover

import "contralay/model/unit"

const (
	// OverlapMM is how far a sleeve reaches under a boot or into a transition:
	// 15 mm. Source: a VG handbook on boots and tubing, read in a quotation;
	// applied to transitions by analogy.
	OverlapMM unit.Millimetre = 15

	// OverlapDiameters is the same handbook's other rule, 1.5 times the diameter
	// of the cable: the larger of the two above a cable of 10 mm.
	OverlapDiameters unit.Ratio = 1.5
)

// CutLength is what to cut of a sleeve that is to be as long as finished when
// it has recovered, in mm:
//
//	cut = finished / (1 − c), up to the next multiple of step
//
// c the share it shortens by at most. A sleeve that is long can be trimmed; one
// that is short cannot. A step of zero or less leaves the length unrounded.
// False for a negative length and for c outside 0 … 1.
//
// Source: the definition of longitudinal change, C = (L1 − L0)/L0 after free
// recovery, in a component specification.
func CutLength(finished unit.Millimetre, c unit.Ratio, step unit.Millimetre) (unit.Millimetre, bool) {
	if !(finished >= 0) || !(c >= 0 && c < 1) || !finite(step) {
		return 0, false
	}
	cut := max(unit.UpTo(float64(finished)/(1-float64(c)), float64(step)), 0) // never −0
	if !unit.Finite(cut) {
		return 0, false
	}
	return unit.Millimetre(cut), true
}
