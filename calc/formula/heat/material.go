package heat

import (
	"math"

	"contralay/model/unit"
)

const (
	// InsulationK is the conductivity of ETFE, 0.24 W/(m K): two plastics makers' pages, quoted second
	// hand, have 0.237 and 0.238 to 0.24.
	InsulationK unit.Conductivity = 0.24
	// SheathK is that of a heat-shrink elastomer, 0.2 W/(m K); from memory.
	SheathK unit.Conductivity = 0.2
	// Emissivity of dull polymer surfaces; common practice, no source.
	Emissivity unit.Ratio = 0.9
)

// Rise is how much warmer a conductor is than the outside of its insulation, in K:
//
//	ΔT = q ln(d/d_c) / (2π k_ins)
//
// q the heat it makes in W/m, d and d_c finished and conductor diameter. Exact for
// one wire. Nothing where a diameter is not known.
func Rise(q unit.WattPerMetre, d, conductor unit.Millimetre) unit.Celsius {
	if !(conductor > 0) || !(d > conductor) || !unit.Finite(float64(q)) {
		return 0
	}
	return unit.Celsius(float64(q) * math.Log(float64(d/conductor)) / (2 * math.Pi * float64(InsulationK)))
}

// Grows is resistance at t ÷ resistance at 20 °C of copper: AC 43.13-1B p. 11-22.
func Grows(t unit.Celsius) unit.Ratio {
	return unit.Ratio((copperZero + float64(t)) / (copperZero + 20))
}

// copperZero is how many degrees below 0 °C copper's resistance would end if it fell in
// a straight line.
const copperZero = 234.5

// Alone is the current that brings one bare wire in still air, level, to a temperature:
// diameters in mm, its highest resistance at 20 °C. 0 where it does not take any, or
// where a value is not known.
func Alone(d, conductor unit.Millimetre, ohm unit.OhmPerKilometre, ambient, rated unit.Celsius, pressure float64) unit.Ampere {
	return Section{Discs: []Disc{{OverMM: d, CoreMM: conductor, Ohm: ohm, Rated: rated}}, InsideMM: d, Ambient: ambient,
		Pressure: pressure}.single()
}

// single is what the one wire of a section may carry in its sheath, or bare: there the
// heat at its rating is known, and with it its current, exactly.
func (s Section) single() unit.Ampere {
	d, outside := s.Discs[0], max(s.OutsideMM, s.InsideMM)
	if !(d.OverMM > 0) || !(d.Ohm > 0) || !(d.Rated > s.Ambient) || !unit.Finite(float64(d.Rated)) {
		return 0
	}
	if s.Pressure <= 0 {
		s.Pressure = seaLevel
	}
	lo, hi := 0.0, float64(Surface(outside, d.Rated, s.Ambient, Emissivity, s.Pressure))
	for range 60 {
		q := unit.WattPerMetre((lo + hi) / 2)
		under := d.Rated - Rise(q, d.OverMM, min(d.CoreMM, d.OverMM*0.97))
		surface := under - unit.Celsius(float64(q)*math.Log(float64(outside/s.InsideMM))/(2*math.Pi*float64(SheathK)))
		if Surface(outside, surface, s.Ambient, Emissivity, s.Pressure) > q {
			lo = float64(q)
		} else {
			hi = float64(q)
		}
	}
	return unit.Ampere(math.Sqrt(lo / (float64(d.Ohm) / 1000 * float64(Grows(d.Rated)))))
}
