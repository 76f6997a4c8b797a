package cards

import (
	"contralay/calc/query/run"
	"contralay/calc/sheet"
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
