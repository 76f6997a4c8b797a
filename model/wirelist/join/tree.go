package join

import (
	"cmp"
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/unit"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/value"
)

// Terminations puts the terminations into the harness. One without an insert of the
// catalogue lists its own cavities: those of a pin table in its order, else sorted.
func Terminations(im *draft.Importer) {
	for _, t := range im.Terms {
		for _, p := range t.Pins {
			if t.State[p] == name.Reserved {
				t.Reserved = append(t.Reserved, p)
			}
		}
		if !t.Insert.Set {
			t.Cavities = slices.Clone(t.Pins)
			if !t.Titled {
				slices.SortFunc(t.Cavities, name.CompareCavities)
			}
		}
		im.H.Terminations = append(im.H.Terminations, t.Termination)
	}
}

// Tree makes the branches. No list says where the bundle parts, so: between two
// terminations one branch; between more, or with splices, a star. The legs take the
// lengths that the list gives from the termination with most partners, less the
// stand-in of its own leg, so that each way is as long as the list says. What is not
// known is the stand-in and its name says so.
func Tree(im *draft.Importer) {
	n := len(im.Terms)
	if n < 2 && len(im.H.Splices) == 0 {
		return
	}
	lengths := Lengths(im)
	if n == 2 && len(im.H.Splices) == 0 {
		mm := lengths[[2]int{0, 1}]
		im.H.Branches = []model.Branch{Branch(im, "T1", im.Terms[0].ID, im.Terms[1].ID, mm)}
		Told(im)
		return
	}
	hub := Hub(im, lengths)
	j := "J1"
	if slices.ContainsFunc(im.Terms, func(t *draft.Term) bool { return t.ID[0] == 'J' && name.IsDesignator(t.ID) }) {
		j = "BO1" // a J among connectors called J would be taken for one of them
	}
	for k := 2; im.Taken(j); k++ {
		j = fmt.Sprintf("BO%d", k)
	}
	im.H.Breakouts = []model.Breakout{{ID: j, Build: model.Some(model.ClosureTaped)}}
	for i := range im.H.Splices {
		im.H.Splices[i].At = j
	}
	leg := 0
	for i, t := range im.Terms {
		if i == hub {
			im.H.Branches = append(im.H.Branches, Branch(im, "T1", t.ID, j, 0))
			continue
		}
		mm := lengths[[2]int{min(i, hub), max(i, hub)}]
		leg++
		im.H.Branches = append(im.H.Branches, Branch(im, fmt.Sprintf("L%d", leg), j, t.ID, mm-standIn))
	}
	slices.SortStableFunc(im.H.Branches, func(a, b model.Branch) int { // the trunk first
		return cmp.Compare(b.ID[:1], a.ID[:1])
	})
	Told(im)
}

// standIn is the length of a branch whose length the list does not give: the file
// needs one, and nobody takes this for real.
const standIn unit.Millimetre = 1

// notGiven is the name of a branch whose length stands for one that the list does not give.
const notGiven = "length not in the list"

// Branch is one branch; a length of no use is the stand-in.
func Branch(im *draft.Importer, id, from, to string, mm unit.Millimetre) model.Branch {
	mm = unit.Millimetre(math.Round(float64(mm)*10) / 10)
	if mm > 0 {
		return model.Branch{ID: id, From: from, To: to, LengthMM: mm}
	}
	im.Unknown++
	return model.Branch{ID: id, Name: model.Some(notGiven), From: from, To: to, LengthMM: standIn}
}

// Lengths is the longest length that the list gives between two terminations, by
// their indices. What differs by more than a tenth is said.
func Lengths(im *draft.Importer) map[[2]int]unit.Millimetre {
	const alike = 0.1 // of the longer: tails and loops (no source)
	all := map[[2]int]unit.Millimetre{}
	least := map[[2]int]unit.Millimetre{}
	at := map[[2]int]value.Place{}
	for _, it := range im.Items {
		if !it.Length.Set || it.From.Term == nil || it.To.Term == nil || it.From.Term == it.To.Term {
			continue
		}
		k := [2]int{min(it.From.Term.Index, it.To.Term.Index), max(it.From.Term.Index, it.To.Term.Index)}
		if _, known := least[k]; !known {
			least[k] = it.Length.V
		}
		all[k] = max(all[k], it.Length.V)
		least[k] = min(least[k], it.Length.V)
		at[k] = it.Place
	}
	for _, k := range slices.SortedFunc(maps.Keys(all), func(a, b [2]int) int { return slices.Compare(a[:], b[:]) }) {
		mm := all[k]
		if least[k] < mm*(1-alike) {
			im.Say(report.Warn, "two lengths between the same ends", at[k],
				fmt.Sprintf("%s to %s %s and %s", im.Terms[k[0]].ID, im.Terms[k[1]].ID, value.MmText(least[k]), value.MmText(mm)),
				"the longest is taken")
		}
	}
	return all
}

// Hub is the termination with wires to most others, of two the one with more lengths,
// then the first.
func Hub(im *draft.Importer, lengths map[[2]int]unit.Millimetre) int {
	partners := make([]map[int]bool, len(im.Terms))
	for i := range partners {
		partners[i] = map[int]bool{}
	}
	given := make([]int, len(im.Terms))
	for _, it := range im.Items {
		if it.From.Term != nil && it.To.Term != nil {
			a, b := it.From.Term.Index, it.To.Term.Index
			partners[a][b], partners[b][a] = true, true
		}
	}
	for k := range lengths {
		given[k[0]]++
		given[k[1]]++
	}
	best := 0
	for i := range im.Terms {
		if len(partners[i]) > len(partners[best]) || len(partners[i]) == len(partners[best]) && given[i] > given[best] {
			best = i
		}
	}
	return best
}

// Told keeps the lengths of the list that the branches do not give.
func Told(im *draft.Importer) {
	x := model.NewIndex(&im.H)
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
				s += im.H.Branches[b].LengthMM
			}
		}
		sums[[2]string{from, to}] = s
		return s
	}
	for _, it := range im.Items {
		if !it.Length.Set {
			continue
		}
		if s := sum(&im.H.Wires[it.Wire]); s < 0 || math.Abs(float64(s-it.Length.V)) > 1 {
			w := &im.H.Wires[it.Wire]
			w.Note = model.Some(strings.TrimPrefix(w.Note.V+"; length in the list: "+value.MmText(it.Length.V), "; "))
		}
	}
}
