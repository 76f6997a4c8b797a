package plan_test

import (
	"fmt"

	"contralay/calc/formula/plan"
)

// Sixteen wires of 1.09 mm: five round a rod and eleven round those; or, where up
// to three spares are welcome, a full 1-6-12 first.
func ExampleMake() {
	rules := plan.Rules{
		LayRatio: 12, LiftMax: 0.05, LiftTight: 0.08, GapInner: 0.10, GapOuter: 0.15,
		LumpyAt: 1.3, FillerWeight: 0.1, SpareGain: 0.15,
	}
	for _, p := range plan.Make(plan.Ask{Sizes: []plan.Size{{D: 1.09, N: 16}}, Spares: 3, Rules: rules}) {
		fmt.Printf("%.3f mm, %d filler, %d spares:", p.Over, p.Fillers, p.Spares)
		for _, l := range p.Layers {
			fmt.Print(" ", l.Count())
		}
		fmt.Println()
	}
	// Output:
	// 5.475 mm, 0 filler, 3 spares: 1 6 12
	// 5.124 mm, 1 filler, 0 spares: 5 11
}
