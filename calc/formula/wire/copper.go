package wire

import "contralay/model/unit"

// Resistivity is that of annealed copper of 100 % IACS at 20 °C, in Ω·mm²/m;
// the standard value, exact by convention to five figures. IEC 60287-1-1 as quoted in
// a public file, second hand; 0.15328 Ω·g/m² ÷ 8.89 g/cm³ gives 0.017242.
const Resistivity = 0.017241

// The line of copper's resistance meets zero at −234.5 °C; 254.5 is 234.5 + 20.
// Source: AC 43.13-1B p. 11-22 (L2 = 254.5·L1 ÷ (234.5 + T2)).
const (
	copperZero = 234.5
	copperAt20 = 254.5
)

// IdealResistance is that of a copper cross-section at 20 °C, in Ω/km:
//
//	R20 = 1000 · 0.017241 / A
//
// A in mm². It is a lower bound: lay, plating and diameter tolerance bring the
// maxima that specifications print 6 % to 31 % above it (tin-plated 13 % to
// 21 %), so a printed maximum is always to be preferred. False for A ≤ 0.
func IdealResistance(a unit.SquareMM) (unit.OhmPerKilometre, bool) {
	if a <= 0 {
		return 0, false
	}
	return finite[unit.OhmPerKilometre](1000 * Resistivity / float64(a))
}

// ResistanceAt is the resistance of copper at another temperature, in Ω/km:
//
//	R(T) = R20 · (234.5 + T) / 254.5
//
// T in °C, the conductor's own. A straight line, good over the range wires are
// rated for (−75 … 260 °C); false at or below −234.5 °C, where it would not be
// positive, and for R20 < 0.
//
// Source: AC 43.13-1B p. 11-22, from its formula for the equivalent length.
func ResistanceAt(r20 unit.OhmPerKilometre, t unit.Celsius) (unit.OhmPerKilometre, bool) {
	if r20 < 0 || t <= -copperZero {
		return 0, false
	}
	return finite[unit.OhmPerKilometre](float64(r20) * (copperZero + float64(t)) / copperAt20)
}

// EquivalentLength is the run that at a conductor temperature t drops as much
// as the run l does at 20 °C, in mm:
//
//	L2 = 254.5 · L1 / (234.5 + T2)
//
// The longest run a drop chart allows (drawn for 20 °C) becomes the longest run
// for a wire that runs hot. False for l < 0 and at or below −234.5 °C.
//
// Source: AC 43.13-1B p. 11-22.
func EquivalentLength(l unit.Millimetre, t unit.Celsius) (unit.Millimetre, bool) {
	if l < 0 || t <= -copperZero {
		return 0, false
	}
	return finite[unit.Millimetre](copperAt20 * float64(l) / (copperZero + float64(t)))
}

// Drop is the voltage along one wire, in V:
//
//	U = I · R(T) · L · 10⁻⁶
//
// I in A, R(T) in Ω/km (r20 is its value at 20 °C), L in mm. The wire alone:
// no contacts, no return. False where ResistanceAt is, and for a negative
// current or length.
func Drop(i unit.Ampere, r20 unit.OhmPerKilometre, t unit.Celsius, l unit.Millimetre) (unit.Volt, bool) {
	r, ok := ResistanceAt(r20, t)
	if !ok || i < 0 || l < 0 {
		return 0, false
	}
	return finite[unit.Volt](float64(i) * float64(r) * float64(l) * 1e-6)
}
