package lay

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"contralay/model/unit"
)

// some draws 1 to most diameters, half of the time of few sizes.
func some(t *rapid.T, most int) []mm {
	reel := rapid.SliceOfN(rapid.Float64Range(0.2, 6), 1, 3).Draw(t, "reel")
	size := rapid.Float64Range(0.2, 6)
	if rapid.Bool().Draw(t, "few sizes") {
		size = rapid.SampledFrom(reel)
	}
	out := make([]mm, rapid.IntRange(1, most).Draw(t, "n"))
	for i := range out {
		out[i] = mm(size.Draw(t, "d"))
	}
	return out
}

func someBed(t *rapid.T) Bed {
	tape := rapid.Float64Range(0.3, 20).Draw(t, "tape")
	return Bed{mm(tape * rapid.Float64Range(1, 1.15).Draw(t, "crown")), mm(tape)}
}

func someLaying(t *rapid.T) Laying {
	return Laying{Ratio: unit.Ratio(rapid.Float64Range(6, 30).Draw(t, "ratio")),
		Bind: mm(rapid.SampledFrom([]float64{0, 0.1}).Draw(t, "bind"))}
}

// One laid layer never gets thinner by one more member, of any size.
func TestOneMoreIsNeverThinner(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d, bed, how := some(t, 20), someBed(t), someLaying(t)
		more := mm(rapid.Float64Range(0.2, 6).Draw(t, "more"))
		if rapid.Bool().Draw(t, "of the same") {
			more = d[0]
		}
		a, b := LayZigZag(d, bed, how), LayZigZag(append(slices.Clone(d), more), bed, how)
		// The closing radius is found to 1e-11.
		if b.Over < a.Over*(1-1e-9) {
			t.Errorf("%v: over %.9f, with %v more %.9f", d, a.Over, more, b.Over)
		}
	})
}

// Everything twice as thick gives everything twice as thick; shares stay.
func TestScale(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d, bed, how := some(t, 20), someBed(t), someLaying(t)
		d2 := make([]mm, len(d))
		for i := range d {
			d2[i] = 2 * d[i]
		}
		bed2 := Bed{2 * bed.Crown, 2 * bed.Tape}
		how2 := how
		how2.Bind *= 2
		a, b := LayZigZag(d, bed, how), LayZigZag(d2, bed2, how2)
		same := func(name string, x, y float64) {
			if math.Abs(x-y) > 1e-9*math.Max(1, math.Abs(x)) {
				t.Errorf("%s: %.12f and %.12f", name, x, y)
			}
		}
		same("over", 2*float64(a.Over), float64(b.Over))
		same("tape", 2*float64(a.Tape), float64(b.Tape))
		same("inner", 2*float64(a.Inner), float64(b.Inner))
		same("proud", 2*float64(a.Proud), float64(b.Proud))
		same("lay", 2*float64(a.Lay), float64(b.Lay))
		same("lift", float64(a.Lift), float64(b.Lift))
		same("gap", float64(a.Gap), float64(b.Gap))
		same("loss", float64(a.Loss), float64(b.Loss))
		// Two lifts of doubled figures may differ by a hair at the very limit.
		if p, q := Room(d, d[0], bed, how, 0.05), Room(d2, d2[0], bed2, how2, 0.05); p != q {
			t.Errorf("room %d and %d", p, q)
		}
	})
}

// Zig-zag does not care in which order the components are handed over.
func TestOrderOfInput(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d, bed, how := some(t, 20), someBed(t), someLaying(t)
		a, b := LayZigZag(d, bed, how), LayZigZag(rapid.Permutation(d).Draw(t, "shuffled"), bed, how)
		if a.Over != b.Over || a.Tape != b.Tape || a.Inner != b.Inner || a.Gap != b.Gap || !slices.Equal(a.Radii, b.Radii) ||
			!slices.Equal(a.Angles, b.Angles) {
			t.Errorf("%+v\n%+v", a, b)
		}
	})
}

// What must hold of any ring.
func TestRingIsSane(t *testing.T) {
	positive := rapid.OneOf(rapid.Float64Range(0.2, 6), rapid.Float64Range(1e-3, 1e3))
	rapid.Check(t, func(t *rapid.T) {
		d := make([]mm, rapid.IntRange(1, 25).Draw(t, "n"))
		for i := range d {
			d[i] = mm(positive.Draw(t, "d"))
		}
		tape := positive.Draw(t, "tape")
		bed := Bed{mm(tape * rapid.Float64Range(1, 1.3).Draw(t, "crown")), mm(tape)}
		how := Laying{Ratio: unit.Ratio(positive.Draw(t, "ratio")), Lay: mm(rapid.SampledFrom([]float64{0, 0, 1e-3, 3, 50}).Draw(t, "lay"))}
		for _, r := range []Ring{Lay(d, bed, how), LayZigZag(d, bed, how)} {
			for name, v := range map[string]float64{
				"inner": float64(r.Inner), "lift": float64(r.Lift), "proud": float64(r.Proud), "gap": float64(r.Gap),
				"over": float64(r.Over), "tape": float64(r.Tape), "lay": float64(r.Lay), "loss": float64(r.Loss), "angle": float64(r.Angle),
			} {
				if !unit.Finite(v) || v < 0 {
					t.Errorf("%s is %v", name, v)
				}
			}
			if r.Tape > r.Over*(1+1e-9) || r.Gap > 1 || r.Loss < 1 || r.Inner < bed.Tape/2 || len(r.Radii) != len(d) ||
				len(r.Angles) != len(d) {
				t.Errorf("%v on %v: %+v", d, bed, r)
			}
			for i := range d {
				if a := float64(r.Angles[i]); !unit.Finite(a) || a < 0 || a > 2*math.Pi+1e-9 || !unit.Finite(float64(r.Radii[i])) {
					t.Errorf("%d lies at %v, radius %v", i, a, r.Radii[i])
				}
			}
		}
		g := Pack(d[:min(len(d), 5)])
		if !unit.Finite(float64(g.Over)) || !unit.Finite(float64(g.Tape)) || g.Tape > g.Over*(1+1e-6) {
			t.Errorf("%v packed: %+v", d, g)
		}
	})
}

