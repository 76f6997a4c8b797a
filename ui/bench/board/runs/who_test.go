package runs_test

import (
	"strings"
	"testing"
	"time"

	"contralay/calc/query/run"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/board/runs"
	"contralay/ui/bench/desk"
	"contralay/ui/paper"
)

// shop is a bench whose catalogue lists two people, one of whom may inspect.
func shop(t *testing.T) *desk.Model {
	t.Helper()
	m := benchtest.Open(t, "example.toml")
	m.Cfg.Now = func() time.Time { return time.Date(2026, 5, 11, 16, 40, 0, 0, time.UTC) }
	m.Cfg.Cat = catalogue.Merge(m.Cfg.Cat, &catalogue.Catalogue{People: []catalogue.Person{
		{ID: "7", Name: "A. Builder"}, {ID: "8", Name: "C. Builder"}, {ID: "14", Name: "B. Inspector", MayInspect: true}}})
	return m
}

// Who works is asked once, from the shop's list; each tick has the name. A hold takes another name
// than who built, of somebody who may inspect.
func TestWhoWorksAndWhoInspects(t *testing.T) {
	m := shop(t)
	runs.Run(m, "")
	if v := benchtest.View(m); m.Top() != runs.WhoKind || !strings.Contains(v, "7  A. Builder") ||
		!strings.Contains(v, "14  B. Inspector") {
		t.Fatalf("who works is not asked:\n%s", v)
	}
	benchtest.Press(m, "9", "enter")
	if m.Top() != runs.WhoKind || !m.Trouble || !strings.Contains(m.Says, "9 is not in the shop's list. In it: 7 A. Builder") {
		t.Fatalf("somebody else works: %s", m.Says)
	}
	benchtest.Press(m, "esc", "down", "down", "enter")
	if m.Top() != runs.RunKind || m.Says != "14  B. Inspector works" {
		t.Fatalf("by the arrows: %s\n%s", m.Says, benchtest.View(m))
	}
	benchtest.GoTo(t, m, "@who works", "enter", "7", "enter") // no: it is another
	toSign(t, m)
	for _, s := range runs.Build(m).Steps { // all by 7, tests too
		if s.By.V != "7" || s.At.V != "2026-05-11 16:40" {
			t.Fatalf("%+v", s)
		}
	}
	at := runs.At(m)
	for who, says := range map[string]string{"7": "7  A. Builder may not inspect", "8": "Who may: 14  B. Inspector",
		"3": "is not in the shop's list", "": "needs a signature"} {
		keys := []string{"enter", "enter", "esc"}
		if who != "" {
			keys = []string{who, "enter"}
		}
		if benchtest.Press(m, keys[:2]...); runs.At(m) != at || !m.Trouble || !strings.Contains(m.Says, says) {
			t.Errorf("signed by %q: %s", who, m.Says)
		}
		benchtest.Press(m, "esc")
	}
	benchtest.Press(m, "1", "4", "enter")
	b := runs.Build(m)
	if runs.At(m) != at+1 || b.Signed[0].By != "14" || b.TickOf(run.HoldBare).By.V != "14" || len(b.Apart) != 0 {
		t.Errorf("%+v, %+v", b.Signed, b.Apart)
	}
	m.Back()
	runs.Run(m, "") // it is known who works
	if m.Top() != runs.RunKind {
		t.Errorf("asked again:\n%s", benchtest.View(m))
	}
}

// The one who built it may not inspect it, list or none; one who works alone says so, and that is on
// record and on paper as a concession until the signature is taken back.
func TestOneWhoWorksAlone(t *testing.T) {
	m := runOf(t, "example.toml", run.HoldStep)
	toSign(t, m)
	at := runs.At(m)
	benchtest.Press(m, "5", "enter")
	if runs.At(m) != at || !m.Trouble || !strings.Contains(m.Says, "5 has built it, and may not inspect it") {
		t.Fatalf("who built it has inspected it: %s", m.Says)
	}
	benchtest.Press(m, "esc")
	benchtest.GoTo(t, m, "@I work alone: sign as 5", "enter")
	b := runs.Build(m)
	if runs.At(m) != at+1 || len(b.Signed) != 1 || len(b.Apart) != 1 || b.Apart[0].By.V != "5" || b.Apart[0].Step.V != run.HoldBare ||
		!strings.Contains(b.Apart[0].Says, "inspected by the one who built it") {
		t.Fatalf("%+v, %+v: %s", b.Signed, b.Apart, m.Says)
	}
	written(t, m)
	page, err := paper.Make(m.Sheet, paper.Meta{})
	if err != nil || !strings.Contains(strings.ReplaceAll(string(page.HTML), "&shy;", ""), "inspected by the one who built it") {
		t.Errorf("it is not on paper: %v", err)
	}
	benchtest.Press(m, "backspace")
	benchtest.GoTo(t, m, "@not done after all", "enter", "@damaged", "enter")
	if b := runs.Build(m); len(b.Signed) != 0 || len(b.Apart) != 0 || b.Did(run.HoldBare) {
		t.Errorf("taken back: %+v", b)
	}
}

