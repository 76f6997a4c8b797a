package cover_test

import (
	"math"
	"testing"

	"contralay/calc/formula/cover"
	"contralay/model/unit"
)

func gram[N int | float64](v N) unit.GramPerMetre { return unit.GramPerMetre(v) }

func TestCutLength(t *testing.T) {
	rows := []struct {
		name     string
		finished mm
		change   unit.Ratio
		step     mm
		want     float64
	}{
		{"450 / 0.90 = 500, on the step", 450, 0.10, 10, 500},
		{"451 / 0.90 = 501.1, up", 451, 0.10, 10, 510},
		{"400 / 0.95 = 421.05, up", 400, 0.05, 10, 430},
		{"keeps its length", 400, 0, 10, 400},
		{"unrounded: 451 / 0.90", 451, 0.10, 0, 501.11111},
		{"nothing", 0, 0.10, 10, 0},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			got, ok := cover.CutLength(r.finished, r.change, r.step)
			if !ok {
				t.Fatal("no answer")
			}
			near(t, "cut", float64(got), r.want, 1e-5)
			if math.Signbit(float64(got)) {
				t.Error("minus nothing")
			}
		})
	}
	nan := math.NaN()
	for name, r := range map[string]struct {
		finished mm
		change   unit.Ratio
		step     mm
	}{
		"negative": {-1, 0.1, 10}, "shrinks to nothing": {100, 1, 10}, "grows": {100, -0.1, 10},
		"length not a number": {mm(nan), 0.1, 10}, "change not a number": {100, unit.Ratio(nan), 10},
		"step not a number": {100, 0.1, mm(nan)}, "endless": {mm(math.Inf(1)), 0.1, 10},
	} {
		if got, ok := cover.CutLength(r.finished, r.change, r.step); ok || got != 0 {
			t.Errorf("%s: %g", name, got)
		}
	}
}
