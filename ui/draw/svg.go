package draw

import (
	"fmt"
	"html"
	"strings"
)

// SVG draws a section for paper, in black on white, wide so many mm: each disc with its
// number in its layer, counted from the first, and its name under that where there is room.
// A unit has a heavy line, a spare a dashed one, a filler is grey, a tracer has two rings;
// the bundle's over is dotted, the tape round a centre that is built up is grey and the sheath a full line outside it. What is drawn is all
// there is to see: no script, no font of its own.
func SVG(s Section, wide float64) string {
	r := s.reach()
	if r <= 0 {
		return ""
	}
	var b strings.Builder
	side := 2 * r * 1.02
	fmt.Fprintf(&b,
		`<svg xmlns="http://www.w3.org/2000/svg" class="section" width="%smm" height="%smm" viewBox="%s %s %s %s" `+
			`role="img" aria-label="%s">`,
		num(wide), num(wide), num(-side/2), num(-side/2), num(side), num(side), html.EscapeString("cross-section, "+s.Seen))
	thin := side / wide * 0.18 // 0.18 mm on paper
	ring := func(radius, stroke float64, dash string) {
		if radius > 0 {
			fmt.Fprintf(&b, `<circle r="%s" fill="none" stroke="#000" stroke-width="%s"%s/>`, num(radius), num(stroke), dash)
		}
	}
	ring(s.sheath(), 3*thin, "")
	ring(s.boundary(), thin, fmt.Sprintf(` stroke-dasharray="%s"`, num(4*thin)))
	if r := float64(s.BuiltMM) / 2; r > 0 {
		fmt.Fprintf(&b, `<circle r="%s" fill="#ccc" stroke="#000" stroke-width="%s"/>`, num(r-thin/2), num(thin))
	}
	at := map[int]int{}
	for _, d := range s.Discs {
		at[d.Layer]++
		if d.usable() {
			disc(&b, d, at[d.Layer], thin, side/wide)
		}
	}
	b.WriteString("</svg>")
	return b.String()
}

// Least heights of figures on paper, mm.
const (
	leastName   = 1.5
	leastNumber = 1.2
)

// disc draws one component; mm is one millimetre of paper in the drawing's own measure.
func disc(b *strings.Builder, d Disc, n int, thin, mm float64) {
	x, y, r := float64(d.X), -float64(d.Y), float64(d.D)/2-thin/2
	fill, stroke, dash := "#fff", thin*1.4, ""
	switch d.Kind {
	case Unit:
		stroke = 3.5 * thin
	case Spare:
		dash = fmt.Sprintf(` stroke-dasharray="%s %s"`, num(5*thin), num(3*thin))
	case Filler:
		fill = "#ccc"
	}
	r -= stroke / 2
	fmt.Fprintf(b, `<circle cx="%s" cy="%s" r="%s" fill="%s" stroke="#000" stroke-width="%s"%s/>`, num(x), num(y), num(r), fill,
		num(stroke), dash)
	if d.Tracer {
		fmt.Fprintf(b, `<circle cx="%s" cy="%s" r="%s" fill="none" stroke="#000" stroke-width="%s"/>`, num(x), num(y), num(r-2.5*thin),
			num(thin))
	}
	text := func(says string, dy, size float64, heavy string) {
		if size < leastNumber*mm {
			return
		}
		fmt.Fprintf(b, `<text x="%s" y="%s" font-size="%s"%s text-anchor="middle" font-family="sans-serif">%s</text>`, num(x), num(y+dy),
			num(size), heavy, html.EscapeString(says))
	}
	number := fmt.Sprint(n)
	size := min(r*0.9, r*2.2/float64(len(number)+1))
	name := min(r*0.55, r*2.4/float64(Width(d.Label)+1))
	if d.Kind == Filler || name < leastName*mm {
		text(number, size*0.36, size, ` font-weight="bold"`)
		return
	}
	text(number, r*0.05, size*0.85, ` font-weight="bold"`)
	text(d.Label, r*0.62, name, "")
}

// num is a number as short as SVG needs it.
func num(v float64) string {
	t := strings.TrimRight(strings.TrimRight(fmt.Sprintf("%.4f", v), "0"), ".")
	if t == "-0" || t == "" {
		return "0"
	}
	return t
}
