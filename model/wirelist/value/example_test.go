package value_test

import (
	"fmt"

	"contralay/model/wirelist/value"
)

// Parts of a gauge column as lists have them.
func ExampleParseGauge() {
	for _, cell := range []string{"AWG22", "0,5", "2x24 AWG shielded", "M22759/32-22-9", "thick"} {
		g, ok := value.ParseGauge(cell, value.BareAWG, value.MarkUnknown)
		fmt.Println(g, ok)
	}
	// Output:
	// 22 AWG true
	// 0.5 mm² true
	// 2 x 24 AWG shielded true
	// AS22759/32-22-9 true
	//  false
}
