package plan

import (
	"fmt"
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"contralay/calc/formula/lay"
	"contralay/model/unit"
)

// someAsk draws 1 to most components of up to four sizes between 0.6 and 6 mm.
func someAsk(t *rapid.T, most, effort int) Ask {
	a := Ask{Rules: shop, Effort: effort, Centres: Centres(rapid.IntRange(0, 2).Draw(t, "centres"))}
	a.Rules.LayRatio = unit.Ratio(rapid.SampledFrom([]float64{8, 10, 12, 16}).Draw(t, "ratio"))
	a.Spares = rapid.IntRange(0, 3).Draw(t, "spares")
	left := rapid.IntRange(1, most).Draw(t, "components")
	for k := rapid.IntRange(1, 4).Draw(t, "sizes"); k > 0 && left > 0; k-- {
		n := left
		if k > 1 {
			n = rapid.IntRange(1, left).Draw(t, "of this")
		}
		d := math.Round(rapid.Float64Range(0.6, 6).Draw(t, "d")*100) / 100
		a.Sizes = append(a.Sizes, Size{D: mm(d), N: n})
		left -= n
	}
	return a
}

// holds checks that a plan holds every component and keeps what it says it keeps,
// laying every layer again.
func holds(t *rapid.T, a Ask, p Plan) {
	have, fillers, spares, total := map[mm]int{}, 0, 0, a.Spares
	for _, l := range p.Layers {
		for i, d := range l.Sizes {
			have[d] += l.N[i]
		}
		fillers, spares = fillers+l.Fillers, spares+l.Spares
	}
	want := map[mm]int{}
	for _, z := range a.Sizes {
		want[z.D] += z.N
		total += z.N
	}
	extra := 0
	for d, n := range have {
		if n < want[d] {
			t.Errorf("%d of %v, need %d", n, d, want[d])
		}
		extra += n - want[d]
	}
	if len(have) != len(want) || extra != p.Spares || spares != p.Spares || p.Spares > a.Spares {
		t.Errorf("%d sizes of %d, %d too many, %d spares told, %d in layers", len(have), len(want), extra, p.Spares, spares)
	}
	if fillers != p.Fillers || fillers > max(total, 6) {
		t.Errorf("%d fillers in layers, %d told, %d components", fillers, p.Fillers, total)
	}
	lift := a.Rules.LiftMax
	if p.Relaxed == GapLift {
		lift = a.Rules.LiftTight
	}
	if p.Relaxed == Nothing {
		lift = unit.Ratio(math.Inf(1))
	}
	bed := lay.Bed{Crown: p.Layers[0].Over, Tape: p.Layers[0].Tape}
	for i, l := range p.Layers[1:] {
		var ds []mm
		for k, d := range l.Sizes {
			n := l.N[k]
			if k == 0 {
				n += l.Fillers
			}
			for range n {
				ds = append(ds, d)
			}
		}
		ring := lay.LayZigZag(ds, bed, lay.Laying{Ratio: a.Rules.LayRatio})
		limit := a.Rules.GapInner
		if i == len(p.Layers)-2 {
			limit = a.Rules.GapOuter
		}
		if p.Relaxed > Keeps {
			limit = 1
		}
		if ring.Lift > lift+1e-9 || ring.Gap > limit+1e-9 {
			t.Errorf("layer %d: lift %.4f gap %.4f, relaxed %d", i+1, ring.Lift, ring.Gap, p.Relaxed)
		}
		if ring.Over != l.Over || ring.Tape != l.Tape || ring.Gap != l.Gap || ring.Proud != l.Proud || l.Takes != len(ds)+l.Room {
			t.Errorf("layer %d: %+v, laid again %+v", i+1, l, ring)
		}
		bed = lay.Bed{Crown: l.Over, Tape: l.Tape}
	}
	if bed.Crown != p.Over {
		t.Errorf("over %v, last layer %v", p.Over, bed.Crown)
	}
	for _, v := range []float64{float64(p.Cost), float64(p.Over)} {
		if !unit.Finite(v) {
			t.Errorf("not a number: %+v", p)
		}
	}
}

// There is always a plan; it holds everything and keeps what it says. Little
// effort, so that questions too large to search to the end come up, too.
func TestEveryPlanHolds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := someAsk(t, rapid.SampledFrom([]int{12, 30, 60}).Draw(t, "most"), rapid.SampledFrom([]int{1, 300, 3000}).Draw(t, "effort"))
		ps := Make(a)
		if len(ps) == 0 {
			t.Fatal("no plan")
		}
		for i, p := range ps {
			holds(t, a, p)
			if i > 0 && p.Cost < ps[i-1].Cost {
				t.Errorf("plan %d is cheaper than the one before", i)
			}
			for k, q := range ps[:i] {
				// The cheapest may be beaten by one that is dearer for what its layers mix.
				if k > 0 && dominates(p, q) || dominates(q, p) {
					t.Errorf("one of %s and %s beats the other", lines([]Plan{p}), lines([]Plan{q}))
				}
			}
		}
	})
}