// Steps are listed, narrowed to what is open, ticked or of one kind, gone to by the arrows or by
// number, and taken back with a reason. Going somewhere ticks nothing.
func TestListOfSteps(t *testing.T) {
	m := runOf(t, "example.toml", run.LayStep)
	at := runs.At(m)
	before := m.H
	benchtest.GoTo(t, m, "@all steps: ", "enter")
	rows := func() string {
		var out []string
		for _, r := range m.Page(m.ListWidth()).Rows {
			out = append(out, r.Line())
		}
		return strings.Join(out, "\n")
	}
	if text := rows(); !strings.Contains(text, "done  cut ") || !strings.Contains(text, "5  2026-05-11 16:40") ||
		!strings.Contains(text, "hold: ring out bare") {
		t.Errorf("the list:\n%s", text)
	}
	if p := m.Page(m.ListWidth()); p.Rows[m.At(p)].Key != "step "+runs.RunSteps(m)[at].Key {
		t.Errorf("it does not stand on the step in hand: %+v", p.Rows[m.At(p)].Key)
	}
	benchtest.GoTo(t, m, "@show", "+")
	if text := rows(); strings.Contains(text, "done  cut") || !strings.Contains(text, "hold: ring out bare") {
		t.Errorf("open:\n%s", text)
	}
	benchtest.Press(m, "+")
	if text := rows(); !strings.Contains(text, "done  cut") || strings.Contains(text, "hold: ring out bare") {
		t.Errorf("ticked:\n%s", text)
	}
	benchtest.Press(m, "-", "-", "-", "-") // the last kind but one
	if text := rows(); strings.Contains(text, "  cut ") || !strings.Contains(text, "shrink") {
		t.Errorf("one kind:\n%s", text)
	}
	benchtest.GoTo(t, m, "@shrink ", "enter")
	if s := runs.RunSteps(m)[runs.At(m)]; m.Top() != runs.RunKind || s.Kind != run.ShrinkStep || m.H != before {
		t.Fatalf("gone to %s on %s", s.Key, m.Top())
	}
	benchtest.GoTo(t, m, "@all steps: ", "2", "enter")
	if runs.At(m) != 1 || m.H != before {
		t.Errorf("gone to step %d: %s", runs.At(m)+1, m.Says)
	}
	for _, bad := range []string{"0", "999", "1.5"} {
		benchtest.GoTo(t, m, "@all steps: ", bad, "enter")
		if runs.At(m) != 1 || !m.Trouble {
			t.Errorf("gone to step %s", bad)
		}
		benchtest.Press(m, "esc")
	}
	benchtest.GoTo(t, m, "@all steps: ", "enter", "@the end", "enter")
	if runs.At(m) != len(runs.RunSteps(m)) || m.H != before || !strings.Contains(benchtest.View(m), "are not done") {
		t.Errorf("the end:\n%s", benchtest.View(m))
	}
	benchtest.GoTo(t, m, "@not done: ", "enter")
	first := runs.RunSteps(m)[1]
	benchtest.GoTo(t, m, "@all steps: ", "enter", "@show", "+", "+", "@  cut ", ".", "@wrong length", "enter")
	b := runs.Build(m)
	if first.In(b) || b.Steps[1].Undone.V != "wrong length" || m.Top() != runs.StepsKind {
		t.Errorf("taken back on %s: %+v", m.Top(), b.Steps[0])
	}
	written(t, m)
}

// What is taken back after a hold was signed for it and after it was weighed opens these again, and says so; the
// holds that were not signed for it stay.
func TestTakenBackIsProvedAgain(t *testing.T) {
	m := runOf(t, "example.toml", run.LayStep)
	m.Change(m.H.EditBuild("1", func(b *model.Build) {
		for _, s := range runs.RunSteps(m) {
			s.Tick(b, nil, "2026-05-12 08:00", "5")
			if s.Kind == run.HoldStep {
				b.Signed = append(b.Signed, model.Signature{Step: s.Key, By: "14"})
			}
		}
		b.MassG = model.Some(unit.Gram(180))
		b.Apart = []model.Deviation{{At: "the tail", Says: "2 mm short", By: model.Some("14")}}
	}), "")
	benchtest.GoTo(t, m, "@all steps: ", "enter", "@contacts of P1", ".", "@damaged", "enter")
	b := runs.Build(m)
	for key, want := range map[string]bool{"pin P1": false, run.HoldBare: true, run.HoldPinned: false, run.HoldFit: false, "weigh": false,
		run.HoldLoaded: false, "pin INJ1": true} {
		if b.Did(key) != want {
			t.Errorf("%s is done: %v", key, !want)
		}
	}
	if b.MassG.Set || len(b.Signed) != 1 || len(b.Apart) != 1 {
		t.Errorf("mass %v, signed %+v, apart %+v", b.MassG, b.Signed, b.Apart)
	}
	if want := "taken back: damaged. To do again for it: sign ring out pinned, trial fit, loaded drop; weigh the harness"; m.Says != want {
		t.Errorf("it says %q", m.Says)
	}
	written(t, m)
}
