package board

import (
	"cmp"
	"math"
	"slices"
	"strconv"
	"strings"

	"contralay/calc/formula/outline"
	"contralay/calc/query/drawing"
	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/ui/paper/font"
	"contralay/ui/paper/plot"
)

// Options is how a harness is drawn.
type Options struct {
	Scale float64         // mm of paper for one of the harness
	Size  unit.Millimetre // of the face of flags
	Full  bool            // to work on: pegs, stations, dials, texts of labels
	Small bool            // to know it by: no words but the ids of ends
	Sys   unit.System
}

// FullSize is how a harness is drawn to be built on: letters that are read at arm's length.
func FullSize(sys unit.System) Options {
	return Options{Scale: 1, Size: 4.8, Full: true, Sys: sys}
}

// Line widths of the paper, mm.
const (
	fine  unit.Millimetre = 0.13
	thin  unit.Millimetre = 0.25
	heavy unit.Millimetre = 0.5
)

// canvas is a drawing that is being made.
type canvas struct {
	Options
	d     *drawing.Drawing
	s     *sheet.Sheet
	out   *plot.Sheet
	field outline.Field

	waiting []flag
	dials   []*drawing.End
}

// Draw draws a harness. The sheet's box is what everything on it lies in.
func Draw(s *sheet.Sheet, d *drawing.Drawing, o Options) *plot.Sheet {
	c := &canvas{Options: o, d: d, s: s, out: &plot.Sheet{Title: title(s)}}
	for i := range d.Branches {
		c.bundle(&d.Branches[i])
	}
	for i := range d.Branches {
		c.over(&d.Branches[i])
	}
	c.datum()
	for k := range d.Joints {
		c.joint(&d.Joints[k])
	}
	for k := range d.Sleeves {
		c.sleeve(&d.Sleeves[k])
	}
	for k := range d.Labels {
		c.label(&d.Labels[k])
	}
	for k := range d.Ends {
		c.end(&d.Ends[k])
	}
	if o.Full {
		for _, p := range d.Pegs {
			c.peg(p)
		}
	}
	c.flags()
	for _, e := range c.dials {
		c.dial(e)
	}
	c.bounds()
	return c.out
}

// title is what a harness is called at the head of everything.
func title(s *sheet.Sheet) string {
	h := &s.H.Head
	return strings.Join(strings.Fields(h.Number.V+" "+h.Revision.V+" "+h.Name.V), " ")
}

func (c *canvas) bounds() {
	for k := range c.out.Shapes {
		b := c.out.Shapes[k].Bounds()
		if k == 0 {
			c.out.Box = b
		}
		c.out.Box = c.out.Box.And(b.Low).And(b.High)
	}
	room := plot.Point{X: 3, Y: 3}
	c.out.Box.Low, c.out.Box.High = c.out.Box.Low.Minus(room), c.out.Box.High.Plus(room)
}

// to is a point of the board on the paper, mm one of its lengths.
func (c *canvas) to(p drawing.Point) plot.Point                        { return p.Times(c.Scale) }
func (c *canvas) mm(v unit.Millimetre) unit.Millimetre                 { return v * unit.Millimetre(c.Scale) }
func (c *canvas) line(l outline.Line) outline.Line                     { return l.Times(c.Scale) }
func (c *canvas) width(v unit.Millimetre) unit.Millimetre              { return max(c.mm(v), 0.8) }
func (c *canvas) says(v unit.Millimetre) string                        { return c.Sys.Length(v) }
func (c *canvas) long(v unit.Millimetre) string                        { return c.Sys.Length(v) + " " + c.Sys.Name() }
func (c *canvas) add(s plot.Shape)                                     { c.out.Add(s) }
func (c *canvas) way(l plot.Layer, w unit.Millimetre, p ...plot.Point) { c.out.Way(l, w, p...) }

// band is the outline of a line of a width, closed.
func band(l outline.Line, wide unit.Millimetre) []plot.Point {
	left, right := l.Beside(wide/2).Points(0.02), l.Beside(-wide/2).Points(0.02)
	for k := len(right) - 1; k >= 0; k-- {
		left = append(left, right[k])
	}
	return left
}

