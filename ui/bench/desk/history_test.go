package desk_test

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"contralay/model/file"
	"contralay/ui/bench"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/draw"
)

// Random keys, then undo to the start: the harness is what it was, and nothing
// was written but by saving.
func TestUndoReachesTheStart(t *testing.T) {
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
