package main

import (
	"os"
	"strings"
	"testing"

	"contralay/model/file"
	"contralay/model/shorttest"
)

// dirty opens a copy of the example and types a current, so that there is work to
// lose.
func dirty(t *testing.T, env ...string) (s *terminal, name string) {
	t.Helper()
	name = copyOfExample(t)
	s = start(t, 100, 30, env, name)
	s.see("WIRES")
	s.press("3.5" + enter)
	s.see("not saved", "3.5 A")
	return s, name
}

// amps is the current of the first wire of a file.
func amps(t *testing.T, name string) float64 {
	t.Helper()
	d, err := file.Load(name)
	if err != nil {
		t.Fatal(err)
	}
	return float64(d.Harness.Wires[0].Amps.V)
}

// A calliper or a scanner sends digits and Enter in one burst.
func TestBurst(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	var screens, files []string
	for _, keys := range [][]string{{"12.5" + enter}, {"1", "2", ".", "5", enter}, {"12", ".5", enter}} {
		name := copyOfExample(t)
		s := start(t, 100, 30, nil, name)
		s.see("WIRES")
		for _, k := range keys {
			s.changed(k)
		}
		_, words := hand(s.see("not saved", "12.5"))
		screens = append(screens, words)
		s.press("s")
		s.until("the save", func(screen string) bool { return !strings.Contains(screen, "not saved") })
		s.press("q")
		s.ends()
		files = append(files, readFile(t, name))
		if got := amps(t, name); got != 12.5 {
			t.Errorf("keys %q: wire 101 carries %v A", keys, got)
		}
	}
	for k := range screens {
		if screens[k] != screens[0] || files[k] != files[0] {
			t.Errorf("way %d of typing gives another result: %q, first %q", k, screens[k], screens[0])
		}
	}
}

// Two hundred rows down in one write, as a held key or a fallen tool sends them.
func TestFlood(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	s := start(t, 100, 30, nil, copyOfExample(t))
	s.see("WIRES")
	s.press(strings.Repeat(down, 200) + strings.Repeat(up, 200) + strings.Repeat("jjxx", 40))
	s.until("the first row in hand", func(screen string) bool {
		_, words := hand(screen)
		return strings.Contains(words, "nearest its limit")
	})
	s.alive()
	s.press("q") // still saved: nothing of the flood changed anything
	s.ends()
}

func TestPasteOutsideField(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	name := copyOfExample(t)
	s := start(t, 100, 30, nil, name)
	s.see("WIRES")
	for _, step := range steps {
		s.see(step)
		before := s.text()
		s.press("\x1b[200~q s 9.5\r+-.\r\x1b[201~")
		after := s.until("an answer to the paste", func(screen string) bool { return screen != before })
		if strings.Contains(after, "not saved") || !strings.Contains(after, step) {
			t.Errorf("%s: a paste outside a field did something:\n%s", step, after)
		}
		s.press(right)
	}
	s.alive()
	if readFile(t, name) != readFile(t, example) {
		t.Error("the file changed")
	}
	s.press("q")
	if code := s.ends(); code != 0 {
		t.Errorf("exit %d", code)
	}
}

// Inside a field a paste is what it says, without what controls a terminal.
func TestPasteInField(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	s := start(t, 100, 30, nil, copyOfExample(t))
	s.see("WIRES")
	s.changed("7")
	s.changed(backspace)
	s.press("\x1b[200~4.2\r\n\x1b[201~")
	s.see("4.2")
	if strings.Contains(s.text(), "not saved") {
		t.Error("a paste took the value by itself: Enter takes it")
	}
	s.press(enter)
	s.see("not saved", "4.2 A")
}

// Confirming with the key that asked would throw work away when a key bounces.
func TestSameKeyNeverDiscards(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	for _, c := range []struct{ name, key string }{{"Ctrl+C", ctrlC}, {"Q", "q"}} {
		t.Run(c.name, func(t *testing.T) {
			s, name := dirty(t)
			s.press(c.key)
			s.see("QUIT")
			for range 5 {
				s.press(c.key)
			}
			s.until("the question, still", func(screen string) bool { return strings.Contains(screen, "QUIT") })
			s.alive()
			s.press(enter) // the safe answer is in hand
			s.see("WIRES", "not saved", "3.5")
			if readFile(t, name) != readFile(t, example) {
				t.Error("the file changed")
			}
			s.press(c.key)
			s.see("QUIT")
			s.toRow("save, then quit")
			s.press(enter)
			if code := s.ends(); code != 0 {
				t.Errorf("exit %d", code)
			}
			if got := amps(t, name); got != 3.5 {
				t.Errorf("the file holds %v A, typed 3.5", got)
			}
			s.restored()
		})
	}
}

func TestDiscard(t *testing.T) {
	t.Parallel()
	s, name := dirty(t)
	s.press("q")
	s.see("QUIT")
	s.toRow("discard")
	s.changed(enter) // Enter alone does not
	s.alive()
	s.press("+")
	if code := s.ends(); code != 0 {
		t.Errorf("exit %d", code)
	}
	if readFile(t, name) != readFile(t, example) {
		t.Error("discarding changed the file")
	}
}

// Without a file the bench shows a demonstration, and nothing is written until it is
// given a name.
func TestDemonstration(t *testing.T) {
	t.Parallel()
	s := start(t, 100, 30, nil)
	s.see("WIRES", "demonstration")
	s.press("q")
	if code := s.ends(); code != 0 {
		t.Errorf("exit %d", code)
	}
	if left := filesIn(t, s.dir); len(left) != 0 {
		t.Errorf("%v were written", left)
	}
}

func filesIn(t *testing.T, dir string) []string {
	t.Helper()
	entries, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, e := range entries {
		names = append(names, e.Name())
	}
	return names
}

// Esc with Enter close behind it arrives in one piece, as Alt with Enter does: it is two keys,
// and so is Esc with an arrow, a letter or another Esc behind it. Arrows of their own and a
// paste stay what they are.
func TestEscThenKey(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	s := start(t, 100, 30, nil, copyOfExample(t))
	s.see("WIRES")
	s.press("h")
	s.see("HELP")
	s.press(esc + enter)
	s.see(" Wire ─", "Esc goes back")
	s.press(esc + right)
	s.see("LAYERS")
	s.press("h")
	s.see("HELP")
	s.press(esc + esc)
	s.see("BRANCHES")
	s.press(esc)
	s.see("MENU")
	s.press(esc + "h")
	s.see("HELP")
	s.press(left + left) // closes the help over the branches, then opens the menu
	s.see("MENU")
}
