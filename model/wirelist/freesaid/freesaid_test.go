package freesaid

import (
	"strings"
	"testing"
)

// A sentence says which cavities are free where it says nothing else.
func TestCavities(t *testing.T) {
	for text, want := range map[string]string{
		"Pins 8 and 9 are empty.":                   "8,9",
		"Pin 5 is not connected":                    "5",
		"The pins 3, 4, 7-9 are unused.":            "3,4,7,8,9",
		"Pins A1 to A3 are both free":               "A1,A2,A3",
		"Kontakte 7 und 8 sind frei.":               "7,8",
		"Pins 3-4: not used":                        "3,4",
		"Pins 5 and 6 have no contact.":             "5,6",
		"Kontakte 5 bis 7 haben keinen Kontakt":     "5,6,7",
		"Pins 5 and 6 have red wires.":              "",
		"Les broches 3 et 4":                        "",
		"Pins E and F are empty.":                   "E,F",
		"Pins a, b and c are empty.":                "a,b,c",
		"Ben 3 og 4 er ledige.":                     "3,4",
		"Nastat 5 ja 6 ovat vapaita.":               "5,6",
		"pins 8 to 12 nothing in them":              "8,9,10,11,12",
		"Pins 3, 4 unused":                          "3,4",
		"Pin 7 empty":                               "7",
		"Pin 7 spare":                               "",
		"Pins 8 and 9 are red":                      "",
		"The rest is empty.":                        "",
		"Pins 8 and 9 are empty in the old loom.":   "",
		"Pins that are empty.":                      "",
		"Pins 1 and 2 are 12 V and 3 is empty":      "",
		"Pin 4 of the old loom is not connected":    "",
		"Positions 1 and 2 are where the wires are": "",
	} {
		if got := strings.Join(Cavities(text), ","); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// A sentence may name the connector whose cavities are free.
func TestNamed(t *testing.T) {
	for text, want := range map[string]string{
		"helm box pins 8 to 12 nothing in them":        "helm box: 8,9,10,11,12",
		"The lamp plug pins 3 and 4 are empty.":        "lamp plug: 3,4",
		"Pins 3 and 4 of the lamp plug are empty.":     "lamp plug: 3,4",
		"HB pins 3, 4 and 6: nothing in them.":         "HB: 3,4,6",
		"Box Pins 8 bis 12 leer":                       "Box: 8,9,10,11,12",
		"Pins 3 and 4 are empty.":                      ": ",
		"Pins 3 and 4 of the lamp plug are red.":       ": ",
		"pump, PNL pin 3 to HB pin 1":                  ": ",
		"helm box pins 8 to 12 go to the aft bulkhead": ": ",
	} {
		of, all := Named(text)
		if got := of + ": " + strings.Join(all, ","); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}
