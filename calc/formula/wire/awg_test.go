package wire_test

import (
	"errors"
	"math"
	"testing"

	"contralay/calc/formula/wire"
	"contralay/model/unit"
)

// near fails the test unless got is within tol of want.
func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %.7g, want %.7g ± %.2g", what, got, want, tol)
	}
}

// must fails the test when a function had no answer.
func must[Q ~float64](t *testing.T, what string) func(Q, bool) float64 {
	return func(q Q, ok bool) float64 {
		t.Helper()
		if !ok {
			t.Fatalf("%s: no answer", what)
		}
		return float64(q)
	}
}

func TestSolidSizesOfASTM(t *testing.T) {
	// source: ASTM B33-04 table 1. Diameters are printed to 0.0001 in, circular
	// mils are their squares to 0.01, areas to 0.0001 mm²: half of the last digit.
	rows := []struct {
		size         string
		inch, mils   float64
		squareMM     float64
		inTol, mmTol float64
	}{
		{"0000", 0.4600, 211600.00, 107.2193, 1e-9, 5e-5},
		{"000", 0.4096, 167772.16, 85.0114, 1e-9, 5e-5},
		{"00", 0.3648, 133079.04, 67.4321, 1e-9, 5e-5},
		{"0", 0.3249, 105560.01, 53.4880, 1e-9, 5e-5},
		{"10", 0.1019, 10383.61, 5.2615, 1e-9, 5e-5},
		{"12", 0.0808, 6528.64, 3.3081, 1e-9, 5e-5},
		{"14", 0.0641, 4108.81, 2.0820, 1e-9, 5e-5},
		{"16", 0.0508, 2580.64, 1.3076, 1e-9, 5e-5},
	}
	for _, r := range rows {
		t.Run(r.size, func(t *testing.T) {
			a, err := wire.ParseAWG(r.size)
			if err != nil {
				t.Fatal(err)
			}
			d := must[unit.Millimetre](t, "Rounded")(a.Rounded())
			near(t, "diameter, in", d/25.4, r.inch, r.inTol)
			mils := must[unit.CircularMil](t, "CircularMils")(a.CircularMils())
			near(t, "circular mils", mils, r.mils, 0.005)
			near(t, "mm²", float64(unit.CircularMil(mils).SquareMM()), r.squareMM, r.mmTol)
		})
	}
}

func TestSmallSolidSizesOfADataSheet(t *testing.T) {
	// source: a wire maker's conductor and stranding data sheet. Its diameters are
	// those of ASTM but for 22 AWG; its circular mils are those of the unrounded
	// diameter, the first two rounded down to ten.
	rows := []struct {
		size    wire.AWG
		inch    float64
		mils    float64
		milsTol float64
	}{
		{18, 0.0403, 1620, 5},     // printed to three figures
		{20, 0.0320, 1020, 5},     // printed to three figures
		{22, 0.0253, 642.4, 0.05}, // the sheet prints 0.0254 in; its own 642.4 is 0.025346²
		{24, 0.0201, 404.0, 0.06}, // 404.01 from the rounded diameter, 404.05 from the formula
		{28, 0.0126, 159.8, 0.05}, //
		{30, 0.0100, 100.5, 0.05}, //
	}
	for _, r := range rows {
		t.Run(r.size.String(), func(t *testing.T) {
			near(t, "rounded, in", must[unit.Millimetre](t, "Rounded")(r.size.Rounded())/25.4, r.inch, 1e-9)
			area := must[unit.SquareMM](t, "Area")(r.size.Area())
			near(t, "circular mils", float64(unit.SquareMM(area).CircularMils()), r.mils, r.milsTol)
		})
	}
}

