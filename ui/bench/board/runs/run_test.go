package runs_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/shorttest"
	"contralay/model/unit"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/board/runs"
	"contralay/ui/bench/desk"
)

// reached holds the harness of a run that has come to the first step of a kind.
var reached = map[string]model.Harness{}

// runOf is a run that has come to the first step of a kind. It is begun and gone on with once; who comes there again
// goes on with what is in the file.
func runOf(t *testing.T, name string, kind run.StepKind) *desk.Model {
	t.Helper()
	c := benchtest.Config(t, name)
	c.Now = func() time.Time { return time.Date(2026, 5, 11, 16, 40, 0, 0, time.UTC) }
	place := fmt.Sprint(name, kind)
	h, known := reached[place]
	if known {
		c.Doc.Harness = h
	}
	m := benchtest.OpenWith(t, name, c)
	begin(m, "")
	goOn(t, m, func() bool {
		steps := runs.RunSteps(m)
		return runs.At(m) < len(steps) && steps[runs.At(m)].Kind == kind
	})
	reached[place] = *m.H
	return m
}

// begin opens the run of a serial; 5 works where that is asked.
func begin(m *desk.Model, serial string) {
	runs.Run(m, serial)
	if m.Top() == runs.WhoKind {
		benchtest.Press(m, "5", "enter")
	}
}

// toSign goes on to where a hold is signed.
func toSign(t *testing.T, m *desk.Model) {
	t.Helper()
	goOn(t, m, func() bool {
		at := runs.At(m)
		return runs.RunSteps(m)[at].Kind == run.HoldStep && runs.Piece(m) == len(runs.Pieces(m, at))
	})
}

// skilled is the keys of one who knows the work, for what is in hand: + where that will do, else the
// least that is asked.
func skilled(m *desk.Model) []string {
	at, steps := runs.At(m), runs.RunSteps(m)
	if at >= len(steps) {
		return nil
	}
	all, k := runs.Pieces(m, at), runs.Piece(m)
	switch s := steps[at]; {
	case s.Kind == run.LotStep:
		return []string{"4", "enter"}
	case s.Kind == run.HoldStep && k >= len(all):
		return []string{"7", "enter"}
	case k < len(all) && all[k].Check.Kind == run.Isolated:
		return []string{"5", "0", "0", "enter"}
	case k < len(all) && all[k].Check.Kind == run.Drops:
		return []string{".", "1", "enter"}
	}
	return []string{"+"}
}

// goOn ticks by the group, and signs holds, until the run is where it is wanted.
func goOn(t *testing.T, m *desk.Model, there func() bool) {
	t.Helper()
	for range 600 {
		if there() {
			return
		}
		for _, key := range skilled(m) {
			benchtest.Press(m, key)
		}
	}
	t.Fatalf("it is never there:\n%s", benchtest.View(m))
}

// A hold is passed by whoever signs, not by Enter, and what is signed carries day and hour.
func TestHoldIsSigned(t *testing.T) {
	m := runOf(t, "example.toml", run.HoldStep)
	at := runs.At(m)
	benchtest.Press(m, "7", "enter") // a reading of the first net, and no signature
	if len(runs.Build(m).Signed) != 0 || runs.At(m) != at {
		t.Fatalf("signed before anything was rung out: %s", m.Says)
	}
	benchtest.Press(m, "enter") // it rings
	toSign(t, m)
	benchtest.Press(m, "enter")
	benchtest.Press(m, "enter")
	if runs.At(m) != at || !m.Trouble {
		t.Fatalf("passed without a name: %s", m.Says)
	}
	benchtest.Press(m, "1")
	benchtest.Press(m, "4")
	benchtest.Press(m, "enter")
	b := runs.Build(m)
	if runs.At(m) != at+1 || len(b.Signed) != 1 || b.Signed[0].By != "14" || b.Signed[0].At.V != "2026-05-11 16:40" {
		t.Errorf("at %d, %+v", runs.At(m), b.Signed)
	}
	// Back, and it is still signed; not done after all takes the signature off.
	benchtest.Press(m, "backspace")
	if !strings.Contains(benchtest.View(m), "signed by 14") {
		t.Errorf("a look back:\n%s", benchtest.View(m))
	}
	benchtest.GoTo(t, m, "@not done after all", "enter", "enter")
	if b := runs.Build(m); len(b.Signed) != 0 || b.Did(run.HoldBare) {
		t.Errorf("%+v", b)
	}
}

// A second one is built under the next serial, and the first keeps what was measured; a
// serial that is typed is gone on with.
func TestSerials(t *testing.T) {
	m := runOf(t, "example.toml", run.LayStep)
	benchtest.Press(m, "5")
	benchtest.Press(m, "enter")
	h := m.H
	m.Back()
	begin(m, "2")
	if len(m.H.Builds) != 2 || m.H.Builds[0].Serial != "1" || len(m.H.Builds[0].Readings) != 1 || runs.At(m) != 0 {
		t.Errorf("%+v, at %d", m.H.Builds, runs.At(m))
	}
	m.Back()
	begin(m, "1")
	if runs.RunSteps(m)[runs.At(m)].Kind != run.LayStep || len(m.H.Builds) != 2 {
		t.Errorf("serial 1 goes on at %d", runs.At(m))
	}
	if len(h.Branches) != len(m.H.Branches) {
		t.Error("a run changed the harness")
	}
}

