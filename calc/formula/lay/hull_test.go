package lay

import (
	"math"
	"testing"

	"contralay/model/shorttest"
)

// cauchy is the length of a convex hull as the integral of its support function
// over all directions (Cauchy's formula). The trapezoid rule over n directions
// errs by a few 1/n² at the corners of the support function.
func cauchy(ds []disc, n int) float64 {
	sum := 0.0
	for k := range n {
		s, c := math.Sincos(2 * math.Pi * float64(k) / float64(n))
		h := math.Inf(-1)
		for _, d := range ds {
			h = math.Max(h, d.x*c+d.y*s+d.r)
		}
		sum += h
	}
	return sum * 2 * math.Pi / float64(n)
}

const (
	directions = 20_000
	hullTol    = 1e-6 // of the length: what 20 000 directions leave, measured 1e-7
)

func TestHullKnown(t *testing.T) {
	for _, c := range []struct {
		name string
		ds   []disc
		want float64
	}{
		{"nothing", nil, 0},
		{"one", []disc{{3, -2, 1.5}}, 3 * math.Pi},
		{"two of one", []disc{{0, 0, 1}, {4, 0, 1}}, 2*math.Pi + 8},
		{"square of four", []disc{{0, 0, 1}, {2, 0, 1}, {2, 2, 1}, {0, 2, 1}}, 2*math.Pi + 8},
		{"one inside another", []disc{{0, 0, 3}, {1, 0, 1}}, 6 * math.Pi},
		{"three in a row", []disc{{0, 0, 1}, {2, 0, 1}, {4, 0, 1}}, 2*math.Pi + 8},
		{"the same twice", []disc{{1, 1, 1}, {1, 1, 1}}, 2 * math.Pi},
	} {
		if got := hullPerimeter(c.ds); !near(got, c.want, 1e-9) {
			t.Errorf("%s: %.9f, want %.9f", c.name, got, c.want)
		}
	}
}

func TestHullOfAny(t *testing.T) {
	rng := newRand(23)
	for range 150 {
		ds := make([]disc, 1+rng.IntN(12))
		for i := range ds {
			ds[i] = disc{rng.between(-4, 4), rng.between(-4, 4), rng.between(0.1, 2)}
		}
		got, want := hullPerimeter(ds), cauchy(ds, directions)
		if math.Abs(got-want) > hullTol*want {
			t.Errorf("%v: %.8f, by support %.8f", ds, got, want)
		}
	}
}

// The hull of a laid layer and its bed, by the quick scan, by wrapping and by
// support. Rings are full, loose, of one to twelve, lumpy and with lost wires.
func TestRingHull(t *testing.T) {
	rng := newRand(29)
	for k := range shorttest.Rounds(250) {
		d := rng.sizes(1+k%12, []float64{0.15, 0.6, 0.9}[k%3], []float64{3, 3, 1.2}[k%3])
		bed := rng.between(0.5, 8)
		stand := bed / 2 * rng.between(1, 1.15)
		ring := LayZigZag(d, Bed{mm(2 * stand), mm(bed)}, Laying{Ratio: 12})
		order := inZigZag(d)
		ds := make([]disc, len(d))
		for i := range ds {
			s, c := math.Sincos(float64(ring.Angles[i]))
			R := float64(ring.Radii[i])
			ds[i] = disc{R * c, R * s, float64(order[i]) / 2}
		}
		all := append(append([]disc{}, ds...), disc{0, 0, bed / 2})
		want := cauchy(all, directions)
		if got := hullPerimeter(all); math.Abs(got-want) > hullTol*want {
			t.Errorf("%v on %.3f: wrapped %.8f, by support %.8f", order, bed, got, want)
		}
		if got := new(hull).ring(ds, bed/2); math.Abs(got-want) > hullTol*want {
			t.Errorf("%v on %.3f: scanned %.8f, by support %.8f", order, bed, got, want)
		}
		if got := float64(ring.Tape) * math.Pi; math.Abs(got-want) > hullTol*want {
			t.Errorf("%v on %.3f: laid %.8f, by support %.8f", order, bed, got, want)
		}
	}
	// One thick among thin ones on a thick bed: a thin one may lie under the tangent
	// from the thick one to the bed and yet not under any to another disc.
	for range 1500 {
		bed := rng.between(5, 60)
		d := append(same(3+rng.IntN(40), mm(bed*rng.between(0.001, 0.08))), mm(bed*rng.between(0.02, 0.5)))
		ring := Lay(d, Bed{mm(bed), mm(bed)}, Laying{Ratio: 12})
		ds := []disc{{0, 0, bed / 2}}
		for i := range d {
			s, c := math.Sincos(float64(ring.Angles[i]))
			R := float64(ring.Radii[i])
			ds = append(ds, disc{R * c, R * s, float64(d[i]) / 2})
		}
		if want := cauchy(ds, 500); math.Abs(float64(ring.Tape)*math.Pi/want-1) > 4e-4 { // 500 directions
			t.Errorf("%d × %v and %v on %v: %.6f, by support %.6f", len(d)-1, d[0], d[len(d)-1], bed, ring.Tape*math.Pi, want)
		}
		if got := new(hull).ring(ds[1:], bed/2); math.Abs(got/hullPerimeter(ds)-1) > 1e-9 {
			t.Errorf("%d × %v and %v on %v: scanned %.9f, wrapped %.9f", len(d)-1, d[0], d[len(d)-1], bed, got, hullPerimeter(ds))
		}
	}
	if got := new(hull).ring(nil, 2); got != 4*math.Pi {
		t.Errorf("bare bed: %v", got)
	}
}
