package plan

import (
	"math"
	"testing"

	"contralay/calc/formula/lay"
	"contralay/calc/formula/plan/ring"
)

// layersOf calls f with every way to part sizes, thin to thick, into m runs.
func layersOf(d []float64, m int, f func(runs [][]float64)) {
	var runs [][]float64
	var part func(from, left int)
	part = func(from, left int) {
		if left == 0 {
			if from == len(d) {
				f(runs)
			}
			return
		}
		for to := from + 1; to <= len(d); to++ {
			runs = append(runs, d[from:to])
			part(to, left-1)
			runs = runs[:len(runs)-1]
		}
	}
	part(0, m)
}

// leastOf is the least that m layers of sizes add: twice the thickest of each and what its sizes differ; and that last alone.
// Where there are more layers than sizes the rest hold the thinnest only.
func leastOf(d []float64, m int) (adds, spread float64) {
	adds, spread = math.Inf(1), math.Inf(1)
	for k := 1; k <= min(m, len(d)); k++ {
		layersOf(d, k, func(runs [][]float64) {
			a, s := 2*d[0]*float64(m-k), 0.0
			for _, r := range runs {
				lo, hi := r[0], r[len(r)-1]
				w := 0.3
				if hi > 1.3*lo {
					w = 1
				}
				s += w * (hi - lo)
				a += 2*hi + w*(hi-lo)
			}
			adds, spread = min(adds, a), min(spread, s)
		})
	}
	return adds, spread
}

// What sizes add in so many layers, against every way to part them: all sets of five sizes, up to seven layers.
func TestPartingsOfEverySet(t *testing.T) {
	a := Ask{Rules: shop}
	for _, d := range []mm{1, 1.2, 1.5, 2.2, 2.4} {
		a.Sizes = append(a.Sizes, Size{D: d, N: 4})
	}
	s := newStacking(a)
	b := newBounds(s)
	for set := 1; set < 1<<len(s.d); set++ {
		var d []float64
		for i, x := range s.d {
			if set>>i&1 == 1 {
				d = append(d, x)
			}
		}
		for range 2 { // the second time by what is kept
			p := b.partings(set)
			for m := 1; m <= mostParts; m++ {
				adds, spread := leastOf(d, m)
				if math.Abs(p.adds[m]-adds) > 1e-9 || math.Abs(p.spread[m]-spread) > 1e-9 {
					t.Errorf("%v in %d layers add %v, of it %v for their sizes; want %v and %v", d, m, p.adds[m], p.spread[m], adds, spread)
				}
			}
			if !math.IsInf(p.adds[0], 1) || !math.IsInf(p.spread[0], 1) {
				t.Errorf("%v in no layer: %v", d, p.adds[0])
			}
		}
	}
}

