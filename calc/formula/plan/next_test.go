package plan

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"testing"

	"contralay/calc/formula/lay"
	"contralay/model/unit"
)

// choices calls f with every choice of up to most of each kind but none at all.
func choices(most []int, f func(take []int)) {
	take := make([]int, len(most))
	var at func(i, n int)
	at = func(i, n int) {
		if i == len(most) {
			if n > 0 {
				f(take)
			}
			return
		}
		for k := 0; k <= most[i]; k++ {
			take[i] = k
			at(i+1, n+k)
		}
		take[i] = 0
	}
	at(0, 0)
}

// A situation is a stack in the middle of a search: what was asked, what lies, and the bed that is next.
type situation struct {
	name        string
	ask         Ask
	laid        []int // of each kind, in the order of the kinds
	crown, tape float64
	fillers     int
	bind        float64 // round the next layer
}

func situations() []situation {
	one := []Size{{D: 1, N: 13}}
	two := []Size{{D: 1, N: 8}, {D: 1.27, N: 6}}
	three := []Size{{D: 1, N: 6}, {D: 1.27, N: 4}, {D: 1.7, N: 4}}
	four := []Size{{D: 0.94, N: 4}, {D: 1.09, N: 3}, {D: 1.27, N: 4}, {D: 2.16, N: 3}}
	// Kinds: four of 1 mm and three of 1.27 mm run furthest; then four of 1 mm and three of 0.9 mm.
	inOrder := []Size{{1, 4, 5}, {1.27, 3, 5}, {1, 4, 2}, {0.9, 3, 2}}
	var out []situation
	for _, bed := range []struct{ crown, tape float64 }{{1, 1}, {2.1, 2}, {2.2, 1.95}} {
		out = append(out,
			situation{"one size", Ask{Sizes: one}, []int{1}, bed.crown, bed.tape, 0, 0},
			situation{"one size, spares", Ask{Sizes: one, Spares: 3}, []int{1}, bed.crown, bed.tape, 2, 0},
			situation{"two sizes", Ask{Sizes: two}, []int{1, 0}, bed.crown, bed.tape, 0, 0},
			situation{"two sizes, spares", Ask{Sizes: two, Spares: 2}, []int{0, 2}, bed.crown, bed.tape, 1, 0},
			situation{"two sizes, most fillers lie", Ask{Sizes: two}, []int{1, 0}, bed.crown, bed.tape, 12, 0},
			situation{"three sizes", Ask{Sizes: three}, []int{0, 0, 1}, bed.crown, bed.tape, 0, 0},
			situation{"four sizes", Ask{Sizes: four}, []int{0, 2, 1, 1}, bed.crown, bed.tape, 0, 0},
			situation{"in order", Ask{Sizes: inOrder, InOrder: true}, []int{1, 0, 0, 0}, bed.crown, bed.tape, 0, 0},
			situation{"in order, the inner ones lie", Ask{Sizes: inOrder, InOrder: true, Spares: 1, SpareD: 1.27}, []int{4, 3, 0, 1},
				bed.crown, bed.tape, 0, 0},
			situation{"in order, nearly", Ask{Sizes: inOrder, InOrder: true}, []int{4, 0, 0, 0}, bed.crown, bed.tape, 0, 0},
			situation{"two sizes, a binder round the next", Ask{Sizes: two, Spares: 2}, []int{1, 0}, bed.crown, bed.tape, 0, 0.35},
		)
	}
	return out
}

// begin sets a search up as it is in a situation.
func (c situation) begin(relaxed Relaxed) (*stacking, *label) {
	a := c.ask
	a.Rules, a.Centres = shop, UnequalCentres
	if c.bind > 0 {
		held := Held{At: 2}
		if len(a.Held) > 0 {
			held = a.Held[0]
		}
		held.Bind = mm(c.bind)
		a.Held = []Held{held}
	}
	s, ok := setUp(a, relaxed)
	if !ok {
		panic("nothing is held")
	}
	l := &label{crown: c.crown, tape: c.tape, fillers: c.fillers, fillerMM: float64(c.fillers), layers: 1, centreN: 1, spread: 0.2,
		pick: pick{n: make([]int, len(s.d))}}
	return s, l
}

