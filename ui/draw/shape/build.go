package shape

import (
	"math"

	"contralay/ui/draw"
)

// Shares of a radius, chosen by looking at the drawings.
const (
	rimShare    = 0.09
	stripeShare = 0.27 // half the width of a stripe
	jacketShare = 0.12
	spareShare  = 0.3 // the outline of a spare
	tapeEdge    = 0.05
	lineMM      = 0.12 // edges of the sheath and of tape
)

// The arrow of the hand: from 26 to 60 degrees from the top, outside everything, where a round
// drawing leaves the corner of its square free.
const (
	arrowFrom, arrowTo = 26 * math.Pi / 180, 60 * math.Pi / 180
	arrowAt            = 1.09 // of the reach
	arrowWide          = 0.022
)

// builder gathers the shapes of a section.
type builder struct {
	look
	palette draw.Palette
	pixel   float64 // mm of a pixel; 0 where the drawing is of lines
	shapes  []shape
	bodies  []draw.Colour // what each disc is filled with where its number lies
}

// thick is a width in mm that a pixel can show: half of one where edges are smooth, all of one
// where they are not.
func (b *builder) thick(mm, most float64) float64 {
	least := 0.5
	if b.depth == draw.Colours16 {
		least = 0.9
	}
	return min(max(mm, least*b.pixel), most)
}

func (b *builder) add(s shape) { b.shapes = append(b.shapes, s) }

// build makes the shapes of a section, from the back to the front.
func build(s draw.Section, p draw.Palette, pixel float64) *builder {
	b := &builder{look: lookOf(p), palette: p, pixel: pixel, bodies: make([]draw.Colour, len(s.Discs))}
	b.covers(s)
	chosen := -1
	for i, d := range s.Discs {
		if d.Usable() {
			b.disc(s, i)
			if d.Selected {
				chosen = i
			}
		}
	}
	if chosen >= 0 {
		d := s.Discs[chosen]
		r := float64(d.D) / 2
		gap := b.thick(0.08*r, r/4) // keeps the ring off a disc of its own colour
		at := shape{form: ring, x: float64(d.X), y: float64(d.Y), of: -1}
		at.r, at.inside, at.paint = r+gap, r, paint{b.void, empty}
		b.add(at)
		at.r, at.inside, at.paint = r+gap+b.thick(0.12*r, r/2), r+gap, paint{b.mark, solid}
		b.add(at)
	}
	b.arrow(s)
	return b
}

// covers draws what lies round and under the wires: the sheath, the void in it, tape that
// builds up the centre.
func (b *builder) covers(s draw.Section) {
	if r := float64(s.SheathMM) / 2; r > 0 && r <= s.Reach() {
		wall := float64(s.WallMM)
		if !(wall > 0) || wall >= r {
			wall = b.thick(lineMM, r/2)
		}
		b.add(shape{form: ring, r: r, inside: r - wall, paint: paint{b.sheath, pale}, of: -1})
		line := b.thick(lineMM, wall/3)
		b.add(shape{form: ring, r: r, inside: r - line, paint: paint{b.edge, pale}, of: -1})
		b.add(shape{form: ring, r: r - wall + line, inside: r - wall, paint: paint{b.edge, pale}, of: -1})
		b.add(shape{form: disc, r: r - wall, paint: paint{b.void, empty}, of: -1})
	}
	if r := float64(s.BuiltMM) / 2; r > 0 && r <= s.Reach() {
		b.add(shape{form: disc, r: r, paint: paint{b.tape, pale}, of: -1})
		line := b.thick(lineMM, tapeEdge*r)
		b.add(shape{form: ring, r: r, inside: r - line, paint: paint{b.tape.Mix(b.mark, 0.25).As(b.depth), pale}, of: -1})
	}
}

// disc draws one component.
func (b *builder) disc(s draw.Section, i int) {
	d := s.Discs[i]
	body := shape{form: disc, x: float64(d.X), y: float64(d.Y), r: float64(d.D) / 2, of: i}
	put := func(s shape, c draw.Colour, dark shade) {
		if d.Dim {
			c, dark = b.dim(c), min(dark, half)
		}
		s.paint = paint{c, dark}
		b.add(s)
	}
	base, stripes := b.code(d.Code)
	if s.ByClass && d.Kind != draw.Filler {
		base, stripes = b.palette.ClassColour(d.Class), nil
	}
	b.bodies[i] = base
	switch {
	case d.Kind == draw.Filler:
		b.bodies[i] = b.filler
		put(body, b.filler, half)
		for _, s := range b.hatching(body) {
			put(s, b.hatch, pale)
		}
		return
	case d.Kind == draw.Unit && !s.ByClass && len(d.Cores) > 0:
		b.unit(d, body, put)
		b.bodies[i] = b.in
		return
	}
	edge := body
	edge.form, edge.inside = ring, body.r-b.thick(rimShare*body.r, 0.3*body.r)
	if d.Kind == draw.Spare {
		b.bodies[i] = b.void
		put(body, b.void, empty)
		edge.inside = body.r - b.thick(spareShare*body.r, 0.45*body.r)
		put(edge, base, solid)
		b.outline(edge, base, put)
		return
	}
	hard := b.depth != draw.NoColour && draw.Contrast(base, b.void) < offVoid
	if hard { // such a disc is seen by its edge alone
		edge.inside = body.r - b.thick(rimShare*body.r+0.25*b.pixel, 0.4*body.r)
	}
	put(body, base, solid)
	for _, s := range striped(body, len(stripes)) {
		put(s, stripes[0], solid)
		stripes = stripes[1:]
	}
	if hard || body.r > smallDisc*b.pixel {
		put(edge, b.rim(base), b.rimShade())
	}
	if d.Tracer && body.r > ringedDisc*b.pixel {
		edge.r = 0.78 * body.r
		edge.inside = edge.r - b.thick(0.07*body.r, 0.2*body.r)
		put(edge, b.rim(base), b.rimShade())
	}
}

