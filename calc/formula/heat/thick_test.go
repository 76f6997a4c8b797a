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
