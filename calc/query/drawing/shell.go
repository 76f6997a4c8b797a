package drawing

import "contralay/model/unit"

// plugMM are the greatest diameters of a plug of series III by the shell of series II, mm, and
// plugLong is its greatest length. Source: a maker's MIL-DTL-38999 series I/II/III catalogue,
// shell drawings of series III; the shells by its availability chart.
var plugMM = map[int]unit.Millimetre{8: 21.8, 10: 25.0, 12: 29.4, 14: 32.5, 16: 35.7, 18: 38.5, 20: 41.7, 22: 44.9, 24: 48.0}

const plugLong unit.Millimetre = 31.34

// A part of which nothing is known is drawn so large, mm: no source, and the drawing says so.
const (
	anyWide unit.Millimetre = 20
	anyLong unit.Millimetre = 30
)
