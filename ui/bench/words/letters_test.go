package words

import (
	"strings"
	"testing"

	"contralay/ui/draw"
)

// Every letter has its own shape, five rows by three, and a line that is too long is not
// drawn large.
func TestLetters(t *testing.T) {
	shapes := map[string]rune{}
	for r, g := range letterRows {
		if len(g) != 15 || strings.Trim(g, ".#") != "" {
			t.Errorf("%q: %q", r, g)
		}
		if o, twice := shapes[g]; twice {
			t.Errorf("%q and %q look alike", r, o)
		}
		shapes[g] = r
	}
	for _, ascii := range []bool{false, true} {
		for _, l := range Letters("T1 LAYER 2 RH", 80, ascii) {
			if draw.Width(l) > 80 {
				t.Errorf("%d cells", draw.Width(l))
			}
		}
		if Letters("T1 LAYER 2 RH", 51, ascii) != nil || Letters("T1 LAYER 2 RH", 52, ascii) == nil {
			t.Error("thirteen letters take 52 cells")
		}
	}
}
