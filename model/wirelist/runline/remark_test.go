package runline

import (
	"slices"
	"testing"
)

// A remark in brackets among the values of a wire is a remark, and never its name; a value in brackets stays one.
func TestRemarksAmongValues(t *testing.T) {
	t.Parallel()
	for text, want := range map[string][]string{
		"rail -> pump, 2.5 mm2 red (buy a switch!)": {"pump", "red", "2.5 mm2", "buy a switch!"},
		"rail -> lamp, red (new), 1.5 mm2":          {"lamp", "red", "1.5 mm2", "new"},
		"rail -> lamp, 0.75 mm2 (thin) yellow":      {"lamp", "yellow", "0.75 mm2", "thin"},
		"rail -> lamp (red, 1.5 mm2)":               {"lamp", "red", "1.5 mm2", ""},
	} {
		from, to, rest := Part(text)
		if from != "rail" || !slices.Equal([]string{to, rest[0], rest[1], rest[2]}, want) {
			t.Errorf("%q is %q to %q, %q; want %q", text, from, to, rest, want)
		}
	}
}
