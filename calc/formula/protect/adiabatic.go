package protect

import (
	"math"

	"contralay/model/unit"
)

// AdiabaticFor is how long the heat of a short may be taken to stay in the copper.
// Source: the adiabatic equation of IEC 60364-5-54 is given for up to 5 s (as quoted
// on a cable engineering reference page).
const AdiabaticFor unit.Second = 5

// copper is the constant of the adiabatic equation for copper, A√s/mm², and zero the
// temperature below 0 °C where the line of its resistance meets nothing.
const (
	copper = 226.0
	zero   = 234.5
)

// Withstand is what a copper conductor bears, in A²s, from one temperature to another:
//
//	I²t = k²S²,   k = 226 √ln[1 + (θf − θi)/(234.5 + θi)]
//
// S in mm², θ in °C, up to AdiabaticFor. False for no copper, and where the end is not
// warmer than the beginning. Source: IEC 60364-5-54, as quoted on a cable engineering
// reference page. From its constants (3.45·10⁻³ J/K·mm³, 17.241·10⁻⁶ Ω·mm) the factor
// is 225.7; 226 is what is printed.
func Withstand(s unit.SquareMM, from, to unit.Celsius) (unit.AmpereSqSecond, bool) {
	if !(s > 0) || !(to > from) || !(from > -zero) {
		return 0, false
	}
	k := copper * math.Sqrt(math.Log1p(float64(to-from)/(zero+float64(from))))
	v := k * k * float64(s) * float64(s)
	if !unit.Finite(v) {
		return 0, false
	}
	return unit.AmpereSqSecond(v), true
}
