package main

import (
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"contralay/calc"
	runquery "contralay/calc/query/run"
	"contralay/model/catalogue"
	"contralay/model/file"
)

// The demonstration is built through the terminal by one who knows the work, with + for all that goes
// together, and inspected by another. A diameter deviates and is decided on, a net fails and is mended,
// the window is closed at a random step. It takes at most 260 keys beside those.
func TestDemonstrationBySkilled(t *testing.T) {
	if testing.Short() {
		t.Skip("some 200 screens")
	}
	t.Parallel()
	_, env := state(t)
	name := filepath.Join(t.TempDir(), "demo.toml")
	if err := os.WriteFile(name, demonstration, 0o644); err != nil {
		t.Fatal(err)
	}
	open := func() *terminal {
		s := start(t, 80, 24, []string{env}, "run", "--bounce", "0", name)
		if strings.Contains(s.see("Esc goes back"), "Unsaved work") {
			s.press(enter)
		}
		s.see("Who works")
		s.press("7" + enter)
		s.see("BENCH RUN", "all steps")
		return s
	}
	s := open()
	keys, read, failed := 2, false, false
	cut := 20 + rand.IntN(120)
	for n := 0; !strings.Contains(s.text(), "holds signed,"); n++ {
		if n > 300 {
			t.Fatalf("it has no end:\n%s", s.text())
		}
		screen := s.text()
		if n == cut {
			s.pty.Close()
			s.ends()
			s = open()
			if now := s.text(); titleOf.FindString(now) != titleOf.FindString(screen) {
				t.Fatalf("goes on at\n%s\nwas at\n%s", now, screen)
			}
			screen = s.text()
		}
		press := "+"
		switch {
		case strings.Contains(screen, "the lot of this reel"):
			press = "R-7" + enter
		case strings.Contains(screen, "type the reading") && strings.Contains(screen, "Mohm"):
			press = "550" + enter
		case strings.Contains(screen, "type the reading"):
			press = ".1" + enter
		case strings.Contains(screen, "what it weighs, g"):
			s.press("251.5" + enter)
			s.see("it weighs 251.5 g")
			press = enter
		case strings.Contains(screen, "sign to continue"):
			press = "14" + enter
		case strings.Contains(screen, "T1 layer 1") && !read: // a diameter that nothing explains
			read = true
			s.press("8.4" + enter)
			s.see("Read 8.40 mm")
			s.press("+")
			s.see("look first")
		case strings.Contains(screen, "must ring to") && !failed:
			failed = true
			s.toRow("it does not ring")
			s.press(enter)
			s.see("OUT OF LIMITS: does not ring")
			press = enter // it is mended
		}
		keys += len(press)
		title := titleOf.FindString(s.text())
		s.press(press)
		s.until("what comes after "+title, func(now string) bool { return titleOf.FindString(now) != title })
	}
	if keys > 260 {
		t.Errorf("%d keys", keys)
	}
	s.see("1 reading is out of limits, and nobody has decided")
	s.toRow("out of limits: T1 layer 1")
	s.changed(enter)
	s.toRow("built differently")
	s.press(enter + "tape under it" + enter)
	s.see("differs at T1 layer 1")
	s.toRow("differs at T1 layer 1")
	s.press("4" + enter)
	s.see("decided by 4")
	s.changed(esc) // and back to the end, by the serial
	s.toRow("bench run of serial")
	s.press("1" + enter)
	s.see("every step is done")
	s.press(enter)
	s.see("saved to")
	d, err := file.Load(name)
	if err != nil {
		t.Fatal(err)
	}
	cat, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	b := &d.Harness.Builds[0]
	for _, step := range runquery.For(calc.Build(&d.Harness, cat, nil), b) {
		if !step.In(b) {
			t.Errorf("%s is not done", step.Key)
		}
	}
	for _, g := range b.Signed {
		if g.By != "14" {
			t.Errorf("signed %+v", g)
		}
	}
	for _, step := range b.Steps {
		if by := step.By.V; by != "7" && !strings.HasPrefix(step.Key, "hold ") || step.At.V == "" || step.Undone.Set {
			t.Errorf("%+v", step)
		}
	}
	if b.MassG.V != 251.5 {
		t.Errorf("it weighs %v", b.MassG)
	}
	faults := 0
	for _, test := range b.Tests {
		if test.Fault.Set {
			faults++
		}
	}
	if faults != 1 || len(b.Signed) != 4 || len(b.Apart) != 1 || b.Apart[0].By.V != "4" || len(b.Lots) != 3 {
		t.Errorf("%d faults, %+v, %+v, %+v", faults, b.Signed, b.Apart, b.Lots)
	}
	t.Log(keys, "keys")
}
