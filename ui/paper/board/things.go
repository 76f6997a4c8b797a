package board

import (
	"cmp"
	"math"
	"slices"
	"strconv"
	"strings"

	"contralay/calc/formula/outline"
	"contralay/calc/query/drawing"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/font"
	"contralay/ui/paper/plot"
)

// later keeps a flag until all lines are drawn, so that it lies clear of them.
func (c *canvas) later(f flag) {
	if !c.Full { // on a page of the set no letter is smaller than its size
		f.size = max(f.size, c.Size)
	}
	c.waiting = append(c.waiting, f)
}

// flags writes what waits. To scale what has room along its branch comes first, between breakouts before legs; the ids of
// splices and breakouts between the two; and a leg without that room is named with the end that it runs to.
func (c *canvas) flags() {
	if c.Small {
		c.names()
		return
	}
	isLeg := func(b *drawing.Branch) bool {
		mb := &c.s.H.Branches[c.s.Index.Branch[b.ID]]
		return len(c.s.Index.Meeting(mb.From)) == 1 || len(c.s.Index.Meeting(mb.To)) == 1
	}
	said := make([]bool, len(c.d.Branches))
	if !c.Full {
		for i := range c.d.Branches {
			b := &c.d.Branches[i]
			said[i] = !isLeg(b) && c.along(b)
		}
		c.first(func(f *flag) bool { return f.id && f.rank == thing })
		c.first(func(f *flag) bool { return f.id })
	}
	for i := range c.d.Branches {
		b := &c.d.Branches[i]
		switch {
		case said[i]:
		case c.Full:
			c.branchFlag(b)
		case isLeg(b) && c.along(b):
		case !c.withEnd(b):
			c.branchFlag(b)
		}
	}
	slices.SortStableFunc(c.waiting, func(a, b flag) int { return cmp.Compare(a.rank, b.rank) })
	for _, f := range c.waiting {
		c.write(f)
	}
}

// first writes some of the flags before the others.
func (c *canvas) first(is func(f *flag) bool) {
	rest := c.waiting[:0:0]
	for _, f := range c.waiting {
		if is(&f) {
			c.write(f)
		} else {
			rest = append(rest, f)
		}
	}
	c.waiting = rest
}

// withEnd names a leg in the flag of the termination at its end, where both have room close to that.
func (c *canvas) withEnd(b *drawing.Branch) bool {
	if b.Break.Set {
		return false
	}
	mb := &c.s.H.Branches[c.s.Index.Branch[b.ID]]
	for k, f := range c.waiting {
		if f.end == "" || f.end != mb.From && f.end != mb.To || f.end == b.Near {
			continue
		}
		f.lines = append(slices.Clone(f.lines), b.ID+"  "+c.short(b))
		box, ok := c.near(c.frameOf(f), 2)
		if ok {
			c.field.Take(box)
			c.writeIn(f, box)
			c.waiting = slices.Delete(c.waiting, k, k+1)
		}
		return ok
	}
	return false
}

// along writes what a branch is along it, where there is room for that.
func (c *canvas) along(b *drawing.Branch) bool {
	text := b.ID + "  " + c.short(b)
	l := c.line(b.Line)
	wide, high := font.Of(true).Width(text, c.Size), c.Size*1.05
	t := outline.Along{Wide: wide + 1, High: high, Clear: c.width(b.WidthMM)/2 + 0.6}
	for _, part := range []unit.Millimetre{0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8} {
		t.Stations = append(t.Stations, l.Length()*part)
	}
	at, heading, ok := c.field.PutAlong(l, t)
	if !ok || b.Break.Set {
		return false
	}
	base := at.Away(heading, 0.5).Away(heading+90, 0.24*c.Size)
	c.add(plot.Shape{Layer: plot.TextLayer, Middle: base, Size: c.Size, Bold: true, Turn: heading, Text: text})
	return true
}

// short is the length of a branch without its unit.
func (c *canvas) short(b *drawing.Branch) string {
	return strings.Replace(c.lengthOf(b), " "+c.Sys.Name(), "", 1)
}

