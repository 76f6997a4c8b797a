package wire_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc/formula/wire"
	"contralay/model/unit"
)

// anything draws ordinary numbers and the ones that break formulas.
func anything() *rapid.Generator[float64] {
	return rapid.OneOf(
		rapid.Float64(),
		rapid.Float64Range(-300, 300),
		rapid.SampledFrom([]float64{0, math.NaN(), math.Inf(1), math.Inf(-1),
			math.MaxFloat64, math.SmallestNonzeroFloat64, -234.5}),
	)
}

func TestNothingReturnsNaNOrInf(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string) float64 { return anything().Draw(t, name) }
		a, b, c, d := draw("a"), draw("b"), draw("c"), draw("d")
		mm := func(v float64) unit.Millimetre { return unit.Millimetre(v) }
		check := func(what string, v float64, ok bool) {
			if !unit.Finite(v) {
				t.Fatalf("%s(%g, %g, %g, %g) = %g", what, a, b, c, d, v)
			}
			if !ok && v != 0 {
				t.Fatalf("%s refused but returned %g", what, v)
			}
		}
		n := wire.AWG(rapid.IntRange(-100, 100).Draw(t, "awg"))
		dia, ok := n.Diameter()
		check("Diameter", float64(dia), ok)
		dia, ok = n.Rounded()
		check("Rounded", float64(dia), ok)
		cm, ok := n.CircularMils()
		check("CircularMils", float64(cm), ok)
		area, ok := n.Area()
		check("Area", float64(area), ok)
		area, ok = wire.StrandedArea(rapid.IntRange(-3, 3000).Draw(t, "n"), mm(a))
		check("StrandedArea", float64(area), ok)
		r, ok := wire.IdealResistance(unit.SquareMM(a))
		check("IdealResistance", float64(r), ok)
		r, ok = wire.ResistanceAt(unit.OhmPerKilometre(a), unit.Celsius(b))
		check("ResistanceAt", float64(r), ok)
		l, ok := wire.EquivalentLength(mm(a), unit.Celsius(b))
		check("EquivalentLength", float64(l), ok)
		u, ok := wire.Drop(unit.Ampere(a), unit.OhmPerKilometre(b), unit.Celsius(c), mm(d))
		check("Drop", float64(u), ok)
		g, ok := wire.EstimateMass(unit.SquareMM(a), mm(b), mm(c), unit.GramPerCC(d))
		check("EstimateMass", float64(g), ok)
		k, ok := wire.LayLoss(mm(a), mm(b))
		check("LayLoss", float64(k), ok)
		m, ok := wire.MakeUp([]unit.Millimetre{mm(a), mm(b)}, true)
		for _, v := range []float64{float64(m.BareMM), float64(m.OverMM), float64(m.PitchMM), float64(m.LayMM), float64(m.LayLoss)} {
			check("MakeUp", v, ok)
		}
	})
}
