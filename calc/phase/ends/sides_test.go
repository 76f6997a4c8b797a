package ends

import (
	"slices"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Which wires go into which barrel, by hand: those that go on along the branch that the sleeve lies on into one; where that leaves one
// empty,
// or the sleeve lies nowhere, the thickest stands alone, the first of equals.
func TestSidesOfASplice(t *testing.T) {
	for _, c := range []struct {
		name      string
		toward    string
		areas     []unit.SquareMM
		paths     [][]int
		near, far []int
	}{
		{"along T", "T", []unit.SquareMM{1, 1, 2}, [][]int{{0}, {1}, {1, 0}}, []int{1}, []int{0, 2}},
		{"toward nothing", "", []unit.SquareMM{1, 3, 2}, [][]int{{0}, {1}, {1}}, []int{1}, []int{0, 2}},
		{"all along T", "T", []unit.SquareMM{1, 2, 3}, [][]int{{0}, {0}, {0, 1}}, []int{2}, []int{0, 1}},
		{"none along T", "T", []unit.SquareMM{2, 2, 1}, [][]int{{1}, {1}, {1}}, []int{0}, []int{1, 2}},
		{"toward what is not there", "X", []unit.SquareMM{1, 2}, [][]int{{0}, {1}}, []int{1}, []int{0}},
	} {
		h := &model.Harness{Splices: []model.Splice{{ID: "S", Toward: model.Opt[string]{V: c.toward, Set: c.toward != ""}}},
			Branches: []model.Branch{{ID: "T"}, {ID: "L"}}}
		s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Splices: make([]sheet.Splice, 1)}
		for k, area := range c.areas {
			s.Wires = append(s.Wires, sheet.Wire{Path: c.paths[k], Entry: catalogue.Wire{AreaMM2: area}})
			s.Splices[0].Wires = append(s.Splices[0].Wires, k)
		}
		sides(s, 0)
		if out := s.Splices[0]; !slices.Equal(out.Near, c.near) || !slices.Equal(out.Far, c.far) {
			t.Errorf("%s: %v and %v, want %v and %v", c.name, out.Near, out.Far, c.near, c.far)
		}
	}
}
