package column

import "testing"

// A text says the unit of the lengths where it speaks of them and of a unit at once.
func TestLengthsIn(t *testing.T) {
	for text, unit := range map[string]string{"Splices first. Lengths in mm.": "mm", "All lengths are in inches": "in",
		"Alle Längen in mm": "mm", "longueurs en cm": "cm", "Lengths (mm)": "mm", "lengths are given in in": "in", "Length 5 m": "",
		"Wires in 1.5 mm²": "", "All lengths as drawn, mm are not to scale": "", "The length of the loom is 4 m": ""} {
		if got := LengthsIn(text); string(got) != unit {
			t.Errorf("%q: %q, want %q", text, got, unit)
		}
	}
}
