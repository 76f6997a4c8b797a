package planning_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
	"contralay/model"
)

// units is a branch of so many pairs, the first few shielded, and eight single wires round them.
func units(t *testing.T, shielded, bare int, layers string) *sheet.Sheet {
	t.Helper()
	var b strings.Builder
	b.WriteString("format = 1\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Z\"\n")
	n := 0
	wire := func() string {
		n++
		fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"A:%d\"\nto = \"Z:%d\"\nspec = \"AS22759/32\"\nsize = \"22\"\n", n, n, n)
		return fmt.Sprint("w", n)
	}
	for range 8 {
		wire()
	}
	for k := range shielded + bare {
		one, two := wire(), wire()
		fmt.Fprintf(&b, "[[unit]]\nid = \"U%d\"\nwires = [%q, %q]\nbuild = \"pair\"\nshield = %v\n", k, one, two, k < shielded)
	}
	b.WriteString("[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 600.0\nmake = \"laid\"\n" + layers)
	return calc.Build(calctest.Parse(t, b.String()), calctest.Catalogue(t), nil)
}

// The units of a branch go to its centre together where they can be one, at most five equal ones; of more the shielded ones do.
func TestUnitsInTheCentre(t *testing.T) {
	for _, c := range []struct {
		shielded, bare int
		want           []string
	}{{1, 1, []string{"U0", "U1"}}, {2, 4, []string{"U0", "U1"}}, {0, 6, nil}} {
		if got := planning.CentreUnits(units(t, c.shielded, c.bare, ""), 0); !slices.Equal(got, c.want) {
			t.Errorf("%d shielded, %d bare: %v, want %v", c.shielded, c.bare, got, c.want)
		}
	}
	o, ok := planning.Best(units(t, 2, 0, ""), 0, planning.Core{Kind: planning.UnitCore})
	if !ok || !slices.Equal(slices.Sorted(slices.Values(o.Layers[0].Of)), []string{"U0", "U1"}) {
		t.Errorf("%v: %+v", ok, o.Layers)
	}
	wish := units(t, 2, 0, "")
	wish = calc.Build(wish.H.EditBranch(0, func(b *model.Branch) { b.UnitsIn = model.Some(false) }), wish.Cat, nil)
	if o, ok := planning.Best(wish, 0, planning.Core{Kind: planning.UnitCore}); !ok || len(o.Layers[0].Of) != 2 {
		t.Errorf("asked for, though the branch does not wish it: %v %+v", ok, o.Layers)
	}
	if _, ok := planning.Best(units(t, 0, 0, ""), 0, planning.Core{Kind: planning.UnitCore}); ok {
		t.Error("no units, and they are the centre")
	}
}

// Beside a wire that is pinned to the outer layer and units in the centre everything lies once, whatever is proposed.
func TestEverythingLiesOnce(t *testing.T) {
	s := units(t, 2, 0, "  [[branch.layer]]\n  of = [\"U0\", \"U1\"]\n  [[branch.layer]]\n"+
		"  of = [\"w1\", \"w2\", \"w3\", \"w4\", \"w5\", \"w6\", \"w7\", \"w8\"]\n  pinned = [\"w3\"]\n")
	h := s.H.EditBranch(0, func(b *model.Branch) { b.UnitsIn = model.Some(true) })
	s = calc.Build(h, s.Cat, nil)
	options := planning.Propose(s, 0).Options
	if len(options) == 0 {
		t.Fatal("nothing is proposed")
	}
	for _, o := range options {
		var all []string
		for _, l := range o.Layers {
			all = append(all, l.Of...)
		}
		if slices.Sort(all); !slices.Equal(all, []string{"U0", "U1", "w1", "w2", "w3", "w4", "w5", "w6", "w7", "w8"}) {
			t.Errorf("%v", all)
		}
	}
}

// What keeping the early leavers outside costs is said by both diameters and what lies between; and a search says that it
// found something when there is more than before, and only then.
func TestWhatLeaversCost(t *testing.T) {
	s := trunk(t)
	p := planning.Propose(s, 0)
	if !p.LeaversMM.Set || p.LeaversWith <= 0 || p.LeaversFree <= 0 || p.LeaversMM.V != p.LeaversWith-p.LeaversFree {
		t.Errorf("%v, with %v, free %v", p.LeaversMM, p.LeaversWith, p.LeaversFree)
	}
	rng, found := rand.New(rand.NewPCG(3, 7)), 0
	for k := 0; k < 40 && found == 0; k++ {
		s := calc.Build(someTrunk(t, rng), calctest.Catalogue(t), nil)
		q := planning.Begin(s, 0)
		for range 12 {
			was := len(q.Proposal().Options)
			got, more := q.Run(20_000)
			if grew := len(q.Proposal().Options) > was; grew && !got {
				t.Fatal("there is more, and nothing is said to be found")
			}
			if got {
				found++
			}
			if !more {
				break
			}
		}
	}
	if found == 0 {
		t.Error("no search of forty trunks finds anything")
	}
}
