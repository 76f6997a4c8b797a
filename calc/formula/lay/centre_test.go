package lay

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"contralay/model/unit"
)

// sound checks that a group lies as it says: nothing overlaps, all inside Over.
func sound(t *testing.T, d []mm, g Group) {
	t.Helper()
	if len(g.X) != len(d) || len(g.Y) != len(d) {
		t.Fatalf("%v: %d places", d, len(g.X))
	}
	tol := 1e-7 * float64(g.Over)
	for i := range d {
		if out := math.Hypot(float64(g.X[i]), float64(g.Y[i])) + float64(d[i])/2 - float64(g.Over)/2; out > tol {
			t.Errorf("%v: %d sticks out by %g", d, i, out)
		}
		for j := range i {
			if in := float64(d[i]+d[j])/2 - math.Hypot(float64(g.X[i]-g.X[j]), float64(g.Y[i]-g.Y[j])); in > tol {
				t.Errorf("%v: %d and %d overlap by %g", d, i, j, in)
			}
		}
	}
}

func discs(d []mm, g Group) []disc {
	ds := make([]disc, len(d))
	for i := range d {
		ds[i] = disc{float64(g.X[i]), float64(g.Y[i]), float64(d[i]) / 2}
	}
	return ds
}

func TestCentreOfEqual(t *testing.T) {
	// Source: plane geometry, 1 + 1/sin(π/n), printed to 1e-4; the tape is n
	// chords of one diameter and one full turn, d·(n + π)/π.
	for _, c := range []struct {
		n         int
		over, rod float64
	}{{1, 1, 0}, {2, 2, 0}, {3, 2.1547, 0}, {4, 2.4142, 0}, {5, 2.7013, 0.7013}} {
		for _, d := range []mm{1, 1.09, 2.6} {
			g := Centre(same(c.n, d))
			tape := (float64(c.n) + math.Pi) / math.Pi
			if c.n == 1 {
				tape = 1
			}
			if !near(float64(g.Over/d), c.over, 0.5001e-4) || !near(float64(g.Rod/d), c.rod, 0.5001e-4) ||
				!near(float64(g.Tape/d), tape, 1e-12) {
				t.Errorf("%d × %v: over %.5f rod %.5f tape %.5f", c.n, d, g.Over/d, g.Rod/d, g.Tape/d)
			}
			sound(t, same(c.n, d), g)
			if want := cauchy(discs(same(c.n, d), g), directions) / math.Pi; math.Abs(float64(g.Tape)/want-1) > hullTol {
				t.Errorf("%d × %v: tape %.8f, by support %.8f", c.n, d, g.Tape, want)
			}
			if p := Pack(same(c.n, d)); p.Rod != 0 || p.Over != g.Over {
				t.Errorf("%d × %v only twisted: over %v rod %v", c.n, d, p.Over, p.Rod)
			}
		}
	}
}

func TestCanBeCentre(t *testing.T) {
	for _, c := range []struct {
		d    []mm
		want bool
	}{
		{nil, false}, {[]mm{1}, true}, {[]mm{1, 2}, true}, {[]mm{1, 2, 3}, true}, {same(4, 1), true},
		{same(5, 1), true}, {[]mm{1, 1, 1, 2}, false}, {[]mm{1, 1, 1, 1, 2}, false}, {same(6, 1), false},
	} {
		if got := CanBeCentre(c.d); got != c.want {
			t.Errorf("%v: %v", c.d, got)
		}
	}
}

// smallestCircle is the radius of the smallest circle round discs, by nested
// golden section: the largest reach is convex in the centre.
func smallestCircle(ds []disc) float64 {
	w := 0.0
	for _, d := range ds {
		w = math.Max(w, math.Hypot(d.x, d.y)+d.r)
	}
	return -maximum(func(x float64) float64 {
		return maximum(func(y float64) float64 {
			far := 0.0
			for _, d := range ds {
				far = math.Max(far, math.Hypot(d.x-x, d.y-y)+d.r)
			}
			return -far
		}, -w, w)
	}, -w, w)
}

