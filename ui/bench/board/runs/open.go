package runs

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/phase/built"
	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/ui/bench/board/runs/say"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
)

// What is left open at the end of a run: nothing of it is passed over in silence.

// point is one open point of a run, and the step it can be settled at; −1 where it is none.
type point struct {
	says string
	at   int
}

// openPoints are those of the build in hand, the worst first: what is not done, what differs from
// the sheet, what was measured and is out of tolerance, what nobody has decided, readings that were
// refused, what was not measured, and tests.
func openPoints(m *desk.Model) []point {
	var out []point
	steps, b := runSteps(m), build(m)
	stepOf := func(of string, layer int) int {
		return slices.IndexFunc(steps, func(s run.RunStep) bool {
			return (s.Kind == run.LayStep && !s.Bare || s.Kind == run.BuildUpStep) && s.Of == of && s.Layer == layer
		})
	}
	for k, s := range steps {
		if !s.In(b) {
			out = append(out, point{"not done: " + say.Step(m, s), k})
		}
	}
	out = append(out, outOfLimits(m)...)
	for _, d := range since(m).Differences {
		out = append(out, point{"not as the sheet: " + d.Says, -1})
	}
	for _, g := range m.Sheet.Snags {
		if g.Rule == "built.over" && g.Level > sheet.Note && g.Like == b.Serial {
			out = append(out, point{"out of tolerance: " + g.Where + ": " + g.Says, -1})
		}
	}
	for _, d := range b.Apart {
		if !d.By.Set {
			k := slices.IndexFunc(steps, func(s run.RunStep) bool { return d.Step.Set && slices.Contains(s.Marks(), d.Step.V) })
			out = append(out, point{fmt.Sprintf("deviation that nobody has decided on, %s: %s", d.At, d.Says), k})
		}
	}
	var refused []string
	for of, text := range state(m).refused {
		if serial, what, _ := strings.Cut(of, "\n"); serial == b.Serial {
			refused = append(refused, fmt.Sprintf("reading refused, and none taken since: %s for the %s", text, what))
		}
	}
	slices.Sort(refused)
	for _, text := range refused {
		out = append(out, point{text, -1})
	}
	var bare []string
	first := -1
	for i := range m.Sheet.Branches {
		for k := range m.Sheet.Branches[i].Layers {
			id := m.H.Branches[i].ID
			if r := b.ReadingOf(id, k); r == nil || len(r.OverMM) == 0 {
				if bare = append(bare, built.LayerAt(id, k)); first < 0 {
					first = stepOf(id, k)
				}
			}
		}
	}
	if len(bare) > 0 {
		const room = 3
		text := fmt.Sprintf("not measured: %s: %s", words.Plural(len(bare), "layer", "layers"),
			strings.Join(bare[:min(room, len(bare))], ", "))
		if len(bare) > room {
			text += " ..."
		}
		out = append(out, point{text, first})
	}
	if len(b.Tests) == 0 && !b.EachTest.V {
		out = append(out, point{"no test result is written down; the holds are signed, not measured", -1})
	}
	return out
}

// outOfLimits are the readings that are out of their limits and that nobody has decided on, each at
// its step: tests, and diameters that no wire explains.
func outOfLimits(m *desk.Model) []point {
	var out []point
	b := build(m)
	for k, s := range runSteps(m) {
		for _, p := range piecesOf(m, s) {
			if p.Check.Kind == run.NoCheck {
				continue
			}
			if result, last := p.Check.Result(b, s.Key); result == run.Failed {
				out = append(out, point{"out of limits: " + p.Check.Name + ": " + say.Read(p.Check, last), k})
			}
		}
		if s.Kind != run.LayStep && s.Kind != run.BuildUpStep {
			continue
		}
		e, read := explained(m, s, b.ReadingOf(s.Of, s.Layer))
		if read && (e.Told == run.TooThick || e.Told == run.TooThin) && !decided(b, s.Key) {
			out = append(out, point{fmt.Sprintf("out of limits: %s measures %s, and nobody has decided on it", say.Layer(s),
				m.Sys.Fine(e.ReadMM)), k})
		}
	}
	return out
}

// decided reports whether somebody with a name has written down that a step stays as it is.
func decided(b *model.Build, step string) bool {
	return slices.ContainsFunc(b.Apart, func(d model.Deviation) bool { return d.Step.V == step && d.By.Set })
}

// openRows are the open points as rows: Enter goes to the step where one is settled.
func openRows(m *desk.Model, w int) []desk.Row {
	var out []desk.Row
	for n, o := range openPoints(m) {
		for k, text := range kit.Wrap(o.says, max(20, w-5)) {
			row := desk.Row{Key: fmt.Sprint("open ", n, " ", k), Text: text, Detail: o.says}
			if k > 0 {
				row.Text = "  " + text
			}
			if o.at >= 0 {
				row.Does, row.Detail = "go there", "Enter goes to that step"
				row.Enter = func(m *desk.Model) {
					goTo(m, o.at)
				}
			}
			out = append(out, row)
		}
	}
	return out
}
