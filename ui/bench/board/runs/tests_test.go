package runs_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"contralay/calc/query/run"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/shorttest"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/board/runs"
)

// A net that does not ring is a hold of its own: neither Enter nor + goes past it, nothing is signed,
// and it is mended by a test that passes. What was found first stays on record.
func TestNetThatFailsIsAHold(t *testing.T) {
	m := runOf(t, "example.toml", run.HoldStep)
	at, first := runs.At(m), runs.Pieces(m, runs.At(m))[0]
	benchtest.GoTo(t, m, "@it does not ring", "enter")
	if b := runs.Build(m); !m.Trouble || runs.Piece(m) != 0 || len(b.Tests) != 1 || b.Tests[0].Fault.V != "does not ring" ||
		!strings.Contains(benchtest.View(m), "OUT OF LIMITS: does not ring") {
		t.Fatalf("%s: %+v", m.Says, b.Tests)
	}
	benchtest.Press(m, "+") // all others of this connector
	if b := runs.Build(m); len(b.Tests) < 3 || b.Tests[len(b.Tests)-1].Net.V == first.Key || runs.At(m) != at {
		t.Errorf("+ after a fault: %s", m.Says)
	}
	toSign1 := func() bool { return runs.Piece(m) == len(runs.Pieces(m, at)) }
	for n := 0; n < 40 && runs.At(m) == at && !toSign1() && runs.Piece(m) != 0; n++ {
		benchtest.Press(m, skilled(m)...)
	}
	if runs.At(m) != at || toSign1() || runs.Piece(m) != 0 { // it comes back to what has failed
		t.Fatalf("it went past the net that failed:\n%s", benchtest.View(m))
	}
	benchtest.Press(m, ".", "0", "5", "enter") // mended
	if b := runs.Build(m); m.Trouble || b.Tests[len(b.Tests)-1].Ohm.V != 0.05 || b.Tests[0].Fault.V != "does not ring" {
		t.Errorf("%s: %+v", m.Says, b.Tests)
	}
	toSign(t, m)
	benchtest.Press(m, "7", "enter")
	if runs.At(m) != at+1 || len(runs.Build(m).Signed) != 1 {
		t.Errorf("mended, and not signed: %s", m.Says)
	}
	written(t, m)
}

// The end is not done while a reading is out of its limit, be it a test or a diameter, until somebody
// with a name has decided on it; then it is, and the deviation is on record.
func TestNotDoneWhileOutOfLimits(t *testing.T) {
	shorttest.Turn(t)
	m := runOf(t, "example.toml", run.LayStep)
	goOn(t, m, func() bool { return runs.RunSteps(m)[runs.At(m)].Layer == 1 })
	lay := runs.RunSteps(m)[runs.At(m)].Key
	benchtest.Press(m, "8", "enter", "+", "+") // 8 mm where the sheet has 5.4, and on anyway
	goOn(t, m, func() bool {
		s := runs.RunSteps(m)[runs.At(m)]
		return s.Key == run.HoldPinned && runs.Piece(m) < len(runs.Pieces(m, runs.At(m))) &&
			runs.Pieces(m, runs.At(m))[runs.Piece(m)].Check.Kind == run.Isolated
	})
	benchtest.Press(m, "3", "enter") // 3 Mohm of 100
	if !m.Trouble || !strings.Contains(m.Says, "out of limits: read 3.000 Mohm, at least 100 Mohm") {
		t.Fatalf("3 Mohm: %s", m.Says)
	}
	benchtest.GoTo(t, m, "@it stays so", "4", "enter")
	d := runs.Build(m).Apart
	if len(d) != 1 || d[0].By.V != "4" || d[0].Step.V != run.HoldPinned || !strings.Contains(d[0].Says, "read 3.000 Mohm") {
		t.Fatalf("%+v: %s", d, m.Says)
	}
	goOn(t, m, func() bool { return runs.At(m) == len(runs.RunSteps(m)) })
	if v := benchtest.View(m); strings.Contains(v, "every step is done") || !strings.Contains(v, "1 reading is out of limits") {
		t.Errorf("the end says:\n%s", v)
	}
	benchtest.GoTo(t, m, "@out of limits: T1 layer 1", "enter")
	if s := runs.RunSteps(m)[runs.At(m)]; s.Key != lay {
		t.Fatalf("Enter led to %s", s.Key)
	}
	benchtest.GoTo(t, m, "@built differently", "enter", "tape under it", "enter", "@differs at", "4", "enter")
	m.Unput()
	for n := 0; n < 2000 && runs.At(m) < len(runs.RunSteps(m)); n++ {
		benchtest.Press(m, "enter")
	}
	if v := benchtest.View(m); !strings.Contains(v, "every step is done") {
		t.Errorf("decided, and the end says:\n%s", v)
	}
}

