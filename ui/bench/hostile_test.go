package bench_test

import (
	"errors"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/file"
	"contralay/model/shorttest"
	"contralay/model/visible"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/draw"
)

// ofFile is a colour that no palette of the bench has: where it stands on a screen, a text of a
// file or of a name has painted it.
const ofFile = "\x1b[35;47;5m"

// commanding is text that a screen must not pass on.
const commanding = ofFile + "X\x1b[2J\x1b]52;c;QUJD\x07\x9b2J\u009b3J\u202e\u200b\n\r\x00\x7f\u2028"

// pastes are what a terminal may paste into a field.
var pastes = []string{commanding, "P1:A\x1b", "12\u200b.5", "\u202e", "\x1b[2J", "a\u200d", "\r\n", "Größe é Ω 線",
	strings.Repeat("\x1b]0;x\x07", 100)}

// hostileBench is a bench at a screen, where every note, name of a file, error and list that it is
// given commands the terminal.
func hostileBench(t *testing.T, screen string) *desk.Model {
	t.Helper()
	m := benchtest.OpenAt(t, "example.toml", screen)
	h := *m.H
	h.Head.Note = model.Some(commanding)
	h.Wires = slices.Clone(h.Wires)
	for k := range h.Wires {
		h.Wires[k].Note = model.Some(commanding)
	}
	h.Builds = slices.Clone(h.Builds)
	for k := range h.Builds {
		h.Builds[k].Note = model.Some(commanding)
	}
	m.H = &h
	m.Rebuild()
	no := errors.New("no " + commanding)
	m.File.Path = "/job/" + commanding + ".toml"
	m.Cfg.Path, m.Cfg.Folder, m.Cfg.Notice = m.File.Path, "/job/"+commanding, commanding
	m.Cfg.List = func(string) ([]kit.Entry, error) {
		return []kit.Entry{{Name: commanding + ".csv", Bytes: 40}, {Name: commanding, Folder: true}, {Name: "a.csv"}}, nil
	}
	m.Cfg.ListBytes = func(path string) ([]byte, error) {
		if strings.HasSuffix(path, "a.csv") {
			return nil, no
		}
		return []byte("Wire,From,To,Signal\n7,P7:A,P8:A," + strings.ReplaceAll(commanding, "\x00", "") + "\n8,P7:B,P8:B,B\n"), nil
	}
	m.Cfg.Save = func(string, file.Document) error { return no }
	m.Cfg.WriteNew = func(string, []byte) error { return no }
	m.Cfg.Print = func(string, *sheet.Sheet, bool) (string, error) { return commanding, nil }
	m.Cfg.Keep = func(file.Document, bool) error { return no }
	m.Cfg.Exists = func(string) bool { return true }
	m.Cfg.Changed = func(path string) bool { return len(path)%2 == 0 }
	return m
}

// Random keys and pastes from every screen of a bench to which everything it is given is hostile:
// nothing of it commands the terminal, no line grows, and nothing gets into the harness that its
// file would refuse.
func TestNothingCommandsTheTerminal(t *testing.T) {
	screens := benchtest.Screens()
	each := monkeyKeys / len(screens)
	if !shorttest.Long() {
		each /= 30
	}
	benchtest.EachOrSome(t, func(t *testing.T, screen string) {
		rng := rand.New(rand.NewPCG(uint64(slices.Index(screens, screen)), 1919))
		for left := each; left > 0; {
			m := hostileBench(t, screen)
			m.Cfg.ASCII = rng.IntN(4) == 0
			m.Theme = kit.NewTheme(m.Cfg.Palette, m.Cfg.ASCII)
			for k := range m.Page(m.ListWidth()).Rows { // every row once in hand
				m.Put(k, "")
				passesOnNothing(t, m, "nothing")
			}
			for ; left > 0 && !m.Quit; left-- {
				k := benchtest.EveryKey[rng.IntN(len(benchtest.EveryKey))]
				msg := benchtest.Message(k)
				if m.Entry != nil && rng.IntN(3) == 0 {
					msg = tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(pastes[rng.IntN(len(pastes))]), Paste: rng.IntN(2) == 0}
				}
				if cmd := benchtest.Update(m, msg); cmd != nil {
					m.Pending = map[string]bool{}
				}
				if m.Quit {
					break
				}
				passesOnNothing(t, m, k)
			}
			if _, err := file.Parse(file.Encode(m.Doc()), "saved.toml"); err != nil {
				t.Fatalf("what was typed makes a file that does not load: %v", err)
			}
		}
	})
}

// passesOnNothing holds that no line of the screen commands the terminal or grows.
func passesOnNothing(t *testing.T, m *desk.Model, k string) {
	t.Helper()
	for _, line := range strings.Split(benchtest.View(m), "\n") {
		if draw.Safe(line) != line || strings.Contains(line, ofFile) {
			t.Fatalf("after %q on %s a line commands the terminal: %q", k, m.Title(), line)
		}
		if draw.Width(line) > m.W {
			t.Fatalf("after %q a line of %d cells on a screen of %d: %q", k, draw.Width(line), m.W, line)
		}
	}
}

// A path that commands the terminal is the same file when it is saved: the field that asks for a
// name shows it with signs and leaves it as it is.
func TestSavesUnderTheNameItHas(t *testing.T) {
	m := hostileBench(t, "wires")
	path, saved := m.File.Path, ""
	m.Cfg.Changed, m.Cfg.Exists = func(string) bool { return false }, nil
	m.Cfg.Save = func(path string, d file.Document) error { saved = path; return nil }
	m.OpenField(m.NameField(), "")
	if _, found := visible.Find(m.Entry.Draft()); found {
		t.Errorf("the draft commands: %q", m.Entry.Draft())
	}
	benchtest.Update(m, benchtest.Message("enter"))
	if saved != path {
		t.Errorf("saved to %q, want %q", saved, path)
	}
}
