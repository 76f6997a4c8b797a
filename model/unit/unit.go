package unit

import "math"

// Quantities. Each is a float64 in the unit of its name.
type (
	Millimetre      float64 // length and diameter
	Gram            float64 // mass
	Ampere          float64 // current
	Volt            float64 // electric potential
	Celsius         float64 // temperature on the Celsius scale
	Ohm             float64 // resistance
	OhmPerKilometre float64 // resistance of a length of wire; the same number as mΩ/m
	GramPerMetre    float64 // mass of a length; the same number as kg/km
	SquareMM        float64 // cross-section
	Degree          float64 // plane angle
	Radian          float64 // plane angle
	Ratio           float64 // a pure number
	GramPerCC       float64 // density
	WattPerMetre    float64 // heat of a length
	Conductivity    float64 // of heat, W/(m K)
	Second          float64 // time
	Metre           float64 // height above the sea
	AmpereSqSecond  float64 // ∫I²dt of a short circuit, A²s
	KilobitPerSec   float64 // bit rate
	Newton          float64 // force
)

// MillimetrePerInch is exact by definition (international inch, 1959).
const MillimetrePerInch = 25.4

// KilometrePerKilofoot turns Ω/1000 ft into Ω/km: 1 ÷ 0.3048, exact.
const KilometrePerKilofoot = 1 / 0.3048

// KilogramPerPound is exact by definition (international pound, 1959).
const KilogramPerPound = 0.45359237

// Finite reports whether v is a number that can be used: not NaN, not ±Inf.
func Finite(v float64) bool { return !math.IsNaN(v) && !math.IsInf(v, 0) }

// RoundHalfUp rounds v to a multiple of step, halves upward; v ≥ 0.
//
// A billionth of a step is added first, so that a decimal half that binary
// floating point stores a hair low (2.675) still goes up.
func RoundHalfUp(v, step float64) float64 {
	n := math.Floor(v/step + 0.5 + 1e-9)
	if per := math.Round(1 / step); step < 1 && math.Abs(per*step-1) < 1e-12 {
		return n / per // 189 × 0.01 is a hair over 1.89, 189 ÷ 100 is not
	}
	return n * step
}

// Written is a length as the program writes what it has made: to 0.01 mm. What a person gave
// stays as it was given.
func Written(v Millimetre) Millimetre {
	return Millimetre(math.Copysign(RoundHalfUp(math.Abs(float64(v)), 0.01), float64(v))) + 0
}

// UpTo returns the smallest multiple of step that is not below v.
// A value above a multiple by less than 1e-6 of a step counts as that multiple.
func UpTo(v, step float64) float64 {
	if step <= 0 {
		return v
	}
	return math.Ceil(v/step-1e-6)*step + 0 // +0: never −0
}
