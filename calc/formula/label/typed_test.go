package label

import (
	"strconv"
	"testing"

	"contralay/model/typedtest"
)

// TestSleevesTypedTwice compares the sleeves with the table that another hand typed.
func TestSleevesTypedTwice(t *testing.T) {
	table := typedtest.Must(t, "tube_marker")
	if len(table.Rows) != len(sleeves) {
		t.Fatalf("%d sizes, %d here", len(table.Rows), len(sleeves))
	}
	for _, s := range sleeves {
		row := strconv.FormatFloat(float64(s.SuppliedMM), 'f', -1, 64)
		for column, got := range map[string]float64{"rec_mm": float64(s.RecoveredMM), "wall_mm": float64(s.WallMM)} {
			if want, ok := table.Number(row, column); !ok || got != want {
				t.Errorf("%s, %s: %v, typed %v", row, column, got, want)
			}
		}
	}
}
