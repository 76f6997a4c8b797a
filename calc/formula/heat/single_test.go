package heat

import (
	"testing"

	"contralay/model/unit"
)

// alone is the current that brings one wire in free air to a temperature.
func alone(d, conductor unit.Millimetre, ohmPer1000ft float64, ambient, rated unit.Celsius) float64 {
	lo, hi := 0.0, 500.0
	for range 60 {
		i := (lo + hi) / 2
		q := unit.WattPerMetre(i * i * ohmPer1000ft * 3.28084 / 1000 * grows(rated))
		surface := rated - Rise(q, d, conductor)
		if surface <= ambient || Surface(d, surface, ambient, Emissivity, seaLevel) < q {
			hi = i
		} else {
			lo = i
		}
	}
	return lo
}

// A single wire in free air comes within 6 % (normal wall) and 7 % (thin wall) of the
// published points, on the safe side. Source: 47 A for 14 AWG at a rise of 150 °C, AC
// 43.13-1B p. 11-27; 21.5 A and 16.2 A for 20 and 22 AWG at 140 °C, the same circular's
// example in 11-69, from memory. Resistances of tin copper: its table 11-9.
func TestSingleWire(t *testing.T) {
	for _, c := range []struct {
		name         string
		thin, normal unit.Millimetre // finished diameters
		conductor    unit.Millimetre
		ohm, ambient float64
		published    float64
	}{
		{"14 AWG", 2.16, 2.39, 1.71, 3.06, 50, 47},
		{"20 AWG", 1.27, 1.47, 0.97, 9.88, 60, 21.5},
		{"22 AWG", 1.09, 1.27, 0.76, 16.2, 60, 16.2},
	} {
		for _, w := range []struct {
			wall string
			d    unit.Millimetre
			most float64
		}{{"thin", c.thin, 0.07}, {"normal", c.normal, 0.06}} {
			got := alone(w.d, c.conductor, c.ohm, unit.Celsius(c.ambient), 200)
			if got > c.published || got < c.published*(1-w.most) {
				t.Errorf("%s, %s wall: %.1f A, published %.1f", c.name, w.wall, got, c.published)
			}
		}
	}
}
