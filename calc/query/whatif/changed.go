package whatif

import (
	"errors"
	"fmt"
	"slices"

	"contralay/calc"
	"contralay/calc/formula/lay"
	"contralay/calc/formula/plan"
	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Changed is the harness with branch i in that way; the harness of s itself where it is that way now. It may plan, once,
// which takes some tens of milliseconds, so it belongs beside the screen. Build it with s as prior: what was proposed
// there stays proposed. The error is one sentence: why the branch cannot be that way.
func Changed(s *sheet.Sheet, i int, v Value) (*model.Harness, error) {
	t, err := changed(s, i, v)
	if err != nil {
		return s.H, err
	}
	return t.h, nil
}

// Built is Changed with its sheet, which Changed has nearly worked out: half the time of building it anew. Of the other
// branches that the change sends back to the planner those are laid in it that decide what the sheath of branch i goes
// into: they meet it in a moulded part. The rest wait, as after any edit, and change no figure of branch i.
func Built(s *sheet.Sheet, i int, v Value) (*sheet.Sheet, error) {
	t, err := changed(s, i, v)
	if err != nil {
		return s, err
	}
	return t.whole(s, i), nil
}

// trial is a harness on its way to become otherwise.
type trial struct {
	h       *model.Harness
	lays    bool          // what lies in the branch, or its sizes, may be others: its lay-up is to be looked at
	resized bool          // sizes are others
	core    planning.Core // the centre that is asked for
	sheath  bool          // the sheath is what was asked for, and does not follow
	built   *sheet.Sheet  // of h, or of one whose branch i is the same; nil: not yet
}

// whole is the sheet of the harness with what meets branch i in a moulded part laid: which outlet each goes into hangs on
// all of them, and with it where a sheath ends.
func (t *trial) whole(s *sheet.Sheet, i int) *sheet.Sheet {
	at := t.sheet(s)
	planned := false
	for _, end := range []string{at.H.Branches[i].From, at.H.Branches[i].To} {
		k, ok := at.Index.Breakout[end]
		if !ok || at.H.Breakouts[k].Transition.V == "" {
			continue
		}
		for _, n := range at.Index.Meeting(end) {
			if at.Branches[n].Waiting {
				planning.Adopt(at, bundle.PlanKey(at, n), planning.Propose(at, n))
				planned = true
			}
		}
	}
	if planned {
		t.built = calc.Build(t.h, s.Base, at)
	}
	return t.built
}

func changed(s *sheet.Sheet, i int, v Value) (trial, error) {
	if v.change == nil {
		return trial{}, errors.New("nothing was asked")
	}
	if i < 0 || i >= len(s.Branches) || len(s.Branches[i].As) == 0 {
		return trial{}, errors.New("the branch is not laid yet")
	}
	if v.change.present(s, i) {
		return trial{h: s.H, built: s}, nil
	}
	t, err := v.change.make(s, i)
	if err != nil {
		return trial{}, err
	}
	if t.lays {
		if err := t.layAnew(s, i); err != nil {
			return trial{}, err
		}
	}
	if !t.sheath {
		t.follow(s, i)
	}
	return t, nil
}

// written is the harness with the lay-up that branch i is proposed as written into it.
func written(s *sheet.Sheet, h *model.Harness, i int) *model.Harness {
	b := &s.Branches[i]
	if !b.Proposed {
		return h
	}
	return h.EditBranch(i, func(m *model.Branch) { m.Layers, m.Make = model.CloneLayers(b.As), model.Some(b.Make) })
}

// layAnew leaves the lay-up of a trial where it closes as it is, and else takes the one that is proposed.
func (t *trial) layAnew(s *sheet.Sheet, i int) error {
	if t.built == nil {
		t.built = calc.Build(t.h, s.Base, s)
	}
	if t.core.Kind == planning.AnyCore && t.stays(s, i) {
		return nil
	}
	b := &t.h.Branches[i]
	for _, id := range t.built.Branches[i].Components {
		if !t.built.Dia(id).Known() {
			return fmt.Errorf("the OD of %s is not known", id)
		}
	}
	if n := len(t.built.Branches[i].Components); t.core.Kind == planning.AnyCore && n < s.Limits.LaidFrom &&
		!s.H.Branches[i].Make.Set && len(bundle.Held(t.built, i)) == 0 {
		// So few are twisted, as nobody asked for anything else.
		t.edit(i, func(b *model.Branch) { b.Layers, b.Make = nil, model.Opt[model.Make]{} })
		return nil
	}
	o, ok := t.best(i)
	if !ok {
		return errors.New(cannot(b))
	}
	if o.Plan.Relaxed == plan.Nothing && t.core.Kind != planning.AnyCore {
		return errors.New("no layer closes round such a centre")
	}
	t.edit(i, func(b *model.Branch) { b.Layers, b.Make = model.CloneLayers(o.Layers), model.Some(model.MakeLaid) })
	return nil
}

// best is the lay-up that the branch would be proposed as; what was planned before is not planned again.
func (t *trial) best(i int) (sheet.Option, bool) {
	if t.core.Kind == planning.AnyCore {
		if p, known := t.built.Proposals[bundle.PlanKey(t.built, i)]; known {
			return p.Best()
		}
	}
	return planning.Best(t.built, i, t.core)
}

// set takes another harness; the sheet is to be built again.
func (t *trial) set(h *model.Harness) { t.h, t.built = h, nil }

// edit changes the branch.
func (t *trial) edit(i int, f func(b *model.Branch)) { t.set(t.h.EditBranch(i, f)) }

// sheet is the sheet of the harness, s its prior.
func (t *trial) sheet(s *sheet.Sheet) *sheet.Sheet {
	if t.built == nil || t.built.H != t.h {
		t.built = calc.Build(t.h, s.Base, s)
	}
	return t.built
}

// cannot says what rules a lay-up out.
func cannot(b *model.Branch) string {
	for k, l := range b.Layers {
		switch {
		case l.Locked.V:
			return model.LayerName(k) + " is locked, and no lay-up keeps it: unlock it first"
		case len(l.Pinned) > 0:
			return l.Pinned[0] + " is pinned to " + model.LayerName(k) + ", and no lay-up keeps it there: unpin it first"
		}
	}
	return "nothing can be laid so here"
}

// hair is what a gap or a lift may grow by without being another.
const hair unit.Ratio = 1e-6

// stays reports whether the lay-up of a trial still closes: no layer misses a limit that it keeps in s, and no filler
// and no tape is left that was made for other sizes.
func (t *trial) stays(s *sheet.Sheet, i int) bool {
	was, is := &s.Branches[i], &t.built.Branches[i]
	if is.Make != was.Make || len(is.Layers) != len(was.Layers) || is.OverMM <= 0 || is.Make != model.MakeLaid && len(is.Layers) != 1 {
		return false
	}
	if is.Make != model.MakeLaid { // there is nothing to close, until so many are laid
		return s.H.Branches[i].Make.Set || len(is.Components) < s.Limits.LaidFrom
	}
	for k, l := range is.As {
		if t.resized && !l.Locked.V && (k > 0 && l.Fillers.V > 0 || k == 0 && l.BindMM.V > 0) {
			return false
		}
	}
	if l := is.As[0]; l.BindMM.V != was.As[0].BindMM.V || !l.Locked.V && canBeCentre(s, was.As[0]) && !canBeCentre(t.built, l) {
		return false
	}
	rules := bundle.PlanRules(t.built)
	for k := range is.Layers {
		most, old, now := rules.GapInner, &was.Layers[k], &is.Layers[k]
		if k == len(is.Layers)-1 {
			most = rules.GapOuter
		}
		if k == 0 {
			continue
		}
		if now.Lift > max(rules.LiftMax, old.Lift)+hair || now.Gap > max(most, old.Gap)+hair {
			return false
		}
	}
	return true
}

func canBeCentre(s *sheet.Sheet, l model.Layer) bool {
	var d []unit.Millimetre
	for _, id := range l.Of {
		d = append(d, s.Dia(id).Nominal)
	}
	return lay.CanBeCentre(d)
}

// heldBy is the layer of some branch where a piece is locked in or pinned; false where it is free everywhere.
func heldBy(h *model.Harness, id string) (branch string, layer int, locked, held bool) {
	for b := range h.Branches {
		for k, l := range h.Branches[b].Layers {
			if l.Locked.V && slices.Contains(l.Of, id) {
				return h.Branches[b].ID, k, true, true
			}
			if slices.Contains(l.Pinned, id) {
				return h.Branches[b].ID, k, false, true
			}
		}
	}
	return "", 0, false, false
}
