package current_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// bound is the limit of the first wire of a bundle of 20 AWG in air of a temperature: so
// many of them carry amps, the rest nothing.
func bound(t *testing.T, air float64, loaded, all int, amps float64) sheet.Limit {
	t.Helper()
	wires := append(calctest.Repeated(loaded, fmt.Sprintf("20 %.2f", amps)), calctest.Repeated(all-loaded, "20 0.0")...)
	return calctest.Carrying(t, air, "", wires, nil, "").Wires[0].Bound.V
}

// Where the public tables end, the last point is held: 40 wires do not suddenly carry more in
// air of 71 °C than in 70, nor 37 more than 35, nor one of 24 more because more of them are
// loaded; and none carries more than alone.
func TestLimitsHaveNoCliff(t *testing.T) {
	last := sheet.Limit{Amps: 1000}
	for _, air := range []float64{60, 69, 70, 70.5, 71, 80, 100, 130} {
		got := bound(t, air, 1, 40, 0.5)
		if alone := bound(t, air, 1, 1, 0.5); got.Amps > last.Amps || got.Amps > alone.Amps || got.Amps <= 0 {
			t.Errorf("40 wires at %v C: %v A (%s) after %v; alone %v", air, got.Amps, got.Where, last.Amps, alone.Amps)
		}
		last = got
	}
	last = sheet.Limit{Amps: 1000}
	for _, n := range []int{18, 19, 20, 21, 32, 33, 34, 35, 36, 37, 60} {
		got := bound(t, 95, 1, n, 9)
		if got.Amps > last.Amps || strings.HasPrefix(got.Where, "contact") {
			t.Errorf("%d wires: %v A (%s) after %v", n, got.Amps, got.Where, last.Amps)
		}
		last = got
	}
	last = sheet.Limit{Amps: 1000}
	for loaded := 1; loaded <= 24; loaded++ {
		got := bound(t, 40, loaded, 24, 4)
		if got.Amps > last.Amps {
			t.Errorf("%d of 24 loaded: %v A (%s) after %v", loaded, got.Amps, got.Where, last.Amps)
		}
		last = got
	}
}

// The loading is compared with what the wires may carry at their height. Eight 14 AWG wires
// for 150 °C in 40 °C of air: 47 A × √(110/150) = 40.25 A each in free air (AC 43.13-1B p.
// 11-27). Eight times 10.5 A are 84 A: at sea level under 40 % × 0.6675 × 322.0 = 86.0 A, so
// the factor is 0.6675; at 20,000 ft, × 0.91, over 78.2 A, so it is 0.595.
func TestLoadingAtHeight(t *testing.T) {
	s := calctest.Carrying(t, 40, "", calctest.Repeated(8, "14 10.5"), nil, "")
	for height, want := range map[unit.Metre]float64{0: 40.25 * 0.6675, 6096: 40.25 * 0.91 * 0.595} {
		h := *s.H
		h.Rules.AltitudeM = model.Some(height)
		at := calc.Complete(&h, s.Cat, nil)
		found := false
		for _, l := range at.Wires[0].Limits {
			if strings.HasPrefix(l.Where, "free air") {
				found = true
				if math.Abs(float64(l.Amps)-want) > 0.01 {
					t.Errorf("%v m: %v A, want %v (%s)", height, l.Amps, want, l.Where)
				}
			}
		}
		if !found {
			t.Errorf("%v m: no published limit among %+v", height, at.Wires[0].Limits)
		}
	}
}

// A loom of no trouble says nothing of limits, and none of them is unknown.
func TestEveryBoundApplies(t *testing.T) {
	s := calctest.Carrying(t, 40, "20", calctest.Repeated(7, "22 1.0"), nil, "")
	var where []string
	for _, l := range s.Wires[0].Limits {
		where = append(where, l.Where)
	}
	for _, want := range []string{"contact A:0", "contact Z:0", "free air", "heat in T1", "the wire alone in the air of T1"} {
		if !strings.Contains(strings.Join(where, "; "), want) {
			t.Errorf("no %q among %q", want, where)
		}
	}
}
