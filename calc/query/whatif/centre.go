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
	case planning.UnitCore:
		return "units"
	case planning.MixedCore:
		return "mixed"
	case planning.BuiltCore:
		return "built up"
	}
	return coreSays[c.N]
}

// centres is the centres that could be: of a branch that is laid and whose centre is not locked. Where units can lie
// there together, a number is of whatever pieces lie best, units among them, and one that is theirs is called "units".
// Where none can, a number is of one size, and "mixed" of several.
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
	equal := func(n int) bool { // some size has so many, those pinned among them
		for d, have := range count {
			if have >= n && !slices.ContainsFunc(pinned, func(id string) bool { return s.Dia(id).Nominal != d }) {
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
	units := planning.CentreUnits(s, i)
	for n := 1; n <= 5; n++ {
		can := n >= len(pinned) && n < len(b.Components)
		if len(units) > 0 {
			put(core{Kind: planning.CountCore, N: n}, can && n != len(units) && (n <= 3 || equal(n)))
		} else {
			put(core{Kind: planning.EqualCore, N: n}, can && equal(n))
		}
	}
	if len(units) > 0 {
		put(core{Kind: planning.UnitCore}, !slices.ContainsFunc(pinned, func(id string) bool { return !isUnit(s, id) }))
	} else {
		put(core{Kind: planning.MixedCore}, len(count) > 1 && len(pinned) <= 3 && len(b.Components) > 2)
	}
	put(core{Kind: planning.BuiltCore}, len(pinned) <= 1 && len(b.Components) > 7)
	return []Kind{k}
}

func isUnit(s *sheet.Sheet, id string) bool {
	c, _ := s.Index.Component(id)
	return c.Unit
}

func (c core) present(s *sheet.Sheet, i int) bool {
	b := &s.Branches[i]
	if b.Make != model.MakeLaid || len(b.As) == 0 {
		return false
	}
	in := b.As[0].Of
	built := len(in) == 1 && b.As[0].BindMM.V > 0
	if built || c.Kind == planning.BuiltCore {
		return built && c.Kind == planning.BuiltCore
	}
	units := planning.CentreUnits(s, i)
	all := len(in) == len(units) && !slices.ContainsFunc(in, func(id string) bool { return !isUnit(s, id) })
	if all || c.Kind == planning.UnitCore {
		return all && c.Kind == planning.UnitCore
	}
	same := !slices.ContainsFunc(in, func(id string) bool { return s.Dia(id).Nominal != s.Dia(in[0]).Nominal })
	switch c.Kind {
	case planning.MixedCore:
		return !same && len(in) <= 3
	case planning.EqualCore:
		return same && len(in) == c.N
	}
	return len(in) == c.N
}

func (c core) make(s *sheet.Sheet, i int) (trial, error) {
	return trial{h: written(s, s.H, i), lays: true, core: planning.Core(c)}, nil
}
