package cover

import (
	"math"
	"testing"
)

// What is beyond numbers when squared is not known; a sleeve on it otherwise: on 3 mm, of a wall of 1 mm over a bore of 3 mm,
// √(9 + 4·1·(3 + 1)) = 5 mm.
func TestOverBeyondNumbers(t *testing.T) {
	if over, ok := RecoveredOverAt(Tube{SuppliedMM: 1e300, RecoveredMM: 1, WallMM: 1}, 1e200, 1); ok || over != 0 {
		t.Errorf("%v", over)
	}
	if over, ok := RecoveredOverAt(Tube{SuppliedMM: 12, RecoveredMM: 3, WallMM: 1}, 3, 1); !ok || math.Abs(float64(over)-5) > 1e-12 {
		t.Errorf("%v, by hand 5", over)
	}
}
