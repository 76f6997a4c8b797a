package desk_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"contralay/model/file"
	"contralay/model/shorttest"
	"contralay/ui/bench"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/draw"
)

// Random keys, then undo to the start: the harness is what it was, and nothing
// was written but by saving.
func TestUndoReachesTheStart(t *testing.T) {
	shorttest.Turn(t)
	d := benchtest.Load(t, "example.toml")
	cat := benchtest.Catalogue(t)
	start := file.Encode(d)
	rapid.Check(t, func(t *rapid.T) {
		m := benchtest.Ready(bench.New(desk.Config{Doc: d, Path: "example.toml", Cat: cat, Palette: draw.Palette{}}))
		keys := rapid.SliceOfN(rapid.SampledFrom(benchtest.EveryKey), 1, 120).Draw(t, "keys")
		for _, k := range keys {
			if m.Quit {
				break
			}
			benchtest.Press(m, k)
			if got := len(strings.Split(benchtest.View(m), "\n")); got != m.Height && !m.Quit {
				t.Fatalf("after %q the screen has %d lines", k, got)
			}
		}
		m.Entry, m.Quit = nil, false
		for m.History.Steps() > 0 {
			m.Undo()
		}
		if string(file.Encode(m.Doc())) != string(start) {
			t.Fatalf("undo does not reach the start after %q", keys)
		}
	})
}

// A burst of undo keys works the sheet out twice, at its first key and for what is looked at, and
// comes to what the keys come to one by one; whatever key comes next finds it done.
func TestUndoInABurst(t *testing.T) {
	d, cat := benchtest.Load(t, "example.toml"), benchtest.Catalogue(t)
	start := file.Encode(d)
	for name, next := range map[string]func(m *desk.Model){
		"a look":          func(m *desk.Model) { benchtest.View(m) },
		"a key":           func(m *desk.Model) { benchtest.Update(m, benchtest.Message("right")) },
		"a new size":      func(m *desk.Model) { benchtest.Size(m, 100, 30) },
		"its own message": func(m *desk.Model) { benchtest.Update(m, desk.CaughtUp{}) },
	} {
		kept := 0
		m := benchtest.Ready(bench.New(desk.Config{Doc: d, Path: "example.toml", Cat: cat, Palette: draw.Palette{},
			Now:  func() time.Time { return time.Unix(1000, 0) },
			Keep: func(d file.Document, dirty bool) error { kept++; return nil }}))
		const edits = 40
		for k := range edits {
			benchtest.Press(m, fmt.Sprint(2+k%2), "enter")
		}
		if m.History.Steps() != edits {
			t.Fatalf("%d steps", m.History.Steps())
		}
		kept = 0
		for range edits {
			benchtest.Update(m, benchtest.Message("backspace"))
		}
		if kept != 1 || !desk.Behind(m) {
			t.Errorf("%s: the sheet was worked out %d times before it, behind %v", name, kept, desk.Behind(m))
		}
		next(m)
		if kept != 2 || desk.Behind(m) || m.Sheet.H != m.H {
			t.Errorf("%s: the sheet was worked out %d times; behind %v", name, kept, desk.Behind(m))
		}
		if m.History.Steps() != 0 || string(file.Encode(m.Doc())) != string(start) {
			t.Errorf("%s: %d steps are left, or undo does not reach the start", name, m.History.Steps())
		}
		if says := benchtest.View(m); name == "a look" && !strings.Contains(says, "undone; 0 more: wire 101: amps is") {
			t.Errorf("%s: it says\n%s", name, says)
		}
	}
}
