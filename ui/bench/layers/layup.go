package layers

import (
	"cmp"
	"fmt"
	"slices"

	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/layers/ways"
	"contralay/ui/bench/words"
	"contralay/ui/paper"
)

// What a person does to a lay-up: take an option, move a component, turn the
// hand, change how the branch is made.

func takeOption(m *desk.Model, o sheet.Option) {
	if ways.UsesOption(m, o) && !m.Sheet.Branches[m.Branch].Proposed {
		m.Tell("it is laid this way already")
		return
	}
	says := "laid as " + paper.Aloud(paper.Counts(o.Plan), m.Cfg.ASCII)
	if n := len(o.Spares); n > 0 {
		says += fmt.Sprintf(", %d new spares, first from %s to %s", n, o.Spares[0].From, o.Spares[0].To)
	}
	m.Change(planning.Laid(m.Sheet, m.H, m.Branch, o), says)
}

// EditLayers is the lay-up of the branch as the file would hold it: its own, or
// the proposal taken as written.
func editLayers(m *desk.Model) []model.Layer {
	mb, b, ok := m.BranchHere()
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
func written(m *desk.Model) *model.Harness {
	_, b, _ := m.BranchHere()
	if !b.Proposed {
		return m.H
	}
	ls := editLayers(m)
	mk := b.Make
	return m.H.EditBranch(m.Branch, func(b *model.Branch) { b.Layers, b.Make = ls, model.Some(mk) })
}

// Move puts a component into another layer; false where that is refused.
func move(m *desk.Model, id string, to int) bool {
	was := written(m)
	h, err := was.Move(m.Branch, id, to)
	if err != nil {
		m.Refuse(err.Error())
		return false
	}
	where := "removed from the lay-up"
	switch {
	case to >= 0 && to == len(was.Branches[m.Branch].Layers):
		where = "opens " + model.LayerName(to) + ". Backspace undoes it"
	case to >= 0:
		where = "moved to " + model.LayerName(to)
	}
	if ls := was.Branches[m.Branch].Layers; len(ls) > 1 && ls[0].BindMM.V > 0 {
		if now := h.Branches[m.Branch].Layers; len(now) > 0 && now[0].BindMM.V == 0 {
			where += ". The centre is another, so its tape is off"
		}
	}
	m.Change(h, id+" "+where)
	return !m.Trouble
}

// Shift moves one component of a layer outward (+) or inward (−): outward the one
// that leaves first, inward the one that runs furthest; thin before thick.
func shift(m *desk.Model, k, by int) {
	_, b, _ := m.BranchHere()
	if b.Make != model.MakeLaid && by > 0 && len(b.Layers) == 1 && len(b.Layers[0].Members) < 2 {
		m.Refuse("only one piece runs here")
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
		m.Refuse("there is only filler here")
		return
	}
	if len(real) == 1 && by > 0 && k == len(b.Layers)-1 {
		m.Tell("it is outermost already")
		return
	}
	c := slices.MinFunc(real, func(a, c sheet.Member) int {
		return cmp.Or(by*cmp.Compare(a.Leaves, c.Leaves), cmp.Compare(a.D, c.D))
	})
	move(m, c.ID, k+by)
}

func stepMake(m *desk.Model, by int) {
	_, b, _ := m.BranchHere()
	if len(m.H.Branches[m.Branch].Layers) > 1 {
		m.Refuse("it has layers, so it is laid. Undo the lay-up first")
		return
	}
	mk, _ := words.Around(model.Makes, b.Make, by)
	m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) {
		b.Make = model.Some(mk)
		b.Layers = nil // a proposal follows what it is made as
	}), "make "+string(mk))
}

func aloud(m *desk.Model, ls []sheet.Layer) string {
	var n []int
	for k, l := range ls {
		c := len(l.Members)
		if k == 0 && l.Fillers > 0 && len(l.Members) == 6 {
			c-- // the rod in the middle of five
		}
		n = append(n, c)
	}
	return paper.Aloud(n, m.Cfg.ASCII)
}

// SameLayers reports whether the branch in hand is laid so.
func sameLayers(m *desk.Model, ls []model.Layer) bool {
	_, b, _ := m.BranchHere()
	if len(ls) != len(b.As) {
		return false
	}
	for k := range ls {
		if len(ls[k].Of) != len(b.As[k].Of) || ls[k].Fillers.V != b.As[k].Fillers.V || !sameSizes(m, ls[k].Of, b.As[k].Of) {
			return false
		}
	}
	return true
}

func sameSizes(m *desk.Model, a, b []string) bool {
	count := map[unit.Millimetre]int{}
	d := func(id string) unit.Millimetre {
		if k, ok := m.Sheet.Index.Wire[id]; ok {
			return m.Sheet.Wires[k].Dia.Nominal
		}
		return m.Sheet.Units[m.Sheet.Index.Unit[id]].Dia.Nominal
	}
	for _, id := range a {
		count[d(id)]++
	}
	for _, id := range b {
		count[d(id)]--
	}
	for _, n := range count {
		if n != 0 {
			return false
		}
	}
	return true
}