// branchFlag says what a branch is.
func (c *canvas) branchFlag(b *drawing.Branch) {
	at, heading := b.Line.At(b.Line.Length() / 2)
	lines := []string{b.ID + "  " + c.lengthOf(b)}
	if !c.Full { // one unit for all of the page
		lines[0] = b.ID + "  " + c.short(b)
	}
	if c.Full {
		if b.BundleMM > 0 {
			says := "OD " + c.Sys.Diameter(b.BundleMM)
			for _, v := range b.Covers {
				if v.OverMM > 0 {
					says += ", over " + v.What + " " + c.Sys.Diameter(v.OverMM)
				}
			}
			lines = append(lines, says)
		}
		for _, v := range b.Covers {
			lines = append(lines, strings.TrimSpace(v.What+" "+v.Part))
		}
	}
	if b.Break.Set {
		lines = append(lines, "shown broken: "+c.long(b.Break.V.Long())+" left out")
	}
	f := flag{rank: branch, of: c.to(at), clear: c.width(b.WidthMM)/2 + 1, toward: upright(heading), size: c.Size, lines: lines,
		layer: plot.TextLayer}
	for _, part := range []unit.Millimetre{0.4, 0.6, 0.3, 0.7, 0.2, 0.8} {
		at, _ := b.Line.At(b.Line.Length() * part)
		f.or = append(f.or, c.to(at))
	}
	c.later(f)
	for _, v := range b.Bends {
		if v.Turn != 0 && v.Station <= b.LengthMM {
			at, heading := b.At(v.Station)
			inside := unit.Degree(math.Copysign(90, float64(v.Turn)))
			c.later(flag{rank: thing, of: c.to(at), clear: c.width(b.WidthMM)/2 + 1, toward: heading + inside, size: c.Size * 0.8,
				lines: []string{"R " + c.says(v.Radius)}, plain: true, layer: plot.TextLayer})
		}
	}
}

// upright is the side of a heading that is up.
func upright(heading unit.Degree) unit.Degree {
	if math.Cos(float64(heading)*math.Pi/180) < 0 {
		return heading - 90
	}
	return heading + 90
}

// lengthOf is the length of a branch with its tolerance.
func (c *canvas) lengthOf(b *drawing.Branch) string {
	if !b.Measured {
		return "no length"
	}
	says := c.long(b.LengthMM)
	if t := c.s.H.Branches[c.s.Index.Branch[b.ID]].ToleranceMM; len(t) == 2 {
		says += " -" + c.says(t[0]) + " +" + c.says(t[1])
	}
	return says
}

// datum marks where x and y begin.
func (c *canvas) datum() {
	arm := 2 * c.Size
	for _, heading := range []unit.Degree{0, 90, 180, 270} {
		c.way(plot.Frame, thin, plot.Point{}, plot.Point{}.Away(heading, arm))
		c.field.Line(straight(plot.Point{}, plot.Point{}.Away(heading, arm)), thin)
	}
	if c.Full {
		c.later(flag{rank: thing, clear: 4, toward: -135, size: c.Size * 0.8, plain: true, lines: []string{"datum: x 0, y 0"},
			layer: plot.TextLayer})
	}
}

// joint draws a breakout.
func (c *canvas) joint(j *drawing.Joint) {
	at := c.to(j.At)
	r := min(1.2, max(0.7, c.width(j.WideMM)/4))
	c.add(plot.Shape{Layer: plot.Bundle, Fill: plot.Black, Middle: at, Radius: r})
	lines := []string{j.ID}
	if c.Full {
		lines = filled(strings.TrimSpace(j.ID+"  "+j.Name), j.Transition)
	}
	clear := c.width(j.WideMM)/2 + 1.5
	if !c.Full {
		clear = c.width(j.WideMM)/2 + 0.8
	}
	c.later(flag{of: at, clear: clear, toward: -90, size: c.Size, lines: lines, layer: plot.TextLayer, id: !c.Full})
}

func filled(all ...string) []string {
	var out []string
	for _, s := range all {
		if s != "" {
			out = append(out, s)
		}
	}
	return out
}

