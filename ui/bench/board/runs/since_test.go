package runs_test

import (
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"contralay/calc/query/run"
	"contralay/model"
	"contralay/model/file"
	"contralay/model/shorttest"
	"contralay/model/unit"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/board/runs"
	"contralay/ui/bench/desk"
	"contralay/ui/paper"
)

// written is the bench's file as it would be saved, loaded and saved again: the same bytes.
func written(t *testing.T, m *desk.Model) string {
	t.Helper()
	text := file.Encode(m.Doc())
	back, err := file.Parse(text, "back.toml")
	if err != nil {
		t.Fatal(err)
	}
	if string(file.Encode(back)) != string(text) {
		t.Error("saved, loaded and saved it is another file")
	}
	return string(text)
}

// A tick is written down with what was done and the clock of the desk, to 0.01 mm; it is undone
// like any change.
func TestTickIsARecord(t *testing.T) {
	shorttest.Turn(t)
	m := runOf(t, "demo.toml", run.LayStep)
	b := runs.Build(m)
	if len(b.Done) != 0 {
		t.Errorf("steps by key alone: %q", b.Done)
	}
	tick := b.TickOf("cut 101")
	if tick == nil || tick.At.V != "2026-05-11 16:40" {
		t.Fatalf("%+v", tick)
	}
	w := m.H.Wires[m.Sheet.Index.Wire["101"]]
	if what := tick.What.V; what.Spec.V != w.Spec || what.Size.V != w.Size || what.Colour != w.Colour ||
		what.MM.V != m.Sheet.Wires[m.Sheet.Index.Wire["101"]].Cut {
		t.Errorf("%+v of %+v", what, w)
	}
	before := written(t, m)
	for _, line := range strings.Split(before, "\n") {
		if _, what, is := strings.Cut(line, "what = {"); is {
			for _, number := range strings.FieldsFunc(what, func(r rune) bool { return strings.ContainsRune(" ,[]{}", r) }) {
				if _, decimals, is := strings.Cut(number, "."); is && len(decimals) > 2 {
					t.Errorf("%s in %s", number, line)
				}
			}
		}
	}
	benchtest.Press(m, "+")
	lay := runs.Build(m).Steps[len(runs.Build(m).Steps)-1]
	if len(lay.What.V.Members) == 0 || !lay.What.V.OverMM.Set {
		t.Errorf("%+v", lay)
	}
	written(t, m)
	m.Undo()
	if got := written(t, m); got != before {
		t.Error("undone, it is another file than before")
	}
	if says := strings.Join(file.Differences(file.Document{Harness: *m.H}, m.Doc()), ""); says != "" {
		t.Error(says)
	}
}

// changedRun is a run of the demo that was left at its first layer; then a wire, a branch and the
// revision changed, and it is gone on with.
func changedRun(t *testing.T) *desk.Model {
	t.Helper()
	m := runOf(t, "demo.toml", run.LayStep)
	benchtest.Press(m, "+", "+", "+")
	m.Back()
	i := m.Sheet.Index.Wire["101"]
	m.Change(m.H.EditWire(i, func(w *model.Wire) { w.Size, w.Colour = "20", model.Some("4") }), "size")
	m.Change(m.H.EditBranch(m.Sheet.Index.Branch["L1"], func(b *model.Branch) { b.LengthMM += 100 }), "length")
	h := *m.H
	h.Head.Revision = model.Some("D")
	m.Change(&h, "revision")
	begin(m, "")
	return m
}

