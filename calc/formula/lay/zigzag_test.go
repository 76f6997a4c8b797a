package lay

import (
	"fmt"
	"math"
	"slices"
	"testing"
)

// cycle is Σθ of the neighbours in the order given, written out without the
// package's own sum.
func cycle(d []mm, r, lay mm) float64 {
	t := 0.0
	for i := range d {
		t += float64(NeighbourAngle(d[i], d[(i+1)%len(d)], r, lay))
	}
	return t
}

// orders calls f with every cyclic order of d, the first staying where it is.
func orders(d []mm, f func([]mm)) {
	p := slices.Clone(d)
	var each func(k int)
	each = func(k int) {
		if k == len(p) {
			f(p)
			return
		}
		for i := k; i < len(p); i++ {
			p[k], p[i] = p[i], p[k]
			each(k + 1)
			p[k], p[i] = p[i], p[k]
		}
	}
	each(1)
}

// No cyclic order takes less angle than the zig-zag. Oracle: all of them.
func TestZigZagIsLeast(t *testing.T) {
	rng := newRand(3)
	for k := range 120 {
		d := rng.sizes(3+k%6, 0.7, 3)
		r := mm(rng.between(0.5, 4))
		lay := mm(0)
		if k%3 > 0 {
			lay = mm(rng.between(7, 20)) * (2*r + 2*slices.Max(d))
		}
		least := math.Inf(1)
		orders(d, func(p []mm) { least = math.Min(least, cycle(p, r, lay)) })
		if got := cycle(inZigZag(d), r, lay); got > least+1e-12 {
			t.Errorf("%v on r %.3f at %.1f: zig-zag %.9f, least %.9f", d, r, lay, got, least)
		}
	}
}

func TestZigZagWorked(t *testing.T) {
	d := append(append(same(6, 1), same(4, 1.6)...), same(2, 2.4)...)
	// Pyramid: neighbours of like size, which takes the most angle.
	pyramid := []mm{2.4, 1.6, 1.6, 1, 1, 1, 1, 1, 1, 1.6, 1.6, 2.4}
	// Source: sums of angles round a core of 6, printed to 0.001°. The laid sums
	// were worked out with the geometric mean of the winding radii, ours with
	// their arithmetic mean; each is within 0.04 % of exact helices at 8 × and
	// 0.01 % at 12 ×.
	for _, c := range []struct {
		m, zig, pyr, tol float64
	}{{0, 253.035, 260.683, 0.0006}, {12, 257.015, 264.895, 0.01e-2 * 265}, {8, 261.896, 270.054, 0.04e-2 * 270}} {
		t.Run(fmt.Sprint(c.m), func(t *testing.T) {
			L := mm(c.m * (6 + 2*2.4))
			zig, pyr := cycle(inZigZag(d), 3, L)*180/math.Pi, cycle(pyramid, 3, L)*180/math.Pi
			if !near(zig, c.zig, c.tol) || !near(pyr, c.pyr, c.tol) {
				t.Errorf("zig-zag %.4f° pyramid %.4f°, want %.3f° %.3f°", zig, pyr, c.zig, c.pyr)
			}
		})
	}
}

func TestZigZagOrder(t *testing.T) {
	for _, c := range []struct {
		name string
		d    []mm
		want []int
	}{
		{"none", nil, []int{}},
		{"one", []mm{1}, []int{0}},
		{"two", []mm{1, 2}, []int{1, 0}},
		{"three", []mm{1, 3, 2}, []int{1, 0, 2}},
		{"largest between the smallest, then the largest left", []mm{1, 2, 3, 4, 5, 6}, []int{5, 0, 4, 2, 3, 1}},
		{"ties keep their order", []mm{1, 1, 1}, []int{2, 0, 1}},
	} {
		if got := ZigZag(c.d); !slices.Equal(got, c.want) {
			t.Errorf("%s: %v, want %v", c.name, got, c.want)
		}
	}
}
