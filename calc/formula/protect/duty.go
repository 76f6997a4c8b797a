package protect

import (
	"math"

	"contralay/model/unit"
)

// Duty is a load that comes and goes: so much for On out of every Period, and Rest in
// between. A load that is always on has no On.
type Duty struct {
	On, Period unit.Second
	Amps, Rest unit.Ampere
}

// Comes reports whether the load comes and goes so fast that its mean heat counts: on
// for AdiabaticFor at a time and no longer, which is short beside the time a conductor
// takes to warm up (a single 22 AWG in air some 20 s, derived; a bundle minutes), and
// for less than its period. Anything else counts as always on.
func (d Duty) Comes() bool {
	return d.On > 0 && d.On <= AdiabaticFor && d.Period > d.On && unit.Finite(float64(d.Period))
}

// RMS is the steady current that heats as much:
//
//	I = √[(a² t + b² (T − t)) / T]
//
// a for a time t of every T, b the rest. a itself where the load does not come and go.
func (d Duty) RMS() unit.Ampere {
	if !d.Comes() {
		return max(d.Amps, d.Rest)
	}
	a, b, w := float64(d.Amps), float64(d.Rest), float64(d.On/d.Period)
	return unit.Ampere(math.Sqrt(a*a*w + b*b*(1-w)))
}

// Pulse is what one time on puts into a conductor, in A²s; 0 where it does not come
// and go.
func (d Duty) Pulse() unit.AmpereSqSecond {
	if !d.Comes() {
		return 0
	}
	return unit.AmpereSqSecond(float64(d.Amps) * float64(d.Amps) * float64(d.On))
}
