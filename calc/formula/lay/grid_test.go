package lay

import (
	"math"
	"math/rand"
	"testing"

	"contralay/model/unit"
)

// Two hundred rings of three to nine pieces of mixed sizes, the same at every run, laid so long that they are as good as straight: each
// lies
// on the bed or as far off it as is told, none lies in another, and what is open is shared alike between neighbours that touch the bed.
func TestTwoHundredRingsLieClear(t *testing.T) {
	chance := rand.New(rand.NewSource(9))
	closed := 0
	for n := range 200 {
		d := make([]unit.Millimetre, 3+chance.Intn(7))
		for i := range d {
			d[i] = unit.Millimetre(0.9 + 0.8*chance.Float64()) // none so thin that it is lost between two others
		}
		over := unit.Millimetre(1 + 5*chance.Float64())
		bed := Bed{Crown: over, Tape: over * unit.Millimetre(0.95+0.05*chance.Float64())}
		r := Lay(d, bed, Laying{Lay: 1e7})
		if !r.Closes {
			continue
		}
		closed++
		stand := max(r.Inner, bed.Crown/2)
		var slack []float64
		for i := range d {
			if math.Abs(float64(r.Radii[i]-(stand+d[i]/2))) > 1e-9 {
				t.Fatalf("ring %d: piece %d lies at %v, want %v", n, i, r.Radii[i], stand+d[i]/2)
			}
			k := (i + 1) % len(d)
			turn := math.Mod(float64(r.Angles[k]-r.Angles[i])+4*math.Pi, 2*math.Pi)
			a, b, c := float64(r.Inner+d[i]/2), float64(r.Inner+d[k]/2), float64(d[i]+d[k])/2
			slack = append(slack, turn-math.Acos((a*a+b*b-c*c)/(2*a*b))) // law of cosines: two that touch on the bed
			for j := range i {
				sinI, cosI := math.Sincos(float64(r.Angles[i]))
				sinJ, cosJ := math.Sincos(float64(r.Angles[j]))
				x, y := float64(r.Radii[i])*sinI-float64(r.Radii[j])*sinJ, float64(r.Radii[i])*cosI-float64(r.Radii[j])*cosJ
				if math.Hypot(x, y) < float64(d[i]+d[j])/2-1e-6 {
					t.Fatalf("ring %d: %d and %d lie in one another: %v apart", n, i, j, math.Hypot(x, y))
				}
			}
		}
		for _, v := range slack {
			if math.Abs(v-slack[0]) > 1e-6 || v < -1e-6 {
				t.Fatalf("ring %d: what is open between neighbours is %v", n, slack)
			}
		}
		if gap := slack[0] * float64(len(d)) / (2 * math.Pi); math.Abs(gap-float64(r.Gap)) > 1e-6 {
			t.Fatalf("ring %d: open %v, told %v", n, gap, r.Gap)
		}
	}
	if closed < 100 {
		t.Errorf("only %d close", closed)
	}
}
