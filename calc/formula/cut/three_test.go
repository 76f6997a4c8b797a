package cut_test

import (
	"testing"

	"contralay/calc/formula/cut"
	"contralay/model/unit"
)

// Paths of 300, 650 and 3000 mm without zones, lay loss 2.2 %, loops 16 and 8, tails 100
// and 75, steps of 10: cut 510, 870, 3270, worked out by hand.
func TestCutOfThree(t *testing.T) {
	for path, want := range map[unit.Millimetre]unit.Millimetre{300: 510, 650: 870, 3000: 3270} {
		l, ok := cut.Of(cut.Wire{Pieces: []cut.Piece{{LengthMM: path, LaidMM: path, Loss: 1.022}}, From: cut.End{LoopMM: 16, TailMM: 100},
			To: cut.End{LoopMM: 8, TailMM: 75}, StepMM: 10})
		if !ok || l.CutMM != want {
			t.Errorf("%v mm: cut %v, want %v", path, l.CutMM, want)
		}
	}
}
