package heat

import (
	"math"
	"testing"

	"contralay/model/typedtest"
	"contralay/model/unit"
)

// TestConstantsTypedTwice compares the constants with those typed by another hand. The conductivity
// of ETFE is quoted as 0.238, and as 0.238 to 0.24, of which the upper end is used.
func TestConstantsTypedTwice(t *testing.T) {
	air := typedtest.Must(t, "air")
	value := func(row string) float64 {
		v, ok := air.Number(row, "value")
		if !ok {
			t.Fatalf("no %s", row)
		}
		return v
	}
	for _, k := range []float64{250, 300, 400, 500} {
		got := airAt(k, seaLevel)
		mu := value("mu factor") * math.Pow(k, 1.5) / (k + value("mu 110.4"))
		conducts := value("k factor") * math.Pow(k, 1.5) / (k + value("k 245.4")*math.Pow(10, -12/k))
		if math.Abs(got.mu/mu-1) > 1e-9 || math.Abs(got.k/conducts-1) > 1e-9 {
			t.Errorf("air at %v K: %v and %v, typed %v and %v", k, got.mu, got.k, mu, conducts)
		}
	}
	for _, h := range []float64{0, 500, 3000, 6096} {
		want := value("pressure at sea level pa") * math.Pow(1-value("pressure slope per m")*h, value("pressure exponent"))
		if got := Pressure(unit.Millimetre(1000 * h)); math.Abs(got/want-1) > 1e-9 {
			t.Errorf("%v m: %v Pa, typed %v", h, got, want)
		}
	}
	zero, _ := typedtest.Must(t, "copper").Number("zero_resistance_below_0_c", "value")
	if copperZero != zero {
		t.Errorf("copper %v, typed %v", copperZero, zero)
	}
	if etfe, _ := typedtest.Must(t, "material").Number("ETFE", "conductivity_w_m_k"); math.Abs(float64(InsulationK)-etfe) > 0.0021 {
		t.Errorf("ETFE %v, typed %v", InsulationK, etfe)
	}
}
