package ring

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc/formula/lay"
	"contralay/model/unit"
)

// The angles added up by size are those of the laid ring (lay.Gauge, which walks round it), on the bed and off it;
// and what is told to be beyond is so when it is laid.
func TestAsLaid(t *testing.T) {
	beyond := 0
	rapid.Check(t, func(t *rapid.T) {
		sizes := rapid.IntRange(1, 5).Draw(t, "sizes")
		d, cnt, ds := make([]float64, sizes), make([]int, sizes), []unit.Millimetre(nil)
		lo, hi := -1, 0
		for i := range d {
			d[i] = 0.8 + 0.1*float64(i) + rapid.Float64Range(0, 0.3).Draw(t, "more") // none thinner than a quarter of another
			if i > 0 {
				d[i] = math.Max(d[i], d[i-1]+0.01)
			}
			cnt[i] = rapid.IntRange(0, 12).Draw(t, "count")
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
			return
		}
		crown := rapid.Float64Range(1, 20).Draw(t, "crown")
		how := lay.Laying{Ratio: unit.Ratio(rapid.Float64Range(6, 20).Draw(t, "ratio"))}
		if rapid.Bool().Draw(t, "fixed") {
			how.Lay = unit.Millimetre(rapid.Float64Range(40, 200).Draw(t, "lay"))
		}
		f := New(d, how)
		f.Take(crown, crown*rapid.Float64Range(0.85, 1).Draw(t, "tape"), how)
		var g lay.Gauge
		sum := f.Sum(cnt, lo, hi, len(ds))
		if laid := float64(g.Turn(ds, f.Bed, how, 0)); math.Abs(sum-laid) > 1e-9 {
			t.Fatalf("on the bed %v, laid %v", sum, laid)
		}
		lift := rapid.Float64Range(0, 0.3).Draw(t, "lift")
		laid := float64(g.Turn(ds, f.Bed, how, unit.Ratio(lift)))
		if off := f.Off(cnt, lo, hi, len(ds), lift); math.Abs(off-laid) > 1e-9 && (laid <= 1.001*turn || off <= 1.001*turn) {
			t.Fatalf("off the bed %v, laid %v", off, laid)
		}
		most := laid * rapid.Float64Range(0.9, 1.1).Draw(t, "most")
		if f.Beyond(sum, most, lift, hi) {
			if beyond++; laid <= most {
				t.Fatalf("told to be more than %v, and laid it is %v", most, laid)
			}
		}
	})
	if beyond == 0 {
		t.Error("nothing is ever beyond")
	}
}

// Equal ones: n times the angle of two, by the law of cosines with no lay (source: geometry, three circles that touch).
func TestEqualOnes(t *testing.T) {
	f := New([]float64{1}, lay.Laying{})
	f.Take(1, 1, lay.Laying{})
	// Six of the diameter of their centre fill a turn exactly.
	if sum := f.Sum([]int{6}, 0, 0, 6); math.Abs(sum-turn) > 1e-12 {
		t.Errorf("six round one take %v", sum)
	}
}
