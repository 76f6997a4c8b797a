package bench_test

import (
	"strings"
	"testing"

	"contralay/model/shorttest"
	"contralay/ui/bench/benchtest"
	"contralay/ui/draw"
)

// Every screen in ASCII has plain characters alone, with its colours and without: the codes of those are all that
// stands between.
func TestASCIIOnly(t *testing.T) {
	shorttest.Turn(t)
	for name := range benchtest.EveryScreen {
		m := benchtest.OpenAt(t, "example.toml", name)
		for _, c := range []struct {
			w, h    int
			palette draw.Palette
		}{{80, 24, draw.Palette{}}, {120, 40, draw.Palette{}}, {40, 12, draw.Palette{}}, {20, 8, draw.Palette{}},
			{80, 24, draw.Palette{Colour: true, Dark: true}}} {
			m.ShownOn(c.palette, true)
			benchtest.Size(m, c.w, c.h)
			v := benchtest.View(m)
			if strings.Contains(v, "\x1b[") != c.palette.Colour {
				t.Errorf("%s at %d x %d: no colour is left, or one too many", name, c.w, c.h)
			}
			for _, r := range v {
				if r != '\n' && (r < 0x20 || r > 0x7e) && (r != '\x1b' || !c.palette.Colour) {
					t.Fatalf("%s at %d x %d shows %q", name, c.w, c.h, r)
				}
			}
		}
	}
}
