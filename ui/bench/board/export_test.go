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

// OpenPoints are what the end of the run lists.
func OpenPoints(m *desk.Model) []string {
	var out []string
	for _, o := range openPoints(m) {
		out = append(out, o.says)
	}
	return out
}
