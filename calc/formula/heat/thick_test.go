package heat

import "testing"

// A cable of less than an ohm a kilometre has a limit like any other: 1 AWG of 0.4888 Ω/km (55A0811 table, quoted second
// hand), 150 °C, in air of 20.
func TestLimitOfAThickCable(t *testing.T) {
	s := Section{Discs: []Disc{{OverMM: 11.8, CoreMM: 9.4, Ohm: 0.4888, Amps: 10, Rated: 150}}, InsideMM: 11.8, Ambient: 20}
	rays, ok := Trace(s)
	if !ok {
		t.Fatal("not traced")
	}
	limits := rays.Limits(s)
	if len(limits) != 1 || !(limits[0] > 150 && limits[0] < 600) { // free air of AC 43.13-1B figure 11-4: 1 AWG some 300 A at this rise
		t.Errorf("%v", limits)
	}
}

// What carries nothing is as warm as the air, and so is its surface.
func TestIdleIsAsTheAir(t *testing.T) {
	s := Section{Discs: []Disc{{OverMM: 2, CoreMM: 1.4, Ohm: 20}}, InsideMM: 2, OutsideMM: 3.2, Ambient: 40}
	rays, _ := Trace(s)
	r, ok := rays.Solve(s)
	if !ok || r.Surface < 39.999 || r.Surface > 40.001 || r.Discs[0] < 39.999 || r.Discs[0] > 40.001 {
		t.Errorf("%v: surface %v, wire %v", ok, r.Surface, r.Discs)
	}
}
