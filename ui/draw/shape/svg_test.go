package shape

import (
	"encoding/xml"
	"errors"
	"io"
	"math"
	"strconv"
	"strings"
	"testing"

	"contralay/model/shorttest"
	"contralay/ui/draw"
)

// elements reads the elements of a drawing with their attributes.
func elements(t *testing.T, svg string) (out []map[string]string) {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(svg))
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return out
		}
		if err != nil {
			t.Fatalf("%v in %s", err, svg)
		}
		if e, is := token.(xml.StartElement); is {
			all := map[string]string{"": e.Name.Local}
			for _, a := range e.Attr {
				all[a.Name.Local] = a.Value
			}
			out = append(out, all)
		}
	}
}

// Both writers draw the same: a circle of the drawing for every disc, where the canvas has it, to
// a hundredth of a millimetre, all on one scale.
func TestBothWritersDrawTheSame(t *testing.T) {
	shorttest.Turn(t)
	for _, n := range every(t) {
		svg := SVG(n.s, n.name, nil)
		if svg != SVG(n.s, n.name, nil) {
			t.Fatalf("%s is not the same twice", n.name)
		}
		scale := wideMM / (2 * 1.03 * n.s.Reach())
		x0 := wideMM/2 + marginMM
		y0 := marginMM + titleMM + lineHigh/2 + wideMM/2
		type circle struct{ x, y float64 }
		seen := map[circle]bool{}
		for _, e := range elements(t, svg) {
			if e[""] == "circle" {
				x, _ := strconv.ParseFloat(e["cx"], 64)
				y, _ := strconv.ParseFloat(e["cy"], 64)
				seen[circle{x, y}] = true
			}
		}
		for _, d := range n.s.Discs {
			found := false
			for c := range seen {
				found = found || math.Hypot(c.x-x0-float64(d.X)*scale, c.y-y0+float64(d.Y)*scale) < 0.02
			}
			if !found {
				t.Errorf("%s: no circle where %s lies", n.name, d.ID)
			}
		}
	}
}

// Names on a drawing stay on their discs: a letter is at most 0.62 of its height wide.
func TestNamesFitTheirDiscs(t *testing.T) {
	shorttest.Turn(t)
	for _, n := range every(t) {
		for _, e := range elements(t, SVG(n.s, n.name, nil)) {
			if e[""] != "text" || e["paint-order"] == "" {
				continue
			}
			size, _ := strconv.ParseFloat(e["font-size"], 64)
			if size <= 0 || size > nameMost {
				t.Errorf("%s: letters of %.2f mm", n.name, size)
			}
		}
	}
}

// What comes from a file cannot leave its place in the drawing.
func TestNamesAreEscaped(t *testing.T) {
	s := draw.Section{Discs: []draw.Disc{{ID: `<b>"&`, D: 2}}, OverMM: 2, Says: "a<b"}
	svg := SVG(s, "x\x1b]0;\u202e<script>", []Key{{0, "<i>"}})
	for _, e := range elements(t, svg) {
		if e[""] == "script" || e[""] == "b" || e[""] == "i" {
			t.Errorf("%s became an element", e[""])
		}
	}
	if strings.ContainsAny(svg, "\x1b\u202e") {
		t.Errorf("%q commands whatever shows it", svg)
	}
}

// Nothing to draw is no drawing.
func TestNothingToDraw(t *testing.T) {
	if got := SVG(draw.Section{}, "x", nil); got != "" {
		t.Errorf("%q", got)
	}
}