// A reading may begin with its point; one that cannot be is asked for again, however often Enter
// is pressed, and the end of the run names it until a good one is taken; what is out of tolerance
// is gone on from only when that is asked twice.
func TestReadingsAreSure(t *testing.T) {
	shorttest.Turn(t)
	m := runOf(t, "example.toml", run.LayStep)
	goOn(t, m, func() bool { return runs.RunSteps(m)[runs.At(m)].Layer == 1 })
	s := runs.RunSteps(m)[runs.At(m)]
	l, _ := runs.LayerAt(m, s)
	read := func() []unit.Millimetre {
		if r := runs.Build(m).ReadingOf(s.Of, s.Layer); r != nil {
			return r.OverMM
		}
		return nil
	}
	was := m.H
	for _, keys := range [][]string{{".", "9"}, {"5", "3"}, {"5", "backspace", "-", "5", ".", "4"}, {"5", ".", "4", "5", ".", "3"},
		{"5.45.35.4"}} {
		benchtest.Press(m, keys...)
		for range 3 { // a second Enter takes nothing, nor does a third
			benchtest.Press(m, "enter")
			if len(read()) != 0 || m.Entry == nil || !m.Trouble || m.H != was {
				t.Fatalf("%q was taken where the sheet has %v: %s", keys, l.OverMM, m.Says)
			}
		}
		if keys[0] == "." && m.Entry.Draft() != "0.9" {
			t.Errorf("the field holds %q", m.Entry.Draft())
		}
		benchtest.Press(m, "esc")
	}
	if open := strings.Join(runs.OpenPoints(m), "\n"); !strings.Contains(open,
		"reading refused, and none taken since: -5.4 for the OD of T1 layer 1") {
		t.Errorf("the end does not name it:\n%s", open)
	}
	for _, k := range []string{"5", ".", "4", "backspace", "backspace", "backspace", "enter", "enter"} { // an empty one
		benchtest.Press(m, k)
	}
	if len(read()) != 0 || m.Entry == nil || !m.Trouble {
		t.Fatalf("an empty reading was taken: %s", m.Says)
	}
	benchtest.Press(m, "8", "enter") // can be, and is out of tolerance
	if got := read(); len(got) != 1 || got[0] != 8 {
		t.Fatalf("8 was not taken: %v, %s", got, m.Says)
	}
	if open := strings.Join(runs.OpenPoints(m), "\n"); strings.Contains(open, "refused") {
		t.Errorf("a good one was taken since:\n%s", open)
	}
	at := runs.At(m)
	for range m.Sheet.Branches[m.Branch].Layers[s.Layer].Members { // it is laid; then it is measured
		benchtest.Press(m, "enter")
	}
	for _, key := range []string{"enter", "+"} {
		if benchtest.Press(m, key); runs.At(m) != at || !m.Trouble {
			t.Errorf("%s went on from what is out of tolerance: %s", key, m.Says)
		}
		benchtest.Press(m, "8.1", "enter") // a reading more is asked about once more
	}
	benchtest.Press(m, "enter", "enter")
	if runs.At(m) != at+1 {
		t.Errorf("asked twice, and it stays: %s", m.Says)
	}
	warned := false
	for _, g := range m.Sheet.Snags {
		warned = warned || g.Rule == "built.over" && g.Level == sheet.Warn
	}
	if !warned {
		t.Error("nothing is said of it afterwards")
	}
	// Esc leaves it at Build, where no digit changes a wire.
	h := m.H
	benchtest.Press(m, "esc")
	benchtest.Press(m, "1")
	if m.Step != runs.Step || m.Entry != nil && m.Entry.Number || m.H != h {
		t.Errorf("after Esc: step %v, entry %+v", m.Step, m.Entry)
	}
}

// What is cut is cut: a reel taken as measured makes other lengths and other batches, and
// neither the step in hand nor what is done moves by it; a stop that comes up puts a hold
// first and leaves the hand where it is.
func TestStepInHandStays(t *testing.T) {
	shorttest.Turn(t)
	m := runOf(t, "demo.toml", run.LayStep)
	hand, at := runs.RunSteps(m)[runs.At(m)].Key, runs.At(m)
	var lengths []string
	for _, s := range runs.RunSteps(m)[:at] {
		lengths = append(lengths, s.Key)
	}
	m.Change(m.H.SetReel("AS22759/32", "22", 1.35), "measured")
	var now []string
	for _, s := range runs.RunSteps(m)[:runs.At(m)] {
		now = append(now, s.Key)
		if s.Kind == run.CutStep && !s.In(runs.Build(m)) {
			t.Errorf("%s is to be cut again", s.Key)
		}
	}
	if slices.Equal(lengths, now) {
		t.Fatal("no length changed: the test shows nothing")
	}
	if got := runs.RunSteps(m)[runs.At(m)].Key; got != hand {
		t.Errorf("in hand %s, was %s", got, hand)
	}
	stops := runs.RunSteps(m)[0].Key == run.HoldStops
	m.Back()
	begin(m, "")
	if k := runs.RunSteps(m)[runs.At(m)]; !stops && k.Key != hand || stops && k.Key != run.HoldStops {
		t.Errorf("gone on with %s, was %s", k.Key, hand)
	}
}
