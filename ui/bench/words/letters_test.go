package words

import (
	"strings"
	"testing"

	"contralay/ui/draw"
)

// Every letter has its own shape, five rows by three, and a line that is too long is not
// drawn large.
func TestLetters(t *testing.T) {
	shapes := map[string]rune{}
	for r, g := range letterRows {
		if len(g) != 15 || strings.Trim(g, ".#") != "" {
			t.Errorf("%q: %q", r, g)
		}
		if o, twice := shapes[g]; twice {
			t.Errorf("%q and %q look alike", r, o)
		}
		shapes[g] = r
	}
	for _, ascii := range []bool{false, true} {
		for _, l := range Letters("T1 LAYER 2 RH", 80, ascii) {
			if draw.Width(l) > 80 {
				t.Errorf("%d cells", draw.Width(l))
			}
		}
		if Letters("T1 LAYER 2 RH", 51, ascii) != nil || Letters("T1 LAYER 2 RH", 52, ascii) == nil {
			t.Error("thirteen letters take 52 cells")
		}
	}
}

// A tall line is three rows on every terminal, each character its own shape in both alphabets;
// what cannot be drawn, or has no room, is not drawn in part.
func TestTall(t *testing.T) {
	const all = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789.-/:+_()="
	for _, ascii := range []bool{false, true} {
		shapes := map[string]rune{}
		for _, r := range all {
			rows := Tall(string(r), 10, ascii)
			if len(rows) != TallH {
				t.Fatalf("%q in %d rows", r, len(rows))
			}
			shape := strings.Join(rows, "\n")
			if o, twice := shapes[shape]; twice {
				t.Errorf("%q and %q look alike:\n%s", r, o, shape)
			}
			shapes[shape] = r
			for _, row := range rows {
				if ascii && strings.ContainsFunc(row, func(r rune) bool { return r > '~' }) {
					t.Errorf("%q in %q", r, row)
				}
			}
		}
		rows := Tall("240 BLACK/VIOLET", 80, ascii)
		wide := 0
		for _, row := range rows {
			wide = max(wide, draw.Width(row))
		}
		if wide == 0 || wide > 80 || Tall("240 BLACK/VIOLET", wide-2, ascii) != nil {
			t.Errorf("%d cells", wide)
		}
		for _, odd := range []string{"", "w\u00e9", "\u7dda"} {
			if Tall(odd, 80, ascii) != nil {
				t.Errorf("%q is drawn, and not whole", odd)
			}
		}
	}
	if got := strings.Join(Tall("217", 20, true), "\n"); got != " _       _\n _|   |   |\n|_    |   |" {
		t.Errorf("217 is\n%s", got)
	}
}
