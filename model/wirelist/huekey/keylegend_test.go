package huekey

import (
	"maps"
	"testing"
)

// A short form is told where a key is led to, or where nothing else stands in the row.
func TestKeyOfLegend(t *testing.T) {
	for _, c := range []struct {
		cells []string
		want  ColourKey
	}{
		{[]string{"Legende: DBU = dunkelblau", "WHBU = weiß/blau", ""}, ColourKey{"dbu": "dunkelblau"}},
		{[]string{"Legende: AEH = Aderendhülse, DBU = dunkelblau, TP = verdrillt"}, ColourKey{"dbu": "dunkelblau"}},
		{[]string{"Colour code: LG=light green"}, ColourKey{"lg": "light green"}},
		{[]string{"Légende couleurs: BLC = bleu clair"}, ColourKey{"blc": "bleu clair"}},
		{[]string{"DBU = dunkelblau"}, ColourKey{"dbu": "dunkelblau"}},
		{[]string{"BU = black"}, nil},                 // as likely a cavity or a slip: BU is blue
		{[]string{"K1 = red", "K2 = blue"}, nil},      // names with numbers are relays
		{[]string{"TP = twisted pair"}, nil},          // no colour
		{[]string{"Note: lamp = red"}, nil},           // no word for a key
		{[]string{"Fit PSU = red to stud 4"}, nil},    // a sentence
		{[]string{"Legende: 1 = rot, 2 = blau"}, nil}, // numbers are no short forms
	} {
		if got := KeyOfLegend(c.cells); !maps.Equal(got, c.want) || (got == nil) != (c.want == nil) {
			t.Errorf("%q: %v, want %v", c.cells, got, c.want)
		}
	}
}
