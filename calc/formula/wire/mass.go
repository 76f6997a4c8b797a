package wire

import (
	"math"

	"contralay/model/unit"
)

const (
	// CopperDensity is 8.89 g/cm³; the value the resistivity standard goes with.
	// From memory of ASTM B3 and B33, not verified.
	CopperDensity unit.GramPerCC = 8.89

	// StrandLay is how much longer strands are than their conductor: 1.03, the
	// middle of 1.02 … 1.04. A choice, common practice without a source; half the
	// spread is 1 % of the copper's mass, less than the tolerance of a wire.
	StrandLay unit.Ratio = 1.03
)

// EstimateMass is the mass of an insulated wire when no table gives it, in g/m
// (the same number as kg/km):
//
//	m = 8.89 · A · 1.03 + ρ · π/4 · (D² − d²)
//
// A copper area in mm², D finished diameter and d bare conductor diameter in mm,
// ρ density of the insulation in g/cm³ (ETFE 1.70; PTFE 2.15 … 2.2; cross-linked
// polyethylene 0.93 … 1.4 by its filler). An estimate: say so beside it. It came
// within 3 % of the one maximum it could be held against. False for A ≤ 0,
// d < 0, D < d or ρ < 0.
func EstimateMass(a unit.SquareMM, d, over unit.Millimetre, rho unit.GramPerCC) (unit.GramPerMetre, bool) {
	if a <= 0 || d < 0 || over < d || rho < 0 {
		return 0, false
	}
	copper := float64(CopperDensity) * float64(a) * float64(StrandLay)
	wall := math.Pi / 4 * (float64(over) - float64(d)) * (float64(over) + float64(d))
	return finite[unit.GramPerMetre](copper + float64(rho)*wall)
}
