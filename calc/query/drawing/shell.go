package drawing

import "contralay/model/unit"

// A part of which nothing is known is drawn so large, mm: no source, and the drawing says so.
const (
	anyWide unit.Millimetre = 20
	anyLong unit.Millimetre = 30
)
