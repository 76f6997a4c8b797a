package file_test

import (
	"fmt"
	"os"
	"regexp"
	"strings"
	"testing"

	"contralay/model/file"
	"contralay/model/shorttest"
)

// commands are what no text of one line may hold, each as TOML writes it, with the words that
// an error has for it and what it shows.
var commands = []struct{ toml, says, shown string }{
	{`\u0000`, "a control character (U+0000)", "␀"},
	{`\u0007`, "a control character (U+0007)", "␇"},
	{`\u001B[2J`, "a control character (U+001B)", "␛[2J"},
	{`\u001B]52;c;QUJD\u0007`, "a control character (U+001B)", "␛]52;c;QUJD␇"},
	{`\u001BP0q\u001B\\`, "a control character (U+001B)", `␛P0q␛\`},
	{`\u007F`, "a control character (U+007F)", "␡"},
	{`\u009B2J`, "a control character (U+009B)", "␛[2J"},
	{"\u009B2J", "a control character (U+009B)", "␛[2J"}, // TOML takes it as it stands
	{`\n`, "a line break (U+000A)", "␊"},
	{`\r`, "a line break (U+000D)", "␍"},
	{`\u0085`, "a line break (U+0085)", "␛E"},
	{"\u2028", "a line break (U+2028)", "<U+2028>"},
	{`\u2029`, "a line break (U+2029)", "<U+2029>"},
	{`\t`, "a tab (U+0009)", "␉"},
	{"\t", "a tab (U+0009)", "␉"}, // here too
	{`\u202E`, "a mark of writing direction (U+202E)", "<U+202E>"},
	{"\u2066", "a mark of writing direction (U+2066)", "<U+2066>"},
	{`\u200E`, "a mark of writing direction (U+200E)", "<U+200E>"},
	{`\u061C`, "a mark of writing direction (U+061C)", "<U+061C>"},
	{`\u200B`, "a sign that takes no room (U+200B)", "<U+200B>"},
	{`\u2060`, "a sign that takes no room (U+2060)", "<U+2060>"},
	{"\uFEFF", "a sign that takes no room (U+FEFF)", "<U+FEFF>"},
}

// everyKey is the lines of the file that has every key.
func everyKey(t *testing.T) []string {
	t.Helper()
	text, err := os.ReadFile("../../testdata/every-key.toml")
	if err != nil {
		t.Fatal(err)
	}
	return strings.Split(string(text), "\n")
}

// quotedText is one text of a line in quotes.
var quotedText = regexp.MustCompile(`"(\\.|[^"\\])*"`)

// choices are the keys that take one of some words: they refuse every other text as such.
var choices = regexp.MustCompile(`^(use|units|outer|filler_of|adhesive|gender|mount|datum|build|role|device|shade|environment|make|what|letter)$`)

// Every text of every key, in lists and as a key of a table too, refuses every command, on its
// line, by its key, and says what is allowed; only a note takes it.
func TestEveryTextRefusesCommands(t *testing.T) {
	lines := everyKey(t)
	texts, notes := 0, 0
	for k, line := range lines {
		key, _, isKey := strings.Cut(line, "=")
		key = strings.TrimSpace(key)
		if !isKey || strings.HasPrefix(key, "#") {
			continue
		}
		for _, at := range quotedText.FindAllStringIndex(line, -1) {
			texts++
			tried := commands
			if !shorttest.Long() { // each command somewhere, and every text with one
				tried = commands[texts%len(commands):][:1]
			}
			for _, c := range tried {
				changed := append([]string{}, lines...)
				changed[k] = line[:at[1]-1] + c.toml + line[at[1]-1:]
				_, err := file.Parse([]byte(strings.Join(changed, "\n")), "f.toml")
				if key == "note" {
					if err != nil {
						t.Errorf("line %d, %s: a note does not take %q: %v", k+1, key, c.toml, err)
					}
					notes++
					continue
				}
				if err == nil {
					t.Errorf("line %d, %s: %q loads", k+1, key, c.toml)
					continue
				}
				first, _, _ := strings.Cut(err.Error(), "\n")
				for _, want := range []string{fmt.Sprintf("f.toml:%d: ", k+1), "key " + key + ": ", "; allowed: "} {
					if !strings.Contains(err.Error(), want) {
						t.Errorf("line %d, %s, %q: %q does not say %q", k+1, key, c.toml, first, want)
					}
				}
				if isChoice := choices.MatchString(key); !isChoice && (!strings.Contains(err.Error(), "holds "+c.says+": ") ||
					len(line[at[0]:at[1]]) < 20 && !strings.Contains(err.Error(), c.shown)) {
					t.Errorf("line %d, %s, %q: %q says neither %q nor shows %q", k+1, key, c.toml, first, c.says, c.shown)
				}
				printsOnly(t, err.Error())
			}
		}
	}
	if texts < 120 || notes < 3 {
		t.Fatalf("%d texts and %d notes tried: the file has more", texts, notes)
	}
}

