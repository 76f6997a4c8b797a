package plan

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"contralay/calc/formula/lay"
)

// A beam wide enough for everything finds what costs least: questions of up to six of two sizes, against every lay-up tried.
func TestWideBeamFindsTheCheapest(t *testing.T) {
	for n := range 4 {
		for m := 1; m <= 5-n; m++ {
			a := Ask{Sizes: []Size{{D: 1, N: n}, {D: 1.27, N: m}}, Rules: shop, Centres: Centres((n + m) % 3)}
			if n == 0 {
				a.Sizes = a.Sizes[1:]
			}
			b := newBrute(a)
			b.run()
			want := math.Inf(1)
			for _, cost := range b.best {
				want = min(want, cost)
			}
			for _, w := range []width{{stacks: 10_000, mixed: 9, fillers: 99}, {stacks: 1, each: 10_000, mixed: 9, fillers: 99}} {
				s, _ := setUp(a, Keeps)
				s.effort = math.MaxInt
				beam := newBeam(s, w)
				beam.worth = func() float64 {
					if s.found.least == nil {
						return math.Inf(1)
					}
					return s.found.least.cost
				}
				beam.begin()
				steps := 0
				for beam.step() {
					if steps++; steps > 5000 {
						t.Fatalf("%d and %d: it has no end", n, m)
					}
				}
				got := math.Inf(1)
				if s.found.least != nil {
					got = s.found.least.cost
				}
				if math.Abs(got-want) > 1e-9 && !(math.IsInf(got, 1) && math.IsInf(want, 1)) {
					t.Errorf("%d of 1 mm and %d of 1.27 mm, %+v: %v, want %v", n, m, w, got, want)
				}
				for i, g := range beam.groups {
					if len(g.all) > 0 {
						t.Errorf("%d and %d: group %d has %d left", n, m, i, len(g.all))
					}
				}
			}
		}
	}
}

// groupOf is a beam over 100 of 1 mm and 25 of 2 mm: Σd² is 200.
func groupOf(w width) *beam {
	s, _ := setUp(Ask{Sizes: []Size{{D: 1, N: 100}, {D: 2, N: 25}}, Rules: shop}, Keeps)
	s.effort = math.MaxInt
	b := newBeam(s, w)
	b.worth = func() float64 { return 1000 }
	s.now = &node{n: []int{0, 0}}
	return b
}

// Stacks are told apart by the root of the share of Σd² that they hold, in fortieths: 0, 40·√(1/200) = 2.8, 40·√(50/200) = 20, all.
// None goes to a group that was built on before.
func TestGroupByShare(t *testing.T) {
	b := groupOf(width{stacks: 2})
	for _, c := range []struct{ thin, thick, at, want int }{
		{0, 0, 0, 0}, {1, 0, 0, 2}, {50, 0, 0, 20}, {2, 12, 0, 20}, {100, 25, 0, 40}, {100, 24, 0, 39}, {1, 0, 7, 7}, {50, 0, 7, 20},
	} {
		b.at = c.at
		b.s.now.n[0], b.s.now.n[1] = c.thin-c.thin/2, c.thick
		b.s.take[0], b.s.take[1] = c.thin/2, 0
		if got := b.place(); got != c.want {
			t.Errorf("%d of 1 mm and %d of 2 mm, at %d: group %d, want %d", c.thin, c.thick, c.at, got, c.want)
		}
	}
	// What is lacking is a set of bits, of kinds that are all laid none.
	for _, c := range []struct{ thin, thick, want int }{{0, 0, 3}, {100, 0, 2}, {99, 25, 1}, {100, 25, 0}, {101, 26, 0}} {
		n := []int{c.thin, c.thick}
		if got := b.s.lacks(func(i int) int { return n[i] }); got != c.want {
			t.Errorf("%v laid: %b is lacking", n, got)
		}
	}
	if alikeOf(1) != 6 || alikeOf(3) != 6 || alikeOf(4) != 2 {
		t.Errorf("of few kinds %d alike stay, of many %d", alikeOf(3), alikeOf(4))
	}
	// What holds the same is told by its counts.
	seen := map[uint64]string{}
	for x := range 60 {
		for y := range 60 {
			key := (&stack{n: []int{x, y}}).key()
			if seen[key] != "" {
				t.Fatalf("%d, %d and %s are taken for the same", x, y, seen[key])
			}
			seen[key] = fmt.Sprint(x, y)
			if again := (&stack{n: []int{x, y}}).key(); again != key {
				t.Fatal("the same is taken for another")
			}
		}
	}
}

