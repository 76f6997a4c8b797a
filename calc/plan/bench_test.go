package plan

import "testing"

func BenchmarkMake(b *testing.B) {
	for _, c := range []struct {
		name string
		ask  Ask
	}{
		{"19 of one", Ask{Sizes: []Size{{1.09, 19}}, Spares: 2}},
		{"24 of three", Ask{Sizes: []Size{{1.09, 14}, {1.27, 7}, {1.73, 3}}, Spares: 2}},
		{"39 of three", Ask{Sizes: []Size{{1.09, 34}, {1.73, 4}, {2.7, 1}}, Spares: 3}},
		{"130 of four", Ask{Sizes: []Size{{1.09, 90}, {1.27, 24}, {1.73, 12}, {2.7, 4}}, Spares: 4}},
	} {
		b.Run(c.name, func(b *testing.B) {
			c.ask.Rules, c.ask.Centres = shop, UnequalCentres
			b.ReportAllocs()
			for b.Loop() {
				ps := Make(c.ask)
				b.ReportMetric(float64(ps[0].Cost), "cost")
				b.ReportMetric(float64(len(ps)), "plans")
				if ps[0].Proven {
					b.ReportMetric(1, "proven")
				}
			}
		})
	}
}
