package ring

import (
	"math"
	"math/rand"
	"testing"

	"contralay/calc/formula/lay"
	"contralay/model/unit"
)

// Four hundred rings of one to five sizes, the same at every run: the angles added up by size are those of the laid ring, on the bed and
// off it, whether the fit is fresh or has tested other rings of that bed before; what is told to be beyond is so when it is laid.
func TestFourHundredRings(t *testing.T) {
	chance := rand.New(rand.NewSource(3))
	between := func(a, b float64) float64 { return a + chance.Float64()*(b-a) }
	var kept Fit
	beyond, notBeyond := 0, 0
	for n := range 400 {
		sizes := 1 + chance.Intn(5)
		d, cnt, ds := make([]float64, sizes), make([]int, sizes), []unit.Millimetre(nil)
		lo, hi := -1, 0
		for i := range d {
			d[i] = 0.8 + 0.25*float64(i) + between(0, 0.2)
			cnt[i] = chance.Intn(9)
			for range cnt[i] {
				ds = append(ds, unit.Millimetre(d[i]))
			}
			if cnt[i] > 0 {
				if hi = i; lo < 0 {
					lo = i
				}
			}
		}
		if len(ds) < 3 {
			continue
		}
		how := lay.Laying{Ratio: unit.Ratio(between(6, 20)), Bind: unit.Millimetre(between(0, 0.4))}
		if chance.Intn(2) == 0 {
			how.Lay = unit.Millimetre(between(40, 200))
		}
		crown := between(1, 20)
		tape := crown * between(0.85, 1)
		f := New(d, how)
		if n%2 == 1 && len(kept.d) == sizes {
			f = kept
			copy(f.d, d)
		}
		f.Take(crown, tape, how)
		if f.Bed.Crown != unit.Millimetre(crown) || f.Bed.Tape != unit.Millimetre(tape) || f.How != how {
			t.Fatalf("it is on %+v %+v", f.Bed, f.How)
		}
		var g lay.Gauge
		lift := between(0, 0.3) // one for a bed: what it keeps hangs on it
		for range 2 {           // the second time by what it keeps
			sum := f.Sum(cnt, lo, hi, len(ds))
			if laid := float64(g.Turn(ds, f.Bed, how, 0)); math.Abs(sum-laid) > 1e-9 {
				t.Fatalf("ring %d on the bed: %v, laid %v", n, sum, laid)
			}
			laid := float64(g.Turn(ds, f.Bed, how, unit.Ratio(lift)))
			if off := f.Off(cnt, lo, hi, len(ds), lift); math.Abs(off-laid) > 1e-9 && (laid <= 1.001*turn || off <= 1.001*turn) {
				t.Fatalf("ring %d off the bed: %v, laid %v", n, off, laid)
			}
			if f.Beyond(sum, laid*between(0.7, 1.1), lift, hi) {
				beyond++
			} else {
				notBeyond++
			}
			if f.Beyond(sum, laid*1.0001, lift, hi) {
				t.Fatalf("ring %d takes %v and is told to be beyond it", n, laid)
			}
		}
		kept = f
	}
	if beyond < 20 || notBeyond < 20 {
		t.Errorf("%d beyond, %d not", beyond, notBeyond)
	}
}

// Pairs in zig-zag by hand: of n numbered from 0, thin to thick, those side by side add up to n − 2 and to n, and the first lies by the
// last. Told by going through every pair.
func TestZigZagPairByPair(t *testing.T) {
	theta := []float64{1, 10, 100, 10, 1000, 10_000, 100, 10_000, 100_000}
	for a := range 5 {
		for b := range 5 {
			for c := range 5 {
				n := a + b + c
				if n < 3 {
					continue
				}
				var size []int
				for k, m := range []int{a, b, c} {
					for range m {
						size = append(size, k)
					}
				}
				want := theta[size[0]*3+size[n-1]]
				for p := range n {
					for q := p + 1; q < n; q++ {
						if p+q == n-2 || p+q == n && p > 0 {
							want += theta[size[p]*3+size[q]]
						}
					}
				}
				if n%2 == 0 {
					want += theta[size[n/2-1]*3+size[n/2]]
				}
				if got := ZigZag([]int{a, b, c}, n, theta); got != want {
					t.Errorf("%d, %d and %d: %v, want %v", a, b, c, got, want)
				}
			}
		}
	}
}
