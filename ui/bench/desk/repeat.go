package desk

import (
	"contralay/calc/phase/wires"
	"contralay/model"
	"contralay/model/unit"
)

// FreeBeyond is freeBeside without what is taken already.
func (m *Model) FreeBeyond(text string, w model.Wire, taken map[string]bool) (string, bool) {
	e, ok := m.Sheet.X.End(text)
	t, known := m.Sheet.X.Termination[e.Termination]
	switch {
	case text == "" && wires.Capped(&w):
		return "", true
	case ok && e.Splice != "":
		return text, true
	case !ok || !known:
		return "", false
	}
	for _, c := range m.FreeFor(t, w) {
		if end := e.Termination + ":" + c; !taken[end] {
			return end, true
		}
	}
	return "", false
}

// Once makes rows that a sheet and a branch settle, and keeps them for the frames
// that follow.
func (m *Model) Once(name string, make func() []Row) []Row {
	if m.onceFor != m.Sheet || m.onceOf != m.Branch {
		m.onceFor, m.onceOf, m.onceRows = m.Sheet, m.Branch, map[string][]Row{}
	}
	rows, ok := m.onceRows[name]
	if !ok {
		rows = make()
		m.onceRows[name] = rows
	}
	return rows
}

// SameLayers reports whether the branch in hand is laid so.
func (m *Model) SameLayers(ls []model.Layer) bool {
	_, b, _ := m.B()
	if len(ls) != len(b.As) {
		return false
	}
	for k := range ls {
		if len(ls[k].Of) != len(b.As[k].Of) || ls[k].Fillers.V != b.As[k].Fillers.V || !m.sameSizes(ls[k].Of, b.As[k].Of) {
			return false
		}
	}
	return true
}

func (m *Model) sameSizes(a, b []string) bool {
	count := map[unit.Millimetre]int{}
	d := func(id string) unit.Millimetre {
		if k, ok := m.Sheet.X.Wire[id]; ok {
			return m.Sheet.Wires[k].Dia.Nominal
		}
		return m.Sheet.Units[m.Sheet.X.Unit[id]].Dia.Nominal
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
