package learn

import (
	"math"
	"strconv"
	"testing"

	"contralay/model/typedtest"
)

// TestGrubbsTypedTwice compares the limit of Grubbs' test on both sides at 0.05 with a published
// table of 28 numbers of readings. It is printed to four figures after the point; up to 0.0006 of
// that are the table's own, which is older than the computers.
func TestGrubbsTypedTwice(t *testing.T) {
	typed := typedtest.Must(t, "grubbs")
	for _, row := range typed.Rows {
		n, _ := strconv.Atoi(row)
		want, _ := typed.Number(row, "limit")
		if got, ok := Grubbs(n); !ok || math.Abs(got-want) > 0.0006 {
			t.Errorf("%d readings: %.4f, printed %v", n, got, want)
		}
	}
	if len(typed.Rows) != 28 {
		t.Errorf("%d numbers of readings", len(typed.Rows))
	}
}
