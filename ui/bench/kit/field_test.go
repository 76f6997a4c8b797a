package kit

import (
	"errors"
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"pgregory.net/rapid"

	"contralay/ui/draw"
)

// press gives keys by name; a single letter types itself.
func press(f *Field, keys ...string) FieldAnswer {
	var a FieldAnswer
	for _, k := range keys {
		text := ""
		if len([]rune(k)) == 1 {
			text = k
		}
		a = f.Press(k, text, false)
	}
	return a
}

func TestFieldKeys(t *testing.T) {
	split := func(s string) []string { return strings.Split(s, " ") }
	for _, tt := range []struct {
		name, value, first string
		number             bool
		keys               []string
		want               string
		at                 int
	}{
		{"the first letter replaces what was", "40", "", true, split("1 2"), "12", 2},
		{"opened by a digit", "40", "7", true, split("5"), "75", 2},
		{"Backspace corrects what was", "40", "", true, split("backspace 5"), "45", 2},
		{"an arrow keeps what was", "40", "", true, split("left 5"), "450", 2},
		{"Home", "example.csv", "", false, split("home x"), "xexample.csv", 1},
		{"End", "example.csv", "", false, split("home end x"), "example.csvx", 12},
		{"right at the end stays", "40", "", true, split("right right 5"), "405", 3},
		{"a comma is a decimal mark", "40", "", true, split("1 , 5"), "1,5", 3},
		{"Delete takes what the cursor stands on", "abc", "", false, split("home delete"), "bc", 0},
		{"Delete at the end is Backspace", "abc", "", false, split("delete"), "ab", 2},
		{"Backspace on nothing", "", "", false, split("backspace backspace"), "", 0},
		{"a word is deleted", "old name", "", false, split("ctrl+w"), "old ", 4},
		{"all before the cursor", "old name", "", false, split("left left ctrl+u"), "me", 0},
		{"a letter is no number", "40", "", true, split("x"), "40", 2},
		{"the cursor goes by words", "old new", "", false, split("ctrl+left x"), "old xnew", 5},
	} {
		t.Run(tt.name, func(t *testing.T) {
			f := OpenField(FieldOf{Value: tt.value, Number: tt.number}, tt.first)
			press(f, tt.keys...)
			if f.Draft() != tt.want || f.At() != tt.at {
				t.Errorf("%q at %d, want %q at %d", f.Draft(), f.At(), tt.want, tt.at)
			}
		})
	}
}

func TestFieldEnds(t *testing.T) {
	taken := ""
	of := FieldOf{Value: "40", Number: true, Take: func(s string) error {
		if s == "999" {
			return errors.New("999 is too much")
		}
		taken = s
		return nil
	}}
	for _, tt := range []struct {
		name, keys, taken string
		want              FieldAnswer
	}{
		{"Enter takes", "1 2 enter", "12", FieldAnswer{Closed: true, Taken: true}},
		{"Enter at once takes what was", "enter", "40", FieldAnswer{Closed: true, Taken: true}},
		{"Esc leaves", "1 2 esc", "", FieldAnswer{Closed: true, Says: "left as it was"}},
		{"no number", "1 . 2 . 3 enter", "",
			FieldAnswer{Says: "1.2.3 is not a number: use digits and one decimal point or comma", Refused: true}},
		{"refused, and open", "9 9 9 enter", "", FieldAnswer{Says: "999 is too much. Backspace corrects it, Esc leaves it", Refused: true}},
		{"a fraction", "3 / 8 enter", "3/8", FieldAnswer{Closed: true, Taken: true}},
		{"empty is taken as empty", "backspace backspace enter", "", FieldAnswer{Closed: true, Taken: true}},
		{"up", "up", "", FieldAnswer{Says: "Enter takes the value, Esc keeps the old one"}},
		{"a key without a letter", "f5", "", FieldAnswer{Says: "that key does nothing in an open field"}},
		{"a letter", "x", "", FieldAnswer{Says: "type a number here: digits, . and /. Esc keeps the old one", Refused: true}},
	} {
		taken = ""
		if got := press(OpenField(of, ""), strings.Split(tt.keys, " ")...); got != tt.want || taken != tt.taken {
			t.Errorf("%s: %+v took %q, want %+v %q", tt.name, got, taken, tt.want, tt.taken)
		}
	}
}

func TestFieldPaste(t *testing.T) {
	f := OpenField(FieldOf{Value: "old"}, "")
	f.Press("paste", "ne\x1bw\r\nlist\u202e.csv\n", true)
	if f.Draft() != "new list.csv" {
		t.Errorf("%q", f.Draft())
	}
	press(f, "home")
	f.Press("paste", "a ", true)
	if f.Draft() != "a new list.csv" || f.At() != 2 {
		t.Errorf("%q at %d", f.Draft(), f.At())
	}
	f.Press("paste", strings.Repeat("x", 5000), true)
	if n := len(f.Draft()); n != 14+longestPaste {
		t.Errorf("%d letters", n)
	}
}