// By area, by hand: on a crown of 2 mm, six of 1 mm at ratio 12. t = π·(2 + 1)/(12·(2 + 2)) = 0.196350, s = √(1 + t²) = 1.019095;
// a ring holds π/4 ÷ 1.019095 = 0.770682 of over² − c². 2² + 6/0.770682 = 11.785312, its root 3.432974: 1.432974 mm more.
// Of 1 and 2 mm: t = π·3/(12·6) = 0.130900, s = 1.008531, π/4 ÷ s = 0.778754. No lay is straight: s = 1.
func TestAreaByHand(t *testing.T) {
	a := Ask{Sizes: []Size{{D: 1, N: 6}, {D: 2, N: 1}}, Rules: shop}
	b := newBounds(newStacking(a))
	near := func(what string, got, want float64) {
		t.Helper()
		if math.Abs(got-want) > 2e-6 {
			t.Errorf("%s: %v, want %v", what, got, want)
		}
	}
	near("six of 1 mm", b.density(2, 0, 0), 0.770682)
	near("six of 1 mm add", b.byArea(2, 6, 0, 0), 1.432974)
	near("which hold", b.holds(2, b.byArea(2, 6, 0, 0), 0, 0), 6)
	near("1 and 2 mm", b.density(2, 0, 1), 0.778754)
	a.Rules.LayRatio = 0
	straight := newBounds(newStacking(a))
	near("no lay", straight.density(2, 0, 0), math.Pi/4)
	// Layers held further out have a lay of their own: nothing is known of it. Neither a centre nor a layer that is only pinned has.
	for _, h := range []struct {
		held Held
		free bool
	}{
		{Held{At: 1, Locked: true, Sizes: []Size{{D: 1, N: 1}}}, true}, {Held{At: 1, Lay: 40}, true}, {Held{At: 1, Bind: 0.1}, true},
		{Held{At: 1, Sizes: []Size{{D: 1, N: 1}}}, false}, {Held{At: 0, Locked: true, Lay: 40, Sizes: []Size{{D: 1, N: 1}}}, false},
	} {
		of := a
		of.Rules, of.Held = shop, []Held{h.held}
		s, ok := setUp(of, Keeps)
		if b := newBounds(s); !ok || b.free != h.free {
			t.Errorf("%+v: free %v", h.held, b.free)
		} else if h.free {
			near("any lay", b.density(2, 0, 0), math.Pi/4)
			if !b.closes([]int{90, 0}, 2, 0, 0, 90) {
				t.Error("a ring of any lay does not close")
			}
		}
	}
	// From 0.2957 of the thickest down a thin one may lie better between two thick ones: at a quarter, where it may vanish, by
	// (1 + x²)/(2√x) = 1.0625/1.
	for _, c := range []struct{ thin, tight float64 }{{0.2958, 1}, {0.2956, 1.0625}, {0.25, 1.0625}, {0.1, 1.0625}} {
		of := Ask{Sizes: []Size{{D: mm(10 * c.thin), N: 1}, {D: 10, N: 1}}, Rules: shop}
		near("tight", newBounds(newStacking(of)).tight, c.tight)
	}
}

// A ring may close where its angles, stood off as far as allowed, come to a turn: two to nineteen of three sizes on crowns of 1 to 6 mm,
// by lay.NeighbourAngle at r = c/2 + lift·d and L = ratio·(2r + 2d), d the thickest's.
func TestMayCloseByAngles(t *testing.T) {
	a := Ask{Sizes: []Size{{D: 1, N: 9}, {D: 1.3, N: 9}, {D: 1.7, N: 9}}, Rules: shop}
	s := newStacking(a)
	b := newBounds(s)
	yes, no := 0, 0
	for _, c := range []float64{1, 2, 3.1, 1, 4.5, 6} {
		for n0 := 0; n0 <= 9; n0 += 3 {
			for n1 := 0; n1 <= 8; n1 += 2 {
				for n2 := range 5 {
					cnt := []int{n0, n1, n2}
					lo, hi, n := s.span(cnt)
					r := c/2 + 0.05*s.d[hi]
					at := make([]float64, 9)
					for i := range 3 {
						for j := range 3 {
							at[3*i+j] = float64(lay.NeighbourAngle(mm(s.d[i]), mm(s.d[j]), mm(r), mm(12*(2*r+2*s.d[hi]))))
						}
					}
					want := n < 3 || ring.ZigZag(cnt, n, at) <= 2*math.Pi+1e-9
					was := s.effort
					if got := b.closes(cnt, c, lo, hi, n); got != want {
						t.Fatalf("%v on %v mm: may close %v", cnt, c, got)
					}
					if spent := was - s.effort; n < 3 && spent != 0 || n >= 3 && spent != 1 { // each that is tried counts
						t.Fatalf("%v on %v mm: effort %d", cnt, c, spent)
					}
					for k, got := range b.farthest(c, hi) {
						if inner := max(k/3, k%3) <= hi; inner && math.Abs(got-at[k]) > 1e-12 || !inner && got != 0 {
							t.Fatalf("sizes %d and %d on %v mm, %d the thickest: %v, want %v", k/3, k%3, c, hi, got, at[k])
						}
					}
					if want {
						yes++
					} else {
						no++
					}
				}
			}
		}
	}
	if yes < 100 || no < 100 {
		t.Errorf("%d may close, %d may not", yes, no)
	}
	// Only so many crowns are kept, and one that is asked for again is the same.
	for k := range mostRings + 10 {
		b.closes([]int{3, 0, 0}, 10+float64(k)/100, 0, 0, 3)
		if len(b.rings) > mostRings {
			t.Fatalf("%d crowns are kept", len(b.rings))
		}
	}
}

