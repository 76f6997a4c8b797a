package main

import (
	"bytes"
	"context"
	"encoding/base64"
	"encoding/csv"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"

	"contralay/model/shorttest"
)

// A sheet is one page and its lists, under number and revision; a revision later it stands
// beside the old one, which is not touched.
func TestSheetCommand(t *testing.T) {
	dir := t.TempDir()
	out := filepath.Join(dir, "out")
	text, err := os.ReadFile("../../testdata/demo.toml")
	if err != nil {
		t.Fatal(err)
	}
	name := filepath.Join(dir, "loom.toml")
	if err := os.WriteFile(name, text, 0o644); err != nil {
		t.Fatal(err)
	}
	if r := call(t, "", "sheet", name, "-o", out, "--on", "2026-05-11"); r.code != ok || !strings.Contains(r.out, "HC2-ENG-01-C.html") {
		t.Fatalf("%+v", r)
	}
	first, err := os.ReadFile(filepath.Join(out, "HC2-ENG-01-C.html"))
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"2026-05-11", "loom.toml", hashOf(text), "rev C"} {
		if !bytes.Contains(first, []byte(want)) {
			t.Errorf("the page lacks %q", want)
		}
	}
	lists, _ := filepath.Glob(filepath.Join(out, "HC2-ENG-01-C-*.csv"))
	if len(lists) < 12 {
		t.Errorf("only %d lists: %v", len(lists), lists)
	}
	next := bytes.Replace(text, []byte(`revision = "C"`), []byte(`revision = "D"`), 1)
	if err := os.WriteFile(name, next, 0o644); err != nil {
		t.Fatal(err)
	}
	call(t, "", "sheet", name, "-o", out, "--on", "2026-05-12")
	if again, err := os.ReadFile(filepath.Join(out, "HC2-ENG-01-C.html")); err != nil || !bytes.Equal(again, first) {
		t.Errorf("the sheet of revision C was touched: %v", err)
	}
	if _, err := os.Stat(filepath.Join(out, "HC2-ENG-01-D.html")); err != nil {
		t.Error(err)
	}
	if left, _ := filepath.Glob(filepath.Join(out, ".sheet-*")); len(left) > 0 {
		t.Errorf("left behind: %v", left)
	}
}

// A number that is a path is a name on disk and no path.
func TestSheetNameIsNoPath(t *testing.T) {
	dir := t.TempDir()
	text, err := os.ReadFile("../../testdata/example.toml")
	if err != nil {
		t.Fatal(err)
	}
	text = regexp.MustCompile(`(?m)^number .*$`).ReplaceAll(text, []byte(`number = "../../up/<x>"`))
	name := filepath.Join(dir, "a.toml")
	if err := os.WriteFile(name, text, 0o644); err != nil {
		t.Fatal(err)
	}
	out := filepath.Join(dir, "in", "out")
	call(t, "", "sheet", name, "-o", out)
	all, _ := filepath.Glob(filepath.Join(dir, "*"))
	if len(all) != 2 {
		t.Errorf("written elsewhere: %v", all)
	}
	for _, args := range [][]string{{"sheet", name}, {"sheet", name, "-o", name}, {"sheet", "nowhere.toml", "-o", out},
		{"sheet", name, "-o", out, "--on", "yesterday"}} {
		if r := call(t, "", args...); r.code != usage || r.err == "" {
			t.Errorf("%v: %+v", args, r)
		}
	}
}

