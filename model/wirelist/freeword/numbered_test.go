package freeword

import "testing"

// No word for a spare begins with another letter than those that a number may stand behind, and none of the other words has a digit.
func TestNumbered(t *testing.T) {
	for _, cell := range []string{"P7", "12", "GND_4", "C-3a", "W0", "DEV20", "R12", "s2", "n.c.1"} {
		if !IsNumbered(cell) {
			t.Errorf("%q could be a word", cell)
		}
	}
	for _, cell := range []string{"", "spare2", "Reserve1", "vara3", "-", "-1-", "pin", "P 7", "A(1)",
		"réserve2", "n/c1", "pricuva2", "_1"} {
		if IsNumbered(cell) {
			t.Errorf("%q is taken for no word", cell)
		}
	}
	for _, w := range []string{"spare", "spares", "reserve", "reserveader", "reserveleitung", "rechange", "repuesto", "reserva", "riserva",
		"scorta", "rezerwa", "zapas", "zapasowy", "rezerva", "reserv", "varalla", "varaus", "vara", "tartalek", "yedek", "pricuva"} {
		if !IsSpare(w) || IsNumbered(w+"2") {
			t.Errorf("%q with a number behind it is taken for no spare", w)
		}
	}
}
