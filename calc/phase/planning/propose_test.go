package planning_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/formula/lay"
	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/shorttest"
	"contralay/model/unit"
)

// A leg of five on 90 mm is twisted and takes no rod.
func TestFiveOnAShortLeg(t *testing.T) {
	s := calc.Complete(calctest.Parse(t, calctest.OneSize(5, "22", "length_mm = 90.0\n")), calctest.Catalogue(t), nil)
	if b := &s.Branches[0]; b.Make != model.MakeTwisted || s.Totals.Fillers != 0 || len(b.Layers) != 1 {
		t.Errorf("make %s, %d fillers, %d layers", b.Make, s.Totals.Fillers, len(b.Layers))
	}
}

// fork is 8 x 20 and 8 x 22 that leave at two breakouts of a trunk; each wire's
// tail is told by the termination it ends in.
func fork() string {
	var b strings.Builder
	b.WriteString("format = 1\n[[termination]]\nid = \"P\"\n[[termination]]\nid = \"X\"\n[[termination]]\nid = \"Y\"\n[[breakout]]\nid = " +
		"\"J1\"\n[[breakout]]\nid = \"J2\"\n")
	for i := range 16 {
		to, size := "X", "20"
		if i >= 8 {
			to, size = "Y", "22"
		}
		fmt.Fprintf(&b, "[[wire]]\nid = \"%d\"\nfrom = \"P:%d\"\nto = \"%s:%d\"\nspec = \"AS22759/32\"\nsize = %q\n", i, i, to, i, size)
	}
	for _, r := range []string{"T P J1 400", "L J1 X 150", "U J1 J2 300", "M J2 Y 150"} {
		f := strings.Fields(r)
		fmt.Fprintf(&b, "[[branch]]\nid = %q\nfrom = %q\nto = %q\nlength_mm = %s\n", f[0], f[1], f[2], f[3])
	}
	return b.String()
}

// What leaves together lies side by side: in a layer of both tails each is one arc,
// and the bundle is at most 0.02 mm thicker than in zig-zag.
func TestTwoTailsAreTwoArcs(t *testing.T) {
	h := calctest.Parse(t, fork()).EditBranch(0, func(b *model.Branch) {
		one := model.Layer{Of: []string{"8"}}
		in := model.Layer{Of: []string{"9", "10", "11", "12", "13"}, Fillers: model.Some(1)}
		out := model.Layer{Of: []string{"14", "15", "0", "1", "2", "3", "4", "5", "6", "7"}}
		b.Layers = []model.Layer{one, in, out}
	})
	s := calc.Complete(h, calctest.Catalogue(t), nil)
	l := s.Branches[0].Layers[2]
	turns := 0
	for k, m := range l.Members {
		if (m.Leaves > 1) != (l.Members[(k+1)%len(l.Members)].Leaves > 1) {
			turns++
		}
	}
	if turns != 2 {
		t.Errorf("%d places where one tail meets the other, want 2: %+v", turns, l.Members)
	}
	var d []unit.Millimetre
	for _, m := range l.Members {
		d = append(d, m.D)
	}
	bed := s.Branches[0].Layers[1]
	zz := lay.LayZigZag(d, lay.Bed{Crown: bed.OverMM, Tape: bed.TapeMM}, lay.Laying{Ratio: 12})
	if dearer := l.OverMM - zz.Over; dearer > 0.02 {
		t.Errorf("in arcs %v, in zig-zag %v: %v dearer", l.OverMM, zz.Over, dearer)
	}
}

// Where nothing is laid, what leaves first has nothing over it that leaves later.
func TestLeaversLieOutside(t *testing.T) {
	s := calc.Complete(calctest.Parse(t, fork()), calctest.Catalogue(t), nil)
	if b := &s.Branches[0]; b.Buried != 0 {
		t.Errorf("%d buried", b.Buried)
	}
}

// A trunk of 42 things: two shielded pairs and a bare one go to the centre, and no
// early leaver lies under a wire that runs on.
func TestTrunkOfFortyTwo(t *testing.T) {
	h := calctest.Load(t, "trunk.toml")
	s := calc.Complete(h, calctest.Catalogue(t), nil)
	b := &s.Branches[0]
	if n := len(b.Components); n != 42 {
		t.Fatalf("%d things to lay", n)
	}
	var centre []string
	for _, m := range b.Layers[0].Members {
		centre = append(centre, m.ID)
	}
	slices.Sort(centre)
	if !slices.Equal(centre, []string{"U1", "U2", "U3"}) || b.Buried != 0 {
		t.Errorf("centre %v, %d buried", centre, b.Buried)
	}
	deepest := 1 << 20
	for k, l := range b.Layers {
		least, most := 1<<20, 0
		for _, m := range l.Members {
			if m.Kind != sheet.OfFiller {
				least, most = min(least, m.Leaves), max(most, m.Leaves)
			}
		}
		if most > deepest {
			t.Errorf("layer %d holds one that runs on over an early leaver", k)
		}
		deepest = min(deepest, least)
	}
}

