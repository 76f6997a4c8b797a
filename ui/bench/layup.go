package bench

import (
	"cmp"
	"fmt"
	"slices"

	"contralay/calc"
	"contralay/model"
	"contralay/ui/paper"
)

// What a person does to a lay-up: take an option, move a component, turn the
// hand, change how the branch is made.

func (m *Model) take(o calc.Option) {
	if says := moves(m.h.Branches[m.branch].Layers, o.Layers); says != "" {
		m.refuse("the option " + says)
		return
	}
	if m.uses(o) && !m.sheet.Branches[m.branch].Proposed {
		m.tell("it is laid so already")
		return
	}
	says := "laid as " + paper.Aloud(paper.Counts(o.Plan), m.cfg.ASCII)
	if n := len(o.Spares); n > 0 {
		says += fmt.Sprintf(", with %d new spares from %s to %s on", n, o.Spares[0].From, o.Spares[0].To)
	}
	m.change(m.sheet.Laid(m.h, m.branch, o), says)
}

// moves says what of the lay-up now a change would not leave as it is held: a
// locked layer changed or turned, something pinned moved; "" where nothing.
func moves(now, then []model.Layer) string {
	for k, l := range now {
		switch {
		case l.Locked.V && (k >= len(then) || !slices.Equal(slices.Sorted(slices.Values(l.Of)), slices.Sorted(slices.Values(then[k].Of))) || l.Fillers.V != then[k].Fillers.V):
			return fmt.Sprintf("would change %s, which is locked", model.LayerName(k))
		case l.Locked.V && (len(now)-len(then))%2 != 0:
			return fmt.Sprintf("would turn the hand of %s, which is locked", model.LayerName(k))
		}
		for _, id := range l.Pinned {
			if k >= len(then) || !slices.Contains(then[k].Of, id) {
				return fmt.Sprintf("would move %s, which is pinned to %s", id, model.LayerName(k))
			}
		}
	}
	return ""
}

// editLayers is the lay-up of the branch as the file would hold it: its own, or
// the proposal taken as written.
func (m *Model) editLayers() []model.Layer {
	mb, b, ok := m.b()
	if !ok {
		return nil
	}
	if !b.Proposed {
		return mb.Layers
	}
	return model.CloneLayers(b.As)
}

// written is the harness with the branch's proposal written into it, so that a
// change by hand has something to change.
func (m *Model) written() *model.Harness {
	_, b, _ := m.b()
	if !b.Proposed {
		return m.h
	}
	ls := m.editLayers()
	mk := b.Make
	return m.h.EditBranch(m.branch, func(b *model.Branch) { b.Layers, b.Make = ls, model.Some(mk) })
}

func (m *Model) move(id string, to int) {
	h, err := m.written().Move(m.branch, id, to)
	if err != nil {
		m.refuse(err.Error())
		return
	}
	where := "taken out of the lay-up"
	if to >= 0 {
		where = "moved to " + model.LayerName(to)
	}
	m.change(h, id+" "+where)
}

// shift moves one component of a layer outward (+) or inward (−): outward the one
// that leaves first, inward the one that runs furthest; thin before thick.
func (m *Model) shift(k, by int) {
	_, b, _ := m.b()
	if b.Make != "laid" && by > 0 && len(b.Layers) == 1 && len(b.Layers[0].Members) < 2 {
		m.refuse("one component runs alone")
		return
	}
	if k+by < 0 {
		m.tell("the centre is innermost")
		return
	}
	var real []calc.Member
	for _, c := range b.Layers[k].Members {
		if c.Kind != calc.OfFiller {
			real = append(real, c)
		}
	}
	if len(real) == 0 {
		m.refuse("nothing but filler here")
		return
	}
	if len(real) == 1 && by > 0 && k == len(b.Layers)-1 {
		m.tell("it is outermost already")
		return
	}
	c := slices.MinFunc(real, func(a, c calc.Member) int {
		return cmp.Or(by*cmp.Compare(a.Leaves, c.Leaves), cmp.Compare(a.D, c.D))
	})
	m.move(c.ID, k+by)
}

func (m *Model) outer(b *model.Branch) string { return b.Outer.Or(m.sheet.Limits.Outer) }

func (m *Model) flipOuter() {
	b := &m.h.Branches[m.branch]
	for k, l := range b.Layers {
		if l.Locked.V {
			m.refuse(fmt.Sprintf("%s is locked: its hand would turn", model.LayerName(k)))
			return
		}
	}
	hand := calc.OtherHand(m.outer(b))
	m.change(m.h.EditBranch(m.branch, func(b *model.Branch) { b.Outer = model.Some(hand) }), "outer layer "+hand+", the others alternate")
}

func (m *Model) stepMake(by int) {
	_, b, _ := m.b()
	if len(m.h.Branches[m.branch].Layers) > 1 {
		m.refuse("it has layers, so it is laid; undo the lay-up first")
		return
	}
	mk, _ := around([]string{"laid", "twisted", "straight"}, b.Make, by)
	m.change(m.h.EditBranch(m.branch, func(b *model.Branch) {
		b.Make = model.Some(mk)
		b.Layers = nil // a proposal follows what it is made as
	}), "make "+mk)
}
