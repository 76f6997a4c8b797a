package runs_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc/query/run"
	"contralay/model"
	"contralay/model/shorttest"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/board/runs"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// On every screen for cutting, laying and pinning the number of the wire stands three rows high, and
// its colour and the row in hand stand there too, on a high screen and on the lowest.
func TestNumberIsLarge(t *testing.T) {
	shorttest.Turn(t)
	for _, c := range []struct {
		name            string
		plain           []bool // in ASCII or not
		cuts, lays, ins int    // at least so many to look at, each in two sizes
	}{{"demo.toml", []bool{false, true}, 4 * 60, 4 * 150, 4 * 100}, {"whole.toml", []bool{false}, 2 * 120, 2 * 500, 2 * 200}} {
		if c.name == "whole.toml" && !shorttest.Long() {
			continue // the large one in the long form
		}
		m := runOf(t, c.name, run.CutStep)
		kinds := map[run.StepKind]int{}
		for _, ascii := range c.plain {
			m.ShownOn(m.Cfg.Palette, ascii)
			for _, size := range [][2]int{{80, 24}, {40, 12}} {
				benchtest.Size(m, size[0], size[1])
				for at, s := range runs.RunSteps(m) {
					for k, p := range runs.Pieces(m, at) {
						if kinds[s.Kind]++; !shorttest.Long() && kinds[s.Kind]%3 != 0 {
							continue // every third of a kind
						}
						isLarge(t, m, at, k, s, p, ascii)
					}
				}
			}
		}
		if kinds[run.CutStep] < c.cuts || kinds[run.LayStep] < c.lays || kinds[run.PinStep] < c.ins {
			t.Errorf("%s: looked at %v", c.name, kinds)
		}
	}
}

// isLarge holds one piece on its screen: its number large, its colour, and the row that Enter takes.
func isLarge(t *testing.T, m *desk.Model, at, k int, s run.RunStep, p run.Piece, ascii bool) {
	t.Helper()
	w, is := m.Sheet.Index.Wire[p.ID]
	if !is || p.Check.Kind > run.Rings {
		return // a unit, a filler, a plug; a reading
	}
	runs.Stand(m, at, k)
	screen := benchtest.View(m)
	large := func(text string) bool {
		return stacked(screen, words.Tall(text, 80, ascii)) || stacked(screen, words.Letters(text, 80, ascii))
	}
	if !large(p.ID) {
		t.Fatalf("%s, %s: it is not large:\n%s", s.Key, p.Key, screen)
	}
	colour := model.ColourWords(m.H.Wires[w].Colour.V)
	if !strings.Contains(strings.ToLower(screen), colour) && !large(colour) {
		t.Fatalf("%s: no %s:\n%s", s.Key, colour, screen)
	}
	if text := m.Page(m.ListWidth()).Rows[0].Line(); !strings.Contains(screen, text) {
		t.Fatalf("%s: Enter's row is not on the screen:\n%s", s.Key, screen)
	}
}

// stacked reports whether lines stand on a screen one below the other.
func stacked(screen string, want []string) bool {
	lines := strings.Split(screen, "\n")
	for k := range lines {
		at := 0
		for at < len(want) && k+at < len(lines) && strings.Contains(lines[k+at], want[at]) {
			at++
		}
		if len(want) > 0 && at == len(want) {
			return true
		}
	}
	return false
}

