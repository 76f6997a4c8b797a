package font_test

import (
	"math"
	"testing"

	xfont "golang.org/x/image/font"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/opentype"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"contralay/ui/paper/font"
)

// A text is as wide as the library that draws letters makes it, and a capital as high as the
// face says.
func TestWidth(t *testing.T) {
	f, err := opentype.Parse(goregular.TTF)
	if err != nil {
		t.Fatal(err)
	}
	face, err := opentype.NewFace(f, &opentype.FaceOptions{Size: 1000, DPI: 72})
	if err != nil {
		t.Fatal(err)
	}
	for _, text := range []string{"T1  560 mm -0 +10", "Ω", "Жгут", ""} {
		want := float64(xfont.MeasureString(face, text)) / 64 / 100 // at size 10
		if got := float64(font.Of(false).Width(text, 10)); math.Abs(got-want) > 0.02 {
			t.Errorf("%q: %v, the library %v", text, got, want)
		}
	}
	m, err := f.Metrics(&sfnt.Buffer{}, fixed.I(2048), xfont.HintingNone)
	if err != nil || math.Abs(float64(m.CapHeight)/64/2048-font.CapShare) > 1e-3 {
		t.Errorf("capitals are %v of 2048 high, %v", float64(m.CapHeight)/64, err)
	}
	if got := font.Of(true).Lacks("a漢Ω"); string(got) != "漢" {
		t.Errorf("it lacks %q", string(got))
	}
}
