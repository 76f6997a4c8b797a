package bundle

import (
	"testing"

	"contralay/calc/sheet"
)

// A component is buried where one further out leaves later: counted by hand from the centre outward, each as the number of
// the branch in which it leaves; a filler never leaves and buries nothing.
func TestBuried(t *testing.T) {
	layers := func(rings ...[]int) (out []sheet.Layer) {
		for _, r := range rings {
			var l sheet.Layer
			for _, leaves := range r {
				m := sheet.Member{Leaves: leaves}
				if leaves > 9 {
					m.Kind = sheet.OfFiller
				}
				l.Members = append(l.Members, m)
			}
			out = append(out, l)
		}
		return out
	}
	for k, c := range []struct {
		rings [][]int
		want  int
	}{
		{[][]int{{2}, {1, 1}}, 0},
		{[][]int{{1}, {2, 1}}, 1},
		{[][]int{{1}, {2}, {0}}, 1},
		{[][]int{{0, 0}, {1}, {2}}, 3},
		{[][]int{{1}, {10}}, 0},
	} {
		if got := buried(layers(c.rings...)); got != c.want {
			t.Errorf("%d: %v: %d, want %d", k, c.rings, got, c.want)
		}
	}
}
