package strip_test

import (
	"testing"

	"contralay/calc/query/cliff"
	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/strip"
)

// A bar is as long as its share of the cells, to half a cell; what is there at all is seen.
func TestBar(t *testing.T) {
	for _, c := range []struct {
		v, most      float64
		w            int
		drawn, ascii string
	}{
		{10, 10, 4, "████", "####"}, {5, 10, 4, "██", "##"}, {6.3, 10, 4, "██▌", "###"}, {0.1, 10, 4, "▌", "#"}, {0, 10, 4, "", ""},
		{5, 0, 4, "", ""}, {5, 10, 0, "", ""}, {12, 10, 4, "████", "####"},
	} {
		for _, ascii := range []bool{false, true} {
			want := c.drawn
			if ascii {
				want = c.ascii
			}
			if got := strip.Bar(unit.Millimetre(c.v), unit.Millimetre(c.most), c.w, ascii); got != want {
				t.Errorf("%v of %v in %d cells: %q, want %q", c.v, c.most, c.w, got, want)
			}
		}
	}
}

// What begins with a count stands beside it; nothing does where one fewer is not known.
func TestNote(t *testing.T) {
	small, large := catalogue.Tube{ID: "a", ShelfLabel: "3/8 (9.5 / 4.8)"}, catalogue.Tube{ID: "b", ShelfLabel: "1/2 (12.7 / 6.4)"}
	laid := func(layers int) *sheet.Branch { return &sheet.Branch{Layers: make([]sheet.Layer, layers)} }
	s := cliff.Begin(cliff.Ask{Least: 3, Now: 4, Most: 9})
	for _, p := range []cliff.Point{{N: 3, Branch: laid(2), Tube: small}, {N: 4, Branch: laid(2), Tube: small},
		{N: 5, Branch: laid(3), Tube: small}, {N: 6, Branch: laid(4), Tube: large}, {N: 7, Branch: laid(4)}, {N: 9}} {
		s.Put(p)
	}
	for n, want := range map[int][2]string{3: {"", ""}, 4: {"", ""}, 5: {"layer", "layer"}, 6: {"layer, tube 1/2", "layer + 1/2"},
		7: {"no tube", "no tube"}, 8: {"", ""}, 9: {"no lay-up", "no lay-up"}} {
		if got := [2]string{strip.Note(s, n, false), strip.Note(s, n, true)}; got != want {
			t.Errorf("%d: %q, want %q", n, got, want)
		}
	}
}