func TestUnroundedSizes(t *testing.T) {
	// Worked out apart from this code from the formula of ASTM B258-02 with
	// 0.017241 Ω·mm²/m; half of the last digit that the table keeps.
	rows := []struct {
		size                       string
		mm, mmTol                  float64
		squareMM, areaTol          float64
		mils, ohmPerKm, ohmTol     float64
		ohmPer1000ft, thousandthsT float64
	}{
		{"0000", 11.684, 5e-4, 107.22, 6e-3, 211600, 0.1608, 5e-5, 0.0490, 5e-5},
		{"000", 10.405, 5e-4, 85.03, 6e-3, 167806, 0.2028, 5e-5, 0.0618, 5e-5},
		{"00", 9.266, 5e-4, 67.43, 6e-3, 133077, 0.2557, 5e-5, 0.0779, 5e-5},
		{"0", 8.251, 5e-4, 53.48, 6e-3, 105535, 0.3224, 5e-5, 0.0983, 5e-5},
		{"1", 7.348, 5e-4, 42.41, 6e-3, 83693, 0.4066, 5e-5, 0.1239, 5e-5},
		{"2", 6.544, 5e-4, 33.63, 6e-3, 66371, 0.5127, 5e-5, 0.1563, 5e-5},
		{"3", 5.827, 5e-4, 26.67, 6e-3, 52635, 0.6464, 5e-5, 0.1970, 5e-5},
		{"4", 5.189, 5e-4, 21.15, 6e-3, 41741, 0.8152, 5e-5, 0.2485, 5e-5},
		{"6", 4.115, 5e-4, 13.30, 6e-3, 26251, 1.296, 5e-4, 0.3951, 5e-5},
		{"8", 3.264, 5e-4, 8.366, 6e-4, 16510, 2.061, 5e-4, 0.6282, 5e-5},
		{"10", 2.588, 5e-4, 5.261, 6e-4, 10383, 3.277, 5e-4, 0.9988, 5e-5},
		{"12", 2.053, 5e-4, 3.309, 6e-4, 6530, 5.211, 5e-4, 1.588, 5e-4},
		{"14", 1.628, 5e-4, 2.081, 6e-4, 4107, 8.285, 6e-4, 2.525, 5e-4},
		{"16", 1.291, 5e-4, 1.309, 6e-4, 2583, 13.17, 6e-3, 4.016, 6e-4},
		{"18", 1.024, 5e-4, 0.8230, 6e-5, 1624, 20.95, 5e-3, 6.385, 6e-4},
		{"20", 0.8118, 5e-5, 0.5176, 6e-5, 1022, 33.31, 5e-3, 10.15, 5e-3},
		{"22", 0.6438, 5e-5, 0.3255, 6e-5, 642, 52.96, 6e-3, 16.14, 5e-3},
		{"24", 0.5106, 5e-5, 0.2047, 6e-5, 404, 84.21, 6e-3, 25.67, 5e-3},
		{"26", 0.4049, 5e-5, 0.1288, 6e-5, 254, 133.9, 5e-2, 40.81, 6e-3},
		{"28", 0.3211, 5e-5, 0.0810, 6e-5, 160, 212.9, 5e-2, 64.90, 6e-3},
		{"30", 0.2546, 5e-5, 0.0509, 6e-5, 100.5, 338.6, 6e-2, 103.2, 5e-2},
	}
	for _, r := range rows {
		t.Run(r.size, func(t *testing.T) {
			a, err := wire.ParseAWG(r.size)
			if err != nil {
				t.Fatal(err)
			}
			near(t, "mm", must[unit.Millimetre](t, "Diameter")(a.Diameter()), r.mm, r.mmTol)
			area := must[unit.SquareMM](t, "Area")(a.Area())
			near(t, "mm²", area, r.squareMM, r.areaTol)
			near(t, "circular mils", float64(unit.SquareMM(area).CircularMils()), r.mils, 0.55)
			ohm := must[unit.OhmPerKilometre](t, "IdealResistance")(wire.IdealResistance(unit.SquareMM(area)))
			near(t, "Ω/km", ohm, r.ohmPerKm, r.ohmTol)
			near(t, "Ω/1000 ft", ohm/unit.KilometrePerKilofoot, r.ohmPer1000ft, r.thousandthsT)
		})
	}
}

func TestThreeNoughtHasTwoAreas(t *testing.T) {
	// ASTM B33-04 table 1 squares the rounded diameter, the formula of ASTM B258
	// does not; a person who compares two tables meets both.
	a := wire.AWG(-2)
	near(t, "as ASTM prints it", must[unit.CircularMil](t, "")(a.CircularMils()), 167772.16, 0.005)
	area, _ := a.Area()
	near(t, "by the formula", float64(area.CircularMils()), 167806, 0.5)
}

func TestAnchorsAreExact(t *testing.T) {
	// source: ASTM B258-02: No. 36 is 0.005 in, 4/0 is 0.46 in.
	near(t, "36", must[unit.Millimetre](t, "")(wire.AWG(36).Diameter()), 0.127, 1e-12)
	near(t, "4/0", must[unit.Millimetre](t, "")(wire.AWG(-3).Diameter()), 11.684, 1e-11)
}

func TestParseAWG(t *testing.T) {
	good := map[string]wire.AWG{"22": 22, "1": 1, "43": 43, "0": 0, "00": -1, "000": -2, "0000": -3,
		"1/0": 0, "2/0": -1, "3/0": -2, "4/0": -3}
	for text, want := range good {
		a, err := wire.ParseAWG(text)
		if err != nil || a != want {
			t.Errorf("ParseAWG(%q) = %d, %v; want %d", text, a, err, want)
		}
		if back, err := wire.ParseAWG(a.String()); err != nil || back != a {
			t.Errorf("%q prints as %q, which reads as %d, %v", text, a, back, err)
		}
	}
	for _, text := range []string{"", "44", "-1", "+4", "022", "00000", "5/0", "0/0", "/0", "22/0", "2.2", "0.35mm2", "22 ", "９"} {
		if a, err := wire.ParseAWG(text); !errors.Is(err, wire.ErrAWG) {
			t.Errorf("ParseAWG(%q) = %d, %v; want ErrAWG", text, a, err)
		}
	}
}

func TestSizesOutsideTheGauge(t *testing.T) {
	for _, a := range []wire.AWG{-4, 44} {
		if d, ok := a.Diameter(); ok || d != 0 {
			t.Errorf("%d: Diameter = %g, %v", int(a), d, ok)
		}
		if _, ok := wire.StrandedAreaAWG(19, a); ok {
			t.Errorf("%d: has a stranded area", int(a))
		}
	}
}
