package power

import (
	"math"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/formula/heat"
	"contralay/calc/query/why"
	"contralay/model/unit"
)

// The surface that gives off so much heat, the other way round: by what still air takes from one that is as warm as that, from a
// hundredth of a degree above the air to hundreds.
func TestSurfaceThatGivesOffSoMuch(t *testing.T) {
	s := calctest.Carrying(t, 40, "", []string{"22 0.3"}, nil, "")
	w, ok := branchSurface(why.New(s, nil), why.Figure{What: "branch.surface", Of: "T1"})
	if !ok || math.Abs(w.Made()-w.Value) > 1e-4 || !(w.Value > 40 && w.Value < 41) {
		t.Fatalf("%v: %v, its inputs come to %v", ok, w.Value, w.Made())
	}
	for _, d := range []float64{1, 8, 60} {
		for _, air := range []float64{-40, 0, 25, 70} {
			for _, above := range []float64{0.01, 0.4, 1, 30, 500} {
				q := heat.Surface(unit.Millimetre(d), unit.Celsius(air+above), unit.Celsius(air), 0.8, heat.Pressure(0))
				if got := w.Formula([]float64{air, float64(q), d, 0.8}); math.Abs(got-air-above) > 1e-6 {
					t.Errorf("%v mm in air of %v give off %v W/m: %v °C, want %v", d, air, q, got, air+above)
				}
			}
		}
	}
	if got := w.Formula([]float64{25, 0, 8, 0.8}); math.Abs(got-25) > 1e-9 {
		t.Errorf("without heat it is %v in air of 25", got)
	}
}
