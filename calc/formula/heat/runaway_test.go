package heat

import (
	"math/rand/v2"
	"testing"

	"contralay/model/unit"
)

// Close to where a bundle runs away, one wire that carries more lets no other carry more: not where
// the others alone bring a wire above its rating, and not where the entered currents have no steady
// temperature in the state of a lesser heat. Read between levels a limit may be off by as much as
// half a per cent of the heat of the wire alone.
func TestLimitsNearRunaway(t *testing.T) {
	const bore = 0.81 * 9
	rng := rand.New(rand.NewPCG(7, 2026))
	hot := 0
	for n := range 400 {
		s := Section{Discs: round(0.81, 0.48, 1, 6, 12, 15), InsideMM: bore, Ambient: -20}
		for i := range s.Discs {
			s.Discs[i].Ohm, s.Discs[i].Rated = 134, 150
			s.Discs[i].Amps = []unit.Ampere{0, 0, 0, 2.5, 4, 7}[rng.IntN(6)]
		}
		rays, ok := Trace(s)
		if !ok {
			t.Fatal("no rays")
		}
		limits := func() ([]unit.Ampere, bool) {
			r, ok := rays.Solve(s)
			if !ok {
				return nil, false
			}
			for _, c := range r.Discs {
				if c > 150 {
					hot++
					break
				}
			}
			return r.Limits(s), true
		}
		was, ok := limits()
		if !ok {
			continue
		}
		k := rng.IntN(len(s.Discs))
		s.Discs[k].Amps += []unit.Ampere{0.1, 1, 3}[rng.IntN(3)]
		is, ok := limits()
		if !ok {
			continue
		}
		alone := Alone(0.81, 0.48, 134, -20, 150, 0)
		for i := range is {
			if i != k && is[i]*is[i] > was[i]*was[i]+0.005*alone*alone {
				t.Errorf("section %d: more in %d, and disc %d may carry %.4f A, was %.4f", n, k, i, float64(is[i]), float64(was[i]))
			}
		}
	}
	if hot < 50 {
		t.Errorf("only %d of the sections were hot", hot)
	}
}
