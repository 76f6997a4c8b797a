package plan

import (
	"fmt"
	"math"
	"strings"
	"testing"
)

var shop = Rules{LayRatio: 12, LiftMax: 0.05, LiftTight: 0.08, GapInner: 0.10, GapOuter: 0.15, LumpyAt: 1.3, FillerWeight: 0.1,
	SpareGain: 0.15}

// aloud says a plan as a builder does: the count of each layer, fillers included.
func aloud(p Plan) string {
	var out []string
	for i, l := range p.Layers {
		n := l.Count()
		if i > 0 {
			n += l.Fillers
		}
		out = append(out, fmt.Sprint(n))
	}
	return strings.Join(out, " ")
}

// Worked plans at ratio 12. Derived for this rule, not published: found by
// exhaustive search and reproduced by a second program; all figures
// printed to 0.001, so half a unit of that is the tolerance.
func TestWorkedPlans(t *testing.T) {
	type row struct {
		cost    float64
		fillers int
		over    float64
		lumpy   int
		spares  int
		aloud   string
	}
	for _, c := range []struct {
		name   string
		sizes  []Size
		spares int
		want   []row
	}{
		{"1x1.27 1x1.09", []Size{{D: 1.27, N: 1}, {D: 1.09, N: 1}}, 0, []row{{2.414, 0, 2.360, 0, 0, "2"}}},
		{"16x1.09", []Size{{D: 1.09, N: 16}}, 0, []row{{5.201, 1, 5.124, 0, 0, "5 11"}}},
		{"16x1.09 3 spares", []Size{{D: 1.09, N: 16}}, 3, []row{{4.984, 0, 5.475, 0, 3, "1 6 12"}, {5.201, 1, 5.124, 0, 0, "5 11"}}},
		{"34x1.09", []Size{{D: 1.09, N: 34}}, 0, []row{{7.655, 0, 7.655, 0, 0, "1 6 11 16"}}},
		{"34x1.09 3 spares", []Size{{D: 1.09, N: 34}}, 3, []row{{7.164, 0, 7.655, 0, 3, "1 6 12 18"}}},
		{"38x1.09", []Size{{D: 1.09, N: 38}}, 0, []row{{9.265, 5, 8.720, 0, 0, "2 8 14 19"}}},
		{"12x1.09 3x1.73", []Size{{D: 1.09, N: 12}, {D: 1.73, N: 3}}, 0, []row{{5.908, 0, 5.908, 0, 0, "3 12"}}},
		{"8x1.27 1x2.62", []Size{{D: 1.27, N: 8}, {D: 2.62, N: 1}}, 0, []row{{5.160, 0, 5.160, 0, 0, "1 8"}}},
		{"10x1.09 1x2.4", []Size{{D: 1.09, N: 10}, {D: 2.4, N: 1}}, 0, []row{{4.681, 0, 4.681, 0, 0, "1 10"}}},
		{"2x1.09 1x2.4", []Size{{D: 1.09, N: 2}, {D: 2.4, N: 1}}, 0, []row{{4.841, 0, 3.531, 1, 0, "3"}, {7.940, 4, 6.980, 0, 0, "2 5"}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := Make(Ask{Sizes: c.sizes, Spares: c.spares, Rules: shop, Centres: UnequalCentres})
			var all []string
			for _, p := range got {
				all = append(all, fmt.Sprintf("%.3f·%d·%.3f·%d·%d %s %v", p.Cost, p.Fillers, p.Over, p.Lumpy, p.Spares, aloud(p), p.Proven))
			}
			if len(got) != len(c.want) {
				t.Fatalf("got %d plans, want %d:\n%s", len(got), len(c.want), strings.Join(all, "\n"))
			}
			for i, w := range c.want {
				p := got[i]
				if math.Abs(float64(p.Cost)-w.cost) > 6e-4 || math.Abs(float64(p.Over)-w.over) > 6e-4 ||
					p.Fillers != w.fillers || p.Lumpy != w.lumpy || p.Spares != w.spares || aloud(p) != w.aloud || !p.Proven {
					t.Errorf("plan %d: got %s, want %v", i, all[i], w)
				}
			}
		})
	}
}