func TestCentreOfTwoUnequal(t *testing.T) {
	for _, c := range [][]mm{{1.27, 1.09}, {1, 3}, {5, 0.6}} {
		g := Centre(c)
		a, b := float64(max(c[0], c[1]))/2, float64(min(c[0], c[1]))/2
		// An open belt round two pulleys: two tangents and two arcs.
		phi := math.Asin((a - b) / (a + b))
		tape := (2*math.Sqrt((a+b)*(a+b)-(a-b)*(a-b)) + a*(math.Pi+2*phi) + b*(math.Pi-2*phi)) / math.Pi
		if !near(float64(g.Over), float64(c[0]+c[1]), 1e-12) || !near(float64(g.Tape), tape, 1e-9) {
			t.Errorf("%v: over %.6f tape %.6f, want %.6f %.6f", c, g.Over, g.Tape, c[0]+c[1], tape)
		}
		sound(t, c, g)
	}
}

func TestCentreOfThreeUnequal(t *testing.T) {
	rng := newRand(31)
	soddy, hidden := 0, 0
	cases := [][]mm{{1.09, 1.09, 2.4}, {3, 2, 1}, {4, 4, 1}, {6, 3, 2}, {1, 1.0001, 1}}
	for range 120 {
		cases = append(cases, []mm{mm(rng.between(0.6, 6)), mm(rng.between(0.6, 6)), mm(rng.between(0.6, 6))})
	}
	for _, c := range cases {
		g := Centre(c)
		sound(t, c, g)
		ds := discs(c, g)
		for i := range ds {
			for j := range i {
				// All three touch: that is what "in contact" means.
				if gap := math.Hypot(ds[i].x-ds[j].x, ds[i].y-ds[j].y) - ds[i].r - ds[j].r; !near(gap, 0, 1e-9) {
					t.Errorf("%v: %d and %d are %g apart", c, i, j, gap)
				}
			}
		}
		// Nested golden section stops near 1e-8 of the size.
		if R := smallestCircle(ds); !near(float64(g.Over)/2, R, 1e-6) {
			t.Errorf("%v: over %.7f, smallest circle %.7f", c, g.Over, 2*R)
		}
		if want := cauchy(ds, directions) / math.Pi; math.Abs(float64(g.Tape)/want-1) > hullTol {
			t.Errorf("%v: tape %.8f, by support %.8f", c, g.Tape, want)
		}
		up := slices.Sorted(slices.Values(c))
		if float64(g.Over) > float64(up[1]+up[2])*(1+1e-9) {
			soddy++
			// Descartes: (Σk)² = 2Σk² with the curvature of the outer circle negative.
			k := []float64{2 / float64(c[0]), 2 / float64(c[1]), 2 / float64(c[2]), -2 / float64(g.Over)}
			sum, sq := 0.0, 0.0
			for _, x := range k {
				sum, sq = sum+x, sq+x*x
			}
			if !near(sum*sum/(2*sq), 1, 1e-9) {
				t.Errorf("%v: over %.7f is no Soddy circle: %v", c, g.Over, sum*sum/(2*sq))
			}
		} else {
			hidden++
		}
	}
	if soddy < 20 || hidden < 20 {
		t.Errorf("%d by Soddy, %d with the third hidden: too few", soddy, hidden)
	}
}

// Crowns on which 7 and 8 close. Source: exact radii of two helices, printed to
// 0.001; the closed form is below them by 0.042 % of the pitch radius at 8 ×.
func TestBuiltUp(t *testing.T) {
	for _, c := range []struct {
		n           int
		ratio, want float64
		low         float64
	}{
		{7, 1e6, 1.305, 0}, {7, 8, 1.376, 0.042e-2}, {7, 12, 1.336, 0.009e-2},
		{8, 1e6, 1.613, 0}, {8, 8, 1.704, 0.042e-2}, {8, 12, 1.653, 0.009e-2},
	} {
		t.Run(fmt.Sprintf("%d at %g", c.n, c.ratio), func(t *testing.T) {
			tol := 0.5001e-3 + c.low*(c.want+1)
			for _, d := range []mm{1, 1.27} {
				up := BuiltUp(c.n, d, unit.Ratio(c.ratio))
				if !near(float64(up/d), c.want, tol) {
					t.Errorf("%.5f d, want %.3f", up/d, c.want)
				}
				how := Laying{Ratio: unit.Ratio(c.ratio)}
				if ring := Lay(same(c.n, d), Bed{up, up}, how); ring.Lift > 1e-9 || ring.Gap > 1e-6 {
					t.Errorf("lift %v gap %v on it", ring.Lift, ring.Gap)
				}
				if n := Room(nil, d, Bed{up, up}, how, 0); n != c.n {
					t.Errorf("takes %d", n)
				}
			}
		})
	}
	if BuiltUp(2, 1, 12) != 0 || BuiltUp(7, 0, 12) != 0 {
		t.Error("built up for nothing")
	}
}
