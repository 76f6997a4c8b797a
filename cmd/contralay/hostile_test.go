package main

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"contralay/model/shorttest"
	"contralay/model/visible"
	"contralay/model/wirelist/listtest"
)

// hostile are texts that no output may pass on as they are: each as a name of a file can hold it,
// so without a zero byte and a stroke.
var hostile = []string{
	"\x1b[2J", "\x1b]52;c;QUJD\x07", "\x1b]0;title\x1b\\", "\x1bP0q\x1b\\", "\x1b[31;45mred", "\x1bc", "\u009b2J", "\x9b2J",
	"\u0090q\u009c", "\x07",
	"\b\b", "\r", "\nstop  101  forged  [wire.path]", "\u0085", "\u2028x", "\x7f", "\u202eabc", "\u2066a\u2069", "\u200b", "\u2060",
	"\ufeff", "\u061c",
	"\xff\xfe", "\xc3", "e\u0301\u0301\u0301\u0301", strings.Repeat("long ", 30), "%s%n%x", "\u200d",
}

// inert holds that no byte of an output commands a terminal, and that it is text.
func inert(t *testing.T, what, text string) {
	t.Helper()
	if c, found := visible.Find(strings.ReplaceAll(text, "\n", "")); found {
		t.Errorf("%s holds %U: %q", what, c, text)
	}
	if !utf8.ValidString(text) {
		t.Errorf("%s is no UTF-8: %q", what, text)
	}
}

// someHostile is all of them, or every seventh where time is short.
func someHostile() []string {
	if !testing.Short() {
		return hostile
	}
	var out []string
	for k := 0; k < len(hostile); k += 7 {
		out = append(out, hostile[k])
	}
	return append(out, "\nstop  101  forged  [wire.path]")
}

// togetherHostile is all of them in a few names, so that each command and screen is tried with each in few runs; each
// by itself in the long form.
func togetherHostile() []string {
	if shorttest.Long() {
		return hostile
	}
	if testing.Short() {
		return someHostile()
	}
	const names = 5 // a name of a file holds 255 bytes at most
	var out [names]string
	for k, h := range hostile {
		out[k%names] += h
	}
	return out[:]
}

// loomWith is the example with notes that hold a text, as TOML can hold it.
func loomWith(t *testing.T, note string) string {
	t.Helper()
	var quoted strings.Builder
	for _, r := range strings.ToValidUTF8(note, "") {
		switch {
		case r < 0x20 || r == 0x7f || r == '"' || r == '\\':
			quoted.WriteString(`\u00` + string("0123456789ABCDEF"[r>>4]) + string("0123456789ABCDEF"[r&15]))
		default:
			quoted.WriteRune(r)
		}
	}
	text := readFile(t, example)
	text = regexp.MustCompile(`(?m)^note .*$`).ReplaceAllString(text, "")
	text = strings.Replace(text, "[harness]\n", "[harness]\nnote = \"first "+quoted.String()+"\"\n", 1)
	return regexp.MustCompile(`(?m)^\[\[wire\]\]$`).ReplaceAllString(text, "[[wire]]\nnote = \"of a wire "+quoted.String()+"\"")
}

