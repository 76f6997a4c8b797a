package plan

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"contralay/calc/formula/lay"
	"contralay/model/unit"
)

// More effort is never worse: no more limits are left, and of the same the first costs no more; nor does
// a bound ever fall or pass the best.
func TestMoreEffortIsNeverWorse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		q := Begin(someAsk(t, 60, 0))
		var before Plan
		for k := range 8 {
			more := q.Run(rapid.IntRange(1, 30_000).Draw(t, "effort"))
			p := q.Plans()[0]
			if k > 0 && (p.Relaxed > before.Relaxed || p.Relaxed == before.Relaxed && p.Cost > before.Cost+1e-9) {
				t.Fatalf("after more effort %+v, before %+v", p, before)
			}
			if p.Least > p.Cost+1e-9 || k > 0 && p.Relaxed == before.Relaxed && p.Least < min(before.Least, p.Cost)-1e-9 {
				t.Fatalf("at least %v, costs %v; before at least %v", p.Least, p.Cost, before.Least)
			}
			if before.Proven && before.Relaxed == p.Relaxed && math.Abs(float64(p.Cost-before.Cost)) > 1e-9 {
				t.Fatalf("proven at %v, and then %v", before.Cost, p.Cost)
			}
			if before = p; !more {
				break
			}
		}
	})
}

// However a search is sliced, the same effort finds the same.
func TestSlicesChangeNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := someAsk(t, 60, 0)
		whole, sliced := Begin(a), Begin(a)
		effort := rapid.IntRange(1000, 60_000).Draw(t, "effort")
		whole.Run(effort)
		for sliced.Spent() < whole.Spent() {
			if !sliced.Run(1 + min(rapid.IntRange(0, 5000).Draw(t, "slice"), whole.Spent()-sliced.Spent()-1)) {
				break
			}
		}
		if whole.Spent() != sliced.Spent() {
			t.Fatalf("%d spent at once, %d in slices", whole.Spent(), sliced.Spent())
		}
		if diff := cmp.Diff(whole.Plans(), sliced.Plans()); diff != "" {
			t.Error(diff)
		}
	})
}

// Plans differ only where Finds has grown, and Reach says of them what they say themselves.
func TestFindsAndReach(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		q := Begin(someAsk(t, 60, 0))
		finds, before := -1, []Plan(nil)
		for range 8 {
			more := q.Run(rapid.IntRange(1, 20_000).Draw(t, "effort"))
			now := q.Plans()
			reach, ok := q.Reach()
			if first := now[0]; !ok || reach.Relaxed != first.Relaxed || reach.Least != first.Least || reach.Proven != first.Proven {
				t.Fatalf("reach %+v of %+v", reach, first)
			}
			if reach.All && !now[len(now)-1].Proven {
				t.Fatalf("nothing is left out, and %+v is not sure of it", now[len(now)-1])
			}
			same := cmp.Diff(before, now, cmp.FilterPath(func(p cmp.Path) bool {
				return p.Last().String() == ".Proven" || p.Last().String() == ".Least"
			}, cmp.Ignore()))
			if n := q.Finds(); n == finds && same != "" {
				t.Fatalf("nothing was found, and yet:\n%s", same)
			} else {
				finds, before = n, now
			}
			if !more {
				break
			}
		}
	})
}

// No ring adds less to over than the bound by area says, whatever lies in it.
func TestBoundByArea(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 9))
	rings := 0
	for range 6000 {
		a := Ask{Rules: shop, Centres: UnequalCentres}
		a.Rules.LayRatio = []unit.Ratio{6, 8, 12, 16}[rng.IntN(4)]
		thin := 0.5 + rng.Float64()
		sizes := 1 + rng.IntN(4)
		for range sizes {
			a.Sizes = append(a.Sizes, Size{D: mm(thin * (1 + 7*rng.Float64()*rng.Float64())), N: 1})
		}
		s := newStacking(a)
		b := newBounds(s)
		bed := lay.Bed{Crown: mm(thin * (1 + 12*rng.Float64()))}
		bed.Tape = bed.Crown * mm(0.85+0.15*rng.Float64())
		var ds []mm
		cnt, area := make([]int, len(s.d)), 0.0
		how := lay.Laying{Ratio: a.Rules.LayRatio}
		for lay.Closes(ds, bed, how, 0.05) {
			i := rng.IntN(len(s.d))
			if rng.IntN(3) > 0 && len(ds) > 0 {
				i = len(s.d) - 1
			}
			ds = append(ds, mm(s.d[i]))
			if !lay.Closes(ds, bed, how, 0.05) {
				break
			}
			cnt[i]++
			area += s.d[i] * s.d[i]
		}
		if ds = ds[:len(ds)-1]; len(ds) < 3 {
			continue
		}
		rings++
		ring := lay.LayZigZag(ds, bed, how)
		lo, hi, n := s.span(cnt)
		if adds := float64(ring.Over - bed.Crown); b.byArea(float64(bed.Crown), area, lo, hi) > adds+1e-9 {
			t.Errorf("%v on %+v at %v adds %.4f, the bound is %.4f", ds, bed, how.Ratio, adds,
				b.byArea(float64(bed.Crown), area, lo, hi))
		}
		if !b.closes(cnt, float64(bed.Crown), lo, hi, n) {
			t.Errorf("%v closes on %+v, and the bound says that it cannot", ds, bed)
		}
	}
	if rings < 3000 {
		t.Errorf("only %d rings", rings)
	}
}

// A centre of so many and so many layers round it are what every plan has, if there is any.
func TestForcedShape(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := someAsk(t, 40, 3000)
		a.CentreN, a.Round = rapid.IntRange(0, 4).Draw(t, "centre"), rapid.IntRange(0, 4).Draw(t, "layers")
		for _, p := range Make(a) {
			if a.Round > 0 && len(p.Layers)-1 != a.Round || a.CentreN > 0 && p.Layers[0].Count() != a.CentreN {
				t.Errorf("%d in the centre and %d layers, asked for %d and %d", p.Layers[0].Count(), len(p.Layers)-1, a.CentreN, a.Round)
			}
		}
	})
}
