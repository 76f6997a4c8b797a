package cliff_test

import (
	"slices"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/cliff"
	"contralay/calc/sheet"
	"contralay/model"
)

// How many each layer holds, the centre first: fillers counted, the rod in the middle of five not.
func TestCountsOfLayers(t *testing.T) {
	layer := func(wires, fillers int) (l sheet.Layer) {
		for range wires {
			l.Members = append(l.Members, sheet.Member{})
		}
		for range fillers {
			l.Members = append(l.Members, sheet.Member{Kind: sheet.OfFiller})
		}
		return l
	}
	p := cliff.Point{Branch: &sheet.Branch{Layers: []sheet.Layer{layer(5, 1), layer(10, 1)}}}
	if got := p.Counts(); !slices.Equal(got, []int{5, 11}) || p.Round() != 1 {
		t.Errorf("%v, %d round the centre", got, p.Round())
	}
	if got := (cliff.Point{}).Counts(); got != nil {
		t.Errorf("of nothing: %v", got)
	}
}

// The size that is counted is that of the wires, whichever wire of another size stands beside them in the file.
func TestSizeThatIsCounted(t *testing.T) {
	h := calctest.Parse(t, calctest.OneSize(8, "22", "length_mm = 400.0\nmake = \"laid\"\n"))
	h = h.EditWire(1, func(w *model.Wire) { w.Size = "16" })
	a, why := cliff.OfWires(calc.Complete(h, calctest.Catalogue(t), nil), 0)
	if a.Size != "22" || why != "" {
		t.Errorf("%q, %q", a.Size, why)
	}
}

// Of equal wires all that are not in the centre lie round it, and any of them a filler could stand for.
func TestRingsOfEqualWires(t *testing.T) {
	a, why := cliff.OfWires(complete(t, calctest.OneSize(14, "22", "length_mm = 400.0\nmake = \"laid\"\n")), 0)
	if why != "" {
		t.Fatal(why)
	}
	laid := 0
	for n := max(a.Least, 7); n <= a.Most; n++ {
		p := a.At(n)
		if p.Branch == nil {
			continue
		}
		laid++
		if p.Rings != n-p.Centre() {
			t.Errorf("%d wires, %d in the centre: %d round it", n, p.Centre(), p.Rings)
		}
	}
	if laid < 5 {
		t.Errorf("only %d counts are laid", laid)
	}
}
