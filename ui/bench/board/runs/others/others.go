package others

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/phase/built"
	"contralay/calc/query/run"
	"contralay/model"
	"contralay/model/runlog"
	"contralay/ui/bench/board/runs/say"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// Brought says what other benches did, the last of it in words, and ticks the steps whose pieces two
// have done between them: each saw only his own.
func Brought(m *desk.Model, lines []runlog.Line) string {
	settle(m, lines)
	n := 0
	for k := range lines {
		if lines[k].Do == runlog.Change {
			n++
		}
	}
	for k := len(lines) - 1; k >= 0; k-- {
		if lines[k].Do != runlog.Change {
			continue
		}
		text := says(m, lines[k])
		if n > 1 {
			text += ", and " + words.Plural(n-1, "entry", "entries") + " before that"
		}
		return text
	}
	return ""
}

// says is one line in words: "8  Bo ticked: 102 is on T1 layer 1".
func says(m *desk.Model, l runlog.Line) string {
	who, what := "another bench", "changed the record"
	name := func(by string) {
		if by != "" {
			p, _ := m.Cfg.Cat.Person(by)
			who = strings.TrimSpace(by + "  " + p.Name)
		}
	}
	is, was := &l.Is, &l.Was
	switch {
	case len(is.Steps) > 0:
		t := is.Steps[0]
		if t.Undone.Set {
			what = fmt.Sprintf("took back: %s (%s)", stepOf(m, l.Serial, t.Key), t.Undone.V)
			break
		}
		name(t.By.V)
		what = "ticked: " + stepOf(m, l.Serial, t.Key)
		var had []string
		if len(was.Steps) > 0 {
			had = was.Steps[0].SoFar
		}
		if more := slices.DeleteFunc(slices.Clone(t.SoFar), func(p string) bool { return slices.Contains(had, p) }); len(more) > 0 {
			what += ", " + strings.Join(more[:min(3, len(more))], ", ")
			if len(more) > 3 {
				what += fmt.Sprintf(" and %d more", len(more)-3)
			}
		}
	case len(was.Steps) > 0:
		what = "took a tick off: " + stepOf(m, l.Serial, was.Steps[0].Key)
	case len(is.Tests) > 0:
		t := is.Tests[0]
		name(t.By.V)
		what = "tested " + t.Net.V + t.Feed.V + t.Pull.V
		if t.Fault.Set {
			what += ": " + t.Fault.V
		}
	case len(is.Signed) > 0:
		name(is.Signed[0].By)
		what = "signed " + stepOf(m, l.Serial, is.Signed[0].Step)
	case len(is.Readings) > 0:
		what = "measured " + built.LayerAt(is.Readings[0].Branch, is.Readings[0].Layer)
	case len(is.Apart) > 0:
		name(is.Apart[0].By.V)
		what = fmt.Sprintf("wrote down what differs at %s: %s", is.Apart[0].At, is.Apart[0].Says)
	case len(is.Lots) > 0:
		name(is.Lots[0].By.V)
		what = "wrote down lot " + is.Lots[0].Lot + " of " + is.Lots[0].Of
	}
	return fmt.Sprintf("serial %s: %s %s", l.Serial, who, what)
}

// stepOf is the step of a mark in words; a wire that is cut is named alone.
func stepOf(m *desk.Model, serial, mark string) string {
	b := model.Build{}
	if k := m.H.BuildOf(serial); k >= 0 {
		b = m.H.Builds[k]
	}
	for _, s := range run.For(m.Sheet, &b) {
		if s.Kind != run.CutStep && slices.Contains(s.Marks(), mark) {
			return say.Step(m, s)
		}
	}
	return mark
}

// settle ticks steps whose pieces are all done and that nobody has ticked. A layer is measured first,
// a hold is signed.
func settle(m *desk.Model, lines []runlog.Line) {
	var met []string
	for _, l := range lines {
		k := m.H.BuildOf(l.Serial)
		if len(l.Is.Steps)+len(l.Is.Tests) == 0 || k < 0 || slices.Contains(met, l.Serial) {
			continue
		}
		met = append(met, l.Serial)
		b := &m.H.Builds[k]
		var open []run.RunStep
		for _, s := range run.For(m.Sheet, b) {
			if s.Kind == run.LayStep || s.Kind == run.HoldStep || s.Kind == run.CutStep || s.In(b) {
				continue
			}
			if all := run.Pieces(m.Sheet, s); len(all) > 0 && s.FirstOpen(b, all) == len(all) {
				open = append(open, s)
			}
		}
		if len(open) == 0 {
			continue
		}
		facts := built.Facts(m.Sheet)
		m.H = m.H.EditBuild(l.Serial, func(b *model.Build) {
			for _, s := range open {
				at, by := last(b, s.Key)
				s.Tick(b, facts, at, by)
			}
		})
		m.Rebuild()
	}
}

// last is when and by whom the last piece of a step was done.
func last(b *model.Build, key string) (at, by string) {
	if t := b.TickOf(key); t != nil {
		return t.At.V, t.By.V
	}
	for k := len(b.Tests) - 1; k >= 0; k-- {
		if b.Tests[k].Step.V == key {
			return b.Tests[k].At.V, b.Tests[k].By.V
		}
	}
	return "", ""
}