// sleeve draws a splice.
func (c *canvas) sleeve(v *drawing.Sleeve) {
	at, long, wide := c.to(v.At), max(c.mm(v.LongMM), 3), max(c.mm(v.WideMM), 1.2)
	c.add(plot.Shape{Layer: plot.Splice, Line: plot.Line{Wide: thin}, Fill: plot.Middle, Closed: true, Way: rect(at, v.Heading,
		-long/2, long/2, wide)})
	lines := []string{v.ID}
	if c.Full {
		where := ""
		if v.Branch != "" {
			where = "middle at " + c.says(v.Station) + " of " + v.Branch
		}
		lines = filled(strings.TrimSpace(v.ID+"  "+v.Part), where)
	}
	clear := wide/2 + 2
	if !c.Full {
		clear = wide/2 + 1
	}
	c.later(flag{rank: thing, of: at, clear: clear, toward: v.Heading - 90, size: c.Size * 0.9, lines: lines, layer: plot.TextLayer,
		id: !c.Full})
}

// rect is a rectangle along a heading, from one distance of a point to another.
func rect(at plot.Point, heading unit.Degree, from, to, wide unit.Millimetre) []plot.Point {
	a, b := at.Away(heading, from), at.Away(heading, to)
	return []plot.Point{a.Away(heading+90, wide/2), b.Away(heading+90, wide/2), b.Away(heading-90, wide/2), a.Away(heading-90, wide/2)}
}

// label draws a marker sleeve, with its text beside it.
func (c *canvas) label(l *drawing.Label) {
	b := &c.d.Branches[l.Branch]
	part := c.line(b.Part(l.From, l.To))
	if len(part) == 0 {
		return
	}
	c.add(plot.Shape{Layer: plot.LabelLayer, Line: plot.Line{Wide: thin}, Fill: plot.White, Closed: true, Way: band(part,
		c.width(l.WideMM)+0.8)})
	if !c.Full {
		return
	}
	at, heading := b.At((l.From + l.To) / 2)
	lines := append([]string(nil), l.Text...)
	lines[0] = "label " + lines[0]
	c.later(flag{rank: thing, of: c.to(at), clear: c.width(l.WideMM)/2 + 1.5, toward: heading - 90, size: c.Size * 0.7,
		lines: lines, layer: plot.TextLayer})
}

// end draws a termination: its shell and its boot in outline, a cross where its branch is
// measured from, and its clock.
func (c *canvas) end(e *drawing.End) {
	at := c.to(e.At)
	front, back := c.mm(e.FrontMM), -c.mm(e.BackMM)
	wide := max(c.mm(e.WideMM), 2.5)
	if front-back < 2.5 {
		front = back + 2.5
	}
	line := plot.Line{Wide: thin}
	if e.Guess {
		line.Dash = []unit.Millimetre{2, 1.2}
	}
	if e.BootMM > 0 {
		neck := max(c.width(c.d.Branches[c.s.Index.Meeting(e.ID)[0]].WidthMM)+1.5, wide/2)
		tail := back - max(c.mm(e.BootMM), 1.5)
		a, b := at.Away(e.Heading, tail), at.Away(e.Heading, back)
		c.field.Line(straight(a, b), neck+1)
		c.add(plot.Shape{Layer: plot.Connector, Line: plot.Line{Wide: thin}, Fill: plot.Light, Closed: true, Way: []plot.Point{
			a.Away(e.Heading+90, neck/2), b.Away(e.Heading+90, wide/2), b.Away(e.Heading-90, wide/2), a.Away(e.Heading-90, neck/2)}})
	}
	c.add(plot.Shape{Layer: plot.Connector, Line: line, Fill: plot.White, Closed: true, Way: rect(at, e.Heading, back, front, wide)})
	in := min(wide, front-back) / 2 // the ends of a line that texts keep off are round
	c.field.Line(straight(at.Away(e.Heading, back+in), at.Away(e.Heading, front-in+0.1)), wide+1)
	arm := min(3, wide/2)
	c.way(plot.Frame, thin, at.Away(e.Heading+45, arm), at.Away(e.Heading-135, arm))
	c.way(plot.Frame, thin, at.Away(e.Heading-45, arm), at.Away(e.Heading+135, arm))
	c.key(e, at.Away(e.Heading, front), wide)
	lines := []string{strings.TrimSpace(e.ID + "  " + e.Name)}
	if !c.Full {
		lines[0] = e.ID
	}
	if says := clockSays(e); says != "" {
		lines = append(lines, says)
	}
	if e.Datum != "" {
		lines = append(lines, "length from "+e.Datum)
	}
	if c.Full && e.Guess {
		lines = append(lines, "size not known")
	}
	c.later(flag{of: at.Away(e.Heading, front), clear: 1.5, toward: e.Heading, size: c.Size, lines: lines, layer: plot.TextLayer,
		end: e.ID})
	if c.Full && (e.Clock.Set || e.BootAt.Set) {
		c.dials = append(c.dials, e)
	}
}

