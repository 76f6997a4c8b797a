package plan

import (
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
