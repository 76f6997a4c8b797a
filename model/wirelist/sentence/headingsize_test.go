package sentence

import (
	"testing"

	"contralay/model/wirelist/value"
)

// A heading says a size where a piece of it is one and nothing else is.
func TestSizeOfHeading(t *testing.T) {
	for text, want := range map[string]string{
		"FAN (fan relay coil, 2 way, 20 AWG)":  "20",
		"FAN (20 AWG)":                         "20",
		"J4, 0.75 mm²":                         "0.75mm2",
		"X3 - 4 way - 18 ga wire":              "18",
		"Stecker X3 (1,5 mm², 4-polig)":        "1.5mm2",
		"P10 cab plug 10-way shell 16":         "",
		"J4 (4 way, contacts 20)":              "",
		"J4 (4 way, 20)":                       "",
		"J4 (20 AWG or 18 AWG)":                "",
		"J4 (signals 22 AWG, lamps 18 AWG)":    "",
		"J4 (22 AWG, 18 AWG)":                  "",
		"Boil the kettle first, 20 AWG, then.": "",
	} {
		if got := SizeOfHeading(text, value.MarkUnknown); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}
