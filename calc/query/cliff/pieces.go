package cliff

import (
	"fmt"
	"slices"

	"contralay/calc/formula/plan"
	"contralay/calc/query/offer"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// OfPieces asks about the commonest size of a planning question that no harness holds yet. ask is
// the question and pieces what it is of; its spares and its effort do not count: each count is
// answered at once, without spares. ok is false where there are no pieces.
func OfPieces(ask plan.Ask, pieces []offer.Piece, rules model.Rules, cat *catalogue.Catalogue) (a Ask, ok bool) {
	count := map[unit.Millimetre]int{}
	d, all := unit.Millimetre(0), 0
	for _, z := range pieces {
		count[z.OverMM] += z.N
		all += z.N
	}
	for z, n := range count {
		if n > count[d] || n == count[d] && z < d {
			d = z
		}
	}
	if d <= 0 {
		return Ask{}, false
	}
	at := slices.IndexFunc(pieces, func(z offer.Piece) bool { return z.OverMM == d })
	a = Ask{What: Wires, Size: pieces[at].Size, D: d, Now: count[d]}
	if a.Size == "" {
		a.Size = fmt.Sprintf("%g mm", float64(d))
	}
	held := boolInt(all == count[d])
	for _, h := range ask.Held {
		for _, z := range h.Sizes {
			if z.D == d {
				held = max(held, z.N)
			}
		}
	}
	a.Least, a.Most = max(held, a.Now-Reach), a.Now+Reach
	ask.Spares, ask.Effort = 0, 0
	a.at = func(n int) Point {
		q, of := ask, slices.Clone(pieces)
		q.Sizes = nil
		by := n - a.Now
		for k := len(of) - 1; k >= 0; k-- {
			if of[k].OverMM == d { // the last gives what is taken out, then those before it
				to := max(0, of[k].N+by)
				by, of[k].N = by-(to-of[k].N), to
			}
		}
		of = slices.DeleteFunc(of, func(z offer.Piece) bool { return z.N == 0 })
		for _, z := range of {
			q.Sizes = append(q.Sizes, plan.Size{D: z.OverMM, N: z.N})
		}
		all := plan.Make(q)
		if len(all) == 0 {
			return Point{N: n}
		}
		b, ok := offer.Planned(all[0], of, rules, cat)
		if !ok {
			return Point{N: n}
		}
		return planned(n, *b, all[0], d)
	}
	return a, true
}

// planned is the point of a plan: its OD is the plan's own.
func planned(n int, b sheet.Branch, p plan.Plan, d unit.Millimetre) Point {
	out := pointOf(n, b, p.Relaxed, d)
	out.OverMM = p.Over
	return out
}
