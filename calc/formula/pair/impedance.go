package pair

import (
	"math"
	"strings"

	"contralay/model/unit"
)

// Permittivity is that of an insulation by its name in the catalogue, and whether it
// is a soft one. ETFE 2.6 and PTFE 2.1 (Springer Handbook of Condensed Matter and
// Materials Data, table 3.3-12, at 100 Hz), solid polyethylene 2.3 (a cable maker's
// table). False for another.
func Permittivity(insulation string) (er unit.Ratio, soft, ok bool) {
	switch {
	case strings.Contains(insulation, "ETFE"):
		return 2.6, false, true
	case strings.Contains(insulation, "PTFE"):
		return 2.1, true, true
	case strings.Contains(insulation, "polyethylene"):
		return 2.3, false, true
	}
	return 0, false, false
}

// Fitted is the range of twist angles, in degrees, that the formula of Impedance is
// best for.
const (
	FittedFrom unit.Degree = 20
	FittedTo   unit.Degree = 45
)

// Impedance is the characteristic impedance of a twisted pair alone, and its angle of
// twist:
//
//	Z = (119.9/√εe) · acosh(D/d),   εe = 1 + q (εr − 1)
//	q = 0.25 + 0.0004 θ²  (0.001 for soft insulation),   θ = atan(π D / lay) in degrees
//
// D finished and d conductor diameter, lay the length of one turn (0: not twisted), mm.
// False unless D > d > 0 and εr ≥ 1.
//
// Source: Lefferson 1971, as three technical papers on the net quote it. One of them
// drops the step from q to εe, one works θ in radians, which removes the twist.
func Impedance(over, conductor, lay unit.Millimetre, er unit.Ratio, soft bool) (unit.Ohm, unit.Degree, bool) {
	if !(conductor > 0) || !(over > conductor) || !(er >= 1) || !(lay >= 0) || !unit.Finite(float64(over)) {
		return 0, 0, false
	}
	theta := 0.0
	if lay > 0 {
		theta = math.Atan(math.Pi*float64(over/lay)) * 180 / math.Pi
	}
	per := 0.0004
	if soft {
		per = 0.001
	}
	e := 1 + (0.25+per*theta*theta)*(float64(er)-1)
	z := 119.9 / math.Sqrt(e) * math.Acosh(float64(over/conductor))
	return unit.Ohm(z), unit.Degree(theta), unit.Finite(z)
}
