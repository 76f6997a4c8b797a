package heat

import (
	"math"

	"contralay/model/unit"
)

// Shell is one ring of a bundle.
type Shell struct {
	OuterMM unit.Millimetre   // its outside diameter; rising from shell to shell
	At20    unit.WattPerMetre // Σ I²R of its wires, with R at 20 °C
}

// Bundle is what is to be balanced.
type Bundle struct {
	Shells   []Shell // from the axis outward
	WireK    unit.Conductivity
	Fill     unit.Ratio        // share of the section that wires fill
	K        unit.Conductivity // effective conductivity where it is given; 0: worked out
	SheathMM unit.Millimetre   // outside diameter of the sheath; 0: none
	Ambient  unit.Celsius
	Pressure float64 // pascal; 0: sea level
}

// Result is a bundle in balance.
type Result struct {
	Surface unit.Celsius   // of sheath, or of the bundle
	Bundle  unit.Celsius   // under the sheath
	Shells  []unit.Celsius // at the inner face of each
	Heat    unit.WattPerMetre
	Passes  int
}

// hottest is where the balance gives up: no insulation here lives above it, and a
// current that heats further has no steady state worth naming.
const hottest = 600.0

// Solve balances a bundle: surface and shells agree to 10⁻⁴ °C. From the surface
// inward, for a shell between radii a and b with heat q of its own and Q from within:
//
//	T(a) − T(b) = Q/(2πk) ln(b/a) + q/(2πk) [½ − a² ln(b/a)/(b² − a²)]
//
// with a = 0: q/(4πk); through the sheath Q/(2πk_s) ln(r_o/r_i). Heat rises with the
// resistance, (234.5 + T)/254.5. warm is a result to start from, or nil. False where
// there is nothing to balance, or no steady state below 600 °C.
//
// Source: conduction in a cylinder with uniform sources, derived; any textbook.
func (b Bundle) Solve(warm *Result) (Result, bool) { return b.solve(warm, 1e-4) }

// solve is Solve to within so many °C.
func (b Bundle) solve(warm *Result, within float64) (Result, bool) {
	n := len(b.Shells)
	if n == 0 || !(b.Shells[n-1].OuterMM > 0) || !unit.Finite(float64(b.Ambient)) || b.Ambient <= -kelvin {
		return Result{}, false
	}
	p := b.Pressure
	if p <= 0 {
		p = seaLevel
	}
	outer := math.Max(float64(b.Shells[n-1].OuterMM), float64(b.SheathMM))
	out := Result{Shells: make([]unit.Celsius, n), Surface: b.Ambient, Bundle: b.Ambient}
	for k := range out.Shells {
		out.Shells[k] = b.Ambient
	}
	if warm != nil && len(warm.Shells) == n {
		copy(out.Shells, warm.Shells)
		out.Surface, out.Bundle = warm.Surface, warm.Bundle
	}
	if !b.sound() {
		return Result{}, false
	}
	for out.Passes = 1; out.Passes <= 200; out.Passes++ {
		total := 0.0
		for k, s := range b.Shells {
			total += float64(s.At20) * grows(out.Shells[k])
		}
		surface := balance(outer/1000, float64(b.Ambient)+kelvin, p, total, float64(out.Surface)+kelvin, within/1000) - kelvin
		t := surface
		if r := float64(b.Shells[n-1].OuterMM); b.SheathMM > b.Shells[n-1].OuterMM {
			t += total / (2 * math.Pi * float64(SheathK)) * math.Log(float64(b.SheathMM)/r)
		}
		under, moved, inside := t, math.Abs(surface-float64(out.Surface)), total
		kEff := float64(b.K)
		if kEff <= 0 {
			kEff = float64(Effective(b.WireK, b.Fill, unit.Celsius((t+float64(out.Shells[0]))/2)))
		}
		for k := n - 1; k >= 0; k-- {
			own := float64(b.Shells[k].At20) * grows(out.Shells[k])
			inside -= own
			rb, ra := float64(b.Shells[k].OuterMM), 0.0
			if k > 0 {
				ra = float64(b.Shells[k-1].OuterMM)
			}
			if ra > 0 {
				l := math.Log(rb / ra)
				t += inside/(2*math.Pi*kEff)*l + own/(2*math.Pi*kEff)*(0.5-ra*ra*l/(rb*rb-ra*ra))
			} else {
				t += own / (4 * math.Pi * kEff)
			}
			moved = math.Max(moved, math.Abs(t-float64(out.Shells[k])))
			out.Shells[k] = unit.Celsius(t)
		}
		out.Surface, out.Bundle, out.Heat = unit.Celsius(surface), unit.Celsius(under), unit.WattPerMetre(total)
		if !(t < hottest) {
			return Result{}, false
		}
		if moved < within {
			return out, true
		}
	}
	return Result{}, false
}

// sound reports whether radii rise and no shell makes cold.
func (b Bundle) sound() bool {
	last := unit.Millimetre(0)
	for _, s := range b.Shells {
		if !(s.OuterMM > last) || !(s.At20 >= 0) || !unit.Finite(float64(s.At20)) || !unit.Finite(float64(s.OuterMM)) {
			return false
		}
		last = s.OuterMM
	}
	return b.K >= 0 && b.WireK >= 0
}

// grows is resistance at t ÷ resistance at 20 °C of copper: AC 43.13-1B p. 11-22.
func grows(t unit.Celsius) float64 { return (234.5 + float64(t)) / 254.5 }

// balance is the surface temperature in K at which still air takes q W/m from a
// cylinder of d metres, to within so many K. What air takes rises with the temperature, so Newton's steps
// are kept between what is known to be too cold and too hot.
func balance(d, ambient, p, q, start, within float64) float64 {
	if q <= 0 {
		return ambient
	}
	lo, hi := ambient, ambient+4000
	t := start
	if !(t > lo && t < hi) {
		t = ambient + 10
	}
	for range 60 {
		c := convection(d, t, ambient, p)
		f := c + radiation(d, t, ambient, float64(Emissivity)) - q
		if f > 0 {
			hi = t
		} else {
			lo = t
		}
		// Convection goes nearly with the five fourths power of the difference; where it
		// does not quite, a step more makes up for it.
		slope := 1.25*c/(t-ambient) + 4*math.Pi*d*float64(Emissivity)*stefan*t*t*t
		next := t - f/slope
		if !(next > lo && next < hi) {
			next = (lo + hi) / 2
		}
		if math.Abs(next-t) < within {
			return next
		}
		t = next
	}
	return t
}
