package calc

import (
	"reflect"
	"slices"

	"contralay/model"
)

// What a prior sheet still knows. An edit shares with the harness before it whatever it
// did not change, so most of what two sheets have in common is told by comparing where
// lists lie in memory; wires and branches are compared one by one. What is the same is
// taken over with what was said about it, and a key costs what it changed.

// same is what a sheet has in common with the one before it.
type same struct {
	prior    *Sheet
	places   bool   // rules, reels, catalogue, terminations, breakouts, splices, units, and the tree of branches
	ids      bool   // and the wires are those of before, in their order
	all      bool   // and none of them lies otherwise
	wires    []bool // each lies as before: ends, size, colour, role
	branches []bool // each is as before, and so is every wire that runs through it
	planned  bool   // the proposals are those of before
}

// compare finds what a harness shares with that of the prior sheet; wires' ways and
// heat are not looked at.
func (s *Sheet) compare(prior *Sheet) {
	if prior == nil {
		return
	}
	a, b := prior.H, s.H
	m := &s.same
	m.prior = prior
	m.places = prior.Cat == s.Cat && reflect.DeepEqual(a.Rules, b.Rules) && a.Head.Use == b.Head.Use && shares(a.Reels, b.Reels) && shares(a.Terminations, b.Terminations) &&
		shares(a.Breakouts, b.Breakouts) && shares(a.Splices, b.Splices) && shares(a.Units, b.Units) &&
		slices.EqualFunc(a.Branches, b.Branches, func(x, y model.Branch) bool { return x.ID == y.ID && x.From == y.From && x.To == y.To })
	if !m.places || len(a.Wires) != len(b.Wires) {
		return
	}
	m.ids, m.all = true, true
	m.wires = make([]bool, len(b.Wires))
	for k := range b.Wires {
		x, y := &a.Wires[k], &b.Wires[k]
		m.ids = m.ids && x.ID == y.ID
		m.wires[k] = x.ID == y.ID && x.From == y.From && x.To == y.To && x.Spec == y.Spec && x.Size == y.Size && x.Colour == y.Colour && x.Role == y.Role && x.CappedAt == y.CappedAt && x.FoldMM == y.FoldMM
		m.all = m.all && m.wires[k]
	}
	if !m.ids {
		m.all = false
		return
	}
	m.planned = reflect.ValueOf(prior.laidBy).Pointer() == reflect.ValueOf(s.Proposals).Pointer()
}

// compareBranches is compare for branches, once the wires have their ways.
func (s *Sheet) compareBranches() {
	m := &s.same
	if !m.ids {
		return
	}
	m.branches = make([]bool, len(s.H.Branches))
	for i := range m.branches {
		m.branches[i] = sameBranch(&m.prior.H.Branches[i], &s.H.Branches[i])
	}
	for k, ok := range m.wires {
		if ok {
			continue
		}
		for _, b := range slices.Concat(s.Wires[k].Path, m.prior.Wires[k].Path) {
			m.branches[b] = false
		}
		id, unit := s.H.Wires[k].ID, "" // a layer may hold what does not run there
		if u, in := s.X.UnitOf[id]; in {
			unit = s.H.Units[u].ID
			for _, other := range s.H.Units[u].Wires { // its diameter and twist are theirs
				if j, ok := s.X.Wire[other]; ok {
					for _, b := range slices.Concat(s.Wires[j].Path, m.prior.Wires[j].Path) {
						m.branches[b] = false
					}
				}
			}
		}
		for i := range m.branches {
			m.branches[i] = m.branches[i] && !slices.ContainsFunc(s.H.Branches[i].Layers, func(l model.Layer) bool {
				return slices.Contains(l.Of, id) || unit != "" && slices.Contains(l.Of, unit)
			})
		}
	}
	for i := range m.branches { // what is proposed hangs on free cavities and colours anywhere
		if m.prior.Branches[i].Proposed && (!m.all || !m.planned) {
			m.branches[i] = false
		}
	}
}

// shares reports whether two lists are one.
func shares[T any](a, b []T) bool {
	return len(a) == len(b) && (len(a) == 0 || &a[0] == &b[0])
}

// sameBranch reports whether a branch is given as before.
func sameBranch(a, b *model.Branch) bool {
	if !shares(a.Layers, b.Layers) || !shares(a.Covers, b.Covers) || !shares(a.Environment, b.Environment) || (a.Layers == nil) != (b.Layers == nil) || (a.Covers == nil) != (b.Covers == nil) {
		return false
	}
	return a.ID == b.ID && a.LengthMM == b.LengthMM && a.BendMM == b.BendMM && a.BendDeg == b.BendDeg && a.Supported == b.Supported && a.AmbientC == b.AmbientC &&
		a.Make == b.Make && a.Outer == b.Outer && a.LeaversOut == b.LeaversOut && a.UnitsIn == b.UnitsIn && a.DataApart == b.DataApart
}

// branch reports whether branch i is as in the prior sheet.
func (m *same) branch(i int) bool { return m.branches != nil && m.branches[i] }

// wire reports whether wire k lies as in the prior sheet.
func (m *same) wire(k int) bool { return m.ids && m.wires[k] }

// index is that of the harness: the prior's under this harness where every id and the
// tree are the same.
func (s *Sheet) index() *model.Index {
	if s.same.ids && shares(s.same.prior.H.Feeds, s.H.Feeds) {
		x := *s.same.prior.X
		x.H = s.H
		return &x
	}
	return model.NewIndex(s.H)
}

// kept takes over what was said of a part of the prior sheet.
func (s *Sheet) kept(said []Snag) { s.Snags = append(s.Snags, said...) }

// since is what was said from a mark on, to be kept.
func (s *Sheet) since(mark int) []Snag {
	if mark == len(s.Snags) {
		return nil
	}
	return slices.Clone(s.Snags[mark:])
}
