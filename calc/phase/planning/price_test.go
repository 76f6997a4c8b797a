package planning

import (
	"math"
	"testing"

	"contralay/calc/formula/plan"
	"contralay/calc/sheet"
	"contralay/model/unit"
)

// A layer that parts costs as much as a leaver that is buried, where an option of the same diameter
// parts none and keeps every limit; else nothing.
func TestPriceOfAnOption(t *testing.T) {
	option := func(over float64, buried, parted int, relaxed plan.Relaxed) sheet.Option {
		return sheet.Option{Plan: plan.Plan{Cost: 7, Over: unit.Millimetre(over), Relaxed: relaxed}, Buried: buried, Parted: parted}
	}
	all := []sheet.Option{option(5.475, 0, 2, plan.Keeps), option(5.4751, 1, 0, plan.Keeps), // the same to 0.01 mm
		option(5.6, 1, 3, plan.Keeps), option(5.9, 0, 1, plan.Keeps), option(5.9, 0, 0, plan.Gaps)}
	for range 2 { // it may be asked again
		price(all, 0.2)
		for k, want := range []float64{7.4, 7.2, 7.2, 7, 7} {
			if math.Abs(float64(all[k].Cost)-want) > 1e-9 {
				t.Errorf("option %d costs %v, want %v", k, all[k].Cost, want)
			}
		}
	}
	if got := worthHaving([]sheet.Option{option(5.475, 0, 1, plan.Keeps), option(5.475, 0, 0, plan.Keeps),
		option(5.6, 0, 0, plan.Keeps)}); len(got) != 2 {
		t.Errorf("%d options worth having: a thicker one is not, whatever it parts", len(got))
	}
}
