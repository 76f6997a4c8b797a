package lay

import (
	"math"
	"testing"

	"contralay/model/unit"
)

// A lay shorter than a millimetre is a lay: on a circle of radius 1 with a lay of 0.5 the tangent is 4π, the angle 85.450°, and 12.606
// times the length is taken up. Without a lay wires run straight.
func TestShortestLays(t *testing.T) {
	for _, c := range []struct {
		radius, lay unit.Millimetre
		up          unit.Ratio
		angle       unit.Degree
	}{{1, 0.5, 12.606, 85.450}, {1, 1, 6.362, 80.957}, {1, 0, 1, 0}, {1, -1, 1, 0}, {0, 0.5, 1, 0}} {
		up, angle := TakeUp(c.radius, c.lay), LayAngle(c.radius, c.lay)
		if math.Abs(float64(up-c.up)) > 5e-4 || math.Abs(float64(angle-c.angle)) > 5e-4 {
			t.Errorf("%v at %v: %v and %v, want %v and %v", c.radius, c.lay, up, angle, c.up, c.angle)
		}
	}
}
