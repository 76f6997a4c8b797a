package cavity_test

import (
	"strings"
	"testing"

	"contralay/ui/paper/cavity"
	"contralay/ui/paper/page"
)

// A small letter is underlined in a cell and in a sentence, alone or behind its end; nothing else is.
func TestSmallLetters(t *testing.T) {
	for _, c := range []struct {
		got  page.Cell
		text string
		html string
	}{
		{cavity.Cell("", "A", "", true), "A", ""},
		{cavity.Cell("", "a", " (1)", false), "", `<span class="p9"><u>a</u> (1)</span>`},
		{cavity.EndCell("P1:j", true), "", `<span class="p9b">P1:<u>j</u></span>`},
		{cavity.EndCell("P1:J", false), "P1:J", ""},
		{cavity.EndCell("pdm1:7", false), "pdm1:7", ""},
		{cavity.EndCell("shell of P1", false), "shell of P1", ""},
		{cavity.EndCell("P1:<b", false), "", `<span class="p9">P1:<u>&lt;b</u></span>`},
	} {
		if c.got.Text != c.text || string(c.got.Picture) != c.html {
			t.Errorf("%q %q, want %q %q", c.got.Text, c.got.Picture, c.text, c.html)
		}
		if c.html != "" && (c.got.Wide <= 0 || c.got.High < 3.1) {
			t.Errorf("%q is %v x %v", c.html, c.got.Wide, c.got.High)
		}
	}
}

// Names stand with commas, three numbers in a row and more as a run, and a line is no wider than it may be.
func TestNames(t *testing.T) {
	words := append(cavity.Words("Plug in:"), cavity.Names([]string{"1", "2", "4", "5", "6", "7", "a", "A", "b"}, ".")...)
	if got, n := cavity.Lines(words, page.Small, 200); got != "Plug in: 1, 2, 4 to 7, <u>a</u>, A, <u>b</u>." || n != 1 {
		t.Errorf("%q in %d lines", got, n)
	}
	got, n := cavity.Lines(words, page.Small, 20)
	if n < 3 || n != strings.Count(string(got), "<br>")+1 {
		t.Errorf("%q in %d lines", got, n)
	}
	for _, line := range strings.Split(string(got), "<br>") {
		if w := page.Small.Wide(strings.NewReplacer("<u>", "", "</u>", "").Replace(line)); w > 20.5 {
			t.Errorf("%q is %.1f mm wide", line, float64(w))
		}
	}
	if b := cavity.Sentence(words, page.Wide); b.High < 3.5 || b.High > 4 {
		t.Errorf("a sentence of one line is %v high", b.High)
	}
}