// A run that is gone on with after the file changed says what differs, and asks: each is done
// again or kept by somebody with a name. Then the run goes on at the first step that is open; what
// was done before stays on record with the reason.
func TestRunAsksWhatChanged(t *testing.T) {
	shorttest.Turn(t)
	m := changedRun(t)
	if m.Top() != runs.SinceKind {
		t.Fatalf("nothing is asked:\n%s", benchtest.View(m))
	}
	screen := benchtest.View(m)
	for _, want := range []string{"L1 is 100 mm longer", "Wire 101 is 20 AWG yellow, 1090 mm, was 22 AWG white/brown, 990 mm",
		"The sheet is revision D, was C"} {
		if !strings.Contains(screen, want) {
			t.Errorf("no %q:\n%s", want, screen)
		}
	}
	before := m.H
	benchtest.GoTo(t, m, "@Wire 101", "enter", "enter", "enter")
	if m.H != before || m.Entry == nil {
		t.Fatalf("two presses of Enter settled it: %s", m.Says)
	}
	benchtest.Press(m, "1", "4", "enter")
	if m.Top() != runs.SinceKind || m.Trouble {
		t.Fatalf("after a name: %s\n%s", m.Says, benchtest.View(m))
	}
	b := runs.Build(m)
	d := b.Apart[len(b.Apart)-1]
	if d.At != "101" || d.By.V != "14" || d.On.V != "2026-05-11 16:40" || !strings.Contains(d.Says, "22 AWG white/brown, 990 mm is kept") {
		t.Errorf("%+v", d)
	}
	if tick := b.TickOf("cut 101"); tick.What.V.Size.V != "22" || tick.Sheet.V.Size.V != "20" {
		t.Errorf("%+v", tick)
	}
	written(t, m)
	benchtest.GoTo(t, m, "@L1 is", "enter", "@do it again", "enter")
	if runs.Build(m).Did("cut 111") || !runs.Build(m).Did("cut 102") {
		t.Errorf("done: %q", runs.Build(m).Keys())
	}
	undone := slices.IndexFunc(runs.Build(m).Steps, func(s model.Ticked) bool { return s.Key == "cut 111" })
	if s := runs.Build(m).Steps[undone]; s.Undone.V != "L1 is 100 mm longer" || !s.What.Set {
		t.Errorf("%+v", s)
	}
	benchtest.GoTo(t, m, "@The sheet is", "enter", "enter", "7", "enter")
	if m.Top() != runs.RunKind || runs.Build(m).Revision.V != "D" {
		t.Fatalf("all is settled, and it stands at:\n%s", benchtest.View(m))
	}
	s := runs.RunSteps(m)[runs.At(m)]
	if screen := benchtest.View(m); s.Kind != run.CutStep || s.In(runs.Build(m)) || !strings.Contains(screen, "111") {
		t.Errorf("it goes on with:\n%s", screen)
	}
	after := written(t, m)
	m.Back()
	begin(m, "")
	if m.Top() != runs.RunKind {
		t.Errorf("asked again:\n%s", benchtest.View(m))
	}
	for m.H != before { // undone one by one
		m.Undo()
	}
	m.Redo()
	for range 5 {
		m.Redo()
	}
	if written(t, m) != after {
		t.Error("done and undone it is another file")
	}
}

// All of it at once, or later: then the end of the run says it, and so does the next start.
func TestAllAtOnceOrLater(t *testing.T) {
	shorttest.Turn(t)
	m := changedRun(t)
	benchtest.GoTo(t, m, "@decide later", "enter")
	if m.Top() != runs.RunKind || !strings.Contains(strings.Join(runs.OpenPoints(m), "\n"), "not as the sheet: wire 101") {
		t.Errorf("%q", runs.OpenPoints(m))
	}
	for k, s := range runs.RunSteps(m) { // a look back at what is done
		if slices.Contains(s.Marks(), "cut 101") || slices.Contains(s.Marks(), "cut 102") {
			for runs.At(m) > k {
				benchtest.Press(m, "backspace")
			}
			if old := strings.Contains(benchtest.View(m), "DONE BEFORE THE SHEET CHANGED"); old != slices.Contains(s.Marks(), "cut 101") {
				t.Errorf("step %s:\n%s", s.Key, benchtest.View(m))
			}
			for runs.RunSteps(m)[runs.At(m)].In(runs.Build(m)) {
				benchtest.Press(m, "enter")
			}
		}
	}
	m.Back()
	begin(m, "")
	was := m.H
	benchtest.GoTo(t, m, "@keep all", "enter", "9", "enter")
	if b := runs.Build(m); m.Top() != runs.RunKind || len(b.Apart) != 3 || b.Apart[2].By.V != "9" {
		t.Errorf("%+v", b.Apart)
	}
	m.Undo()
	m.Back()
	if m.H != was {
		t.Fatal("undoing does not lead back")
	}
	begin(m, "")
	benchtest.GoTo(t, m, "@do all", "enter")
	if b := runs.Build(m); m.Top() != runs.RunKind || b.Did("cut 101") || b.Did("cut 111") || b.Did("lay T1 2") || !b.Did("cut 102") {
		t.Errorf("%q", b.Keys())
	}
}

