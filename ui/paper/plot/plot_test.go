package plot

import (
	"fmt"
	"math"
	"testing"

	"contralay/model/unit"
)

// Bounds of shapes by hand: of a way its points, of a disc its radius to all sides, of a text its face turned about its left end.
func TestBoundsOfShapes(t *testing.T) {
	p := func(x, y float64) Point { return Point{X: unit.Millimetre(x), Y: unit.Millimetre(y)} }
	text := Shape{Text: "H", Size: 10, Middle: p(5, 7)}
	wide := float64(text.Width())
	turned := text
	turned.Turn = 90
	up := float64(10 * 0.22)
	for name, c := range map[string]struct {
		s         Shape
		low, high Point
	}{
		"a way":  {Shape{Way: []Point{p(3, 4), p(-1, 9), p(2, -5)}, Radius: 99, Text: "x"}, p(-1, -5), p(3, 9)},
		"a disc": {Shape{Middle: p(3, 4), Radius: 2}, p(1, 2), p(5, 6)},
		"a text": {text, p(5, 7-up), p(5+wide, 0)}, "turned": {turned, p(0, 7), p(5+up, 7+wide)},
	} {
		b := c.s.Bounds()
		if name == "a text" { // as high as a capital: less than the size, more than half of it
			if b.High.Y <= 12 || b.High.Y >= 17 {
				t.Errorf("%s is %v high", name, b.High.Y)
			}
			c.high.Y = b.High.Y
		}
		if name == "turned" {
			if b.Low.X >= 0 || b.Low.X <= -5 {
				t.Errorf("%s reaches to %v", name, b.Low.X)
			}
			c.low.X = b.Low.X
		}
		if b.Low.To(c.low) > 1e-9 || b.High.To(c.high) > 1e-9 {
			t.Errorf("%s: %v, want %v to %v", name, b, c.low, c.high)
		}
	}
	if wide <= 0 || math.Abs(float64((&Shape{Text: "HH", Size: 10}).Width())-2*wide) > 1e-9 {
		t.Errorf("H is %v wide", wide)
	}
}

// What is put on a sheet, and a page that is a whole sheet, by hand.
func TestWhatIsPutOnASheet(t *testing.T) {
	s := &Sheet{Title: "T", Box: Box{Low: Point{X: -10, Y: 20}, High: Point{X: 90, Y: 70}}}
	s.Way(Bundle, 0.5, Point{X: 1})
	s.Write(TextLayer, Point{}, 3, true, "")
	if len(s.Shapes) != 0 {
		t.Errorf("a way of one point and an empty text are drawn: %+v", s.Shapes)
	}
	s.Way(Cover, 0.5, Point{X: 1}, Point{Y: 2})
	s.Rect(Frame, 0.2, Light, Box{Low: Point{X: 1, Y: 2}, High: Point{X: 3, Y: 5}})
	s.Write(LabelLayer, Point{X: 4, Y: 6}, 3, true, "a")
	want := []Shape{{Layer: Cover, Line: Line{Wide: 0.5}, Way: []Point{{X: 1}, {Y: 2}}},
		{Layer: Frame, Line: Line{Wide: 0.2}, Fill: Light, Closed: true, Way: []Point{{X: 1, Y: 2}, {X: 3, Y: 2}, {X: 3, Y: 5}, {X: 1,
			Y: 5}}},
		{Layer: LabelLayer, Middle: Point{X: 4, Y: 6}, Size: 3, Bold: true, Text: "a"}}
	if fmt.Sprint(s.Shapes) != fmt.Sprint(want) {
		t.Errorf("%+v\nwant %+v", s.Shapes, want)
	}
	page := Whole(s)
	if page.Name != "T" || page.Wide != 100 || page.High != 50 || len(page.Views) != 1 || page.Views[0].Of != s ||
		page.Views[0].Move != (Point{X: 10, Y: -20}) ||
		page.Views[0].Window != (Box{High: Point{X: 100, Y: 50}}) {
		t.Errorf("%+v", page)
	}
	for g, want := range map[Grey]int{None: 100, White: 100, Light: 88, Middle: 60, Black: 0} {
		if g.Percent() != want {
			t.Errorf("grey %d is %d %% white", g, g.Percent())
		}
	}
}
