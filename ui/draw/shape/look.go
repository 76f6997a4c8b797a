package shape

import (
	"contralay/ui/draw"
)

// look is the colours of a drawing that do not depend on a wire.
type look struct {
	depth draw.Profile
	dark  bool

	ground, void  draw.Colour
	sheath, edge  draw.Colour // of the sheath, and of its two edges
	jacket, in    draw.Colour // of a unit: its jacket, and what lies between its cores
	shield        draw.Colour
	tape          draw.Colour
	filler, hatch draw.Colour
	unknown       draw.Colour // of a wire whose colour is not known
	mark          draw.Colour // round the disc in hand, and the arrow
	dimming       float64     // how much of the void is mixed into what is not in hand
}

// lookOf is the look for what a terminal shows.
func lookOf(p draw.Palette) look {
	l := look{depth: p.Depth(), dark: p.Dark, dimming: 0.52}
	rgb := func(v uint32) draw.Colour { return draw.Colour{R: uint8(v >> 16), G: uint8(v >> 8), B: uint8(v)} }
	switch {
	case l.depth == draw.Colours16 && l.dark:
		l.sheath, l.edge, l.jacket, l.shield, l.tape = l.void, draw.Of(8), draw.Of(8), draw.Of(7), draw.Of(7)
		l.filler, l.hatch, l.unknown, l.mark = draw.Of(7), draw.Of(8), draw.Of(7), draw.Of(15)
	case l.depth == draw.Colours16:
		l.ground, l.void, l.in = draw.Of(15), draw.Of(7), draw.Of(7)
		l.sheath, l.edge, l.jacket, l.shield, l.tape = l.void, draw.Of(8), draw.Of(8), draw.Of(15), draw.Of(15)
		l.filler, l.hatch, l.unknown, l.mark = draw.Of(15), draw.Of(8), draw.Of(15), draw.Of(0)
	case l.dark:
		l.ground, l.void, l.sheath, l.edge = rgb(0x121212), rgb(0x1c1c1c), rgb(0x3a3a3a), rgb(0x4e4e4e)
		l.jacket, l.in, l.shield, l.tape = rgb(0x585858), rgb(0x262626), rgb(0xa8a8a8), rgb(0x4a4436)
		l.filler, l.hatch, l.unknown, l.mark = rgb(0xa8a8a8), rgb(0x585858), rgb(0x9a9186), rgb(0xffffff)
	default:
		l.ground, l.void, l.sheath, l.edge = rgb(0xffffff), rgb(0xd0d0d0), rgb(0x9e9e9e), rgb(0x808080)
		l.jacket, l.in, l.shield, l.tape = rgb(0x767676), rgb(0xbcbcbc), rgb(0x585858), rgb(0xb8a880)
		l.filler, l.hatch, l.unknown, l.mark = rgb(0xe4e4e4), rgb(0x8a8a8a), rgb(0x8a8075), rgb(0x000000)
	}
	return l
}

// offVoid is the least contrast of the edge of a disc with the void. Source: WCAG 2.1, 1.4.11.
const offVoid = 3

// rim is the colour of the edge of a disc: darker than the disc where the disc is seen on the
// void by itself; else the disc's colour moved away from the void until it is.
func (l look) rim(base draw.Colour) draw.Colour {
	if l.depth == draw.Colours16 {
		if draw.Contrast(base, l.void) < 1.5 {
			return draw.Of(8)
		}
		return base
	}
	if draw.Contrast(base, l.void) >= offVoid {
		return base.Mix(draw.Black, 0.28)
	}
	far := draw.White
	if !l.dark {
		far = draw.Black
	}
	for share := 0.1; share < 1; share += 0.1 {
		if c := base.Mix(far, share); draw.Contrast(c, l.void) >= offVoid {
			return c
		}
	}
	return far
}

// dim is a colour as a layer that is not in hand shows it: nearer to the void. Where there are
// too few colours for that, what is not in hand is grey.
func (l look) dim(c draw.Colour) draw.Colour {
	switch l.depth {
	case draw.Colours16:
		if c == l.void {
			return c
		}
		return draw.Of(8)
	case draw.Colours256: // its dark colours are few and far apart, its greys many
		grey := uint8((int(c.R)*2 + int(c.G)*5 + int(c.B)) / 8)
		return draw.Colour{R: grey, G: grey, B: grey}.Mix(l.void, l.dimming)
	}
	return c.Mix(l.void, l.dimming)
}

// code is the colours of an insulation, its base first; what is no colour code is unknown.
func (l look) code(code string) (base draw.Colour, stripes []draw.Colour) {
	base = l.unknown
	for i := range len(code) {
		c, ok := draw.Insulation(code[i], l.depth)
		if !ok {
			return l.unknown, nil
		}
		if l.depth == draw.Colours16 && c == l.void && c != draw.Black { // grey on a grey void
			c = draw.Of(8)
		}
		if i == 0 {
			base = c
		} else if len(stripes) < 2 {
			stripes = append(stripes, c)
		}
	}
	return base, stripes
}
