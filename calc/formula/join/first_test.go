package join

import (
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model/unit"
)

// Of several parallel splices that take all wires the first one is named, and no other.
func TestFirstParallelThatFits(t *testing.T) {
	parts := []Part{{ID: "small", Parallel: true, Least: 100, Most: 500}, {ID: "right", Parallel: true, Least: 1000, Most: 3000},
		{ID: "too", Parallel: true, Least: 1500, Most: 4000}}
	cures := Cures(Side{1200}, Side{700, 700}, nil, parts) // 2600 in all
	if len(cures) != 1 || len(cures[0].Parts) != 1 || cures[0].Parts[0] != "right" {
		t.Errorf("%+v", cures)
	}
}

// The edges of a barrel: within a hundredth of its table's circular mils it holds what comes, a hair beyond it does not. A barrel
// from 1000 to 2000 takes 991 (991 × 1.01 = 1000.9) and 2019 (of 2020), not 990 (999.9) and not 2021; two squares of a part take
// exactly 1010 and 2020. Exactly at the edge: 500 × 1.01 = 505.
func TestBarrelEdges(t *testing.T) {
	p := Part{Least: 1000, Most: 2000}
	for v, want := range map[unit.CircularMil]bool{991: true, 990: false, 2019: true, 2021: false, 2000 * Slack: true} {
		if p.Fits(Side{v}, Side{1500}) != want || p.Fits(Side{1500}, Side{v}) != want {
			t.Errorf("%v circular mils fit: %v", v, !want)
		}
	}
	if !(Part{Least: 505, Most: 9000}).Fits(Side{500}, Side{500}) {
		t.Error("500 with a hundredth are 505")
	}
	open := Part{Most: 2000} // a barrel without a least still joins nothing to nothing
	if open.Fits(nil, Side{5}) || open.Fits(Side{5}, nil) || !open.Fits(Side{0.5}, Side{5}) {
		t.Error("a butt splice with an empty side")
	}
	if got := (Side{1.5, 2}).Sum(); got != 3.5 {
		t.Errorf("1.5 and 2 are %v", got)
	}
	if got := Side(nil).Sum(); got != 0 {
		t.Errorf("nothing brings %v", got)
	}
}

// The branch side is parted by size, the thin ones first; a feed is changed for a thicker one alone. By hand, the feed being 100:
// of 400, 100, 100, 100 the halves are 300 and 400; of 300, 200, 250 they are 200 + 250 and 300; of five alike two and three.
func TestHalvesByHand(t *testing.T) {
	part := func(id string, least, most unit.CircularMil) Part { return Part{ID: id, Least: least, Most: most} }
	for _, c := range []struct {
		branch Side
		parts  []Part
		want   []Cure
	}{
		{Side{400, 100, 100, 100}, []Part{part("b", 90, 300), part("d", 90, 400)}, []Cure{{Parts: []string{"b", "d"}, Split: 3}}},
		{Side{300, 200, 250}, []Part{part("d", 90, 460), part("b", 90, 300)}, []Cure{{Parts: []string{"d", "d"}, Split: 2}}},
		{Side{300, 200, 250}, []Part{part("b", 90, 300), part("d", 90, 460)}, []Cure{{Parts: []string{"d", "b"}, Split: 2}}},
		{Side{300, 200, 250}, []Part{part("b", 90, 300), part("d", 90, 440)}, nil},
		{Side{200, 200, 200, 200, 200}, []Part{part("b", 90, 400), part("d", 90, 600)}, []Cure{{Parts: []string{"b", "d"}, Split: 2}}},
		{Side{500, 100}, []Part{part("b", 90, 500)}, []Cure{{Parts: []string{"b", "b"}, Split: 1}}},
		{Side{300}, []Part{part("b", 90, 400)}, nil},
		{nil, []Part{part("b", 0, 400)}, nil},
	} {
		if got := Cures(Side{100}, c.branch, nil, c.parts); !cmp.Equal(got, c.want) {
			t.Errorf("%v: %+v, want %+v", c.branch, got, c.want)
		}
	}
	// The feed of 200 is the one there is; 300 is the next thicker one, and only "b", the first part that takes 600, takes both.
	parts := []Part{part("b", 290, 700), part("a", 250, 350), {ID: "p", Parallel: true, Least: 2000, Most: 3000}, part("e", 400, 900)}
	for _, c := range []struct {
		feed Side
		want []Cure
	}{{Side{200}, []Cure{{Feed: 300, Parts: []string{"b"}}}}, {Side{300}, []Cure{{Feed: 400, Parts: []string{"b"}}}}, {Side{100,
		100}, nil}} {
		if got := Cures(c.feed, Side{600}, []unit.CircularMil{100, 200, 300, 400}, parts); !cmp.Equal(got, c.want) {
			t.Errorf("feed %v: %+v, want %+v", c.feed, got, c.want)
		}
	}
}

// Whatever the sizes, a branch side that two butt splices take when it is parted at any place by size they take parted evenly.
func TestEvenHalvesAreEnough(t *testing.T) {
	r, two := rand.New(rand.NewPCG(4, 4)), 0
	for range 400 {
		mils := func() unit.CircularMil { return unit.CircularMil(100 * (1 + r.IntN(20))) }
		var parts []Part
		for range 3 {
			least := mils()
			parts = append(parts, Part{ID: "butt", Least: least, Most: least + 2*mils()})
		}
		feed, branch := Side{mils()}, Side{}
		for range 2 + r.IntN(5) {
			branch = append(branch, mils())
		}
		slices.Sort(branch)
		takes := func(s Side) bool { return slices.ContainsFunc(parts, func(p Part) bool { return p.Fits(feed, s) }) }
		any := false
		for n := 1; n < len(branch); n++ {
			any = any || takes(branch[:n]) && takes(branch[n:])
		}
		if got := len(Cures(feed, branch, nil, parts)) == 1; got != any {
			t.Fatalf("feed %v, branch %v, %+v: %v, by every parting %v", feed, branch, parts, got, any)
		}
		if any {
			two++
		}
	}
	if two < 20 || two > 380 {
		t.Errorf("%d of 400 have halves", two)
	}
}
