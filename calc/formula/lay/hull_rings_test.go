package lay

import (
	"math"
	"math/rand/v2"
	"testing"
)

// around is the length of a hull by adding up its support over every direction (Cauchy): so many directions that what is missed is a
// hundred-thousandth.
func around(ds []disc) float64 {
	const n = 3600
	sum := 0.0
	for k := range n {
		sin, cos := math.Sincos(2 * math.Pi * float64(k) / n)
		reach := math.Inf(-1)
		for _, d := range ds {
			reach = math.Max(reach, d.x*cos+d.y*sin+d.r)
		}
		sum += reach
	}
	return sum * 2 * math.Pi / n
}

// Hulls of three to nine discs round a bed, at even and uneven angles with gaps of more than half a turn, some far off, some that the
// bed hides.
func TestHullsRoundABed(t *testing.T) {
	r := rand.New(rand.NewPCG(2, 2))
	var h hull
	for k := range 60 {
		n := 3 + r.IntN(7)
		span := 2 * math.Pi
		if k%3 == 1 {
			span *= 0.3 + 0.6*r.Float64() // they lie on one side
		}
		bed := 0.3 + 2*r.Float64()
		var ds []disc
		at := 2 * math.Pi * r.Float64()
		for i := range n {
			size := 0.05 + 0.8*r.Float64()
			far := bed + size*(0.8+1.2*r.Float64())
			phi := at + span*(float64(i)+0.5*r.Float64())/float64(n)
			sin, cos := math.Sincos(phi)
			ds = append(ds, disc{far * cos, far * sin, size})
		}
		want := around(append([]disc{{0, 0, bed}}, ds...))
		if got := h.ring(ds, bed); math.Abs(got-want) > 2e-4*want {
			t.Errorf("%d: round %+v on %v it is %v, by its support %v", k, ds, bed, got, want)
		}
		if got, want := hullPerimeter(ds), around(ds); math.Abs(got-want) > 2e-4*want {
			t.Errorf("%d: round %+v it is %v, by its support %v", k, ds, got, want)
		}
	}
	if got := h.ring(nil, 1.5); math.Abs(got-3*math.Pi) > 1e-12 {
		t.Errorf("a bed alone: %v", got)
	}
}