// What is built differently belongs to the wire, the layer or the part it was typed at, on the
// screen and on the list of what was built; whoever decides it puts a name to it, and until then
// the end of the run has it as open.
func TestDeviationsBelong(t *testing.T) {
	m := runOf(t, "example.toml", run.CutStep)
	say := func(row, words string) {
		t.Helper()
		benchtest.GoTo(t, m, "@"+row, "enter")
		benchtest.Press(m, words, "enter")
		if m.Entry != nil || m.Trouble {
			t.Fatalf("%s: %s", words, m.Says)
		}
	}
	to := func(kind run.StepKind) run.RunStep {
		t.Helper()
		goOn(t, m, func() bool { return runs.RunSteps(m)[runs.At(m)].Kind == kind })
		return runs.RunSteps(m)[runs.At(m)]
	}
	for len(runs.RunSteps(m)[runs.At(m)].Cut.Wires) < 2 {
		benchtest.Press(m, "enter")
	}
	cut := runs.RunSteps(m)[runs.At(m)]
	id := m.H.Wires[cut.Cut.Wires[1]].ID
	benchtest.Press(m, "enter") // to its second wire
	say("built differently", "blue, no other there")
	lay := to(run.LayStep)
	say("built differently", "one turn too many")
	put := to(run.ThreadStep)
	say("built differently", "reel end, 5 mm short")
	want := []string{id, lay.Of + " centre", put.Of + " " + string(put.Put.What) + " " + put.Put.Part}
	for k, d := range runs.Build(m).Apart {
		if d.At != want[k] {
			t.Errorf("it belongs to %q, want %q", d.At, want[k])
		}
	}
	if screen := benchtest.View(m); !strings.Contains(screen, "differs at "+want[2]) || strings.Contains(screen, "turn too many") {
		t.Errorf("at another step:\n%s", screen)
	}
	page, err := paper.Make(m.Sheet, paper.Meta{})
	if err != nil {
		t.Fatal(err)
	}
	rows := regexp.MustCompile(`(?s)<tr[^>]*>.{0,40}deviation.*?</tr>`).FindAllString(string(page.HTML), -1)
	if len(rows) != 3 {
		t.Errorf("%d deviations on paper", len(rows))
	}
	for k, row := range rows {
		text := strings.ReplaceAll(regexp.MustCompile(`<[^b>][^>]*>|</[^>]*>`).ReplaceAllString(row, ""), "<br>", " ")
		if !strings.Contains(text, want[k]) {
			t.Errorf("on paper: %q, want %q", text, want[k])
		}
	}
	open := func() int { return strings.Count(strings.Join(runs.OpenPoints(m), "\n"), "nobody has decided on") }
	if open() != 3 {
		t.Errorf("%q", runs.OpenPoints(m))
	}
	benchtest.GoTo(t, m, "@differs at", "4", "enter")
	if d := runs.Build(m).Apart[2]; d.By.V != "4" || open() != 2 {
		t.Errorf("%+v, %d open", d, open())
	}
	written(t, m)
}

// The end of a run lists every open point, and Enter goes to the step where one is settled.
func TestEndListsOpenPoints(t *testing.T) {
	shorttest.Turn(t)
	m := runOf(t, "example.toml", run.LayStep)
	benchtest.Press(m, "5", "3", "enter", "esc")
	goOn(t, m, func() bool { return runs.At(m) == len(runs.RunSteps(m)) })
	first := runs.RunSteps(m)[1] // behind the lot
	m.Change(m.H.EditBuild("1", func(b *model.Build) {
		for _, mark := range first.Marks() {
			b.Undo(mark, "crossed")
		}
		b.Readings = append(b.Readings, model.Reading{Branch: "T1", Layer: 1, OverMM: []unit.Millimetre{9.9}})
		b.Apart = append(b.Apart, model.Deviation{At: "T1", Says: "as an older file has it"})
	}), "")
	screen := benchtest.View(m)
	open := strings.Join(runs.OpenPoints(m), "\n")
	for _, want := range []string{"not done: cut", "out of tolerance: T1: Serial 1: layer 1 was measured at 9.90 mm",
		"deviation that nobody has decided on, T1: as an older file has it",
		"reading refused, and none taken since: 53 for the OD of T1 centre",
		"not measured: "} {
		if !strings.Contains(open, want) {
			t.Errorf("no %q in\n%s", want, open)
		}
	}
	if !strings.Contains(screen, "1 step is not done") {
		t.Errorf("it says it is done:\n%s", screen)
	}
	benchtest.GoTo(t, m, "@not done: cut", "enter")
	if runs.RunSteps(m)[runs.At(m)].Key != first.Key {
		t.Errorf("Enter led to step %d", runs.At(m))
	}
}