// + does what goes together and says so: the wires off one spool, one layer, one connector, what
// belongs to one end. It ticks no hold and nothing beyond one.
func TestGroupsOfTheSkilled(t *testing.T) {
	name, most := "example.toml", 0
	if shorttest.Long() { // a key rebuilds the sheet, and the demonstration takes hundreds
		name, most = "demo.toml", 260
	}
	m := runOf(t, name, run.CutStep)
	if most == 0 { // fewer than there are pieces, or + does nothing together
		for at := range runs.RunSteps(m) {
			most += len(runs.Pieces(m, at))
		}
	}
	keys := 0
	for n := 0; runs.At(m) < len(runs.RunSteps(m)); n++ {
		if n > 400 {
			t.Fatalf("it has no end:\n%s", benchtest.View(m))
		}
		steps, before, tests, at := runs.RunSteps(m), runs.Build(m).Keys(), len(runs.Build(m).Tests), runs.At(m)
		all := skilled(m)
		keys += len(all)
		if all[0] != "+" {
			was := m.H
			if benchtest.Press(m, "+"); m.H != was || runs.At(m) != at {
				t.Fatalf("+ went past %s: %s", steps[at].Key, m.Says)
			}
			benchtest.Press(m, all...)
			continue
		}
		benchtest.Press(m, "+")
		var groups []string
		add := func(group string) {
			if !slices.Contains(groups, group) {
				groups = append(groups, group)
			}
		}
		for _, key := range runs.Build(m).Keys() {
			if !slices.Contains(before, key) {
				add(groupOf(t, m, steps, key))
			}
		}
		for _, test := range runs.Build(m).Tests[tests:] {
			end, _, _ := strings.Cut(test.Net.V, ":")
			if !strings.HasPrefix(test.Step.V, "pull ") { // its step is counted already
				add(test.Step.V + end)
			}
			if test.Ohm.Set || test.Megohm.Set || test.Newton.Set {
				t.Fatalf("+ made up a reading: %+v", test)
			}
		}
		if len(groups) != 1 || !strings.HasPrefix(m.Says, "ticked: ") {
			t.Fatalf("%s ticked %q: %s", steps[at].Key, groups, m.Says)
		}
	}
	t.Log(keys, "keys for", len(runs.RunSteps(m)), "steps")
	if keys > most {
		t.Errorf("%d keys, want at most %d", keys, most)
	}
	if open := runs.OpenPoints(m); strings.Contains(strings.Join(open, "\n"), "not done") {
		t.Error(open)
	}
}

// groupOf is what a step belongs to, told from the harness and from the step's own words.
func groupOf(t *testing.T, m *desk.Model, steps []run.RunStep, key string) string {
	t.Helper()
	if id, is := strings.CutPrefix(key, "cut "); is {
		w := &m.H.Wires[m.Sheet.Index.Wire[id]]
		return fmt.Sprint("spool ", w.Spec, w.Size, w.Colour.V)
	}
	for _, s := range steps {
		if s.Key == key && (s.Kind == run.ThreadStep || s.Kind == run.ShrinkStep) {
			return fmt.Sprint(s.Kind, s.Put.From)
		}
		if s.Key == key && s.Kind == run.HoldStep {
			t.Fatalf("a hold was ticked: %s", key)
		}
	}
	return key
}

// Nothing is done beyond a hold that is not signed, from whichever step it is jumped to, by no key; what is
// done already is looked at as ever. Once it is signed the same keys do it.
func TestNothingGoesPastAHold(t *testing.T) {
	m := runOf(t, "example.toml", run.LayStep)
	tried := map[run.StepKind]int{}
	begun, behind := runs.At(m), false
	for at, s := range runs.RunSteps(m) {
		for k := 0; behind && k <= len(runs.Pieces(m, at)); k++ {
			for _, keys := range [][]string{{"enter"}, {"+"}, {"1", "enter"}} {
				runs.Stand(m, at, k)
				was := m.H
				benchtest.Press(m, keys...)
				if m.Entry != nil {
					benchtest.Press(m, "esc")
				}
				b := runs.Build(m)
				if m.H != was && (len(b.Tests) > 0 || s.In(b) || len(b.SoFar(s.Key)) > 0 || len(b.Signed) > 0) {
					t.Fatalf("%q did %s, piece %d: %s", keys, s.Key, k, m.Says)
				}
				tried[s.Kind]++
			}
		}
		behind = behind || s.Kind == run.HoldStep
	}
	for _, kind := range []run.StepKind{run.ThreadStep, run.PinStep, run.HoldStep, run.ShrinkStep, run.PullStep, run.WeighStep} {
		if tried[kind] == 0 {
			t.Errorf("no step of kind %d was tried", kind)
		}
	}
	runs.Stand(m, begun, 0)
	toSign(t, m)
	benchtest.Press(m, "7", "enter")
	n := len(runs.Build(m).Steps)
	if benchtest.Press(m, "enter"); len(runs.Build(m).Steps) != n+1 {
		t.Errorf("after it was signed: %s", m.Says)
	}
}