// layers are what may lie next by the rule alone: with the fewest fillers that close it, laid and measured. Only inner ones, after which
// something is left, or only outermost ones, with which all lies.
func (c situation) layers(s *stacking, l *label, outermost bool, mixed, free int) map[string]*label {
	out := map[string]*label{}
	left := make([]int, len(s.kinds))
	for i, k := range s.kinds {
		left[i] = k.most - c.laid[i]
	}
	bed, how := lay.Bed{Crown: mm(l.crown), Tape: mm(l.tape)}, lay.Laying{Ratio: shop.LayRatio, Bind: mm(c.bind)}
	choices(left, func(take []int) {
		all, most, n, sizes := true, true, make([]int, len(s.d)), 0
		for i, k := range s.kinds {
			for j, o := range s.kinds { // what leaves first lies outside
				if o.class < k.class && take[i] > 0 && c.laid[j]+take[j] < o.need {
					return
				}
			}
			all = all && c.laid[i]+take[i] >= k.need
			most = most && c.laid[i]+take[i] == k.most
			n[k.size] += take[i]
		}
		if outermost && !all || !outermost && most {
			return
		}
		var ds []mm
		for i, k := range n {
			if k > 0 {
				sizes++
			}
			for range k {
				ds = append(ds, mm(s.d[i]))
			}
		}
		if sizes > mixed {
			return
		}
		limit := shop.GapInner
		if outermost {
			limit = shop.GapOuter
		}
		least, thick := ds[0], ds[len(ds)-1]
		for f := 0; f <= min(free, s.fillerMost-l.fillers); f++ {
			ring := lay.LayZigZag(ds, bed, how)
			if ring.Lift > unit.Ratio(s.lift)+1e-12 {
				return
			}
			if s.noFiller || ring.Gap <= limit {
				spread, lumpy := 0.3*float64(thick-least), 0
				if float64(thick) > 1.3*float64(least) {
					spread, lumpy = float64(thick-least), 1
				}
				crown := l.crown + 2*float64(thick) + c.bind
				if outermost {
					crown = float64(ring.Over)
				}
				out[fmt.Sprint(n)] = &label{crown: crown, fillers: l.fillers + f, fillerMM: l.fillerMM + float64(f)*float64(least),
					lumpy:  lumpy,
					spread: l.spread + spread, layers: 2, centreN: 1, pick: pick{n: n, fillers: f, fillerMM: float64(least)}}
				return
			}
			ds = append([]mm{least}, ds...)
		}
	})
	return out
}

func told(l *label) string {
	return fmt.Sprintf("%v +%d of %g: crown %.6f, fillers %d, %.6f mm, %d lumpy, spread %.6f, %d layers round %d", l.pick.n, l.pick.fillers,
		l.pick.fillerMM, l.crown, l.fillers, l.fillerMM, l.lumpy, l.spread, l.layers, l.centreN)
}

