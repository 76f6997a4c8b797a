package inserts_test

import (
	"fmt"
	"math"
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc/calctest"
	"contralay/calc/query/inserts"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// gauges of the wire the small catalogues know, thick to thin.
var gauges = []string{"12", "14", "16", "18", "20", "22", "24"}

// A small catalogue and a small question: every way to put each wire into a cavity of its own is
// tried, and the answer must agree on whether it goes, how many seals are missed, and that no
// smaller contacts would do.
func TestAgainstEveryWay(t *testing.T) {
	shelf := calctest.Catalogue(t)
	rapid.Check(t, func(t *rapid.T) {
		cat := &catalogue.Catalogue{Wires: shelf.Wires, Contacts: map[string]catalogue.Contact{}, Inserts: map[string]catalogue.Insert{}}
		sizes := rapid.IntRange(1, 4).Draw(t, "sizes")
		for n := range sizes {
			a := rapid.IntRange(0, len(gauges)-1).Draw(t, "thick")
			b := rapid.IntRange(a, len(gauges)-1).Draw(t, "thin")
			c := catalogue.Contact{Size: fmt.Sprint("s", n), LargestAWG: gauges[a], SmallestAWG: gauges[b],
				WellBoreMM: unit.Millimetre(1 + n), MaxA: unit.Ampere(n + 1), SealStanding: catalogue.Memory}
			if rapid.Bool().Draw(t, "seal") {
				c.SealMinMM = unit.Millimetre(rapid.Float64Range(0.5, 2.5).Draw(t, "least"))
				c.SealMaxMM = c.SealMinMM + unit.Millimetre(rapid.Float64Range(0.1, 2).Draw(t, "most"))
			}
			if rapid.IntRange(0, 2).Draw(t, "standing") == 0 {
				c.SealStanding = catalogue.House
			}
			cat.Contacts[c.Size] = c
		}
		for n := range rapid.IntRange(1, 4).Draw(t, "inserts") {
			i := catalogue.Insert{ID: fmt.Sprint("i", n), Shell: 8 + 2*rapid.IntRange(0, 2).Draw(t, "shell")}
			for s := range sizes {
				if count := rapid.IntRange(0, 3).Draw(t, "count"); count > 0 {
					i.Contacts = append(i.Contacts, catalogue.InsertContacts{Size: fmt.Sprint("s", s), Count: count})
					for range count {
						i.Cavities = append(i.Cavities, strconv.Itoa(len(i.Cavities)))
					}
				}
			}
			if len(i.Contacts) > 0 {
				cat.Inserts[i.ID] = i
			}
		}
		var want inserts.Want
		for range rapid.IntRange(0, 5).Draw(t, "wires") {
			w := inserts.Wire{Count: 1}
			if rapid.IntRange(0, 3).Draw(t, "by diameter") == 0 {
				w.OverMM = unit.Millimetre(rapid.Float64Range(0.5, 4).Draw(t, "over"))
			} else {
				w.Spec, w.Size = "AS22759/41", rapid.SampledFrom(gauges).Draw(t, "gauge")
			}
			want.Wires = append(want.Wires, w)
		}
		if rapid.Bool().Draw(t, "pair") {
			want.Pairs = []inserts.Pair{{Wire: inserts.Wire{Spec: "AS22759/41", Size: rapid.SampledFrom(gauges).Draw(t, "of"), Count: 1},
				Shielded: rapid.Bool().Draw(t, "shielded")}}
		}
		a := inserts.Rank(cat, want)
		fits := map[string]inserts.Fit{}
		for _, f := range a.Fits {
			fits[f.Insert.ID] = f
		}
		for id, i := range cat.Inserts {
			best := everyWay(cat, i, single(cat, want))
			f, takes := fits[id]
			if takes != (best != nil) {
				t.Fatalf("%s takes it: %v, every way tried: %v\n%+v\n%+v", id, takes, best != nil, i, want)
			}
			if !takes {
				continue
			}
			missed, sum, count := 0, 0, 0
			for _, g := range f.Seals {
				missed += g.Count
			}
			at := map[string]int{}
			for n, l := range f.Left {
				at[l.Size] = n
			}
			for _, g := range f.Goes {
				sum, count = sum+g.Count*at[g.Contact.Size], count+g.Count
			}
			if missed != best[0] || sum != best[1] || count != want.Cavities() || f.Free != len(i.Cavities)-count {
				t.Fatalf("%s: %d seals missed, places %d, %d wires, %d free; every way tried: %v\n%+v\n%+v", id, missed, sum, count, f.Free,
					best, i, want)
			}
		}
		if len(a.Fits) > 0 && a.Nearest != nil {
			t.Fatalf("%d fits, nearest %v", len(a.Fits), a.Nearest)
		}
	})
}

// piece is one wire of the question.
type piece struct {
	awg    int             // 0: not known
	over   unit.Millimetre // 0: not judged
	byOver bool
}

func single(cat *catalogue.Catalogue, w inserts.Want) []piece {
	var out []piece
	of := func(x inserts.Wire) piece {
		if x.Size == "" {
			return piece{over: x.OverMM, byOver: true}
		}
		awg, _ := strconv.Atoi(x.Size)
		e, _ := cat.Wire(x.Spec, x.Size)
		return piece{awg: awg, over: e.OverMM}
	}
	for _, x := range w.Wires {
		out = append(out, of(x))
	}
	for _, p := range w.Pairs {
		out = append(out, of(p.Wire), of(p.Wire))
		if p.Shielded {
			drain := of(p.Wire)
			drain.over = 0
			out = append(out, drain)
		}
	}
	return out
}

// everyWay is the fewest seals missed and, with those, the smallest contacts, over every way to put
// each wire into a cavity of its own; nil where there is none.
func everyWay(cat *catalogue.Catalogue, i catalogue.Insert, all []piece) []int {
	var sizes []string
	var left []int
	for _, g := range i.Contacts { // small to large, as they were made
		sizes, left = append(sizes, g.Size), append(left, g.Count)
	}
	best := []int{math.MaxInt, 0}
	var try func(n, missed, sum int)
	try = func(n, missed, sum int) {
		if n == len(all) {
			if missed < best[0] || missed == best[0] && sum < best[1] {
				best = []int{missed, sum}
			}
			return
		}
		for s := range sizes {
			c, p := cat.Contacts[sizes[s]], all[n]
			largest, _ := strconv.Atoi(c.LargestAWG)
			smallest, _ := strconv.Atoi(c.SmallestAWG)
			outside := p.over > 0 && c.SealMaxMM > 0 && (p.over < c.SealMinMM || p.over > c.SealMaxMM)
			if left[s] == 0 || p.awg != 0 && (p.awg < largest || p.awg > smallest) ||
				p.byOver && c.SealMaxMM == 0 || outside && (p.byOver || c.SealStanding != catalogue.Memory) {
				continue
			}
			left[s]--
			if outside {
				try(n+1, missed+1, sum+s)
			} else {
				try(n+1, missed, sum+s)
			}
			left[s]++
		}
	}
	try(0, 0, 0)
	if best[0] == math.MaxInt {
		return nil
	}
	return best
}
