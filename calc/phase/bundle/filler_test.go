package bundle_test

import (
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
)

// Filler off the shelf stands what the shop says, white wire what its reel does.
func TestFillerHeat(t *testing.T) {
	for _, c := range []struct {
		rules, layer string
		stop         bool
	}{
		{"", "fillers = 1\n", false}, // white 22 AWG, rated well above
		{"filler_stock_mm = [1.0]\nfiller_c = 105.0\n", "fillers = 1\nfiller_mm = 1.0\n", true},
		{"filler_stock_mm = [1.0]\nfiller_c = 150.0\n", "fillers = 1\nfiller_mm = 1.0\n", false},
		{"filler_stock_mm = [1.0]\n", "fillers = 1\nfiller_mm = 1.0\n", false}, // not told, so not judged
		// as thick as the wire, and off the shelf
		{"filler_stock_mm = [1.09]\nfiller_c = 105.0\n", "fillers = 1\nfiller_mm = 1.09\n", true},
		{"filler_c = 105.0\n", "fillers = 1\nfiller_mm = 1.09\n", true},
		{"filler_stock_mm = [1.5]\nfiller_c = 105.0\n", "fillers = 1\nfiller_mm = 1.09\n", false}, // not that size: white wire
		{"filler_of = \"polyethylene\"\n", "fillers = 1\n", true},                                 // melts at 110
		{"filler_of = \"polyethylene\"\nfiller_c = 150.0\n", "fillers = 1\n", true},
		{"filler_of = \"nylon\"\n", "fillers = 1\n", false}, // at 200
	} {
		text := "format = 1\n[rules]\n" + c.rules +
			calctest.OneSize(7, "22", "length_mm = 300.0\nambient_c = 120.0\n[[branch.layer]]\nof = [\"0\"]\n[[branch.layer]]\nof = "+
				"[\"1\", \"2\", "+
				"\"3\", \"4\", \"5\", \"6\"]\n"+c.layer)[len("format = 1\n"):]
		g, ok := calctest.Snag(calc.Complete(calctest.Parse(t, text), calctest.Catalogue(t), nil), "filler.heat", "T1")
		if ok != c.stop || ok && g.Level != sheet.Stop {
			t.Errorf("%q: %v %+v", c.rules, ok, g)
		}
	}
}