// The builder lays all 27 x 22 in one outer layer over 8 x 20 and 4 x 16: that is
// tight, 0.06 mm proud, a note and no refusal.
func TestTwentySevenAreTight(t *testing.T) {
	h := calctest.Load(t, "trunk.toml")
	s := calc.Build(h, calctest.Catalogue(t), nil)
	layers := []model.Layer{{Of: []string{"U1", "U2", "U3"}}, {}, {}}
	for _, id := range s.Branches[0].Components[3:] {
		k := 1
		if h.Wires[s.Index.Wire[id]].Size == "22" {
			k = 2
		}
		layers[k].Of = append(layers[k].Of, id)
	}
	s = calc.Complete(h.EditBranch(0, func(b *model.Branch) { b.Layers = layers }), calctest.Catalogue(t), nil)
	l := s.Branches[0].Layers[2]
	if len(l.Members) != 27 {
		t.Fatalf("%d in the outer layer", len(l.Members))
	}
	calctest.Near(t, "proud", float64(l.ProudMM), 0.06, 0.005)
	if g, ok := calctest.Snag(s, "layer.tight", "T1"); !ok || g.Level != sheet.Note || !strings.Contains(g.Says, "0.06 mm proud") {
		t.Errorf("%v %+v", ok, g)
	}
	for _, rule := range []string{"layer.close", "layer.full"} {
		if g, ok := calctest.Snag(s, rule, "T1"); ok {
			t.Errorf("refused: %+v", g)
		}
	}
}

// Sixteen wires and three free cavities at both ends: with spares wanted a full
// 1-6-12 is the first option; it is an offer, and the branch is proposed without.
// Taken, every spare has its cavities. With two free it offers no third.
func TestSparesArePartOfTheSearch(t *testing.T) {
	for _, c := range []struct{ cavities, wanted, spares int }{{19, 3, 3}, {19, 2, 2}, {18, 3, 2}, {16, 3, 0}, {19, 0, 0}} {
		h := calctest.Parse(t, strings.Replace(calctest.OneSize(16, "22", "length_mm = 400.0\n", c.cavities), "format = 1\n",
			fmt.Sprintf("format = 1\n[rules]\nspares_wanted = %d\n", c.wanted), 1))
		s := calc.Complete(h, calctest.Catalogue(t), nil)
		if n := s.Totals.Spares; n != 0 {
			t.Errorf("%+v: proposed with %d spares that the file does not have", c, n)
		}
		most := 0
		for _, o := range s.Proposals[bundle.PlanKey(s, 0)].Options {
			most = max(most, len(o.Spares))
			if len(o.Spares) == 0 {
				continue
			}
			with := calc.Complete(planning.Laid(s, h, 0, o), calctest.Catalogue(t), nil)
			if with.Totals.Spares != len(o.Spares) || sheet.Worst(with.Snags)[0].Level == sheet.Stop {
				t.Errorf("%+v: %d spares laid of %d; %+v", c, with.Totals.Spares, len(o.Spares), sheet.Worst(with.Snags)[0])
			}
		}
		if most != c.spares {
			t.Errorf("%+v: offers %d spares", c, most)
		}
	}
	h := calctest.Parse(t, strings.Replace(calctest.OneSize(16, "22", "length_mm = 400.0\n", 19), "format = 1\n",
		"format = 1\n[rules]\nspares_wanted = 3\n", 1))
	s := calc.Complete(h, calctest.Catalogue(t), nil)
	if o := s.Proposals[bundle.PlanKey(s, 0)].Options[0]; len(o.Spares) != 3 || len(o.Layers) != 3 || len(o.Layers[2].Of) != 9 {
		t.Errorf("first option %+v", o)
	}
}

// someTrunk is 8 to 20 wires of three sizes that run one to three branches far.
func someTrunk(t testing.TB, rng *rand.Rand) *model.Harness {
	var b strings.Builder
	b.WriteString("format = 1\n[[termination]]\nid = \"P\"\n")
	for k := range 3 {
		fmt.Fprintf(&b, "[[termination]]\nid = \"X%d\"\n[[breakout]]\nid = \"J%d\"\n", k, k)
	}
	for i := range 8 + rng.IntN(13) {
		fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"P:%d\"\nto = \"X%d:%d\"\nspec = \"AS22759/32\"\nsize = %q\n", i, i, rng.IntN(3),
			i, []string{"22", "20", "16"}[rng.IntN(3)])
	}
	for _, r := range []string{"T P J0", "U J0 J1", "V J1 J2", "A J0 X0", "B J1 X1", "C J2 X2"} {
		f := strings.Fields(r)
		fmt.Fprintf(&b, "[[branch]]\nid = %q\nfrom = %q\nto = %q\nlength_mm = 300\n", f[0], f[1], f[2])
	}
	return calctest.Parse(t, b.String())
}

