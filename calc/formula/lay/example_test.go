package lay_test

import (
	"fmt"

	"contralay/calc/formula/lay"
	"contralay/model/unit"
)

// Two neighbours of 1.0 and 1.6 on a core of 5, laid at twelve times over: some
// 2 % more angle than they would take straight.
func ExampleNeighbourAngle() {
	straight := lay.NeighbourAngle(1, 1.6, 2.5, 0)
	laid := lay.NeighbourAngle(1, 1.6, 2.5, 12*(5+2*1.6))
	fmt.Printf("%.4f rad straight, %.4f rad laid\n", straight, laid)
	// Output: 0.4048 rad straight, 0.4127 rad laid
}

// Six equal wires round one stand off it by a hundredth of their diameter.
func ExampleLay() {
	six := []unit.Millimetre{1, 1, 1, 1, 1, 1}
	r := lay.Lay(six, lay.Bed{Crown: 1, Tape: 1}, lay.Laying{Ratio: 12})
	fmt.Printf("over %.3f mm, lift %.4f, lay %.1f mm, %.2f %% longer\n", r.Over, r.Lift, r.Lay, (r.Loss-1)*100)
	// Output: over 3.023 mm, lift 0.0114, lay 36.3 mm, 1.52 % longer
}
