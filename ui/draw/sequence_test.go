package draw

import (
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"pgregory.net/rapid"
)

// parts are pieces that lines are made of, those among them that are counted quickly
// and those that are not.
var parts = []string{
	"a", " ", "wire 101", "─", "╭", "▀", "█", "▸", "●", "°", "²", "µ", "é", "…", "−", "→", "–", "ß",
	"\x9b", "\u061c", "\ufeff", "線", "\u0301", "👍🏽", "👩\u200d🔧", "\ufe0f", "\u200d", "ｱ", "\t", "\x07", "\u0085", "\u00ad", "\u202e",
	"\u200b", "\xff",
	"\x1b[0m", "\x1b[1;31m", "\x1b[38;2;95;175;175m", "\x1b[38;5;73;48;5;16m", "\x1b[", "\x1b]0;x\x07", "\x1b[2J", "\x1b",
}

// The quick count is the library's.
func TestWidthIsTheLibrarys(t *testing.T) {
	for r := rune(0x20); r < 0x3000; r++ {
		if oneCell(r) && ansi.StringWidth(string(r)) != 1 {
			t.Errorf("%q takes %d cells", r, ansi.StringWidth(string(r)))
		}
	}
	rapid.Check(t, func(r *rapid.T) {
		s := strings.Join(rapid.SliceOfN(rapid.SampledFrom(parts), 0, 12).Draw(r, "parts"), "")
		if got, want := Width(s), ansi.StringWidth(s); got != want {
			r.Fatalf("%q: %d, want %d", s, got, want)
		}
	})
}

// Whatever stands in it, a line is as wide as it has to be, ends its colours, moves no
// cursor and keeps to plain characters where only those are understood.
func TestLine(t *testing.T) {
	for _, tt := range []struct {
		name, in string
		w        int
		ascii    bool
		want     string
	}{
		{"filled", "ab", 4, false, "ab  "},
		{"cut", "abcdef", 4, false, "abc…"},
		{"colour is ended", "\x1b[31mab", 4, false, "\x1b[31mab\x1b[0m  "},
		{"two lines are one", "a\nb", 4, false, "a b "},
		{"colours stay, the rest is shown", "\x1b[31ma\x1b[2Jb\x1b[0m", 8, false, "\x1b[31ma␛[2Jb\x1b[0m  "},
		{"shown in plain characters", "a\x1b[2Jb\x7f", 10, true, "a^[[2Jb^? "},
		{"bytes that are no text", "a\x9b2J\x85", 12, false, "a<9B>2J<85> "},
		{"marks of direction in two bytes and in three", "a\u061cb\ufeff", 20, false, "a<U+061C>b<U+FEFF>  "},
		{"spelled", "\x1b[31m50 µm\x1b[0m", 6, true, "\x1b[31m50 um\x1b[0m "},
		{"nothing", "abc", 0, false, ""},
	} {
		if got := Line(tt.in, tt.w, tt.ascii); got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
	rapid.Check(t, func(r *rapid.T) {
		s := strings.Join(rapid.SliceOfN(rapid.SampledFrom(parts), 0, 12).Draw(r, "parts"), "")
		w, plain := rapid.IntRange(0, 20).Draw(r, "width"), rapid.Bool().Draw(r, "plain")
		got := Line(s, w, plain)
		if n := ansi.StringWidth(got); n != w {
			r.Fatalf("%q: %q is %d wide, want %d", s, got, n, w)
		}
		for i := 0; i < len(got); {
			n := colourSequence(got[i:])
			if n == 0 && (got[i] < ' ' || got[i] == 0x7F || plain && got[i] > '~') {
				r.Fatalf("%q: %q holds byte %#x", s, got, got[i])
			}
			i += max(n, 1)
		}
		for k, c := range got {
			if c == '\uFFFD' || c >= 0x7F && c < 0xA0 || c == 0x061C || c == 0x200B || c == 0x202E || c == 0xFEFF {
				r.Fatalf("%q: %q holds %U at %d", s, got, c, k)
			}
		}
		if k := strings.LastIndexByte(got, escape); k >= 0 && !strings.HasPrefix(got[k:], reset) {
			r.Fatalf("%q: %q ends in a colour", s, got)
		}
	})
}

func TestClean(t *testing.T) {
	for _, tt := range []struct{ name, in, want string }{
		{"plain", "engine loom.csv", "engine loom.csv"},
		{"letters of other scripts", "ケーブル é.csv", "ケーブル é.csv"},
		{"a colour", "\x1b[31mred\x1b[0m.csv", "␛[31mred␛[0m.csv"},
		{"a title for the window", "a\x1b]0;owned\x07b", "a␛]0;owned␇b"},
		{"a control of eight bits", "a\u009b31mb", "a␛[31mb"},
		{"a line break", "a\nb\tc", "a b c"},
		{"what turns the text", "a\u202egnp.exe", "a<U+202E>gnp.exe"},
		{"what hides", "a\u200bb\u2060c\ufeff", "a<U+200B>b<U+2060>c<U+FEFF>"},
		{"no text at all", "a\xffb", "a<FF>b"},
		{"a sequence that is not ended", "a\x1b", "a␛"},
		{"a soft hyphen", "wire\u00adlist", "wirelist"},
	} {
		if got := Clean(tt.in); got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

func BenchmarkWidthOfAPicture(b *testing.B) {
	line := strings.Repeat("\x1b[0;38;2;95;175;175m▀▀\x1b[0m  ", 12)
	for b.Loop() {
		Width(line)
	}
}

func BenchmarkWidthByTheLibrary(b *testing.B) {
	line := strings.Repeat("\x1b[0;38;2;95;175;175m▀▀\x1b[0m  ", 12)
	for b.Loop() {
		ansi.StringWidth(line)
	}
}