// What is to come is at least: one layer, where it may close, twice its thickest or by area, and what its sizes differ; or two and more,
// by what parting the sizes adds. Every count of three sizes up to four of each, on three crowns.
func TestToComeBySum(t *testing.T) {
	a := Ask{Sizes: []Size{{D: 1, N: 9}, {D: 1.25, N: 9}, {D: 2, N: 9}}, Rules: shop}
	s := newStacking(a)
	b := newBounds(s)
	for _, c := range []float64{1, 2.2, 5} {
		for code := range 125 {
			cnt := []int{code % 5, code / 5 % 5, code / 25 * 3}
			var d []float64
			area := 0.0
			for i, k := range cnt {
				if k > 0 {
					d = append(d, s.d[i])
				}
				area += float64(k) * s.d[i] * s.d[i]
			}
			want := 0.0
			if len(d) > 0 {
				lo, hi, n := s.span(cnt)
				over := b.byArea(c, area, lo, hi)
				want = math.Inf(1)
				for m := 1; m <= mostParts; m++ {
					adds, spread := leastOf(d, m)
					switch {
					case m == mostParts:
						want = min(want, max(adds, over))
					case m > 1:
						want = min(want, max(adds, over+spread))
					case b.closes(cnt, c, lo, hi, n):
						want = min(want, max(2*s.d[hi], over)+spread)
					}
				}
			}
			if got := b.toCome(cnt, c); math.Abs(got-want) > 1e-9 {
				t.Errorf("%v on %v mm: %v, want %v", cnt, c, got, want)
			}
		}
	}
	// Of nine sizes the two thickest are no part of the sets: area alone speaks for them.
	var many Ask
	many.Rules = shop
	for i := range 9 {
		many.Sizes = append(many.Sizes, Size{D: 1 + mm(i)/10, N: 2})
	}
	b = newBounds(newStacking(many))
	for i := 6; i < 9; i++ {
		cnt := make([]int, 9)
		cnt[i] = 2
		d := s.d[0] + float64(i)/10
		want := b.byArea(2, 2*d*d, i, i)
		if i == 6 { // a layer of them adds twice their diameter, more than by area
			want = 2 * d
		}
		if got := b.toCome(cnt, 2); math.Abs(got-want) > 1e-12 {
			t.Errorf("two of size %d: %v, want %v", i, got, want)
		}
	}
	cnt := make([]int, 9)
	cnt[8], cnt[0] = 2, 3
	adds, _ := leastOf([]float64{1}, 1)
	if got := b.toCome(cnt, 2); got < adds {
		t.Errorf("with three of the thinnest: %v", got)
	}
}

// A stack lacks what is not laid yet, and may gain by spares: the least over every number of them.
func TestToComeWithSpares(t *testing.T) {
	a := Ask{Sizes: []Size{{D: 1, N: 4}, {D: 1.3, N: 3}}, Spares: 3, Rules: shop}
	a.Rules.SpareGain = 0.9 // so that some spares are worth their room
	s := newStacking(a)
	tr := newTree(s)
	if s.spare != 0 || s.kinds[0].most != 7 {
		t.Fatalf("spares are of %d: %+v", s.spare, s.kinds)
	}
	gain := map[int]int{}
	for _, c := range []float64{1, 3} {
		for laid := range 64 {
			s.now = &node{n: []int{laid % 4, laid / 4 % 2}}
			s.take[0], s.take[1] = laid/8%4, laid/32*2
			have := [2]int{s.now.n[0] + s.take[0], s.now.n[1] + s.take[1]}
			want, at := math.Inf(1), 0
			for spares := max(0, have[0]-4); spares <= 3; spares++ {
				left := []int{max(0, 4+spares-have[0]), max(0, 3-have[1])}
				if least := tr.bounds.toCome(left, c) - 0.9*float64(spares); least < want {
					want, at = least, spares
				}
			}
			gain[at]++
			if got := tr.toCome(c); math.Abs(got-want) > 1e-9 {
				t.Errorf("%v laid, %v in hand on %v mm: %v, want %v", s.now.n, s.take, c, got, want)
			}
		}
	}
	if len(gain) < 2 {
		t.Errorf("always so many spares: %v", gain)
	}
}
