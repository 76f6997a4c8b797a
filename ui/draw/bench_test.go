package draw

import (
	"fmt"
	"testing"
)

// pictures are the sizes that are measured: discs and cells.
var pictures = []struct {
	discs, w, h int
}{
	{20, 46, 20}, {60, 46, 20}, {130, 46, 20},
	{20, 100, 34}, {60, 100, 34}, {130, 100, 34},
}

// some is the first n discs of a full section.
func some(n int) Section {
	s := rings(1, 6, 12, 18, 24, 30, 39)
	s.Discs = s.Discs[:n]
	s.OverMM = 0
	for i := range s.Discs {
		s.Discs[i].Class = i
	}
	return s
}

func BenchmarkPicture(b *testing.B) {
	p := Palette{Colour: true, Dark: true}
	for _, tt := range pictures {
		s := some(tt.discs)
		b.Run(fmt.Sprintf("%d/%dx%d", tt.discs, tt.w, tt.h), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				Picture(s, tt.w, tt.h, p).Styled(p)
			}
		})
	}
}

// The whole of a frame may take 300 allocations; the picture must leave most of
// them to the rest.
func TestPictureAllocs(t *testing.T) {
	p := Palette{Colour: true, Dark: true}
	for _, tt := range pictures {
		s := some(tt.discs)
		got := testing.AllocsPerRun(20, func() { Picture(s, tt.w, tt.h, p).Styled(p) })
		if limit := float64(tt.h + 40); got > limit { // a string a line, and the tables of the layout
			t.Errorf("%d discs in %dx%d: %.0f allocations, limit %.0f", tt.discs, tt.w, tt.h, got, limit)
		}
	}
}