// bundle draws the edges of a branch. Its inside is white and comes after all edges, so that where
// branches meet no edge runs into another.
func (c *canvas) bundle(b *drawing.Branch) {
	wide := b.BundleMM
	if wide <= 0 {
		wide = b.WidthMM
	}
	w, l := c.width(wide), c.line(b.Line)
	var dash []unit.Millimetre
	if b.Guess || !b.Measured {
		dash = []unit.Millimetre{2, 1.2}
	}
	for _, side := range []unit.Millimetre{w / 2, -w / 2} {
		if p := l.Beside(side).Points(0.02); len(p) > 1 {
			c.add(plot.Shape{Layer: plot.Bundle, Line: plot.Line{Wide: thin, Dash: dash}, Way: p})
		}
	}
	c.field.Line(l, c.width(b.WidthMM)+1)
}

// over draws what lies on a branch.
func (c *canvas) over(b *drawing.Branch) {
	l := c.line(b.Line)
	wide := b.BundleMM
	if wide <= 0 {
		wide = b.WidthMM
	}
	w := c.width(wide)
	if p := band(l, w-thin); len(p) > 3 {
		c.add(plot.Shape{Layer: plot.Bundle, Fill: plot.White, Closed: true, Way: p})
	}
	for _, cover := range b.Covers {
		c.cover(b, cover, w)
	}
	c.zones(b, w)
	if p := l.Points(0.02); len(p) > 1 {
		c.add(plot.Shape{Layer: plot.Centre, Line: plot.Line{Wide: fine, Dash: []unit.Millimetre{6, 1.5, 0.8, 1.5}}, Way: p})
	}
	for _, at := range b.Lay {
		if b.Lay[1] > b.Lay[0] && at > 0 && at < b.LengthMM && c.Full {
			c.tick(plot.Lay, b, at, c.width(b.WidthMM)+5, thin)
		}
	}
	if c.Full {
		c.stations(b)
	}
	if b.Break.Set {
		c.broken(b)
	}
}

// cover draws a sheath or another cover: as wide as it is outside, with a heavy line where it
// starts and where it stops.
func (c *canvas) cover(b *drawing.Branch, cover drawing.Cover, bundle unit.Millimetre) {
	w := max(c.mm(cover.OverMM), bundle+0.3)
	part := c.line(b.Part(cover.From, cover.To))
	if len(part) == 0 {
		return
	}
	fill := plot.Light
	if cover.What == "braid" || cover.What == "tape" {
		fill = plot.None
	}
	c.add(plot.Shape{Layer: plot.Cover, Line: plot.Line{Wide: thin}, Fill: fill, Closed: true, Way: band(part, w)})
	for _, s := range []unit.Millimetre{cover.From, cover.To} {
		c.tick(plot.Cover, b, s, w, heavy)
	}
}

// tick is a line across a branch.
func (c *canvas) tick(l plot.Layer, b *drawing.Branch, station, across, wide unit.Millimetre) {
	at, heading := b.At(station)
	p := c.to(at)
	c.way(l, wide, p.Away(heading+90, across/2), p.Away(heading-90, across/2))
}

// hatchMM is how far the lines of a sorted zone are apart, on the paper.
const hatchMM unit.Millimetre = 2.4

// zones hatches the sorted zones of a branch.
func (c *canvas) zones(b *drawing.Branch, w unit.Millimetre) {
	step := unit.Millimetre(float64(hatchMM) / c.Scale)
	for end, zone := range b.Zones {
		for s := step; s <= zone; s += step {
			station := s
			if end == 1 {
				station = b.LengthMM - s
			}
			at, heading := b.At(station)
			p := c.to(at)
			c.way(plot.Zone, fine, p.Away(heading+60, w/2/0.866), p.Away(heading-120, w/2/0.866))
		}
	}
}

// broken draws the two lines of a break.
func (c *canvas) broken(b *drawing.Branch) {
	at, heading := b.At(b.Break.V.From)
	w := c.width(b.WidthMM) + 8
	for _, along := range []unit.Millimetre{-2, 2} {
		p := c.to(at).Away(heading, along)
		c.way(plot.Bundle, heavy, p.Away(heading+90, w/2), p.Away(heading+90, w/8).Away(heading, 2.5), p.Away(heading-90,
			w/8).Away(heading, -2.5),
			p.Away(heading-90, w/2))
	}
}

// rank is the order in which flags are placed: the first get the nearest places.
type rank int

const (
	fixed   rank = iota // of a place, which cannot move
	number              // of a peg, which is small
	branch              // of a branch, which is long
	thing               // of what lies on a branch
	station             // where something starts or stops
)

