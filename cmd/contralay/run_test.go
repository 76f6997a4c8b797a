package main

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"

	"contralay/calc"
	runquery "contralay/calc/query/run"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/shorttest"
)

// nineteen is 19 wires of 22 AWG, laid 1 · 6 · 12 on one branch.
func nineteen() string {
	var b strings.Builder
	b.WriteString("format = 1\n\n[harness]\nnumber   = \"RUN-1\"\nrevision = \"A\"\n")
	for _, id := range []string{"P1", "P2"} {
		fmt.Fprintf(&b, "\n[[termination]]\nid = %q\n", id)
	}
	layers, k := "", 0
	for _, n := range []int{1, 6, 12} {
		var of []string
		for range n {
			k++
			fmt.Fprintf(&b, "\n[[wire]]\nid = \"%d\"\nfrom = \"P1:%d\"\nto = \"P2:%d\"\nspec = \"AS22759/32\"\nsize = \"22\"\ncolour = "+
				"\"%d\"\n", 100+k, k, k, k%10)
			of = append(of, strconv.Quote(strconv.Itoa(100+k)))
		}
		layers += "\n  [[branch.layer]]\n  of = [" + strings.Join(of, ", ") + "]\n"
	}
	b.WriteString("\n[[branch]]\nid = \"T1\"\nfrom = \"P1\"\nto = \"P2\"\nlength_mm = 500.0\n" + layers)
	return b.String()
}

// stepOf is the step in hand, as the head says it; titleOf what the card says of it.
var (
	stepOf  = regexp.MustCompile(`step (\d+) of (\d+) `)
	titleOf = regexp.MustCompile(`(?m)^│ (\S.*\S) +│$`)
)

// A run goes from the first cut to the last hold with Enter, +, digits and Backspace alone.
// Two readings deviate: the one the tolerance of the wire explains, the other nothing does;
// both are explained, and nothing is moved. The window is closed in the middle, and the
// next start goes on at the step that was in hand.
func TestBenchRun(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	_, env := state(t)
	name := fileOf(t, "loom.toml", nineteen())
	s := start(t, 150, 40, []string{env}, "run", "--bounce", "0", name)
	s.see("Who works")
	s.press("7" + enter)
	s.see("step 1 of", "lot of AS22759/32, 22 AWG")
	seen := map[string]bool{}
	cut := ""
	steps := 0
	for n := 0; ; n++ {
		screen := s.text()
		if strings.Contains(screen, "layers measured") {
			break
		}
		if n > 60 {
			t.Fatalf("the run has no end:\n%s", screen)
		}
		m := stepOf.FindStringSubmatch(screen)
		if m == nil {
			t.Fatalf("no step on the screen:\n%s", screen)
		}
		at, title := m[1], titleOf.FindStringSubmatch(screen)[1]
		for _, word := range []string{"cut", "is on", "hold", "thread", "cavity", "shrink"} {
			seen[word] = seen[word] || strings.Contains(screen, word)
		}
		switch {
		case strings.Contains(screen, "the lot of this reel"):
			s.press("R-7" + enter)
		case strings.Contains(screen, "isolation of") && strings.Contains(screen, "type the reading"):
			s.press("550" + enter)
		case strings.Contains(screen, "sign to continue"):
			s.press(enter + "14" + enter)
		case strings.Contains(title, "layer 1") && cut == "":
			s.press("3.45" + enter)
			screen := s.see("Read 3.45", "the sheet has 3.3", "as if the wire were 1.14, the top of its tolerance: measure the reel",
				"the next layer then holds 12 of 12", "Nothing is moved")
			if strings.Contains(screen, "DONE") {
				t.Error("a reading ticked the step")
			}
			cut = at
			s.pty.Close()
			s.ends()
			s = start(t, 150, 40, []string{env}, "run", "--bounce", "0", name)
			s.see("Unsaved work on")
			s.press(enter)
			s.see("Who works", "▸ 7") // who worked last is offered first
			s.press(enter)
			s.see("step "+at+" of", "reading 1  3.45 mm", "as if the wire were 1.14")
			continue
		case cut == at && !seen["piece"]: // one piece of it by itself, then the rest of the layer
			seen["piece"] = true
			s.press(enter)
			s.see("is on T1 layer 1", "2 of 6")
			continue
		case strings.Contains(title, "layer 2") && !seen["too large"]: // + and Enter both ask twice
			s.press("6.9" + enter)
			s.see("too large for tolerance: a crossed wire or tape")
			seen["too large"] = true
			s.press(backspace) // a look back, and on again
			s.see("layer 1", "DONE")
			s.press(enter)
			s.see("too large for tolerance")
			s.press("+") // once is not enough
			s.see("look first")
			s.press("+")
		default:
			s.press("+")
		}
		steps++
		s.until("what comes after "+title, func(now string) bool {
			return stepOf.MatchString(now) && titleOf.FindString(now) != titleOf.FindString(screen) ||
				strings.Contains(now, "layers measured")
		})
	}
	for _, what := range []string{"cut", "is on", "hold", "thread", "cavity", "shrink", "piece"} {
		if !seen[what] {
			t.Errorf("no step %q", what)
		}
	}
	if cut == "" {
		t.Fatal("it was never cut off")
	}
	s.see("1 reading is out of limits, and nobody has decided") // it is not done
	if _, words := hand(s.text()); !strings.Contains(words, "save it") {
		t.Fatalf("the row in hand at the end is %q", words)
	}
	s.press(enter)
	s.see("saved to")
	d, err := file.Load(name)
	if err != nil {
		t.Fatal(err)
	}
	b := d.Harness.Builds[0]
	if len(d.Harness.Builds) != 1 || b.Serial != "1" || b.Revision.V != "A" || b.Begun.V == "" || len(b.Signed) != 4 ||
		b.Signed[0].By != "14" || b.Signed[0].At.V == "" {
		t.Errorf("%+v", b)
	}
	one, two := b.ReadingOf("T1", 1), b.ReadingOf("T1", 2)
	if one == nil || two == nil || len(one.OverMM) != 1 || one.OverMM[0] != 3.45 || two.OverMM[0] != 6.9 {
		t.Errorf("readings %+v", b.Readings)
	}
	for k, n := range []int{1, 6, 12} {
		if l := d.Harness.Branches[0].Layers[k]; len(l.Of) != n {
			t.Errorf("layer %d holds %d, want %d: something was moved", k, len(l.Of), n)
		}
	}
	cat, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	run := runquery.Run(calc.Build(&d.Harness, cat, nil))
	if steps > 3*len(run) || len(d.Harness.Reels) != 0 {
		t.Errorf("%d keys for %d steps, reels %v", steps, len(run), d.Harness.Reels)
	}
	for _, s := range run {
		if !s.In(&b) {
			t.Errorf("%s is not done", s.Key)
		}
	}
	dir := t.TempDir()
	call(t, "", "sheet", name, "-o", dir)
	if page := readFile(t, dir+"/RUN-1-A.html"); !strings.Contains(page, "As built, serial 1") || !strings.Contains(page, "3.45") {
		t.Error("the sheet lacks what was built")
	}
}