// A file of before the record goes on as it is: what it has by key alone stays as written, new
// steps get their record, and a step counts once.
func TestOldRecordGoesOn(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	m.Cfg.Now = func() time.Time { return time.Date(2026, 5, 11, 16, 40, 0, 0, time.UTC) }
	begin(m, "")
	first := runs.RunSteps(m)[1] // an older run asks for no lot
	m.Back()
	m.Change(m.H.EditBuild("1", func(b *model.Build) {
		b.Done, b.GoesBy, b.EachTest = first.Marks(), nil, model.Opt[bool]{}
	}), "as an older file has it")
	old := written(t, m)
	if !strings.Contains(old, `done `) || strings.Contains(old, "build.step") {
		t.Fatalf("the test has no old file:\n%s", old)
	}
	begin(m, "")
	if m.Top() != runs.RunKind || runs.At(m) != 1 {
		t.Fatalf("it goes on at %d:\n%s", runs.At(m), benchtest.View(m))
	}
	for range runs.RunSteps(m)[1].Marks() {
		benchtest.Press(m, "enter")
	}
	b := runs.Build(m)
	if !slices.Equal(b.Done, first.Marks()) || len(b.Steps) != len(runs.RunSteps(m)[1].Marks()) {
		t.Errorf("by key %q, on record %d", b.Done, len(b.Steps))
	}
	if kept := written(t, m); !strings.HasPrefix(kept, old[:strings.Index(old, "done ")]) {
		t.Error("what was there is written otherwise")
	}
	for runs.At(m) > 0 {
		benchtest.Press(m, "backspace")
	}
	for range first.Marks() {
		benchtest.GoTo(t, m, "@take it back", "enter", "enter")
		benchtest.Press(m, "backspace")
	}
	if b := runs.Build(m); len(b.Done) != 0 || first.In(b) {
		t.Errorf("%+v", b)
	}
}

// A catalogue that has another figure than the serial was begun with is asked about: with the limits that would
// move, to keep or to take by somebody with a name.
func TestRunAsksAboutTheCatalogue(t *testing.T) {
	shorttest.Turn(t)
	for _, c := range []struct {
		row, says string
		size      [2]int
		takes     bool
	}{{"@keep its own figures", "what it was begun with is kept: the catalogue has changed", [2]int{80, 24}, false},
		{"@take today's figures", "it goes by the catalogue of today from here on: the catalogue has changed", [2]int{40, 12}, true}} {
		m := runOf(t, "example.toml", run.LayStep)
		benchtest.Size(m, c.size[0], c.size[1])
		today := slices.Clone(runs.Build(m).Shelf)
		m.Change(m.H.EditBuild("1", func(b *model.Build) {
			b.Shelf = slices.Clone(b.Shelf)
			for k := range b.Shelf {
				if v := &b.Shelf[k]; v.Size.V == "22" {
					v.OverMM = model.Some(v.OverMM.V - 0.1)
				}
			}
		}), "")
		begin(m, "1")
		if m.Top() != runs.SinceKind || !strings.Contains(benchtest.View(m), "he catalogue has changed") {
			t.Fatalf("nothing is asked:\n%s", benchtest.View(m))
		}
		benchtest.GoTo(t, m, "@The catalogue", "enter")
		if all := strings.Join(append(m.Page(m.ListWidth()).Lines, rowLines(m)...), " "); !strings.Contains(all, "would be") {
			t.Errorf("no limit that would move:\n%s", all)
		}
		benchtest.GoTo(t, m, c.row, "enter", "1", "4", "enter")
		b := runs.Build(m)
		if d := b.Apart[len(b.Apart)-1]; m.Top() != runs.RunKind || d.By.V != "14" || !strings.HasPrefix(d.Says, c.says) {
			t.Errorf("on %s, %+v:\n%s", m.Top(), b.Apart, benchtest.View(m))
		}
		if slices.Equal(b.Shelf, today) != c.takes {
			t.Errorf("the figures are those of today: %v", !c.takes)
		}
		written(t, m)
	}
}

func rowLines(m *desk.Model) (out []string) {
	for _, r := range m.Page(m.ListWidth()).Rows {
		out = append(out, r.Line())
	}
	return out
}
