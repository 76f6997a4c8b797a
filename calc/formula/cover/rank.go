package cover

import (
	"cmp"
	"slices"

	"contralay/model/unit"
)

// Candidate is a sleeve that could be taken, judged in its place.
type Candidate struct {
	Tube      Tube
	Verdict   Verdict
	GramPerM  unit.GramPerMetre // see Mass
	MassKnown bool              // false: it ranks behind its equals
}

// Candidates judges every tube for one place; entry i belongs to tubes[i]. A
// tube that cannot be judged counts as one that stops in both ways.
func Candidates(tubes []Tube, b Bundle, p Pass, length unit.Millimetre) []Candidate {
	cs := make([]Candidate, len(tubes))
	for i, t := range tubes {
		v, ok := Judge(t, b, p, length)
		if !ok {
			v = Verdict{StopSlide: true, StopLoose: true}
		}
		m, known := Mass(t)
		cs[i] = Candidate{t, v, m, known}
	}
	return cs
}

// Rank returns positions in cs, best first: those without a stop, then those that
// do not stick, then those that keep more of the three pieces of advice, then the
// lightest, then the smaller supplied bore, then as given. cs is left as it is.
//
// A guide also says to take the larger of two sizes that fit; here the lighter
// one wins, and the one that slides better is the next in the list.
func Rank(cs []Candidate) []int {
	order := make([]int, len(cs))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(i, j int) int {
		a, b := cs[i], cs[j]
		return cmp.Or(
			first(!a.Verdict.Stops(), !b.Verdict.Stops()),
			first(!a.Verdict.Sticks || a.Verdict.Stops(), !b.Verdict.Sticks || b.Verdict.Stops()),
			cmp.Compare(b.Verdict.Kept(), a.Verdict.Kept()),
			first(a.MassKnown, b.MassKnown),
			cmp.Compare(a.GramPerM, b.GramPerM),
			cmp.Compare(a.Tube.SuppliedMM, b.Tube.SuppliedMM),
		)
	})
	return order
}

// first puts the one that is true before the one that is not.
func first(a, b bool) int {
	switch {
	case a == b:
		return 0
	case a:
		return -1
	}
	return 1
}
