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
	for k, l := range m.h.Branches[m.branch].Layers {
		if l.Locked.V || len(l.Pinned) > 0 {
			m.refuse(model.LayerName(k) + " is locked or has something pinned: the option would move it")
			return
		}
	}
	if m.uses(o) && !m.sheet.Branches[m.branch].Proposed {
		m.tell("it is laid so already")
		return
	}
	m.change(m.h.EditBranch(m.branch, func(b *model.Branch) {
		b.Layers = model.CloneLayers(o.Layers)
		b.Make = model.Some("laid")
	}), "laid as "+paper.Aloud(paper.Counts(o.Plan), m.cfg.ASCII))
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
	out := make([]model.Layer, len(b.Layers))
	for k, l := range b.Layers {
		n := 0
		for _, c := range l.Members {
			if c.Kind == calc.OfFiller {
				n++
			} else {
				out[k].Of = append(out[k].Of, c.ID)
			}
		}
		if n > 0 && k > 0 {
			out[k].Fillers, out[k].FillerMM = model.Some(n), model.Some(l.FillerMM)
		}
	}
	return out
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
