package lay

import "math/rand/v2"

// rnd is a repeatable source of cases: the same seed, the same cases, on every run.
type rnd struct{ *rand.Rand }

func newRand(seed uint64) rnd { return rnd{rand.New(rand.NewPCG(seed, 1))} }

func (r rnd) between(lo, hi float64) float64 { return lo + (hi-lo)*r.Float64() }

// sizes draws n diameters; about half of them repeat an earlier one.
func (r rnd) sizes(n int, lo, hi float64) []mm {
	out := make([]mm, n)
	for i := range out {
		if i > 0 && r.IntN(2) == 0 {
			out[i] = out[r.IntN(i)]
			continue
		}
		out[i] = mm(r.between(lo, hi))
	}
	return out
}
