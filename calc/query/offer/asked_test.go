package offer_test

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/ends"
	"contralay/calc/query/offer"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Spares that stand in, and ends that could take more, are counted a second time from the file of each example.
func TestSubstitutesAndPairingsBySecondCount(t *testing.T) {
	met := 0
	for _, name := range calctest.Files("demo", "whole", "example") {
		s := calc.Build(calctest.Load(t, name+".toml"), calctest.Catalogue(t), nil)
		term := func(end string) string { id, _, _ := strings.Cut(end, ":"); return id }
		isTerm := func(id string) bool { _, ok := s.Index.Termination[id]; return ok }
		for k := range s.H.Wires {
			w := &s.H.Wires[k]
			var want []string
			for j := range s.H.Wires {
				o := &s.H.Wires[j]
				if j == k || o.Role.V != model.RoleSpare || !isTerm(term(w.From.V)) || !isTerm(term(w.To.V)) ||
					s.Wires[j].Entry.AreaMM2 < s.Wires[k].Entry.AreaMM2 {
					continue
				}
				switch {
				case term(o.From.V) == term(w.From.V) && term(o.To.V) == term(w.To.V):
					want = append(want, fmt.Sprint(j, w.From.V, w.To.V, o.From.V, o.To.V))
				case term(o.From.V) == term(w.To.V) && term(o.To.V) == term(w.From.V):
					want = append(want, fmt.Sprint(j, w.From.V, w.To.V, o.To.V, o.From.V))
				}
			}
			var got []string
			for _, x := range offer.Substitutes(s, k) {
				got = append(got, fmt.Sprint(x.Wire, x.FromA, x.FromB, x.ToA, x.ToB))
			}
			if !slices.Equal(got, want) {
				t.Errorf("%s: in place of %s stand %v, want %v", name, w.ID, got, want)
			}
			met += len(want)
		}
		for a := range s.H.Terminations {
			var want []offer.Pairing
			for b := range s.H.Terminations {
				p := offer.Pairing{A: a, B: b}
				count := map[[2]string]int{}
				best := [2]string{}
				for k := range s.H.Wires {
					w := &s.H.Wires[k]
					x, y := term(w.From.V), term(w.To.V)
					if p, q := s.H.Terminations[a].ID, s.H.Terminations[b].ID; a == b || (x != p || y != q) && (x != q || y != p) {
						continue
					}
					p.Wires++
					p.Spares += calctest.Once(w.Role.V == model.RoleSpare)
					key := [2]string{w.Spec, w.Size}
					if count[key]++; count[key] > count[best] {
						best = key
					}
				}
				if p.Wires == 0 {
					continue
				}
				free := [2]int{}
				for n, at := range []int{a, b} {
					for _, c := range s.Terms[at].Free {
						free[n] += calctest.Once(ends.Takes(s, at, c, best[0], best[1]))
					}
				}
				p.More = min(free[0], free[1])
				want = append(want, p)
			}
			slices.SortStableFunc(want, func(x, y offer.Pairing) int { return cmp.Compare(y.Wires, x.Wires) })
			if got := offer.Pairings(s, a); !slices.Equal(got, want) {
				t.Errorf("%s: %s runs on to %v, want %v", name, s.H.Terminations[a].ID, got, want)
			}
		}
	}
	if met == 0 {
		t.Error("no spare stands in anywhere")
	}
}

// Each reason against a size is told by itself, with its figures; of a size that does nothing is.
func TestDoubtsBySentence(t *testing.T) {
	base := func(amps string) *sheet.Sheet { return calctest.Carrying(t, 40, "20", []string{"20 " + amps}, nil, "") }
	edited := func(s *sheet.Sheet, f func(h *model.Harness)) *sheet.Sheet {
		h := *s.H
		h.Wires = slices.Clone(h.Wires)
		f(&h)
		return calc.Complete(&h, s.Cat, nil)
	}
	sound := base("1.0")
	// 20 AWG has 9.88 ohm/1000 ft by AC 43.13-1B table 11-9: over 1 m it drops far less than 0.5 V at 1 A; over 30 m about 1 V.
	for _, c := range []struct {
		name, size string
		s          *sheet.Sheet
		want       string
	}{
		{"sound", "20", sound, ""},
		{"no such size", "21", sound, "AS22759/32 has no size 21"},
		{"too thin for the shop", "26", edited(sound, func(h *model.Harness) { h.Rules.SizeMin = model.Some("24") }),
			"thinner than the shop uses, 24"},
		{"as thin as the shop uses", "24", edited(sound, func(h *model.Harness) { h.Rules.SizeMin = model.Some("24") }), ""},
		{"too thick for its contact", "12", sound, "A:0 does not take it"},
		{"no current", "20", edited(sound, func(h *model.Harness) { h.Wires[0].Amps = model.Opt[unit.Ampere]{} }),
			"no current is entered"},
	} {
		if got := offer.Doubt(c.s, 0, c.size); got != c.want || offer.Does(c.s, 0, c.size) != (c.want == "") {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
	long := edited(sound, func(h *model.Harness) {
		h.Branches = slices.Clone(h.Branches)
		h.Branches[0].LengthMM = 30000
	})
	w := &long.Wires[0]
	if got, want := offer.Doubts(long, 0), "drops "+unit.Fixed(w.Circuit, 2)+" V of 0.50 V allowed"; got != want || !(w.Circuit > 0.5) {
		t.Errorf("%q, want %q", got, want)
	}
	hot := base("40.0")
	if b := hot.Wires[0].Bound; !b.Set || offer.Doubts(hot, 0) != "may carry "+sheet.PlainAmps(b.V.Amps)+" A: "+b.V.Where ||
		!(b.V.Amps < 40) {
		t.Errorf("%q", offer.Doubts(hot, 0))
	}
	if _, ok := offer.SmallestThatDoes(edited(sound, func(h *model.Harness) { h.Wires[0].Amps = model.Opt[unit.Ampere]{} }), 0); ok {
		t.Error("a wire without a current has a smallest size")
	}
	// The smallest that does is the first of the table, thin to thick, of which nothing is said.
	size, ok := offer.SmallestThatDoes(sound, 0)
	for _, z := range sound.Cat.Sizes("AS22759/32") {
		does := offer.Doubt(sound, 0, z) == ""
		if catalogue.SameSize(z, size) {
			if !does || !ok {
				t.Errorf("%s is the smallest and does not do", size)
			}
			break
		}
		if does {
			t.Errorf("%s does and is thinner than %s", z, size)
		}
	}
}
