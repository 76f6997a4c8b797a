package shape

import (
	"math"

	"contralay/ui/draw"
)

// side is how many samples a pixel has in each direction.
const side = 4

// field maps millimetres to pixels: column = cx + x·kx, row = cy − y·ky, from the middle of the
// view. A pixel fills the square from its own number to the next.
type field struct {
	w, h   int // pixels
	cx, cy float64
	ox, oy float64 // mm, what lies in the middle
	kx, ky float64 // pixels for a mm
}

// newField fits a circle of radius r mm about (ox, oy) into the middle of w×h cells, so that it is
// wide columns across.
func newField(w, h int, ox, oy, r, wide, aspect float64) field {
	f := field{w: w, h: 2 * h, cx: float64(w) / 2, cy: float64(h), ox: ox, oy: oy}
	f.kx = wide / (2 * r)
	f.ky = f.kx * 2 * aspect
	return f
}

// widest is how many columns a circle may be across in w×h cells.
func widest(w, h int, aspect float64) float64 { return min(float64(w), float64(h)/aspect) }

// at is the pixel coordinates of a place.
func (f field) at(x, y float64) (col, row float64) { return f.cx + (x-f.ox)*f.kx, f.cy - (y-f.oy)*f.ky }

// place is the millimetres of pixel coordinates.
func (f field) place(col, row float64) (x, y float64) {
	return f.ox + (col-f.cx)/f.kx, f.oy - (row-f.cy)/f.ky
}

// samples is what lies on each sample: a shape's number plus one, 0 where nothing does. The
// sixteen of a pixel follow each other.
func samples(f field, shapes []shape) []uint16 {
	out := make([]uint16, f.w*f.h*side*side)
	half := math.Hypot(0.5/f.kx, 0.5/f.ky) // from the middle of a pixel to its corner
	var offX, offY [side]float64
	for k := range side {
		offX[k], offY[k] = (float64(k)+0.5)/side/f.kx, (float64(k)+0.5)/side/f.ky
	}
	for n := range shapes {
		s := &shapes[n]
		low, high := s.bounds()
		left, bottom := f.at(low.x, low.y)
		right, top := f.at(high.x, high.y)
		for row := max(int(math.Floor(top)), 0); row <= min(int(math.Floor(bottom)), f.h-1); row++ {
			for col := max(int(math.Floor(left)), 0); col <= min(int(math.Floor(right)), f.w-1); col++ {
				at := (row*f.w + col) * side * side
				x, y := f.place(float64(col), float64(row))
				switch s.whole(x+0.5/f.kx, y-0.5/f.ky, half) {
				case outside:
					continue
				case within:
					for k := range side * side {
						out[at+k] = uint16(n + 1)
					}
					continue
				}
				for k := range side * side {
					if s.covers(x+offX[k%side], y-offY[k/side]) {
						out[at+k] = uint16(n + 1)
					}
				}
			}
		}
	}
	return out
}

// pixel is what one looks like.
type pixel struct {
	colour draw.Colour
	shade  shade
	drawn  bool // something lies there; else it is the terminal's own
}

// pixels makes samples into pixels: the mean of what lies there where there are colours enough,
// else what most of it is.
func (b *builder) pixels(f field) []pixel {
	all := samples(f, b.shapes)
	shown := make([]pixel, len(b.shapes)+1) // what a shape's number looks like: the terminal's own colours are looked up once
	for n, s := range b.shapes {
		shown[n+1] = pixel{s.paint.colour.As(b.depth), s.paint.shade, true}
	}
	out := make([]pixel, f.w*f.h)
	for p := range out {
		of := all[p*side*side : (p+1)*side*side]
		first, same := of[0], true
		for _, v := range of[1:] {
			same = same && v == first
		}
		switch {
		case same:
			out[p] = shown[first]
		case b.depth >= draw.Colours256:
			out[p] = pixel{b.mean(of).As(b.depth), solid, true}
		default:
			out[p] = most(of, shown)
		}
	}
	return out
}

// mean is the mean of what lies on the samples of a pixel. It is rounded to steps of eight, which
// nobody sees, so that fewer pixels differ and less is sent.
func (b *builder) mean(of []uint16) draw.Colour {
	var sum [3]int
	for _, v := range of {
		c := b.ground
		if v > 0 {
			c = b.shapes[v-1].paint.colour
		}
		sum[0], sum[1], sum[2] = sum[0]+int(c.R), sum[1]+int(c.G), sum[2]+int(c.B)
	}
	step := func(v int) uint8 { return uint8(min((v/len(of)+4)&^7, 255)) }
	c := draw.Colour{R: step(sum[0]), G: step(sum[1]), B: step(sum[2])}
	if max(c.R, c.G, c.B)-min(c.R, c.G, c.B) <= 8 { // all but grey: there is a shorter way to write a grey
		return c.As(draw.Colours256)
	}
	return c
}

// most is what most samples of a pixel show, the foremost where two are equal.
func most(of []uint16, shown []pixel) pixel {
	type look struct {
		p pixel
		n int
	}
	var seen [side * side]look
	n, best := 0, 0
	for _, v := range of {
		p, k := shown[v], 0
		for k < n && seen[k].p != p {
			k++
		}
		if k == n {
			seen[k].p = p
			n++
		}
		if seen[k].n++; seen[k].n > seen[best].n {
			best = k
		}
	}
	return seen[best].p
}

// The characters of cells.
const (
	upperHalf = '\u2580'
	lowerHalf = '\u2584'
	fullBlock = '\u2588'
)

// cells writes pixels into a canvas.
func (b *builder) cells(c *draw.Canvas, px []pixel, f field) {
	for row := range f.h / 2 {
		for col := range f.w {
			up, low := px[2*row*f.w+col], px[(2*row+1)*f.w+col]
			if b.depth == draw.NoColour {
				c.Put(col, row, shaded(up.shade, low.shade), 0)
				continue
			}
			switch {
			case !up.drawn && !low.drawn:
			case up.drawn && low.drawn && up.colour == low.colour:
				c.Put(col, row, ' ', draw.Exact(nil, &up.colour, false))
			case !low.drawn:
				c.Put(col, row, upperHalf, draw.Exact(&up.colour, nil, false))
			case !up.drawn:
				c.Put(col, row, lowerHalf, draw.Exact(&low.colour, nil, false))
			default:
				c.Put(col, row, upperHalf, draw.Exact(&up.colour, &low.colour, false))
			}
		}
	}
}

// shaded is the character of a cell without colour.
func shaded(up, low shade) rune {
	switch {
	case up == solid && low == solid:
		return fullBlock
	case up == solid:
		return upperHalf
	case low == solid:
		return lowerHalf
	}
	return [...]rune{' ', '\u2591', '\u2592'}[max(up, low)]
}
