package wire

import (
	"math"

	"contralay/model/unit"
)

const (
	// UnitLay is the lay length of a unit ÷ its bare made-up diameter: 12, in the
	// middle of the 8 … 16 that NEMA WC 27500 asks (from memory, not verified;
	// conductor lays of 8 … 16 × stand in MIL-DTL-29606A 3.3.2). Over the made-up
	// diameter, not the pitch diameter: for a pair that is a factor of two.
	UnitLay unit.Ratio = 12

	// BraidMM and JacketMM are what a shielded unit's braid and jacket add to its
	// diameter, each once. From memory, not verified; measure, or take the
	// maker's figure.
	BraidMM  unit.Millimetre = 0.3
	JacketMM unit.Millimetre = 0.2
)

// MadeUp is what is worked out of a unit from its wires.
type MadeUp struct {
	BareMM  unit.Millimetre // circle round the twisted wires
	OverMM  unit.Millimetre // with braid and jacket where shielded, else BareMM
	PitchMM unit.Millimetre // circle through the wires' centres
	LayMM   unit.Millimetre // length of one turn
	LayLoss unit.Ratio      // length of its wires ÷ its own length
}

// MakeUp works out a pair, triple or quad (two, three or four wires of diameter
// D), in mm:
//
//	wires   bare                pitch circle
//	  2     2·D                 D
//	  3     (1 + 2/√3)·D        2/√3·D = 1.1547·D
//	  4     (1 + √2)·D          √2·D   = 1.4142·D
//
//	over = bare + 0.3 braid + 0.2 jacket where shielded
//	lay  = 12 · bare
//	loss = √(1 + (π·pitch/lay)²)
//
// Bare diameters are the circle round equal circles in contact (2, 2.1547,
// 2.4142, exact). Where the wires differ D is the largest: safe for what has to
// pass over the unit, a little too long for the cut. Quad wires are taken in a
// square without a core. False for fewer than two wires, more than four, or a
// diameter that is not above zero.
func MakeUp(wires []unit.Millimetre, shielded bool) (MadeUp, bool) {
	pitches := [...]float64{2: 1, 3: 2 / math.Sqrt(3), 4: math.Sqrt2}
	if len(wires) < 2 || len(wires) >= len(pitches) {
		return MadeUp{}, false
	}
	var d float64
	for _, w := range wires {
		if !(w > 0) || !unit.Finite(float64(w)) {
			return MadeUp{}, false
		}
		d = max(d, float64(w))
	}
	pitch := pitches[len(wires)] * d
	m := MadeUp{
		BareMM:  unit.Millimetre(pitch + d),
		PitchMM: unit.Millimetre(pitch),
	}
	m.OverMM = m.BareMM
	if shielded {
		m.OverMM += BraidMM + JacketMM
	}
	m.LayMM = m.BareMM * unit.Millimetre(UnitLay)
	var ok bool
	m.LayLoss, ok = LayLoss(m.PitchMM, m.LayMM)
	if !ok {
		return MadeUp{}, false
	}
	return m, true
}

// LayLoss is the length of a helix ÷ its axial length:
//
//	k = √(1 + (π·Dp/L)²)
//
// Dp pitch diameter and L lay length in mm. Exact geometry. False for Dp < 0 or
// L ≤ 0.
func LayLoss(pitch, lay unit.Millimetre) (unit.Ratio, bool) {
	if pitch < 0 || lay <= 0 || !unit.Finite(float64(lay)) {
		return 0, false
	}
	return finite[unit.Ratio](math.Hypot(1, math.Pi*float64(pitch)/float64(lay)))
}
