package wire_test

import (
	"testing"

	"contralay/calc/formula/wire"
	"contralay/model/unit"
)

const gramPerMetrePerLbKft = unit.KilogramPerPound * unit.KilometrePerKilofoot // kg/km in 1 lb/1000 ft

func TestCopperMassOfADataSheet(t *testing.T) {
	// source: a wire maker's conductor and stranding data sheet, lb/1000 ft of bare
	// copper. Rows 12 … 20 carry the 2 % that strands are longer, rows 22 … 30 do not;
	// EstimateMass takes 3 %, so it lies that much above.
	rows := []struct {
		size  wire.AWG
		lbKft float64
		lay   float64
	}{
		{12, 20.16, 1.02}, {14, 12.68, 1.02}, {16, 7.974, 1.02}, {18, 5.015, 1.02}, {20, 3.154, 1.02},
		{22, 1.945, 1}, {24, 1.223, 1}, {28, 0.4837, 1}, {30, 0.3042, 1},
	}
	for _, r := range rows {
		t.Run(r.size.String(), func(t *testing.T) {
			a, _ := r.size.Area()
			d, _ := r.size.Diameter()
			got := must[unit.GramPerMetre](t, "")(wire.EstimateMass(a, d, d, 1.7))
			want := r.lbKft * gramPerMetrePerLbKft * float64(wire.StrandLay) / r.lay
			near(t, "g/m", got, want, want*6e-4) // four printed figures, the first 1 … 9
		})
	}
}

func TestMassOfInsulatedWire(t *testing.T) {
	// 22 AWG, 19 strands of 34, cross-linked ETFE of normal weight: bare 0.762,
	// finished 1.27 mm, ETFE 1.70 g/cm³. By hand:
	// 8.89·0.3821·1.03 = 3.4988; 1.70·π/4·(1.6129 − 0.58064) = 1.3783; together 4.8771.
	got := must[unit.GramPerMetre](t, "")(wire.EstimateMass(0.3821, 0.762, 1.27, 1.70))
	near(t, "g/m by hand", got, 4.8771, 2e-4)
	// source: a maker's drawing, maximum 3.20 lb/1000 ft = 4.762 g/m. An estimate
	// from nominal diameters may miss it by 3 %.
	near(t, "g/m of the drawing", got, 3.20*gramPerMetrePerLbKft, 0.03*4.762)
}

func TestMassRefuses(t *testing.T) {
	type in struct {
		a       unit.SquareMM
		d, over unit.Millimetre
		rho     unit.GramPerCC
	}
	for name, v := range map[string]in{
		"no copper":                     {0, 0.7, 1.1, 1.7},
		"thinner than its conductor":    {0.38, 1.2, 1.1, 1.7},
		"conductor of negative size":    {0.38, -1, 1.1, 1.7},
		"insulation of negative weight": {0.38, 0.7, 1.1, -1},
	} {
		if g, ok := wire.EstimateMass(v.a, v.d, v.over, v.rho); ok || g != 0 {
			t.Errorf("%s: %g g/m", name, g)
		}
	}
}