// The exact method lays every next layer that closes, each with its fewest fillers, and no other; where a plan is known it leaves out
// those,
// and those alone, that cannot come below it. So it does mixing fewer sizes. What is left lies as the outermost layer, with any number of
// spares. All held against trying every choice and laying it.
func TestEveryNextLayer(t *testing.T) {
	left := 0
	for _, c := range situations() {
		for _, relaxed := range []Relaxed{Keeps, Gaps, GapLift} {
			for _, mixed := range []int{4, 2, 1} {
				if mixed < 4 && relaxed != Keeps {
					continue
				}
				s, on := c.begin(relaxed)
				want := c.layers(s, on, false, mixed, math.MaxInt)
				for _, part := range []float64{math.Inf(1), 0.7, 0.2} {
					s, on := c.begin(relaxed)
					tr := newTree(s)
					tr.mixed = mixed
					worth := math.Inf(1)
					if part < 1 { // between the least and the most that they come to
						lo, hi := math.Inf(1), 0.0
						for _, l := range want {
							least := c.least(tr, l)
							lo, hi = min(lo, least), max(hi, least)
						}
						worth = lo + part*(hi-lo)
					}
					tr.worth = func() float64 { return worth }
					got := map[string]*label{}
					tr.take = func(l *label, least float64) {
						key := fmt.Sprint(l.pick.n)
						if got[key] != nil {
							t.Errorf("%s: %s is laid twice", c.name, key)
						}
						got[key] = l
						if most := c.least(tr, l); math.Abs(least-most) > 1e-9 {
							t.Errorf("%s: %s comes to %v at least, want %v", c.name, key, least, most)
						}
					}
					tr.grow(&stack{label: on, n: slices.Clone(c.laid)})
					for key, l := range want {
						least := c.least(tr, l)
						switch {
						case got[key] == nil && least < worth-hair:
							t.Errorf("%s, relaxed %d, %d mixed: %s is left out, it comes to %v of %v", c.name, relaxed, mixed, key, least,
								worth)
						case got[key] != nil && told(got[key]) != told(l):
							t.Errorf("%s, relaxed %d, %d mixed: got %s, want %s", c.name, relaxed, mixed, told(got[key]), told(l))
						case got[key] == nil:
							left++
						}
						delete(got, key)
					}
					if len(got) > 0 {
						t.Errorf("%s, relaxed %d, %d mixed: nobody may lay %v", c.name, relaxed, mixed, slices.Collect(maps.Keys(got)))
					}
					if slices.ContainsFunc(s.take, func(n int) bool { return n != 0 }) {
						t.Errorf("%s: %v in hand afterwards", c.name, s.take)
					}
				}
			}
		}
	}
	if left < 100 {
		t.Errorf("only %d are left out as too dear", left)
	}
}

// least is what a stack with another layer on it comes to at least.
func (c situation) least(tr *tree, l *label) float64 {
	s := tr.s
	left := make([]int, len(s.d))
	laid := slices.Clone(c.laid)
	rest := slices.Clone(l.pick.n)
	for i, k := range s.kinds {
		here := min(rest[k.size], k.most-laid[i])
		laid[i], rest[k.size] = laid[i]+here, rest[k.size]-here
		left[k.size] += max(0, k.need-laid[i])
	}
	toCome := tr.bounds.toCome(left, l.crown)
	if s.spare >= 0 {
		k := s.kinds[s.spare]
		have := max(0, laid[s.spare]-k.need)
		toCome = math.Inf(1)
		for spares := have; spares <= k.most-k.need; spares++ {
			now := slices.Clone(left)
			now[k.size] += max(0, spares-have)
			toCome = min(toCome, tr.bounds.toCome(now, l.crown)-0.15*s.d[k.size]*float64(spares))
		}
	}
	return l.crown + 0.1*l.fillerMM + l.spread + toCome
}