// clockSays is where the key and the boot of an end point.
func clockSays(e *drawing.End) string {
	var says []string
	if e.Clock.Set {
		says = append(says, "key "+strconv.Itoa(e.Clock.V))
	}
	if e.BootAt.Set {
		says = append(says, "boot "+strconv.Itoa(e.BootAt.V))
	}
	return strings.Join(says, ", ")
}

// key marks the key on the shell as it is seen from above the board: 12 is up, away from the
// board. Seen from the wire side 3 is to the right of the way its branch comes in.
func (c *canvas) key(e *drawing.End, front plot.Point, wide unit.Millimetre) {
	if !e.Clock.Set {
		return
	}
	side, up := math.Sincos(float64(e.Clock.V) * math.Pi / 6)
	at := front.Away(e.Heading-90, wide/2*unit.Millimetre(side)*0.8)
	fill := plot.Black
	if up < -0.01 { // on the side of the board
		fill = plot.White
	}
	h := max(wide/10, 0.8)
	c.add(plot.Shape{Layer: plot.Connector, Line: plot.Line{Wide: thin}, Fill: fill, Closed: true, Way: []plot.Point{
		at.Away(e.Heading+90, h), at.Away(e.Heading-90, h), at.Away(e.Heading+180, 1.7*h)}})
}

// peg draws a peg and its number.
func (c *canvas) peg(p drawing.Peg) {
	at, r := c.to(p.At), c.mm(c.d.PegMM)/2
	c.add(plot.Shape{Layer: plot.PegLayer, Line: plot.Line{Wide: thin}, Middle: at, Radius: r})
	c.way(plot.PegLayer, fine, at.Away(0, -r-1), at.Away(0, r+1))
	c.way(plot.PegLayer, fine, at.Away(90, -r-1), at.Away(90, r+1))
	box := plot.Box{Low: at.Minus(plot.Point{X: r + 1, Y: r + 1}), High: at.Plus(plot.Point{X: r + 1, Y: r + 1})}
	c.field.Take(box)
	c.later(flag{rank: number, of: at, clear: r + 0.5, toward: 45, size: c.Size * 0.7, lines: []string{pegNumber(p.No)},
		plain: true, layer: plot.PegLayer})
}

// dial draws the clock of an end as it is seen from the wire side: a ring, a mark for the key
// inside it, an arrow for the boot outside.
func (c *canvas) dial(e *drawing.End) {
	const r, room = 7, 3.5
	at := c.to(e.At).Away(e.Heading, c.mm(e.FrontMM))
	box, _, _ := c.field.Put(frame(at, 2*(r+room), 2*(r+room)+c.Size*0.8, 2, e.Heading+30))
	m := plot.Point{X: box.Middle().X, Y: box.High.Y - r - room}
	c.add(plot.Shape{Layer: plot.Connector, Line: plot.Line{Wide: thin}, Fill: plot.White, Middle: m, Radius: r})
	hour := func(h model.Opt[int]) unit.Degree { return 90 - 30*unit.Degree(h.V) }
	if e.Clock.Set {
		a := hour(e.Clock)
		c.add(plot.Shape{Layer: plot.Connector, Fill: plot.Black, Closed: true,
			Way: []plot.Point{m.Away(a+12, r), m.Away(a-12, r), m.Away(a, r-3)}})
	}
	if e.BootAt.Set {
		a := hour(e.BootAt)
		tip := m.Away(a, r+room)
		c.way(plot.Connector, heavy, m.Away(a, r), tip)
		c.way(plot.Connector, heavy, tip.Away(a+155, 2), tip, tip.Away(a-155, 2))
	}
	text := e.ID + ", wire side"
	size := c.Size * 0.55
	c.out.Write(plot.TextLayer, plot.Point{X: m.X - textWide(text, size)/2, Y: box.Low.Y + 0.6}, size, false, text)
}