// firstOption is the best a branch can be, and whether anything can.
func firstOption(s *sheet.Sheet) (sheet.Option, bool) {
	p := planning.Propose(s, 0)
	if len(p.Options) == 0 {
		return sheet.Option{}, false
	}
	return p.Options[0], true
}

// Taking a pin away never makes the first option worse, and every option keeps
// what is pinned and locked. The weight of buried leavers is off: it is added to the
// plans found, and does not steer the search.
func TestPinsAndLocks(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 5))
	many := 8
	if shorttest.Long() {
		many = 60
	}
	for range many {
		h := someTrunk(t, rng).EditBranch(0, func(b *model.Branch) { b.LeaversOut = model.Some(false) })
		s := calc.Complete(h, calctest.Catalogue(t), nil)
		if s.Branches[0].Make != model.MakeLaid {
			continue
		}
		free, ok := firstOption(s)
		if !ok {
			t.Fatal("no option")
		}
		k := rng.IntN(len(free.Layers))
		id := free.Layers[rng.IntN(len(free.Layers))].Of[0]
		pinned := planning.Laid(s, h, 0, free)
		pinned, err := pinned.Move(0, id, k)
		if err != nil {
			t.Fatal(err)
		}
		at := slices.IndexFunc(pinned.Branches[0].Layers, func(l model.Layer) bool { return slices.Contains(l.Of, id) })
		pinned = pinned.EditBranch(0, func(b *model.Branch) { b.Layers[at].Pinned = []string{id} })
		with := calc.Build(pinned, calctest.Catalogue(t), nil)
		for n, o := range planning.Propose(with, 0).Options {
			if !slices.Contains(o.Layers[at].Of, id) {
				t.Errorf("an option moves %s, pinned to layer %d", id, at)
			}
			if n == 0 && o.Plan.Relaxed == free.Plan.Relaxed && o.Cost < free.Cost-1e-9 {
				t.Errorf("with %s pinned to layer %d the first option costs %.4f, free %.4f", id, at, o.Cost, free.Cost)
			}
		}
		locked := pinned.EditBranch(0, func(b *model.Branch) { b.Layers[at].Locked, b.Layers[at].Pinned = model.Some(true), nil })
		now := locked.Branches[0].Layers
		for _, o := range planning.Propose(calc.Build(locked, calctest.Catalogue(t), nil), 0).Options {
			a, z := slices.Sorted(slices.Values(now[at].Of)), slices.Sorted(slices.Values(o.Layers[at].Of))
			if !slices.Equal(a, z) || o.Layers[at].Fillers.V != now[at].Fillers.V || (len(now)-len(o.Layers))%2 != 0 {
				t.Errorf("layer %d is locked with %v of %d layers; an option has %v of %d", at, a, len(now), z, len(o.Layers))
			}
		}
	}
}

// A wish changes nothing where it is kept already, nor any branch but its own.
func TestWishesChangeWhatTheyName(t *testing.T) {
	h := calctest.Load(t, "trunk.toml")
	s := calc.Complete(h, calctest.Catalogue(t), nil)
	off := calc.Complete(h.EditBranch(0, func(b *model.Branch) { b.UnitsIn, b.LeaversOut = model.Some(false), model.Some(false) }),
		calctest.Catalogue(t), nil)
	for i := range s.Branches {
		if i > 0 && fmt.Sprint(s.Branches[i].Layers) != fmt.Sprint(off.Branches[i].Layers) {
			t.Errorf("branch %s changed with the wishes of T1", s.H.Branches[i].ID)
		}
	}
	rng := rand.New(rand.NewPCG(6, 6))
	for range shorttest.Rounds(20) {
		h := someTrunk(t, rng)
		free, ok := firstOption(calc.Build(h.EditBranch(0, func(b *model.Branch) { b.LeaversOut = model.Some(false) }),
			calctest.Catalogue(t), nil))
		with, _ := firstOption(calc.Build(h, calctest.Catalogue(t), nil))
		if ok && free.Buried == 0 && with.Plan.Over != free.Plan.Over {
			t.Errorf("nothing is buried, yet the wish changes over from %v to %v", free.Plan.Over, with.Plan.Over)
		}
	}
}

func BenchmarkProposeTrunk(b *testing.B) {
	s := calc.Build(calctest.Load(b, "trunk.toml"), calctest.Catalogue(b), nil)
	for b.Loop() {
		planning.Propose(s, 0)
	}
}
