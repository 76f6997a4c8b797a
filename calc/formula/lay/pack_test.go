package lay

import (
	"math"
	"slices"
	"testing"

	"contralay/model/shorttest"
)

// pushed finds a small circle that holds discs of radii r the slow way: from many
// random starts, slide them downhill on (squared overlaps) with the wall a little
// smaller each time, then spread the result until nothing overlaps. What it
// returns can be built; it need not be the best.
func pushed(rng rnd, r []float64, starts int) float64 {
	n, sum := len(r), 0.0
	for _, x := range r {
		sum += x
	}
	best := math.Inf(1)
	for range starts {
		ds := make([]disc, n)
		for i := range ds {
			ds[i] = disc{rng.between(-sum, sum) / 2, rng.between(-sum, sum) / 2, r[i]}
		}
		R := sum
		for pass := 1.0; pass < 6; pass++ {
			// Halve the step in R until a pass no longer settles.
			for step := 0.15 / pass / pass / pass; ; {
				try := slices.Clone(ds)
				if !settle(try, R*(1-step)) {
					break
				}
				ds, R = try, R*(1-step)
			}
		}
		best = math.Min(best, spreadOut(ds))
	}
	return best
}

// settle slides discs apart and into the wall and reports whether they fit.
func settle(ds []disc, R float64) bool {
	for range 400 {
		worst := 0.0
		for i := range ds {
			if h := math.Hypot(ds[i].x, ds[i].y); h > R-ds[i].r {
				worst = math.Max(worst, h+ds[i].r-R)
				k := math.Max(0, R-ds[i].r) / h
				ds[i].x, ds[i].y = ds[i].x*k, ds[i].y*k
			}
			for j := range i {
				dx, dy := ds[i].x-ds[j].x, ds[i].y-ds[j].y
				h := math.Hypot(dx, dy) + 1e-12
				if in := ds[i].r + ds[j].r - h; in > 0 {
					worst = math.Max(worst, in)
					k := in / 2 / h
					ds[i].x, ds[i].y = ds[i].x+k*dx, ds[i].y+k*dy
					ds[j].x, ds[j].y = ds[j].x-k*dx, ds[j].y-k*dy
				}
			}
		}
		if worst < 1e-4*R {
			return true
		}
	}
	return false
}

// spreadOut scales places until nothing overlaps and measures the circle round all.
func spreadOut(ds []disc) float64 {
	k := 1.0
	for i := range ds {
		for j := range i {
			k = math.Max(k, (ds[i].r+ds[j].r)/math.Hypot(ds[i].x-ds[j].x, ds[i].y-ds[j].y))
		}
	}
	for i := range ds {
		ds[i].x, ds[i].y = ds[i].x*k, ds[i].y*k
	}
	return smallestCircle(ds)
}

func TestPackOfEqual(t *testing.T) {
	// Source: best known packings of circles in a circle, proved optimal to 13.
	// Over six they are stacked by hand, never better than the packing.
	for n, want := range []float64{0, 1, 2, 2.154701, 2.414214, 2.701302, 3, 3, 3.304765, 3.613126, 3.813026, 3.923804, 4.029602,
		4.236068} {
		if n == 0 {
			continue
		}
		d := same(n, 1.09)
		g := Pack(d)
		sound(t, d, g)
		got := float64(g.Over) / 1.09
		if got < want-1e-6 || (n <= searched && got > want*(1+1e-5)) || got > want*1.15 {
			t.Errorf("%d: %.6f, best known %.6f", n, got, want)
		}
	}
	if g := Pack(nil); g.Over != 0 || len(g.X) != 0 {
		t.Errorf("nothing: %+v", g)
	}
}

// Four to six unequal within 0.5 % of the best a slow search finds.
func TestPackOfUnequal(t *testing.T) {
	rng := newRand(37)
	cases := [][]mm{
		{1.09, 1.09, 1.27, 1.73}, {1.09, 1.09, 1.09, 1.09, 2.7}, {2.4, 2.4, 1.09, 1.09, 1.09, 1.09},
		{5, 1, 1, 1, 1, 1}, {3, 3, 3, 0.5}, {3, 3, 3, 0.6, 3}, {4, 4, 2, 2, 1, 1}, {4, 4, 1.2, 1.2}, {6, 3, 2.5, 1.2, 0.9, 0.8},
	}
	for k := range shorttest.Rounds(36) {
		cases = append(cases, rng.sizes(4+k%3, 0.6, []float64{1.8, 3, 6}[k/3%3]))
	}
	worst := 0.0
	for _, d := range cases {
		g := Pack(d)
		sound(t, d, g)
		r := make([]float64, len(d))
		for i := range d {
			r[i] = float64(d[i]) / 2
		}
		slow := pushed(rng, r, 25)
		over := float64(g.Over)/2/slow - 1
		worst = math.Max(worst, over)
		if over > 0.5e-2 {
			t.Errorf("%v: over %.4f, a slow search finds %.4f (%.2f %%)", d, g.Over, 2*slow, over*100)
		}
	}
	t.Logf("worst %.3f %%", worst*100)
}

// More than six: an upper bound that can be built, and not a silly one.
func TestPackOfMany(t *testing.T) {
	rng := newRand(41)
	for k := range 30 {
		d := rng.sizes(7+k%20, 0.6, 4)
		g := Pack(d)
		sound(t, d, g)
		sq := 0.0
		for _, x := range d {
			sq += float64(x * x)
		}
		// The supplier's rule for bundles of mixed sizes is 1.2·√Σd²; a fifth on top.
		if over := float64(g.Over); over < math.Sqrt(sq) || over > 1.44*math.Sqrt(sq) {
			t.Errorf("%v: %.4f, √Σd² is %.4f", d, over, math.Sqrt(sq))
		}
		if float64(g.Tape) > float64(g.Over)*(1+1e-9) {
			t.Errorf("%v: tape %.6f above over %.6f", d, g.Tape, g.Over)
		}
	}
}

// Circles on a wall that have room to spare lie evenly: three of radius 1 on a wall of 3 have their middles 2 from its middle, so that they
// touch 60 degrees apart, and lie 120 apart. On a wall of 1 + 2/√3 they all touch; on a smaller one the third finds no room.
func TestRoundAWall(t *testing.T) {
	w := wall{order: []int{0, 1, 2}, r: []float64{1, 1, 1}, mid: -1}
	for _, R := range []float64{3, 2.5, 1 + 2/math.Sqrt(3) + 1e-9} {
		at, ok := w.round(R)
		for k := range 3 {
			if !ok || len(at) != 3 || math.Abs(at[k]-float64(k)*2*math.Pi/3) > 1e-9 {
				t.Errorf("on a wall of %v: %v %v", R, at, ok)
				break
			}
		}
	}
	if at, ok := w.round(1 + 2/math.Sqrt(3) - 1e-6); ok {
		t.Errorf("on a wall that is too small: %v", at)
	}
	// Two of 1 and one of 2 on a wall of 5, middles at 4, 4 and 3: they touch at acos(7/8) and acos(2/3), and what is open, all but the
	// sum, goes to each by its share.
	w = wall{order: []int{0, 1, 2}, r: []float64{2, 1, 1}, mid: -1}
	thick, thin := math.Acos(2.0/3), math.Acos(7.0/8)
	at, ok := w.round(5)
	open := 2 * math.Pi / (2*thick + thin)
	if !ok || at[0] != 0 || math.Abs(at[1]-open*thick) > 1e-9 || math.Abs(at[2]-open*(thick+thin)) > 1e-9 {
		t.Errorf("%v, want 0, %v and %v", at, open*thick, open*(thick+thin))
	}
}
