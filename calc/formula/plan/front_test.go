package plan

import (
	"fmt"
	"slices"
	"testing"
)

// A front holds the plans that no other beats, whatever order they are offered in, and of equal figures the cheaper; it knows the cheapest
// of all. Every pair of 38 plans, and a fifth of
// all third ones behind it.
func TestFrontOfTriples(t *testing.T) {
	var all []done
	for code := range 36 {
		d := done{label: &label{fillers: code % 2, lumpy: code / 2 % 2}, over: 500 + code/4%3, spares: code / 12 % 3}
		d.cost = float64(10 + (code*7)%13)
		all = append(all, d)
	}
	all = append(all, all[5], all[14])
	all[36].cost, all[37].cost = all[36].cost-0.5, all[37].cost+0.5
	beats := func(o, d done) bool { // no worse in any figure
		return o.over <= d.over && o.fillers <= d.fillers && o.lumpy <= d.lumpy && o.spares >= d.spares
	}
	same := func(o, d done) bool { return beats(o, d) && beats(d, o) }
	say := func(d done) string { return fmt.Sprint(d.over, d.fillers, d.lumpy, d.spares, d.cost) }
	for i := range all {
		for j := range all {
			for k := (i + j) % 5; k < len(all); k += 5 {
				three := []done{all[i], all[j], all[k]}
				f := &front{}
				for at, d := range three {
					finds := f.finds
					before := slices.Clone(f.all)
					wasLeast := f.least
					f.offer(d)
					changed := !slices.Equal(before, f.all) || f.least != wasLeast
					if changed != (f.finds > finds) {
						t.Fatalf("%d, %d and %d, after %d: changed %v, %d finds, %d before", i, j, k, at, changed, f.finds, finds)
					}
				}
				var want, got []string
				least := three[0]
				for x, d := range three {
					if d.cost < least.cost {
						least = d
					}
					kept := true
					for y, o := range three {
						if same(o, d) {
							kept = kept && (d.cost < o.cost || d.cost == o.cost && x <= y)
						} else if beats(o, d) {
							kept = false
						}
					}
					if kept {
						want = append(want, say(d))
					}
				}
				for _, d := range f.all {
					got = append(got, say(d))
				}
				slices.Sort(want)
				slices.Sort(got)
				if !slices.Equal(got, want) || f.least.cost != least.cost {
					t.Fatalf("%d, %d and %d: got %v and %v, want %v and %v", i, j, k, got, say(*f.least), want, say(least))
				}
			}
		}
	}
}

// A figure is beaten by a plan that is better in one and worse in none; over is rounded to 0.01 mm, and a millionth above it is not beaten.
func TestBeatsByFigures(t *testing.T) {
	f := &front{all: []done{{label: &label{fillers: 2, lumpy: 1}, over: 512, spares: 1}}}
	for _, c := range []struct {
		over                   float64
		fillers, lumpy, spares int
		want                   bool
	}{
		{5.12, 2, 1, 1, false}, // the same
		{5.1249, 2, 1, 1, false}, {5.1251, 2, 1, 1, true}, {5.125 + 5e-7, 2, 1, 1, false}, {5.11, 2, 1, 1, false},
		{5.12, 3, 1, 1, true}, {5.12, 1, 1, 1, false}, {5.12, 2, 2, 1, true}, {5.12, 2, 0, 1, false}, {5.12, 2, 1, 0, true}, {5.12, 2, 1,
			2, false},
		{5.2, 1, 1, 1, false}, {5.2, 2, 0, 1, false}, {5.2, 2, 1, 2, false}, {5.11, 3, 2, 0, false}, {5.2, 3, 2, 0, true},
	} {
		if got := f.beats(c.over, c.fillers, c.lumpy, c.spares); got != c.want {
			t.Errorf("%+v: beaten %v", c, got)
		}
	}
}

