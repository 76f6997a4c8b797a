package section

import (
	"contralay/model/unit"
	"contralay/ui/paper/font"
)

// CapMM is the least height of a capital or a figure of a number in hand, mm: what is read at arm's
// length, 0.65 m. Common practice, no source.
const CapMM = 3.3

// Family is what the letters of a picture are set in: the face that goes with the page, and what
// takes its place where that is not loaded. CapShare is the height of their capitals as a share of
// the size, for the lower of the two: Go has 1,480 of 2,048 units an em (font.CapShare), Arial 1,466
// (memory).
const (
	Family   = "Go, Arial, sans-serif"
	CapShare = 1466.0 / 2048
)

// tallShare is how high a figure stands at most. Source: the outline of the figure 0 of Go, 741 above
// and 18 below the line of 1,000.
const tallShare = 0.76

// Sizes of type, mm: of a number in hand, of a position, and the least that is set on paper, 9 pt.
const (
	NumberSize   = 4.62 // its capitals are CapMM high and a hair more
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
