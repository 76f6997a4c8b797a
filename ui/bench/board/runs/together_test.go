package runs_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"contralay/calc/query/run"
	"contralay/model"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/board/runs"
	"contralay/ui/bench/desk"
)

func recordOf(m *desk.Model, serial string) *model.Build {
	k := m.H.BuildOf(serial)
	if k < 0 {
		return &model.Build{}
	}
	return &m.H.Builds[k]
}

// Two serials are cut together: a step asks for a piece for each, and ticks both records. What is done
// after the cutting is done of one, which the head names; the other is a row away.
func TestTwoAreCutTogether(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	m.Cfg.Now = func() time.Time { return time.Date(2026, 5, 11, 16, 40, 0, 0, time.UTC) }
	begin(m, "1, 2")
	if len(m.H.Builds) != 2 || !recordOf(m, "2").EachTest.V {
		t.Fatalf("%+v", m.H.Builds)
	}
	if v := benchtest.View(m); !strings.Contains(v, "serials 1 and 2  step 1 of") {
		t.Errorf("the head:\n%s", v)
	}
	benchtest.Press(m, "7", "enter")
	v := benchtest.View(m)
	if !strings.Contains(v, "cut 2 x ") || !strings.Contains(v, "2 pieces: one each for serials 1 and 2") {
		t.Errorf("it asks for one piece:\n%s", v)
	}
	benchtest.Press(m, "enter")
	for _, serial := range []string{"1", "2"} {
		b := recordOf(m, serial)
		if len(b.Lots) != 1 || b.Lots[0].Lot != "7" || len(b.Steps) != 2 || !strings.HasPrefix(b.Steps[1].Key, "cut ") ||
			b.Steps[1].By.V != "5" {
			t.Errorf("serial %s: %+v, %+v", serial, b.Lots, b.Steps)
		}
	}
	// One more of serial 2 alone: its record lacks that wire.
	key := recordOf(m, "1").Steps[1].Key
	m.Change(m.H.EditBuild("2", func(b *model.Build) { b.Undo(key, "damaged") }), "")
	benchtest.Press(m, "backspace")
	if v := benchtest.View(m); !strings.Contains(v, "1 piece, for serial 2 alone") || strings.Contains(v, "DONE") {
		t.Errorf("what serial 2 lacks is not asked for:\n%s", v)
	}
	benchtest.Press(m, "enter")
	if one, two := recordOf(m, "1"), recordOf(m, "2"); len(one.Steps) != 2 || !two.Did(key) {
		t.Errorf("%+v, %+v", one.Steps, two.Steps)
	}
	goOn(t, m, func() bool { return runs.RunSteps(m)[runs.At(m)].Kind == run.LayStep })
	if v := benchtest.View(m); !strings.Contains(v, "serial 1  step") {
		t.Errorf("the head:\n%s", v)
	}
	benchtest.Press(m, "+")
	lay := slices.IndexFunc(recordOf(m, "1").Steps, func(s model.Ticked) bool { return strings.HasPrefix(s.Key, "lay ") })
	if lay < 0 || slices.ContainsFunc(recordOf(m, "2").Steps, func(s model.Ticked) bool { return strings.HasPrefix(s.Key, "lay ") }) {
		t.Errorf("%+v, %+v", recordOf(m, "1").Steps, recordOf(m, "2").Steps)
	}
	benchtest.GoTo(t, m, "@go on with serial 2", "enter")
	if v := benchtest.View(m); !strings.Contains(v, "serial 2  step") || runs.RunSteps(m)[runs.At(m)].Kind != run.MakeStep {
		t.Errorf("serial 2 goes on elsewhere:\n%s", v)
	}
	for _, wrong := range []string{"1,", "1,1", " , 2"} {
		was := m.H
		if runs.Run(m, wrong); !m.Trouble || m.H != was {
			t.Errorf("%q: %s", wrong, m.Says)
		}
	}
}

// What is cut together is taken back together.
func TestTakenBackTogether(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	begin(m, "1,2")
	benchtest.Press(m, "7", "enter", "enter", "backspace")
	benchtest.GoTo(t, m, "@take it back", "enter", "@wrong length", "enter")
	for _, serial := range []string{"1", "2"} {
		if s := recordOf(m, serial).Steps[1]; s.Undone.V != "wrong length" {
			t.Errorf("serial %s: %+v", serial, s)
		}
	}
}
