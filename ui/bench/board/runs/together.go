package runs

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/query/run"
	"contralay/model"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// Several serials are cut together: a cut makes a piece for each, and ticks the record of each. All
// else is done of one serial at a time, which the head names.

// serialsOf are the serials that a text names, with a comma between them.
func serialsOf(text string) ([]string, error) {
	var out []string
	for _, s := range strings.Split(text, ",") {
		s = strings.TrimSpace(s)
		switch {
		case s == "":
			return nil, fmt.Errorf("type a serial: digits, or any text; several with a comma between them")
		case slices.Contains(out, s):
			return nil, fmt.Errorf("serial %s is named twice", s)
		}
		out = append(out, s)
	}
	return out, nil
}

// isTogether reports whether a step is done for all the serials of a run at once.
func isTogether(s run.RunStep) bool { return s.Kind == run.CutStep || s.Kind == run.LotStep }

// withAll is the harness with a change to the record of each serial that a step is done for.
func withAll(m *desk.Model, s run.RunStep, f func(b *model.Build)) *model.Harness {
	r := state(m)
	if !isTogether(s) || len(r.with) < 2 {
		return edited(m, f)
	}
	h := m.H
	for _, serial := range r.with {
		h = h.EditBuild(serial, f)
	}
	return h
}

// build is what is built, as far as it is. What is cut together counts once it is cut for every
// serial.
func build(m *desk.Model) *model.Build {
	r := state(m)
	if len(r.with) < 2 {
		return own(m)
	}
	return r.merged.Get(m.Sheet, 0, r.serial, func() *model.Build {
		b := *own(m)
		b.Steps, b.Done = slices.Clone(b.Steps), slices.Clone(b.Done)
		lacks := func(key string) bool {
			return (strings.HasPrefix(key, "cut ") || strings.HasPrefix(key, "lot ")) &&
				slices.ContainsFunc(r.with, func(serial string) bool { k := m.H.BuildOf(serial); return k < 0 || !m.H.Builds[k].Did(key) })
		}
		b.Steps = slices.DeleteFunc(b.Steps, func(t model.Ticked) bool { return lacks(t.Key) })
		b.Done = slices.DeleteFunc(b.Done, lacks)
		return &b
	})
}

// lacking are the serials that a piece is still to be cut for; all of them where it is cut for each.
func lacking(m *desk.Model, s run.RunStep, p run.Piece) []string {
	r := state(m)
	if s.Kind != run.CutStep || len(r.with) < 2 {
		return nil
	}
	var out []string
	for _, serial := range r.with {
		if k := m.H.BuildOf(serial); k < 0 || !m.H.Builds[k].Did(p.Key) {
			out = append(out, serial)
		}
	}
	if len(out) == 0 {
		return r.with
	}
	return out
}

// inHandStep is the step in hand; the zero value at the end.
func inHandStep(m *desk.Model) run.RunStep {
	if r, steps := state(m), runSteps(m); r.at < len(steps) {
		return steps[r.at]
	}
	return run.RunStep{}
}

// headSerial is the serial in hand as the head names it, or all that a step is done for.
func headSerial(m *desk.Model) string {
	r, steps := state(m), runSteps(m)
	if len(r.with) > 1 && r.at < len(steps) && isTogether(steps[r.at]) {
		return "serials " + words.List(r.with)
	}
	return "serial " + r.serial
}

// otherRows go on with another serial of those that are cut together.
func otherRows(m *desk.Model) []desk.Row {
	r, steps := state(m), runSteps(m)
	if len(r.with) < 2 || r.at < len(steps) && isTogether(steps[r.at]) {
		return nil
	}
	var out []desk.Row
	for _, serial := range r.with {
		if serial == r.serial {
			continue
		}
		text := "go on with serial " + serial
		if k := m.H.BuildOf(serial); k >= 0 {
			all := run.For(m.Sheet, &m.H.Builds[k])
			text += fmt.Sprintf(": %d of %d steps done", stepsDone(all, &m.H.Builds[k]), len(all))
		}
		out = append(out, desk.Row{Key: "serial " + serial, Text: text, Does: "go on",
			Detail: "Enter takes it in hand. What is done of serial " + r.serial + " stays done",
			Enter: func(m *desk.Model) {
				take(m, serial)
				m.Back()
				goOn(m)
				m.Unput()
				m.Tell("serial " + serial + " is in hand")
			}})
	}
	return out
}

// take takes a serial of the run in hand; goOn finds its step.
func take(m *desk.Model, serial string) {
	was := state(m)
	*was = running{serial: serial, with: was.with, refused: was.refused, who: was.who, instrument: was.instrument}
}
