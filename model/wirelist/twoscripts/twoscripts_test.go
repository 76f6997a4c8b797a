package twoscripts_test

import (
	"testing"

	"contralay/model/wirelist/twoscripts"
)

// A text is parted where its script changes, once and between words.
func TestPart(t *testing.T) {
	for _, c := range []struct{ text, front, back string }{
		{"赤 Red", "赤", "Red"}, {"красный / red", "красный", "red"}, {"線径 Size (sq)", "線径", "Size (sq)"},
		{"緑/白 Green/White", "緑/白", "Green/White"}, {"Pin κοντακτ", "Pin", "κοντακτ"},
		{"red", "", ""}, {"赤", "", ""}, {"赤 Red 青", "", ""}, {"Reserveр", "", ""}, {"0.5 mm²", "", ""}, {"", "", ""}, {"gelb grün", "", ""},
	} {
		front, back, ok := twoscripts.Part(c.text)
		if front != c.front || back != c.back || ok != (c.front != "") {
			t.Errorf("%q: %q, %q, %v", c.text, front, back, ok)
		}
	}
}