func TestFixedLayTooShort(t *testing.T) {
	// Twelve of 1 need L > π·cot 15° = 11.72 at any radius.
	bed := Bed{3, 3}
	for _, c := range []struct {
		lay    mm
		closes bool
	}{{11.6, false}, {1, false}, {1e-6, false}, {60, true}, {25, true}} {
		for name, d := range map[string][]mm{"equal": same(12, 1), "lumpy": append(same(11, 1), 1.6),
			"with a lost one": append(same(12, 1), 0.2)} {
			r := Lay(d, bed, Laying{Ratio: 12, Lay: c.lay})
			if r.Closes != c.closes {
				t.Errorf("%s at %v: closes %v", name, c.lay, r.Closes)
			}
			if r.Lay != c.lay {
				t.Errorf("%s: lay %v became %v", name, c.lay, r.Lay)
			}
			for _, v := range []float64{float64(r.Over), float64(r.Tape), float64(r.Inner), float64(r.Loss), float64(r.Gap)} {
				if !unit.Finite(v) {
					t.Errorf("%s at %v: %+v", name, c.lay, r)
				}
			}
		}
	}
}

func TestNothingToLay(t *testing.T) {
	r := Lay(nil, Bed{2, 1.9}, Laying{Ratio: 12, Bind: 0.1})
	if r.Over != 2.1 || r.Tape != 2 || r.Gap != 1 || !r.Closes {
		t.Errorf("%+v", r)
	}
	for n := 1; n <= 2; n++ {
		if r := Lay(same(n, 1), Bed{2, 2}, Laying{Ratio: 12}); r.Gap != 1 || r.Lift != 0 || r.Over != 4 {
			t.Errorf("%d: %+v", n, r)
		}
	}
}

// A layer a hundredth of the size is a hundredth of the size in every length and the same in every angle and share, far below a
// millimetre too; its first component lies at 0. So is a crown that a single is built up to.
func TestSmallLayers(t *testing.T) {
	const to = 0.01
	for _, d := range [][]unit.Millimetre{{1.1, 1.1, 1.1, 1.1, 1.1, 1.1, 1.1}, {1.1, 1.7, 1.1, 1.7, 2.4, 1.1, 1.7},
		{1, 0.2, 1, 1, 1, 0.2, 1, 1}, {1.1, 1.7}} {
		var small []unit.Millimetre
		for _, x := range d {
			small = append(small, x*to)
		}
		a := Lay(d, Bed{Tape: 1.3, Crown: 1.5}, Laying{Ratio: 12, Bind: 0.1})
		b := Lay(small, Bed{Tape: 1.3 * to, Crown: 1.5 * to}, Laying{Ratio: 12, Bind: 0.1 * to})
		alike := func(what string, got, want float64) {
			t.Helper()
			if math.Abs(got-want) > 1e-9*(1e-3+math.Abs(want)) {
				t.Errorf("%v: %s %v small, %v", d, what, got, want)
			}
		}
		alike("over", float64(b.Over), float64(a.Over)*to)
		alike("tape", float64(b.Tape), float64(a.Tape)*to)
		alike("lay", float64(b.Lay), float64(a.Lay)*to)
		alike("proud", float64(b.Proud), float64(a.Proud)*to)
		alike("lift", float64(b.Lift), float64(a.Lift))
		alike("gap", float64(b.Gap), float64(a.Gap))
		alike("loss", float64(b.Loss-1)*100, float64(a.Loss-1)*100)
		alike("angle", float64(b.Angle), float64(a.Angle))
		for i := range d {
			alike("place", float64(b.Angles[i]), float64(a.Angles[i]))
			alike("radius", float64(b.Radii[i]), float64(a.Radii[i])*to)
		}
		if a.Angles[0] != 0 {
			t.Errorf("%v begins at %v", d, a.Angles[0])
		}
	}
	for _, n := range []int{3, 7, 8, 20} {
		if a, b := BuiltUp(n, 1, 12), BuiltUp(n, to, 12); math.Abs(float64(b-a*to)) > 1e-9*to {
			t.Errorf("%d built up to %v small, %v", n, b, a)
		}
	}
}
