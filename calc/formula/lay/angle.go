package lay

import (
	"math"

	"contralay/model/unit"
)

// TakeUp returns wire length ÷ bundle length of a wire that winds at radius R
// with lay length L.
//
//	k = √(1 + (2πR/L)²)
//
// R, L in mm, R ≥ 0, L > 0; where L ≤ 0 the wire counts as straight and k = 1.
// Source: geometry of the helix; the form π²/(L/D)² is the one of the ASTM
// stranding standards (from memory, not verified).
func TakeUp(radius, lay unit.Millimetre) unit.Ratio {
	return unit.Ratio(1 / cosLay(float64(radius), float64(lay)))
}

// LayAngle returns the angle between wire and bundle axis, tan λ = 2πR/L.
func LayAngle(radius, lay unit.Millimetre) unit.Degree {
	if lay <= 0 {
		return 0
	}
	return unit.Degree(math.Atan(2*math.Pi*float64(radius)/float64(lay)) * 180 / math.Pi)
}

func cosLay(radius, lay float64) float64 {
	if lay <= 0 {
		return 1
	}
	t := 2 * math.Pi * radius / lay
	return 1 / math.Sqrt(1+t*t)
}

// NeighbourAngle is the angle round the axis that two touching neighbours of
// diameters d and e take between their centres, both standing on inner radius r.
//
//	θ = 2·atan( √( a·e / (r·(r+a+e)) ) ÷ cos λ ),   tan λ = 2πR/L,  R = r + (a+e)/2
//
// a, e are the two radii; r > 0. L ≤ 0 means straight (λ = 0). The straight part
// is the law of cosines on the three centres, exact; the helix factor is within
// 0.05 % of the exact distance between two helices at L = 8 × over and more, for
// sizes up to 2 : 1, or up to 3 : 1 on a bed of at least two of the thicker; at
// worst (8 : 1 on a bed of one) within 0.15 %.
func NeighbourAngle(d, e, r, lay unit.Millimetre) unit.Radian {
	return unit.Radian(angle(float64(d)/2, float64(e)/2, float64(r), float64(lay)))
}

func angle(a, e, r, lay float64) float64 {
	s := a + e
	x := a * e / (r * (r + s))
	if lay > 0 {
		t := 2 * math.Pi * (r + s/2) / lay
		x *= 1 + t*t
	}
	return 2 * math.Atan(math.Sqrt(x))
}

// TouchRadius is the pitch radius at which n equal helical wires of diameter d
// just touch at lay length L, the explicit form of the wire-rope relation:
//
//	R² = (d²/4)·csc²(π/n) ÷ (1 − (π·d/L)²·cot²(π/n)),   needs L > π·d·cot(π/n)
//
// It reads low by at most 0.13 % (n = 6, L = 6 × over). ok is false where n < 2
// or the lay is too short for any radius. Source: the form R = (d/2)·√(1 +
// cot²(π/n)/cos²λ) is that of Costello, Theory of Wire Rope (from memory),
// checked against the exact distance of two helices.
func TouchRadius(n int, d, lay unit.Millimetre) (unit.Millimetre, bool) {
	if n < 2 || d <= 0 || lay <= 0 {
		return 0, false
	}
	s, c := math.Sincos(math.Pi / float64(n))
	cot := c / s
	q := math.Pi * float64(d/lay) * cot
	den := 1 - q*q
	if den <= 0 {
		return 0, false
	}
	return unit.Millimetre(float64(d) / 2 / s / math.Sqrt(den)), true
}
