package lay

import (
	"fmt"
	"math"
	"testing"

	"contralay/model/unit"
)

// Below this share of its neighbours' diameter a wire between two equal ones is
// lost: they touch over it. Source: law of cosines, straight wires, printed to
// 0.001; a unit of that to either side leaves the rounding out.
func TestLostBetweenTwo(t *testing.T) {
	const unitOfPrint = 0.001
	for _, c := range []struct{ core, share float64 }{
		{1, 0.155}, {2, 0.188}, {3, 0.203}, {5, 0.219}, {8, 0.229}, {12, 0.236}, {2000, 0.250},
	} {
		t.Run(fmt.Sprintf("core %g", c.core), func(t *testing.T) {
			bed, how := Bed{mm(c.core), mm(c.core)}, Laying{}
			// Rooms of open angle left, so nothing lifts.
			bare := Lay([]mm{1, 1, 1}, bed, how)
			below := Lay([]mm{1, mm(c.share - unitOfPrint), 1, 1}, bed, how)
			above := Lay([]mm{1, mm(c.share + unitOfPrint), 1, 1}, bed, how)
			if math.Abs(float64(below.Gap-bare.Gap)) > 1e-12 {
				t.Errorf("below: gap %.9f, without it %.9f", below.Gap, bare.Gap)
			}
			// A unit of print is worth some 0.2 % of one wire's angle.
			if one := float64(1-bare.Gap) / 3; float64(bare.Gap-above.Gap) < 1e-4*one {
				t.Errorf("above: gap %.9f, without it %.9f", above.Gap, bare.Gap)
			}
			if bare.Lift != 0 || below.Lift != 0 || above.Lift != 0 {
				t.Error("lifted")
			}
		})
	}
}

// tightest is Σθ of the chain that takes most angle, over every choice of wires
// that are lost: 2ⁿ of them, none left out.
func tightest(d []mm, r, lay mm) float64 {
	most := 0.0
	for set := range 1 << len(d) {
		var kept []mm
		for i, x := range d {
			if set>>i&1 == 1 {
				kept = append(kept, x)
			}
		}
		if len(kept) >= 2 {
			most = math.Max(most, cycle(kept, r, lay))
		}
	}
	return most
}

// Any ring, in any order, with wires down to a twentieth of the thickest, against
// every choice of lost ones. Tolerance: ties in the search are cut at 1e-12 a step.
func TestLostAgainstAllChoices(t *testing.T) {
	rng := newRand(5)
	lifted, lost := 0, 0
	for k := range 400 {
		d := rng.sizes(3+k%6, 0.15, 3)
		bed := Bed{mm(rng.between(0.5, 8)), 0}
		bed.Tape = bed.Crown * mm(rng.between(0.92, 1))
		how := Laying{}
		if k%4 > 0 {
			how.Ratio = unit.Ratio(rng.between(6, 20))
		}
		ring := Lay(d, bed, how)
		sum := tightest(d, ring.Inner, ring.Lay)
		if math.Abs(sum-cycle(d, ring.Inner, ring.Lay)) > 1e-9 {
			lost++
		}
		if ring.Lift > 0 {
			lifted++
			if math.Abs(sum-2*math.Pi) > 1e-8 {
				t.Errorf("%v on %v at %g: lifted to %.6f where Σθ = %.9f", d, bed, how.Ratio, ring.Inner, sum)
			}
		} else if want := 1 - sum/(2*math.Pi); !near(float64(ring.Gap), want, 1e-10) {
			t.Errorf("%v on %v at %g: gap %.9f, want %.9f", d, bed, how.Ratio, ring.Gap, want)
		}
		apart(t, d, ring)
	}
	t.Logf("%d lifted, %d with lost wires", lifted, lost)
	if lifted < 50 || lost < 20 {
		t.Error("too few of a kind to mean anything")
	}
}

// apart checks that a laid ring keeps every two wires apart that are not lost:
// those for which no chain once round is as tight without them.
func apart(t *testing.T, d []mm, ring Ring) {
	t.Helper()
	whole := tightest(d, ring.Inner, ring.Lay)
	for i := range d {
		if tightest(without(d, i), ring.Inner, ring.Lay) > whole-1e-9 {
			continue // lost, or as good as
		}
		for j := range d {
			if i == j || tightest(without(d, j), ring.Inner, ring.Lay) > whole-1e-9 {
				continue
			}
			off := math.Abs(math.Remainder(float64(ring.Angles[i]-ring.Angles[j]), 2*math.Pi))
			if need := float64(NeighbourAngle(d[i], d[j], ring.Inner, ring.Lay)); off < need-1e-7 && need <= math.Pi {
				t.Errorf("%v: %d and %d stand %.6f apart, need %.6f", d, i, j, off, need)
			}
		}
	}
}
