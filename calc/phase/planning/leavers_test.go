package planning_test

import (
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/model"
)

// What leaves first lies outermost whichever way round the branch is written.
func TestLeaversWhicheverWay(t *testing.T) {
	h := calctest.Load(t, "example.toml")
	turned := h.EditBranch(0, func(b *model.Branch) { b.From, b.To = b.To, b.From })
	a, b := calc.Complete(h, calctest.Catalogue(t), nil), calc.Complete(turned, calctest.Catalogue(t), nil)
	if a.Branches[0].Buried != b.Branches[0].Buried {
		t.Errorf("buried %d, and %d with the branch turned round", a.Branches[0].Buried, b.Branches[0].Buried)
	}
}
