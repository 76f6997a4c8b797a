package join

import "testing"

// Of several parallel splices that take all wires the first one is named, and no other.
func TestFirstParallelThatFits(t *testing.T) {
	parts := []Part{{ID: "small", Parallel: true, Least: 100, Most: 500}, {ID: "right", Parallel: true, Least: 1000, Most: 3000},
		{ID: "too", Parallel: true, Least: 1500, Most: 4000}}
	cures := Cures(Side{1200}, Side{700, 700}, nil, parts) // 2600 in all
	if len(cures) != 1 || len(cures[0].Parts) != 1 || cures[0].Parts[0] != "right" {
		t.Errorf("%+v", cures)
	}
}