// Of plans that cost the same: more fillers in the outermost layer, then fewer layers, then fewer in the centre, then from the outside in
// and from thick to thin fewer in the first layer that differs. Each comes before all behind it.
func TestBetterOfEqualCost(t *testing.T) {
	of := func(cost float64, fillers, layers, centre int, rings ...[]int) done {
		var l *label
		for _, n := range rings { // from the inside out
			l = &label{parent: l, pick: pick{n: n}}
		}
		l.pick.fillers, l.layers, l.centreN = fillers, layers, centre
		return done{label: l, cost: cost}
	}
	all := []done{
		of(4, 0, 9, 9, []int{9, 9}, []int{9, 9}),
		of(5, 3, 2, 5, []int{5, 0}, []int{9, 9}),
		of(5, 2, 1, 5, []int{5, 0}, []int{9, 9}),
		of(5, 2, 2, 1, []int{5, 0}, []int{9, 9}),
		of(5, 2, 2, 3, []int{9, 0}, []int{9, 3}),
		of(5, 2, 2, 3, []int{5, 0}, []int{3, 4}),
		of(5, 2, 2, 3, []int{3, 4}, []int{4, 4}),
		of(5, 2, 2, 3, []int{5, 4}, []int{4, 4}),
		of(5, 2, 2, 3, []int{3, 5}, []int{4, 4}),
		of(5.1, 9, 1, 1, []int{0, 0}, []int{0, 0}),
	}
	for i, a := range all {
		for j, b := range all {
			a := a
			a.cost += 1e-10 // rounding
			if got := better(a, b); got != (i < j) {
				t.Errorf("%d before %d: %v", i, j, got)
			}
		}
	}
	if a, b := of(5, 0, 1, 1, []int{1}), of(5+1e-8, 0, 1, 1, []int{0}); !better(a, b) || better(b, a) {
		t.Error("a hundred-millionth dearer, and it is taken for the same")
	}
}

// Of stacks on the same bed those stay that no other beats in fillers, lumpy layers and cost; on another bed each stays.
func TestKeepOnOneBed(t *testing.T) {
	s := newStacking(Ask{Sizes: []Size{{D: 1, N: 3}}, Rules: shop})
	base := label{crown: 5, tape: 4.9, fillers: 2, fillerMM: 2, lumpy: 1, spread: 0.5, layers: 2, centreN: 3}
	with := func(change func(l *label)) *label { l := base; change(&l); return &l }
	for _, c := range []struct {
		name  string
		other *label
		stays string // of the first and the other
	}{
		{"the same", with(func(*label) {}), "1 0"},
		{"dearer by spread", with(func(l *label) { l.spread += 0.1 }), "1 0"},
		{"cheaper by spread", with(func(l *label) { l.spread -= 0.1 }), "0 1"},
		{"dearer by fillers' size", with(func(l *label) { l.fillerMM += 1 }), "1 0"},
		{"cheaper, more fillers", with(func(l *label) { l.spread -= 0.1; l.fillers++ }), "1 1"},
		{"cheaper, lumpier", with(func(l *label) { l.spread -= 0.1; l.lumpy++ }), "1 1"},
		{"dearer, fewer fillers", with(func(l *label) { l.spread += 0.1; l.fillers-- }), "1 1"},
		{"dearer, less lumpy", with(func(l *label) { l.spread += 0.1; l.lumpy-- }), "1 1"},
		{"dearer, another crown", with(func(l *label) { l.spread += 0.1; l.crown += 1e-6 }), "1 1"},
		{"dearer, another tape", with(func(l *label) { l.spread += 0.1; l.tape -= 1e-6 }), "1 1"},
		{"dearer, a hair off", with(func(l *label) { l.spread += 0.1; l.crown += 1e-10; l.tape += 1e-10 }), "1 0"},
		{"more layers", with(func(l *label) { l.layers++ }), "1 0"},
		{"fewer layers", with(func(l *label) { l.layers-- }), "0 1"},
		{"more in the centre", with(func(l *label) { l.centreN++ }), "1 0"},
		{"fewer in the centre", with(func(l *label) { l.centreN-- }), "0 1"},
	} {
		for _, ls := range [][]*label{{&base, c.other}, {c.other, &base}} {
			if c.name == "the same" && ls[0] != &base {
				continue // the first of them stays
			}
			out := s.keep(slices.Clone(ls))
			has := func(l *label) int {
				if slices.Contains(out, l) {
					return 1
				}
				return 0
			}
			if got := fmt.Sprint(has(&base), " ", has(c.other)); got != c.stays || len(out) > 2 {
				t.Errorf("%s: %s stay, want %s", c.name, got, c.stays)
			}
			for i := 1; i < len(out); i++ {
				if s.soFar(out[i]) < s.soFar(out[i-1]) {
					t.Errorf("%s: the dearer stands first", c.name)
				}
			}
		}
	}
}
