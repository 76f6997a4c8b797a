package svg_test

import (
	"strings"
	"testing"

	"contralay/model/unit"
	"contralay/ui/paper/plot"
	"contralay/ui/paper/svg"
)

// A whole file, by hand: a box from (−10, −20) to (90, 30), so that x is 10 more and y is 30 less it; layers in their order whatever
// comes first; an arc of
// grey is 255 · 88 / 100 = 224 = e0, 60 % 153 = 99; a text that is turned by 90° to the left is turned by −90 there.
func TestWholeFile(t *testing.T) {
	s := &plot.Sheet{Title: "a <b>", Box: plot.Box{Low: plot.Point{X: -10, Y: -20}, High: plot.Point{X: 90, Y: 30}}}
	text := plot.Shape{Layer: plot.TextLayer, Text: `5 < 6`, Size: 4, Turn: 90, Bold: true, Middle: plot.Point{X: 1, Y: 2}}
	plain := plot.Shape{Layer: plot.TextLayer, Text: "x", Size: 4.5, Middle: plot.Point{X: -10, Y: 30}}
	s.Add(text, plain)
	s.Add(plot.Shape{Layer: plot.Bundle, Line: plot.Line{Wide: 0.25, Dash: []unit.Millimetre{2, 0.5}}, Fill: plot.Light, Closed: true,
		Way: []plot.Point{{}, {X: 50.5, Y: 10}, {X: 1.23456}}})
	s.Add(plot.Shape{Layer: plot.PegLayer, Fill: plot.Middle, Middle: plot.Point{X: 5, Y: 5}, Radius: 3})
	s.Add(plot.Shape{Layer: plot.PegLayer, Line: plot.Line{Wide: 0.1}, Middle: plot.Point{X: 5, Y: 5}, Radius: 0.5})
	s.Add(plot.Shape{Layer: plot.Bundle, Fill: plot.White, Way: []plot.Point{{}, {X: 1}}},
		plot.Shape{Layer: plot.Bundle, Fill: plot.Black, Way: []plot.Point{{}, {X: 1}}})
	num := func(v unit.Millimetre) string {
		return strings.TrimRight(strings.TrimRight(unit.Fixed(v, 3), "0"), ".")
	}
	body := `width="100mm" height="50mm" viewBox="0 0 100 50" font-family="Go, Arial, Helvetica, sans-serif" ` +
		`stroke-linecap="round" stroke-linejoin="round" role="img">
<title>a &lt;b&gt;</title>
<g id="BUNDLE" data-layer="BUNDLE">
<path d="M10 30L60.5 20L11.235 30Z" fill="#e0e0e0" stroke="#000" stroke-width="0.25" stroke-dasharray="2 0.5"/>
<path d="M10 30L11 30" fill="#ffffff"/>
<path d="M10 30L11 30" fill="#000000"/>
</g>
<g id="PEG" data-layer="PEG">
<circle cx="15" cy="25" r="3" fill="#999999"/>
<circle cx="15" cy="25" r="0.5" fill="none" stroke="#000" stroke-width="0.1"/>
</g>
<g id="TEXT" data-layer="TEXT">
<text x="11" y="28" font-size="4" textLength="` + num(text.Width()) + `" lengthAdjust="spacingAndGlyphs" ` +
		`font-weight="bold" transform="rotate(-90 11 28)">5 &lt; 6</text>
<text x="0" y="0" font-size="4.5" textLength="` + num(plain.Width()) + `" lengthAdjust="spacingAndGlyphs">x</text>
</g>
</svg>
`
	want := `<?xml version="1.0" encoding="UTF-8"?>` + "\n" + `<svg xmlns="http://www.w3.org/2000/svg" ` + body
	if got := string(svg.Bytes(s)); got != want {
		t.Errorf("%s\nwant\n%s", got, want)
	}
	var b strings.Builder
	svg.Write(&b, s, "drawing")
	if want := `<svg xmlns="http://www.w3.org/2000/svg" class="drawing" ` + body; b.String() != want {
		t.Errorf("%s", b.String())
	}
}
