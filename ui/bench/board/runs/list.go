package runs

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/query/run"
	"contralay/model"
	"contralay/ui/bench/board/runs/say"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// The list of steps: what is done, by whom and when, and what is open. Enter goes to a step, a point
// takes it back with a reason.

// StepsKind is that screen.
const StepsKind desk.Kind = "steps"

// The filters that are no kind of step.
const (
	allSteps    = "all"
	openSteps   = "open"
	tickedSteps = "ticked"
)

// filters are what the list can be narrowed to: what is open, what is ticked, each kind there is.
func filters(m *desk.Model) []string {
	out := []string{allSteps, openSteps, tickedSteps}
	for _, s := range runSteps(m) {
		if !slices.Contains(out, s.Kind.Work()) {
			out = append(out, s.Kind.Work())
		}
	}
	return out
}

// stepsRow opens the list.
func stepsRow(m *desk.Model) desk.Row {
	steps := runSteps(m)
	return desk.Row{Key: "steps", Text: fmt.Sprintf("all steps: %d of %d done", stepsDone(steps, build(m)), len(steps)),
		Detail: "Enter lists them: go to one, or take one back. Digits: go to a step by its number",
		Enter:  func(m *desk.Model) { m.Show(StepsKind, "") }, Field: numberField(m)}
}

// numberField goes to a step by its number.
func numberField(m *desk.Model) *desk.Field {
	n := len(runSteps(m))
	return &desk.Field{Label: "go to step", Number: true, Set: func(m *desk.Model, text string) error {
		k := 0
		if _, err := fmt.Sscanf(text, "%d", &k); err != nil || k < 1 || k > n || fmt.Sprint(k) != text {
			return fmt.Errorf("there is no step %s: 1 to %d", text, n)
		}
		jump(m, k-1)
		return nil
	}}
}

// jump goes to a step, from wherever it was asked.
func jump(m *desk.Model, at int) {
	for m.Top() != RunKind && len(m.Stack) > 0 {
		m.Back()
	}
	goTo(m, at)
	m.Unput()
	if m.Tell("the end. What is open stands below"); at < len(runSteps(m)) {
		m.Tell(fmt.Sprintf("step %d. Nothing is ticked by going there", at+1))
	}
}

// StepsPage lists the steps that the filter lets through.
func StepsPage(m *desk.Model, _ int, _ string) desk.Page {
	r, steps, b := state(m), runSteps(m), build(m)
	if r.show == "" {
		r.show = allSteps
	}
	turn := func(m *desk.Model, by int) { state(m).show, _ = words.Around(filters(m), state(m).show, by) }
	p := desk.Page{Rows: []desk.Row{{Key: "show", Text: "show  " + r.show, Does: "next", Step: turn,
		Detail: "+ and -: all, open, ticked, one kind. Digits: go to a step by its number",
		Enter:  func(m *desk.Model) { turn(m, 1) }, Field: numberField(m)},
		{Key: "end", Text: "the end: what is open, and saving", Does: "go there", Detail: "Enter goes there",
			Enter: func(m *desk.Model) { jump(m, len(steps)) }, Field: numberField(m)}}}
	for k, s := range steps {
		in := s.In(b)
		if !(r.show == allSteps || r.show == openSteps && !in || r.show == tickedSteps && in || r.show == s.Kind.Work()) {
			continue
		}
		row := desk.Row{Key: fmt.Sprint("step ", s.Key), TextOf: func() string { return stepText(m, s, k, b) }, Does: "go there",
			Detail: "Enter goes there", Field: numberField(m), Enter: func(m *desk.Model) { jump(m, k) }}
		if in {
			row.Detail = "Enter goes there. Press . to take it back, with a reason"
			row.Drop = func(m *desk.Model) {
				askReason(m, func(m *desk.Model, reason string) { takeBack(m, s, s.Marks(), reason) })
			}
		}
		if k == r.at {
			p.Start = len(p.Rows)
		}
		p.Rows = append(p.Rows, row)
	}
	return p
}

// stepText is a step on the list: its number, whether it is done, what it is, who and when.
func stepText(m *desk.Model, s run.RunStep, k int, b *model.Build) string {
	done := words.Either(s.In(b), "done", "    ")
	text := fmt.Sprintf("%4d  %s  %s", k+1, done, say.Step(m, s))
	if all := piecesOf(m, s); !s.In(b) && len(all) > 0 {
		n := 0
		for _, p := range all {
			if s.Has(b, p) {
				n++
			}
		}
		if n > 0 {
			text += fmt.Sprintf("  %d of %d", n, len(all))
		}
	}
	marks := s.Marks()
	if t := b.TickOf(marks[len(marks)-1]); t != nil && s.In(b) {
		text += strings.TrimRight("  "+strings.TrimSpace(named(m, t.By.V)+"  "+t.At.V), " ")
	}
	return text
}
