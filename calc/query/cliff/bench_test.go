package cliff_test

import (
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/cliff"
)

// What a key waits for, the question itself, and what runs beside the screen: one count.
func BenchmarkDemonstration(b *testing.B) {
	s := calc.Complete(calctest.Load(b, "demo.toml"), calctest.Catalogue(b), nil)
	b.Run("the question", func(b *testing.B) {
		for b.Loop() {
			cliff.OfWires(s, 0)
		}
	})
	a, why := cliff.OfWires(s, 0)
	if why != "" {
		b.Fatal(why)
	}
	b.Run("one more", func(b *testing.B) {
		for b.Loop() {
			a.At(a.Now + 1)
		}
	})
}
