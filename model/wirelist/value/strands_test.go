package value

import "testing"

// The area of strands is their number times π/4 times their thickness squared: 56 of 0.30 mm are 3.96 mm², 32 of 0.2 are 1.01, 24 of 0.20
// are 0.75, 65 of 0.0320 are 0.05 and no 1.5.
func TestStrandsBehindASize(t *testing.T) {
	for text, want := range map[string][2]string{
		"4 (56/0.30)":          {"4 mm²", "56/0.30"},
		"1.0 mm² (32 x 0.2)":   {"1.0 mm²", "32 x 0.2"},
		"0,75 (24x0,20)":       {"0,75 mm²", "24x0,20"},
		"2.5mm2 (50/0.25 mm)":  {"2.5 mm²", "50/0.25 mm"},
		"4 (7/0.30)":           {}, // another area: half a square
		"1.5 (65/0.032)":       {},
		"56/0.30":              {}, // strands alone
		"16 (19/29)":           {}, // an AWG size: 19 strands of AWG 29
		"20 (RD)":              {},
		"4 (56/0.30) screened": {},
	} {
		size, strands := CutStrands(text, MarkUnknown)
		if size != want[0] || strands != want[1] {
			t.Errorf("%q: %q and %q, want %q", text, size, strands, want)
		}
	}
	if g, ok := ParseGauge("4 (56/0.30)", BareAWG, MarkUnknown); !ok || g.Size != "4mm2" {
		t.Errorf("%v %+v", ok, g)
	}
}
