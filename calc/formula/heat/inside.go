package heat

import (
	"math"

	"contralay/model/unit"
)

const (
	// InsulationK is the conductivity of ETFE, 0.24 W/(m K); from memory.
	InsulationK unit.Conductivity = 0.24
	// SheathK is that of a heat-shrink elastomer, 0.2 W/(m K); from memory.
	SheathK unit.Conductivity = 0.2
	// Emissivity of dull polymer surfaces; common practice, no source.
	Emissivity unit.Ratio = 0.9
	// leastK is what wire and air conduct at least: air alone, warm.
	leastK = 0.03
)

// Wire is what one insulated wire conducts across itself:
//
//	k = k_ins (1 + f)/(1 − f),   f = (conductor ÷ finished diameter)²
//
// the conductor taken as perfect. f in 0 … 1, not 1. Source: derived; published for
// potted windings as the first of two steps.
func Wire(f unit.Ratio, insulation unit.Conductivity) unit.Conductivity {
	v := math.Min(math.Max(float64(f), 0), 0.95)
	return insulation * unit.Conductivity((1+v)/(1-v))
}

// Effective is what wires of conductivity k that fill a share of the section conduct
// across the bundle, the rest being still air at t:
//
//	k_eff = k_a [(1 + v) k + (1 − v) k_a] / [(1 − v) k + (1 + v) k_a]
//
// Source: Maxwell's mixture in two dimensions (Hashin and Shtrikman's bound), the
// second of the two steps. Measured dry harnesses were not found.
func Effective(k unit.Conductivity, fill unit.Ratio, t unit.Celsius) unit.Conductivity {
	a := airAt(math.Max(float64(t)+kelvin, 150), seaLevel).k
	w, v := float64(k), math.Min(math.Max(float64(fill), 0), 0.95)
	return unit.Conductivity(math.Max(leastK, a*((1+v)*w+(1-v)*a)/((1-v)*w+(1+v)*a)))
}

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
