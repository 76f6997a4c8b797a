package edit

import (
	"fmt"
	"slices"

	"contralay/model"
	"contralay/model/unit"
)

// Join makes one branch of the two that meet at a breakout, and takes the breakout away. The one
// that comes first in the file keeps its id, its direction and whatever is said once: name,
// make, wishes, rules of its own. Lengths and tolerances add up. Of the surroundings the harder
// holds for the whole. Covers keep their places; two of one kind that meet at the breakout become
// one. The lay-up is kept where both have the same; where they differ that of the first is. What
// is said beside it names all that differed.
//
// A splice at the breakout, and a wire that is capped there, needs the breakout: the error names
// them. So does a locked layer that would go.
func Join(h *model.Harness, breakout string) (out *model.Harness, says []string, err error) {
	if _, err := at(h, Breakout, breakout); err != nil {
		return h, nil, err
	}
	for i := range h.Splices {
		if h.Splices[i].At == breakout {
			return h, nil, fmt.Errorf("splice %s is at %s: move it to another breakout first", h.Splices[i].ID, breakout)
		}
	}
	for i := range h.Wires {
		if h.Wires[i].CappedAt.V == breakout {
			return h, nil, fmt.Errorf("wire %s is capped at %s: cap it somewhere else first", h.Wires[i].ID, breakout)
		}
	}
	return join(h, breakout)
}

func join(h *model.Harness, breakout string) (*model.Harness, []string, error) {
	x := model.NewIndex(h)
	meet := x.Meeting(breakout)
	switch {
	case len(meet) < 2:
		return h, nil, fmt.Errorf("two branches are joined where they meet: %s has %d", breakout, len(meet))
	case len(meet) > 2:
		return h, nil, fmt.Errorf("%s meet at %s: only two that meet alone can be joined", branchesOf(h, meet), breakout)
	}
	a, b := h.Branches[meet[0]], h.Branches[meet[1]]
	gone := b.ID
	far := x.Other(meet[1], breakout)
	if (a.To == breakout) == (b.To == breakout) {
		b = turned(b)
	}
	p, q := a, b // one after the other
	if a.From == breakout {
		p, q = b, a
	}
	j := joining{first: a, second: b, rules: h.Rules.Resolve()}
	one := a
	one.From, one.To, one.LengthMM = p.From, q.To, unit.Written(p.LengthMM+q.LengthMM)
	one.Covers, one.Asides = j.covers(p, q), j.variants(p, q)
	joinDrawing(&one, &p, &q, side(x, x.Branch[q.ID], q.To)[h.Board.Datum.V])
	j.surroundings(&one)
	j.bend(&one)
	if err := j.layUp(&one); err != nil {
		return h, nil, err
	}
	j.once()
	n := *h
	if h.Board.Datum.V == breakout {
		n.Board.Datum = model.Opt[string]{}
		j.say("the drawing had its datum at %s: it has none now", breakout)
	}
	n.Branches = slices.Clone(h.Branches)
	n.Branches[meet[0]] = one
	n.Branches = slices.Delete(n.Branches, meet[1], meet[1]+1)
	n.Breakouts = less(h.Breakouts, func(k int) bool { return h.Breakouts[k].ID == breakout })
	n.Splices = changed(h.Splices, func(s *model.Splice) bool {
		if s.Toward.V != gone || s.At != far {
			return false
		}
		s.Toward = model.Some(a.ID)
		return true
	})
	return &n, j.says, nil
}

// joining is two branches that become one, and what is said of it.
type joining struct {
	first, second model.Branch
	rules         model.Limits
	says          []string
}

func (j *joining) say(format string, args ...any) {
	j.says = append(j.says, fmt.Sprintf(format, args...))
}

