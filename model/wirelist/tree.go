package wirelist

import (
	"cmp"
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/unit"
)

// terminations puts the terminations into the harness. One without an insert of the
// catalogue lists its own cavities: those of a pin table in its order, else sorted.
func (im *importer) terminations() {
	for _, t := range im.terms {
		for _, p := range t.pins {
			if t.state[p] == reserved {
				t.Reserved = append(t.Reserved, p)
			}
		}
		if !t.Insert.Set {
			t.Cavities = slices.Clone(t.pins)
			if !t.titled {
				slices.SortFunc(t.Cavities, compareCavities)
			}
		}
		im.h.Terminations = append(im.h.Terminations, t.Termination)
	}
}

// compareCavities sorts 2 before 10 and A before a.
func compareCavities(a, b string) int {
	number := func(s string) (int, bool) {
		n := 0
		for _, c := range []byte(s) {
			if !isDigit(c) || n > 1e8 {
				return 0, false
			}
			n = 10*n + int(c-'0')
		}
		return n, s != ""
	}
	m, ok1 := number(a)
	n, ok2 := number(b)
	if ok1 && ok2 {
		return cmp.Or(cmp.Compare(m, n), cmp.Compare(a, b))
	}
	return cmp.Compare(a, b)
}

// tree makes the branches. No list says where the bundle parts, so: between two
// terminations one branch; between more, or with splices, a star. The legs take the
// lengths that the list gives from the termination with most partners, less the
// stand-in of its own leg, so that each way is as long as the list says. What is not
// known is the stand-in and its name says so.
func (im *importer) tree() {
	n := len(im.terms)
	if n < 2 && len(im.h.Splices) == 0 {
		return
	}
	lengths := im.lengths()
	if n == 2 && len(im.h.Splices) == 0 {
		mm := lengths[[2]int{0, 1}]
		im.h.Branches = []model.Branch{im.branch("T1", im.terms[0].ID, im.terms[1].ID, mm)}
		im.told()
		return
	}
	hub := im.hub(lengths)
	j := "J1"
	if slices.ContainsFunc(im.terms, func(t *term) bool { return t.ID[0] == 'J' && isDesignator(t.ID) }) {
		j = "BO1" // a J among connectors called J would be taken for one of them
	}
	for k := 2; im.taken(j); k++ {
		j = fmt.Sprintf("BO%d", k)
	}
	im.h.Breakouts = []model.Breakout{{ID: j, Build: model.Some("taped")}}
	for i := range im.h.Splices {
		im.h.Splices[i].At = j
	}
	leg := 0
	for i, t := range im.terms {
		if i == hub {
			im.h.Branches = append(im.h.Branches, im.branch("T1", t.ID, j, 0))
			continue
		}
		mm := lengths[[2]int{min(i, hub), max(i, hub)}]
		leg++
		im.h.Branches = append(im.h.Branches, im.branch(fmt.Sprintf("L%d", leg), j, t.ID, mm-standIn))
	}
	slices.SortStableFunc(im.h.Branches, func(a, b model.Branch) int { // the trunk first
		return cmp.Compare(b.ID[:1], a.ID[:1])
	})
	im.told()
}

// standIn is the length of a branch whose length the list does not give: the file
// needs one, and nobody takes this for real.
const standIn unit.Millimetre = 1

// notGiven is the name of a branch whose length stands for one that the list does not give.
const notGiven = "length not in the list"

// branch is one branch; a length of no use is the stand-in.
func (im *importer) branch(id, from, to string, mm unit.Millimetre) model.Branch {
	mm = unit.Millimetre(math.Round(float64(mm)*10) / 10)
	if mm > 0 {
		return model.Branch{ID: id, From: from, To: to, LengthMM: mm}
	}
	im.unknown++
	return model.Branch{ID: id, Name: model.Some(notGiven), From: from, To: to, LengthMM: standIn}
}

// lengths is the longest length that the list gives between two terminations, by
// their indices. What differs by more than a tenth is said.
func (im *importer) lengths() map[[2]int]unit.Millimetre {
	const alike = 0.1 // of the longer: tails and loops (no source)
	all := map[[2]int]unit.Millimetre{}
	least := map[[2]int]unit.Millimetre{}
	at := map[[2]int]Place{}
	for _, it := range im.items {
		if !it.length.Set || it.from.term == nil || it.to.term == nil || it.from.term == it.to.term {
			continue
		}
		k := [2]int{min(it.from.term.index, it.to.term.index), max(it.from.term.index, it.to.term.index)}
		if _, known := least[k]; !known {
			least[k] = it.length.V
		}
		all[k] = max(all[k], it.length.V)
		least[k] = min(least[k], it.length.V)
		at[k] = it.place
	}
	for _, k := range slices.SortedFunc(maps.Keys(all), func(a, b [2]int) int { return slices.Compare(a[:], b[:]) }) {
		mm := all[k]
		if least[k] < mm*(1-alike) {
			im.say(Warn, "two lengths between the same ends", at[k],
				fmt.Sprintf("%s to %s %s and %s", im.terms[k[0]].ID, im.terms[k[1]].ID, mmText(least[k]), mmText(mm)), "the longest is taken")
		}
	}
	return all
}

// mmText is a length to 0.1 mm, for a message.
func mmText(mm unit.Millimetre) string {
	return FormatLength(unit.Millimetre(math.Round(float64(mm)*10) / 10))
}

// hub is the termination with wires to most others, of two the one with more lengths,
// then the first.
func (im *importer) hub(lengths map[[2]int]unit.Millimetre) int {
	partners := make([]map[int]bool, len(im.terms))
	for i := range partners {
		partners[i] = map[int]bool{}
	}
	given := make([]int, len(im.terms))
	for _, it := range im.items {
		if it.from.term != nil && it.to.term != nil {
			a, b := it.from.term.index, it.to.term.index
			partners[a][b], partners[b][a] = true, true
		}
	}
	for k := range lengths {
		given[k[0]]++
		given[k[1]]++
	}
	best := 0
	for i := range im.terms {
		if len(partners[i]) > len(partners[best]) || len(partners[i]) == len(partners[best]) && given[i] > given[best] {
			best = i
		}
	}
	return best
}

// told keeps the lengths of the list that the branches do not give.
func (im *importer) told() {
	x := model.NewIndex(&im.h)
	sums := map[[2]string]unit.Millimetre{} // −1: no way
	sum := func(w *model.Wire) unit.Millimetre {
		from, to, ok := x.Places(w)
		if !ok {
			return -1
		}
		if s, known := sums[[2]string{from, to}]; known {
			return s
		}
		s := unit.Millimetre(-1)
		if path, way := x.Between(from, to); way {
			s = 0
			for _, b := range path {
				s += im.h.Branches[b].LengthMM
			}
		}
		sums[[2]string{from, to}] = s
		return s
	}
	for _, it := range im.items {
		if !it.length.Set {
			continue
		}
		if s := sum(&im.h.Wires[it.wire]); s < 0 || math.Abs(float64(s-it.length.V)) > 1 {
			w := &im.h.Wires[it.wire]
			w.Note = model.Some(strings.TrimPrefix(w.Note.V+"; length in the list: "+mmText(it.length.V), "; "))
		}
	}
}
