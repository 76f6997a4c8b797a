package draw

import (
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

func TestCut(t *testing.T) {
	tests := []struct {
		name, in string
		w        int
		ascii    bool
		want     string
	}{
		{"fits", "trunk", 5, true, "trunk"},
		{"ascii", "trunk", 4, true, "tru~"},
		{"not ascii", "trunk", 4, false, "tru…"},
		{"one cell", "trunk", 1, true, "~"},
		{"none", "trunk", 0, true, ""},
		{"negative", "trunk", -3, true, ""},
		{"wide characters are not halved", "線線線", 4, true, "線~"},
		{"a composed character stays whole", "e\u0301a\u0301i\u0301", 2, true, "e\u0301~"},
		{"colour is ended", "\x1b[0;31mtrunk\x1b[0m", 4, true, "\x1b[0;31mtru~\x1b[0m"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if got := Cut(tt.in, tt.w, tt.ascii); got != tt.want {
				t.Errorf("got %q, want %q", got, tt.want)
			}
		})
	}
}

func TestPads(t *testing.T) {
	for _, tt := range []struct{ name, got, want string }{
		{"pad", Pad("ab", 4), "ab  "},
		{"pad, wide", Pad("線", 4), "線  "},
		{"pad, too long", Pad("abcde", 4), "abcde"},
		{"left", PadLeft("6.9", 5), "  6.9"},
		{"centre, odd", Centre("ab", 5), " ab  "},
		{"fit, long", Fit("abcde", 4, true), "abc~"},
		{"fit, short", Fit("a", 4, true), "a   "},
		{"fit, wide cut", Fit("線線線", 4, true), "線~ "},
	} {
		if tt.got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, tt.got, tt.want)
		}
	}
}

func TestColumns(t *testing.T) {
	left := Column{Lines: []string{"layer", "1"}}
	mid := Column{Lines: []string{"8 x 22, long"}, W: 6}
	right := Column{Lines: []string{"a", "b", "c"}}
	want := []string{
		"layer | 8 x 2~ | a",
		"1     |        | b",
		"      |        | c",
	}
	if d := cmp.Diff(want, Columns(" | ", true, left, mid, right)); d != "" {
		t.Errorf("(-want +got):\n%s", d)
	}
	if left.W != 0 {
		t.Error("a column given was changed")
	}
	if got := Columns(" ", true); len(got) != 0 {
		t.Errorf("no columns made %q", got)
	}
}

func TestPlain(t *testing.T) {
	for _, tt := range []struct{ in, want string }{
		{"12.5 mm", "12.5 mm"},
		{"0.35 mm² at 95 °C, 4.7 Ω ±5 %", "0.35 mm2 at 95 degC, 4.7 ohm +/-5 %"},
		{"50 µm · 7.3 – 8.0", "50 um - 7.3 - 8.0"},
		{"a\tb\nc\x07", "a b c"},
		{"線é", "??"},
		{"\x1b[31mred\x1b[0m é", "red ?"},
	} {
		if got := Plain(tt.in); got != tt.want {
			t.Errorf("%q: %q, want %q", tt.in, got, tt.want)
		}
	}
}

func TestTextHolds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := rapid.StringOf(rapid.RuneFrom([]rune("ab 1µΩ…線e\u0301é[;m"))).Draw(t, "s")
		w := rapid.IntRange(0, 12).Draw(t, "w")
		ascii := rapid.Bool().Draw(t, "ascii")
		if got := Width(Fit(s, w, ascii)); got != w {
			t.Fatalf("Fit(%q, %d) is %d cells", s, w, got)
		}
		for _, r := range Plain(s) {
			if r < ' ' || r > '~' {
				t.Fatalf("Plain(%q) holds %q", s, r)
			}
		}
	})
}
