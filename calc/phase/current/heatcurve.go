package current

import (
	"math"
	"slices"

	"contralay/calc/formula/heat"
	"contralay/model/unit"
)

// curve is how warm a layer gets by the heat made in it, the other layers as they
// are. Every limit of the layer is read off it, so that a bundle is balanced some ten
// times a layer and not some times for each of its wires. Between its points it is a
// cubic, good to some thousandths of a degree.
type curve struct {
	q     []float64 // heat of the layer at 20 °C, W/m, rising
	shell []float64 // its temperature
	under []float64 // that of the bundle's outside
}

// curvePoints is how many steps of temperature a curve has up to the rating.
const curvePoints = 6

// curveOf works a layer's curve out, from no heat in it to the highest rating.
func curveOf(b heat.Bundle, r heat.Result, layer int, rated unit.Celsius) *curve {
	c := &curve{}
	addPoint := func(q float64) bool {
		trial := b
		trial.Shells = slices.Clone(b.Shells)
		trial.Shells[layer].At20 = unit.WattPerMetre(q)
		res, ok := trial.Solve(&r)
		if !ok {
			return false
		}
		r = res
		c.q, c.shell, c.under = append(c.q, q), append(c.shell, float64(res.Shells[layer])), append(c.under, float64(res.Bundle))
		return true
	}
	if !addPoint(0) {
		return c
	}
	// The first step is small, to learn the slope; then so many to the rating.
	step, rise := math.Max(0.5, float64(b.Shells[layer].At20)), math.Max(float64(rated)-c.shell[0], 1)/curvePoints
	for range 4 * curvePoints {
		if c.shell[len(c.shell)-1] > float64(rated)+1 {
			break
		}
		if !addPoint(c.q[len(c.q)-1] + step) {
			step /= 2
			if step < 1e-6 {
				break
			}
			continue
		}
		n := len(c.q) - 1
		if slope := (c.shell[n] - c.shell[n-1]) / (c.q[n] - c.q[n-1]); slope > 0 {
			step = rise / slope
		}
	}
	return c
}

// read is the layer's temperature and that of the bundle's outside at a heat; past the
// last point the last slope goes on.
func (c *curve) read(q float64) (shell, under float64) {
	n := len(c.q)
	if n < 2 {
		return c.shell[0], c.under[0]
	}
	k := min(max(1, slices.IndexFunc(c.q, func(v float64) bool { return v >= q })), n-1)
	if c.q[n-1] < q {
		k = n - 1
	}
	return cubic(c.q, c.shell, k, q), cubic(c.q, c.under, k, q)
}

// cubic is Hermite's cubic between points k−1 and k, slopes taken over the neighbours.
func cubic(x, y []float64, k int, where float64) float64 {
	slope := func(i int) float64 {
		a, b := max(0, i-1), min(len(x)-1, i+1)
		if a == i || b == i {
			return (y[b] - y[a]) / (x[b] - x[a])
		}
		// The slope of the parabola through three points.
		h0, h1 := x[i]-x[a], x[b]-x[i]
		return ((y[i]-y[a])/h0*h1 + (y[b]-y[i])/h1*h0) / (h0 + h1)
	}
	h := x[k] - x[k-1]
	t := (where - x[k-1]) / h
	if t > 1 {
		return y[k] + slope(k)*(where-x[k])
	}
	t2, t3 := t*t, t*t*t
	return (2*t3-3*t2+1)*y[k-1] + (t3-2*t2+t)*h*slope(k-1) + (-2*t3+3*t2)*y[k] + (t3-t2)*h*slope(k)
}

// most is the current that brings a conductor to its rating, the others as entered;
// 0 where they alone do.
func (c Conductor) most(v *curve, b heat.Bundle, single bool, rated unit.Celsius) unit.Ampere {
	if len(v.q) == 0 {
		return 0
	}
	others := math.Max(0, float64(b.Shells[c.Layer].At20)-c.Q20(float64(c.Amps)))
	per := float64(heat.Rise(1, c.D, c.Dc)) // K for a W/m
	over := func(ownHeat float64) float64 { // own heat at 20 °C
		shell, under := v.read(others + ownHeat)
		grow := (234.5 + shell) / 254.5
		if single {
			return under + ownHeat*grow*per - float64(rated)
		}
		mean := (others + ownHeat) / float64(max(c.Count, 1))
		return shell + math.Max(0, ownHeat-mean)*grow*per - float64(rated)
	}
	lo, hi := 0.0, v.q[len(v.q)-1]+1
	if over(lo) >= 0 {
		return 0
	}
	for range 40 {
		if mid := (lo + hi) / 2; over(mid) < 0 {
			lo = mid
		} else {
			hi = mid
		}
	}
	return unit.Ampere(math.Sqrt(lo / (float64(c.ohm) / 1000)))
}