// What is on a layer stays on it when the run is left in its middle: it goes on at the piece that was
// in hand. Nothing is ticked before the last is on and the layer was measured or gone past.
func TestLeftInTheMiddleOfALayer(t *testing.T) {
	m := runOf(t, "example.toml", run.LayStep)
	goOn(t, m, func() bool { return len(runs.Pieces(m, runs.At(m))) > 5 })
	at, s := runs.At(m), runs.RunSteps(m)[runs.At(m)]
	all := runs.Pieces(m, at)
	benchtest.Press(m, "enter", "enter", "enter")
	if b := runs.Build(m); b.Did(s.Key) || !slices.Equal(b.SoFar(s.Key), []string{all[0].Key, all[1].Key, all[2].Key}) {
		t.Fatalf("%v of %v", b.SoFar(s.Key), all)
	}
	text := written(t, m)
	if !strings.Contains(text, "so_far = [") {
		t.Errorf("the file does not say how far it is:\n%s", text)
	}
	n := benchtest.Typed(t, text) // another bench on that file
	begin(n, "")
	if runs.At(n) != at || runs.Piece(n) != 3 {
		t.Fatalf("goes on at step %d, piece %d:\n%s", runs.At(n), runs.Piece(n), benchtest.View(n))
	}
	benchtest.Press(n, "backspace") // a look back, and on again: nothing is taken off, nothing twice
	benchtest.Press(n, "enter")
	benchtest.GoTo(t, n, "backspace", "@take it back", "enter", "enter")
	if got := runs.Build(n).SoFar(s.Key); !slices.Equal(got, []string{all[0].Key, all[1].Key}) {
		t.Errorf("one taken back: %v", got)
	}
	for range len(all) - 2 {
		benchtest.Press(n, "enter")
	}
	if b := runs.Build(n); b.Did(s.Key) || runs.At(n) != at || !strings.Contains(benchtest.View(n), "Measure it") {
		t.Errorf("ticked before it was measured:\n%s", benchtest.View(n))
	}
	benchtest.Press(n, "enter")
	b := runs.Build(n)
	if tick := b.TickOf(s.Key); !b.Did(s.Key) || len(tick.SoFar) != 0 || len(tick.What.V.Members) == 0 || runs.At(n) != at+1 {
		t.Errorf("%+v, at %d", tick, runs.At(n))
	}
}

// A layer that is changed while it is begun is not gone on with in silence: the run says what
// differs, and doing it again takes off what is on.
func TestLayerChangedWhileBegun(t *testing.T) {
	m := runOf(t, "example.toml", run.LayStep)
	goOn(t, m, func() bool { return len(runs.Pieces(m, runs.At(m))) > 5 })
	s := runs.RunSteps(m)[runs.At(m)]
	benchtest.Press(m, "enter", "enter")
	m.Back()
	i := m.Sheet.Index.Branch[s.Of]
	m.Change(m.H.EditBranch(i, func(b *model.Branch) { b.Layers[s.Layer].Fillers = model.Some(b.Layers[s.Layer].Fillers.V + 1) }), "")
	begin(m, "")
	if screen := benchtest.View(m); m.Top() != runs.SinceKind || !strings.Contains(screen, "1 step to do again") {
		t.Fatalf("nothing is said:\n%s", screen)
	}
	benchtest.GoTo(t, m, "@T1 layer", "enter", "@do it again", "enter")
	if got := runs.Build(m).SoFar(s.Key); len(got) != 0 || m.Top() != runs.RunKind || runs.RunSteps(m)[runs.At(m)].Key != s.Key {
		t.Errorf("on %v:\n%s", got, benchtest.View(m))
	}
}