// Whatever a harness, a list and their files are called and hold, no command passes it on: not
// what it prints, not what it refuses, not what it writes.
func TestNoCommandPassesOnWhatATerminalObeys(t *testing.T) {
	t.Parallel()
	for _, h := range shorttest.Some(togetherHostile()) {
		dir := t.TempDir()
		put := func(name, text string) string {
			p := filepath.Join(dir, name)
			if err := os.WriteFile(p, []byte(text), 0o644); err != nil {
				t.Skipf("this disk takes no such name: %v", err)
			}
			return p
		}
		row := func(id, cell string) string { return id + ",P1:" + id + ",P2:" + id + `,22,"` + cell + "\"\n" }
		const heads = "Wire,From,To,Size,Signal\n"
		loom := put("loom"+h+".toml", loomWith(t, h))
		plain := put("plain.toml", loomWith(t, ""))
		broken := put("broken"+h+".toml", "format = 1\n[harness]\nname = \"a\"\n\"x\\u001B\" = 1\n")
		shop := put("shop"+h+".toml", "[[wire]]\nspec = \"\\u001B[2J\"\nsize = \"\\u009B\"\n")
		empty := put("empty"+h+".toml", "# nothing yet\n")
		list := put("list"+h+".csv", heads+row("1", strings.ReplaceAll(h, `"`, ""))+row("2", "B"))
		other := put("other"+h+".csv", heads+row("1", "C")+row("3", strings.ReplaceAll(h, `"`, "")))
		book := put("book"+h+".xlsx", string(listtest.Packed(t,
			listtest.Workbook("<worksheet><sheetData><row><c t=\"str\"><v>Wire</v></c></row>"+
				"</sheetData></worksheet>"))))
		sheets := filepath.Join(dir, "sheet"+h)
		missing := filepath.Join(dir, "none"+h+".toml")
		for _, args := range [][]string{
			{"check", loom}, {"check", broken}, {"check", missing}, {"check", dir}, {"figures", loom}, {"measured", loom},
			{"compare", plain, loom},
			{"compare", loom, plain, "--json"}, {"compare", list, other}, {"compare", list, other, "--json"}, {"compare", list, missing},
			{"import", list, other, "-o", filepath.Join(dir, "new"+h+".toml"), "--full"}, {"import", list, "--into", plain},
			{"import", list, "--into", missing},
			{"import", book, "-o", filepath.Join(dir, "never.toml")}, {"import", list, "-o", loom},
			{"import", list, "--recipe", broken, "-o", missing},
			{"import", list, "-o", filepath.Join(dir, "n.toml"), "--spec", h},
			{"import", list, "-o", filepath.Join(dir, "m.toml"), "--sheet", h},
			{"sheet", loom, "-o", sheets, "--catalogue", empty}, {"sheet", loom, "-o", loom}, {"check", plain, "--catalogue", shop},
			{"check", plain, "--catalogue", missing},
			{"plan", h}, {"plan", "3x" + h}, {h, h}, {"help", h}, {"completion", h}, {"--" + h}, {"--colour", h}, {"--on", h},
			{"--serial", h, "run", plain},
			{"new", loom}, {"measured", plain, "--without", h}, {"measured", plain, "--accept", h}, {loom},
		} {
			r := call(t, "", args...)
			inert(t, strings.Join(args, " ")+" on standard output", r.out)
			inert(t, strings.Join(args, " ")+" on standard error", r.err)
			for line := range strings.Lines(r.out + r.err) {
				if strings.HasPrefix(line, "stop  101  forged") {
					t.Errorf("%q printed a forged line: %q", args, r.out+r.err)
				}
			}
		}
		for _, kind := range []string{"*.html", "*.csv"} {
			written, err := filepath.Glob(filepath.Join(dir, "sheet*", kind))
			if err != nil || len(written) == 0 {
				t.Errorf("%q: no %s was written", h, kind)
			}
			for _, name := range written {
				inert(t, filepath.Base(name), strings.ReplaceAll(readFile(t, name), "\r\n", "\n"))
			}
		}
		made := filepath.Join(dir, "new"+h+".toml")
		if r := call(t, "", "check", made); !strings.Contains(r.out, "[") || r.err != "" {
			t.Errorf("%q: what was imported does not load: %+v", h, r)
		}
	}
}

