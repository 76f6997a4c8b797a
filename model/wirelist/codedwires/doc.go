// Package codedwires parts cells that say a wire by a short form of its colour and a size without a unit, "R 2.5", "G/W 0.75", into two
// columns, so that what the letters mean is settled over all of them.
//
//	Pin | Wire     | Signal          Pin | Colour | Signal | Size
//	1   | R 2.5    | +30       ->    1   | R      | +30    | 2.5
//	5   | G/W 0.75 | left            5   | G/W    | left   | 0.75
package codedwires