func TestFieldDrawn(t *testing.T) {
	long := "/harness/2026/job 17/engine loom, second try.csv"
	for _, tt := range []struct {
		name  string
		of    FieldOf
		keys  string
		w     int
		ascii bool
		want  string
	}{
		{"open", FieldOf{Label: "bend", Unit: "mm", Value: "40"}, "", 60, true, "bend: [40_] mm   was 40"},
		{"the cursor inside", FieldOf{Label: "bend", Unit: "mm", Value: "40"}, "left", 60, true, "bend: [4|0] mm   was 40"},
		{"the cursor at the beginning", FieldOf{Label: "bend", Value: "40"}, "home", 60, false, "bend: [▏40]   was 40"},
		{"too long: its end", FieldOf{Label: "file", Value: long}, "", 30, true, "file: [~oom, second try.csv_]"},
		{"too long: its beginning", FieldOf{Label: "file", Value: long}, "home", 30, true, "file: [|/harness/2026/job 17~]"},
		{"spelled", FieldOf{Label: "name", Value: "50 µm"}, "", 40, true, "name: [50 um_]   was 50 um"},
		{"empty", FieldOf{Label: "name"}, "", 40, true, "name: [_]"},
	} {
		f := OpenField(tt.of, "")
		if tt.keys != "" {
			press(f, tt.keys)
		}
		if got := NewTheme(draw.Palette{}, tt.ascii).Field(f, tt.w); got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

// Wherever the cursor stands in whatever was typed, the line keeps its width and the
// letter under the cursor is seen.
func TestFieldKeepsItsWidth(t *testing.T) {
	themes := []*Theme{NewTheme(draw.Palette{}, true), NewTheme(draw.NewPalette(draw.TrueColour, true), false),
		NewTheme(draw.Palette{}, false)}
	keys := []string{"left", "right", "home", "end", "backspace", "delete", "ctrl+w", "a", " ", "7", "線", "é", "🔧", "."}
	rapid.Check(t, func(r *rapid.T) {
		f := OpenField(FieldOf{Label: "file", Unit: "mm", Value: rapid.StringN(0, 30, -1).Draw(r, "value")}, "")
		press(f, rapid.SliceOfN(rapid.SampledFrom(keys), 0, 40).Draw(r, "keys")...)
		w := rapid.IntRange(0, 60).Draw(r, "width")
		for _, th := range themes {
			got := th.Field(f, w)
			if n := ansi.StringWidth(got); n > w {
				r.Fatalf("%d wide, room for %d: %q", n, w, got)
			}
			if cursor := th.begin[Cursor]; w > 20 && cursor != "" && !strings.Contains(got, cursor) {
				r.Fatalf("no cursor in %q", got)
			}
		}
	})
}

// No key and no paste brings in what commands a terminal; joiners come in where they join, and
// nowhere into an id.
func TestFieldTakesNoCommands(t *testing.T) {
	for _, tt := range []struct {
		name, pasted, text, id string
	}{
		{"plain", "Injector 1", "Injector 1", "Injector 1"},
		{"a sequence", "a\x1b]52;c;QUJD\x07b", "a]52;c;QUJDb", "a]52;c;QUJDb"},
		{"eight bits", "a\u009b2Jb\u0085", "a2Jb", "a2Jb"},
		{"bytes that are no text", "a\x9b2Jb", "a2Jb", "a2Jb"},
		{"direction, no room", "a\u202eb\u200bc\ufeff\u2060\u061c", "abc", "abc"},
		{"lines", "a\r\nb\tc\nd\re", "a b c d e", "a b c d e"},
		{"letters", "Größe é Ω 線", "Größe é Ω 線", "Größe é Ω 線"},
		{"joiners that join", "می\u200cشود", "می\u200cشود", "میشود"},
		{"joiners that do not", "\u200da\u200c \u200d", "a", "a"},
	} {
		for _, id := range []bool{false, true} {
			got := ""
			f := OpenField(FieldOf{Value: "old", ID: id, Take: func(text string) error { got = text; return nil }}, "")
			f.Press("paste", tt.pasted, true)
			f.Press("enter", "", false)
			if want := map[bool]string{false: tt.text, true: tt.id}[id]; got != want {
				t.Errorf("%s, id %v: took %q, want %q", tt.name, id, got, want)
			}
		}
	}
	f := OpenField(FieldOf{Value: "old"}, "")
	for _, r := range "\x1b\u009b\u202e\u200b\x7f" {
		if a := f.Press(string(r), string(r), false); f.Draft() != "old" || a.Says == "" {
			t.Errorf("%U: %q, %+v", r, f.Draft(), a)
		}
	}
}

// A note with lines and old control characters is left as it is where nobody edits it, and is
// shown in one line.
func TestFieldKeepsWhatItDoesNotShow(t *testing.T) {
	const note = "first\nsecond\x01\n"
	got := ""
	of := FieldOf{Value: note, Take: func(text string) error { got = text; return nil }}
	f := OpenField(of, "")
	if f.Draft() != "first second" {
		t.Errorf("draft %q", f.Draft())
	}
	if f.Press("enter", "", false); got != note {
		t.Errorf("took %q, want it unchanged", got)
	}
	f = OpenField(of, "")
	press(f, "end")
	f.Press("x", "x", false)
	if f.Press("enter", "", false); got != "first secondx" {
		t.Errorf("took %q", got)
	}
}
