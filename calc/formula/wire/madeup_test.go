package wire_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc/formula/wire"
	"contralay/model/unit"
)

func TestMakeUp(t *testing.T) {
	// Wire of 1.09 mm (22 AWG, light cross-linked ETFE, from memory). By hand from
	// the circle round equal circles; lay 12 × bare; loss √(1 + (π·pitch/lay)²).
	rows := []struct {
		name                        string
		wires                       []unit.Millimetre
		shielded                    bool
		bare, over, pitch, lay, lad float64
	}{
		{"pair", []unit.Millimetre{1.09, 1.09}, false, 2.18, 2.18, 1.09, 26.16, 1.00853},
		{"shielded pair: 0.3 + 0.2 once each on the diameter", []unit.Millimetre{1.09, 1.09}, true, 2.18, 2.68, 1.09, 26.16, 1.00853},
		// 2.1547·1.09 = 2.34862; 1.1547·1.09 = 1.25862; π·1.1547/(12·2.1547) = 0.140298
		{"triple", []unit.Millimetre{1.09, 1.09, 1.09}, false, 2.34862, 2.34862, 1.25862, 28.18346, 1.00979},
		// 2.4142·1.09 = 2.63149; 1.4142·1.09 = 1.54149; π·1.41421/(12·2.41421) = 0.153358
		{"shielded quad", []unit.Millimetre{1.09, 1.09, 1.09, 1.09}, true, 2.63149, 3.13149, 1.54149, 31.57788, 1.01169},
		{"unequal pair counts the larger twice", []unit.Millimetre{0.94, 1.27}, false, 2.54, 2.54, 1.27, 30.48, 1.00853},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			m, ok := wire.MakeUp(r.wires, r.shielded)
			if !ok {
				t.Fatal("no answer")
			}
			near(t, "bare", float64(m.BareMM), r.bare, 5e-5) // factors rounded to four decimals
			near(t, "over", float64(m.OverMM), r.over, 5e-5)
			near(t, "pitch", float64(m.PitchMM), r.pitch, 5e-5)
			near(t, "lay", float64(m.LayMM), r.lay, 5e-4)
			near(t, "loss", float64(m.LayLoss), r.lad, 6e-6)
		})
	}
	for name, wires := range map[string][]unit.Millimetre{
		"none": nil, "one": {1}, "five": {1, 1, 1, 1, 1}, "no diameter": {1, 0}, "negative": {1, -1},
		"not a number": {1, unit.Millimetre(math.NaN())},
	} {
		if m, ok := wire.MakeUp(wires, true); ok || m != (wire.MadeUp{}) {
			t.Errorf("%s: %+v", name, m)
		}
	}
}

func TestTakeUp(t *testing.T) {
	rows := []struct {
		name       string
		pitch, lay unit.Millimetre
		want, tol  float64
	}{
		// Worked out apart from this code, printed to three or four decimals: a pair of D = 1,
		// pitch D, lay a multiple of 2·D.
		{"pair, 8 × 2D", 1, 16, 1.019, 5e-4},
		{"pair, 12 × 2D", 1, 24, 1.0085, 5e-5},
		{"pair, 16 × 2D", 1, 32, 1.0048, 5e-5},
		// source: a published answer on two 0.040 in wires twisted one turn per inch: 100 ft take
		// 100.79 ft of each.
		{"two 0.040 in wires, one turn per inch", 0.040, 1, 1.0079, 5e-5},
		// Concentric strands, lay × over: worked out apart from this code.
		{"6 round 1 at 12 ×", 2. / 3, 12, 1.0151, 5e-5},
		{"18 round 19 at 8 ×", 6. / 7, 8, 1.0551, 5e-5},
		{"straight", 0, 30, 1, 0},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			near(t, "loss", must[unit.Ratio](t, "")(wire.LayLoss(r.pitch, r.lay)), r.want, r.tol)
		})
	}
	if _, ok := wire.LayLoss(1, 0); ok {
		t.Error("a lay of no length has a loss")
	}
}

func TestUnitScales(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(2, 4).Draw(t, "n")
		wires, twice := make([]unit.Millimetre, n), make([]unit.Millimetre, n)
		for i := range wires {
			wires[i] = unit.Millimetre(rapid.Float64Range(0.3, 10).Draw(t, "d"))
			twice[i] = 2 * wires[i]
		}
		a, ok := wire.MakeUp(wires, false)
		b, ok2 := wire.MakeUp(twice, false)
		if !ok || !ok2 || math.Abs(float64(b.BareMM-2*a.BareMM)) > 1e-12*float64(b.BareMM) {
			t.Fatalf("bare %g, of twice the wires %g", a.BareMM, b.BareMM)
		}
		if math.Abs(float64(a.LayLoss-b.LayLoss)) > 1e-12 {
			t.Fatalf("loss %g, of twice the wires %g", a.LayLoss, b.LayLoss)
		}
		if !(a.BareMM > a.PitchMM) || !(a.LayLoss > 1) {
			t.Fatalf("%+v", a)
		}
	})
}
