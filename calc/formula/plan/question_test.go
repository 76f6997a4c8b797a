package plan

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"contralay/calc/formula/lay"
)

// What is asked, in plain numbers: sizes that are equal are added up, what is no size is left out; what runs furthest comes first.
func TestQuestionInNumbers(t *testing.T) {
	kinds := func(s *stacking) string {
		out := ""
		for _, k := range s.kinds {
			out += fmt.Sprintf("%g class %d: %d to %d; ", s.d[k.size], k.class, k.need, k.most)
		}
		return fmt.Sprint(out, "spare ", s.spare)
	}
	mixed := []Size{{2, 3, 1}, {1, 2, 4}, {1, 1, 1}, {2, 2, 1}, {1, 5, 4}, {0, 4, 1}, {3, 0, 1}, {3, -1, 1}, {-1, 1, 1}, {mm(math.NaN()),
		1, 1}}
	for _, c := range []struct {
		name string
		ask  Ask
		want string
	}{
		{"as they are", Ask{Sizes: mixed}, "1 class 0: 8 to 8; 2 class 0: 5 to 5; spare -1"},
		{"in order", Ask{Sizes: mixed, InOrder: true}, "1 class 0: 7 to 7; 1 class 1: 1 to 1; 2 class 1: 5 to 5; spare -1"},
		{"spares of the commonest", Ask{Sizes: mixed, Spares: 2}, "1 class 0: 8 to 10; 2 class 0: 5 to 5; spare 0"},
		{"of two as common the thinner", Ask{Sizes: []Size{{D: 2, N: 3}, {D: 1, N: 3}}, Spares: 1},
			"1 class 0: 3 to 4; 2 class 0: 3 to 3; spare 0"},
		{"spares of a size", Ask{Sizes: mixed, Spares: 2, SpareD: 2}, "1 class 0: 8 to 8; 2 class 0: 5 to 7; spare 1"},
		{"spares of a size that is not there", Ask{Sizes: mixed, Spares: 2, SpareD: 7}, "1 class 0: 8 to 10; 2 class 0: 5 to 5; spare 0"},
		{"spares run furthest", Ask{Sizes: mixed, Spares: 1, SpareD: 1, InOrder: true},
			"1 class 0: 7 to 8; 1 class 1: 1 to 1; 2 class 1: 5 to 5; spare 0"},
		{"commonest of all that run", Ask{Sizes: []Size{{1, 2, 9}, {2, 3, 9}, {1, 2, 0}}, Spares: 1, InOrder: true},
			"1 class 0: 2 to 3; 2 class 0: 3 to 3; 1 class 1: 2 to 2; spare 0"},
		{"nothing", Ask{Spares: 3}, "spare -1"},
	} {
		if got := kinds(newStacking(c.ask)); got != c.want {
			t.Errorf("%s: %s, want %s", c.name, got, c.want)
		}
	}
	// A thin one may be lost where it is thinner than a quarter of the thickest, and a little more.
	for thin, want := range map[float64]bool{0.25: true, 0.2501: false, 0.3: false, 0.2: true, 1: false} {
		s := newStacking(Ask{Sizes: []Size{{D: mm(thin), N: 1}, {D: 1, N: 1}}})
		if s.mayLose != want || s.loses(0, len(s.d)-1) != want || s.loses(len(s.d)-1, len(s.d)-1) {
			t.Errorf("%v of 1 mm may be lost: %v, %v", thin, s.mayLose, s.loses(0, len(s.d)-1))
		}
	}
}

