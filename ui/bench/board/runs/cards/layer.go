package cards

import (
	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
)

// LayerAt is the layer of a step; false where the sheet has it no more.
func LayerAt(m *desk.Model, s run.RunStep) (*sheet.Layer, bool) {
	i, ok := m.Sheet.Index.Branch[s.Of]
	if !ok || s.Layer >= len(m.Sheet.Branches[i].Layers) {
		return nil, false
	}
	return &m.Sheet.Branches[i].Layers[s.Layer], true
}

// SheetOver is what the sheet has for what a step measures.
func SheetOver(m *desk.Model, s run.RunStep) (unit.Millimetre, bool) {
	l, ok := LayerAt(m, s)
	switch {
	case !ok:
		return 0, false
	case s.Bare:
		return l.BareMM(), true
	}
	return l.OverMM, true
}
