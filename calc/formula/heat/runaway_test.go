package heat

import (
	"math/rand/v2"
	"slices"
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

// Where nothing is steady at the currents entered, or only far above the ratings, a limit is still what it is everywhere else: entered
// in the place of a disc's own current, it brings that disc to its rating, never above and no more than 5 K below. Where it is 0, the
// others have no steady temperature, or bring the disc to its rating by themselves. So a wire that runs away by its own current alone has
// the limit that it has with any other.
func TestLimitsOfARunaway(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 7))
	own, none, warm, hot := 0, 0, 0, 0
	for n := range 150 {
		s := Section{Discs: round(0.81, 0.48, 1, 6, 12)[:3+n%17], InsideMM: 0.81 * 9, Ambient: 20}
		for i := range s.Discs {
			s.Discs[i].Ohm, s.Discs[i].Rated = 134, 150
			s.Discs[i].Amps = []unit.Ampere{0, 0, 0.5, 1, 2, 3}[rng.IntN(6)]
		}
		for range 1 + n%3/2 { // one in most of them, or two
			s.Discs[rng.IntN(len(s.Discs))].Amps = unit.Ampere(8 + 24*rng.Float64())
		}
		rays, ok := Trace(s)
		if !ok {
			t.Fatal("no rays")
		}
		limits := rays.Limits
		if r, steady := rays.Solve(s); steady {
			if slices.Max(r.Discs) < 300 {
				continue
			}
			limits, hot = r.Limits, hot+1
		}
		for i, a := range limits(s) {
			at := s
			at.Discs = slices.Clone(s.Discs)
			at.Discs[i].Amps = a
			b, steady := rays.Solve(at)
			switch {
			case a == 0 && !steady:
				none++
			case a == 0 && b.Discs[i] >= 145:
				warm++
			case a > 0 && steady && b.Discs[i] <= 150+1e-2 && b.Discs[i] >= 145:
				own++
			default:
				t.Errorf("section %d: disc %d may carry %.3f A, steady %v", n, i, float64(a), steady)
				if steady {
					t.Errorf("and comes to %.2f", float64(b.Discs[i]))
				}
			}
		}
	}
	if own < 20 || none < 200 || warm < 50 || hot < 10 {
		t.Errorf("%d have limits, %d none, %d are warm by the others; %d sections are steady above 300 C", own, none, warm, hot)
	}
}
