package shape

import (
	"fmt"
	"testing"
)

// BenchmarkPicture is a drawing made for the first time: what a screen of 80×24, of 120×40 and a
// larger one have room for, the outer layer in hand.
func BenchmarkPicture(b *testing.B) {
	all, err := harnesses()
	if err != nil {
		b.Fatal(err)
	}
	for _, n := range all {
		if n.name != "demo T1" && n.name != "whole T2" {
			continue
		}
		layers := layersOf(n.s)
		s := inHand(n.s, layers[len(layers)-1])
		for _, pane := range [][2]int{{26, 15}, {46, 31}, {72, 40}} {
			b.Run(fmt.Sprintf("%s/%d discs/%dx%d", n.name, len(s.Discs), pane[0], pane[1]), func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					c := Picture(s, pane[0], pane[1], dark)
					c.Styled(dark)
				}
			})
		}
	}
}
