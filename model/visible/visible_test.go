package visible_test

import (
	"encoding/json"
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"

	"pgregory.net/rapid"

	"contralay/model/visible"
)

// Commands are the characters of these properties and ranges of Unicode, and no others: Cc, the
// separators of lines and paragraphs, Bidi_Control, and three that take no room.
func TestCommands(t *testing.T) {
	zero := map[rune]bool{0x200B: true, 0x2060: true, 0xFEFF: true}
	n := 0
	for r := rune(0); r <= unicode.MaxRune; r++ {
		want := unicode.Is(unicode.Cc, r) || unicode.Is(unicode.Zl, r) || unicode.Is(unicode.Zp, r) ||
			unicode.Is(unicode.Bidi_Control, r) || zero[r]
		if visible.Command(r) != want {
			t.Errorf("%U: %v, want %v", r, !want, want)
		}
		if want {
			n++
		}
	}
	if n != 65+2+12+3 {
		t.Errorf("%d commands", n)
	}
}

func TestShown(t *testing.T) {
	for _, tt := range []struct{ name, in, line, lines, note string }{
		{"plain", "engine loom", "engine loom", "engine loom", "engine loom"},
		{"letters", "Größe é Ω 線 👩\u200D🔧", "Größe é Ω 線 👩\u200D🔧", "Größe é Ω 線 👩\u200D🔧", "Größe é Ω 線 👩\u200D🔧"},
		{"escape", "a\x1b[2J", "a␛[2J", "a␛[2J", "a␛[2J"},
		{"eight bits", "a\u009B2J\u0085", "a␛[2J␛E", "a␛[2J␛E", "a␛[2J␛E"},
		{"delete and zero", "\x00\x7F", "␀␡", "␀␡", "␀␡"},
		{"lines", "a\nb\r\nc\td", "a␊b␍␊c␉d", "a\nb␍\nc␉d", "a b c d"},
		{"no text", "a\x9b\xffb", "a<9B><FF>b", "a<9B><FF>b", "a<9B><FF>b"},
		{"the sign for no text itself", "a\uFFFDb", "a\uFFFDb", "a\uFFFDb", "a\uFFFDb"},
		{"direction and no room", "\u202E\u200B\u2028", "<U+202E><U+200B><U+2028>", "<U+202E><U+200B><U+2028>", "<U+202E><U+200B><U+2028>"},
	} {
		if got := visible.Line(tt.in); got != tt.line {
			t.Errorf("%s: line %q, want %q", tt.name, got, tt.line)
		}
		if got := visible.Lines(tt.in); got != tt.lines {
			t.Errorf("%s: lines %q, want %q", tt.name, got, tt.lines)
		}
		if got := visible.Note(tt.in); got != tt.note {
			t.Errorf("%s: note %q, want %q", tt.name, got, tt.note)
		}
	}
}

// Whatever bytes come, no form holds a command, all are UTF-8, and what is shown stays as it is
// when it is shown once more.
func TestAnyBytes(t *testing.T) {
	pieces := []string{"a", " ", "\n", "\r\n", "\t", "\x1b[31m", "\x1b]0;x\x07", "\x1bP", "\x9b", "\xff", "\xc2", "\u009B", "\u202E",
		"\u200B",
		"\u200D", "\u200C", "é", "线", "\x00", "\x7f", "\uFEFF", "\u2028", `"`, `\`}
	rapid.Check(t, func(r *rapid.T) {
		s := strings.Join(rapid.SliceOfN(rapid.SampledFrom(pieces), 0, 12).Draw(r, "pieces"), "") +
			string(rapid.SliceOf(rapid.Byte()).Draw(r, "bytes"))
		for name, got := range map[string]string{"line": visible.Line(s), "lines": strings.ReplaceAll(visible.Lines(s), "\n", ""),
			"note": visible.Note(s), "quoted": visible.Quoted(s), "typed": visible.Typed(s, false), "id": visible.Typed(s, true)} {
			if c, found := visible.Find(got); found || !utf8.ValidString(got) {
				r.Fatalf("%s of %q is %q, which holds %U", name, s, got, c)
			}
			if visible.Line(got) != got {
				r.Fatalf("%s of %q is %q, which is shown as %q", name, s, got, visible.Line(got))
			}
		}
		for _, id := range []bool{false, true} {
			if says, _ := visible.Fault(visible.Typed(s, id), id); says != "" {
				r.Fatalf("typed %q: %s", s, says)
			}
		}
		text, err := json.Marshal(map[string]string{"a": s})
		if err != nil {
			r.Fatal(err)
		}
		var was, is map[string]string
		safe := visible.JSON(text)
		if err := json.Unmarshal(safe, &is); err != nil {
			r.Fatalf("%q is no JSON: %v", safe, err)
		}
		_ = json.Unmarshal(text, &was)
		if _, found := visible.Find(string(safe)); found || was["a"] != is["a"] {
			r.Fatalf("%q as JSON is %q, reads %q", s, safe, is["a"])
		}
	})
}