// flag puts words beside a point, the first of them in heavy letters.
type flag struct {
	rank   rank
	of     plot.Point
	or     []plot.Point
	clear  unit.Millimetre
	toward unit.Degree
	size   unit.Millimetre
	lines  []string
	plain  bool   // the first is no heavier than the others
	id     bool   // an id alone
	end    string // of the termination that it names; "" for others
	layer  plot.Layer
}

// leading is the height of a line of text, in sizes of the face.
const leading unit.Millimetre = 1.25

// frameOf is what a flag takes.
func (c *canvas) frameOf(f flag) outline.Frame {
	wide := unit.Millimetre(0)
	for k, text := range f.lines {
		wide = max(wide, font.Of(k == 0 && !f.plain).Width(text, f.size))
	}
	high := leading * f.size * unit.Millimetre(len(f.lines))
	if f.id { // a line alone needs no room for another
		high = 1.02 * f.size
	}
	air := c.air(f)
	return outline.Frame{Of: f.of, Or: f.or, Wide: wide + 2*air, High: high + 2*air, Clear: f.clear, Toward: f.toward}
}

// air is what is left free around the words of a flag.
func (c *canvas) air(f flag) unit.Millimetre {
	if !c.Full {
		return f.size / 10
	}
	return f.size / 6
}

// write places a flag and writes it.
func (c *canvas) write(f flag) {
	frame := c.frameOf(f)
	if frame.Wide <= 2*c.air(f) {
		return
	}
	box, of, led := c.field.Put(frame)
	if led {
		c.way(plot.Lead, fine, box.Near(of), of)
	}
	c.writeIn(f, box)
}

// writeIn writes a flag in its box.
func (c *canvas) writeIn(f flag, box plot.Box) {
	air := c.air(f)
	y := box.High.Y - air - f.size*(font.CapShare+0.15)
	if f.id {
		y = box.High.Y - air - f.size*(font.CapShare+0.08)
	}
	for k, text := range f.lines {
		c.out.Write(f.layer, plot.Point{X: box.Low.X + air, Y: y}, f.size, k == 0 && !f.plain, text)
		y -= leading * f.size
	}
}

func textWide(text string, size unit.Millimetre) unit.Millimetre {
	return font.Of(false).Width(text, size)
}

// frame is the frame of what belongs to a point.
func frame(of plot.Point, wide, high, clear unit.Millimetre, toward unit.Degree) outline.Frame {
	return outline.Frame{Of: of, Wide: wide, High: high, Clear: clear, Toward: toward}
}

// straight is a line from one point to another.
func straight(a, b plot.Point) outline.Line {
	heading := unit.Degree(math.Atan2(float64(b.Y-a.Y), float64(b.X-a.X)) * 180 / math.Pi)
	return outline.Line{{From: a, Heading: heading, Length: a.To(b)}}
}

// stations writes what starts and stops along a branch: what does so close together in one flag.
func (c *canvas) stations(b *drawing.Branch) {
	type mark struct {
		at   unit.Millimetre
		says string
	}
	var all []mark
	add := func(what string, ends [2]unit.Millimetre) {
		for k, at := range ends {
			if at > 0 && at < b.LengthMM && ends[1] > ends[0] {
				all = append(all, mark{at, what + [2]string{" from ", " to "}[k] + c.says(at)})
			}
		}
	}
	for _, v := range b.Covers {
		add(v.What, [2]unit.Millimetre{v.From, v.To})
	}
	add("lay", b.Lay)
	slices.SortStableFunc(all, func(x, y mark) int { return cmp.Compare(x.at, y.at) })
	const near = 15
	for n := 0; n < len(all); {
		lines := []string{all[n].says}
		k := n + 1
		for ; k < len(all) && all[k].at-all[n].at < near; k++ {
			lines = append(lines, all[k].says)
		}
		at, heading := b.At((all[n].at + all[k-1].at) / 2)
		c.later(flag{rank: station, of: c.to(at), clear: c.width(b.WidthMM)/2 + 1, toward: heading + 90, size: c.Size * 0.7,
			lines: lines, plain: true, layer: plot.TextLayer})
		n = k
	}
}

// pegNumber is the number of a peg.
func pegNumber(no int) string { return strconv.Itoa(no) }
