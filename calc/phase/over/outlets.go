package over

import (
	"cmp"
	"slices"

	"contralay/calc/formula/cover"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// A transition has an outlet for each branch that meets at its breakout. The first is the
// trunk's, which is the branch that the tree comes by; the others are matched with the
// branches that go on by size, for the hand that threads them tries no other way.

// chooseOutlets gives every branch at a known transition its outlet: so that as few as
// possible are refused, then that as few as possible are filled past what is advised, then
// the largest for the largest: the sum of the squares of what is left round the branches is
// least then. The order of the file has no say.
func chooseOutlets(s *sheet.Sheet) {
	if s.Reuse.All && !slices.Contains(s.Reuse.Branches, false) {
		return
	}
	parts := map[string]catalogue.Transition{}
	for j := range s.H.Breakouts {
		if part, ok := s.Cat.Transition(s.H.Breakouts[j].Transition.V); ok && len(part.Outlets) > 0 {
			parts[s.H.Breakouts[j].ID] = part
		}
	}
	for i := range s.Branches {
		s.Branches[i].Outlets = [2]model.Opt[int]{}
	}
	if len(parts) == 0 {
		return
	}
	next := map[string][]wires.Walk{}
	first := map[string]int{} // the first outlet that is free: 1 where the tree comes by a trunk
	for _, k := range wires.Walked(s) {
		if part, ok := parts[k.To]; ok {
			first[k.To] = min(1, len(part.Outlets)-1)
			s.Branches[k.Branch].Outlets[endAt(s, k.Branch, k.To)] = model.Some(0)
		}
		if _, ok := parts[k.From]; ok {
			next[k.From] = append(next[k.From], k)
		}
	}
	for place, ways := range next {
		slices.SortFunc(ways, func(a, b wires.Walk) int { return cmp.Compare(s.H.Branches[a.Branch].ID, s.H.Branches[b.Branch].ID) })
		outlets := parts[place].Outlets
		var free []int
		for n := first[place]; n < len(outlets); n++ {
			free = append(free, n)
		}
		slices.SortStableFunc(free, func(a, b int) int { // of equals, whichever the part lists first
			x, y := outlets[a], outlets[b]
			return cmp.Or(cmp.Compare(y.ExpandedMM, x.ExpandedMM), cmp.Compare(y.RecoveredMM, x.RecoveredMM),
				cmp.Compare(y.PortMM, x.PortMM))
		})
		cost := make([][]cover.Cost, len(ways))
		for n, k := range ways {
			cost[n] = outletCosts(s, k, outlets, free)
		}
		for n, o := range cover.Assign(cost) {
			if o < 0 {
				o = 0 // a branch too many, which is said of the transition
			}
			s.Branches[ways[n].Branch].Outlets[endAt(s, ways[n].Branch, place)] = model.Some(free[o])
		}
	}
}

// endAt is which end of a branch lies at a place: 0 its from, 1 its to.
func endAt(s *sheet.Sheet, i int, place string) int {
	if s.H.Branches[i].From == place {
		return 0
	}
	return 1
}

// outletCosts is what each free outlet costs for a branch. How far the branch's covers reach
// into an outlet hangs on the depth of its port, so they are laid for each depth, and what
// is found and said of them then is put back.
func outletCosts(s *sheet.Sheet, k wires.Walk, outlets []catalogue.Outlet, free []int) []cover.Cost {
	out := &s.Branches[k.Branch]
	costs := make([]cover.Cost, len(free))
	if out.OverMM <= 0 {
		return costs
	}
	sheath, covers, mark, end := out.Sheath, out.Covers, len(s.Snags), endAt(s, k.Branch, k.From)
	laid := map[unit.Millimetre]OutletFit{}
	for n, at := range free {
		o := outlets[at]
		fit, ok := laid[o.PortMM]
		if !ok {
			out.Outlets[end] = model.Some(at)
			out.Sheath, out.Covers = sheet.Sheath{}, nil
			stack(s, k.Branch)
			fit = FitOutlet(s, k.Branch, k.From, o)
			fit.PassMM, _ = Tails(s, k)
			laid[o.PortMM] = fit
		}
		spare := float64(o.ExpandedMM - fit.PassMM)
		costs[n][2] = spare * spare
		if fit.PassMM > o.ExpandedMM || fit.LeastMM < o.RecoveredMM {
			costs[n][0] = 1
		}
		if fit.MostMM > cover.MaxStretch*o.ExpandedMM {
			costs[n][1] = 1
		}
	}
	s.Unsay(mark)
	out.Outlets[end] = model.Opt[int]{}
	out.Sheath, out.Covers = sheath, covers
	return costs
}

// OutletFit is what an outlet ends up on.
type OutletFit struct {
	PassMM  unit.Millimetre // the largest thing it gets over on the way, at its largest
	MostMM  unit.Millimetre // what lies under it, where it is thickest
	LeastMM unit.Millimetre // what holds it, with every wire at its smallest
}

// FitOutlet is what an outlet ends up on, on a branch at a place.
func FitOutlet(s *sheet.Sheet, i int, place string, o catalogue.Outlet) OutletFit {
	most, held := OverFrom(s, i, place, ShortestPart*o.PortMM-cover.OverlapMM, o.PortMM)
	thinner, _ := tolerance(&s.Branches[i])
	return OutletFit{MostMM: most, LeastMM: held - thinner}
}

// Tails is the largest thing an outlet must get over on a branch: its sheath, or its
// bare wires gathered where they part again.
func Tails(s *sheet.Sheet, k wires.Walk) (unit.Millimetre, string) {
	b := &s.Branches[k.Branch]
	id := s.H.Branches[k.Branch].ID
	d, over := b.OverMaxMM, id+" bare"
	if covered := passedBy(s, k); covered > d {
		d, over = covered, id+" in its sheath"
	}
	if _, ok := s.Index.Breakout[k.To]; ok {
		if lump := max(b.OverMM, b.OverMaxMM) * unit.Millimetre(s.Limits.ZoneLump); lump > d {
			d, over = lump, "the bare tails gathered at "+k.To
		}
	}
	return d, over
}

// passedBy is the diameter of a branch over what is on it when the transition it is walked
// from comes, at its largest, a splice on it included: all but what goes on after that.
func passedBy(s *sheet.Sheet, k wires.Walk) unit.Millimetre {
	b := &s.Branches[k.Branch]
	d := max(b.OverMM, b.Sheath.Verdict.OverMM) // 0 where there is no sheath, or its wall is not known
	for _, c := range b.Covers {
		if c.Under || Reaches(s, k, c) {
			d = max(d, c.OverMM)
		}
	}
	stands := unit.Millimetre(0)
	for _, g := range Bulges(s, k.Branch) {
		stands = max(stands, g.Mm)
	}
	_, thicker := tolerance(b)
	return d + thicker + stands
}

// tolerance is how much thinner a branch is with every wire at its smallest, and thicker with every wire at its largest.
func tolerance(b *sheet.Branch) (thinner, thicker unit.Millimetre) {
	if b.OverMinMM > 0 {
		thinner = max(0, b.OverMM-b.OverMinMM)
	}
	return thinner, max(0, b.OverMaxMM-b.OverMM)
}

// Reaches reports whether a cover lies under the transition that its branch is walked from.
func Reaches(s *sheet.Sheet, k wires.Walk, c sheet.Covered) bool {
	o, ok := OutletAt(s, k.Branch, k.From)
	if !ok {
		return false
	}
	if endAt(s, k.Branch, k.From) == 0 {
		return c.FromMM < o.PortMM
	}
	return c.ToMM > s.H.Branches[k.Branch].LengthMM-o.PortMM
}

// OutletAt is the outlet of the transition at a place that a branch goes into.
func OutletAt(s *sheet.Sheet, i int, place string) (catalogue.Outlet, bool) {
	j, ok := s.Index.Breakout[place]
	if !ok {
		return catalogue.Outlet{}, false
	}
	part, ok := s.Cat.Transition(s.H.Breakouts[j].Transition.V)
	if n := s.Branches[i].Outlets[endAt(s, i, place)]; ok && n.Set && n.V < len(part.Outlets) {
		return part.Outlets[n.V], true
	}
	return catalogue.Outlet{}, false
}
