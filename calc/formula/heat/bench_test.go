package heat

import (
	"testing"

	"contralay/model/unit"
)

// BenchmarkSection is a bundle of 130 wires: its rays, which a change of currents keeps,
// its balance and its limits.
func BenchmarkSection(b *testing.B) {
	s := Section{Discs: round(1.09, 0.76, 1, 6, 12, 18, 24, 30, 36, 3), InsideMM: 1.09 * 15, OutsideMM: 1.09*15 + 2, Ambient: 60}
	for i := range s.Discs {
		s.Discs[i].Amps = unit.Ampere(0.1 + 0.2*float64(i%13))
	}
	rays, _ := Trace(s)
	b.Run("trace", func(b *testing.B) {
		for b.Loop() {
			Trace(s)
		}
	})
	b.Run("solve", func(b *testing.B) {
		for b.Loop() {
			rays.Solve(s)
		}
	})
	r, _ := rays.Solve(s)
	b.Run("limits", func(b *testing.B) {
		for b.Loop() {
			r.Limits(s)
		}
	})
}
