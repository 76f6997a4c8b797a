package bundle_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
)

// Nineteen 22 AWG, 1-6-12, bent: each layer's mismatch is that of a helix on a
// bent axis, 2(r/ρ)cos λ·(L/π)|sin(πS/L)|, of straight wire 2rθ; both checked by
// quadrature in calc/formula/lay. A bend of half a turn is noted, one of two turns is not.
func TestBendOfEachLayer(t *testing.T) {
	for _, c := range []struct {
		bend, deg float64
		noted     bool
	}{{30, 90, true}, {60, 180, false}} {
		h := calctest.Parse(t, calctest.OneSize(19, "22", fmt.Sprintf("length_mm = 600.0\nbend_mm = %.1f\nbend_deg = %.1f\n", c.bend,
			c.deg)))
		s := calc.Complete(h, calctest.Catalogue(t), nil)
		b := &s.Branches[0]
		rho, th := c.bend+float64(b.OverMM)/2, c.deg*math.Pi/180
		worst := 0.0
		for k, l := range b.Layers {
			if k == 0 {
				continue
			}
			r, L := math.Hypot(float64(l.Members[0].X), float64(l.Members[0].Y)), float64(l.LayMM)
			want := 2 * r / rho * math.Cos(math.Atan(2*math.Pi*r/L)) * L / math.Pi * math.Abs(math.Sin(math.Pi*rho*th/L))
			calctest.Near(t, fmt.Sprintf("layer %d bent", k), float64(l.BentMM), want, 1e-9)
			calctest.Near(t, fmt.Sprintf("layer %d straight", k), float64(l.FlatMM), 2*r*th, 1e-9)
			worst = math.Max(worst, want)
		}
		calctest.Near(t, "branch", float64(b.Bend.MismatchMM.V), worst, 1e-9)
		g, ok := calctest.Snag(s, "bend.turn", "T1")
		if ok != c.noted || ok && (g.Level != sheet.Note || !strings.Contains(g.Says, "layer 2")) {
			t.Errorf("bend %v mm %v°: %v %+v", c.bend, c.deg, ok, g)
		}
	}
}
