package heattest

import (
	"errors"
	"math"

	"contralay/model/unit"
)

// Solve balances a case with cells of the given size: temperatures within 0.002 K of
// where its rounds tend. 0.08 mm is the coarsest to be trusted.
func (c Case) Solve(cell unit.Millimetre) (Result, error) {
	inner := float64(c.SheathInner) / 2
	outer := inner + float64(c.SheathWall)
	var wires []circle
	for _, w := range c.Wires {
		wires = append(wires, circle{float64(w.X), float64(w.Y), float64(w.Over) / 2, float64(w.Conductor) / 2})
	}
	g := newGrid(wires, inner, outer, float64(cell), kInsul, kSheath)
	s := newSystem(g)
	x := make([]float64, len(s.right))
	around := float64(c.Air)
	for i := range x {
		x[i] = around + 30
	}
	surface, inside := around+20, around+40
	for range 100 {
		_, air, _ := airAt((surface + inside) / 2)
		s.fill(g, air, film(2*outer, surface, around), around)
		for w, of := range c.Wires {
			// I²R is a line in the temperature, so it goes into the system and not into the rounds.
			heat := float64(of.Amps) * float64(of.Amps) * float64(of.OhmPerKm) / 1000
			i := g.cells + w
			s.val[s.diagonal(i)] -= heat * copper
			s.right[i] += heat * (1 - 20*copper)
		}
		if err := s.solve(x); err != nil {
			return Result{}, err
		}
		was, hot := surface, inside
		surface, inside = g.surface(x), 0
		for _, t := range x[g.cells:] {
			inside += t / float64(len(wires))
		}
		if inside > 2000 {
			return Result{}, errNoBalance
		}
		if math.Abs(was-surface)+math.Abs(hot-inside) < 1e-3 {
			r := Result{Surface: unit.Celsius(surface)}
			for _, t := range x[g.cells:] {
				r.Conductors = append(r.Conductors, unit.Celsius(t))
			}
			return r, nil
		}
	}
	return Result{}, errors.New("the rounds of air and surface do not settle")
}

// surface is the mean temperature of the surface.
func (g *grid) surface(x []float64) float64 {
	sum := 0.0
	for i, mm := range g.rim {
		sum += mm * x[i]
	}
	return sum / (2 * math.Pi * g.outer)
}