// What each limit left means, and what is held: it is taken from what there is to choose from, from what runs furthest first.
func TestQuestionSetUp(t *testing.T) {
	a := Ask{Sizes: []Size{{D: 1, N: 4}, {D: 2, N: 3}}, Spares: 2, SpareD: 2, Rules: shop}
	for _, c := range []struct {
		relaxed  Relaxed
		noFiller bool
		lift     float64
		centres  Centres
	}{{Keeps, false, 0.05, EqualCentres}, {Gaps, true, 0.05, EqualCentres}, {GapLift, true, 0.08, EqualCentres}, {Nothing, true, 1000,
		UnequalCentres}} {
		s, ok := setUp(a, c.relaxed)
		if !ok || s.noFiller != c.noFiller || s.lift != c.lift || s.centres != c.centres || s.fillerMost != 9 {
			t.Errorf("relaxed %d: no filler %v, lift %v, centres %d, at most %d fillers", c.relaxed, s.noFiller, s.lift, s.centres,
				s.fillerMost)
		}
	}
	built := a
	built.Centres = BuiltCentres
	if s, _ := setUp(built, Nothing); s.centres != BuiltCentres {
		t.Error("a built-up centre is taken away where nothing is kept")
	}
	few := Ask{Sizes: []Size{{D: 1, N: 2}}, Rules: shop}
	if s, _ := setUp(few, Keeps); s.fillerMost != 6 {
		t.Errorf("at most %d fillers with two", s.fillerMost)
	}
	for _, c := range []struct {
		name string
		held []Held
		want string
	}{
		{"some of one", []Held{{At: 1, Sizes: []Size{{D: 1, N: 3}}}}, "1: 1 to 1; 2: 3 to 5; spare 1, last 1"},
		{"all of one", []Held{{At: 2, Sizes: []Size{{D: 1, N: 4}}}}, "2: 3 to 5; spare 0, last 2"},
		{"in two layers", []Held{{At: 3, Sizes: []Size{{D: 1, N: 2}}}, {At: 1, Sizes: []Size{{D: 1, N: 2}}}}, "2: 3 to 5; spare 0, last 3"},
		{"named twice", []Held{{At: 1, Sizes: []Size{{D: 1, N: 1}, {D: 1, N: 2}}}}, "1: 1 to 1; 2: 3 to 5; spare 1, last 1"},
		{"spares stay to choose", []Held{{At: 1, Sizes: []Size{{D: 2, N: 3}}}}, "1: 4 to 4; 2: 0 to 2; spare 1, last 1"},
		{"an empty one that is locked", []Held{{At: 4, Locked: true}}, "1: 4 to 4; 2: 3 to 5; spare 1, last 4"},
		{"only its lay", []Held{{At: 4, Lay: 50}}, "1: 4 to 4; 2: 3 to 5; spare 1, last 0"},
		{"more than there is", []Held{{At: 1, Sizes: []Size{{D: 1, N: 5}}}}, ""},
		{"a spare is not there to be held", []Held{{At: 1, Sizes: []Size{{D: 2, N: 4}}}}, ""},
		{"what is not there", []Held{{At: 1, Sizes: []Size{{D: 1.5, N: 1}}}}, ""},
	} {
		of := a
		of.Held = c.held
		s, ok := setUp(of, Keeps)
		got := ""
		if ok {
			for _, k := range s.kinds {
				got += fmt.Sprintf("%g: %d to %d; ", s.d[k.size], k.need, k.most)
			}
			got += fmt.Sprintf("spare %d, last %d", s.spare, s.lastHeld)
			if len(s.take) != len(s.kinds) {
				t.Errorf("%s: %d in hand of %d kinds", c.name, len(s.take), len(s.kinds))
			}
		}
		if got != c.want {
			t.Errorf("%s: %s, want %s", c.name, got, c.want)
		}
	}
	of := a
	of.Spares, of.Held = 0, []Held{{At: 1, Sizes: []Size{{D: 2, N: 3}}, Locked: true, Fillers: 2, FillerMM: 1.4, Lay: 60, Bind: 0.2}}
	s, _ := setUp(of, Keeps)
	h := s.held[1]
	if len(s.kinds) != 1 || s.spare != -1 || !h.locked || h.fillers != 2 || h.fillerMM != 1.4 || h.how != (lay.Laying{Ratio: 12, Lay: 60,
		Bind: 0.2}) ||
		!slices.Equal(h.n, []int{0, 3}) {
		t.Errorf("held %+v of %+v", h, s.kinds)
	}
	// In order, what is held is the one that runs furthest.
	of = Ask{Sizes: []Size{{1, 2, 1}, {1, 2, 5}}, InOrder: true, Rules: shop, Held: []Held{{At: 1, Sizes: []Size{{D: 1, N: 3, Leaves: 5}}}}}
	if s, ok := setUp(of, Keeps); !ok || len(s.kinds) != 1 || s.kinds[0].need != 1 || s.kinds[0].class != 1 {
		t.Errorf("in order: %v %+v", ok, s.kinds)
	}
}

// A stack may be the whole where nothing held lies further out, its layers turn as those asked for, and are as many.
func TestMayEnd(t *testing.T) {
	for last := range 4 {
		for like := range 5 {
			for round := range 4 {
				s := &stacking{lastHeld: last, layersLike: like, round: round}
				for layers := range 5 {
					want := layers >= last && (like == 0 || (layers+1)%2 == like%2) && (round == 0 || layers == round)
					if s.mayEnd(layers) != want {
						t.Errorf("%d layers, held to %d, like %d, round %d: %v", layers, last, like, round, !want)
					}
				}
			}
		}
	}
}

