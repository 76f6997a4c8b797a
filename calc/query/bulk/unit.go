package bulk

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
)

// Where a drain goes.
const (
	DrainShell  = "shell"
	DrainCut    = "cut"
	DrainCavity = "cavity" // the next free one at that end
)

// UnitAsk asks for wires to be made up into a unit.
type UnitAsk struct {
	Wires  []string
	Shield bool
	// DrainFrom and DrainTo are where the drain of the shield ends, at the from and at the to end of
	// the first wire: one of those above, an end as a file writes it, or "" for not said.
	DrainFrom, DrainTo string
}

// UnitOf makes two to four wires up into a pair, a triple or a quad. They must run the same way:
// the error names those that do not.
func UnitOf(s *sheet.Sheet, ask UnitAsk) (Made, error) {
	at, err := picked(s, ask.Wires)
	if err != nil {
		return Made{}, err
	}
	if n := len(at); n < 2 || n > len(model.UnitBuilds)+1 {
		return Made{}, fmt.Errorf("%s cannot be a unit: a unit has 2 to %d wires", count(n, "wire"), len(model.UnitBuilds)+1)
	}
	first := at[0]
	for _, k := range at {
		id := s.H.Wires[k].ID
		if u, in := s.Index.UnitOf[id]; in {
			return Made{}, fmt.Errorf("wire %s is in unit %s already", id, s.H.Units[u].ID)
		}
		if !s.Wires[k].HasPath {
			return Made{}, fmt.Errorf("wire %s runs nowhere yet: give it both ends", id)
		}
		if !wires.SamePath(s.Wires[first].Path, s.Wires[k].Path) {
			return Made{}, fmt.Errorf("wires %s and %s do not run the same way: %s runs through %s, %s through %s", s.H.Wires[first].ID, id,
				s.H.Wires[first].ID, wayText(s, first), id, wayText(s, k))
		}
	}
	u := model.Unit{ID: s.H.NextID("U0"), Wires: idsOf(s.H, at), Build: model.Some(model.UnitBuilds[len(at)-2])}
	if n := len(s.H.Units); n > 0 {
		u.ID = s.H.NextID(s.H.Units[n-1].ID)
	}
	says := fmt.Sprintf("%s is a %s of %s", u.ID, u.Build.V, Named(u.Wires))
	if ask.Shield {
		u.Shield = model.Some(true)
		from, to := &s.H.Wires[first].From, &s.H.Wires[first].To
		if u.DrainFrom, err = drainAt(s, ask.DrainFrom, from.V, at, ""); err != nil {
			return Made{}, err
		}
		if u.DrainTo, err = drainAt(s, ask.DrainTo, to.V, at, u.DrainFrom.V); err != nil {
			return Made{}, err
		}
		says = fmt.Sprintf("%s is a shielded %s of %s", u.ID, u.Build.V, Named(u.Wires)) + drainText(from.V, u.DrainFrom) +
			drainText(to.V, u.DrainTo)
	}
	return Made{H: s.H.AddUnit(u), Wires: u.Wires, Says: says}, nil
}

// wayText is the branches that a wire runs through.
func wayText(s *sheet.Sheet, k int) string {
	var out []string
	for _, b := range s.Wires[k].Path {
		out = append(out, s.H.Branches[b].ID)
	}
	if len(out) == 0 {
		return "no branch"
	}
	return strings.Join(out, " ")
}

// drainText says where a drain goes at an end.
func drainText(end string, drain model.Opt[string]) string {
	place, _, _ := strings.Cut(end, ":")
	switch drain.V {
	case "":
		return ""
	case DrainShell:
		return ", its drain to the shell of " + place
	case DrainCut:
		return ", its drain cut at " + place
	}
	return ", its drain to " + drain.V
}

// drainAt is where the drain goes at one end of the unit; taken is where it goes at the other.
func drainAt(s *sheet.Sheet, where, end string, unit []int, taken string) (model.Opt[string], error) {
	switch where {
	case "":
		return model.Opt[string]{}, nil
	case DrainShell, DrainCut:
		return model.Some(where), nil
	}
	if where != DrainCavity {
		t, c, ok := cavityAt(s, where)
		if e, given := s.Index.End(where); given && e.Splice != "" {
			if _, known := s.Index.Splice[e.Splice]; !known {
				return model.Opt[string]{}, fmt.Errorf("there is no splice %q for the drain", where)
			}
			return model.Some(where), nil
		}
		if !ok || !slices.Contains(s.Terms[t].Free, c) || where == taken {
			return model.Opt[string]{}, fmt.Errorf("the drain cannot go to %s: it is no free cavity", where)
		}
		return model.Some(where), nil
	}
	t, _, ok := cavityAt(s, end)
	if !ok {
		return model.Opt[string]{}, fmt.Errorf("the drain has no cavity at %s: choose the shell or cut it", end)
	}
	last, w := "", &s.H.Wires[unit[0]]
	for _, c := range s.Terms[t].Cavities { // the last cavity of the unit there
		if slices.ContainsFunc(s.Terms[t].State[c].Wires, func(id string) bool { return slices.Contains(idsOf(s.H, unit), id) }) {
			last = c
		}
	}
	free := FreeFrom(s, t, last, w.Spec, w.Size, 1, map[string]bool{taken: taken != ""})
	if len(free) == 0 {
		return model.Opt[string]{}, fmt.Errorf("the drain has no cavity: %s", noneFree(s, t, w.Spec, w.Size, nil))
	}
	return model.Some(s.H.Terminations[t].ID + ":" + free[0]), nil
}
