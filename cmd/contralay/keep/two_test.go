package keep_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"contralay/cmd/contralay/keep"
	"contralay/model"
	"contralay/model/file"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/board/runs"
	"contralay/ui/bench/desk"
)

// bench opens a bench on a file as the program does, with its own folder for journals.
func bench(t *testing.T, path string) *desk.Model {
	t.Helper()
	state := t.TempDir()
	now := func() time.Time { return time.Date(2026, 5, 11, 16, 40, 0, 0, time.UTC) }
	env := func(key string) string { return map[string]string{"XDG_STATE_HOME": state}[key] }
	k := keep.Open(path, env, now)
	t.Cleanup(k.Close)
	d, err := file.Load(path)
	if err != nil {
		t.Fatal(err)
	}
	if err := k.Share(d); err != nil {
		t.Fatal(err)
	}
	c := benchtest.Config(t, "example.toml")
	c.Doc, c.Path, c.Now = d, path, now
	c.Keep, c.Save, c.Changed, c.Look, c.Brought, c.Barred = k.Keep, k.Save, k.Changed, k.Look, k.Brought, k.Barred
	return benchtest.OpenWith(t, "example.toml", c)
}

// look is what happens some times a second: what others did is looked for and taken.
func look(m *desk.Model) {
	if m.Cfg.Look() {
		desk.Brought(m)
	}
}

func example(t *testing.T) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "loom.toml")
	text, err := os.ReadFile(benchtest.Path(t, "testdata/example.toml"))
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, text, 0o644); err != nil {
		t.Fatal(err)
	}
	return path
}

// works opens the run and says who works.
func works(m *desk.Model, who string) {
	runs.Run(m, "1")
	benchtest.Press(m, who, "enter")
}

func record(m *desk.Model) *model.Build { return &m.H.Builds[m.H.BuildOf("1")] }

func nameOf(b *model.Build, key string) string {
	if t := b.TickOf(key); t != nil {
		return t.By.V
	}
	return ""
}

// Two build one serial from one file. What one ticks stands on the other's screen, nothing moves there
// that he has in hand; a step that both tick has the first name; what is taken back is taken back on
// both, with its reason; undo at one bench leaves alone what the other did; both save.
func TestTwoOnOneSerial(t *testing.T) {
	path := example(t)
	a := bench(t, path)
	works(a, "7")
	benchtest.Press(a, "R", "1", "enter") // the lot of the first reel
	b := bench(t, path)
	works(b, "8")
	if nameOf(record(b), record(a).Steps[0].Key) != "7" {
		t.Fatalf("the second begins at %+v", record(b).Steps)
	}
	title := func(m *desk.Model) string { return strings.Split(benchtest.View(m), "\n")[3] }
	if title(a) != title(b) || !strings.Contains(title(a), "cut") {
		t.Fatalf("one is at %q, the other at %q", title(a), title(b))
	}
	benchtest.Press(a, "enter")
	first := record(a).Steps[1].Key
	was := title(b)
	look(b)
	if nameOf(record(b), first) != "7" || !strings.Contains(b.Says, "serial 1: 7 ticked: "+first) {
		t.Errorf("%+v; it says %q", record(b).Steps, b.Says)
	}
	if now := title(b); !strings.HasPrefix(now, strings.TrimRight(was, " │")) || !strings.Contains(now, "DONE by 7") {
		t.Errorf("the screen was\n%s\nand is\n%s", was, now)
	}
	// both do the next one before either looks
	look(a)
	benchtest.Press(b, "enter") // on from what is done
	benchtest.Press(b, "enter")
	benchtest.Press(a, "enter")
	second := record(b).Steps[2].Key
	if nameOf(record(a), second) != "7" || nameOf(record(b), second) != "8" {
		t.Fatalf("%+v\n%+v", record(a).Steps, record(b).Steps)
	}
	look(a)
	look(b)
	for _, m := range []*desk.Model{a, b} {
		n := 0
		for _, s := range record(m).Steps {
			if s.Key == second {
				n++
			}
		}
		if n != 1 || nameOf(record(m), second) != "8" {
			t.Errorf("%d times, by %s", n, nameOf(record(m), second))
		}
	}
	// taken back with a reason
	benchtest.Press(a, "backspace")
	benchtest.GoTo(t, a, "@take it back", "enter")
	benchtest.GoTo(t, a, "@damaged", "enter")
	look(b)
	undone := false
	for _, s := range record(b).Steps {
		undone = undone || s.Undone.V == "damaged"
	}
	if !undone || !strings.Contains(b.Says, "took back") || !strings.Contains(b.Says, "damaged") {
		t.Errorf("%+v; it says %q", record(b).Steps, b.Says)
	}
	// undo outside the run takes one's own back alone
	benchtest.Press(b, "enter")
	own := record(b).Steps[len(record(b).Steps)-1].Key
	look(a)
	benchtest.Press(a, "enter")
	look(b)
	others := record(a).Steps[len(record(a).Steps)-1].Key
	if own == others || nameOf(record(b), others) != "7" {
		t.Fatalf("own %s, the other's %s", own, others)
	}
	b.Undo()
	look(a)
	for _, m := range []*desk.Model{a, b} {
		if record(m).Did(own) || nameOf(record(m), others) != "7" {
			t.Errorf("after undo: %+v", record(m).Keys())
		}
	}
	// both save, and neither is asked
	for _, m := range []*desk.Model{a, b, a} {
		look(m)
		if m.Save(); m.Trouble || m.Dirty() || m.Top() == desk.KindFileChanged {
			t.Errorf("%s, %s, dirty %v", m.Top(), m.Says, m.Dirty())
		}
	}
	look(b)
	if b.Dirty() {
		t.Error("the second is not saved, though the first saved all there is")
	}
	d, err := file.Load(path)
	if err != nil {
		t.Fatal(err)
	}
	if got := d.Harness.Builds[0].Keys(); strings.Join(got, "|") != strings.Join(record(a).Keys(), "|") || len(got) < 3 {
		t.Errorf("saved %q", got)
	}
}

// Where the log cannot be written, who comes second only looks, and is told why.
func TestSecondOnlyLooks(t *testing.T) {
	path := example(t)
	a := bench(t, path)
	works(a, "7")
	b := bench(t, path)
	works(b, "8")
	b.Cfg.Barred = func() string { return "nothing can be ticked here: another bench builds from this file" }
	benchtest.Press(b, "R", "1", "enter")
	if !b.Trouble || !strings.Contains(b.Says, "nothing can be ticked here") || len(record(b).Steps) != 0 {
		t.Errorf("%q, %+v", b.Says, record(b).Steps)
	}
	benchtest.Press(a, "R", "1", "enter")
	look(b)
	if len(record(b).Steps) != 1 {
		t.Errorf("it does not see what is ticked: %+v", record(b).Steps)
	}
}

// Whoever leaves without saving takes back what he did, where nobody else builds; what was cut off is
// there at the next start, once.
func TestCutOffAndLeft(t *testing.T) {
	path := example(t)
	a := bench(t, path)
	works(a, "7")
	benchtest.Press(a, "R", "1", "enter", "enter")
	keys := strings.Join(record(a).Keys(), "|")
	b := bench(t, path) // as after a kill: another folder of journals, the log alone
	if got := strings.Join(record(b).Keys(), "|"); got != keys || len(record(b).Lots) != 1 {
		t.Errorf("%q, was %q", got, keys)
	}
	if !b.Dirty() {
		t.Error("it counts as saved")
	}
}
