package wires

import (
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// A wire that accounts for 1 V may measure 0.1 V more, and a tenth: 1.2 V. More is lost in its contacts; less than half was no such
// current.
func TestMeasuredAgainstTheWire(t *testing.T) {
	for _, c := range []struct {
		measured unit.Volt
		says     string
	}{{1.19, ""}, {1.21, "The other 0.21 V are lost"}, {0.51, ""}, {0.49, "did it carry that current?"}} {
		s := &sheet.Sheet{H: &model.Harness{Wires: []model.Wire{{ID: "1", DropV: model.Some(c.measured),
			Amps: model.Some[unit.Ampere](10)}}},
			Wires: make([]sheet.Wire, 1)}
		s.Wires[0].Drop = model.Some[unit.Volt](1)
		Measured(s, 0)
		said := ""
		for _, g := range s.Snags {
			said += g.Says
		}
		if (said == "") != (c.says == "") || !strings.Contains(said, c.says) {
			t.Errorf("%v V: %q", c.measured, said)
		}
		if c.measured == 1.21 && !strings.Contains(said, "which get 2 W of heat") { // 0.21 V at 10 A
			t.Errorf("%q", said)
		}
	}
}
