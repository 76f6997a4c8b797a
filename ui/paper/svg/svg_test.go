package svg_test

import (
	"encoding/xml"
	"io"
	"strings"
	"testing"

	"contralay/model/unit"
	"contralay/ui/paper/plot"
	"contralay/ui/paper/svg"
)

// A drawing as a reader of XML finds it: as large in mm as its box, one unit a millimetre, y down, each
// shape in the group of its layer, text as text.
func TestSVG(t *testing.T) {
	s := &plot.Sheet{Title: "a <b>", Box: plot.Box{Low: plot.Point{X: -10, Y: -20}, High: plot.Point{X: 90, Y: 30}}}
	s.Way(plot.Bundle, 0.25, plot.Point{}, plot.Point{X: 50.5, Y: 10})
	s.Add(plot.Shape{Layer: plot.PegLayer, Line: plot.Line{Wide: 0.1, Dash: []unit.Millimetre{2, 1}}, Fill: plot.Light,
		Middle: plot.Point{X: 5, Y: 5}, Radius: 3})
	s.Add(plot.Shape{Layer: plot.TextLayer, Text: `Ω & "x"`, Size: 4, Turn: 30, Middle: plot.Point{X: 1, Y: 2}})
	d := xml.NewDecoder(strings.NewReader(string(svg.Bytes(s))))
	got := map[string]map[string]string{}
	group, text := "", ""
	for {
		tok, err := d.Token()
		if err == io.EOF {
			break
		} else if err != nil {
			t.Fatal(err)
		}
		switch v := tok.(type) {
		case xml.StartElement:
			all := map[string]string{"group": group}
			for _, a := range v.Attr {
				all[a.Name.Local] = a.Value
			}
			if v.Name.Local == "g" {
				group = all["id"]
			}
			got[v.Name.Local], text = all, ""
		case xml.CharData:
			text += string(v)
		case xml.EndElement:
			if e := got[v.Name.Local]; e != nil {
				e["says"] = text
			}
		}
	}
	for _, c := range []struct{ of, key, want string }{
		{"svg", "width", "100mm"}, {"svg", "height", "50mm"}, {"svg", "viewBox", "0 0 100 50"}, {"title", "says", "a <b>"},
		{"path", "d", "M10 30L60.5 20"}, {"path", "group", "BUNDLE"}, {"path", "fill", "none"},
		{"circle", "cx", "15"}, {"circle", "cy", "25"}, {"circle", "r", "3"}, {"circle", "group", "PEG"}, {"circle",
			"stroke-dasharray", "2 1"},
		{"text", "x", "11"}, {"text", "y", "28"}, {"text", "group", "TEXT"}, {"text", "says", `Ω & "x"`}, {"text", "transform",
			"rotate(-30 11 28)"},
	} {
		if v := got[c.of][c.key]; v != c.want {
			t.Errorf("%s %s: %q, by hand %q", c.of, c.key, v, c.want)
		}
	}
}
