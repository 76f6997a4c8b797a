package shape

import (
	"fmt"
	"html"
	"math"
	"strings"

	"contralay/ui/draw"
)

// Measures of a drawing, mm of paper.
const (
	wideMM   = 120.0 // the section across, with what lies round it
	marginMM = 4.0
	titleMM  = 4.2  // height of letters
	keyMM    = 3.4  // the same of the key
	lineHigh = 6.0  // from one line of text to the next
	nameMost = 4.0  // largest letters on a disc
	letter   = 0.62 // width of a letter of sans-serif, bold, as a share of its height
)

// Key is one line of the key: a class and its name.
type Key struct {
	Class int
	Name  string
}

// SVG writes the drawing of a section on a light ground, with a title over it and the key of its
// classes under it. The shapes are those of Picture. Where no disc asks for its number, all carry
// theirs. It has no script and no font of its own. "" is a section with nothing to draw.
func SVG(s draw.Section, title string, keys []Key) string {
	reach := s.Reach()
	if !(reach > 0) {
		return ""
	}
	p := draw.NewPalette(draw.TrueColour, false)
	b := build(s, p, 0)
	around := reach * 1.03
	if s.Turn != 0 {
		around = reach * 1.16
	}
	scale := wideMM / (2 * around) // mm of paper for a mm
	lines := (len(keys) + keysInLine - 1) / keysInLine
	if s.Says != "" {
		lines++
	}
	wide := wideMM + 2*marginMM
	high := 2*marginMM + titleMM + lineHigh/2 + wideMM + float64(lines)*lineHigh
	var w strings.Builder
	fmt.Fprintf(&w, `<svg xmlns="http://www.w3.org/2000/svg" width="%smm" height="%smm" viewBox="0 0 %s %s" role="img" aria-label="%s">`+
		"\n", short(wide), short(high), short(wide), short(high), escaped(title))
	fmt.Fprintf(&w, `<rect width="100%%" height="100%%" fill="%s"/>`+"\n", hex(b.ground))
	line := marginMM + titleMM
	size := min(titleMM, wideMM/(letter*float64(max(draw.Width(title), 1))))
	text(&w, wide/2, line, size, draw.Black, ` text-anchor="middle" font-weight="bold"`, title)
	pen := writer{w: &w, scale: scale, cx: wide / 2, cy: line + lineHigh/2 + wideMM/2}
	for i := range b.shapes {
		pen.shape(&b.shapes[i])
	}
	pen.names(b, s)
	line = pen.cy + wideMM/2 + lineHigh
	if s.Says != "" {
		text(&w, wide/2, line, keyMM, draw.Black, ` text-anchor="middle"`, s.Says)
		line += lineHigh
	}
	for k, key := range keys {
		x, y := marginMM+float64(k%keysInLine)*wideMM/keysInLine, line+float64(k/keysInLine)*lineHigh
		fmt.Fprintf(&w, `<rect x="%s" y="%s" width="5" height="%s" fill="%s"/>`+"\n", short(x), short(y-keyMM+0.4), short(keyMM),
			hex(p.ClassColour(key.Class)))
		text(&w, x+6.5, y, keyMM, draw.Black, "", key.Name)
	}
	w.WriteString("</svg>\n")
	return w.String()
}

// keysInLine is how many names of the key stand in one line.
const keysInLine = 3

// writer writes shapes, millimetres of paper, y downward.
type writer struct {
	w      *strings.Builder
	scale  float64
	cx, cy float64
}

func (p *writer) at(x, y float64) (string, string) {
	return short(p.cx + x*p.scale), short(p.cy - y*p.scale)
}

