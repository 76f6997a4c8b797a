package lay

import (
	"fmt"
	"math"
	"testing"

	"contralay/model/unit"
)

// Lift, in diameters, of the classical counts on round cores; negative is slack.
// Source: radii of two helices, printed to 0.001. To half a unit of that comes
// what the closed form reads low: 0.042 % of the radius at 8 ×, less above.
func TestLiftOfClassicalCounts(t *testing.T) {
	ratios := [4]float64{8, 10, 12, 16}
	low := [4]float64{0.042e-2, 0.017e-2, 0.009e-2, 0.003e-2}
	for _, c := range []struct {
		n    int
		core float64
		lift [4]float64
	}{
		{6, 1, [4]float64{0.026, 0.017, 0.0115, 0.0065}},
		{12, 3, [4]float64{0.020, -0.012, -0.029, -0.046}},
		{18, 5, [4]float64{0.034, -0.021, -0.051, -0.082}},
		{24, 7, [4]float64{0.055, -0.025, -0.069, -0.113}},
		{8, 2, [4]float64{-0.148, -0.164, -0.173, -0.182}},
		{14, 4, [4]float64{-0.143, -0.183, -0.204, -0.226}},
		{9, 2.1547, [4]float64{-0.060, -0.080, -0.091, -0.102}},
		{15, 4.1547, [4]float64{-0.051, -0.095, -0.118, -0.142}},
		{10, 2.4142, [4]float64{-0.023, -0.047, -0.060, -0.073}},
		{16, 4.4142, [4]float64{-0.012, -0.059, -0.085, -0.111}},
		{22, 6.4142, [4]float64{0.007, -0.065, -0.104, -0.143}},
		{11, 2.7013, [4]float64{0.001, -0.027, -0.042, -0.057}},
		{17, 4.7013, [4]float64{0.014, -0.037, -0.065, -0.093}},
		{23, 6.7013, [4]float64{0.034, -0.042, -0.084, -0.125}},
	} {
		for i, m := range ratios {
			t.Run(fmt.Sprintf("%d on %g at %g", c.n, c.core, m), func(t *testing.T) {
				want := c.lift[i]
				tol := 0.5001e-3 + low[i]*(c.core+1)/2
				ring := Lay(same(c.n, 1), Bed{mm(c.core), mm(c.core)}, Laying{Ratio: unit.Ratio(m)})
				if !near(float64(ring.Lift), math.Max(0, want), tol) {
					t.Errorf("lift %.5f, want %.4f", ring.Lift, want)
				}
				if (want < -tol) != (ring.Gap > 1e-9) {
					t.Errorf("lift %.4f but gap %.5f", want, ring.Gap)
				}
				R := mm(c.core+1) / 2
				for range 60 {
					R, _ = TouchRadius(c.n, 1, mm(m)*(2*R+1))
				}
				if got := float64(R) - (c.core+1)/2; !near(got, want, tol) {
					t.Errorf("touching radius is %.5f off the core, want %.4f", got, want)
				}
			})
		}
	}
}

// How many equal wires a round core really takes. Source: law of cosines and
// helix, printed to 0.001.
func TestRealCapacity(t *testing.T) {
	ratios := [5]float64{0, 8, 10, 12, 16} // 0: straight
	core := [6]float64{0, 1, 2, 1 + 2/math.Sqrt(3), 1 + math.Sqrt2, 1 + 1/math.Sin(math.Pi/5)}
	for _, c := range []struct {
		core, layer int
		n           [5]float64
	}{
		{1, 1, [5]float64{6.000, 5.839, 5.895, 5.926, 5.958}},
		{1, 2, [5]float64{12.433, 11.886, 12.074, 12.180, 12.289}},
		{1, 3, [5]float64{18.762, 17.800, 18.128, 18.315, 18.506}},
		{1, 4, [5]float64{25.067, 23.682, 24.153, 24.422, 24.698}},
		{1, 5, [5]float64{31.363, 29.550, 30.166, 30.517, 30.879}},
		{2, 1, [5]float64{9.244, 8.897, 9.017, 9.084, 9.153}},
		{2, 2, [5]float64{15.602, 14.849, 15.107, 15.253, 15.403}},
		{2, 3, [5]float64{21.916, 20.743, 21.143, 21.370, 21.604}},
		{3, 1, [5]float64{9.740, 9.362, 9.492, 9.566, 9.641}},
		{3, 2, [5]float64{16.091, 15.307, 15.575, 15.727, 15.883}},
		{3, 3, [5]float64{22.404, 21.198, 21.609, 21.842, 22.083}},
		{4, 1, [5]float64{10.569, 10.140, 10.287, 10.371, 10.456}},
		{4, 2, [5]float64{16.912, 16.073, 16.360, 16.522, 16.689}},
		{4, 3, [5]float64{23.221, 21.961, 22.390, 22.635, 22.886}},
		{5, 1, [5]float64{11.483, 10.997, 11.164, 11.259, 11.355}},
		{5, 2, [5]float64{17.819, 16.920, 17.227, 17.401, 17.580}},
		{5, 3, [5]float64{24.126, 22.804, 23.254, 23.510, 23.774}},
	} {
		dc := core[c.core] + 2*float64(c.layer-1)
		bed := Bed{mm(dc), mm(dc)}
		for i, m := range ratios {
			n := 2 * math.Pi / float64(NeighbourAngle(1, 1, mm(dc/2), mm(m*(dc+2))))
			if !near(n, c.n[i], 0.5001e-3) {
				t.Errorf("%d/%d at %g: %.4f, want %.3f", c.core, c.layer, m, n, c.n[i])
			}
			// At lift 0 a layer takes the whole number below; six on one straight is exact.
			if got, want := Room(nil, 1, bed, Laying{Ratio: unit.Ratio(m)}, 0), int(c.n[i]); got != want {
				t.Errorf("%d/%d at %g: room %d, want %d", c.core, c.layer, m, got, want)
			}
		}
	}
}

