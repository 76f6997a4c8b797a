package section

import (
	"contralay/model/unit"
	"contralay/ui/paper/font"
)

// CapMM is the least height of a capital or a figure of a number in hand, mm: what is read at arm's
// length, 0.65 m. Common practice, no source.
const CapMM = 3.3

// Family is what the letters of a picture are set in. CapShare is the height of their capitals as
// a share of the size, for the lowest of these faces. Source: the cap height in the OS/2 table of
// Liberation Sans, 1,409 of 2,048 units an em; the others stand higher (memory).
const (
	Family   = "Arial, Helvetica, 'Liberation Sans', sans-serif"
	CapShare = 1409.0 / 2048
)

// tallShare is how high a figure stands at most, for the tallest face that may take their place.
// Source: the outline of the figure 0 of DejaVu Sans, 1,520 and -29 of 2,048 units.
const tallShare = 1549.0 / 2048

// Sizes of type, mm: of a number in hand, of a position, and the least that is set on paper, 9 pt.
const (
	NumberSize   = 4.8 // its capitals are CapMM high and a hair more
	positionSize = 11 * pointMM
	leastSize    = 9 * pointMM
	pointMM      = 25.4 / 72
)

// wide is how wide a bold text is at a size, both in mm.
func wide(text string, size float64) float64 {
	return float64(font.Of(true).Width(text, unit.Millimetre(size)))
}

// tall is how high a line of figures is at a size, both in mm.
func tall(size float64) float64 { return size * tallShare }
