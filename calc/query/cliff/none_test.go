package cliff

import (
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/formula/plan"
	"contralay/calc/query/offer"
	"contralay/model"
)

// Of no pieces there is no commonest size; of pieces it is the one there are most of, of two the thinner, called by its diameter where
// it has
// no size; a layer that holds some of them bounds how few there may be.
func TestTheCommonestSize(t *testing.T) {
	cat := calctest.Catalogue(t)
	if a, ok := OfPieces(plan.Ask{}, nil, model.Rules{}, cat); ok || a.at != nil {
		t.Errorf("%+v", a)
	}
	for _, c := range []struct {
		pieces     []offer.Piece
		held       int
		size       string
		now, least int
	}{
		{[]offer.Piece{{Size: "22", OverMM: 1.09, N: 12}, {Size: "16", OverMM: 1.8, N: 3}}, 0, "22", 12, 4},
		{[]offer.Piece{{OverMM: 1.8, N: 9}, {OverMM: 1.09, N: 9}}, 0, "1.09 mm", 9, 1},
		{[]offer.Piece{{Size: "22", OverMM: 1.09, N: 3}}, 0, "22", 3, 1},
		{[]offer.Piece{{Size: "22", OverMM: 1.09, N: 10}, {Size: "22", OverMM: 1.09, N: 2}, {Size: "16", OverMM: 1.8, N: 11}}, 0, "22",
			12, 4},
		{[]offer.Piece{{Size: "22", OverMM: 1.09, N: 12}, {Size: "16", OverMM: 1.8, N: 3}}, 7, "22", 12, 7},
	} {
		ask := plan.Ask{}
		if c.held > 0 {
			ask.Held = []plan.Held{{Sizes: []plan.Size{{D: 1.8, N: 9}, {D: 1.09, N: c.held}}}}
		}
		a, ok := OfPieces(ask, c.pieces, model.Rules{}, cat)
		if !ok || a.Size != c.size || a.Now != c.now || a.Least != c.least || a.Most != c.now+Reach || a.What != Wires {
			t.Errorf("%+v: %s, %d from %d to %d", c.pieces, a.Size, a.Now, a.Least, a.Most)
		}
	}
}
