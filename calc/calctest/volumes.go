package calctest

import (
	"testing"

	"contralay/calc/formula/heat/heattest"
	"contralay/calc/phase/current"
	"contralay/calc/sheet"
	"contralay/model/unit"
)

// Volumes is how warm the wires of a branch get by finite volumes, by their place in the
// harness, in square cells of a size in mm: at their currents, but one (−1: none) at amps.
// For branches without units, at sea level.
func Volumes(t testing.TB, s *sheet.Sheet, branch int, cell unit.Millimetre, one int, amps unit.Ampere) map[int]unit.Celsius {
	t.Helper()
	section, wires, ok := current.SectionOf(s, branch)
	if !ok {
		t.Fatal("no section")
	}
	c := heattest.Case{SheathInner: section.InsideMM, SheathWall: max(0, section.OutsideMM-section.InsideMM) / 2, Air: section.Ambient}
	for _, d := range section.Discs {
		c.Wires = append(c.Wires, heattest.Wire{X: d.X, Y: d.Y, Over: d.OverMM, Conductor: d.CoreMM, OhmPerKm: d.Ohm, Amps: d.Amps})
	}
	for _, w := range wires {
		if w.Wire == one {
			c.Wires[w.Disc].Amps = amps
		}
	}
	got, err := c.Solve(cell)
	if err != nil {
		t.Fatal(err)
	}
	out := map[int]unit.Celsius{}
	for _, w := range wires {
		out[w.Wire] = got.Conductors[w.Disc]
	}
	return out
}
