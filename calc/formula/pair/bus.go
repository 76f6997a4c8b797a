package pair

import "contralay/model/unit"

// What a bus of ISO 11898-2 wants of its pair: impedance, and the resistance of one
// conductor. Source: the manual of an instrument maker, p. 40, tables 9 and 10, which
// quotes the standard.
const (
	LeastOhm     unit.Ohm             = 95
	MostOhm      unit.Ohm             = 140
	ConductorMax unit.OhmPerKilometre = 70 // nominal, mΩ/m
)

// Lengths is how long a bus may be, a single stub, and all stubs together.
type Lengths struct {
	Rate             unit.KilobitPerSec
	Bus, Stub, Stubs unit.Millimetre
}

// rates are the lengths by bit rate, fastest first. Source: the manual of a maker of
// engine controllers. Makers differ: at 1000 kbit/s others give 20 and 40 m.
var rates = [...]Lengths{
	{1000, 25_000, 1_500, 7_500}, {800, 50_000, 2_500, 12_500}, {500, 100_000, 5_500, 27_500},
	{250, 250_000, 11_000, 55_000}, {125, 500_000, 22_000, 110_000}, {50, 1_000_000, 55_000, 275_000},
}

// At is the lengths for a bit rate: those of the next faster one in the table. False
// for none, and above the fastest.
func At(rate unit.KilobitPerSec) (Lengths, bool) {
	if !(rate > 0) || rate > rates[0].Rate {
		return Lengths{}, false
	}
	best := rates[0]
	for _, r := range rates {
		if r.Rate >= rate {
			best = r
		}
	}
	return best, true
}
