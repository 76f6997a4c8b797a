package planning_test

import (
	"fmt"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
)

// However many lay-ups are tried, so many are kept, those of the branches as they are among them;
// what an earlier sheet has is not touched.
func TestProposalsDoNotPileUp(t *testing.T) {
	s := calctest.Laid(t, "example")
	before, was := s.Proposals, len(s.Proposals)
	if was == 0 {
		t.Fatal("nothing is proposed in the example")
	}
	for k := range 1000 {
		planning.Adopt(s, fmt.Sprint("tried ", k), sheet.Proposal{})
	}
	if n := len(s.Proposals); n > 300 {
		t.Errorf("%d are kept", n)
	}
	if len(before) != was {
		t.Error("those of the earlier sheet changed")
	}
	again := calc.Build(s.H, s.Base, s)
	for i := range again.Branches {
		if again.Branches[i].Waiting {
			t.Errorf("branch %d is to be planned again", i)
		}
		if _, kept := before[bundle.PlanKey(s, i)]; kept {
			if _, still := s.Proposals[bundle.PlanKey(s, i)]; !still {
				t.Errorf("the proposal of branch %d is gone", i)
			}
		}
	}
}
