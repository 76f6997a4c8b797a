package unit

import "math"

// CircularMil is a cross-section as American wire tables give it: the square of
// a diameter in thousandths of an inch.
type CircularMil float64

// SquareMMPerCircularMil is exact: a circle of 0.001 in = 0.0254 mm, π/4·0.0254².
const SquareMMPerCircularMil = math.Pi / 4 * 0.0254 * 0.0254

// CircularMils turns a cross-section into circular mils.
func (a SquareMM) CircularMils() CircularMil { return CircularMil(a / SquareMMPerCircularMil) }

// SquareMM turns circular mils into a cross-section in mm².
func (c CircularMil) SquareMM() SquareMM { return SquareMM(c * SquareMMPerCircularMil) }
