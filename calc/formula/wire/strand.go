package wire

import "contralay/model/unit"

// StrandedArea is the copper of a conductor of n equal strands, in mm²:
//
//	A = n · π/4 · d²
//
// d the strand's diameter. The strands are cut square to their own axis: the
// small share by which twisting lengthens them belongs to mass and resistance,
// not to the area. False for n < 1 or d ≤ 0.
func StrandedArea(n int, d unit.Millimetre) (unit.SquareMM, bool) {
	if n < 1 || d <= 0 {
		return 0, false
	}
	a := float64(n) * float64(circle(d))
	return finite[unit.SquareMM](a)
}

// StrandedAreaAWG is StrandedArea of n strands of an AWG size, each of the
// rounded diameter, as the tables count them: 19 strands of 34 are
// 19 · 6.3² = 754 circular mils, sold as 22 AWG.
//
// Source: AC 43.13-1B table 11-9 agrees for every size but 22 AWG, where it
// prints 755.
func StrandedAreaAWG(n int, strand AWG) (unit.SquareMM, bool) {
	d, ok := strand.Rounded()
	if !ok {
		return 0, false
	}
	return StrandedArea(n, d)
}

// finite keeps infinities and NaN inside: false and zero instead.
func finite[Q ~float64](v float64) (Q, bool) {
	if !unit.Finite(v) {
		return 0, false
	}
	return Q(v), true
}
