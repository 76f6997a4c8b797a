package board_test

import (
	"errors"
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/board"
)

// P at the step Build writes the sheet of what is on the bench, whole, and says whether it
// is in a file; elsewhere it does nothing, and what fails is said.
func TestPrint(t *testing.T) {
	m := benchtest.Open(t, "demo.toml")
	m.File.Path = "loom.toml"
	var path string
	var unsaved bool
	n, fail := 0, error(nil)
	m.Cfg.Print = func(p string, s *sheet.Sheet, u bool) (string, error) {
		for i := range s.Branches {
			if s.Branches[i].Waiting {
				t.Errorf("%s is not laid yet", s.H.Branches[i].ID)
			}
		}
		path, unsaved, n = p, u, n+1
		return "loom-sheet/x.html", fail
	}
	benchtest.Press(m, "p")
	if n != 0 {
		t.Fatal("printed at the first step")
	}
	m.Step = board.Step
	benchtest.Press(m, "p")
	if n != 1 || path != "loom.toml" || unsaved || !strings.Contains(m.Says, "loom-sheet/x.html") {
		t.Errorf("%d, %q, unsaved %v: %s", n, path, unsaved, m.Says)
	}
	m.Change(m.H.EditWire(0, func(w *model.Wire) { w.Note = model.Some("x") }), "")
	benchtest.Press(m, "p")
	if !unsaved || !strings.Contains(m.Says, "PRINTED FROM UNSAVED CHANGES") {
		t.Errorf("unsaved %v: %s", unsaved, m.Says)
	}
	fail = errors.New("the disk is full")
	benchtest.Press(m, "p")
	if !m.Trouble || !strings.Contains(m.Says, "the disk is full") {
		t.Errorf("%s", m.Says)
	}
}

// A revision is raised by its letter or its number; what is neither is typed.
func TestRaised(t *testing.T) {
	for was, want := range map[string]string{"": "A", "A": "B", "Z": "AA", "AA": "AB", "1": "2", "9": "10", "C2": "C3", "draft!": ""} {
		if got := board.Raised(was); got != want {
			t.Errorf("after %q: %q, want %q", was, got, want)
		}
	}
	m := benchtest.Open(t, "demo.toml")
	board.RevisionRow(m).Step(m, 1)
	if m.H.Head.Revision.V != "D" {
		t.Errorf("revision %q", m.H.Head.Revision.V)
	}
	benchtest.Press(m, "backspace")
	if m.H.Head.Revision.V != "C" {
		t.Errorf("undone: %q", m.H.Head.Revision.V)
	}
}
