// Package pdf writes pages of drawings as a PDF whose millimetres are those of the paper. The same
// pages give the same bytes. The face of its letters is inside.
package pdf

import (
	"bytes"
	"fmt"
	"slices"
	"time"

	"codeberg.org/go-pdf/fpdf"

	"contralay/model/unit"
	"contralay/ui/paper/font"
	"contralay/ui/paper/plot"
)

// Longest is the longest side of a page that readers show, mm. Source: ISO 32000-1, annex C,
// table C.1: 14,400 units of 1/72 inch, which are 5,080 mm.
const Longest unit.Millimetre = 5080

const mmPerPoint = 25.4 / 72

// Bytes is the pages as a PDF.
func Bytes(title string, pages []plot.Page) ([]byte, error) {
	for _, p := range pages {
		if p.Wide > Longest || p.High > Longest || !(p.Wide > 0) || !(p.High > 0) {
			return nil, fmt.Errorf("page %q is %.0f x %.0f mm: readers of PDF take pages up to %.0f mm", p.Name, float64(p.Wide),
				float64(p.High), float64(Longest))
		}
	}
	f := fpdf.NewCustom(&fpdf.InitType{UnitStr: "mm", Size: fpdf.SizeType{Wd: 210, Ht: 297}})
	f.SetCreationDate(time.Unix(0, 0).UTC()) // the same drawing is the same file on every day
	f.SetModificationDate(time.Unix(0, 0).UTC())
	f.SetCatalogSort(true)
	f.SetProducer("contralay", true)
	f.SetTitle(title, true)
	f.SetAutoPageBreak(false, 0)
	f.SetMargins(0, 0, 0)
	f.AddUTF8FontFromBytes("go", "", slices.Clone(font.Of(false).TTF))
	f.AddUTF8FontFromBytes("go", "B", slices.Clone(font.Of(true).TTF))
	f.SetLineCapStyle("round")
	f.SetLineJoinStyle("round")
	for _, p := range pages {
		w := writer{f, p}
		f.AddPageFormat("P", fpdf.SizeType{Wd: float64(p.Wide), Ht: float64(p.High)})
		for _, v := range p.Views {
			w.view(v)
		}
	}
	var out bytes.Buffer
	if err := f.Output(&out); err != nil {
		return nil, fmt.Errorf("the PDF cannot be written: %w", err)
	}
	return out.Bytes(), nil
}

// writer is a page that is being written.
type writer struct {
	*fpdf.Fpdf
	page plot.Page
}

// view writes what of a sheet is seen through its window.
func (w writer) view(v plot.View) {
	x, y := w.at(plot.Point{X: v.Window.Low.X, Y: v.Window.High.Y})
	size := v.Window.High.Minus(v.Window.Low)
	w.ClipRect(x, y, float64(size.X), float64(size.Y), false)
	for k := range v.Of.Shapes {
		s := v.Of.Shapes[k]
		b := s.Bounds()
		b.Low, b.High = b.Low.Plus(v.Move), b.High.Plus(v.Move)
		room := s.Line.Wide + 0.01
		b.Low, b.High = b.Low.Minus(plot.Point{X: room, Y: room}), b.High.Plus(plot.Point{X: room, Y: room})
		if b.Meets(v.Window) {
			w.shape(s, v.Move)
		}
	}
	w.ClipEnd()
}

// at is a point of a page, whose y runs up, as the writer wants it.
func (w writer) at(p plot.Point) (x, y float64) { return float64(p.X), float64(w.page.High - p.Y) }

func (w writer) shape(s plot.Shape, move plot.Point) {
	style := ""
	if s.Line.Wide > 0 {
		w.SetLineWidth(float64(s.Line.Wide))
		dash := make([]float64, len(s.Line.Dash))
		for k, d := range s.Line.Dash {
			dash[k] = float64(d)
		}
		w.SetDashPattern(dash, 0)
		style = "D"
	}
	if s.Fill != plot.None {
		grey := s.Fill.Percent() * 255 / 100
		w.SetFillColor(grey, grey, grey)
		style = "F" + style
	}
	switch {
	case len(s.Way) > 0 && style != "":
		for k, p := range s.Way {
			if x, y := w.at(p.Plus(move)); k == 0 {
				w.MoveTo(x, y)
			} else {
				w.LineTo(x, y)
			}
		}
		if s.Closed {
			w.ClosePath()
		}
		w.DrawPath(style)
	case len(s.Way) > 0:
	case s.Text != "":
		x, y := w.at(s.Middle.Plus(move))
		w.SetFillColor(0, 0, 0) // a fill of before may be undone with the window it was in, and the library does not know
		face := ""
		if s.Bold {
			face = "B"
		}
		w.SetFont("go", face, float64(s.Size)/mmPerPoint)
		if s.Turn != 0 {
			w.TransformBegin()
			w.TransformRotate(float64(s.Turn), x, y)
		}
		w.Text(x, y, s.Text)
		if s.Turn != 0 {
			w.TransformEnd()
		}
	case style != "":
		x, y := w.at(s.Middle.Plus(move))
		w.Circle(x, y, float64(s.Radius), style)
	}
}
