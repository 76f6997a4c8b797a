package strands

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
		"56/0.30":              {"4 mm²", "56/0.30"}, // strands alone
		"9/0.30":               {"0.65 mm²", "9/0.30"},
		"65/0.30":              {"4.5 mm²", "65/0.30"},
		"14/.30":               {"1 mm²", "14/.30"},
		"28/0.30 2.0mm²":       {"2.0 mm²", "28/0.30"},
		"2,0 mm² 28/0,30":      {"2,0 mm²", "28/0,30"},
		"2.0mm², 28/0.30":      {"2.0 mm²", "28/0.30"},
		"28/0.30 (2.0mm²)":     {"2.0 mm²", "28/0.30"},
		"28/0.30 1.0mm²":       {}, // another area
		"28/0.30 2":            {}, // could be two of them
		"44/.012":              {}, // of inches
		"4/0.5":                {}, // four cores
		"7x0.75":               {}, // seven cores
		"7/0.5":                {}, // 1.37 mm² is no size
		"19/29":                {}, // AWG
		"16 (19/29)":           {}, // an AWG size: 19 strands of AWG 29
		"20 (RD)":              {},
		"4 (56/0.30) screened": {},
	} {
		size, strands := Cut(text)
		if size != want[0] || strands != want[1] {
			t.Errorf("%q: %q and %q, want %q", text, size, strands, want)
		}
	}
}
