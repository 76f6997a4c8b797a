package paper

import (
	"slices"
	"testing"

	"contralay/calc/formula/plan"
	"contralay/model/unit"
)

// How many each layer of a plan holds: fillers counted round the centre, not in it.
func TestCountsOfAPlan(t *testing.T) {
	layer := func(wires, fillers int) plan.Layer {
		return plan.Layer{Sizes: []unit.Millimetre{1}, N: []int{wires}, Fillers: fillers}
	}
	if got := Counts(plan.Plan{Layers: []plan.Layer{layer(5, 1), layer(10, 1), layer(16, 2)}}); !slices.Equal(got, []int{5, 11, 18}) {
		t.Errorf("%v", got)
	}
}

// A tube's name is its kind and its size; one of a single word is all size, and none is none.
func TestSheathSize(t *testing.T) {
	for part, want := range map[string][2]string{"AS23053/16 9.5": {"9.5", "AS23053/16"}, "own": {"own", ""}, "": {"none", ""},
		"AS23053/4 class 2 6.4": {"6.4", "AS23053/4 class 2"}} {
		if size, kind := sheathSize(part); size != want[0] || kind != want[1] {
			t.Errorf("%q: %q of %q, want %v", part, size, kind, want)
		}
	}
}
