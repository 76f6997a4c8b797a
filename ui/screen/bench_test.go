package screen_test

import (
	"fmt"
	"testing"

	"contralay/ui/bench/benchtest"
	"contralay/ui/draw"
	"contralay/ui/screen"
)

// BenchmarkShow is two frames in turn between which all of the section changes, with what each
// sends.
func BenchmarkShow(b *testing.B) {
	for _, size := range [][2]int{{80, 24}, {120, 40}} {
		m := benchtest.Open(b, "demo.toml")
		m.ShownOn(draw.NewPalette(draw.TrueColour, true), false)
		benchtest.Size(m, size[0], size[1])
		benchtest.Press(m, "right", "down")
		var frames [2]string
		for k := range frames {
			benchtest.Press(m, "down")
			frames[k] = benchtest.View(m)
		}
		b.Run(fmt.Sprintf("%dx%d", size[0], size[1]), func(b *testing.B) {
			var out counter
			b.ReportAllocs()
			n := 0
			for b.Loop() {
				s := screen.New(&out, size[0]) // a new one waits for nothing
				s.Show(frames[n%2])
				n++
			}
			b.ReportMetric(float64(out.n)/float64(n), "sent-B/op")
		})
	}
}