// shape writes one shape.
func (p *writer) shape(s *shape) {
	x, y := p.at(s.x, s.y)
	fill := hex(s.paint.colour)
	switch s.form {
	case disc:
		fmt.Fprintf(p.w, `<circle cx="%s" cy="%s" r="%s" fill="%s"/>`+"\n", x, y, short(s.r*p.scale), fill)
	case ring:
		fmt.Fprintf(p.w, `<circle cx="%s" cy="%s" r="%s" fill="none" stroke="%s" stroke-width="%s"/>`+"\n", x, y,
			short((s.r+s.inside)/2*p.scale), fill, short((s.r-s.inside)*p.scale))
	case band:
		p.band(s, fill)
	case sector:
		middle := (s.r + s.inside) / 2
		a, z := polar(s.from, middle), polar(s.to, middle)
		x1, y1 := p.at(s.x+a.x, s.y+a.y)
		x2, y2 := p.at(s.x+z.x, s.y+z.y)
		r := short(middle * p.scale)
		fmt.Fprintf(p.w, `<path d="M%s %sA%s %s 0 0 1 %s %s" fill="none" stroke="%s" stroke-width="%s"/>`+"\n", x1, y1, r, r, x2, y2, fill,
			short((s.r-s.inside)*p.scale))
	case wedge:
		var points []string
		for _, c := range s.corners {
			x, y := p.at(c.x, c.y)
			points = append(points, x+","+y)
		}
		fmt.Fprintf(p.w, `<polygon points="%s" fill="%s"/>`+"\n", strings.Join(points, " "), fill)
	}
}

// band writes the part of a disc between two lines: along one, round to the other, back.
func (p *writer) band(s *shape, fill string) {
	from, to := max(s.from, -s.r), min(s.to, s.r)
	if from >= to {
		return
	}
	along := point{-s.normal.y, s.normal.x}
	corner := func(across, side float64) (string, string) {
		half := side * math.Sqrt(max(s.r*s.r-across*across, 0))
		return p.at(s.x+across*s.normal.x+half*along.x, s.y+across*s.normal.y+half*along.y)
	}
	x1, y1 := corner(from, -1)
	x2, y2 := corner(from, 1)
	x3, y3 := corner(to, 1)
	x4, y4 := corner(to, -1)
	r := short(s.r * p.scale)
	// Along is a quarter turn anticlockwise from the normal, so from the first line to the second
	// the edge runs clockwise on paper, where y points down.
	fmt.Fprintf(p.w, `<path d="M%s %sL%s %sA%s %s 0 0 1 %s %sL%s %sA%s %s 0 0 1 %s %sZ" fill="%s"/>`+"\n", x1, y1, x2, y2, r, r, x3, y3,
		x4, y4, r, r, x1, y1, fill)
}

// names writes the numbers on their discs, those of a unit under its cores.
func (p *writer) names(b *builder, s draw.Section) {
	asked := false
	for _, d := range s.Discs {
		asked = asked || d.Numbered
	}
	for i, d := range s.Discs {
		if !d.Usable() || d.Kind == draw.Filler || asked && !d.Numbered {
			continue
		}
		name := nameOf(d)
		r := float64(d.D) / 2 * p.scale
		y, half := float64(d.Y), 0.86*r
		if len(d.Cores) > 0 && !s.ByClass {
			y, half = y-0.66*float64(d.D)/2, 0.55*r
		}
		size := min(2*half/(letter*float64(draw.Width(name))), 0.9*r, nameMost)
		ground := b.bodies[i]
		x := p.cx + float64(d.X)*p.scale
		text(p.w, x, p.cy-y*p.scale+0.36*size, size, draw.TextOn(ground), fmt.Sprintf(` text-anchor="middle" font-weight="bold" `+
			`paint-order="stroke" stroke="%s" stroke-width="%s"`, hex(ground), short(0.16*size)), name)
	}
}

// text writes one line of text.
func text(w *strings.Builder, x, y, size float64, colour draw.Colour, more, says string) {
	fmt.Fprintf(w, `<text x="%s" y="%s" font-family="sans-serif" font-size="%s" fill="%s"%s>%s</text>`+"\n", short(x), short(y),
		short(size), hex(colour), more, escaped(says))
}

// escaped is a text of somebody else, fit for a drawing.
func escaped(s string) string { return html.EscapeString(draw.Clean(s)) }

func hex(c draw.Colour) string { return fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B) }

// short is a number to a hundredth of a millimetre.
func short(v float64) string {
	t := strings.TrimRight(strings.TrimRight(fmt.Sprintf("%.2f", v), "0"), ".")
	if t == "-0" {
		return "0"
	}
	return t
}