// What is left out of a list is said, by import and by compare, with the place.
func TestOddCellsAreReported(t *testing.T) {
	list := fileOf(t, "a\x1b.csv", "Wire,From,To,Signal\n1,P1:A,P2:A,In\x1b[2Jj\n2,P1:B,P2:B,Pump\n")
	const says = "note: control character: \"In␛[2Jj\""
	if r := call(t, "", "import", list, "-o", filepath.Join(t.TempDir(), "a.toml")); !strings.Contains(r.out,
		says+" (row 2); left out of the cell") {
		t.Errorf("%+v", r)
	}
	if r := call(t, "", "compare", list, list); strings.Count(r.out, "a␛.csv, row 2, column D: "+says+"; left out of the cell\n") != 2 {
		t.Errorf("%+v", r)
	}
	if r := call(t, "", "compare", list, list, "--json"); strings.Count(r.err, says) != 2 || !strings.HasPrefix(r.out, "{") {
		t.Errorf("%+v", r)
	}
}

// A note that an older version wrote is told once, whichever wires have one.
func TestControlInNotesIsToldOnce(t *testing.T) {
	r := call(t, "", "check", fileOf(t, "a.toml", loomWith(t, "\x01")))
	if strings.Count(r.out, "[note.control]") != 1 || !strings.Contains(r.out, "Its note holds a control character, shown here as ␁") {
		t.Errorf("%+v", r)
	}
	if r := call(t, "", "check", fileOf(t, "a.toml", loomWith(t, "second\nthird\tfourth"))); strings.Contains(r.out, "note.control") {
		t.Errorf("%+v", r)
	}
}

// own are the sequences that the bench itself sends.
var own = regexp.MustCompile(`\x1b\[\?(1049|25|2004)[hl]|\x1b\[2J|\x1b\[K|\x1b\[[0-9]*(;[0-9]*)*[HGm]`)

// On the bench too: a file of a hostile name with hostile notes, every step and screen that a few
// keys reach, a list of a hostile name, and hostile text pasted into a field.
func TestBenchPassesOnNothing(t *testing.T) {
	shorttest.Turn(t)
	for _, h := range shorttest.Some(togetherHostile()) {
		t.Run(visible.Line(h), func(t *testing.T) {
			t.Parallel()
			benchPassesOnNothing(t, h)
		})
	}
}

func benchPassesOnNothing(t *testing.T, h string) {
	dir := t.TempDir()
	loom := filepath.Join(dir, "loom"+h+".toml")
	if err := os.WriteFile(loom, []byte(loomWith(t, h)), 0o644); err != nil {
		t.Skipf("this disk takes no such name: %v", err)
	}
	if err := os.WriteFile(filepath.Join(dir, "list"+h+".csv"), []byte("Wire,From\n1,P1:A\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	s := start(t, 100, 30, nil, loom)
	s.see("HC2-INJ-01")
	for _, keys := range []string{right, right, right, right, enter, esc, left, left, left, left, "m", enter, esc, "m", down, enter,
		esc, esc, "w", esc, enter,
		down, down, enter, "x\x1b[200~" + h + "\x1b[201~", enter, esc, "s", "h", esc} {
		s.press(keys)
		time.Sleep(2 * quiet)
	}
	s.press(ctrlC)
	s.press(ctrlC)
	time.Sleep(4 * quiet)
	sent := s.sent()
	rest := strings.NewReplacer("\r\n", "\n", "\r", "").Replace(own.ReplaceAllString(sent, ""))
	inert(t, "the bench on "+visible.Line(loom), rest)
	if strings.Contains(sent, "\x1b[31;45m") {
		t.Errorf("%q: a colour of the file reached the terminal", h)
	}
	s.close()
}

// Nothing but the gate and the line of progress writes to standard output or standard error.
func TestOneGate(t *testing.T) {
	files, err := filepath.Glob("*.go")
	if err != nil || len(files) < 10 {
		t.Fatal(files, err)
	}
	writes := regexp.MustCompile(`(Fprint\w*|WriteString|Write|Copy)\((w\.(out|err)|os\.Std(out|err))\b|fmt\.Print|\bw\.(out|err)\.Write`)
	for _, name := range files {
		if strings.HasSuffix(name, "_test.go") || name == "gate.go" || name == "progress.go" {
			continue
		}
		if found := writes.FindString(readFile(t, name)); found != "" {
			t.Errorf("%s writes past the gate: %s", name, found)
		}
	}
}
