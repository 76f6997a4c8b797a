package desk

import (
	"fmt"

	"contralay/model"
	"contralay/model/file"
)

// History is what undo and redo go through. A harness is a value, so a step is the old one.
type History struct {
	past, undone []*model.Harness
}

// Steps is how many steps can be undone.
func (h *History) Steps() int { return len(h.past) }

// Undone is how many steps can be done again.
func (h *History) Undone() int { return len(h.undone) }

// Record remembers the harness that a change replaces; what was undone before is forgotten.
func (h *History) Record(was *model.Harness) { h.past, h.undone = append(h.past, was), nil }

// back is the harness before now, or nil.
func (h *History) back(now *model.Harness) *model.Harness {
	n := len(h.past)
	if n == 0 {
		return nil
	}
	was := h.past[n-1]
	h.past, h.undone = h.past[:n-1], append(h.undone, now)
	return was
}

// forth is the harness that was undone last, or nil.
func (h *History) forth(now *model.Harness) *model.Harness {
	n := len(h.undone)
	if n == 0 {
		return nil
	}
	next := h.undone[n-1]
	h.past, h.undone = append(h.past, now), h.undone[:n-1]
	return next
}

// Undo takes the last change back, and names it: what came back may stand on another page.
func (m *Model) Undo() {
	before := m.History.back(m.H)
	if before == nil {
		m.Tell("nothing left to undo")
		return
	}
	was := m.Doc()
	m.H = before
	m.Rebuild()
	says := ""
	if d := file.Differences(was, m.Doc()); len(d) > 0 {
		says = ": " + d[0]
		if len(d) > 1 {
			says += " ..."
		}
	}
	m.Tell(fmt.Sprintf("undone; %d more%s", m.History.Steps(), says))
	m.leaveGone()
}

// Redo does again what was undone last.
func (m *Model) Redo() {
	next := m.History.forth(m.H)
	if next == nil {
		m.Tell("nothing to redo")
		return
	}
	m.H = next
	m.Rebuild()
	m.Tell("redone")
	m.leaveGone()
}

// leaveGone closes screens of a thing that an undo took away.
func (m *Model) leaveGone() {
	if m.Branch >= len(m.H.Branches) {
		m.Branch = 0
	}
	for len(m.Stack) > 0 && !m.Here().Lasting && m.nothingInFront() {
		m.Back()
	}
}
