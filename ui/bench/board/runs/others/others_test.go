package others_test

import (
	"slices"
	"strings"
	"testing"

	"contralay/calc/query/run"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/runlog"
	"contralay/model/unit"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/board/runs/others"
	"contralay/ui/bench/desk"
)

// begun is a bench on the example with serial 1 begun, and 8 on the shop's list.
func begun(t *testing.T) *desk.Model {
	t.Helper()
	m := benchtest.Open(t, "example.toml")
	m.Cfg.Cat = catalogue.Merge(m.Cfg.Cat, &catalogue.Catalogue{People: []catalogue.Person{{ID: "8", Name: "Bo"}}})
	m.H = m.H.EditBuild("1", func(b *model.Build) { b.EachTest = model.Some(true) })
	m.Rebuild()
	return m
}

// brought does something to serial 1 as another bench would, and is what is said of it here.
func brought(m *desk.Model, f func(b *model.Build)) string {
	was := m.H.Builds
	m.H = m.H.EditBuild("1", f)
	m.Rebuild()
	return others.Brought(m, runlog.Between(was, m.H.Builds))
}

func at(key, by string) model.Ticked {
	return model.Ticked{Key: key, At: model.Some("2026-05-11 09:00"), By: model.Some(by)}
}

// What another bench did is said in words: who, which step, which pieces, why it was taken back. Of several
// entries the last is said, with how many came before it.
func TestWhatOthersDid(t *testing.T) {
	m := begun(t)
	for _, c := range []struct {
		did  func(b *model.Build)
		want string
	}{
		{func(b *model.Build) { b.Tick(at("cut 101", "8")) }, "serial 1: 8  Bo ticked: cut 101"},
		{func(b *model.Build) { b.Tick(at("cut 102", "")) }, "serial 1: another bench ticked: cut 102"},
		{func(b *model.Build) { b.Begin(at("lay T1 1", "8"), "101") }, "serial 1: 8  Bo ticked: T1 layer 1, 101"},
		{func(b *model.Build) {
			for _, p := range []string{"102", "103", "104", "110", "120"} {
				b.Begin(at("lay T1 1", "8"), p)
			}
		}, "serial 1: 8  Bo ticked: T1 layer 1, 102, 103, 104 and 2 more"},
		{func(b *model.Build) { b.Undo("cut 101", "damaged") }, "serial 1: another bench took back: cut 101 (damaged)"},
		{func(b *model.Build) {
			b.Steps = slices.DeleteFunc(b.Steps, func(s model.Ticked) bool { return s.Key == "cut 102" })
		}, "serial 1: another bench took a tick off: cut 102"},
		{func(b *model.Build) {
			b.Tests = append(b.Tests, model.Test{Step: model.Some(run.HoldBare), Net: model.Some("P1:A INJ1:2"), By: model.Some("8"),
				Fault: model.Some("does not ring")})
		}, "serial 1: 8  Bo tested P1:A INJ1:2: does not ring"},
		{func(b *model.Build) { b.Signed = append(b.Signed, model.Signature{Step: run.HoldFit, By: "14"}) },
			"serial 1: 14 signed hold: trial fit"},
		{func(b *model.Build) {
			b.Readings = append(b.Readings, model.Reading{Branch: "T1", Layer: 1, OverMM: []unit.Millimetre{5.4}})
		}, "serial 1: another bench measured T1 layer 1"},
		{func(b *model.Build) {
			b.Apart = append(b.Apart, model.Deviation{At: "101", Says: "green", By: model.Some("4")})
		}, "serial 1: 4 wrote down what differs at 101: green"},
		{func(b *model.Build) {
			b.Lots = append(b.Lots, model.Lot{Of: "AS22759/32 22", Lot: "R-7", By: model.Some("8")})
		}, "serial 1: 8  Bo wrote down lot R-7 of AS22759/32 22"},
		{func(b *model.Build) { b.Note = model.Some("look at P1") }, "serial 1: another bench changed the record"},
	} {
		if got := brought(m, c.did); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
	got := brought(m, func(b *model.Build) {
		b.Tick(at("cut 103", "8"))
		b.Tick(at("cut 104", "8"))
		b.Tick(at("cut 110", "8"))
	})
	if got != "serial 1: 8  Bo ticked: cut 110, and 2 entries before that" {
		t.Errorf("of three: %q", got)
	}
	if got := others.Brought(m, []runlog.Line{{Do: runlog.Saving}, {Do: runlog.Saved}}); got != "" {
		t.Errorf("a save alone: %q", got)
	}
}

// Two pin one connector, each half of it: the step is then done, with the name and the time of the last
// piece. Two pull the samples of one crimp: so is that. A layer is not: it is measured first; nor a hold:
// it is signed; nor is a step with a piece left.
func TestTwoFinishAStep(t *testing.T) {
	for _, c := range []struct {
		kind run.StepKind
		left int // pieces that nobody does
		done bool
	}{{run.PinStep, 0, true}, {run.PinStep, 1, false}, {run.PullStep, 0, true}, {run.PullStep, 1, false}, {run.LayStep, 0, false},
		{run.HoldStep, 0, false}} {
		m := begun(t)
		b := &m.H.Builds[m.H.BuildOf("1")]
		steps := run.For(m.Sheet, b)
		step := steps[slices.IndexFunc(steps, func(s run.RunStep) bool { return s.Kind == c.kind && len(run.Pieces(m.Sheet, s)) > 2 })]
		all := run.Pieces(m.Sheet, step)
		do := func(b *model.Build, pieces []run.Piece, by string) {
			for _, p := range pieces {
				if p.Check.Kind != run.NoCheck { // as a bench that sees only its own would leave it
					test := p.Check.Record(step.Key, model.Some(p.Check.Limit), "")
					test.By, test.At = model.Some(by), model.Some("2026-05-11 09:30")
					b.Tests = append(b.Tests, test)
					continue
				}
				b.Begin(at(step.Key, by), p.Key)
			}
		}
		brought(m, func(b *model.Build) { do(b, all[:2], "7") })
		brought(m, func(b *model.Build) { do(b, all[2:len(all)-c.left], "8") })
		b = &m.H.Builds[m.H.BuildOf("1")]
		if step.In(b) != c.done {
			t.Errorf("%s, %d left: done is %v, want %v", step.Key, c.left, step.In(b), c.done)
		}
		if tick := b.TickOf(step.Key); c.done && (tick.By.V != "8" && c.kind == run.PullStep || tick.At.V == "" || len(tick.SoFar) > 0) {
			t.Errorf("%+v", tick)
		}
		if got := strings.Join(b.Keys(), " "); !c.done && strings.Contains(got, "hold") {
			t.Errorf("ticked %s", got)
		}
	}
}
