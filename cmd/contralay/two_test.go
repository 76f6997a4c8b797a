package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"contralay/model/file"
	"contralay/model/shorttest"
)

// wire is the wire that is to be cut, as the screen says it.
func wire(screen string) string {
	_, rest, _ := strings.Cut(screen, "│ cut ")
	id, _, _ := strings.Cut(rest, " to ")
	return id
}

// Two programs on one serial, each on its own terminal: each shows within a second what the other
// ticked. One is killed; what it ticked is there. The other saves all of it, and nothing lies beside
// the file but its .bak.
func TestTwoBuildOneSerial(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	name := fileOf(t, "loom.toml", nineteen())
	open := func(who string) *terminal {
		_, env := state(t) // of another person: no journal in common
		s := start(t, 80, 24, []string{env}, "run", "--bounce", "0", name)
		s.see("Who works")
		s.press(who + enter)
		s.see("BENCH RUN")
		return s
	}
	a := open("7")
	a.see("the lot of this reel")
	a.press("R-7" + enter)
	first := wire(a.see("1 of 12"))
	b := open("8")
	b.see("cut "+first, "1 of 12") // not the lot: it is known
	a.press(enter)
	second := wire(a.see("2 of 12"))
	b.see("DONE by 7", "serial 1: 7 ticked: cut "+first)
	b.press(enter + enter)
	third := wire(b.see("3 of 12"))
	a.see("DONE by 8", "8 ticked: cut "+second)
	if err := a.cmd.Process.Kill(); err != nil {
		t.Fatal(err)
	}
	<-a.gone
	b.press(enter)
	b.see(third + " is cut")
	b.press("s")
	b.see("saved to")
	d, err := file.Load(name)
	if err != nil {
		t.Fatal(err)
	}
	var by []string
	for _, s := range d.Harness.Builds[0].Steps {
		by = append(by, s.Key+" "+s.By.V)
	}
	want := fmt.Sprintf("lot AS22759/32 22 7, cut %s 7, cut %s 8, cut %s 8", first, second, third)
	if got := strings.Join(by, ", "); got != want {
		t.Errorf("saved %s, want %s", got, want)
	}
	left, err := os.ReadDir(filepath.Dir(name))
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range left {
		if n := f.Name(); n != "loom.toml" && n != "loom.toml.bak" {
			t.Errorf("%s lies beside the file", n)
		}
	}
}

// A window that is closed ends its program, also where another was opened after it.
func TestClosedWindowEnds(t *testing.T) {
	t.Parallel()
	first := start(t, 80, 24, nil, "run", fileOf(t, "loom.toml", nineteen()))
	first.see("Who works")
	second := start(t, 80, 24, nil, "run", fileOf(t, "loom.toml", nineteen()))
	second.see("Who works")
	first.pty.Close()
	first.ends()
	second.alive()
}

// A log that is not to be read keeps a bench from opening, with its line, and stays as it is.
func TestHostileRunLog(t *testing.T) {
	t.Parallel()
	name := fileOf(t, "loom.toml", nineteen())
	bad := "contralay run log 1 a1 -\n{\"serial\":\"1\",\"is\":{\"laugh\":true}}\n"
	if err := os.WriteFile(name+".run", []byte(bad), 0o644); err != nil {
		t.Fatal(err)
	}
	s := start(t, 80, 24, nil, "run", name)
	if code := s.ends(); code != usage || !strings.Contains(s.sent(), "loom.toml.run, line 2: ") ||
		!strings.Contains(s.sent(), "take the file away") {
		t.Errorf("exit %d: %s", code, s.sent())
	}
}