// Of a group the most promising stay, of those that hold the same six, and of each set of sizes that is lacking so many.
func TestThinnedGroup(t *testing.T) {
	of := func(least float64, thin, thick int) *stack {
		return &stack{label: &label{}, least: least, n: []int{thin, thick}}
	}
	var all []*stack
	for i := range 8 { // the same eight times: two are too many
		all = append(all, of(10+float64(i), 50, 10))
	}
	for i := range 6 { // and others that lack both sizes
		all = append(all, of(30+float64(i), 51+i, 9))
	}
	for i := range 4 { // these lack the thin ones only
		all = append(all, of(50+float64(i), 40+i, 25))
	}
	all = append(all, of(60, 100, 5)) // the thick ones only
	slices.Reverse(all)
	leasts := func(g *group) (out []float64) {
		for _, o := range g.all {
			out = append(out, o.least)
		}
		return out
	}
	for _, c := range []struct {
		stacks, each int
		want         []float64
		cut          float64
		cuts         map[int]float64
	}{
		{8, 0, []float64{10, 11, 12, 13, 14, 15, 30, 31}, 31, map[int]float64{}},
		{8, 2, []float64{10, 11, 12, 13, 14, 15, 30, 31, 50, 51, 60}, 31, map[int]float64{3: 11, 1: 51}},
		{3, 1, []float64{10, 11, 12, 50, 60}, 12, map[int]float64{3: 10, 1: 50, 2: 60}},
		{100, 3, []float64{10, 11, 12, 13, 14, 15, 30, 31, 32, 33, 34, 35, 50, 51, 52, 53, 60}, 0, map[int]float64{3: 12, 1: 52}},
	} {
		b := groupOf(width{stacks: c.stacks, each: c.each})
		for range 2 { // what is thinned stays so
			g := &group{all: slices.Clone(all), cuts: map[int]float64{}}
			b.thin(g)
			if !slices.Equal(leasts(g), c.want) || g.cut != c.cut || fmt.Sprint(g.cuts) != fmt.Sprint(c.cuts) || !g.sorted {
				t.Errorf("%d stacks, %d of each: %v, cut at %v, %v; want %v, %v, %v", c.stacks, c.each, leasts(g), g.cut, g.cuts, c.want,
					c.cut,
					c.cuts)
			}
			if b.thin(g); !slices.Equal(leasts(g), c.want) {
				t.Errorf("%d stacks, thinned again: %v", c.stacks, leasts(g))
			}
		}
	}
	// A group takes what is cheaper than what it has enough of, and what lacks sizes of which it has too few.
	b := groupOf(width{stacks: 3, each: 2})
	g := &b.groups[0]
	if !b.hasRoom(999) {
		t.Error("an empty group has no room")
	}
	g.cut = 12
	g.cuts = map[int]float64{3: 14}
	for _, c := range []struct {
		least float64
		thin  int
		want  bool
	}{{12, 0, true}, {13, 0, true}, {14, 0, true}, {14.1, 0, false}, {99, 100, true}} {
		b.s.now.n[0] = c.thin
		h := &b.groups[b.place()]
		h.cut, h.cuts = g.cut, g.cuts
		if got := b.hasRoom(c.least); got != c.want {
			t.Errorf("%+v: room %v", c, got)
		}
	}
	b.s.now.n[0], b.each = 0, 0
	if b.hasRoom(12.5) || !b.hasRoom(12) {
		t.Error("no size is looked after, and there is room above the cut")
	}
	// Past four times what is built on, and 32, a group is thinned.
	b = groupOf(width{stacks: 3})
	for i := range 44 {
		b.s.now.n[0] = i / 22 // all of group 2, which is built on
		b.at = 2
		b.take(&label{layers: 1}, float64(100-i))
		if got, want := len(b.groups[2].all), i+1; i < 43 && got != want {
			t.Fatalf("%d in the group after %d", got, want)
		}
	}
	if g := b.groups[2]; len(g.all) != 3 || !g.sorted || g.all[0].least != 57 || g.all[0].n[0] != 1 {
		t.Errorf("%d stay", len(g.all))
	}
	b.take(&label{layers: 1}, 1)
	if b.groups[2].sorted || len(b.groups[2].all) != 4 {
		t.Error("one more is taken, and the group still counts as sorted")
	}
}

