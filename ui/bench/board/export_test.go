package board

import (
	"contralay/ui/bench/desk"
)

// What the tests reach for.
var (
	Build       = build
	LayerAt     = layerAt
	Raised      = raised
	RevisionRow = revisionRow
	RunSteps    = runSteps
)

// At is the step in hand.
func At(m *desk.Model) int { return state(m).at }
