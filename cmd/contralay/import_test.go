package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/file"
	"contralay/model/shorttest"
)

// A pin table becomes a harness and a report in ten lines; what is there already is not
// touched, and what fails writes nothing.
func TestImportCommand(t *testing.T) {
	dir := t.TempDir()
	out := filepath.Join(dir, "x.toml")
	r := call(t, "", "import", "../../testdata/lists/pin-table.md", "-o", out)
	if r.code != ok || strings.Count(r.out, "\n") > 10 {
		t.Fatalf("exit %d, %d lines:\n%s%s", r.code, strings.Count(r.out, "\n"), r.out, r.err)
	}
	for _, want := range []string{"2 terminations", "1 wired spare (J)", "1 reserved (K)", "1 blank (D)", "shielded pair of wires 4 and 5",
		"twisted pair of wires 6 and 7", "two cavities of one net: L,M"} {
		if !strings.Contains(r.out, want) {
			t.Errorf("the report lacks %q:\n%s", want, r.out)
		}
	}
	d, err := file.Load(out)
	if err != nil || len(d.Harness.Terminations) != 2 || len(d.Harness.Units) != 2 {
		t.Fatalf("%v: %d terminations", err, len(d.Harness.Terminations))
	}
	before := readFile(t, out)
	if r := call(t, "", "import", "../../testdata/lists/pin-table.md", "-o", out); r.code != usage || readFile(t, out) != before {
		t.Errorf("what was there: %+v", r)
	}
	junk := fileOf(t, "junk.csv", "nothing that names\na column at all\n")
	bomb := fileOf(t, "bomb.xlsx", "PK\x03\x04 no zip")
	for _, args := range [][]string{{junk}, {bomb}, {"nowhere.csv"}, {dir}, {"../../testdata/lists/pin-table.md", "--recipe", junk},
		{"../../testdata/lists/pin-table.md", "--unit", "mile"}} {
		to := filepath.Join(dir, "never.toml")
		if r := call(t, "", append([]string{"import", "-o", to}, args...)...); r.code != usage || r.err == "" {
			t.Errorf("%v: %+v", args, r)
		}
		if _, err := os.Stat(to); err == nil {
			t.Fatalf("%v wrote a file", args)
		}
	}
}

// Two channels that changed places are told as one swap, once; nothing that is the same is
// told; lists and harnesses go beside one another.
func TestCompareCommand(t *testing.T) {
	a := fileOf(t, "a.csv", "wire,from,to,signal\n4,P1:4,INJ4:1,Injector 4\n5,P1:5,INJ5:1,Injector 5\n6,P1:6,INJ6:1,Injector 6\n")
	b := fileOf(t, "b.csv", "from;to;signal;wire\nP1:5;INJ4:1;Injector 4;4\nP1:4;INJ5:1;Injector 5;5\nP1:6;INJ6:1;Injector 6;6\n")
	r := call(t, "", "compare", a, b)
	const all6 = "matched: 6 of 6 cavities of A, 6 of 6 of B\n"
	if r.code != stopped || r.out != "4 and 5 swapped at P1 (\"Injector 4\" and \"Injector 5\")\n"+all6 {
		t.Errorf("%+v", r)
	}
	if r := call(t, "", "compare", a, a); r.code != ok || r.out != "no difference\n"+all6 {
		t.Errorf("%+v", r)
	}
	j := call(t, "", "compare", a, b, "--json")
	var all struct {
		Differences []struct{ Kind, Says string }
		Says        string
	}
	if err := json.Unmarshal([]byte(j.out), &all); err != nil || len(all.Differences) != 1 || all.Differences[0].Kind != "swapped" ||
		all.Says+"\n" != all6 {
		t.Errorf("%v %+v", err, all)
	}
	one := readFile(t, "../../testdata/example.toml")
	two := fileOf(t, "two.toml", strings.Replace(one, " = 450.0", " = 460.0", 1))
	if r := call(t, "", "compare", "../../testdata/example.toml", two); r.code != stopped || !strings.Contains(r.out, "length_mm") {
		t.Errorf("a length: %+v", r)
	}
}

