package heat

import (
	"math"

	"contralay/model/unit"
)

const (
	kelvin = 273.15
	// seaLevel is the pressure of the standard atmosphere, Pa; exact by definition.
	seaLevel = 101_325.0
	gravity  = 9.80665 // m/s², exact by definition
	gasOfAir = 287.05  // J/(kg K), dry air; from memory
	// stefan is the constant of Stefan and Boltzmann, W/(m² K⁴): CODATA 2018, exact.
	stefan = 5.670374419e-8
)

// air is still air at a temperature and pressure.
type air struct{ mu, k, cp, rho float64 }

// airAt gives the properties of air at t kelvin and p pascal.
//
//	μ = 1.458·10⁻⁶ T^1.5 / (T + 110.4)
//	k = 2.64638·10⁻³ T^1.5 / (T + 245.4·10^(−12/T))
//	c = 1002.5 + 275·10⁻⁶ (T − 200)²
//	ρ = p / (287.05 T)
//
// Source: μ and k are those of the US Standard Atmosphere 1976, as two public libraries have them,
// quoted second hand; c is a fit within 0.3 % between 200 and 600 K.
func airAt(t, p float64) air {
	t15 := t * math.Sqrt(t)
	return air{
		mu:  1.458e-6 * t15 / (t + 110.4),
		k:   2.64638e-3 * t15 / (t + 245.4*math.Exp(-12*math.Ln10/t)),
		cp:  1002.5 + 275e-6*(t-200)*(t-200),
		rho: p / (gasOfAir * t),
	}
}

// Pressure is that of the standard atmosphere at a height in mm above the sea, in
// pascal, up to 20 km. Source: ISO 2533 / ICAO standard atmosphere, from memory.
func Pressure(height unit.Millimetre) float64 {
	h := math.Min(math.Max(float64(height)/1000, 0), 20_000)
	if h <= 11_000 {
		return seaLevel * math.Pow(1-2.25577e-5*h, 5.25588)
	}
	return 22_632 * math.Exp(-(h-11_000)/6341.62)
}

// convection is what natural convection takes from a level cylinder, W/m: diameter
// in m, surface and ambient in K.
//
//	Nu = {0.60 + 0.387 Ra^(1/6) / [1 + (0.559/Pr)^(9/16)]^(8/27)}²,  h = Nu k / D
//	Ra = g β ΔT D³ / (ν α), properties at the mean temperature
//
// Source: Churchill and Chu 1975 (from memory), as printed in heat transfer
// textbooks; Ra ≤ 10¹². Correlations for this case differ by a tenth.
func convection(d, surface, ambient, p float64) float64 {
	dt := surface - ambient
	if dt <= 0 {
		return 0
	}
	a := airAt((surface+ambient)/2, p)
	nu, alpha := a.mu/a.rho, a.k/(a.rho*a.cp)
	ra := gravity * 2 / (surface + ambient) * dt * d * d * d / (nu * alpha)
	pr := nu / alpha
	// Powers by roots, which are exact and a fifth of the time of math.Pow: this is what
	// a key that changes a current waits for.
	x := math.Sqrt(0.559 / pr)
	y := math.Cbrt(math.Cbrt(math.Cbrt(1 + x*math.Sqrt(math.Sqrt(math.Sqrt(x)))))) // (1 + x^(9/8))^(1/27)
	y *= y
	y *= y
	n := 0.60 + 0.387*math.Cbrt(math.Sqrt(ra))/(y*y)
	return math.Pi * a.k * n * n * dt
}

// radiation is what a surface radiates to surroundings at ambient, W/m.
func radiation(d, surface, ambient, emissivity float64) float64 {
	return math.Pi * d * emissivity * stefan * (surface*surface*surface*surface - ambient*ambient*ambient*ambient)
}

// Surface is the heat that still air takes from a level cylinder, in W/m: outside
// diameter in mm, emissivity 0 … 1, pressure in pascal. Never negative.
func Surface(d unit.Millimetre, surface, ambient unit.Celsius, emissivity unit.Ratio, pressure float64) unit.WattPerMetre {
	if !(d > 0) || !(surface > ambient) || !(pressure > 0) {
		return 0
	}
	m, s, a := float64(d)/1000, float64(surface)+kelvin, float64(ambient)+kelvin
	return unit.WattPerMetre(convection(m, s, a, pressure) + radiation(m, s, a, float64(emissivity)))
}

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
