package ways

import (
	"fmt"

	"contralay/calc"
	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/paper"
)

// FirstLayups is how many lay-ups stand in the table; the rest is a key away.
const FirstLayups = 3

// UsesOption reports whether the branch is laid as an option.
func UsesOption(m *desk.Model, o sheet.Option) bool {
	_, b, _ := m.BranchHere()
	if len(o.Layers) != len(b.Layers) || len(o.Spares) > 0 {
		return false
	}
	for k, l := range o.Layers {
		ids := map[string]bool{}
		for _, c := range b.Layers[k].Members {
			ids[c.ID] = true
		}
		fillers := b.Layers[k].Fillers
		if k == 0 && len(l.Of) == 5 {
			fillers = 0
		}
		if fillers != l.Fillers.V || !SameTape(b.As[k].BindMM.V, l.BindMM.V) || len(b.As[k].Of) != len(l.Of) {
			return false
		}
		for _, id := range l.Of {
			if !ids[id] {
				return false
			}
		}
	}
	return true
}

// SameTape reports whether tape adds the same, to what is written of it: older files hold more digits.
func SameTape(a, b unit.Millimetre) bool { return unit.Written(a) == unit.Written(b) }

// BuiltText is the centre of the branch in hand in words, where it is built up.
func BuiltText(m *desk.Model) string {
	_, b, ok := m.BranchHere()
	if !ok || len(b.Layers) == 0 || b.Layers[0].BuiltMM <= 0 {
		return ""
	}
	return b.Layers[0].BuiltUp(m.Sys)
}

// layupsHere is the lay-ups worth having, as a kind.
func layupsHere(m *desk.Model) []Kind {
	if _, b, ok := m.BranchHere(); !ok || b.Make != model.MakeLaid {
		return nil
	}
	k := Kind{ID: LayupID, Name: "lay-up", Now: -1}
	i := m.Branch
	p := m.Sheet.Proposals[bundle.PlanKey(m.Sheet, i)]
	for n, o := range p.Options {
		found := n >= p.Shown
		if n >= p.AtOnce() && !found {
			continue
		}
		if k.Now < 0 && UsesOption(m, o) {
			k.Now = len(k.Ways)
		}
		counts := paper.Counts(o.Plan)
		k.Ways = append(k.Ways, Way{Key: fmt.Sprintf("option %d: %v, %d spares, %v", n, counts, len(o.Spares), o.Cost), Laid: counts,
			Option: n, Found: found, Letter: p.Letter(n),
			Make: func(s *sheet.Sheet) Outcome {
				return Outcome{Sheet: calc.Build(planning.Laid(s, s.H, i, o), s.Base, s)}
			},
			Keep: func(s *sheet.Sheet) (model.Aside, error) { return laidAside(s, i, o), nil }})
	}
	if len(k.Ways) == 0 {
		return nil
	}
	return []Kind{k}
}
