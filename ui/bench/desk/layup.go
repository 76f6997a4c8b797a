package desk

import (
	"cmp"
	"fmt"
	"slices"

	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/ui/bench/words"
	"contralay/ui/paper"
)

// What a person does to a lay-up: take an option, move a component, turn the
// hand, change how the branch is made.

func (m *Model) Take(o sheet.Option) {
	if m.Uses(o) && !m.Sheet.Branches[m.Branch].Proposed {
		m.Tell("it is laid so already")
		return
	}
	says := "laid as " + paper.Aloud(paper.Counts(o.Plan), m.Cfg.ASCII)
	if n := len(o.Spares); n > 0 {
		says += fmt.Sprintf(", with %d new spares from %s to %s on", n, o.Spares[0].From, o.Spares[0].To)
	}
	m.Change(planning.Laid(m.Sheet, m.H, m.Branch, o), says)
}

// breaks says what a change would not leave as the builder holds it: a locked
// layer changed or its hand turned, something pinned moved; "" where nothing. What
// only lets go of a hold breaks none.
func (m *Model) breaks(h *model.Harness) string {
	for i := range min(len(m.H.Branches), len(h.Branches)) {
		was, will := &m.H.Branches[i], &h.Branches[i]
		turns := (len(was.Layers)-len(will.Layers))%2 != 0 != (m.Outer(was) != will.Outer.Or(h.Rules.Resolve().Outer))
		for k, l := range was.Layers {
			name := model.LayerName(k)
			if k >= len(will.Layers) {
				if l.Locked.V || len(l.Pinned) > 0 {
					return fmt.Sprintf("%s of %s is held: this would take it away", name, was.ID)
				}
				continue
			}
			to := will.Layers[k]
			switch {
			case l.Locked.V && (l.Fillers.V != to.Fillers.V || l.FillerMM != to.FillerMM || l.BindMM != to.BindMM || l.LayMM != to.LayMM ||
				!SameSet(l.Of, to.Of)):
				return fmt.Sprintf("%s of %s is locked: this would change it", name, was.ID)
			case l.Locked.V && turns && (k > 0 || len(l.Of) > 1):
				return fmt.Sprintf("%s of %s is locked: this would turn its hand", name, was.ID)
			}
			for _, id := range l.Pinned {
				if !slices.Contains(to.Of, id) {
					return fmt.Sprintf("%s is pinned to %s: this would move it", id, name)
				}
			}
		}
	}
	return ""
}

func SameSet(a, b []string) bool {
	return slices.Equal(slices.Sorted(slices.Values(a)), slices.Sorted(slices.Values(b)))
}

// EditLayers is the lay-up of the branch as the file would hold it: its own, or
// the proposal taken as written.
func (m *Model) EditLayers() []model.Layer {
	mb, b, ok := m.B()
	if !ok {
		return nil
	}
	if !b.Proposed {
		return mb.Layers
	}
	return model.CloneLayers(b.As)
}

// Written is the harness with the branch's proposal written into it, so that a
// change by hand has something to change.
func (m *Model) Written() *model.Harness {
	_, b, _ := m.B()
	if !b.Proposed {
		return m.H
	}
	ls := m.EditLayers()
	mk := b.Make
	return m.H.EditBranch(m.Branch, func(b *model.Branch) { b.Layers, b.Make = ls, model.Some(mk) })
}

// Move puts a component into another layer; false where that is refused.
func (m *Model) Move(id string, to int) bool {
	was := m.Written()
	h, err := was.Move(m.Branch, id, to)
	if err != nil {
		m.Refuse(err.Error())
		return false
	}
	where := "taken out of the lay-up"
	switch {
	case to >= 0 && to == len(was.Branches[m.Branch].Layers):
		where = "opens " + model.LayerName(to) + "; Backspace takes it back"
	case to >= 0:
		where = "moved to " + model.LayerName(to)
	}
	m.Change(h, id+" "+where)
	return !m.Trouble
}

// Shift moves one component of a layer outward (+) or inward (−): outward the one
// that leaves first, inward the one that runs furthest; thin before thick.
func (m *Model) Shift(k, by int) {
	_, b, _ := m.B()
	if b.Make != model.MakeLaid && by > 0 && len(b.Layers) == 1 && len(b.Layers[0].Members) < 2 {
		m.Refuse("one component runs alone")
		return
	}
	if k+by < 0 {
		m.Tell("the centre is innermost")
		return
	}
	var real []sheet.Member
	for _, c := range b.Layers[k].Members {
		if c.Kind != sheet.OfFiller {
			real = append(real, c)
		}
	}
	if len(real) == 0 {
		m.Refuse("nothing but filler here")
		return
	}
	if len(real) == 1 && by > 0 && k == len(b.Layers)-1 {
		m.Tell("it is outermost already")
		return
	}
	c := slices.MinFunc(real, func(a, c sheet.Member) int {
		return cmp.Or(by*cmp.Compare(a.Leaves, c.Leaves), cmp.Compare(a.D, c.D))
	})
	m.Move(c.ID, k+by)
}

func (m *Model) Outer(b *model.Branch) model.Hand { return b.Outer.Or(m.Sheet.Limits.Outer) }

func (m *Model) FlipOuter() {
	b := &m.H.Branches[m.Branch]
	hand := m.Outer(b).Other()
	m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) { b.Outer = model.Some(hand) }),
		"outer layer "+string(hand)+", the others alternate")
}

func (m *Model) StepMake(by int) {
	_, b, _ := m.B()
	if len(m.H.Branches[m.Branch].Layers) > 1 {
		m.Refuse("it has layers, so it is laid; undo the lay-up first")
		return
	}
	mk, _ := words.Around(model.Makes, b.Make, by)
	m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) {
		b.Make = model.Some(mk)
		b.Layers = nil // a proposal follows what it is made as
	}), "make "+string(mk))
}
