package plan

import (
	"math"
	"strconv"
	"testing"

	"contralay/model/typedtest"
)

// TestPackingsTypedTwice compares the packings that the other tests here go by with those typed by
// another hand, digit by digit.
func TestPackingsTypedTwice(t *testing.T) {
	typed := typedtest.Must(t, "packing")
	for n := 1; n < len(packed); n++ {
		if want, ok := typed.Number(strconv.Itoa(n), "ratio"); !ok || packed[n] != want {
			t.Errorf("%d circles: %v, typed %v", n, packed[n], want)
		}
	}
}

// TestFactorsTypedTwice: the factors of concentric strands that are published are those of a
// planned bundle of so many equal wires within 0.03 d, by which layers stand off.
func TestFactorsTypedTwice(t *testing.T) {
	strands := typedtest.Must(t, "strand_factor")
	for _, row := range strands.Rows {
		n, _ := strconv.Atoi(row)
		if n > 91 {
			continue // no harness
		}
		want, _ := strands.Number(row, "factor")
		least := math.Inf(1)
		for _, p := range Make(Ask{Sizes: []Size{{D: 1, N: n}}, Rules: shop, Centres: EqualCentres}) {
			least = math.Min(least, float64(p.Over))
		}
		if math.Abs(least-want) > 0.03 {
			t.Errorf("%d wires: %.4f d, published %v", n, least, want)
		}
	}
}
