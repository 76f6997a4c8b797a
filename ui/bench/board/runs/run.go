package runs

import (
	"slices"
	"strconv"

	"contralay/calc"
	"contralay/calc/phase/built"
	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// The bench run: a harness is built step by step, one instruction a screen, in letters that
// are read from across the board. What is done, signed and measured is in the file, so that
// a run that was cut off goes on at its step.

// running is where a run stands.
type running struct {
	serial string                      // that is in hand
	with   []string                    // that are cut together with it, and itself; nil where it is alone
	at     int                         // the step in hand; as many as there are where all are done
	piece  int                         // of that step; as many as it has where all are done
	page   int                         // which page of a step that is too long for the screen
	who    string                      // works; "" is not said
	show   string                      // what the list of steps is narrowed to; "" is all
	steps  []run.RunStep               // those it was at before
	made   desk.Kept[[]run.RunStep]    // those of the sheet in hand
	asked  string                      // the odd thing that was asked last
	read   desk.Kept[reading]          // what the readings of a layer come to
	facts  desk.Kept[[]built.Fact]     // what the sheet has each step make
	pieces desk.Kept[[]run.Piece]      // the pieces of the steps, by key
	since  desk.Kept[built.Comparison] // what differs from what is built

	instrument map[run.CheckKind]string // what each kind of test is read on; "" is not said

	begun  desk.Kept[*sheet.Sheet] // the sheet by the figures that the serial was begun with
	merged desk.Kept[*model.Build] // what is built, of serials that are cut together

	refused map[string]string // readings that cannot be, by serial and what was measured; a good one takes it out
}

// reading is what readings come to; ok is false where nothing can be said of them.
type reading struct {
	run.Explained
	ok bool
}

func state(m *desk.Model) *running { return desk.State[running](m) }

// runSteps are the steps of the harness as it is.
func runSteps(m *desk.Model) []run.RunStep {
	r := state(m)
	return r.made.Get(m.Sheet, 0, "", func() []run.RunStep {
		was := r.steps
		r.steps = run.For(m.Sheet, build(m))
		switch {
		case r.at < len(was): // a change may put steps before the one in hand: it stays in hand
			mark := markInHand(was[r.at], r.piece)
			if k := slices.IndexFunc(r.steps, func(s run.RunStep) bool { return slices.Contains(s.Marks(), mark) }); k >= 0 {
				r.at = k
			}
		case len(was) > 0:
			r.at = len(r.steps)
		}
		return r.steps
	})
}

// begun is the sheet by the figures that the serial in hand was begun with.
func begun(m *desk.Model) *sheet.Sheet {
	return state(m).begun.Get(m.Sheet, 0, state(m).serial, func() *sheet.Sheet { return run.AsBegun(m.Sheet, own(m)) })
}

// facts are what the sheet has each step make.
func facts(m *desk.Model) []built.Fact {
	return state(m).facts.Get(m.Sheet, 0, "", func() []built.Fact { return built.Facts(m.Sheet) })
}

// edited is the harness with a change to what is built.
func edited(m *desk.Model, f func(b *model.Build)) *model.Harness {
	return m.H.EditBuild(state(m).serial, f)
}

// own is what is built of the serial in hand, as far as it is.
func own(m *desk.Model) *model.Build {
	if k := m.H.BuildOf(state(m).serial); k >= 0 {
		return &m.H.Builds[k]
	}
	return &model.Build{Serial: state(m).serial}
}

// now is the day and time by the desk's clock; "" where it has none.
func now(m *desk.Model) string {
	if m.Cfg.Now == nil {
		return ""
	}
	return m.Cfg.Now().Format("2006-01-02 15:04")
}

// openSerial is the build that a run goes on with: the last that is not through, or that the
// sheet has otherwise under the same revision; else the next number.
func openSerial(m *desk.Model) string {
	for k := len(m.H.Builds) - 1; k >= 0; k-- {
		b := &m.H.Builds[k]
		keys := run.For(m.Sheet, b)
		if slices.ContainsFunc(keys, func(s run.RunStep) bool { return !s.In(b) }) ||
			b.Revision.V == m.H.Head.Revision.V && built.Since(m.Sheet, b).Again > 0 {
			return b.Serial
		}
	}
	most := 0
	for _, b := range m.H.Builds {
		if n, err := strconv.Atoi(b.Serial); err == nil {
			most = max(most, n)
		}
	}
	return strconv.Itoa(most + 1)
}

// Run opens the run of a serial, or of the one that is not through where it is "".
func Run(m *desk.Model, serial string) {
	if serial == "" {
		serial = openSerial(m)
	}
	startRun(m, serial)
}

// startRun opens a run at its first step that is not done. A new one writes down what is
// only proposed: from then on nothing of it is planned anew.
func startRun(m *desk.Model, serial string) {
	if len(m.H.Branches) == 0 || len(m.H.Wires) == 0 {
		m.Refuse("there is nothing to build yet")
		return
	}
	serials, err := serialsOf(serial)
	if err != nil {
		m.Refuse(err.Error())
		return
	}
	take(m, serials[0])
	if state(m).with = nil; len(serials) > 1 {
		state(m).with = serials
	}
	s := calc.Complete(m.H, m.Cfg.Cat, m.Sheet)
	h, begun := run.Written(s), []string{}
	for _, serial := range serials {
		if m.H.BuildOf(serial) >= 0 {
			continue
		}
		begun = append(begun, serial)
		h = h.EditBuild(serial, func(b *model.Build) {
			if m.Cfg.Now != nil {
				b.Begun = model.Some(m.Cfg.Now().Format("2006-01-02"))
			}
			if r := m.H.Head.Revision; r.Set {
				b.Revision = r
			}
			b.GoesBy, b.Shelf, b.EachTest = built.GoesBy(s), built.Shelf(s), model.Some(true)
		})
	}
	if h != m.H {
		says := "What was proposed is written down and stays"
		if len(begun) > 0 {
			says = words.Either(len(begun) > 1, "serials ", "serial ") + words.List(begun) + " started. " + says
		}
		m.Change(h, says)
		if m.Trouble {
			return // refused, and said
		}
	}
	m.Step = Step // whoever leaves stands where no digit changes a wire
	if state(m).who == "" {
		m.Show(WhoKind, "")
		return
	}
	goOn(m)
}

// goOn asks about what has changed since, and opens the run.
func goOn(m *desk.Model) {
	if len(since(m).Differences) > 0 {
		m.Show(SinceKind, "")
		return
	}
	openRun(m)
}

// openRun opens a run at its first step that is not done.
func openRun(m *desk.Model) {
	goTo(m, firstOpen(m))
	m.Show(RunKind, "")
}

// firstOpen is the first step that is not done; as many as there are where all are.
func firstOpen(m *desk.Model) int {
	b := build(m)
	steps := runSteps(m)
	k := slices.IndexFunc(steps, func(s run.RunStep) bool { return !s.In(b) })
	if k < 0 {
		return len(steps)
	}
	return k
}

// Step is the last step of a branch, which the run opens from.
const Step desk.Kind = "build"

// RunKind is the screen of a bench run.
const RunKind desk.Kind = "run"
