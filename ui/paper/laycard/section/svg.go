package section

import (
	"fmt"
	"html"
	"math"
	"strings"
)

// SVG writes a picture, one mm of paper to a unit of the drawing; says is what it shows, for
// whoever cannot see it. "" where there is none.
func (p Picture) SVG(says string) string {
	if p.W <= 0 {
		return ""
	}
	var b strings.Builder
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" class="lay" width="%[1]smm" height="%[2]smm" viewBox="0 0 %[1]s %[2]s" `+
		`role="img" aria-label="%[3]s" font-family="%[4]s" fill="#000" stroke="none">`, num(p.W), num(p.H), html.EscapeString(says),
		html.EscapeString(Family))
	if p.Built > 0 {
		fmt.Fprintf(&b, `<circle class="tape" cx="%s" cy="%s" r="%s" fill="#ccc" stroke="#000" stroke-width="%s"/>`, num(p.CX), num(p.CY),
			num(p.Built-thinMM/2), num(thinMM))
	}
	for _, d := range p.Discs {
		d.svg(&b)
	}
	for _, l := range p.Leaders {
		var points []string
		for _, at := range l.Points {
			points = append(points, num(at[0])+","+num(at[1]))
		}
		fmt.Fprintf(&b, `<polyline class="leader" data-of="%s" points="%s" fill="none" stroke="#000" stroke-width="%s"/>`,
			html.EscapeString(l.Of), strings.Join(points, " "), num(thinMM))
	}
	for _, l := range p.Labels {
		l.svg(&b)
	}
	b.WriteString("</svg>")
	return b.String()
}

// svg writes a disc: its outline, and the second ring of a tracer, open where its number stands.
func (d Disc) svg(b *strings.Builder) {
	fill, ink, dash := "#fff", "#000", ""
	if d.Kind == Filler {
		fill = "#ccc"
	}
	if !d.InHand {
		ink = "#888"
	}
	if d.Kind == Spare {
		dash = ` stroke-dasharray="1.4 .8"`
	}
	fmt.Fprintf(b, `<circle class="%s" data-of="%s" cx="%s" cy="%s" r="%s" fill="%s" stroke="%s" stroke-width="%s"%s/>`,
		map[bool]string{true: "hand", false: "below"}[d.InHand], html.EscapeString(d.ID), num(d.CX), num(d.CY), num(d.R-d.line()/2), fill,
		ink, num(d.line()), dash)
	if !d.Tracer || !d.InHand {
		return
	}
	r := d.R - d.line() - tracerGapMM
	open := math.Pi / 2
	if d.Numbered {
		open = math.Acos(min(1, (tall(NumberSize)/2+3*clearMM)/r))
	}
	for _, side := range [2]float64{-1, 1} {
		fmt.Fprintf(b, `<path class="tracer" data-of="%s" d="M%s %sA%s %s 0 0 %d %s %s" fill="none" stroke="#000" stroke-width="%s"/>`,
			html.EscapeString(d.ID), num(d.CX-r*math.Sin(open)), num(d.CY+side*r*math.Cos(open)), num(r), num(r),
			map[float64]int{-1: 1, 1: 0}[side], num(d.CX+r*math.Sin(open)), num(d.CY+side*r*math.Cos(open)), num(lineMM))
	}
}

// tracerGapMM is between the two rings of a tracer.
const tracerGapMM = 0.45

// svg writes a label with its middle where it says.
func (l Label) svg(b *strings.Builder) {
	class := map[What]string{Number: "number", Position: "position", Mark: "mark"}[l.What]
	turn, ink, heavy := "", "", ""
	if l.Turn != 0 {
		turn = fmt.Sprintf(` transform="rotate(%s %s %s)"`, num(l.Turn), num(l.X), num(l.Y))
	}
	if l.Heavy {
		heavy = ` font-weight="bold"`
	}
	if l.What == Mark {
		w, h := l.Width()+2*markPad, l.Height()+markPad
		fmt.Fprintf(b, `<rect class="mark" data-of="%s" x="%s" y="%s" width="%s" height="%s"%s/>`, html.EscapeString(l.Of),
			num(l.X-w/2), num(l.Y-h/2), num(w), num(h), turn)
		ink = ` fill="#fff"`
	}
	fmt.Fprintf(b, `<text class="%s" data-of="%s" x="%s" y="%s" font-size="%s"%s%s text-anchor="middle" textLength="%s" `+
		`lengthAdjust="spacingAndGlyphs"%s>%s</text>`, class, html.EscapeString(l.Of), num(l.X), num(l.Y+l.Size*CapShare/2), num(l.Size),
		heavy, ink, num(l.Width()), turn, html.EscapeString(l.Text))
}

// num is a number as short as SVG needs it.
func num(v float64) string {
	t := strings.TrimRight(strings.TrimRight(fmt.Sprintf("%.3f", v), "0"), ".")
	if t == "-0" {
		return "0"
	}
	return t
}
