package explain_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/why/power"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Higher up less is allowed, by both methods, and everything is warmer.
func TestAltitude(t *testing.T) {
	was := calctest.Carrying(t, 60, "", calctest.Repeated(7, "14 6.0"), nil, "")
	for _, m := range []unit.Metre{800, 1600, 3000} {
		h := *was.H
		h.Rules.AltitudeM = model.Some(m)
		s := calc.Complete(&h, was.Cat, nil)
		a, b := power.LimitsOf(was, 0), power.LimitsOf(s, 0)
		for n := range b {
			if !(b[n].Amps < a[n].Amps) {
				t.Errorf("%v m: %s %v A, below %v", m, b[n].Where, b[n].Amps, a[n].Amps)
			}
		}
		if !(s.Wires[0].HottestC.V > was.Wires[0].HottestC.V) {
			t.Errorf("%v m: %v °C", m, s.Wires[0].HottestC.V)
		}
		was = s
	}
	// 20,000 ft is 0.91 of the sea's (AC 43.13-1B p. 11-27).
	sea := calctest.Carrying(t, 60, "", calctest.Repeated(7, "14 6.0"), nil, "")
	h := *sea.H
	h.Rules.AltitudeM = model.Some[unit.Metre](6096)
	s := calc.Complete(&h, sea.Cat, nil)
	table := func(s *sheet.Sheet) float64 {
		for _, l := range power.LimitsOf(s, 0) {
			if strings.HasPrefix(l.Where, "free air") {
				return float64(l.Amps)
			}
		}
		return 0
	}
	if got := table(s) / table(sea); math.Abs(got-0.91) > 1e-9 {
		t.Errorf("20,000 ft: %v", got)
	}
	// Past its last point, 60,000 ft, the curve is held.
	h.Rules.AltitudeM = model.Some[unit.Metre](18_288)
	last := table(calc.Complete(&h, sea.Cat, nil))
	h.Rules.AltitudeM = model.Some[unit.Metre](30_000)
	if s = calc.Complete(&h, sea.Cat, nil); table(s) != last || last <= 0 {
		t.Errorf("30 km up: %v, want the %v of 60,000 ft", fmt.Sprint(power.LimitsOf(s, 0)), last)
	}
}
