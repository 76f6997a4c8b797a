package over

import (
	"math"
	"testing"

	"contralay/calc/sheet"
	"contralay/model/unit"
)

// What one more wire of 2 mm adds, by hand: beside two like it, 4 mm over, the circle round three is 2·(1 + 2/√3) = 4.309 mm; beside
// six or more its own 2 mm, and so in layers; never more than its own, never less than nothing.
func TestOneMoreBesideAFew(t *testing.T) {
	three := unit.Millimetre(2 * (1 + 2/math.Sqrt(3)))
	for _, c := range []struct {
		members, layers int
		over, want      unit.Millimetre
	}{{2, 1, 4, three - 4}, {6, 1, 5.5, 2}, {7, 1, 6, 2}, {2, 2, 4, 2}, {2, 1, 1, 2}, {2, 1, 9, 0}, {5, 1, 5.5, 0.5}} {
		s := oneBranch(func(s *sheet.Sheet) {
			layer := sheet.Layer{Members: make([]sheet.Member, c.members)}
			for k := range layer.Members {
				layer.Members[k].D = 2
			}
			s.Branches[0].OverMM, s.Branches[0].Layers = c.over, append([]sheet.Layer{layer}, make([]sheet.Layer, c.layers-1)...)
		})
		if got := StandsOut(s, 0, 2); math.Abs(float64(got-c.want)) > 1e-6 {
			t.Errorf("%+v: %v", c, got)
		}
	}
}
