package derate

import (
	"math"
	"testing"

	"contralay/model/unit"
)

func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if math.Abs(got-want) > tol {
		t.Errorf("%s: %v, want %v within %v", what, got, want, tol)
	}
}

// Source: AC 43.13-1B CHG 1 table 11-9, p. 11-23.
func TestTable(t *testing.T) {
	for _, c := range []struct {
		size   string
		rating unit.Celsius
		n      int
		air    unit.Celsius
		amps   unit.Ampere
		ok     bool
	}{
		{"22", 150, 42, 70, 5, true}, {"20", 150, 42, 70, 7, true}, {"12", 150, 42, 70, 19, true}, {"24", 105, 33, 25, 2.5, true},
		{"8", 200, 9, 70, 71, true}, {"4/0", 150, 40, 70, 310, true},
		{"22", 150, 32, 70, 0, false}, {"8", 150, 8, 70, 0, false}, {"22", 150, 42, 71, 0, false}, {"22", 125, 42, 70, 0, false},
		{"26", 150, 42, 70, 0, false}, {"0.35mm2", 150, 42, 70, 0, false},
	} {
		if got, ok := Table(c.size, c.rating, c.n, c.air); got != c.amps || ok != c.ok {
			t.Errorf("%+v: %v %v", c, got, ok)
		}
	}
}

// The method's worked examples. Source: AC 43.13-1B p. 11-27 (B) and 11-69 (C, D; from
// memory), the circular rounding each step as a person reads a chart.
func TestWorkedExamples(t *testing.T) {
	free := func(size string, rise unit.Celsius) float64 {
		v, ok := FreeAir(size, rise)
		if !ok {
			t.Fatalf("no free-air value for %s", size)
		}
		return float64(v)
	}
	bundle := func(n int, share unit.Ratio) float64 {
		v, ok := Bundle(n, share)
		if !ok {
			t.Fatalf("no factor for %d at %v", n, share)
		}
		return float64(v)
	}
	high := func(ft float64) float64 {
		v, ok := Altitude(unit.Millimetre(ft * feet))
		if !ok {
			t.Fatalf("no factor for %v ft", ft)
		}
		return float64(v)
	}
	// B: 14 AWG, 200 °C wire in 50 °C, 20,000 ft, 8 wires at 60 %: 47, 42.77, 26 A.
	near(t, "B free", free("14", 150), 47, 0.01)
	near(t, "B altitude", free("14", 150)*high(20_000), 42.77, 0.01)
	near(t, "B", free("14", 150)*high(20_000)*bundle(8, 0.6), 26, 0.6) // 25.45 with the chart's 0.595, 25.66 with 0.6
	// C: 10 × 20 and 25 × 22 AWG at 60,000 ft, 20 %: 8.8 and 6.6 A, 50.6 A together.
	twenty, twentyTwo := free("20", 140)*bundle(35, 0.2)*high(60_000), free("22", 140)*bundle(35, 0.2)*high(60_000)
	near(t, "C 20 AWG", twenty, 8.8, 0.05)
	near(t, "C 22 AWG", twentyTwo, 6.6, 0.07)
	near(t, "C together", (10*twenty+25*twentyTwo)*0.2, 50.6, 0.5)
	// D: 12 × 12 AWG near full load, sea level at 25 °C and 20,000 ft at 60 °C.
	near(t, "D at sea level", free("12", 175)*bundle(12, 1), 29.2, 0.15)
	near(t, "D at 20,000 ft", free("12", 140)*bundle(12, 1)*high(20_000), 23.8, 0.1)
}

// Table and method agree where both have a value: 33 wires at 20 %, 60,000 ft, a rise
// of 130 °C come within half an ampere of the 200 °C column, which is in whole amperes.
func TestTableAndMethodAgree(t *testing.T) {
	f, _ := Bundle(33, 0.2)
	h, _ := Altitude(60_000 * feet)
	for _, size := range []string{"24", "22", "20", "18", "16", "14", "12", "10"} {
		want, _ := Table(size, 200, 33, 70)
		free, ok := FreeAir(size, 130)
		if got := free * unit.Ampere(f*h); !ok || math.Abs(float64(got-want)) > 0.56 {
			t.Errorf("%s AWG: method %.2f, table %v", size, float64(got), want)
		}
	}
}

// Past the data there is no value, and factors only fall.
func TestNoValueBeyondTheData(t *testing.T) {
	for _, c := range []struct {
		n     int
		share unit.Ratio
	}{{0, 0.2}, {20, 0.4}, {36, 0.2}, {5, 1.01}, {5, -0.1}, {5, unit.Ratio(math.NaN())}} {
		if f, ok := Bundle(c.n, c.share); ok {
			t.Errorf("%+v: %v", c, f)
		}
	}
	for n := 2; n <= 35; n++ {
		a, _ := Bundle(n-1, 0.2)
		if b, ok := Bundle(n, 0.2); !ok || b >= a {
			t.Errorf("%d wires: %v after %v", n, b, a)
		}
	}
	if _, ok := Altitude(70_000 * feet); ok {
		t.Error("70,000 ft")
	}
	if _, ok := FreeAir("8", 100); ok {
		t.Error("8 AWG was not read")
	}
	if _, ok := FreeAir("22", 0); ok {
		t.Error("no rise")
	}
}

// space is the bundle factor of MIL-STD-975M, appendix A, 3.16: round single wires in a
// helical bundle, in vacuum. Source: published audit notes on that appendix.
//
//	(29 − N)/28 for 2 ≤ N ≤ 15, 0.5 for more
func space(n int) float64 {
	if n > 15 {
		return 0.5
	}
	return (29 - float64(n)) / 28
}

// Another agency's formula against the chart: it asks how many wires there are, not how
// much of them is in use. Its points lie between the chart's 20 and 80 % curves from
// three wires to fifteen, and both are 1 for one wire. Its tabled examples: 20 AWG 6.5 A
// alone and 3.7 A in a bundle (the latter read, the former from memory) is 0.57, 12 AWG
// 25 and 11.5 A is 0.46, on either side of its own 0.5.
func TestAgainstSpaceFormula(t *testing.T) {
	if space(1) != 1 || space(15) != 0.5 || space(16) != 0.5 {
		t.Fatal("the formula itself")
	}
	for n := 3; n <= 15; n++ {
		high, _ := Bundle(n, 0.2)
		low, _ := Bundle(n, 0.8)
		if f := space(n); f > float64(high) || f < float64(low) {
			t.Errorf("%d wires: %.3f, the chart %.3f to %.3f", n, f, float64(low), float64(high))
		}
	}
	for _, c := range []struct{ alone, bundle float64 }{{6.5, 3.7}, {25, 11.5}} {
		near(t, "tabled over alone", c.bundle/c.alone, space(20), 0.08)
	}
}
