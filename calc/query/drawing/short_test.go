package drawing_test

import (
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/drawing"
)

// A leg of 20 mm is shorter than where a label would lie, 25 to 50 mm off its end: the label lies over the whole of it.
func TestLabelOfAShortLeg(t *testing.T) {
	text := strings.Replace(small, "length_mm = 300.0", "length_mm = 20.0", 1)
	text = strings.Replace(text, "offset_mm = 55.0", "offset_mm = 5.0", 1)
	if text == small {
		t.Fatal("there is no leg of 300 mm")
	}
	s := calc.Complete(calctest.Parse(t, text), calctest.Catalogue(t), nil)
	found := false
	for _, l := range drawing.Of(s).Labels {
		if l.Of == "A" {
			found = true
			if l.From != 0 || l.To != 20 {
				t.Errorf("from %v to %v", l.From, l.To)
			}
		}
	}
	if !found {
		t.Error("A has no label")
	}
}
