// Package svg writes a drawing as SVG in layers, one unit a millimetre.
package svg

import (
	"fmt"
	"html"
	"strconv"
	"strings"

	"contralay/model/unit"
	"contralay/ui/paper/plot"
)

// Bytes is a sheet as SVG. Each layer is a group, named as Inkscape and others name layers, by an
// id and a label of its own.
func Bytes(s *plot.Sheet) []byte {
	var b strings.Builder
	b.WriteString(`<?xml version="1.0" encoding="UTF-8"?>` + "\n")
	Write(&b, s, "")
	return []byte(b.String())
}

// Write writes a sheet as an element, as it stands in a page too; class is a class of it.
func Write(b *strings.Builder, s *plot.Sheet, class string) {
	wide, high := s.Box.High.X-s.Box.Low.X, s.Box.High.Y-s.Box.Low.Y
	if class != "" {
		class = ` class="` + class + `"`
	}
	fmt.Fprintf(b, `<svg xmlns="http://www.w3.org/2000/svg"%s width="%smm" height="%smm" viewBox="0 0 %s %s" `+
		`font-family="Go, Arial, Helvetica, sans-serif" stroke-linecap="round" stroke-linejoin="round" role="img">`+"\n",
		class, num(wide), num(high), num(wide), num(high))
	fmt.Fprintf(b, "<title>%s</title>\n", html.EscapeString(s.Title))
	at := func(p plot.Point) string { return num(p.X-s.Box.Low.X) + " " + num(s.Box.High.Y-p.Y) }
	for _, l := range plot.Layers {
		open := false
		for k := range s.Shapes {
			if s.Shapes[k].Layer != l {
				continue
			}
			if !open {
				fmt.Fprintf(b, `<g id="%s" data-layer="%s">`+"\n", l, l)
				open = true
			}
			shape(b, &s.Shapes[k], at)
		}
		if open {
			b.WriteString("</g>\n")
		}
	}
	b.WriteString("</svg>\n")
}

// num is a length to a thousandth of a millimetre.
func num(v unit.Millimetre) string {
	text := strconv.FormatFloat(float64(v), 'f', 3, 64)
	text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	if text == "-0" {
		return "0"
	}
	return text
}

func shape(b *strings.Builder, s *plot.Shape, at func(plot.Point) string) {
	switch {
	case len(s.Way) > 0:
		b.WriteString(`<path d="M`)
		for k, p := range s.Way {
			if k > 0 {
				b.WriteByte('L')
			}
			b.WriteString(at(p))
		}
		if s.Closed {
			b.WriteByte('Z')
		}
		b.WriteByte('"')
	case s.Text != "":
		x, y, _ := strings.Cut(at(s.Middle), " ")
		fmt.Fprintf(b, `<text x="%s" y="%s" font-size="%s" textLength="%s" lengthAdjust="spacingAndGlyphs"`, x, y, num(s.Size),
			num(s.Width()))
		if s.Bold {
			b.WriteString(` font-weight="bold"`)
		}
		if s.Turn != 0 {
			fmt.Fprintf(b, ` transform="rotate(%s %s %s)"`, num(unit.Millimetre(-s.Turn)), x, y)
		}
		fmt.Fprintf(b, ">%s</text>\n", html.EscapeString(s.Text))
		return
	default:
		x, y, _ := strings.Cut(at(s.Middle), " ")
		fmt.Fprintf(b, `<circle cx="%s" cy="%s" r="%s"`, x, y, num(s.Radius))
	}
	if s.Fill == plot.None {
		b.WriteString(` fill="none"`)
	} else {
		grey := s.Fill.Percent() * 255 / 100
		fmt.Fprintf(b, ` fill="#%02x%02x%02x"`, grey, grey, grey)
	}
	if s.Line.Wide > 0 {
		fmt.Fprintf(b, ` stroke="#000" stroke-width="%s"`, num(s.Line.Wide))
		if len(s.Line.Dash) > 0 {
			var dash []string
			for _, d := range s.Line.Dash {
				dash = append(dash, num(d))
			}
			fmt.Fprintf(b, ` stroke-dasharray="%s"`, strings.Join(dash, " "))
		}
	}
	b.WriteString("/>\n")
}
