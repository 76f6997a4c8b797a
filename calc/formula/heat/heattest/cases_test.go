package heattest

import (
	"math"
	"testing"
)

// again solves a case with cells of another size than the file's and compares every
// conductor and the surface: within 1 % of the rise.
func again(t *testing.T, c Case) {
	t.Helper()
	got, err := c.Solve(0.06)
	if err != nil {
		t.Errorf("%s: %v", c.Name, err)
		return
	}
	worst := 0.0
	for i, v := range got.Conductors {
		rise, want := float64(v-c.Air), float64(c.Want.Conductors[i]-c.Air)
		worst = math.Max(worst, math.Abs(rise/want-1))
		if math.Abs(rise-want) > 0.01*want+0.01 { // the file has 0.01 °C
			t.Errorf("%s, wire %d: %.2f °C, the file has %.2f", c.Name, i, v, c.Want.Conductors[i])
		}
	}
	t.Logf("%s: hottest %.2f °C, the file has %.2f; every wire within %.2f %% of its rise", c.Name, got.Hottest(), c.Want.Hottest(),
		100*worst)
	within(t, c.Name+", surface over air", float64(got.Surface-c.Air), float64(c.Want.Surface-c.Air), 0.01)
}

// The cases are what they say: no circle overlaps another or the sheath, something carries
// current, and the hottest is 15 to 145 K over the air. Among them are every kind of load.
func TestCasesAreSound(t *testing.T) {
	cases := Cases(t)
	if len(cases) != 30 {
		t.Errorf("%d cases, not 30", len(cases))
	}
	names := map[string]bool{}
	for _, c := range cases {
		if names[c.Name] {
			t.Errorf("%s is there twice", c.Name)
		}
		names[c.Name] = true
		if n := len(c.Wires); n < 6 || n > 61 || c.Air < 20 || c.Air > 110 || c.SheathWall < 0.4 || c.SheathWall > 1.3 {
			t.Errorf("%s: %d wires in air of %v °C under %v mm", c.Name, n, c.Air, c.SheathWall)
		}
		if rise := c.Want.Hottest() - c.Air; rise < 15 || rise > 145 {
			t.Errorf("%s: the hottest is %v K over the air", c.Name, rise)
		}
		heat := 0.0
		for i, w := range c.Wires {
			if out := math.Hypot(float64(w.X), float64(w.Y)) + float64(w.Over)/2 - float64(c.SheathInner)/2; out > 1e-3 {
				t.Errorf("%s: wire %d is %.4f mm inside the sheath's wall", c.Name, i, out)
			}
			for j, o := range c.Wires[:i] {
				if in := float64(w.Over+o.Over)/2 - math.Hypot(float64(w.X-o.X), float64(w.Y-o.Y)); in > 1e-3 {
					t.Errorf("%s: wires %d and %d overlap by %.4f mm", c.Name, i, j, in)
				}
			}
			if w.Amps < 0 {
				t.Errorf("%s: wire %d carries %v A", c.Name, i, w.Amps)
			}
			heat += float64(w.Amps) * float64(w.Amps) * float64(w.OhmPerKm) / 1000 *
				(1 + copper*(float64(c.Want.Conductors[i])-20))
		}
		// What the conductors make is what the surface gives away, with the film of its temperature.
		wide := float64(c.SheathInner + 2*c.SheathWall)
		away := film(wide, float64(c.Want.Surface), float64(c.Air)) * math.Pi * wide / 1000 * float64(c.Want.Surface-c.Air)
		within(t, c.Name+", W/m at the surface", away, heat, 0.002)
	}
}

// Three small ones are solved again: 7 × 26, 6 of 7 × 16, and two of 20 AWG in a layer of 26.
// The rest are behind a build tag (see Cases).
func TestThreeAgain(t *testing.T) {
	cases := Cases(t)
	for _, k := range []int{0, 2, 26} {
		if k >= len(cases) || len(cases[k].Wires) > 14 {
			t.Fatalf("case %d is not there or not small", k)
		}
		again(t, cases[k])
	}
}
