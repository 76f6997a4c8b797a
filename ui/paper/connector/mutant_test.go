package connector

import (
	"math"
	"testing"

	"contralay/ui/paper/page"
)

// The letters of a face are 11, 10 or 9 points high: a point is 1/72 of an inch, 0.3528 mm.
func TestFaceSizesInPoints(t *testing.T) {
	for k, points := range []float64{11, 10, 9} {
		if got := float64(faceSizes[k]); math.Abs(got-points*25.4/72) > 1e-6 {
			t.Errorf("%v mm, want %v points", got, points)
		}
	}
}

// The table of small ends has a column for the strip or the contact only where the rows differ in it; it is then set in two
// columns instead of three.
func TestOthersGridByHand(t *testing.T) {
	line := func(end, strip, contact string) endLine {
		return endLine{end: end, strip: strip, contact: contact, cells: []page.Cell{{Text: end}, {Text: "1"}, {Text: "red"}}}
	}
	for _, c := range []struct {
		name    string
		lines   []endLine
		columns int
		cells   int // of a row: end, wire, colour, two boxes, and what differs
		note    string
	}{
		{"alike", []endLine{line("A", "5", "20"), line("B", "5", "20")}, 3, 5, ""},
		{"two strips", []endLine{line("A", "5", "20"), line("B", "6", "20")}, 2, 6, ""},
		{"two contacts", []endLine{line("A", "5", "20"), line("B", "5", "16")}, 2, 6, ""},
		{"both", []endLine{line("A", "5", "20"), line("B", "6", "16")}, 2, 7, ""},
		{"none given", []endLine{line("A", "5", "-"), line("A", "5", "-"), line("B", "5", "-")}, 3, 5,
			" No size of contact is given for A, B."},
	} {
		note, g := othersGrid(c.lines, nil)
		if note != c.note || g.Columns != c.columns || len(g.Cols) != c.cells {
			t.Errorf("%s: %q, %d columns of %d cells", c.name, note, g.Columns, len(g.Cols))
		}
		for _, l := range g.Lines {
			if len(l.Cells) != len(g.Cols) {
				t.Errorf("%s: a row of %d cells under %d heads", c.name, len(l.Cells), len(g.Cols))
			}
		}
	}
}