// What is left closes as the outermost layer, with each number of spares: those that no other beats are found, by either search.
func TestEveryOutermostLayer(t *testing.T) {
	found := 0
	for _, c := range situations() {
		for have := range 4 { // of what there is, so many lie: the rest closes or not
			for i := range c.laid {
				s, _ := c.begin(Keeps)
				c.laid[i] = s.kinds[i].need * have / 3
			}
			for n := range 6 {
				relaxed, exact := []Relaxed{Keeps, Gaps, GapLift}[n/2], n%2 > 0
				s, on := c.begin(relaxed)
				if exact {
					tr := newTree(s)
					tr.worth = func() float64 { return math.Inf(1) }
					tr.take = func(*label, float64) {}
					tr.grow(&stack{label: on, n: slices.Clone(c.laid)})
				} else {
					s.sink, s.effort = func(*label) {}, math.MaxInt
					s.grow(on, &node{n: slices.Clone(c.laid)})
				}
				best := map[figures]float64{}
				for _, l := range c.layers(s, on, true, 9, math.MaxInt) {
					k := figures{fillers: l.fillers, over: hundredths(l.crown), lumpy: l.lumpy}
					for i, n := range l.pick.n {
						k.spares += n
						for j, z := range s.kinds {
							if z.size == i {
								k.spares -= z.need - c.laid[j]
							}
						}
					}
					cost := l.crown + 0.1*l.fillerMM + l.spread
					if s.spare >= 0 {
						cost -= 0.15 * s.d[s.kinds[s.spare].size] * float64(k.spares)
					}
					if old, is := best[k]; !is || cost < old {
						best[k] = cost
					}
				}
				want := (&brute{best: best}).front()
				var got []string
				for _, d := range s.found.all {
					got = append(got, figures{d.fillers, d.over, d.lumpy, d.spares}.line(d.cost))
				}
				if s.found.least != nil && !slices.ContainsFunc(s.found.all, func(d done) bool { return d.cost == s.found.least.cost }) {
					d := s.found.least
					got = append(got, figures{d.fillers, d.over, d.lumpy, d.spares}.line(d.cost))
				}
				slices.Sort(got)
				if !slices.Equal(got, want) {
					t.Errorf("%s, %v laid on %v mm, relaxed %d, exact %v:\n%q\nwant\n%q", c.name, c.laid, c.crown, relaxed, exact, got,
						want)
				}
				found += len(got)
			}
		}
	}
	if found < 30 {
		t.Errorf("only %d are found", found)
	}
}

// The search for every plan lays each next layer that closes, too, and knows its bed as it is when it is laid; of what is held it lays
// no less.
func TestEveryNextBed(t *testing.T) {
	laid := 0
	for _, c := range situations() {
		if c.ask.InOrder {
			continue // what is held counts for the kind that runs furthest, and a plan that is found leaves others out
		}
		for held := range 3 {
			c.ask.Held = nil
			free := c
			s, on := free.begin(Keeps)
			want := free.layers(s, on, false, 9, math.MaxInt)
			if held > 0 { // of the last kind, in the layer that is next
				k := s.kinds[len(s.kinds)-1]
				c.ask.Held = []Held{{At: 2, Sizes: []Size{{D: mm(s.d[k.size]), N: held}}}}
				maps.DeleteFunc(want, func(_ string, l *label) bool { return l.pick.n[k.size] < held })
				if c.laid[len(c.laid)-1]+held > k.need || s.spare == len(s.kinds)-1 {
					continue // it is not left, or spares are of it
				}
				s, on = c.begin(Keeps)
			}
			s.effort = math.MaxInt
			got := map[string]*label{}
			s.sink = func(l *label) {
				key := fmt.Sprint(l.pick.n)
				if got[key] != nil {
					t.Errorf("%s: %s is laid twice", c.name, key)
				}
				got[key] = l
			}
			s.grow(on, &node{n: slices.Clone(c.laid)})
			for key, l := range want {
				g := got[key]
				delete(got, key)
				if g == nil {
					t.Errorf("%s, %d held: %s is left out", c.name, held, key)
					continue
				}
				var ds []mm
				for i, n := range l.pick.n {
					if i > 0 || n > 0 {
						for range n {
							ds = append(ds, mm(s.d[i]))
						}
					}
				}
				for range l.pick.fillers {
					ds = append([]mm{mm(l.pick.fillerMM)}, ds...)
				}
				ring := lay.LayZigZag(ds, lay.Bed{Crown: mm(c.crown), Tape: mm(c.tape)}, lay.Laying{Ratio: shop.LayRatio, Bind: mm(c.bind)})
				if math.Abs(g.crown-float64(ring.Over)) > 1e-9 || math.Abs(g.tape-float64(ring.Tape)) > 1e-9 {
					t.Errorf("%s: %s comes to %v over %v, laid %v over %v", c.name, key, g.crown, g.tape, ring.Over, ring.Tape)
				}
				l.crown = g.crown
				if told(g) != told(l) {
					t.Errorf("%s, %d held: got %s, want %s", c.name, held, told(g), told(l))
				}
				laid++
			}
			if len(got) > 0 {
				t.Errorf("%s, %d held: nobody may lay %v", c.name, held, slices.Collect(maps.Keys(got)))
			}
		}
	}
	if laid < 300 {
		t.Errorf("only %d are laid", laid)
	}
}

