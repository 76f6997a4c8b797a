package shield

import (
	"testing"

	"contralay/model/typedtest"
)

// TestTypedTwice compares the limits with NASA-STD-8739.4 11.6, p. 56, typed by another hand, and
// the bodies of the sleeves with those of one-piece solder splices, whose bodies they are remembered
// to be.
func TestTypedTwice(t *testing.T) {
	typed := typedtest.Must(t, "shield")
	for row, got := range map[string]float64{"conductors in one splice": MostShared, "shield end to termination mm": float64(MostStrip),
		"shield end, sensitive mm": float64(MostStripSensitive), "ground lead mm": float64(MostLead),
		"ground lead, sensitive mm": float64(MostLeadSensitive)} {
		if want, ok := typed.Number(row, "value"); !ok || got != want {
			t.Errorf("%s: %v, typed %v", row, got, want)
		}
	}
	sleeves := typedtest.Must(t, "solder_sleeve")
	for k, row := range sleeves.Rows {
		if want, ok := sleeves.Number(row, "over_max_mm"); !ok || float64(bodies[k]) != want {
			t.Errorf("body %s: up to %v, typed %v", row, bodies[k], want)
		}
	}
}
