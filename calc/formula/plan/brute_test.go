package plan

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"contralay/calc/formula/lay"
	"contralay/model/shorttest"
	"contralay/model/unit"
)

type mm = unit.Millimetre

// brute tries every centre and every row of layers of a small question. It shares
// nothing with the planner but the laying of one layer and of one centre.
type brute struct {
	ask        Ask
	d          []mm // thin to thick
	need, most []int
	fillerMost int
	best       map[figures]float64 // cheapest cost of each set of figures
}

type figures struct{ fillers, over, lumpy, spares int }

func newBrute(a Ask) *brute {
	b := &brute{ask: a, best: map[figures]float64{}}
	sizes := slices.Clone(a.Sizes)
	slices.SortFunc(sizes, func(x, y Size) int { return int(math.Copysign(1, float64(x.D-y.D))) })
	commonest, total := 0, a.Spares
	for i, z := range sizes {
		b.d, b.need = append(b.d, z.D), append(b.need, z.N)
		if z.N > sizes[commonest].N {
			commonest = i
		}
		total += z.N
	}
	b.most = slices.Clone(b.need)
	b.most[commonest] += a.Spares
	b.fillerMost = max(total, 6)
	return b
}

// heap is a stack so far.
type heap struct {
	bed     lay.Bed
	used    []int
	fillers int
	lumpy   int
	cost    float64 // all of cost but over and spares
}

// subsets calls f with every choice of what is left, none excluded.
func (b *brute) subsets(used []int, f func(take []int, n int)) {
	take := make([]int, len(used))
	var each func(i, n int)
	each = func(i, n int) {
		if i == len(used) {
			if n > 0 {
				f(take, n)
			}
			return
		}
		for k := 0; k <= b.most[i]-used[i]; k++ {
			take[i] = k
			each(i+1, n+k)
		}
		take[i] = 0
	}
	each(0, 0)
}

func (b *brute) diameters(take []int) (ds []mm) {
	for i, k := range take {
		for range k {
			ds = append(ds, b.d[i])
		}
	}
	return ds
}

func (s heap) with(take []int) []int {
	out := slices.Clone(s.used)
	for i, k := range take {
		out[i] += k
	}
	return out
}

// spread is what the sizes of one layer or centre add to cost and to lumpy layers.
func (b *brute) spread(ds []mm) (lumpy int, cost float64) {
	lo, hi := slices.Min(ds), slices.Max(ds)
	if hi > mm(b.ask.Rules.LumpyAt)*lo {
		return 1, float64(hi - lo)
	}
	return 0, 0.3 * float64(hi-lo)
}

func (b *brute) run() {
	b.subsets(make([]int, len(b.d)), func(take []int, n int) {
		ds := b.diameters(take)
		equal := slices.Min(ds) == slices.Max(ds)
		if n > 5 || !equal && (n > 3 || b.ask.Centres == EqualCentres) {
			return
		}
		g := lay.Centre(ds)
		s := heap{bed: lay.Bed{Crown: g.Over, Tape: g.Tape}, used: slices.Clone(take)}
		s.lumpy, s.cost = b.spread(ds)
		if n == 5 {
			s.fillers, s.cost = 1, s.cost+float64(b.ask.Rules.FillerWeight*unit.Ratio(g.Rod))
		}
		b.finish(s)
		b.onto(s)
		if n == 1 && b.ask.Centres == BuiltCentres {
			for _, places := range []int{7, 8} {
				up := lay.BuiltUp(places, ds[0], b.ask.Rules.LayRatio)
				fat := s
				fat.bed, fat.fillers = lay.Bed{Crown: up, Tape: up}, 1
				fat.cost += float64(b.ask.Rules.FillerWeight * unit.Ratio(up-ds[0]))
				b.onto(fat)
			}
		}
	})
}

func (b *brute) onto(s heap) {
	b.subsets(s.used, func(take []int, _ int) {
		ds := b.diameters(take)
		var rings []lay.Ring // of this layer, by its fillers: inner and outer differ in their limit alone
		for _, outer := range []bool{false, true} {
			if next, ok := b.layer(s, take, ds, &rings, outer); ok && outer {
				b.finish(next)
			} else if ok {
				b.onto(next)
			}
		}
	})
}

// layer puts the fewest fillers in that bring a layer to its gap limit.
func (b *brute) layer(s heap, take []int, ds []mm, rings *[]lay.Ring, outer bool) (heap, bool) {
	limit := b.ask.Rules.GapInner
	if outer {
		limit = b.ask.Rules.GapOuter
	}
	filler := slices.Min(ds)
	for f := 0; s.fillers+f <= b.fillerMost; f++ {
		if f == len(*rings) {
			*rings = append(*rings, lay.LayZigZag(ds, s.bed, lay.Laying{Ratio: b.ask.Rules.LayRatio}))
		}
		ring := (*rings)[f]
		if ring.Lift > b.ask.Rules.LiftMax+1e-12 {
			return heap{}, false
		}
		if ring.Gap <= limit {
			lumpy, cost := b.spread(ds)
			return heap{
				bed: lay.Bed{Crown: ring.Over, Tape: ring.Tape}, used: s.with(take),
				fillers: s.fillers + f, lumpy: s.lumpy + lumpy,
				cost: s.cost + cost + float64(f)*float64(b.ask.Rules.FillerWeight)*float64(filler),
			}, true
		}
		ds = append(ds, filler)
	}
	return heap{}, false
}

