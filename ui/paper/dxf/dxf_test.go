package dxf_test

import (
	"strconv"
	"strings"
	"testing"

	"contralay/ui/paper/dxf"
	"contralay/ui/paper/plot"
)

// pair is a group code with its value: all that a DXF is made of.
type pair struct {
	code  int
	value string
}

func read(t *testing.T, text []byte) (out []pair) {
	t.Helper()
	for _, b := range text {
		if b >= 0x7f || b < ' ' && b != '\n' {
			t.Fatalf("byte %#x is no plain ASCII", b)
		}
	}
	all := strings.Split(strings.TrimSuffix(string(text), "\n"), "\n")
	if len(all)%2 != 0 {
		t.Fatalf("%d lines are no pairs", len(all))
	}
	for k := 0; k < len(all); k += 2 {
		code, err := strconv.Atoi(strings.TrimSpace(all[k]))
		if err != nil {
			t.Fatalf("line %d: %v", k+1, err)
		}
		out = append(out, pair{code, all[k+1]})
	}
	return out
}

// entities are the things of the section ENTITIES, each with its values by group code.
func entities(all []pair) (out []map[int][]string) {
	section := ""
	for k, p := range all {
		if p.code == 2 && all[k-1] == (pair{0, "SECTION"}) {
			section = p.value
		}
		switch {
		case section != "ENTITIES":
		case p == (pair{0, "ENDSEC"}):
			section = ""
		case p.code == 0:
			out = append(out, map[int][]string{0: {p.value}})
		case len(out) > 0:
			out[len(out)-1][p.code] = append(out[len(out)-1][p.code], p.value)
		}
	}
	return out
}

// A drawing as a small reader of release 12 finds it, against values worked out by hand.
func TestDXF(t *testing.T) {
	s := &plot.Sheet{Box: plot.Box{High: plot.Point{X: 90, Y: 30}}}
	s.Way(plot.Bundle, 0.25, plot.Point{X: 1, Y: 2}, plot.Point{X: 50.5, Y: -10})
	s.Add(plot.Shape{Layer: plot.Zone, Fill: plot.White, Closed: true, Way: []plot.Point{{}, {X: 1}, {Y: 1}}}) // a fill alone: left out
	s.Add(plot.Shape{Layer: plot.PegLayer, Line: plot.Line{Wide: 0.1}, Middle: plot.Point{X: 5, Y: 6}, Radius: 3})
	s.Write(plot.TextLayer, plot.Point{X: 7, Y: 8}, 10, false, "Kühler 5 Ω, 90°")
	all := read(t, dxf.Bytes(s))
	if all[len(all)-1] != (pair{0, "EOF"}) {
		t.Error("it does not end")
	}
	e := entities(all)
	want := []map[int]string{
		{0: "POLYLINE", 8: "BUNDLE", 66: "1", 70: "0"}, {0: "VERTEX", 8: "BUNDLE", 10: "1.0000", 20: "2.0000"},
		{0: "VERTEX", 10: "50.5000", 20: "-10.0000"}, {0: "SEQEND"},
		{0: "CIRCLE", 8: "PEG", 10: "5.0000", 20: "6.0000", 40: "3.0000"},
		{0: "TEXT", 8: "TEXT", 10: "7.0000", 20: "8.0000", 1: "Kuhler 5 Ohm, 90deg", 40: "7.2266"}, // capitals are 1480 of 2048 high
	}
	if len(e) != len(want) {
		t.Fatalf("%d entities, by hand %d: %v", len(e), len(want), e)
	}
	for k, w := range want {
		for code, v := range w {
			if got := e[k][code]; len(got) != 1 || got[0] != v {
				t.Errorf("entity %d, code %d: %v, by hand %q", k, code, got, v)
			}
		}
	}
	layers := map[string]bool{}
	for k, p := range all {
		if p == (pair{0, "LAYER"}) {
			layers[all[k+1].value] = true
		}
	}
	for _, l := range plot.Layers {
		if !layers[string(l)] {
			t.Errorf("layer %s is in no table", l)
		}
	}
}

// Names of every language come into plain ASCII: letters without their accents, others by number.
func TestASCII(t *testing.T) {
	for text, want := range map[string]string{"Motorkabelbaum für Ölkühler": "Motorkabelbaum fur Olkuhler", "±0.3": "+/-0.3",
		"Жгут":   `\U+0416\U+0433\U+0443\U+0442`,
		"a\x07b": "ab", "Łódź": "Lodz", "Straße": "Strasse"} {
		if got := dxf.ASCII(text); got != want {
			t.Errorf("%q: %q, by hand %q", text, got, want)
		}
	}
}