// overTheEdge tells what stands over an edge. In the face of the page, which is in it: what is wider than its
// cell or higher than its block, or stands beyond the live area. In the widest face a machine may show it in, if
// it shows another: what is higher than its page, or stands over the edge of the paper, 12 mm further out.
const overTheEdge = `(() => {
const style = document.createElement("style");
style.textContent = ".page { padding: 0 !important; margin: 0 !important; }";
document.body.append(style);
const over = new Set();
const say = (what, e) => over.add(what + " " + e.tagName + " " + e.textContent.slice(0, 60));
for (const font of ["", "Verdana, 'DejaVu Sans', sans-serif"]) {
  document.body.style.fontFamily = font;
  for (const page of document.querySelectorAll(".page")) {
    const edge = page.getBoundingClientRect().right + (font ? 45 : 1);
    if (page.scrollHeight > page.clientHeight + 1) say("higher than its page:", page);
    for (const e of page.querySelectorAll("table, svg, p, div, h2, h3, td, th, span")) {
      if (e.getBoundingClientRect().right > edge) say("beyond the edge:", e);
      if (font) continue;
      if (/^(TD|TH)$/.test(e.tagName) && e.scrollWidth > e.clientWidth + 1) say("wider than its cell:", e);
      if (e.className == "block" && e.scrollHeight > e.clientHeight + 2) say("higher than its block:", e);
    }
  }
}
return over.size + " over the edge: " + [...over].slice(0, 40).join("; ");
})()`

// paperSize asks for a size of paper before the page's own rules, which may still ask for
// another.
const paperSize = `(() => {
document.getElementById("size")?.remove();
const style = document.createElement("style");
style.id = "size";
style.textContent = "@page { size: %s; }";
document.head.prepend(style);
})()`

// On A4 and on Letter the set prints page for page as it was laid: no table, drawing or word stands over an
// edge, whatever the font and however long the part numbers are, and every page of the PDF has the size asked for.
func TestPagePrints(t *testing.T) {
	t.Parallel()
	b := openBrowser(t)
	for _, name := range []string{"demo", "whole", "long"} {
		dir := t.TempDir()
		from := "../../testdata/" + name + ".toml"
		if name == "long" {
			from = longWords(t, dir)
		}
		call(t, "", "sheet", from, "-o", dir, "--on", "2026-05-11")
		pages, _ := filepath.Glob(filepath.Join(dir, "*.html"))
		if len(pages) != 1 {
			t.Fatalf("%s: pages %v", name, pages)
		}
		b.open(pages[0])
		for size, points := range map[string]string{"A4": "595", "letter": "612"} {
			if name == "long" || name == "whole" && size == "letter" && !shorttest.Long() {
				continue // the pages are sections of one height for both sizes
			}
			b.run(fmt.Sprintf(paperSize, size))
			printed := b.ask("Page.printToPDF", map[string]any{"preferCSSPageSize": true, "printBackground": true,
				"generateTaggedPDF": false})
			data, _ := printed["data"].(string)
			raw, err := base64.StdEncoding.DecodeString(data)
			if err != nil {
				t.Fatal(err)
			}
			boxes := regexp.MustCompile(`/MediaBox \[0 0 ([0-9]+)`).FindAllSubmatch(raw, -1)
			for _, box := range boxes {
				if string(box[1]) != points && string(box[1]) != strconv.Itoa(atoi(points)-1) {
					t.Errorf("%s on %s: a page %s points wide", name, size, box[1])
				}
			}
			if laid := strings.Count(readFile(t, pages[0]), `<section class="page">`); len(boxes) != laid || laid < 5 {
				t.Errorf("%s on %s: %d pages, laid as %d", name, size, len(boxes), laid)
			}
		}
		if over := b.run(overTheEdge); !strings.HasPrefix(over, "0 over the edge") {
			t.Errorf("%s: %s", name, over)
		}
	}
}

// longWords writes the demo into a file of dir with names and part numbers of forty
// characters and more, in one word, and gives its path.
func longWords(t *testing.T, dir string) string {
	t.Helper()
	text, err := os.ReadFile("../../testdata/demo.toml")
	if err != nil {
		t.Fatal(err)
	}
	n := 0
	long := regexp.MustCompile(`(?m)^(signal|name|part|note)( *= *)"[^"]*"`).ReplaceAllFunc(text, func(b []byte) []byte {
		n++
		key, _, _ := bytes.Cut(b, []byte("="))
		return fmt.Appendf(nil, `%s= "WITHOUTASINGLEPLACETOBREAKITWHEREVERYOULOOK%d"`, key, n)
	})
	at := filepath.Join(dir, "long.toml")
	if err := os.WriteFile(at, long, 0o644); err != nil {
		t.Fatal(err)
	}
	return at
}

