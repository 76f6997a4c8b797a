// Package plot is a drawing as shapes: lines, discs and texts in mm, each on a layer. A drawing is
// made once as a Sheet; ui/paper/pdf, ui/paper/svg and ui/paper/dxf write it, and ui/paper/tile cuts
// it into the pages of a printer.
//
// x runs to the right and y up. A colour is a grey, since most of this is printed in black.
package plot

import (
	"contralay/calc/formula/outline"
	"contralay/model/unit"
	"contralay/ui/paper/font"
)

// Point is a point of a sheet, mm.
type Point = outline.Point

// Box is a part of a sheet.
type Box = outline.Box

// Layer is what shapes are of, so that a reader may leave some of them out.
type Layer string

// The layers, in the order in which they lie on each other.
const (
	Bundle     Layer = "BUNDLE"
	Cover      Layer = "COVER"
	Zone       Layer = "ZONE"
	Centre     Layer = "CENTRE"
	Lay        Layer = "LAY"
	Splice     Layer = "SPLICE"
	LabelLayer Layer = "LABEL"
	Connector  Layer = "CONNECTOR"
	PegLayer   Layer = "PEG"
	Lead       Layer = "LEAD"
	TextLayer  Layer = "TEXT"
	Frame      Layer = "FRAME"
)

// Layers are all of them.
var Layers = []Layer{Bundle, Cover, Zone, Centre, Lay, Splice, LabelLayer, Connector, PegLayer, Lead, TextLayer, Frame}

// Grey is how dark a shape is filled; the zero value fills nothing.
type Grey int

// The greys.
const (
	None Grey = iota
	White
	Light
	Middle
	Black
)

// Percent is how much white is in a grey.
func (g Grey) Percent() int { return [...]int{100, 100, 88, 60, 0}[g] }

// Line is how a line is drawn. The zero value draws none.
type Line struct {
	Wide unit.Millimetre
	Dash []unit.Millimetre // line, gap, line, gap …; nil is a whole line
}

// Shape is one shape: a way through points, a disc, or a text.
type Shape struct {
	Layer Layer
	Line  Line
	Fill  Grey

	Way    []Point // at least two; a disc or a text where there is none
	Closed bool

	Middle Point
	Radius unit.Millimetre // of a disc

	Text string
	Size unit.Millimetre // of its face
	Bold bool
	Turn unit.Degree // counter-clockwise, about Middle, which is the left end of its base line
}

// Width is how wide a text is.
func (s *Shape) Width() unit.Millimetre { return font.Of(s.Bold).Width(s.Text, s.Size) }

// Bounds is the box that a shape lies in, its line left out.
func (s *Shape) Bounds() Box {
	switch {
	case len(s.Way) > 0:
		b := Box{Low: s.Way[0], High: s.Way[0]}
		for _, p := range s.Way[1:] {
			b = b.And(p)
		}
		return b
	case s.Text != "":
		b := Box{Low: s.Middle, High: s.Middle}
		wide := s.Width()
		for _, up := range []unit.Millimetre{-0.22 * s.Size, font.CapShare * s.Size} {
			b = b.And(s.Middle.Away(s.Turn+90, up)).And(s.Middle.Away(s.Turn+90, up).Away(s.Turn, wide))
		}
		return b
	}
	r := Point{X: s.Radius, Y: s.Radius}
	return Box{Low: s.Middle.Minus(r), High: s.Middle.Plus(r)}
}

// Sheet is a drawing: its shapes in the order in which they lie on each other.
type Sheet struct {
	Title  string
	Box    Box // what is to be seen of it
	Shapes []Shape
}

// Add puts shapes on the sheet.
func (s *Sheet) Add(all ...Shape) { s.Shapes = append(s.Shapes, all...) }

// Way draws a line through points.
func (s *Sheet) Way(l Layer, wide unit.Millimetre, points ...Point) {
	if len(points) > 1 {
		s.Add(Shape{Layer: l, Line: Line{Wide: wide}, Way: points})
	}
}

// Rect draws a box.
func (s *Sheet) Rect(l Layer, wide unit.Millimetre, fill Grey, b Box) {
	s.Add(Shape{Layer: l, Line: Line{Wide: wide}, Fill: fill, Closed: true,
		Way: []Point{b.Low, {X: b.High.X, Y: b.Low.Y}, b.High, {X: b.Low.X, Y: b.High.Y}}})
}

// Write puts a text whose base line begins at a point.
func (s *Sheet) Write(l Layer, at Point, size unit.Millimetre, bold bool, text string) {
	if text != "" {
		s.Add(Shape{Layer: l, Middle: at, Size: size, Bold: bold, Text: text})
	}
}

// Page is one page of paper: parts of sheets, each moved to its place on the page and cut off
// at its window.
type Page struct {
	Name       string
	Wide, High unit.Millimetre
	Views      []View
}

// View is a part of a sheet on a page.
type View struct {
	Of     *Sheet
	Window Box   // on the page
	Move   Point // from the sheet to the page
}

// Whole is a page that is a sheet and nothing else.
func Whole(s *Sheet) Page {
	wide, high := s.Box.High.X-s.Box.Low.X, s.Box.High.Y-s.Box.Low.Y
	return Page{Name: s.Title, Wide: wide, High: high, Views: []View{{s, Box{High: Point{X: wide, Y: high}}, s.Box.Low.Times(-1)}}}
}
