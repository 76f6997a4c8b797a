package plan

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"testing"
	"time"
)

// The questions a bench asks: what counts is the slowest press of twenty, so p95
// is reported beside the mean.
func BenchmarkMake(b *testing.B) {
	for _, c := range []struct {
		name string
		ask  Ask
	}{
		{"34 of one", Ask{Sizes: []Size{{D: 1.09, N: 34}}}},
		{"24 of three", Ask{Sizes: []Size{{D: 1.09, N: 8}, {D: 1.27, N: 8}, {D: 1.73, N: 8}}, Spares: 2}},
		{"39 of three", Ask{Sizes: []Size{{D: 1.09, N: 34}, {D: 1.73, N: 4}, {D: 2.7, N: 1}}, Spares: 3}},
		{"40 of four", Ask{Sizes: []Size{{D: 1.09, N: 24}, {D: 1.27, N: 10}, {D: 1.73, N: 4}, {D: 2.7, N: 2}}}},
		{"60 of four", Ask{Sizes: []Size{{D: 1.09, N: 36}, {D: 1.27, N: 14}, {D: 1.73, N: 7}, {D: 2.7, N: 3}}}},
		{"80 of four", Ask{Sizes: []Size{{D: 1.09, N: 48}, {D: 1.27, N: 20}, {D: 1.73, N: 8}, {D: 2.7, N: 4}}}},
		{"130 of five", Ask{Sizes: []Size{{D: 1.09, N: 60}, {D: 1.27, N: 30}, {D: 1.73, N: 20}, {D: 2.16, N: 12}, {D: 2.7, N: 8}}}},
		{"160 of four", Ask{Sizes: []Size{{D: 1.09, N: 96}, {D: 1.27, N: 40}, {D: 1.73, N: 16}, {D: 2.7, N: 8}}}},
		{"150 of six", Ask{Sizes: []Size{{D: 0.94, N: 30}, {D: 1.09, N: 60}, {D: 1.27, N: 30}, {D: 1.52, N: 15}, {D: 1.73, N: 10},
			{D: 2.6, N: 5}}}},
	} {
		b.Run(c.name, func(b *testing.B) {
			c.ask.Rules, c.ask.Centres = shop, UnequalCentres
			b.ReportAllocs()
			var took []time.Duration
			var ps []Plan
			for b.Loop() {
				from := time.Now()
				ps = Make(c.ask)
				took = append(took, time.Since(from))
			}
			slices.Sort(took)
			b.ReportMetric(float64(took[len(took)*95/100].Microseconds())/1000, "p95-ms")
			b.ReportMetric(float64(ps[0].Cost), "cost")
			b.ReportMetric(float64(len(ps)), "plans")
			if ps[0].Proven {
				b.ReportMetric(1, "proven")
			}
		})
	}
}

// How many of seeded questions are proven within a second, and the gap of those that are not.
func BenchmarkProve(b *testing.B) {
	catalogue := []float64{0.94, 1.09, 1.27, 1.52, 1.73, 2.16, 2.7, 3.4}
	for _, c := range []struct{ most, sizes, questions int }{{38, 3, 100}, {60, 3, 50}, {40, 5, 50}} {
		b.Run(fmt.Sprintf("%d of %d", c.most, c.sizes), func(b *testing.B) {
			for b.Loop() {
				rng := rand.New(rand.NewPCG(38, 3))
				proven, gap, worst, effort := 0, 0.0, time.Duration(0), 0
				for range c.questions {
					a := Ask{Rules: shop, Centres: UnequalCentres + Centres(rng.IntN(2))}
					n := c.most - rng.IntN(c.most/3)
					share, sum := make([]float64, c.sizes), 0.0
					by := slices.Sorted(slices.Values(rng.Perm(len(catalogue))[:c.sizes]))
					for i, k := range by {
						share[i] = (0.1 + rng.Float64()) / math.Pow(catalogue[k], 1.2)
						sum += share[i]
					}
					for i, k := range by {
						a.Sizes = append(a.Sizes, Size{D: mm(catalogue[k]), N: max(1, int(share[i]/sum*float64(n)))})
					}
					q, from := Begin(a), time.Now()
					for q.Run(10_000) && !q.Plans()[0].Proven && time.Since(from) < time.Second {
					}
					worst, effort = max(worst, time.Since(from)), max(effort, q.Spent())
					if p := q.Plans()[0]; p.Proven {
						proven++
					} else {
						gap = max(gap, 100*(1-float64(p.Least/p.Cost)))
					}
				}
				b.ReportMetric(float64(proven), "proven")
				b.ReportMetric(gap, "%gap")
				b.ReportMetric(worst.Seconds(), "s-worst")
				b.ReportMetric(float64(effort), "effort-most")
			}
		})
	}
}