func (b *brute) finish(s heap) {
	spares, gain := 0, 0.0
	for i, k := range s.used {
		if k < b.need[i] {
			return
		}
		spares += k - b.need[i]
		gain += float64(b.ask.Rules.SpareGain) * float64(k-b.need[i]) * float64(b.d[i])
	}
	over := int(math.Floor(float64(s.bed.Crown)*100 + 0.5 + 1e-7))
	key := figures{s.fillers, over, s.lumpy, spares}
	cost := s.cost + float64(s.bed.Crown) - gain
	if old, ok := b.best[key]; !ok || cost < old {
		b.best[key] = cost
	}
}

// front is the figures no other beats, each with its cheapest cost, and the cheapest of all.
func (b *brute) front() []string {
	var out []string
	least := math.Inf(1)
	for _, cost := range b.best {
		least = math.Min(least, cost)
	}
	for k, cost := range b.best {
		beaten := false
		for o := range b.best {
			beaten = beaten || o != k && o.fillers <= k.fillers && o.over <= k.over && o.lumpy <= k.lumpy && o.spares >= k.spares
		}
		if !beaten || cost == least {
			out = append(out, k.line(cost))
		}
	}
	slices.Sort(out)
	return out
}

func (k figures) line(cost float64) string {
	return fmt.Sprintf("%d fillers, over %d.%02d, %d lumpy, %d spares: cost %.6f", k.fillers, k.over/100, k.over%100, k.lumpy, k.spares,
		cost)
}

func lines(ps []Plan) []string {
	var out []string
	for _, p := range ps {
		over := int(math.Floor(float64(p.Over)*100 + 0.5 + 1e-7))
		out = append(out, figures{p.Fillers, over, p.Lumpy, p.Spares}.line(float64(p.Cost)))
	}
	slices.Sort(out)
	return out
}

// smallAsks are questions brute can answer: up to nine components of one to three
// sizes and up to two spares. Repeatable.
func smallAsks() []Ask {
	rng := rand.New(rand.NewPCG(7, 7))
	catalogue := []mm{0.94, 1.09, 1.27, 1.52, 1.73, 2.16, 2.7, 5}
	var out []Ask
	for n := 1; n <= 9; n++ {
		out = append(out, Ask{Sizes: []Size{{D: 1.09, N: n}}, Spares: n % 3})
	}
	two, unequal := 45, 100 // questions of two sizes, and of one to three at unequal centres
	if shorttest.Long() {
		two, unequal = 90, 300
	}
	for range two {
		i, j := rng.IntN(len(catalogue)), rng.IntN(len(catalogue)-1)
		if j >= i {
			j++
		}
		n := 2 + rng.IntN(8)
		k := 1 + rng.IntN(n-1)
		out = append(out, Ask{Sizes: []Size{{D: catalogue[i], N: k}, {D: catalogue[j], N: n - k}}, Spares: rng.IntN(3)})
	}
	for i := range out {
		out[i].Rules, out[i].Centres = shop, Centres(i%3)
		out[i].Rules.LayRatio = []unit.Ratio{12, 8, 16}[i/3%3]
	}
	for range unequal {
		a := Ask{Rules: shop, Centres: UnequalCentres, Spares: rng.IntN(3)}
		sizes := rng.Perm(len(catalogue))[:1+rng.IntN(3)]
		for _, i := range sizes {
			a.Sizes = append(a.Sizes, Size{D: catalogue[i], N: 1 + rng.IntN(9/len(sizes))})
		}
		out = append(out, a)
	}
	return out
}

func TestAgainstBrute(t *testing.T) {
	relaxed := 0
	for _, a := range shorttest.Some(smallAsks()) {
		t.Run(fmt.Sprintf("%v, %d spares, ratio %g, centres %d", a.Sizes, a.Spares, a.Rules.LayRatio, a.Centres), func(t *testing.T) {
			b := newBrute(a)
			b.run()
			got, want := Make(a), b.front()
			if len(want) == 0 {
				relaxed++
				if len(got) != 1 || got[0].Relaxed == Keeps {
					t.Errorf("nothing keeps the rules, yet:\n%s", strings.Join(lines(got), "\n"))
				}
				return
			}
			proof, cheapest := Begin(a), math.Inf(1)
			for !proof.levels[0].done && proof.Run(500) {
			}
			for _, cost := range b.best {
				cheapest = math.Min(cheapest, cost)
			}
			if p := proof.Plans()[0]; math.Abs(float64(p.Cost)-cheapest) > 1e-9 {
				t.Errorf("proven at %v, and one costs %v", p.Cost, cheapest)
			}
			if !slices.Equal(lines(got), want) {
				t.Errorf("got\n%s\nwant\n%s", strings.Join(lines(got), "\n"), strings.Join(want, "\n"))
			}
			for _, p := range got {
				if !p.Proven || p.Relaxed != Keeps {
					t.Errorf("proven %v relaxed %v", p.Proven, p.Relaxed)
				}
			}
		})
	}
	t.Logf("%d questions no plan could answer within the rules", relaxed)
}
