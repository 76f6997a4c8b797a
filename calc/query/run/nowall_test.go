package run_test

import (
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/run"
	"contralay/model"
)

// A diameter over the tube that is no larger than what the tube lies on is no wall at all, and is taught as nought.
func TestNoWallIsNought(t *testing.T) {
	s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "", calctest.CoverText("sheath", "  part = \"AS23053/16 9.5\"\n"))
	h := s.H.EditBuild("a", func(b *model.Build) {
		b.Tubes = []model.Recovered{{Branch: "T", OverMM: s.Branches[0].OverMM - 0.1}}
	})
	found := false
	for _, r := range run.Measured(calc.Build(h, s.Base, nil), "loom") {
		if strings.HasPrefix(r.Group, "wall, ") {
			found = true
			if r.Measured != 0 || r.Predicted <= 0 {
				t.Errorf("%+v", r)
			}
		}
	}
	if !found {
		t.Error("nothing of the wall is taught")
	}
}