// A kind may lie once all that runs further does, and what is chosen of what is lacking is every choice once: two classes of two kinds
// each.
func TestEveryChoiceOnce(t *testing.T) {
	s := newStacking(Ask{Sizes: []Size{{1, 2, 9}, {2, 1, 9}, {1, 2, 3}, {3, 2, 3}}, InOrder: true, Spares: 1, SpareD: 2, Rules: shop})
	for laid := range 24 {
		now := []int{laid % 3, laid / 3 % 2, laid / 6 % 2, laid / 12 % 2}
		s.now = &node{n: now}
		inner := now[0] >= 2 && now[1] >= 1
		if got := [3]bool{s.reached(0), s.reached(1), s.reached(2)}; got != [3]bool{true, inner, inner && now[2] >= 2 && now[3] >= 2} {
			t.Errorf("%v laid: reached %v", now, got)
		}
		got := map[string]int{}
		s.effort = 1 << 30
		s.subsets(0, func() bool { got[fmt.Sprint(s.take, s.cnt)]++; return false })
		most := []int{2 - now[0], 2 - now[1], 2 - now[2], 2 - now[3]}
		want := 0
		choices(most, func(take []int) {
			if take[2]+take[3] > 0 && (now[0]+take[0] < 2 || now[1]+take[1] < 1) {
				return
			}
			want++
			if key := fmt.Sprint(take, []int{take[0] + take[2], take[1], take[3]}); got[key] != 1 {
				t.Errorf("%v laid: %s is chosen %d times", now, key, got[key])
			}
		})
		if len(got) != want {
			t.Errorf("%v laid: %d choices, want %d", now, len(got), want)
		}
		if slices.Max(s.take) > 0 || slices.Max(s.cnt) > 0 {
			t.Fatalf("%v in hand afterwards", s.take)
		}
	}
	// To what is full nothing is added, and nothing once the effort is spent.
	s.now = &node{n: []int{0, 0, 0, 0}}
	calls := 0
	s.subsets(0, func() bool { calls++; return true })
	if calls != 2 {
		t.Errorf("%d tries of what is full at once, want one of each kind", calls)
	}
	calls, s.effort = 0, -1
	s.subsets(0, func() bool { calls++; return false })
	if calls != 2 {
		t.Errorf("%d tries with nothing left to spend", calls)
	}
}

// What a stack lacks, and what it holds.
func TestRestOfAStack(t *testing.T) {
	s := newStacking(Ask{Sizes: []Size{{D: 1, N: 4}, {D: 1.5, N: 2}, {D: 2, N: 3}}, Spares: 2, SpareD: 1.5, Rules: shop})
	choices([]int{4, 4, 3}, func(laid []int) {
		s.now, s.take = &node{n: []int{laid[0] / 2, laid[1] / 2, laid[2] / 2}}, []int{laid[0] - laid[0]/2, laid[1] - laid[1]/2,
			laid[2] - laid[2]/2}
		spares, area, thin := s.rest()
		want, least := 0.0, 0.0
		for i, need := range []int{4, 2, 3} {
			if n := need - laid[i]; n > 0 {
				want += float64(n) * s.d[i] * s.d[i]
				if least == 0 {
					least = s.d[i]
				}
			}
		}
		if spares != 2 || area != want || thin != least {
			t.Errorf("%v laid: %d spares, %v to come, the thinnest %v; want %v and %v", laid, spares, area, thin, want, least)
		}
		extra, all := s.complete(s.now.n, s.take)
		if whole := laid[0] == 4 && laid[1] >= 2 && laid[2] == 3; all != whole || whole && extra != laid[1]-2 {
			t.Errorf("%v laid: whole %v, %d spares", laid, all, extra)
		}
		if got := s.area(laid); got != float64(laid[0])+2.25*float64(laid[1])+4*float64(laid[2]) {
			t.Errorf("%v come to %v", laid, got)
		}
		lo, hi, n := s.span(laid)
		if n != laid[0]+laid[1]+laid[2] || laid[lo] == 0 || laid[hi] == 0 || slices.ContainsFunc(laid[:lo],
			func(n int) bool { return n > 0 }) ||
			slices.ContainsFunc(laid[hi+1:], func(n int) bool { return n > 0 }) {
			t.Errorf("%v go from %d to %d, %d in all", laid, lo, hi, n)
		}
	})
	if lo, hi, n := s.span([]int{0, 0, 0}); lo != 0 || hi != 0 || n != 0 {
		t.Error("nothing has a size")
	}
	// Hopeless: a plan of 8.00 mm without filler is found, and a stack of so much cannot come below it. On 6 mm one layer more of 1 mm
	// comes to 8 at least; by area, √(6² + 28.1) = 8.006.
	s.found = &front{all: []done{{label: &label{}, over: 800}}}
	for _, c := range []struct {
		crown, tape, area, thin float64
		fillers, lumpy, spares  int
		want                    bool
	}{
		{6, 6, 20, 1, 0, 0, 0, false}, {6.1, 6, 20, 1, 0, 0, 0, true}, {6, 6, 20, 1.1, 0, 0, 0, true}, {6, 6, 28.3, 1, 0, 0, 0, true},
		{6, 6, 20, 1, 1, 0, 0, true}, {6, 6, 20, 1, 0, 1, 0, true}, {6.1, 6, 20, 1, 0, 0, 1, false}, {5, 6.1, 26.9, 1, 0, 0, 0, true},
		{5, 6.1, 26.7, 1, 0, 0, 0, false},
	} {
		if got := s.hopeless(c.crown, c.tape, c.fillers, c.lumpy, c.area, c.thin, c.spares); got != c.want {
			t.Errorf("%+v: hopeless %v", c, got)
		}
	}
	// Where thin ones vanish or a layer is squeezed, area says nothing.
	s.mayLose = true
	if s.hopeless(6, 6, 0, 0, 28.3, 1, 0) {
		t.Error("by area, where thin ones vanish")
	}
	s.mayLose, s.lift = false, 1000
	if s.hopeless(6, 6, 0, 0, 28.3, 1, 0) || !s.hopeless(6.1, 6, 0, 0, 28.3, 1, 0) {
		t.Error("by area, where nothing is kept")
	}
}

