package draw

import "math"

// Colour is a colour of 24 bits.
type Colour struct{ R, G, B uint8 }

// Black and white, which text is written in.
var (
	Black = Colour{0, 0, 0}
	White = Colour{255, 255, 255}
)

// Mix is this colour with a share of another in it, from 0 to 1.
func (c Colour) Mix(other Colour, share float64) Colour {
	of := func(a, b uint8) uint8 { return uint8(math.Floor(float64(a) + (float64(b)-float64(a))*share + 0.5)) }
	return Colour{of(c.R, other.R), of(c.G, other.G), of(c.B, other.B)}
}

// Luminance is the relative luminance of a colour of sRGB, 0 to 1. Source: WCAG 2.1, "relative
// luminance", with the corrected threshold 0.04045 of IEC 61966-2-1.
func (c Colour) Luminance() float64 {
	linear := func(v uint8) float64 {
		u := float64(v) / 255
		if u <= 0.04045 {
			return u / 12.92
		}
		return math.Pow((u+0.055)/1.055, 2.4)
	}
	return 0.2126*linear(c.R) + 0.7152*linear(c.G) + 0.0722*linear(c.B)
}

// Contrast is the contrast ratio of two colours, 1 to 21. Source: WCAG 2.1, "contrast ratio".
func Contrast(a, b Colour) float64 {
	la, lb := a.Luminance(), b.Luminance()
	return (max(la, lb) + 0.05) / (min(la, lb) + 0.05)
}

// TextOn is black or white, whichever is read more easily on a ground. One of the two always
// has 4.58 : 1 or more, since their ratios multiply to 21.
func TextOn(ground Colour) Colour {
	if Contrast(ground, Black) >= Contrast(ground, White) {
		return Black
	}
	return White
}

// insulation is how the ten colours of insulation are shown, by the digit of MIL-STD-681. The
// standard names the colours; these values were chosen here, so that no two are taken for each
// other on a screen.
var insulation = [10]Colour{
	{35, 35, 38}, {122, 74, 40}, {205, 48, 44}, {235, 125, 30}, {240, 208, 50},
	{48, 150, 70}, {50, 105, 205}, {135, 80, 175}, {140, 145, 150}, {236, 236, 232},
}

// sixteen is the colour of a terminal of sixteen for each digit. Brown is the terminal's dark
// yellow and orange its bright red, which are the nearest it has.
var sixteen = [10]uint8{black, 3, red, 9, 11, green, brightBlue, magenta, silver, fullWhite}

// indexed is the colour of xterm's 256 for each digit, by its hue: the nearest by its numbers would
// turn red into orange.
var indexed = [10]uint8{235, 94, 160, 208, 220, 34, 26, 97, 245, 255}

// Insulation is the colour of a digit of a colour code as it is shown with so many colours; ok is
// false for what is no digit.
func Insulation(digit byte, depth Profile) (colour Colour, ok bool) {
	if digit < '0' || digit > '9' {
		return Colour{}, false
	}
	switch depth {
	case Colours16:
		return Of(sixteen[digit-'0']), true
	case Colours256:
		return Of(indexed[digit-'0']), true
	}
	return insulation[digit-'0'], true
}

// Of is a colour of xterm's 256.
func Of(number uint8) Colour {
	r, g, b := RGB(number)
	return Colour{r, g, b}
}

// As is the colour that a terminal of this depth shows for another: the nearest of the cube and
// the greys of 256, the nearest of 16.
func (c Colour) As(depth Profile) Colour {
	switch depth {
	case Colours256:
		return Of(c.of256())
	case Colours16:
		return Of(c.of16())
	}
	return c
}

// Indexed is the number of a colour among xterm's cube and greys; ok is false where it is none of
// them. Those numbers mean the same on every terminal, as the first sixteen do not.
func Indexed(r, g, b uint8) (number uint8, ok bool) {
	c := Colour{r, g, b}
	number = c.of256()
	return number, Of(number) == c
}

// of256 is the nearest of xterm's cube of six and its greys.
func (c Colour) of256() uint8 {
	side := func(v uint8) (step, value uint8) {
		switch {
		case v < 48:
			return 0, 0
		case v < 115:
			return 1, 95
		}
		step = (v - 35) / 40
		return step, 55 + 40*step
	}
	r, rv := side(c.R)
	g, gv := side(c.G)
	b, bv := side(c.B)
	middle := (int(c.R) + int(c.G) + int(c.B)) / 3
	grey := uint8(min(max((middle-3)/10, 0), 23))
	v := 8 + 10*grey
	if c.apart(Colour{v, v, v}) < c.apart(Colour{rv, gv, bv}) {
		return 232 + grey
	}
	return 16 + 36*r + 6*g + b
}

// of16 is the nearest of xterm's sixteen.
func (c Colour) of16() uint8 {
	best := uint8(0)
	for n := uint8(1); n < 16; n++ {
		if c.apart(Of(n)) < c.apart(Of(best)) {
			best = n
		}
	}
	return best
}

// apart is how different two colours are, squared.
func (c Colour) apart(o Colour) int {
	r, g, b := int(c.R)-int(o.R), int(c.G)-int(o.G), int(c.B)-int(o.B)
	return r*r + g*g + b*b
}
