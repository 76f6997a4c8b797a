package endtext

import "testing"

// A cell that refers to a cavity names it; one that refers to a note or a sheet names none.
func TestSeenEnd(t *testing.T) {
	for cell, end := range map[string]string{"see CN1-5": "CN1:5", "See CN1 pin 5": "CN1:5", "(siehe X1:3)": "X1:3", "voir P2.4": "P2:4",
		"same as J7-A": "J7:A", "see note 3": "", "see sheet 2": "", "CN1-5": "", "see": "", "see CN1": "", "s. X1/3": "X1:3",
		"Sensor see X1 and X2": ""} {
		if got := SeenEnd(cell); got != end {
			t.Errorf("%q: %q, want %q", cell, got, end)
		}
	}
}

// A designator alone is that of a connector where the list has one of the name.
func TestSeenConnector(t *testing.T) {
	for cell, of := range map[string]string{"see P1": "P1", "(siehe X12)": "X12", "see CN1-5": "",
		"see note 1": "", "P1": "", "see p1": ""} {
		if got := SeenConnector(cell); got != of {
			t.Errorf("%q: %q, want %q", cell, got, of)
		}
	}
}
