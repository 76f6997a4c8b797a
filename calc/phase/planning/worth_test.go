package planning

import (
	"testing"

	"contralay/calc/formula/plan"
	"contralay/calc/sheet"
	"contralay/model/unit"
)

// What is worth having is ranked in a list of its own: the options that were handed in stay as they stood. One that leaves a
// limit comes after all that keep it, one beyond 1.35 of the least cost is left out.
func TestWorthHavingTouchesNothing(t *testing.T) {
	of := func(cost unit.Ratio, over unit.Millimetre) sheet.Option {
		return sheet.Option{Plan: plan.Plan{Cost: cost, Over: over}, Cost: cost}
	}
	if got := len(worthHaving([]sheet.Option{of(10, 10), of(13.5, 9), of(13.6, 8)})); got != 2 {
		t.Errorf("of 10, 13.5 and 13.6, %d are worth having", got)
	}
	in := []sheet.Option{of(12, 9), of(10, 10), of(14, 8)}
	out := worthHaving(in)
	if in[0].Cost != 12 || in[1].Cost != 10 || in[2].Cost != 14 {
		t.Errorf("the options handed in are in another order: %v %v %v", in[0].Cost, in[1].Cost, in[2].Cost)
	}
	if len(out) == 0 || out[0].Cost != 10 {
		t.Errorf("the cheapest is not the first: %+v", out)
	}
	for _, o := range out {
		if o.Cost > 13.5 {
			t.Errorf("%v costs more than 1.35 of 10", o.Cost)
		}
	}
}