// covers is the covers of both, inside out, stations counted along the whole.
func (j *joining) covers(p, q model.Branch) []model.Cover {
	if len(p.Covers) == 0 && len(q.Covers) == 0 {
		return nil
	}
	for _, b := range []model.Branch{p, q} {
		if len(b.Covers) == 0 {
			j.say("%s had no cover in the file: its part gets none proposed now", b.ID)
		}
	}
	var out, over []model.Cover // over: those of q that lie over what is out
	next := 0                   // of p
	for _, c := range q.Covers {
		starts := !c.FromMM.Set || c.FromMM.V <= 0
		if c.ToMM.Set {
			c.ToMM.V = unit.Written(c.ToMM.V + p.LengthMM)
		}
		k := slices.IndexFunc(p.Covers[next:], func(o model.Cover) bool {
			return starts && o.What == c.What && o.Part == c.Part && o.ThickMM == c.ThickMM && (!o.ToMM.Set || o.ToMM.V >= p.LengthMM)
		})
		if k < 0 {
			c.FromMM = model.Some(unit.Written(c.FromMM.V + p.LengthMM))
			over = append(over, c)
			continue
		}
		out = slices.Concat(out, stopped(p.Covers[next:next+k], p.LengthMM), over)
		c.FromMM = p.Covers[next+k].FromMM
		out, over = append(out, c), nil
		next += k + 1
	}
	return slices.Concat(out, stopped(p.Covers[next:], p.LengthMM), over)
}

// stopped is covers that stop where their branch did.
func stopped(all []model.Cover, length unit.Millimetre) []model.Cover {
	out := slices.Clone(all)
	for k := range out {
		if !out[k].ToMM.Set {
			out[k].ToMM = model.Some(length)
		}
	}
	return out
}

// surroundings lets the harder of the two hold for the whole.
func (j *joining) surroundings(one *model.Branch) {
	a, b := &j.first, &j.second
	for _, s := range b.Environment {
		if !slices.Contains(one.Environment, s) {
			one.Environment = append(slices.Clone(one.Environment), s)
			j.say("%s is all along it now", s)
		}
	}
	for _, s := range a.Environment {
		if !slices.Contains(b.Environment, s) {
			j.say("%s is all along it now", s)
		}
	}
	if warm, other := a.AmbientC.Or(j.rules.AmbientC), b.AmbientC.Or(j.rules.AmbientC); warm != other {
		if other > warm {
			one.AmbientC = b.AmbientC
		}
		j.say("the whole lies in %s C", plain(max(warm, other)))
	}
	if a.Supported.V != b.Supported.V {
		one.Supported = model.Some(false)
		j.say("only one of them is supported: the whole is not")
	}
	switch {
	case len(a.ToleranceMM) == 2 && len(b.ToleranceMM) == 2:
		one.ToleranceMM = []unit.Millimetre{unit.Written(a.ToleranceMM[0] + b.ToleranceMM[0]),
			unit.Written(a.ToleranceMM[1] + b.ToleranceMM[1])}
	case len(a.ToleranceMM) != len(b.ToleranceMM):
		if len(a.ToleranceMM) == 0 {
			one.ToleranceMM = b.ToleranceMM
		}
		j.say("only one of them has a tolerance: it holds for the whole")
	}
}

// bend keeps the tighter bend; a turn in each is no single turn.
func (j *joining) bend(one *model.Branch) {
	a, b := &j.first, &j.second
	if !b.BendMM.Set && !b.BendDeg.Set {
		return
	}
	if !a.BendMM.Set || b.BendMM.Set && b.BendMM.V < a.BendMM.V {
		one.BendMM, one.BendDeg = b.BendMM, b.BendDeg
	}
	if a.BendMM.Set || a.BendDeg.Set {
		j.say("a branch has one bend: the tighter of the two is kept")
	}
}