// ringedDisc is the least radius in pixels of a disc that has room for the second ring of a tracer.
const ringedDisc = 3.5

// smallDisc is the radius in pixels of a disc that has no room for an edge darker than itself.
const smallDisc = 1.5

// outline keeps the outline of a spare off the void where its colour does not.
func (b *builder) outline(edge shape, base draw.Colour, put func(shape, draw.Colour, shade)) {
	if rim := b.rim(base); draw.Contrast(base, b.void) < offVoid {
		put(edge, rim, solid)
	}
}

// rimShade is how a rim looks without colour: it keeps wires apart that touch.
func (b *builder) rimShade() shade {
	if b.depth == draw.NoColour {
		return empty
	}
	return solid
}

// stripeNormal is across the stripes of every wire.
var stripeNormal = point{0.6, -0.8}

// striped is the stripes of a disc.
func striped(body shape, n int) []shape {
	at := [][]float64{nil, {0}, {-0.45, 0.45}}[min(n, 2)]
	wide := []float64{0, stripeShare, 0.2}[min(n, 2)]
	out := make([]shape, 0, len(at))
	for _, a := range at {
		s := body
		s.form, s.normal = band, stripeNormal
		s.from, s.to = (a-wide)*body.r, (a+wide)*body.r
		out = append(out, s)
	}
	return out
}

// hatching is the lines across a filler, each as wide as the space between two.
func (b *builder) hatching(body shape) []shape {
	step := max(0.4*body.r, 1.5*b.pixel)
	var out []shape
	for at := -math.Floor(body.r/step) * step; at <= body.r; at += step {
		s := body
		s.form, s.normal = band, point{math.Sqrt2 / 2, math.Sqrt2 / 2}
		s.from, s.to = at-step/4, at+step/4
		out = append(out, s)
	}
	return out
}

// unit draws a unit: its jacket, a shield inside it, and its cores.
func (b *builder) unit(d draw.Disc, body shape, put func(shape, draw.Colour, shade)) {
	inner := body.r - b.thick(jacketShare*body.r, 0.3*body.r)
	put(body, b.in, empty)
	edge := body
	edge.form, edge.inside = ring, inner
	put(edge, b.jacket, half)
	if d.Shielded {
		wide := b.thick(0.08*body.r, 0.2*body.r)
		s := body
		s.form, s.r, s.inside = ring, inner, inner-wide
		put(s, b.shield, pale)
		inner -= wide
	}
	reach := 0.0
	for _, c := range d.Cores {
		reach = max(reach, math.Hypot(float64(c.X), float64(c.Y))+float64(c.D)/2)
	}
	fit := 1.0
	if reach > inner {
		fit = inner / reach
	}
	for _, c := range d.Cores {
		base, stripes := b.code(c.Code)
		core := body
		core.x, core.y, core.r = body.x+fit*float64(c.X), body.y+fit*float64(c.Y), fit*float64(c.D)/2
		put(core, base, solid)
		for k, s := range striped(core, len(stripes)) {
			put(s, stripes[k], solid)
		}
		rim := core
		rim.form, rim.inside = ring, core.r-b.thick(rimShare*core.r, 0.25*core.r)
		put(rim, b.rim(base), b.rimShade())
	}
}

// arrow is the hand of the layer in hand: which way its wires go over the top.
func (b *builder) arrow(s draw.Section) {
	if s.Turn == 0 || !s.View.Whole() {
		return
	}
	reach := s.Reach()
	wide := max(arrowWide*reach, 0.55*b.pixel)
	at, head := arrowAt*reach, max(0.11*reach, 2.6*b.pixel)
	turn := head / at
	from, to := arrowFrom, arrowTo
	tip, root := from, from+turn
	if s.Turn == draw.ToRight {
		tip, root = to, to-turn
		to = root
	} else {
		from = root
	}
	b.add(shape{form: sector, r: at + wide, inside: at - wide, from: from, to: to, paint: paint{b.mark, solid}, of: -1})
	b.add(shape{form: wedge, corners: [3]point{polar(tip, at), polar(root, at+head*0.8), polar(root, at-head*0.8)},
		paint: paint{b.mark, solid}, of: -1})
}
