// Package readback reads the SVG of a section back and checks it: it is for tests alone.
package readback

import (
	"encoding/xml"
	"math"
	"regexp"
	"strconv"
	"strings"

	"contralay/ui/paper/laycard/section"
)

// T is what a check needs of a test.
type T interface {
	Helper()
	Errorf(format string, args ...any)
}

// Element is one element of an SVG, with its text.
type Element struct {
	Name, Class, Of, Text string
	attr                  map[string]string
}

// Num is an attribute as a number; NaN where there is none.
func (e Element) Num(name string) float64 {
	v, err := strconv.ParseFloat(strings.TrimSuffix(e.attr[name], "mm"), 64)
	if err != nil {
		return math.NaN()
	}
	return v
}

// Attr is an attribute as it stands.
func (e Element) Attr(name string) string { return e.attr[name] }

// Elements reads the elements of an SVG.
func Elements(t T, svg string) []Element {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(svg))
	var out []Element
	for {
		token, err := d.Token()
		if token == nil {
			return out
		}
		if err != nil {
			t.Errorf("it is no SVG: %v", err)
			return out
		}
		switch x := token.(type) {
		case xml.StartElement:
			e := Element{Name: x.Name.Local, attr: map[string]string{}}
			for _, a := range x.Attr {
				e.attr[a.Name.Local] = a.Value
			}
			e.Class, e.Of = e.attr["class"], e.attr["data-of"]
			out = append(out, e)
		case xml.CharData:
			if len(out) > 0 {
				out[len(out)-1].Text += string(x)
			}
		}
	}
}

// Box is a text's box with its four corners in turn.
type Box struct {
	Element
	Corners [4][2]float64
	Turn    float64 // degrees clockwise
}

var turned = regexp.MustCompile(`rotate\(([-\d.]+) ([-\d.]+) ([-\d.]+)\)`)

// Boxes are the boxes of all texts, as wide as they say and as high as a capital of Arial,
// and those of the black under marks.
func Boxes(all []Element) []Box {
	var out []Box
	for _, e := range all {
		w, h := e.Num("textLength"), e.Num("font-size")*1466/2048
		x, y := e.Num("x"), e.Num("y")-h/2
		switch {
		case e.Name == "rect" && e.Class == "mark":
			w, h = e.Num("width"), e.Num("height")
			x, y = e.Num("x")+w/2, e.Num("y")+h/2
		case e.Name != "text":
			continue
		}
		turn, cx, cy := 0.0, x, y
		if m := turned.FindStringSubmatch(e.attr["transform"]); m != nil {
			turn, _ = strconv.ParseFloat(m[1], 64)
			cx, _ = strconv.ParseFloat(m[2], 64)
			cy, _ = strconv.ParseFloat(m[3], 64)
		}
		sin, cos := math.Sincos(turn * math.Pi / 180)
		b := Box{Element: e, Turn: turn}
		for k, c := range [4][2]float64{{-1, -1}, {1, -1}, {1, 1}, {-1, 1}} {
			dx, dy := x+c[0]*w/2-cx, y+c[1]*h/2-cy
			b.Corners[k] = [2]float64{cx + dx*cos - dy*sin, cy + dx*sin + dy*cos}
		}
		out = append(out, b)
	}
	return out
}

// Overlap reports whether two boxes cover each other: no side of either parts them.
func (b Box) Overlap(o Box) bool {
	for _, box := range [2]Box{b, o} {
		for k := range 2 {
			nx, ny := box.Corners[k+1][0]-box.Corners[k][0], box.Corners[k+1][1]-box.Corners[k][1]
			least, most := span(b, nx, ny)
			least2, most2 := span(o, nx, ny)
			if most < least2+1e-9 || most2 < least+1e-9 {
				return false
			}
		}
	}
	return true
}

func span(b Box, nx, ny float64) (least, most float64) {
	least, most = math.Inf(1), math.Inf(-1)
	for _, c := range b.Corners {
		v := c[0]*nx + c[1]*ny
		least, most = min(least, v), max(most, v)
	}
	return least, most
}

// cross reports whether two lines cross.
func cross(a, b, c, d [2]float64) bool {
	side := func(p, q, r [2]float64) float64 { return (q[0]-p[0])*(r[1]-p[1]) - (q[1]-p[1])*(r[0]-p[0]) }
	return side(a, b, c)*side(a, b, d) < 0 && side(c, d, a)*side(c, d, b) < 0
}

// line is a leader with its points.
func line(e Element) [][2]float64 {
	var out [][2]float64
	for _, p := range strings.Fields(e.attr["points"]) {
		x, y, _ := strings.Cut(p, ",")
		fx, _ := strconv.ParseFloat(x, 64)
		fy, _ := strconv.ParseFloat(y, 64)
		out = append(out, [2]float64{fx, fy})
	}
	return out
}