// A run is left in the middle and saved; then the file is changed. check says in one line what
// differs from what was built, and the next run asks before it goes on.
func TestRunAsksWhatChangedInTheFile(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	_, env := state(t)
	name := fileOf(t, "loom.toml", nineteen())
	s := start(t, 80, 24, []string{env}, "run", "--bounce", "0", name)
	s.see("Who works")
	s.press("7" + enter)
	s.see("step 1 of", "lot of")
	s.press("R-7" + enter)
	s.see("step 2 of", "cut")
	for n := 1; !strings.Contains(s.text(), "layer 2"); n++ { // everything is cut, the centre and layer 1 are laid
		if n > 40 {
			t.Fatalf("no layer 2:\n%s", s.text())
		}
		s.changed("+")
	}
	s.press("s")
	s.see("saved to")
	s.pty.Close()
	s.ends()
	text := readFile(t, name)
	if got := call(t, "", "check", name); strings.Contains(got.out, "built") {
		t.Errorf("nothing has changed, and check says:\n%s", got.out)
	}
	was := "id     = \"102\"\nfrom   = \"P1:2\"\nto     = \"P2:2\"\nspec   = \"AS22759/32\"\nsize   = \"22\"\ncolour = \"2\""
	now := strings.Replace(strings.Replace(was, `"22"`, `"20"`, 1), `colour = "2"`, `colour = "4"`, 1)
	if strings.Count(text, was) != 1 {
		t.Fatalf("the file has no wire 102:\n%s", text)
	}
	name = fileOf(t, "changed.toml", strings.Replace(text, was, now, 1))
	lines := 0
	for _, line := range strings.Split(call(t, "", "check", name).out, "\n") {
		if strings.Contains(line, "built.since") {
			if lines++; !strings.HasPrefix(line, "warn") || !strings.Contains(line, "wire 102 is 20 AWG yellow, was 22 AWG red,") ||
				!strings.Contains(line, ": 2 steps to do again") { // it is cut, and lies in layer 1
				t.Error(line)
			}
		}
	}
	if lines != 1 {
		t.Errorf("check says it in %d lines", lines)
	}
	s = start(t, 80, 24, []string{env}, "run", "--bounce", "0", name)
	s.see("Who works")
	s.press("7" + enter)
	s.see("Since you built serial 1", "2 steps to do again", "Wire 102 is 20 AWG yellow, was 22 AWG red")
	s.press(enter)
	s.see("To do again: cut 102; lay T1 layer 1")
	s.press(down + enter)
	s.see("lot of AS22759/32, 20 AWG", "2 ticks are taken off")
	s.press("R-9" + enter)
	s.see("cut 102 to 700 mm, 1 of 1") // it alone
	s.pty.Close()
	s.ends()
}

// Three Enter in one burst are one press, unless that is turned off.
func TestRunTakesABurstOnce(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	for _, c := range []struct {
		flags []string
		next  string
	}{{nil, "2 of 12"}, {[]string{"--bounce", "0"}, "4 of 12"}} {
		_, env := state(t)
		s := start(t, 80, 24, []string{env}, append(append([]string{"run"}, c.flags...), fileOf(t, "loom.toml", nineteen()))...)
		s.see("Who works")
		s.press("7" + enter)
		s.see("lot of")
		s.press("R-7" + enter)
		s.see("1 of 12")
		time.Sleep(400 * time.Millisecond) // the Enter behind the name is long past
		s.press(enter + enter + enter)
		s.see(c.next)
		s.pty.Close()
		s.ends()
	}
}