func atoi(s string) int { n, _ := strconv.Atoi(s); return n }

// An office program opens the lists and reads back what was written, but for the
// apostrophe before what it would run.
func TestListsInAnOffice(t *testing.T) {
	t.Parallel()
	office := shorttest.Program(t, "soffice")
	dir := t.TempDir()
	text, err := os.ReadFile("../../testdata/demo.toml")
	if err != nil {
		t.Fatal(err)
	}
	text = bytes.Replace(text, []byte(`signal = "Crank speed +"`), []byte(`signal = "=1+1"`), 1)
	name := filepath.Join(dir, "a.toml")
	if err := os.WriteFile(name, text, 0o644); err != nil {
		t.Fatal(err)
	}
	call(t, "", "sheet", name, "-o", dir)
	lists, _ := filepath.Glob(filepath.Join(dir, "*.csv"))
	back := filepath.Join(dir, "back")
	run := func(to string, files ...string) {
		t.Helper()
		ctx, cancel := context.WithTimeout(context.Background(), 2*time.Minute)
		defer cancel()
		args := append([]string{"-env:UserInstallation=file://" + filepath.Join(dir, "profile"), "--headless",
			"--infilter=CSV:44,34,76,1,,0,false,false", "--convert-to", to, "--outdir", back}, files...)
		if out, err := exec.CommandContext(ctx, office, args...).CombinedOutput(); err != nil {
			t.Fatalf("soffice: %v\n%s", err, out)
		}
	}
	run("csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false", lists...)
	if len(lists) == 0 {
		t.Fatal("no lists")
	}
	for _, l := range lists {
		want, got := readCSV(t, l), readCSV(t, filepath.Join(back, filepath.Base(l)))
		if len(want) != len(got) {
			t.Errorf("%s: %d rows came back as %d", filepath.Base(l), len(want), len(got))
			continue
		}
		for k := range want {
			for j := range want[k] {
				a, b := want[k][j], ""
				if j < len(got[k]) {
					b = got[k][j]
				}
				if x, err := strconv.ParseFloat(a, 64); err == nil { // it holds a number, not its last zeros
					if y, err := strconv.ParseFloat(b, 64); err == nil && x == y {
						continue
					}
				}
				if a != b && strings.TrimPrefix(a, "'") != b {
					t.Errorf("%s row %d: %q came back as %q", filepath.Base(l), k+1, a, b)
				}
				if strings.Contains(fmt.Sprint(want[k]), "1+1") && b == "2" {
					t.Errorf("%s row %d: a formula ran", filepath.Base(l), k+1)
				}
			}
		}
	}
}

func readCSV(t *testing.T, name string) [][]string {
	t.Helper()
	f, err := os.Open(name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.FieldsPerRecord = -1
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	return rows
}

// A save of a raised revision keeps the file of the one before beside it, whole, once.
func TestRevisionIsKept(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	_, env := state(t)
	name := copyOfExample(t)
	before := readFile(t, name)
	s := start(t, 100, 30, []string{env}, name)
	s.see("WIRES")
	s.press(right + right + right + right)
	s.see("BUILD")
	s.toRow("revision")
	s.press("+")
	s.see("saving keeps the file of")
	s.press("s")
	s.see("saved to")
	s.press("q")
	s.ends()
	kept, err := filepath.Glob(strings.TrimSuffix(name, ".toml") + "-rev-*.toml")
	if err != nil || len(kept) != 1 || readFile(t, kept[0]) != before {
		t.Errorf("kept: %v", kept)
	}
	if readFile(t, name) == before {
		t.Error("nothing was saved")
	}
}
