package cover

import (
	"math"

	"contralay/model/unit"
)

// Tube is one size of heat-shrink tubing, or one end of a boot.
type Tube struct {
	SuppliedMM   unit.Millimetre // bore as supplied, minimum; > 0
	RecoveredMM  unit.Millimetre // bore after free recovery, maximum; > 0
	WallMM       unit.Millimetre // wall after free recovery, nominal; 0: not known
	LengthChange unit.Ratio      // share it shortens by at most: 0.10 for −10 %; 0 … 1
	Density      unit.GramPerCC  // 0: not known
}

// sound reports whether the bores can be those of a sleeve.
func (t Tube) sound() bool {
	return finite(t.SuppliedMM, t.RecoveredMM) && t.RecoveredMM > 0 && t.SuppliedMM >= t.RecoveredMM
}

// RecoveredOver is the diameter over the sleeve when it has shrunk on something
// of diameter d, in mm:
//
//	over = √( D² + 4·w·(R + w) / k ),   wall = (over − D) / 2
//
// R recovered bore and w recovered wall, D = d; k = 1 here, the length on the
// substrate being that after free recovery. The cross-section of the wall,
// π·w·(R + w), is conserved: geometry, derived; data sheets say only that the
// printed wall is that of full recovery. Valid for R ≤ D ≤ supplied bore: a
// looser sleeve does not follow the formula, a tighter one does not go on.
// False outside, and where the wall is not known.
func RecoveredOver(t Tube, d unit.Millimetre) (unit.Millimetre, bool) {
	return RecoveredOverAt(t, d, 1)
}

// RecoveredOverAt is RecoveredOver with k, the sleeve's length on the substrate
// ÷ its length after free recovery: above 1 where it is held long, below 1 where
// it shortens more. False for k ≤ 0 as well.
func RecoveredOverAt(t Tube, d unit.Millimetre, k unit.Ratio) (unit.Millimetre, bool) {
	if !t.sound() || !finite(d) || !(t.WallMM > 0) || !(k > 0) {
		return 0, false
	}
	if below(d, t.RecoveredMM) || below(t.SuppliedMM, d) {
		return 0, false
	}
	w, r := float64(t.WallMM), float64(t.RecoveredMM)
	over := math.Sqrt(float64(d)*float64(d) + 4*w*(r+w)/float64(k))
	if !unit.Finite(over) {
		return 0, false
	}
	return unit.Millimetre(over), true
}

// Wall is the thickness of the sleeve's wall when it has shrunk on something of
// diameter d, in mm. Formula and range are those of RecoveredOver.
func Wall(t Tube, d unit.Millimetre) (unit.Millimetre, bool) {
	over, ok := RecoveredOver(t, d)
	if !ok {
		return 0, false
	}
	return (over - d) / 2, true
}

// Mass is what a metre of the recovered sleeve weighs, in g/m:
//
//	m = π·w·(R + w)·ρ
//
// ρ the density in g/cm³. The same on any substrate, since the cross-section is
// conserved. False where wall or density is not known.
func Mass(t Tube) (unit.GramPerMetre, bool) {
	w, r, rho := float64(t.WallMM), float64(t.RecoveredMM), float64(t.Density)
	m := math.Pi * w * (r + w) * rho
	if !t.sound() || !(w > 0) || !(rho > 0) || !unit.Finite(m) {
		return 0, false
	}
	return unit.GramPerMetre(m), true
}

// finite reports whether all lengths are numbers that can be used.
func finite(vs ...unit.Millimetre) bool {
	for _, v := range vs {
		if !unit.Finite(float64(v)) {
			return false
		}
	}
	return true
}

// hair keeps the last bit of a float from deciding: 1e-9 mm is far below what
// anybody measures and far above what rounding does to a diameter.
const hair unit.Millimetre = 1e-9

func below(a, b unit.Millimetre) bool { return a < b-hair }
