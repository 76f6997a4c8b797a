package runs

import (
	"contralay/calc/query/run"
	"contralay/ui/bench/board/runs/cards"
	"contralay/ui/bench/desk"
)

// What the tests reach for.
var (
	Build    = build
	LayerAt  = cards.LayerAt
	RunSteps = runSteps
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

// Stand puts the run at a piece of a step, as a jump would.
func Stand(m *desk.Model, at, piece int) {
	goTo(m, at)
	state(m).piece = piece
}

// Pieces are the pieces of a step.
func Pieces(m *desk.Model, at int) []run.Piece { return piecesOf(m, runSteps(m)[at]) }

// Piece is the piece in hand.
func Piece(m *desk.Model) int { return state(m).piece }
