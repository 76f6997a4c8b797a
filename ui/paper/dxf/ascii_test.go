package dxf_test

import (
	"testing"

	"contralay/ui/paper/dxf"
	"contralay/ui/paper/plot"
)

// Every sign that has words of its own, and what has none: the first and the last sign of plain ASCII stay, what commands a terminal is
// left out.
func TestSignsInASCII(t *testing.T) {
	for text, want := range map[string]string{"Ω": "Ohm", "\u2126": "Ohm", "µ\u03bc": "uu", "5°": "5deg", "2×3·4": "2x3.4",
		"±1−2–3—4":       "+/-1-2-3-4",
		"ßøØæÆœŒłŁđĐðþı": "ssoOaeAEoeOElLdDdthi", "‘a’ “b”…": `'a' "b"...`, " ~": " " +
			"~", string(rune(27)) + "\x7f\u0080\n": `\U+0080`, "é": "e", "主": `\U+4E3B`, "\uffff": `\U+FFFF`, "\U00010000": "?"} {
		if got := dxf.ASCII(text); got != want {
			t.Errorf("%q: %q, by hand %q", text, got, want)
		}
	}
	s := &plot.Sheet{} // a fill without a line is left out, a disc without one is not
	s.Add(plot.Shape{Layer: plot.Zone, Fill: plot.White, Way: []plot.Point{{}, {X: 1}}},
		plot.Shape{Layer: plot.Zone, Line: plot.Line{Wide: 0.1}, Way: []plot.Point{{}, {X: 1}}},
		plot.Shape{Layer: plot.Zone, Fill: plot.Black, Radius: 1})
	if got := entities(read(t, dxf.Bytes(s))); len(got) != 5 || got[0][0][0] != "POLYLINE" || got[4][0][0] != "CIRCLE" {
		t.Errorf("%v", got)
	}
}
