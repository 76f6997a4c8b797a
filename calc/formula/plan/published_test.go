package plan

import (
	"fmt"
	"math"
	"testing"
)

// packed is the best known packing of N equal circles of radius 1 in a circle, by
// N. Source: Graham and Lubachevsky, arXiv math/0406098, and the public list of
// best known values; 1 to 13, 14 and 19 are proved. No laid bundle is thinner.
var packed = []float64{0, 1, 2, 2.154701, 2.414214, 2.701302, 3, 3, 3.304765, 3.613126, 3.813026, 3.923804, 4.029602,
	4.236068, 4.328429, 4.521357, 4.615426, 4.792034, 4.863703, 4.863703, 5.122321, 5.252317, 5.439719, 5.545204, 5.651661,
	5.752824, 5.828177, 5.906398, 6.014938, 6.138598, 6.197741}

func TestNoPlanBeatsThePackings(t *testing.T) {
	for n := 1; n < len(packed); n++ {
		for _, c := range []Centres{EqualCentres, UnequalCentres, BuiltCentres} {
			for _, p := range Make(Ask{Sizes: []Size{{D: 1, N: n}}, Spares: 2, Rules: shop, Centres: c}) {
				// Printed to 1e-6; a filler or spare only takes more room.
				if float64(p.Over) < packed[n]-1e-6 {
					t.Errorf("%d: over %.6f, the best packing needs %.6f", n, p.Over, packed[n])
				}
			}
		}
	}
}

// At a full count of a family the bundle is as thick as the concentric stranding
// factors say, within 0.03 d at ratio 12, by which the layers stand off. Source:
// published factors 7, 12, 19, 37, 61, 91 (a cable engineering article on conductor
// diameters, 2015); the others are the same rule, centre + 2 d a layer.
func TestConcentricFactors(t *testing.T) {
	for _, c := range []struct {
		n      int
		factor float64
	}{
		{1, 1}, {2, 2}, {3, 2.155}, {4, 2.414}, {5, 2.701}, {7, 3}, {10, 4}, {12, 4.155}, {14, 4.414}, {16, 4.701}, {19, 5}, {24, 6},
		{27, 6.155}, {30, 6.414}, {33, 6.701}, {37, 7}, {44, 8}, {48, 8.155}, {52, 8.414}, {56, 8.701}, {61, 9}, {91, 11},
	} {
		t.Run(fmt.Sprint(c.n), func(t *testing.T) {
			least := math.Inf(1)
			for _, p := range Make(Ask{Sizes: []Size{{D: 1, N: c.n}}, Rules: shop, Centres: EqualCentres}) {
				least = math.Min(least, float64(p.Over))
			}
			if math.Abs(least-c.factor) > 0.03 {
				t.Errorf("%.4f d, published %.3f d", least, c.factor)
			}
		})
	}
}