// Concentric stranding factors. Source: a cable engineering article on
// conductor diameters, 2015, printed to 0.001, for wires that lie
// on the crests of the layer below: a lay long enough to count as straight.
func TestStrandingFactors(t *testing.T) {
	factors := map[int]float64{7: 3, 12: 4.155, 19: 5, 37: 7, 61: 9, 91: 11, 127: 13, 169: 15, 217: 17, 271: 19}
	seen := 0
	for _, start := range []struct{ core, layers int }{{1, 9}, {3, 1}} {
		g := Centre(same(start.core, 1))
		bed, total, count := Bed{g.Over, g.Tape}, start.core, start.core+6
		if start.core == 1 {
			count = 6
		}
		for range start.layers {
			ring := Lay(same(count, 1), bed, Laying{Ratio: 1e9})
			total += count
			want, ok := factors[total]
			if !ok || !near(float64(ring.Over), want, 0.5001e-3) {
				t.Errorf("%d wires: %.4f, want %.3f", total, ring.Over, want)
			}
			seen++
			bed, count = Bed{ring.Over, ring.Tape}, count+6
		}
	}
	if seen != len(factors) {
		t.Errorf("checked %d factors of %d", seen, len(factors))
	}
}

// Room and Takes against their meaning: lay one more, look at the lift.
func TestRoomByLaying(t *testing.T) {
	rng := newRand(11)
	for range 300 {
		d := rng.sizes(rng.IntN(9), 0.6, 3)
		size := mm(rng.between(0.6, 3))
		tape := rng.between(0.7, 6)
		bed := Bed{mm(tape * rng.between(1, 1.1)), mm(tape)}
		how := Laying{Ratio: unit.Ratio(rng.between(7, 20))}
		const lift = 0.05
		fits := func(ds []mm) bool { return len(ds) < 3 || LayZigZag(ds, bed, how).Lift <= lift }
		want, all := 0, append(append([]mm{}, d...), size)
		for fits(all) {
			want, all = want+1, append(all, size)
		}
		if got := Room(d, size, bed, how, lift); got != want {
			t.Fatalf("%v and %v more on %v: room %d, laying says %d", d, size, bed, got, want)
		}
		left := append([]mm{}, all...)
		for !fits(left) {
			left = without(left, thinnest(left))
		}
		if got := Takes(all, bed, how, lift); got != len(left) {
			t.Fatalf("%v on %v: takes %d, laying says %d", all, bed, got, len(left))
		}
	}
	if Room(nil, 0, Bed{1, 1}, Laying{Ratio: 12}, 0.05) != 0 || Room(nil, 1, Bed{}, Laying{Ratio: 12}, 0.05) != 0 {
		t.Error("room for nothing, or on nothing")
	}
}

func thinnest(d []mm) int {
	at := 0
	for i := range d {
		if d[i] < d[at] {
			at = i
		}
	}
	return at
}

func without(d []mm, i int) []mm { return append(append([]mm{}, d[:i]...), d[i+1:]...) }

// Three equal circles that touch leave room for one of 2/√3 − 1 = 0.1547 of their diameter between them (Descartes): on a bed a little
// thinner a layer of three does not close, on one a little thicker it does, and stood off as far as that is thicker. Two always close.
func TestThreeOnASmallBed(t *testing.T) {
	const d = 10
	touch := unit.Millimetre(d * (2/math.Sqrt(3) - 1))
	for _, c := range []struct {
		bed   unit.Millimetre
		lift  unit.Ratio // of a diameter, off the bed
		three bool
	}{
		{touch - 0.01, 0, false}, {touch + 0.01, 0, true}, {0.5, 0, false}, {touch + 2, 0, true},
		{touch - 0.2, 0.0099, false}, {touch - 0.2, 0.0101, true}, // 0.1 mm on either side
	} {
		bed := Bed{Crown: c.bed, Tape: c.bed}
		if got := Closes(same(3, d), bed, Laying{}, c.lift); got != c.three {
			t.Errorf("three on %v mm, lifted by %v: close %v", c.bed, c.lift, got)
		}
		if !Closes(same(2, d), bed, Laying{}, c.lift) || !Closes(nil, bed, Laying{}, c.lift) {
			t.Errorf("two on %v mm do not close", c.bed)
		}
		most, room := 2, 0
		if c.three {
			most, room = 3, 1
		}
		if got := Takes(same(3, d), bed, Laying{}, c.lift); got != most {
			t.Errorf("of three %v mm takes %d", c.bed, got)
		}
		if got := Room(same(2, d), d, bed, Laying{}, c.lift); c.bed < 2 && got != room {
			t.Errorf("beside two %v mm has room for %d", c.bed, got)
		}
		// Laid, they stand off until they touch one another: over is 1 + 2/√3 of their diameter, or the bed and two of them.
		over := max(c.bed+2*d, touch+2*d)
		if r := Lay(same(3, d), bed, Laying{}); math.Abs(float64(r.Over-over)) > 1e-6 {
			t.Errorf("three on %v mm are %v over, want %v", c.bed, r.Over, over)
		}
	}
}
