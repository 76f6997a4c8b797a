package whatif

import (
	"slices"

	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// core is another centre.
type core planning.Core

var coreSays = []string{"", "one", "two", "three", "four", "five"}

func (c core) says() string {
	switch c.Kind {
	case planning.EqualCore:
		return coreSays[c.N]
	case planning.UnitCore:
		return "units"
	case planning.MixedCore:
		return "mixed"
	}
	return "built up"
}

// layups is the lay-ups that were worked out for the branch, without those that lay new spares in.
func layups(*sheet.Sheet, int) []Kind { return nil }

// centres is the centres that could be: of a branch that is laid and whose centre is not locked.
func centres(s *sheet.Sheet, i int) []Kind {
	b := &s.Branches[i]
	if b.Make != model.MakeLaid || b.As[0].Locked.V {
		return nil
	}
	count := map[unit.Millimetre]int{}
	for _, id := range b.Components {
		count[s.Dia(id).Nominal]++
	}
	pinned := b.As[0].Pinned
	fits := func(n int) bool { // some size has so many, those pinned among them
		for d, have := range count {
			if have >= n && n >= len(pinned) && !slices.ContainsFunc(pinned, func(id string) bool { return s.Dia(id).Nominal != d }) {
				return true
			}
		}
		return false
	}
	k := Kind{ID: "centre", Name: "centre", Now: -1}
	put := func(c core, can bool) {
		if c.present(s, i) {
			k.Now = len(k.Values)
		} else if !can {
			return
		}
		k.Values = append(k.Values, Value{Key: c.says(), Says: c.says(), change: c})
	}
	for n := 1; n <= 5; n++ {
		put(core{Kind: planning.EqualCore, N: n}, n < len(b.Components) && fits(n))
	}
	units := planning.CentreUnits(s, i)
	put(core{Kind: planning.UnitCore}, len(units) > 0 && !slices.ContainsFunc(pinned, func(id string) bool { return !isUnit(s, id) }))
	put(core{Kind: planning.MixedCore}, len(count) > 1 && len(pinned) <= 3 && len(b.Components) > 2)
	put(core{Kind: planning.BuiltCore}, len(pinned) <= 1 && len(b.Components) > 7)
	return []Kind{k}
}

func isUnit(s *sheet.Sheet, id string) bool {
	c, ok := s.Index.Component(id)
	return ok && c.Unit
}

func (c core) present(s *sheet.Sheet, i int) bool {
	b := &s.Branches[i]
	if b.Make != model.MakeLaid || len(b.As) == 0 {
		return false
	}
	l := b.As[0]
	built := len(l.Of) == 1 && l.BindMM.V > 0
	units, equal := len(l.Of) > 0, true
	for _, id := range l.Of {
		units = units && isUnit(s, id)
		equal = equal && s.Dia(id).Nominal == s.Dia(l.Of[0]).Nominal
	}
	switch c.Kind {
	case planning.BuiltCore:
		return built
	case planning.UnitCore:
		return units && !built
	case planning.MixedCore:
		return !units && !built && !equal && len(l.Of) <= 3
	}
	return !units && !built && equal && len(l.Of) == c.N
}

func (c core) make(s *sheet.Sheet, i int) (trial, error) {
	return trial{h: written(s, s.H, i), lays: true, core: planning.Core(c)}, nil
}