// What compare exits with: 0 where nothing changed, 1 where anything did, 2 where the two have nothing in common; its
// last line always says what was matched, in words and in JSON.
func TestCompareExits(t *testing.T) {
	harness := "format = 1\n\n[harness]\nname = \"x\"\n"
	for _, c := range []struct {
		name, a, b, ends string // of the file names
		code             int
		first, last      string // "": any
	}{
		{"two empty lists", "Pin,Signal\n", "Pin,Signal\n", ".csv .csv", ok, "no difference: both are empty",
			"matched: 0 of 0 cavities of A, 0 of 0 of B"},
		{"two files of nothing at all", "", "", ".csv .csv", ok, "no difference: both are empty",
			"matched: 0 of 0 cavities of A, 0 of 0 of B"},
		{"an empty list", "Pin,Signal\n1,Horn\n", "Pin,Signal\n", ".csv .csv", stopped, "", "matched: 0 of 1 cavities of A, 0 of 0 of B"},
		{"two empty harnesses", harness, harness, ".toml .toml", ok, "no difference", "matched: 0 of 0 cavities of A, 0 of 0 of B"},
		{"empty harnesses of two names", harness, strings.Replace(harness, "x", "y", 1), ".toml .toml", stopped, "",
			"matched: 0 of 0 cavities of A, 0 of 0 of B"},
		{"nothing in common", "Pin,Signal\n1,Horn\n2,Fan\n", "Pin,Signal\nA,Lamp\nB,Wiper\n", ".csv .csv", usage,
			"A and B have nothing in common: no cavity, no wire id and no signal of one is in the other. Compare two lists of one harness",
			"matched: 0 of 2 cavities of A, 0 of 2 of B"},
		{"not everything compared", "Pin,Signal,Colour\n1,Horn,red\n2,Fan,blue\n", "Pin,Signal\n1,Horn\n2,Fan\n", ".csv .csv", ok,
			"what was compared is the same, but not everything was compared",
			"matched: 2 of 2 cavities of A, 2 of 2 of B; connector a is b in B; not compared: colour, which B lacks"},
		{"ids alone", "Wire,AWG,Colour\nW1,20,red\n", "Wire,AWG,Colour\nW1,18,red\n", ".csv .csv", stopped, "wire W1: size is 18, was 20",
			"matched: 1 of 1 wires of A, 1 of 1 of B"},
		{"rows that are not read", "Pin,Signal\n1,Horn\n2,Fan\nnone of these is a row\n", "Pin,Signal\n1,Horn\n2,Fan\n", ".csv .csv", ok,
			"",
			"matched: 2 of 2 cavities of A, 2 of 2 of B; connector a is b in B; not compared: what the import left out (A row 4)"},
	} {
		ends := strings.Fields(c.ends)
		dir := t.TempDir()
		a, b := filepath.Join(dir, "a"+ends[0]), filepath.Join(dir, "b"+ends[1])
		for name, text := range map[string]string{a: c.a, b: c.b} {
			if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		r := call(t, "", "compare", a, b)
		lines := strings.Split(strings.TrimSuffix(r.out, "\n"), "\n")
		if r.code != c.code || c.first != "" && lines[0] != c.first || lines[len(lines)-1] != c.last || r.err != "" {
			t.Errorf("%s: exit %d\n%s%s", c.name, r.code, r.out, r.err)
		}
		j := call(t, "", "compare", a, b, "--json")
		var out struct {
			Complete bool
			Nothing  bool `json:"nothing_in_common"`
			Says     string
		}
		if err := json.Unmarshal([]byte(j.out), &out); err != nil || j.code != c.code || out.Says != c.last ||
			out.Nothing != (c.code == usage) || out.Complete && strings.Contains(c.last, "not compared") {
			t.Errorf("%s as JSON: %v, exit %d\n%s", c.name, err, j.code, j.out)
		}
	}
	if r := call(t, "", "compare", "-", "-"); r.code != usage || !strings.Contains(r.err, "only one of the two") {
		t.Errorf("standard input twice: %+v", r)
	}
	if r := call(t, "Pin,Signal\n1,Horn\n", "compare", "-", fileOf(t, "b.csv", "Pin,Signal\n1,Fan\n")); r.code != stopped {
		t.Errorf("a list from standard input: %+v", r)
	}
}

// Two harness files that are not the same to the letter are never "no difference": another spelling and another
// order are said where nothing else differs.
func TestCompareSpellings(t *testing.T) {
	text := readFile(t, "../../testdata/demo.toml")
	wires := strings.Split(text, "[[wire]]")
	turned := append([]string{}, wires...)
	turned[1], turned[2] = turned[2], turned[1]
	for name, is := range map[string]string{
		"case of a signal": strings.Replace(text, "Injector 1 switched", "injector 1 switched", 1),
		"code of a colour": strings.Replace(text, `colour = "92"`, `colour = "WHRD"`, 1),
		"order of wires":   strings.Join(turned, "[[wire]]"),
	} {
		if is == text {
			t.Fatalf("%s: the demo has none", name)
		}
		r := call(t, "", "compare", fileOf(t, "was.toml", text), fileOf(t, "is.toml", is))
		if r.code != stopped || strings.Contains(r.out, "no difference") || strings.Count(r.out, "\n") != 2 {
			t.Errorf("%s: exit %d\n%s%s", name, r.code, r.out, r.err)
		}
	}
}

// An independent list in a harness stops it where the two join otherwise, once for one
// swap, and the ring-out sheet says what it was held against.
func TestIndependentList(t *testing.T) {
	shorttest.Turn(t)
	loom := readFile(t, "../../testdata/example.toml")
	name := fileOf(t, "loom.toml", loom)
	r := call(t, "", "check", name)
	d, err := file.Load(name)
	if err != nil {
		t.Fatal(err)
	}
	var list strings.Builder
	list.WriteString("wire,from,to\n")
	var first, second string
	for _, w := range d.Harness.Wires {
		from := w.From.V
		if strings.Contains(from, ":") && strings.Contains(w.To.V, ":") && w.Role.V != model.RoleSpare {
			switch {
			case first == "":
				first = from
			case second == "":
				second = from
			}
		}
		list.WriteString(w.ID + "," + w.From.V + "," + w.To.V + "\n")
	}
	good := fileOf(t, "good.csv", list.String())
	if r := call(t, "", "import", good, "--into", name); r.code != ok {
		t.Fatalf("%+v", r)
	}
	if now := call(t, "", "check", name); strings.Contains(now.out, "list.joins") || now.code != r.code {
		t.Errorf("the same list disagrees:\n%s", now.out)
	}
	out := t.TempDir()
	call(t, "", "sheet", name, "-o", out)
	pages, _ := filepath.Glob(out + "/*.html")
	if !strings.Contains(wordsOf(readFile(t, pages[0])),
		"Held against an independent list, good.csv: it joins the same in all 27 wired cavities.") {
		t.Error("the sheet does not say what it was held against")
	}
	swapped := strings.NewReplacer(","+first+",", ","+second+",", ","+second+",", ","+first+",").Replace(list.String())
	bad := fileOf(t, "bad.csv", swapped)
	if r := call(t, "", "import", bad, "--into", name); r.code != ok {
		t.Fatalf("%+v", r)
	}
	now := call(t, "", "check", name)
	if now.code != stopped || strings.Count(now.out, "[list.joins]") != 1 || !strings.Contains(now.out, "swapped") {
		t.Errorf("%s and %s swapped in the list: exit %d\n%s", first, second, now.code, now.out)
	}
	strange := fileOf(t, "strange.csv", strings.ReplaceAll(list.String(), "AUX1:", "ELSE1:"))
	held := readFile(t, name)
	if r := call(t, "", "import", strange, "--into", name); r.code != usage || !strings.Contains(r.err, "ELSE1") ||
		readFile(t, name) != held {
		t.Errorf("an end that nobody knows was let through: %+v", r)
	}
}

// Every key of a harness file is compared: what is no list of wires is told by its name, and
// what compare tells by what it means is not told again.
func TestCompareFiles(t *testing.T) {
	dir := t.TempDir()
	text, err := os.ReadFile("../../testdata/demo.toml")
	if err != nil {
		t.Fatal(err)
	}
	was, is := filepath.Join(dir, "was.toml"), filepath.Join(dir, "is.toml")
	for old, c := range map[string]struct{ now, want string }{
		`return = "101"`:       {`return = "102"`, `return is "102"`},
		`length_mm    = 560.0`: {`length_mm = 575.0`, "branch T1: length_mm is 575.0"},
		`size   = "22"`:        {`size = "20"`, "size is 20, was 22"},
	} {
		if !strings.Contains(string(text), old) {
			t.Fatalf("the demo lacks %s", old)
		}
		for name, body := range map[string]string{was: string(text), is: strings.Replace(string(text), old, c.now, 1)} {
			if err := os.WriteFile(name, []byte(body), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		r := call(t, "", "compare", was, is)
		if r.code != stopped || strings.Count(r.out, "\n") != 2 || !strings.Contains(r.out, c.want) {
			t.Errorf("%s: %d\n%s%s", old, r.code, r.out, r.err)
		}
	}
}

// A wire that another feed of the same rating takes over is told, by both feeds.
func TestCompareFeeds(t *testing.T) {
	dir := t.TempDir()
	text, err := os.ReadFile("../../testdata/demo.toml")
	if err != nil {
		t.Fatal(err)
	}
	was, is := filepath.Join(dir, "was.toml"), filepath.Join(dir, "is.toml")
	moved := strings.NewReplacer(`["150", "154"]`, `["150"]`, `wires     = ["110"]`, `wires = ["110", "154"]`).Replace(string(text))
	for name, body := range map[string]string{was: string(text), is: moved} {
		if err := os.WriteFile(name, []byte(body), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	r := call(t, "", "compare", was, is)
	if r.code != stopped || strings.Count(r.out, "\n") != 3 || !strings.Contains(r.out, "feed F1: wires is") ||
		!strings.Contains(r.out, "feed F3: wires is") {
		t.Errorf("%d\n%s%s", r.code, r.out, r.err)
	}
}
