package bench_test

import (
	"math"
	"strings"
	"testing"

	"contralay/ui/bench"
	"contralay/ui/bench/benchtest"
	"contralay/ui/draw"
)

// Plain characters and colour go together: every screen in ASCII keeps its codes,
// and between them stand plain bytes only.
func TestASCIIKeepsColour(t *testing.T) {
	for name, keys := range benchtest.EveryScreen {
		m := benchtest.Open(t, "example.toml")
		m.Cfg.ASCII, m.Cfg.Palette = true, draw.Palette{Colour: true, Dark: true}
		benchtest.GoTo(t, m, keys...)
		benchtest.Size(m, 80, 24)
		v := benchtest.View(m)
		if !strings.Contains(v, "\x1b[") {
			t.Errorf("%s: no colour left", name)
		}
		for _, r := range v {
			if r != '\n' && r != '\x1b' && (r < 0x20 || r > 0x7e) {
				t.Fatalf("%s shows %q", name, r)
			}
		}
	}
}

// Lines that are coloured can be read on the terminal's own ground: 4.5 : 1 and more
// by WCAG 2.1, 1.4.3, with xterm's default colours (XTerm-col.ad).
func TestLineContrast(t *testing.T) {
	xterm := map[string][3]float64{"31": {205, 0, 0}, "34": {0, 0, 238}, "91": {255, 0, 0}, "93": {255, 255, 0}}
	luminance := func(c [3]float64) float64 {
		l := 0.0
		for k, w := range [3]float64{0.2126, 0.7152, 0.0722} {
			v := c[k] / 255
			if v <= 0.04045 {
				v /= 12.92
			} else {
				v = math.Pow((v+0.055)/1.055, 2.4)
			}
			l += w * v
		}
		return l
	}
	for _, dark := range []bool{true, false} {
		ground := [3]float64{255, 255, 255}
		if dark {
			ground = [3]float64{}
		}
		for s, code := range bench.Codes(dark) {
			_, colour, is := strings.Cut(code, ";")
			if !is || colour == "7" {
				continue // the terminal's own colours, or those swapped
			}
			rgb, known := xterm[colour]
			a, b := luminance(rgb)+0.05, luminance(ground)+0.05
			if c := max(a, b) / min(a, b); !known || c < 4.5 {
				t.Errorf("style %d, dark %v: %s is %.2f : 1", s, dark, colour, c)
			}
		}
	}
}
