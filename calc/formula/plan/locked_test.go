package plan

import (
	"math"
	"slices"
	"testing"

	"contralay/calc/formula/lay"
)

// A layer that is locked is laid as it is, with its fillers, its lay length and its binder, by both searches; where it holds the last
// of all, it
// is a plan, if no layer held lies further out.
func TestLockedLayerIsLaidAsItIs(t *testing.T) {
	for _, c := range []struct {
		name     string
		held     []Held
		total    int // of 1 mm, one of them in the centre
		fillers  int
		fillerMM float64
		how      lay.Laying
		found    bool
	}{
		{"all of it", []Held{{At: 1, Locked: true, Sizes: []Size{{D: 1, N: 6}}}}, 7, 0, 0, lay.Laying{Ratio: 12}, true},
		{"some are left", []Held{{At: 1, Locked: true, Sizes: []Size{{D: 1, N: 6}}}}, 9, 0, 0, lay.Laying{Ratio: 12}, false},
		{"with fillers", []Held{{At: 1, Locked: true, Sizes: []Size{{D: 1, N: 4}}, Fillers: 2, FillerMM: 0.8, Lay: 55, Bind: 0.2}}, 5, 2,
			0.8,
			lay.Laying{Ratio: 12, Lay: 55, Bind: 0.2}, true},
		{"with fillers of its own size", []Held{{At: 1, Locked: true, Sizes: []Size{{D: 1, N: 5}}, Fillers: 1}}, 6, 1, 1,
			lay.Laying{Ratio: 12}, true},
		{"fillers alone", []Held{{At: 1, Locked: true, Fillers: 6, FillerMM: 1.2}}, 1, 6, 1.2, lay.Laying{Ratio: 12}, true},
		{"another lies further out", []Held{{At: 1, Locked: true, Sizes: []Size{{D: 1, N: 6}}}, {At: 2, Locked: true, Fillers: 9,
			FillerMM: 1}}, 7, 0, 0,
			lay.Laying{Ratio: 12}, false},
	} {
		for _, exact := range []bool{false, true} {
			s, ok := setUp(Ask{Sizes: []Size{{D: 1, N: c.total}}, Rules: shop, Held: c.held}, Keeps)
			if !ok {
				t.Fatalf("%s: it cannot be held", c.name)
			}
			s.effort = math.MaxInt
			on := &label{crown: 1, tape: 1, centreN: 1, spread: 0.1, pick: pick{n: []int{1}}}
			laid := make([]int, len(s.kinds)) // one of what is not held
			if len(laid) > 0 {
				laid[0] = 1
			}
			var got []*label
			if exact {
				tr := newTree(s)
				tr.worth = func() float64 { return math.Inf(1) }
				tr.take = func(l *label, _ float64) { got = append(got, l) }
				tr.grow(&stack{label: on, n: slices.Clone(laid)})
				if s.sink != nil {
					t.Errorf("%s: stacks still go elsewhere", c.name)
				}
			} else {
				s.sink = func(l *label) { got = append(got, l) }
				s.grow(on, &node{n: slices.Clone(laid)})
			}
			ds := slices.Repeat([]mm{mm(c.fillerMM)}, c.fillers)
			n := 0
			for _, z := range c.held[0].Sizes {
				ds, n = append(ds, slices.Repeat([]mm{z.D}, z.N)...), n+z.N
			}
			ring := lay.LayZigZag(ds, lay.Bed{Crown: 1, Tape: 1}, c.how)
			if len(got) != 1 {
				t.Errorf("%s, exact %v: %d stacks", c.name, exact, len(got))
				continue
			}
			l := got[0]
			if math.Abs(l.crown-float64(ring.Over)) > 1e-9 || math.Abs(l.tape-float64(ring.Tape)) > 1e-9 || l.fillers != c.fillers ||
				math.Abs(l.fillerMM-float64(c.fillers)*c.fillerMM) > 1e-9 || l.pick.n[0] != n || l.pick.fillers != c.fillers ||
				l.layers != 1 ||
				l.lumpy != 0 || l.spread != 0.1 || l.parent != on {
				t.Errorf("%s, exact %v: %+v, laid %+v", c.name, exact, l, ring)
			}
			// One layer tried, and laid.
			if spent := math.MaxInt - s.effort; exact && c.found && spent != 1+laidEffort {
				t.Errorf("%s: an effort of %d", c.name, spent)
			}
			if (len(s.found.all) > 0) != c.found {
				t.Errorf("%s, exact %v: %d plans", c.name, exact, len(s.found.all))
			}
		}
	}
	// An empty one holds nothing, and nothing lies on it.
	s, _ := setUp(Ask{Sizes: []Size{{D: 1, N: 3}}, Rules: shop, Held: []Held{{At: 1, Locked: true}}}, Keeps)
	s.sink = func(l *label) { t.Errorf("an empty layer is laid: %+v", l) }
	s.effort = math.MaxInt
	s.grow(&label{crown: 1, tape: 1, centreN: 1, pick: pick{n: []int{1}}}, &node{n: []int{1}})
	// What is counted as diameters, with fillers where they belong.
	s.d = []float64{1, 2}
	for _, c := range []struct {
		fillers int
		mm      float64
		want    []mm
	}{{0, 0, []mm{1, 2, 2}}, {2, 0.5, []mm{0.5, 0.5, 1, 2, 2}}, {1, 1, []mm{1, 1, 2, 2}}, {1, 1.5, []mm{1, 1.5, 2, 2}}, {2, 3, []mm{1, 2,
		2, 3, 3}}} {
		if got := s.list([]int{1, 2}, c.fillers, c.mm); !slices.Equal(got, c.want) {
			t.Errorf("%d fillers of %v: %v, want %v", c.fillers, c.mm, got, c.want)
		}
	}
}