// A beam of 1,000 effort has spent too much where it is beyond its share: the group over 0.65·40 = 26, all of it from there on.
func TestBeamIsLate(t *testing.T) {
	for _, c := range []struct {
		effort, spent, at int
		want              bool
	}{
		{1000, 0, 0, false}, {1000, 1, 0, true}, {1000, 500, 13, false}, {1000, 501, 13, true}, {1000, 1000, 26, false}, {1000, 1001, 26,
			true},
		{1000, 1001, 40, true}, {1000, 1000, 40, false}, {0, 1 << 40, 1, false},
	} {
		b := groupOf(width{stacks: 2, effort: c.effort})
		b.at, b.s.effort = c.at, math.MaxInt-c.spent*1 // in numbers as large as these a float counts by 1,024
		if c.effort > 0 {
			b.effort, b.s.effort = c.effort<<20, math.MaxInt-c.spent<<20
		}
		if got := b.late(); got != c.want {
			t.Errorf("%+v: late %v", c, got)
		}
	}
}

// A group is built on until four times what its width says, and sixteen more, or until three where it is late; what is no cheaper than the
// best is left.
func TestBeamBuildsOnSoMany(t *testing.T) {
	for _, c := range []struct {
		name                string
		effort, spent, have int
		worth               float64
		want                int
	}{
		{"all of few", 0, 0, 5, 1e9, 5}, {"no more than 4·2 + 16, and the one that shows it", 0, 0, 40, 1e9, 25}, {"late", 1 << 30,
			1 << 40, 40, 1e9, 3},
		{"none is cheaper", 0, 0, 5, 50, 0}, {"the first two are", 0, 0, 5, 103, 2},
	} {
		b := groupOf(width{stacks: 2, effort: c.effort, mixed: 1})
		b.s.effort -= c.spent
		b.worth = func() float64 { return c.worth }
		b.tree.take = func(*label, float64) {}
		for i := range c.have {
			l := &label{crown: 20, tape: 20, layers: 3, centreN: 1, pick: pick{n: []int{1, 0}}}
			b.groups[20].all = append(b.groups[20].all, &stack{label: l, least: 101 + float64(i), n: []int{i, 0}, at: i})
		}
		b.groups[20].sorted = true
		built := 0
		for b.step() {
			built++
		}
		if built != c.want || b.groups[20].all != nil || b.at != len(b.groups) {
			t.Errorf("%s: %d are built on, want %d", c.name, built, c.want)
		}
	}
}

// What is laid anew before it is built on turns out dearer than it looked, and comes again in its place.
func TestStackLaidAnew(t *testing.T) {
	s, _ := setUp(Ask{Sizes: []Size{{D: 1, N: 30}}, Rules: shop}, Keeps)
	s.effort = math.MaxInt
	tr := newTree(s)
	for _, c := range []struct {
		n     int
		worth float64
		taken int
	}{{5, math.Inf(1), 0}, {7, math.Inf(1), 1}, {7, 0, 0}} {
		base := &label{crown: 1, tape: 1, layers: 0, centreN: 1, pick: pick{n: []int{1}}}
		l := &label{crown: 3, layers: 1, centreN: 1, parent: base, pick: pick{n: []int{c.n}}}
		ds := slices.Repeat([]mm{1}, c.n)
		ring := lay.LayZigZag(ds, lay.Bed{Crown: 1, Tape: 1}, lay.Laying{Ratio: 12})
		worth := c.worth
		tr.worth = func() float64 { return worth }
		s.now, s.take[0] = &node{n: []int{1 + c.n}}, 0
		least := 3 + tr.bounds.toCome([]int{30 - 1 - c.n}, 3)
		taken := 0
		tr.take = func(again *label, now float64) {
			if again == l {
				taken++
				if now <= least {
					t.Errorf("%d: %v at least, it looked like %v", c.n, now, least)
				}
			}
		}
		built := tr.grow(&stack{label: l, n: []int{1 + c.n}, least: least})
		if math.Abs(l.crown-float64(ring.Over)) > 1e-9 || math.Abs(l.tape-float64(ring.Tape)) > 1e-9 {
			t.Errorf("%d round one: %v over %v, laid %+v", c.n, l.crown, l.tape, ring)
		}
		if taken != c.taken || built != (c.n == 5) {
			t.Errorf("%d round one: built on %v, comes again %d times", c.n, built, taken)
		}
	}
}
