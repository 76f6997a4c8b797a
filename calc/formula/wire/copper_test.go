package wire_test

import (
	"testing"

	"pgregory.net/rapid"

	"contralay/calc/formula/wire"
	"contralay/model/unit"
)

const foot = 304.8 // mm, exact

func TestVoltageDropOfAC4313(t *testing.T) {
	// source: AC 43.13-1B tables 11-7 and 11-8: Ω/ft × ft × A at 20 °C. The tables
	// print two or three figures; want is what they print, exact what their own
	// factors multiply to.
	rows := []struct {
		name         string
		ohmPerFoot   float64
		feet         float64
		exact        float64
		printed, tol float64 // tolerance: half the last printed digit
	}{
		{"11-7: No. 6, 107 ft", 0.00044, 107, 0.9416, 0.942, 0.0005},
		{"11-7: No. 4, 90 ft", 0.00028, 90, 0.504, 0.504, 0.0005},
		{"11-7: No. 12, 88 ft", 0.00202, 88, 3.5552, 3.60, 0.05}, // rounded up by the table
		{"11-7: No. 14, 100 ft", 0.00306, 100, 6.12, 6.12, 0.005},
		{"11-8: No. 10, 39 ft", 0.00126, 39, 0.9828, 0.98, 0.005},
		{"11-8: No. 10, 156 ft", 0.00126, 156, 3.9312, 3.93, 0.005},
		{"11-8: No. 10, 273 ft", 0.00126, 273, 6.8796, 6.88, 0.005},
		// The table prints .366 here. A misprint: its own .00126 × 19.5 × 20 is
		// 0.4914, half of the 39 ft row above.
		{"11-8: No. 10, 19.5 ft", 0.00126, 19.5, 0.4914, 0.491, 0.0005},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			r20 := unit.OhmPerKilometre(r.ohmPerFoot * 1000 * unit.KilometrePerKilofoot)
			v := must[unit.Volt](t, "Drop")(wire.Drop(20, r20, 20, unit.Millimetre(r.feet*foot)))
			near(t, "V, exact", v, r.exact, 1e-9)
			near(t, "V, printed", v, r.printed, r.tol)
		})
	}
}

func TestTinPlatedMaximaOverIdeal(t *testing.T) {
	// source: maxima of AC 43.13-1B table 11-9, Ω/1000 ft at 20 °C. What a
	// specification allows lies 13 % to 18 % over ideal copper of the same strands.
	rows := []struct {
		size   string
		n      int
		strand wire.AWG
		max    float64
	}{
		{"22", 19, 34, 16.20}, {"20", 19, 32, 9.88}, {"18", 19, 30, 6.23}, {"16", 19, 29, 4.81},
		{"14", 19, 27, 3.06}, {"12", 37, 28, 2.02}, {"10", 37, 26, 1.26},
	}
	for _, r := range rows {
		a, _ := wire.StrandedAreaAWG(r.n, r.strand)
		ideal := must[unit.OhmPerKilometre](t, r.size)(wire.IdealResistance(a))
		over := r.max * unit.KilometrePerKilofoot / ideal
		if over < 1.12 || over > 1.185 {
			t.Errorf("%s AWG: maximum is %.3f × ideal, want 1.12 … 1.185", r.size, over)
		}
	}
}

func TestCommercialStrandedResistance(t *testing.T) {
	// source: a stranded-wire data chart, Ω/1000 ft. Its figures scatter ± 1.2 % about
	// the ideal, 24 AWG − 3.5 %: that row cannot be 19 strands of 0.005 in.
	rows := []struct {
		n           int
		strand      wire.AWG
		chart, tolR float64
	}{
		{19, 36, 21.08, 0.04}, {19, 34, 13.73, 0.015}, {19, 32, 8.63, 0.015}, {19, 30, 5.46, 0.015}, {19, 29, 4.27, 0.015},
	}
	for _, r := range rows {
		a, _ := wire.StrandedAreaAWG(r.n, r.strand)
		ohm := must[unit.OhmPerKilometre](t, "")(wire.IdealResistance(a))
		near(t, r.strand.String(), ohm/unit.KilometrePerKilofoot, r.chart, r.chart*r.tolR)
	}
}

func TestResistanceAt(t *testing.T) {
	rows := []struct {
		name      string
		t         unit.Celsius
		want, tol float64
	}{
		{"20 °C is where R20 holds", 20, 10, 1e-12},
		{"0 °C", 0, 10 * 234.5 / 254.5, 1e-12},
		{"150 °C: 384.5/254.5 by hand", 150, 15.10806, 1e-5},
		// From memory of NBS Handbook 100: α = 0.00393 at 20 °C; its third figure is
		// worth 0.005 here.
		{"100 °C by the coefficient 0.00393", 100, 10 * (1 + 0.00393*80), 0.005},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			near(t, "Ω/km", must[unit.OhmPerKilometre](t, "")(wire.ResistanceAt(10, r.t)), r.want, r.tol)
		})
	}
	if _, ok := wire.ResistanceAt(10, -234.5); ok {
		t.Error("copper has a resistance where its line reaches zero")
	}
	if _, ok := wire.Drop(-1, 10, 20, 1000); ok {
		t.Error("a negative current drops")
	}
	if _, ok := wire.Drop(1, 10, 20, -1); ok {
		t.Error("a negative length drops")
	}
}

func TestEquivalentLengthOfAC4313(t *testing.T) {
	// AC 43.13-1B p. 11-27: 15.5 ft of No. 14 that runs at 182 °C is worth 9.5 ft
	// (result from memory of the page; 9.48 when worked out with 181.6 °C).
	got := must[unit.Millimetre](t, "")(wire.EquivalentLength(15.5*foot, 181.6))
	near(t, "ft", got/foot, 9.48, 0.005)
	near(t, "ft, as the page rounds it", got/foot, 9.5, 0.05)
}

func TestEquivalentLengthDropsTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := unit.Millimetre(rapid.Float64Range(1, 1e5).Draw(t, "l"))
		temp := unit.Celsius(rapid.Float64Range(-75, 260).Draw(t, "t"))
		short, ok := wire.EquivalentLength(l, temp)
		cold, ok2 := wire.Drop(5, 16, 20, l)
		hot, ok3 := wire.Drop(5, 16, temp, short)
		if !ok || !ok2 || !ok3 || abs(float64(hot-cold)) > 1e-12*float64(cold)*10 {
			t.Fatalf("%g mm at 20 °C drops %g V, %g mm at %g °C drops %g V", l, cold, short, temp, hot)
		}
	})
}

func abs(v float64) float64 { return max(v, -v) }

// The drop chart of AC 43.13-1B, figure 11-2, p. 11-26: a run of 50 ft, 28 V (1 V may
// be lost), 20 A, at 20 °C or below falls between 10 and 8 AWG, so 8. The table's 8 AWG
// is 0.70 Ω/1000 ft, its 10 AWG 1.26 (table 11-9).
func TestDropChartOfAC4313(t *testing.T) {
	drop := func(ohmPer1000ft float64) float64 {
		return float64(must[unit.Volt](t, "Drop")(wire.Drop(20, unit.OhmPerKilometre(ohmPer1000ft*unit.KilometrePerKilofoot), 20, 50*foot)))
	}
	if ten, eight := drop(1.26), drop(0.70); ten <= 1 || eight > 1 {
		t.Errorf("10 AWG drops %v V, 8 AWG %v: the chart says 8", ten, eight)
	}
}