// Check holds a picture to what was asked: each number in hand once, every piece drawn, and all that
// Sound holds.
func Check(t T, svg string, a section.Asked) {
	t.Helper()
	numbers, drawn := map[string]int{}, map[string]bool{}
	for _, e := range Elements(t, svg) {
		switch e.Class {
		case "number":
			numbers[e.Of]++
		case "hand", "below":
			drawn[e.Of] = true
		}
	}
	for _, p := range a.Pieces {
		want := 0
		if p.InHand && p.Kind != section.Filler {
			want = 1
		}
		if numbers[p.ID] != want {
			t.Errorf("%s has its number %d times, and should have it %d times", p.ID, numbers[p.ID], want)
		}
		if !drawn[p.ID] {
			t.Errorf("%s is not drawn", p.ID)
		}
	}
	Sound(t, svg)
}

// Sound holds a picture to what holds for every one: each number at least 3.3 mm high, inside its own disc
// or outside every disc with a leader that begins at its disc; no text on another text, on a leader or
// beyond the edge; no two leaders across each other.
func Sound(t T, svg string) {
	t.Helper()
	all := Elements(t, svg)
	boxes := Boxes(all)
	discs := map[string]Element{}
	var leaders []Element
	for _, e := range all {
		switch {
		case e.Class == "hand" || e.Class == "below":
			discs[e.Of] = e
		case e.Class == "leader":
			leaders = append(leaders, e)
		}
	}
	for k, b := range boxes {
		for _, o := range boxes[:k] {
			if b.Overlap(o) && (b.Class != "mark" || b.Of != o.Of || o.Class != "mark") {
				t.Errorf("%s %s lies on %s %s", b.Class, b.Text, o.Class, o.Text)
			}
		}
		for _, c := range b.Corners {
			if c[0] < 0 || c[1] < 0 || c[0] > all[0].Num("width") || c[1] > all[0].Num("height") {
				t.Errorf("%s %s runs over the edge", b.Class, b.Text)
			}
		}
		under(t, b, leaders)
		if math.Abs(b.Turn) > 90 {
			t.Errorf("%s %s stands on its head", b.Class, b.Text)
		}
		if b.Class == "number" {
			checkNumber(t, b, discs, leaders)
		}
	}
	crossing(t, leaders)
}

// under holds leaders away from a text.
func under(t T, b Box, leaders []Element) {
	t.Helper()
	for _, l := range leaders {
		points := line(l)
		for n := 1; n < len(points); n++ {
			for m := range 4 {
				if cross(points[n-1], points[n], b.Corners[m], b.Corners[(m+1)%4]) {
					t.Errorf("the leader of %s runs over %s %s", l.Of, b.Class, b.Text)
				}
			}
		}
	}
}

// checkNumber holds one number to its height and its place.
func checkNumber(t T, b Box, discs map[string]Element, leaders []Element) {
	t.Helper()
	if high := b.Num("font-size") * 1466 / 2048; high < section.CapMM {
		t.Errorf("%s is %.2f mm high", b.Text, high)
	}
	own := discs[b.Of]
	inside := true
	for _, c := range b.Corners {
		if math.Hypot(c[0]-own.Num("cx"), c[1]-own.Num("cy")) > own.Num("r")-own.Num("stroke-width")/2 {
			inside = false
		}
	}
	if inside {
		return
	}
	for _, d := range discs {
		for k := range 4 {
			c, o := b.Corners[k], b.Corners[(k+1)%4]
			for step := range 11 {
				f := float64(step) / 10
				if math.Hypot(c[0]+(o[0]-c[0])*f-d.Num("cx"), c[1]+(o[1]-c[1])*f-d.Num("cy")) < d.Num("r") {
					t.Errorf("%s is not inside its own disc, and lies on that of %s", b.Text, d.Of)
					return
				}
			}
		}
	}
	for _, l := range leaders {
		if l.Of == b.Of {
			if p := line(l); math.Abs(math.Hypot(p[0][0]-own.Num("cx"),
				p[0][1]-own.Num("cy"))-own.Num("r")-own.Num("stroke-width")/2) > 0.01 {
				t.Errorf("the leader of %s does not begin at its disc", b.Text)
			}
			return
		}
	}
	t.Errorf("%s stands outside its disc and has no leader", b.Text)
}

// crossing holds the leaders apart.
func crossing(t T, leaders []Element) {
	t.Helper()
	for k, l := range leaders {
		for _, o := range leaders[:k] {
			p, q := line(l), line(o)
			for n := 1; n < len(p); n++ {
				for m := 1; m < len(q); m++ {
					if cross(p[n-1], p[n], q[m-1], q[m]) {
						t.Errorf("the leaders of %s and %s cross", l.Of, o.Of)
					}
				}
			}
		}
	}
}
