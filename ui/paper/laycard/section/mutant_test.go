package section

import "testing"

// What numbers outside take round a bundle is the leader, two gaps and the longest number; nothing more where no piece is
// numbered there.
func TestSpokeMarginByHand(t *testing.T) {
	a := Asked{Pieces: []Piece{{ID: "1", Position: 1, InHand: false}}}
	if got := a.spokeMargin(inDiscs); got != leadMM+2*ringGapMM {
		t.Errorf("no number: %v, want %v", got, leadMM+2*ringGapMM)
	}
	a.Pieces = []Piece{{ID: "1", InHand: true}, {ID: "1234", InHand: true}}
	if got, want := a.spokeMargin(inDiscs), leadMM+2*ringGapMM+wide("1234", NumberSize); got != want {
		t.Errorf("%v, want %v", got, want)
	}
}