// Every centre that is offered: one to five of a size; two or three of several; one built up for seven and for eight. With the diameters of
// lay.Centre, and only those asked for.
func TestEveryCentre(t *testing.T) {
	sizes := []Size{{D: 1, N: 6}, {D: 1.2, N: 3}, {D: 1.7, N: 2}}
	for _, centres := range []Centres{EqualCentres, UnequalCentres, BuiltCentres} {
		for _, only := range []Only{AnyCentre, OnlyUnequal, OnlyBuilt} {
			for centreN := range 6 {
				for _, pinned := range []int{0, 1} {
					a := Ask{Sizes: sizes, Rules: shop, Centres: centres, Only: only, CentreN: centreN}
					if pinned > 0 {
						a.Held = []Held{{At: 0, Sizes: []Size{{D: 1.2, N: 1}}}}
					}
					s, ok := setUp(a, Keeps)
					if !ok {
						t.Fatal("it cannot be held")
					}
					got := map[string]int{}
					s.sink = func(l *label) {
						got[fmt.Sprintf("%s tape %.6f built %.6f", told(l), l.tape, l.pick.builtMM)]++
						if total := s.now.n[0] + s.take[0]; l.parent != nil || total > 6 {
							t.Errorf("%+v", l)
						}
					}
					s.effort = 1 << 30
					s.seed()
					want := map[string]bool{}
					choices([]int{6, 3, 2}, func(n []int) {
						var ds []mm
						for i, k := range n {
							for range k {
								ds = append(ds, mm(s.d[i]))
							}
						}
						equal := ds[0] == ds[len(ds)-1]
						if n[1] < pinned || len(ds) > 5 || !equal && (len(ds) > 3 || centres == EqualCentres) || centreN > 0 &&
							len(ds) != centreN {
							return
						}
						g := lay.Centre(ds)
						l := &label{crown: float64(g.Over), centreN: len(ds), pick: pick{n: slices.Clone(n)}}
						if g.Rod > 0 {
							l.fillers, l.fillerMM, l.pick.fillers, l.pick.fillerMM = 1, float64(g.Rod), 1, float64(g.Rod)
						}
						l.spread = 0.3 * float64(ds[len(ds)-1]-ds[0])
						if float64(ds[len(ds)-1]) > 1.3*float64(ds[0]) {
							l.lumpy, l.spread = 1, float64(ds[len(ds)-1]-ds[0])
						}
						if only == AnyCentre || only == OnlyUnequal && !equal {
							want[fmt.Sprintf("%s tape %.6f built %.6f", told(l), g.Tape, 0.0)] = true
						}
						if len(ds) == 1 && centres == BuiltCentres {
							for _, places := range []int{7, 8} {
								up := float64(lay.BuiltUp(places, ds[0], 12))
								l.crown, l.fillers, l.fillerMM, l.pick.fillers, l.pick.fillerMM = up, 1, up-float64(ds[0]), 1,
									up-float64(ds[0])
								want[fmt.Sprintf("%s tape %.6f built %.6f", told(l), up, up)] = true
							}
						}
					})
					name := fmt.Sprintf("centres %d, only %d, of %d, %d pinned", centres, only, centreN, pinned)
					for key := range want {
						if got[key] != 1 {
							t.Errorf("%s: %d times %s", name, got[key], key)
						}
						delete(got, key)
					}
					for key := range got {
						t.Errorf("%s: nobody asked for %s", name, key)
					}
				}
			}
		}
	}
	// Locked: as it is, its fillers in it, its binder round it; and only that one. The rod of five equal ones is there already.
	for _, c := range []struct {
		held         Held
		ds           []mm
		fillers      int
		fillerMM, by float64
	}{
		{Held{At: 0, Locked: true, Sizes: []Size{{D: 1, N: 6}}}, []mm{1, 1, 1, 1, 1, 1}, 0, 0, 0},
		{Held{At: 0, Locked: true, Sizes: []Size{{D: 1, N: 3}}, Fillers: 2, FillerMM: 0.8}, []mm{0.8, 0.8, 1, 1, 1}, 2, 0.8, 0},
		{Held{At: 0, Locked: true, Sizes: []Size{{D: 1, N: 1}, {D: 1.2, N: 3}}, Bind: 0.2}, []mm{1, 1.2, 1.2, 1.2}, 0, 0, 0.2},
		{Held{At: 0, Locked: true, Sizes: []Size{{D: 1, N: 5}}, Fillers: 1, FillerMM: 0.7}, []mm{1, 1, 1, 1, 1}, 1,
			float64(lay.Centre([]mm{1, 1, 1, 1, 1}).Rod), 0},
		{Held{At: 0, Locked: true, Sizes: []Size{{D: 1, N: 4}, {D: 1.2, N: 1}}, Fillers: 1, FillerMM: 1.1}, []mm{1, 1, 1, 1, 1.1, 1.2}, 1,
			1.1, 0},
	} {
		s, ok := setUp(Ask{Sizes: sizes, Rules: shop, Centres: BuiltCentres, Only: OnlyBuilt, CentreN: 2, Held: []Held{c.held}}, Keeps)
		if !ok {
			t.Fatal("it cannot be held")
		}
		var got []*label
		s.sink = func(l *label) { got = append(got, l) }
		s.seed()
		g := lay.Centre(c.ds)
		if len(got) != 1 {
			t.Errorf("%+v: %d centres", c.held, len(got))
			continue
		}
		l := got[0]
		total := c.fillerMM * float64(c.fillers)
		if math.Abs(l.crown-float64(g.Over)-c.by) > 1e-9 || math.Abs(l.tape-float64(g.Tape)-c.by) > 1e-9 || l.fillers != c.fillers ||
			math.Abs(l.fillerMM-total) > 1e-9 || l.pick.fillers != c.fillers {
			t.Errorf("%+v: %+v, laid %+v", c.held, l, g)
		}
	}
	// A centre that is the whole is a plan; one that is not is none.
	for n, want := range map[int]int{1: 1, 3: 1, 5: 1, 6: 0} {
		s, _ := setUp(Ask{Sizes: []Size{{D: 1, N: n}}, Rules: shop}, Keeps)
		s.effort = 1 << 30
		s.seed()
		if len(s.found.all) != want {
			t.Errorf("%d of a size: %d plans of a centre alone", n, len(s.found.all))
		}
	}
}

// A centre is full with five, and with more than it may have: five, or as many as are asked for. Where it has just as many, or fewer, what
// comes next may be one more of another kind.
func TestCentreThatIsFull(t *testing.T) {
	for _, c := range []struct {
		asked, n int
		full     bool
	}{{0, 0, false}, {0, 1, false}, {0, 5, true}, {0, 6, true}, {2, 1, false}, {2, 2, false}, {2, 3, true}, {2, 5, true}, {5, 4, false}} {
		s := newStacking(Ask{Sizes: []Size{{D: 1, N: 9}}, Rules: shop, CentreN: c.asked})
		s.sink, s.effort, s.now = func(*label) {}, 1000, &node{n: []int{0}}
		if s.cnt[0] = c.n; s.centre(nil) != c.full {
			t.Errorf("%d in the centre, %d asked for: full %v", c.n, c.asked, !c.full)
		}
	}
}