func dominates(p, q Plan) bool {
	return p.Fillers <= q.Fillers && hundredths(float64(p.Over)) <= hundredths(float64(q.Over)) && p.Lumpy <= q.Lumpy &&
		p.Spares >= q.Spares
}

// The order of the sizes, and whether one is named twice, changes nothing.
func TestOrderOfSizes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := someAsk(t, 20, 3000)
		b := a
		b.Sizes = rapid.Permutation(a.Sizes).Draw(t, "shuffled")
		if z := b.Sizes[0]; z.N > 1 {
			b.Sizes = append(append([]Size{}, b.Sizes[1:]...), Size{D: z.D, N: 1}, Size{D: z.D, N: z.N - 1})
		}
		if diff := cmp.Diff(Make(a), Make(b)); diff != "" {
			t.Error(diff)
		}
	})
}

// Everything twice as thick costs twice as much. Rounding to 0.01 mm may tell
// plans apart that were one before, so only the cheapest of proven answers are
// held against each other, and of repeatable questions.
func TestScale(t *testing.T) {
	for _, a := range smallAsks() {
		b := a
		b.Sizes = nil
		for _, z := range a.Sizes {
			b.Sizes = append(b.Sizes, Size{D: 2 * z.D, N: z.N})
		}
		p, q := Make(a), Make(b)
		if !p[0].Proven || !q[0].Proven {
			continue
		}
		if math.Abs(2*float64(p[0].Cost)-float64(q[0].Cost)) > 1e-9 {
			t.Errorf("%v: cost %v, twice as thick %v", a.Sizes, p[0].Cost, q[0].Cost)
		}
		if math.Abs(2*float64(p[0].Over)-float64(q[0].Over)) > 1e-9 {
			t.Errorf("%v: over %v, twice as thick %v", a.Sizes, p[0].Over, q[0].Over)
		}
	}
}

// thinnest is the least over of all plans offered, to 0.01 mm.
func thinnest(ps []Plan) int {
	least := math.MaxInt
	for _, p := range ps {
		least = min(least, hundredths(float64(p.Over)))
	}
	return least
}

// Equal components never make a thinner bundle when one is added.
func TestOneMoreEqualIsNeverThinner(t *testing.T) {
	for _, ratio := range []unit.Ratio{8, 10, 12, 16} {
		t.Run(fmt.Sprint(ratio), func(t *testing.T) {
			before := 0
			for n := 1; n <= 61; n++ {
				a := Ask{Sizes: []Size{{D: 1.09, N: n}}, Rules: shop, Centres: UnequalCentres}
				a.Rules.LayRatio = ratio
				ps := Make(a)
				now := thinnest(ps)
				if now < before {
					t.Errorf("%d: %d.%02d mm, one fewer %d.%02d mm (relaxed %d)", n, now/100, now%100, before/100, before%100,
						ps[0].Relaxed)
				}
				before = now
			}
		})
	}
}

// Any effort, any nonsense: an answer or none, never a crash; and always one where
// there is something to lay.
func TestLittleEffort(t *testing.T) {
	big := []Size{{D: 1.09, N: 90}, {D: 1.27, N: 40}, {D: 1.73, N: 30}, {D: 2.7, N: 20}}
	for _, effort := range []int{-1, 1, 7, 5000} {
		sizes := big
		if effort < 0 {
			sizes = big[3:]
		}
		for _, c := range []Centres{EqualCentres, UnequalCentres, BuiltCentres} {
			ps := Make(Ask{Sizes: sizes, Spares: 4, Rules: shop, Centres: c, Effort: effort})
			if len(ps) == 0 {
				t.Errorf("effort %d, centres %d: no plan", effort, c)
			}
		}
	}
	for _, none := range [][]Size{nil, {}, {{D: 0, N: 3}}, {{D: 1, N: 0}}, {{D: -1, N: 2}}, {{D: 1, N: -2}}, {{D: mm(math.NaN()), N: 1}},
		{{D: mm(math.Inf(1)), N: 1}}} {
		if ps := Make(Ask{Sizes: none, Rules: shop}); len(ps) != 0 {
			t.Errorf("%v: %d plans", none, len(ps))
		}
	}
	for _, p := range Make(Ask{Sizes: []Size{{D: 1, N: 9}, {D: 3, N: 2}}}) {
		if !unit.Finite(float64(p.Over)) || !unit.Finite(float64(p.Cost)) {
			t.Errorf("no rules at all: %+v", p)
		}
	}
}

// No gap and no lift allowed: seven equal close on no round core so exactly, so
// the gap limits go first, and with them every filler.
func TestGapLimitsGoFirst(t *testing.T) {
	a := Ask{Sizes: []Size{{D: 1.09, N: 7}}, Rules: shop}
	a.Rules.GapInner, a.Rules.GapOuter, a.Rules.LiftMax = 0, 0, 0
	ps := Make(a)
	if len(ps) != 1 || ps[0].Relaxed != Gaps || ps[0].Fillers != 0 {
		t.Errorf("%+v", ps)
	}
}
