package planning

import (
	"slices"

	"contralay/calc/formula/plan"
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Where a branch forks, a layer whose components go on into one branch can be laid through; one
// that parts is sorted by hand. So of the lay-ups of one diameter those that part no layer are
// preferred: what runs through lies inside, what leaves lies outside it, or the other way round.

// parted is how many layers part at the far end of a branch: some of their components go on into
// one branch and some into another, or end there.
func parted(layers []model.Layer, r bundle.Ranks) int {
	n := 0
	for _, l := range layers {
		if slices.ContainsFunc(l.Of, func(id string) bool { return r.Next[id] != r.Next[l.Of[0]] }) {
			n++
		}
	}
	return n
}

// nexts are the branches that components go on into at the far end, in the order they are met.
func nexts(ids []string, r bundle.Ranks) []int {
	var out []int
	for _, id := range ids {
		if !slices.Contains(out, r.Next[id]) {
			out = append(out, r.Next[id])
		}
	}
	return out
}

// mostTries bounds the search for layers that stay whole: nobody waits for the last of them.
const mostTries = 20_000

// whole deals components out so that every layer goes on into one branch, with the fewest
// buried; false where the layers of the plan cannot be dealt so.
func whole(s *sheet.Sheet, i int, p plan.Plan, ids []string, r bundle.Ranks, held []bundle.Holding) (out []model.Layer, spareIn []int,
	ok bool) {
	type kind struct {
		next int
		d    unit.Millimetre
	}
	fixed, left := map[int][]string{}, map[kind]int{}
	all := slices.Clone(ids) // a branch may have nothing but what is held
	for _, h := range held {
		fixed[h.Layer], all = h.Ids, append(all, h.Ids...)
	}
	for _, id := range ids {
		left[kind{r.Next[id], s.Dia(id).Nominal}]++
	}
	// What each layer takes, less what is held in it.
	want := make([]map[unit.Millimetre]int, len(p.Layers))
	for k, l := range p.Layers {
		want[k] = map[unit.Millimetre]int{}
		for z, d := range l.Sizes {
			want[k][d] = l.N[z]
		}
		for _, id := range fixed[k] {
			want[k][s.Dia(id).Nominal]--
			if r.Next[id] != r.Next[fixed[k][0]] {
				return nil, nil, false
			}
		}
	}
	branches, from := nexts(all, r), make([]int, len(p.Layers))
	tries, least := 0, -1
	var lay func(k, spares int)
	lay = func(k, spares int) {
		if tries++; tries > mostTries || least == 0 {
			return
		}
		if k == len(p.Layers) { // a plan has a place for each of them and for its spares, so none is left
			tries += mostTries / 100 // dealing out is what takes the time
			try, in := deal(s, i, p, ids, r, held, from)
			if n := buriedIn(try, r); least < 0 || n < least {
				out, spareIn, least = try, in, n
			}
			return
		}
		for _, b := range branches {
			if len(fixed[k]) > 0 && r.Next[fixed[k][0]] != b {
				continue
			}
			short := 0
			for d, n := range want[k] {
				short += max(0, n-left[kind{b, d}])
			}
			if short > spares { // only a new spare may take the place of what is missing
				continue
			}
			was := map[unit.Millimetre]int{}
			for d, n := range want[k] {
				was[d] = min(n, left[kind{b, d}])
				left[kind{b, d}] -= was[d]
			}
			from[k] = b
			lay(k+1, spares-short)
			for d, n := range was {
				left[kind{b, d}] += n
			}
		}
	}
	lay(0, p.Spares)
	return out, spareIn, least >= 0
}

// price adds up what each option costs: its plan, what is buried in it, and the layers that part
// where an option of the same diameter parts none.
func price(options []sheet.Option, weight unit.Millimetre) {
	kept := map[unit.Millimetre]bool{}
	for _, o := range options {
		if o.Parted == 0 && o.Plan.Relaxed == plan.Keeps {
			kept[over(o)] = true
		}
	}
	for k := range options {
		o := &options[k]
		n := o.Buried
		if kept[over(*o)] {
			n += o.Parted
		}
		o.Cost = o.Plan.Cost + unit.Ratio(float64(weight)*float64(n))
	}
}
