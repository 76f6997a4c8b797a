package join

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/unit"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// lengthsBetween is the longest length that the list gives between two terminations, by
// their indices. What differs by more than a tenth is said.
func lengthsBetween(im *draft.Importer) map[[2]int]unit.Millimetre {
	const alike = 0.1 // of the longer: tails and loops (no source)
	all := map[[2]int]unit.Millimetre{}
	least := map[[2]int]unit.Millimetre{}
	at := map[[2]int]table.Place{}
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

// lengthsInNotes keeps the lengths of the list that the branches do not give.
func lengthsInNotes(im *draft.Importer) {
	if !slices.ContainsFunc(im.Items, func(it *draft.Item) bool { return it.Length.Set }) {
		return
	}
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
