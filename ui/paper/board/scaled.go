package board

import (
	"math"

	"contralay/calc/query/drawing"
	"contralay/model/unit"
)

// scales are those that a drawing in small may have: what a person can multiply by in the head.
var scales = []float64{1, 2, 2.5, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100}

// Scaled is how a harness is drawn on a page with so much room, mm: at the largest of a few round scales
// at which it fits with the words beside its ends.
func Scaled(d *drawing.Drawing, wide, high unit.Millimetre, sys unit.System) Options {
	const words = 24 // mm of paper that the words beside an end take
	size := d.High.Minus(d.Low)
	need := math.Max(float64(size.X/(wide-2*words)), float64(size.Y/(high-words)))
	scale := scales[len(scales)-1]
	for _, s := range scales {
		if s >= need {
			scale = s
			break
		}
	}
	return Options{Scale: 1 / scale, Size: 3.2, Sys: sys}
}