// A beam that lays clean layers lays those alone that take kinds to their end, all but one of a layer, and of that one as many as close it
// with two fillers or fewer; where no size may be left out between two, none is.
func TestEveryCleanLayer(t *testing.T) {
	several := 0
	for _, c := range situations() {
		for _, near := range []bool{false, true} {
			s, on := c.begin(Keeps)
			if s.spare >= 0 || c.ask.InOrder {
				continue
			}
			few := c.layers(s, on, false, 9, partFilled)
			want := c.layers(s, on, false, 9, 4)
			maps.DeleteFunc(want, func(key string, l *label) bool {
				parts, lo, hi := 0, len(s.kinds), -1
				for i, k := range s.kinds { // of one class: thin to thick, as the sizes are
					if n := l.pick.n[k.size]; n > 0 {
						lo, hi = min(lo, i), i
						if n < k.need-c.laid[i] {
							parts++
						}
					}
				}
				for i := lo; near && i <= hi; i++ {
					if l.pick.n[s.kinds[i].size] == 0 && c.laid[i] < s.kinds[i].need {
						return true
					}
				}
				if near && parts == 1 { // what is taken in part lies at one end
					for i := lo + 1; i < hi; i++ {
						if n := l.pick.n[s.kinds[i].size]; n > 0 && n < s.kinds[i].need-c.laid[i] {
							return true
						}
					}
				}
				return parts > 1 || parts == 1 && few[key] == nil
			})
			tr := newTree(s)
			tr.fillers, tr.clean, tr.near = 4, true, near
			tr.worth = func() float64 { return math.Inf(1) }
			got := map[string]*label{}
			tr.take = func(l *label, _ float64) { got[fmt.Sprint(l.pick.n)] = l }
			tr.grow(&stack{label: on, n: slices.Clone(c.laid)})
			for key, l := range want {
				if got[key] == nil || told(got[key]) != told(l) {
					t.Errorf("%s, near %v, %v laid: %s is left out or another: %v", c.name, near, c.laid, key, got[key])
				}
				delete(got, key)
				several++
			}
			for key := range got {
				t.Errorf("%s, near %v, %v laid: nobody should lay %s", c.name, near, c.laid, key)
			}
		}
	}
	if several < 50 {
		t.Errorf("only %d are laid", several)
	}
}

// Beside a thick one that lies in the layer the fewest thin ones that may close it are told by every number from none on. One thick and n
// thin ones in a ring take n − 1 times the angle of two thin ones and twice that of a thin and a thick one; fewer than three pieces are
// taken for thick ones, as each filler is.
func TestFewestBesideAThickOne(t *testing.T) {
	sure := 0 // how often three pieces do not close it that would if all were thick
	for k := range 38 {
		crown := 0.3 + 0.1*float64(k)
		for free := range 6 {
			s := newStacking(Ask{Sizes: []Size{{D: 1, N: 9}, {D: 1.5, N: 1}}, Rules: shop, Centres: UnequalCentres})
			on := &label{crown: crown, tape: crown, layers: 1, centreN: 1, pick: pick{n: make([]int, 2)}}
			tr := newTree(s)
			tr.fillers = free
			tr.worth = func() float64 { return math.Inf(1) }
			s.on, s.now = on, &node{n: make([]int, 2)}
			s.bedOf(on)
			s.cnt[1] = 1
			thick, thin, both := s.fit.Theta(1, 1, 1), s.fit.Theta(1, 0, 0), s.fit.Theta(1, 0, 1)
			closes := func(n int) bool {
				sum := float64(n-1)*thin + 2*both
				if n < 2 {
					sum = float64(n+1) * thick
				}
				return sum+float64(min(free, s.fillerMost))*thick >= 2*math.Pi*(1-0.10)
			}
			want := 0
			for want < 9 && !closes(want) {
				want++
			}
			if got := tr.enough(9, func(n int) { s.cnt[0] = n }); got != want {
				t.Errorf("on %v mm, %d fillers: %d, want %d", crown, free, got, want)
			}
			if want == 3 && float64(3+free)*thick >= 2*math.Pi*(1-0.10) {
				sure++
			}
		}
	}
	if sure < 5 {
		t.Errorf("only %d are told by what the three take themselves", sure)
	}
}