// A lot is asked for before its reel is cut: that on the label, that of the serial before, or that it
// has none; + makes none up. A spool may have one of its own.
func TestLots(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	m.Cfg.Now = func() time.Time { return time.Date(2026, 5, 11, 16, 40, 0, 0, time.UTC) }
	begin(m, "1")
	if s := runs.RunSteps(m)[0]; s.Kind != run.LotStep || runs.At(m) != 0 {
		t.Fatalf("first comes %s", s.Key)
	}
	was := m.H
	if benchtest.Press(m, "+", "enter", "enter"); m.H != was || m.Entry == nil {
		t.Fatalf("a lot was made up: %s", m.Says)
	}
	benchtest.Press(m, "R-4471", "enter")
	b := runs.Build(m)
	if runs.At(m) != 1 || len(b.Lots) != 1 || b.Lots[0].Of != "AS22759/32 22" || b.Lots[0].Lot != "R-4471" || b.Lots[0].By.V != "5" ||
		b.Lots[0].At.V != "2026-05-11 16:40" {
		t.Fatalf("%+v", b.Lots)
	}
	benchtest.GoTo(t, m, "@lot of the spool", "enter", "S9", "enter")
	if b := runs.Build(m); len(b.Lots) != 2 || !strings.HasPrefix(b.Lots[1].Of, "AS22759/32 22 ") || runs.At(m) != 1 {
		t.Errorf("%+v", b.Lots)
	}
	m.Back()
	begin(m, "2")
	benchtest.GoTo(t, m, "@the lot of serial 1: R-4471", "enter")
	if b := runs.Build(m); len(b.Lots) != 1 || b.Lots[0].Lot != "R-4471" || runs.At(m) != 1 {
		t.Errorf("%+v", b.Lots)
	}
	m.Back()
	begin(m, "3")
	benchtest.GoTo(t, m, "@no number on the label", "enter")
	if b := runs.Build(m); len(b.Lots) != 1 || runs.At(m) != 1 {
		t.Errorf("%+v", b.Lots)
	}
	written(t, m)
}

// Samples are pulled before the first contact: a force is held against the least, one that comes off
// asks for three new ones. The instrument is the shop's, and one past its day is said to be.
func TestSamplesAndInstruments(t *testing.T) {
	m := runOf(t, "example.toml", run.PullStep)
	m.Cfg.Cat = catalogue.Merge(m.Cfg.Cat, &catalogue.Catalogue{Instruments: []catalogue.Instrument{
		{ID: "PG1", What: "pull gauge", Due: "2026-05-10"}, {ID: "PG2", What: "pull gauge", Due: "2026-05-11"}}})
	benchtest.GoTo(t, m, "@instrument", "enter")
	if v := benchtest.View(m); !strings.Contains(v, "PG1 pull gauge, due 2026-05-10: OVERDUE") || strings.Count(v, "OVERDUE") != 1 {
		t.Errorf("the instruments:\n%s", v)
	}
	benchtest.GoTo(t, m, "@PG2", "enter")
	at, s := runs.At(m), runs.RunSteps(m)[runs.At(m)]
	benchtest.Press(m, "9", "9", "enter", "1", "0", "enter")
	if !m.Trouble || runs.At(m) != at || runs.Piece(m) != 1 {
		t.Fatalf("10 N held: %s", m.Says)
	}
	benchtest.Press(m, "9", "9", "enter", "enter")
	if runs.At(m) != at || s.In(runs.Build(m)) {
		t.Error("two after one that came off are enough")
	}
	for n := 0; n < 3 && runs.At(m) == at; n++ {
		benchtest.Press(m, "9", "9", "enter")
	}
	b := runs.Build(m)
	first := b.Tests[slices.IndexFunc(b.Tests, func(t model.Test) bool { return t.Pull.Set })]
	if runs.At(m) == at || !s.In(b) || first.Instrument.V != "PG2" || first.Newton.V != 99 || !first.Limit.Set ||
		b.TickOf(s.Key).By.V != "5" {
		t.Errorf("%+v", first)
	}
}

// A run that was begun before tests were asked for one by one goes on as it was: its holds are signed
// and nothing else.
func TestOlderRunIsNotAskedForTests(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	m.Change(m.H.EditBuild("1", func(b *model.Build) { b.Begun = model.Some("2026-05-01") }), "")
	begin(m, "1")
	goOn(t, m, func() bool { return runs.At(m) == len(runs.RunSteps(m)) })
	b := runs.Build(m)
	if len(b.Tests) != 0 || len(b.Lots) != 0 || len(b.Signed) != 4 || b.EachTest.Set ||
		slices.ContainsFunc(b.Keys(), func(k string) bool { return strings.HasPrefix(k, "lot ") || strings.HasPrefix(k, "pull ") }) {
		t.Errorf("%+v", b)
	}
	if v := benchtest.View(m); !strings.Contains(v, "every step is done") {
		t.Errorf("the end:\n%s", v)
	}
}
