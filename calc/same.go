package calc

import (
	"reflect"
	"slices"

	"contralay/calc/sheet"
	"contralay/model"
)

// What a prior sheet still knows. An edit shares with the harness before it whatever it
// did not change, so most of what two sheets have in common is told by comparing where
// lists lie in memory; wires and branches are compared one by one. What is the same is
// taken over with what was said about it, and a key costs what it changed.

// Compare finds what a harness shares with that of the prior sheet; wires' ways and
// heat are not looked at.
func Compare(s *sheet.Sheet, prior *sheet.Sheet) {
	if prior == nil {
		return
	}
	a, b := prior.H, s.H
	m := &s.Same
	m.Prior = prior
	m.Places = prior.Cat == s.Cat && reflect.DeepEqual(a.Rules, b.Rules) && a.Head.Use == b.Head.Use && sheet.Shares(a.Reels, b.Reels) &&
		sheet.Shares(a.Terminations, b.Terminations) &&
		sheet.Shares(a.Breakouts, b.Breakouts) && sheet.Shares(a.Splices, b.Splices) && sheet.Shares(a.Units, b.Units) &&
		slices.EqualFunc(a.Branches, b.Branches, func(x, y model.Branch) bool { return x.ID == y.ID && x.From == y.From && x.To == y.To })
	if !m.Places || len(a.Wires) != len(b.Wires) {
		return
	}
	m.Ids, m.All = true, true
	m.Wires = make([]bool, len(b.Wires))
	for k := range b.Wires {
		x, y := &a.Wires[k], &b.Wires[k]
		m.Ids = m.Ids && x.ID == y.ID
		m.Wires[k] = x.ID == y.ID && x.From == y.From && x.To == y.To && x.Spec == y.Spec && x.Size == y.Size && x.Colour == y.Colour &&
			x.Role == y.Role && x.CappedAt == y.CappedAt && x.FoldMM == y.FoldMM
		m.All = m.All && m.Wires[k]
	}
	if !m.Ids {
		m.All = false
		return
	}
	m.Planned = reflect.ValueOf(prior.LaidBy).Pointer() == reflect.ValueOf(s.Proposals).Pointer()
}

// CompareBranches is compare for branches, once the wires have their ways.
func CompareBranches(s *sheet.Sheet) {
	m := &s.Same
	if !m.Ids {
		return
	}
	m.Branches = make([]bool, len(s.H.Branches))
	for i := range m.Branches {
		m.Branches[i] = sameBranch(&m.Prior.H.Branches[i], &s.H.Branches[i])
	}
	for k, ok := range m.Wires {
		if ok {
			continue
		}
		for _, b := range slices.Concat(s.Wires[k].Path, m.Prior.Wires[k].Path) {
			m.Branches[b] = false
		}
		id, unit := s.H.Wires[k].ID, "" // a layer may hold what does not run there
		if u, in := s.X.UnitOf[id]; in {
			unit = s.H.Units[u].ID
			for _, other := range s.H.Units[u].Wires { // its diameter and twist are theirs
				if j, ok := s.X.Wire[other]; ok {
					for _, b := range slices.Concat(s.Wires[j].Path, m.Prior.Wires[j].Path) {
						m.Branches[b] = false
					}
				}
			}
		}
		for i := range m.Branches {
			m.Branches[i] = m.Branches[i] && !slices.ContainsFunc(s.H.Branches[i].Layers, func(l model.Layer) bool {
				return slices.Contains(l.Of, id) || unit != "" && slices.Contains(l.Of, unit)
			})
		}
	}
	for i := range m.Branches { // what is proposed hangs on free cavities and colours anywhere
		if m.Prior.Branches[i].Proposed && (!m.All || !m.Planned) {
			m.Branches[i] = false
		}
	}
}

// sameBranch reports whether a branch is given as before.
func sameBranch(a, b *model.Branch) bool {
	if !sheet.Shares(a.Layers, b.Layers) || !sheet.Shares(a.Covers, b.Covers) || !sheet.Shares(a.Environment, b.Environment) ||
		(a.Layers == nil) != (b.Layers == nil) || (a.Covers == nil) != (b.Covers == nil) {
		return false
	}
	return a.ID == b.ID && a.LengthMM == b.LengthMM && a.BendMM == b.BendMM && a.BendDeg == b.BendDeg && a.Supported == b.Supported &&
		a.AmbientC == b.AmbientC &&
		a.Make == b.Make && a.Outer == b.Outer && a.LeaversOut == b.LeaversOut && a.UnitsIn == b.UnitsIn && a.DataApart == b.DataApart
}

// Index is that of the harness: the prior's under this harness where every id and the
// tree are the same.
func Index(s *sheet.Sheet) *model.Index {
	if s.Same.Ids && sheet.Shares(s.Same.Prior.H.Feeds, s.H.Feeds) {
		x := *s.Same.Prior.X
		x.H = s.H
		return &x
	}
	return model.NewIndex(s.H)
}