// The fewest of a kind that may close the layer, and that leave no more area than a cheaper plan takes: each told by trying every number
// from none on.
func TestFewestOfAKind(t *testing.T) {
	closing, dense := map[int]bool{}, map[int]bool{}
	for _, c := range situations() {
		for _, free := range []int{0, 2, math.MaxInt} {
			for _, room := range []float64{0.25, 3, 6, math.Inf(1)} {
				s, on := c.begin(Keeps)
				tr := newTree(s)
				tr.fillers = free
				s.on, s.now = on, &node{n: slices.Clone(c.laid)}
				s.bedOf(on)
				worth := s.soFar(on) + room
				tr.worth = func() float64 { return worth }
				for j, k := range s.kinds {
					most := k.most - c.laid[j]
					set := func(n int) { s.cnt[k.size], s.take[j] = n, n }
					fill := min(s.fillerMost-on.fillers, free)
					fill = int(min(float64(fill), room/(0.1*s.d[0])))
					want := most
					for n := most - 1; n >= 0; n-- {
						if n == 0 && most > 0 {
							break // none at all is no layer
						}
						least := float64(n+fill) * s.fit.Theta(k.size, k.size, k.size)
						if least < 2*math.Pi*0.9 {
							break
						}
						want = n
					}
					if most > 0 {
						want = max(want, 1)
						was := s.effort
						got := tr.enough(most, set)
						set(0)
						// Each number that is tried counts: none at all, then from one less than there may be down to one that
						// does not close it. Where there are no limits none is tried.
						spent := max(most-got+2, 0)
						switch got {
						case 0:
							spent = 0
						case 1:
							spent = most
						}
						if was-s.effort != spent {
							t.Errorf("%s on %v mm, %d fillers: %d of %d, an effort of %d, want %d", c.name, c.crown, fill, got, most,
								was-s.effort, spent)
						}
						if got != want && !(got == 0 && want == 1) {
							t.Errorf("%s on %v mm, %d fillers, room %v: %d of %v, want %d", c.name, c.crown, fill, room, got, s.d[k.size],
								want)
						}
						closing[got] = true
					}
					got := tr.dense(j)
					dense[got] = true
					crown, area, lo, hi := on.crown+2*s.d[k.size]+c.bind, 0.0, -1, 0
					for i, z := range s.kinds {
						if n := z.need - c.laid[i]; n > 0 {
							area += float64(n) * s.d[z.size] * s.d[z.size]
							if hi = max(hi, z.size); lo < 0 || z.size < lo {
								lo = z.size
							}
						}
					}
					left := worth - (crown + 0.1*on.fillerMM + on.spread)
					if s.spare >= 0 {
						z := s.kinds[s.spare]
						left += 0.15 * s.d[z.size] * float64(z.most-z.need)
					}
					fewest := 0
					switch {
					case lo < 0 || math.IsInf(room, 1):
					case left <= 0:
						fewest = math.MaxInt
					default:
						rest := area - tr.bounds.holds(crown, left, lo, hi)
						for fewest = -1000; float64(fewest)*s.d[k.size]*s.d[k.size] < rest-1e-6; {
							fewest++
						}
					}
					if got != fewest {
						t.Errorf("%s on %v mm, room %v: %d of %v leave no more area, want %d", c.name, c.crown, room, got, s.d[k.size],
							fewest)
					}
				}
			}
		}
	}
	if len(closing) < 5 || len(dense) < 5 {
		t.Errorf("always the same: %v, %v", closing, dense)
	}
}
