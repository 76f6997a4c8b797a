package plan

import (
	"math/rand/v2"
	"testing"

	"contralay/calc/formula/lay"
	"contralay/model/unit"
)

// Layers of fewer than dense says would each be given up by the bound of what is still to come: nothing is left
// out that could become cheaper.
func TestDenseLeavesOutNothing(t *testing.T) {
	rng := rand.New(rand.NewPCG(4, 4))
	left := 0
	for range 20_000 {
		a := Ask{Rules: shop, Centres: UnequalCentres, Spares: rng.IntN(3)}
		a.Rules.LayRatio = []unit.Ratio{6, 8, 12, 16}[rng.IntN(4)]
		for range 1 + rng.IntN(4) {
			a.Sizes = append(a.Sizes, Size{D: mm(0.8 + 2*rng.Float64()), N: 1 + rng.IntN(40)})
		}
		s := newStacking(a)
		tr := newTree(s)
		on := &label{crown: 0.8 + 14*rng.Float64(), spread: rng.Float64()}
		s.on, s.now = on, &node{n: make([]int, len(s.kinds))}
		s.fit.Take(on.crown, on.crown, lay.Laying{Ratio: a.Rules.LayRatio})
		for i, k := range s.kinds {
			s.now.n[i] = rng.IntN(k.need + 1)
		}
		j := rng.IntN(len(s.kinds))
		k := s.kinds[j]
		worth := s.soFar(on) + 2*s.d[k.size] + tr.toCome(on.crown+2*s.d[k.size])*(0.5+0.6*rng.Float64())
		tr.worth = func() float64 { return worth }
		fewest := tr.dense(j)
		for c := 1; c < fewest && c <= k.most-s.now.n[j]; c++ {
			left++
			s.take[j], s.cnt[k.size] = c, c
			crown := on.crown + 2*s.d[k.size]
			if least := s.soFar(on) - on.crown + crown + tr.toCome(crown); least < worth-hair {
				t.Fatalf("%d of %v are left out for fewer than %d, and come to %v at least: %v would be better", c, s.d[k.size], fewest,
					least, worth)
			}
		}
	}
	if left < 1000 {
		t.Errorf("only %d are left out", left)
	}
}
