package explain

import (
	"maps"
	"slices"
	"testing"

	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model"
)

// What has a say in a figure, by hand: of a branch that branch, of a wire those that it runs through, of its conductor in a branch that
// branch; of anything else, such as a connector, every branch.
func TestBranchesBehindAFigure(t *testing.T) {
	h := &model.Harness{Branches: []model.Branch{{ID: "T"}, {ID: "L"}, {ID: "M"}}, Wires: []model.Wire{{ID: "a"}, {ID: "b"}, {ID: "c"}},
		Terminations: []model.Termination{{ID: "P"}}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Branches: make([]sheet.Branch, 3), Wires: []sheet.Wire{{Path: []int{0, 2}},
		{Path: []int{1}}, {}}}
	for _, c := range []struct {
		f    why.Figure
		want []int
	}{
		{why.Figure{What: "branch.over", Of: "T"}, []int{0}}, {why.Figure{What: "branch.over", Of: "M"}, []int{2}},
		{why.Figure{What: "conductor.hot", Of: "L", Part: "a"}, []int{1}}, {why.Figure{What: "wire.cut", Of: "a"}, []int{0, 2}},
		{why.Figure{What: "wire.cut", Of: "b"}, []int{1}}, {why.Figure{What: "wire.cut", Part: "a"}, []int{0, 2}},
		{why.Figure{What: "wire.cut", Of: "c"}, nil}, {why.Figure{What: "space", Of: "P"}, []int{0, 1, 2}},
		{why.Figure{What: "mass"}, []int{0, 1, 2}},
	} {
		runs := runsThrough(s, c.f)
		if got := slices.Sorted(maps.Keys(runs)); !slices.Equal(got, c.want) || len(got) > 0 && !runs[got[0]] {
			t.Errorf("%+v: %v, want %v", c.f, got, c.want)
		}
	}
}
