package lay

import (
	"math"

	"contralay/model/unit"
)

// Mismatch is the difference in path length between the longest and the shortest
// wire of a layer that is bent.
//
//	Δ = 2·(r/ρ)·cos λ·(L/π)·|sin(πS/L)|,   S = ρθ
//
// r winding radius, ρ radius of the bundle axis, θ the bend, L lay length; L ≤ 0
// is straight-laid wire, Δ = 2·r·θ. First order in r/ρ; zero at whole lays and
// never above 2rL·cos λ/(πρ). Lengths in mm, ρ > 0.
// Source: derived from the helix on a bent axis, checked by quadrature.
func Mismatch(radius, lay, axis unit.Millimetre, bend unit.Degree) unit.Millimetre {
	if axis <= 0 {
		return 0
	}
	r, L, rho := float64(radius), float64(lay), float64(axis)
	th := float64(bend) * math.Pi / 180
	if L <= 0 {
		return unit.Millimetre(2 * r * th)
	}
	return unit.Millimetre(2 * r / rho * cosLay(r, L) * L / math.Pi * math.Abs(math.Sin(math.Pi*rho*th/L)))
}