// printsOnly holds that nothing in an error is obeyed by a terminal.
func printsOnly(t *testing.T, text string) {
	t.Helper()
	for _, r := range text {
		if r < 0x20 && r != '\n' || r >= 0x7F && r < 0xA0 || r == 0x202E || r == 0x2066 || r == 0x2028 {
			t.Fatalf("%q holds %U", text, r)
		}
	}
}

// Only that is refused: letters of every script, signs, accents that combine, and joiners where
// they join.
func TestOnlyCommandsAreRefused(t *testing.T) {
	const pattern = "format = 1\n[harness]\nname = %q\nnumber = %q\n[[termination]]\nid = \"P1\"\nname = %q\ncavities = [%q]\n"
	for _, name := range []string{"Faisceau d'été", "Größe ØÅ", "Κύριο 12 Ω", "Жгут двигателя", "エンジン配線", "엔진 배선", "חיווט", "أسلاك",
		"e\u0301te\u0301", "می\u200Cشود", "क\u094D\u200Dष", "👩\u200D🔧", "soft\u00ADhyphen", "a\u00A0b", "⌀ 10 ½ ±0.1 °C", "\uFFFD",
		"\U0001F1EB"} {
		id := strings.NewReplacer("\u200C", "", "\u200D", "").Replace(name)
		d, err := file.Parse([]byte(strings.ReplaceAll(fmt.Sprintf(pattern, "N", "N", "N", "I"), `"N"`, `"`+name+`"`)), "f.toml")
		if err != nil || d.Harness.Head.Name.V != name {
			t.Errorf("%q: %v", name, err)
		}
		text := strings.ReplaceAll(fmt.Sprintf(pattern, "a", "b", "c", "I"), `"I"`, `"`+id+`"`)
		if _, err := file.Parse([]byte(text), "f.toml"); err != nil {
			t.Errorf("%q as a cavity: %v", id, err)
		}
	}
}

func TestJoiners(t *testing.T) {
	const head = "format = 1\n[[termination]]\n"
	for _, tt := range []struct{ name, text, want string }{
		{"in an id", head + "id = \"P\u200D1\"\n", `f.toml:3: termination "P` + "\u200D" + `1", key id: holds a joiner (U+200D): "P` +
			"\u200D" +
			`1"; allowed: an id without joiners, because two ids could look the same`},
		{"in what leads to an id", head + "id = \"P1\"\n[[wire]]\nid = \"1\"\nspec = \"X\"\nsize = \"22\"\nfrom = \"P1:A\u200CB\"\n",
			`f.toml:8: wire "1", key from: holds a joiner (U+200C): "P1:A` + "\u200C" +
				`B"; allowed: an id without joiners, because two ids ` +
				`could look the same`},
		{"at the end of a name", head + "id = \"P1\"\nname = \"a\u200C\"\n",
			`f.toml:4: termination "P1", key name: holds a joiner (U+200C): "a` + "\u200C" + `"; allowed: joiners between letters only`},
		{"two in a row", head + "id = \"P1\"\nname = \"a\u200D\u200Db\"\n",
			`f.toml:4: termination "P1", key name: holds a joiner (U+200D): "a` + "\u200D\u200D" +
				`b"; allowed: joiners between letters only`},
	} {
		if _, err := file.Parse([]byte(tt.text), "f.toml"); err == nil || err.Error() != tt.want {
			t.Errorf("%s:\n got %v\nwant %s", tt.name, err, tt.want)
		}
	}
}

// A note that an older version wrote is saved as it was, whatever stands in it.
func TestNoteIsKept(t *testing.T) {
	text := "format = 1\n\n[harness]\nnote = \"a\\nb\\tc \\u001B[2J \u009B \u202E \u200B \\u0000\\r\"\n"
	d, err := file.Parse([]byte(text), "f.toml")
	if err != nil {
		t.Fatal(err)
	}
	if want := "a\nb\tc \x1b[2J \u009b \u202e \u200b \x00\r"; d.Harness.Head.Note.V != want {
		t.Errorf("%q, want %q", d.Harness.Head.Note.V, want)
	}
	if got := string(file.Encode(d)); got != text {
		t.Errorf("written %q, want %q", got, text)
	}
}

// A file may be called what it likes: its errors stay one line each, and command nothing.
func TestNameOfFileIsShown(t *testing.T) {
	_, err := file.Parse([]byte("format = 2\n"), "a\nstop: b\x1b]0;x\x07\x9b.toml")
	const want = "a␊stop: b␛]0;x␇<9B>.toml:1: key format: is the whole number 2; allowed: 1, the only format this program reads"
	if err == nil || err.Error() != want {
		t.Errorf("\n got %v\nwant %s", err, want)
	}
}
