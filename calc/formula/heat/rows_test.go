package heat

import (
	"fmt"
	"math"
	"testing"

	"contralay/model/unit"
)

// Ten bundles of AS22759/32 laid evenly 1-6-12-18, 1 m, lay ratio 12, in a sheath written in
// the file, solved elsewhere by finite volumes over the real circles: the hottest conductor,
// of the first row the outer layer. Within 10 % of the rise over the air, and never more than
// 5 % below it. Each layer stands 0.0229 of a wire off what touching circles would give, and
// takes up 1.5, 2.2 and 2.5 % more wire than the bundle is long: what the lay ratio leads to.
func TestTenRows(t *testing.T) {
	one := func(inner, outer float64) func(i, n int) float64 {
		return func(i, n int) float64 {
			switch {
			case i == n-1:
				return outer
			case i < 7:
				return inner
			}
			return 0
		}
	}
	for _, c := range []struct {
		size       string
		counts     []int
		amps       func(i, n int) float64
		wall, air  float64
		want       float64
		outerLayer bool
	}{
		{"22", []int{1, 6, 12, 18}, func(int, int) float64 { return 2 }, 1.03, 25, 49, true},
		{"22", []int{1, 6, 12, 18}, one(2, 17.61), 1.03, 71, 198, false},
		{"22", []int{1, 6, 12, 18}, one(0, 18.16), 1.03, 71, 204, false},
		{"22", []int{1, 6, 12, 18}, one(0, 13), 1.03, 71, 132, false},
		{"22", []int{1, 6, 12, 18}, one(0, 9), 1.03, 71, 99, false},
		{"26", []int{1, 6, 12, 18}, one(0, 10.2), 0.87, 71, 189, false},
		{"26", []int{1, 6, 12}, one(0, 9.2), 0.75, 71, 168, false},
		{"22", []int{1, 6, 12}, one(0, 7.6), 0.89, 71, 92.0, false},
		{"22", []int{1, 6}, one(0, 9.97), 0.63, 71, 107.8, false},
		{"26", []int{1, 6}, one(0, 7.9), 0.54, 71, 141.5, false},
	} {
		over, core, ohm := 1.09, 0.762, 53.15 // 16.20 Ω/1000 ft
		if c.size == "26" {
			over, core, ohm = 0.81, 0.483, 135.5 // 41.3
		}
		takesUp := []float64{1, 1.015, 1.022, 1.025}
		s := Section{Ambient: unit.Celsius(c.air)}
		n := 0
		for _, count := range c.counts {
			n += count
		}
		for k, count := range c.counts {
			radius := 0.0
			if k > 0 {
				radius = over * (float64(k) + 0.0229/2)
			}
			s.InsideMM = unit.Millimetre(2*radius + over)
			for j := range count {
				sin, cos := math.Sincos(2 * math.Pi * float64(j) / float64(count))
				s.Discs = append(s.Discs, Disc{X: unit.Millimetre(radius * sin), Y: unit.Millimetre(radius * cos),
					OverMM: unit.Millimetre(over),
					CoreMM: unit.Millimetre(core), Ohm: unit.OhmPerKilometre(ohm * takesUp[k]), Amps: unit.Ampere(c.amps(len(s.Discs), n))})
			}
		}
		s.OutsideMM = s.InsideMM + unit.Millimetre(2*c.wall)
		rays, _ := Trace(s)
		r, ok := rays.Solve(s)
		if !ok {
			t.Fatal("no balance")
		}
		got, from := float64(s.Ambient), 0
		if c.outerLayer {
			from = n - c.counts[len(c.counts)-1]
		}
		for _, v := range r.Discs[from:] {
			got = math.Max(got, float64(v))
		}
		rise := c.want - c.air
		off := (got - c.want) / rise
		says := fmt.Sprintf("%d x %s AWG, the last at %v A: %.1f C, by finite volumes %v, %+.1f %% of the rise", n, c.size, c.amps(n-1, n),
			got,
			c.want, 100*off)
		t.Log(says)
		if off < -0.05 || off > 0.10 {
			t.Error(says)
		}
	}
}
