package learn

import (
	"math"
	"testing"
)

// Readings that nobody can be sure of to 100 % have a mean and a spread, and no bounds: 1 and 3 have the mean 2 and the
// spread √2.
func TestCertaintyHasNoBounds(t *testing.T) {
	l := Lesson{Confidence: 1}
	l.judge([]one{{d: 1}, {d: 3}})
	if l.N != 2 || l.Bias != 2 || math.Abs(l.Spread-math.Sqrt2) > 1e-12 || l.Bounded || l.Low != 0 || l.High != 0 || l.Matters {
		t.Errorf("%+v", l)
	}
	if limit, ok := grubbs(5, 0); ok || limit != 0 {
		t.Errorf("a limit of an outlier that never is one: %v", limit)
	}
}

// A denominator of nothing becomes next to nothing, any other stays.
func TestKeptOffZero(t *testing.T) {
	for v, want := range map[float64]float64{0: 1e-300, 1e-301: 1e-300, -1e-301: 1e-300, 1e-300: 1e-300, 2e-300: 2e-300,
		-2e-300: -2e-300, -1: -1} {
		if got := apart(v); got != want {
			t.Errorf("%v: %v, want %v", v, got, want)
		}
	}
}

// Two spells of 12 and 6 minutes for 4 and 2 pieces are 3 minutes each, without a spread. A group of which no spell counts is told
// with what was skipped, and no pace.
func TestGroupOfNothing(t *testing.T) {
	got := Paces([]Spell{{Group: "b", Minutes: -1, Pieces: 1}, {Group: "b", Minutes: 1, Pieces: 0}, {Group: "a", Minutes: 12, Pieces: 4},
		{Group: "a", Minutes: 6, Pieces: 2}}, Options{})
	if len(got) != 2 || got[0].Group != "b" || got[0].Skipped != 2 || got[0].N != 0 || got[0].Each != 0 || got[0].Enough {
		t.Fatalf("%+v", got)
	}
	if p := got[1]; p.N != 2 || p.Pieces != 6 || p.Minutes != 18 || p.Each != 3 || p.Spread != 0 || p.Skipped != 0 {
		t.Errorf("%+v", p)
	}
}