// layUp keeps a lay-up that both have, or else the first's; one that is only worked out gives
// way to one that the file has.
func (j *joining) layUp(one *model.Branch) error {
	a, b := &j.first, &j.second
	same := slices.EqualFunc(a.Layers, b.Layers, sameLayer) && a.Make == b.Make && a.Outer == b.Outer
	switch {
	case same:
	case len(a.Layers) == 0 && len(b.Layers) > 0:
		one.Layers, one.Make, one.Outer = b.Layers, b.Make, b.Outer
		j.say("the lay-up of %s is kept: %s had none in the file", b.ID, a.ID)
	case len(b.Layers) == 0 && a.Make == b.Make && a.Outer == b.Outer:
		j.say("the lay-up of %s is kept: %s had none in the file", a.ID, b.ID)
	default:
		for k, l := range b.Layers {
			if l.Locked.V || len(l.Pinned) > 0 {
				return fmt.Errorf("%s of %s is locked or pinned, and %s is laid otherwise: unlock it first", model.LayerName(k), b.ID, a.ID)
			}
		}
		j.say("%s and %s are laid otherwise: the lay-up of %s is kept", a.ID, b.ID, a.ID)
	}
	if same || len(a.Layers) == 0 && len(b.Layers) == 0 {
		one.AsBuilt = measured(a.AsBuilt, b.AsBuilt)
	} else if len(one.Layers) > 0 && len(a.Layers) == 0 {
		one.AsBuilt = b.AsBuilt
		if len(a.AsBuilt) > 0 {
			j.say("what was measured on %s is left out", a.ID)
		}
	} else if len(b.AsBuilt) > 0 {
		j.say("what was measured on %s is left out", b.ID)
	}
	return nil
}

// variants is the variants of both: covers stay where they lie, and one whose name or letter the
// first has already gets another.
func (j *joining) variants(p, q model.Branch) []model.Aside {
	a, b := &j.first, &j.second
	out := slices.Clone(a.Asides)
	for _, s := range b.Asides {
		if slices.ContainsFunc(a.Asides, func(o model.Aside) bool { return o.Name == s.Name }) {
			s.Name += " (" + b.ID + ")"
		}
		if slices.ContainsFunc(a.Asides, func(o model.Aside) bool { return o.Letter == s.Letter }) {
			s.Letter = model.Opt[model.Letter]{}
		}
		out = append(out, s)
	}
	for k := range out {
		if (k < len(a.Asides)) == (a.ID == p.ID) {
			out[k].Covers = stopped(out[k].Covers, p.LengthMM)
			continue
		}
		out[k].Covers = shifted(out[k].Covers, p.LengthMM)
	}
	return out
}

// shifted is covers of the second part, stations counted from the beginning of the first.
func shifted(all []model.Cover, by unit.Millimetre) []model.Cover {
	out := slices.Clone(all)
	for k := range out {
		out[k].FromMM = model.Some(unit.Written(out[k].FromMM.V + by))
		if out[k].ToMM.Set {
			out[k].ToMM.V = unit.Written(out[k].ToMM.V + by)
		}
	}
	return out
}

// sameLayer reports whether two layers hold the same in the same way.
func sameLayer(a, b model.Layer) bool {
	same := func(a, b []string) bool {
		return slices.Equal(slices.Sorted(slices.Values(a)), slices.Sorted(slices.Values(b)))
	}
	return same(a.Of, b.Of) && same(a.Pinned, b.Pinned) && a.Fillers == b.Fillers && a.FillerMM == b.FillerMM && a.BindMM == b.BindMM &&
		a.BindPart == b.BindPart && a.LayMM == b.LayMM && a.Locked == b.Locked
}

// measured is the readings of both, layer by layer.
func measured(a, b []model.AsBuilt) []model.AsBuilt {
	out := slices.Clone(a)
	at := map[int]int{}
	for k := range out {
		at[out[k].Layer] = k
	}
	for _, m := range b {
		if k, has := at[m.Layer]; has {
			out[k].OverMM = slices.Concat(out[k].OverMM, m.OverMM)
			continue
		}
		at[m.Layer] = len(out)
		out = append(out, m)
	}
	return out
}

// once is what only one of two can be.
func (j *joining) once() {
	a, b := &j.first, &j.second
	if a.LeaversOut != b.LeaversOut || a.UnitsIn != b.UnitsIn || a.DataApart != b.DataApart {
		j.say("the wishes of %s for its lay-up are kept", a.ID)
	}
	if b.Name.V != "" && b.Name.V != a.Name.V {
		j.say("the name %q is left out", b.Name.V)
	}
}