// Where a thin one may vanish between two thick ones only laying tells the angle; a layer counts as full from 1.03 turns on, where thin
// ones may
// vanish from 1.5.
func TestFullAndLost(t *testing.T) {
	s := newStacking(Ask{Sizes: []Size{{D: 0.2, N: 6}, {D: 1, N: 6}}, Rules: shop})
	s.effort = 1000
	s.fit.Take(2, 2, lay.Laying{Ratio: 12})
	var g lay.Gauge
	for _, cnt := range [][]int{{1, 5}, {3, 3}, {6, 6}, {2, 8}} {
		lo, hi, n := s.span(cnt)
		ds := append(slices.Repeat([]mm{0.2}, cnt[0]), slices.Repeat([]mm{1}, cnt[1])...)
		for _, lift := range []float64{0, 0.05} {
			want := float64(g.Turn(ds, lay.Bed{Crown: 2, Tape: 2}, lay.Laying{Ratio: 12}, 0))
			got := s.sum(cnt, lo, hi, n)
			if lift > 0 {
				want, got = float64(g.Turn(ds, lay.Bed{Crown: 2, Tape: 2}, lay.Laying{Ratio: 12}, 0.05)), s.lifted(cnt, lo, hi, n)
			}
			if math.Abs(got-want) > 1e-12 {
				t.Errorf("%v at %v: %v, laid %v", cnt, lift, got, want)
			}
		}
	}
	if s.effort != 1000-12*laidEffort {
		t.Errorf("twelve layings take %d", 1000-s.effort)
	}
	for _, c := range []struct {
		turns float64
		lose  bool
		want  bool
	}{{1.029, false, false}, {1.031, false, true}, {1.031, true, false}, {1.49, true, false}, {1.51, true, true}} {
		s.mayLose = c.lose
		if got := s.full(c.turns * 2 * math.Pi); got != c.want {
			t.Errorf("%+v: full %v", c, got)
		}
	}
	s.mayLose = false
	if !s.far(2*twoPi, 1) || s.far(1.01*twoPi, 1) {
		t.Error("two turns are not full, or hardly more than one is")
	}
	s.mayLose = true
	if s.far(2*twoPi, 1) {
		t.Error("full by the angles, where thin ones may vanish")
	}
}
