package runs

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/phase/built"
	"contralay/calc/query/run"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
)

// apartRows write down what is built differently from the sheet, and list what was: it belongs to
// the wire, the layer or the part that is in hand.
func apartRows(m *desk.Model, s run.RunStep, b *model.Build) []desk.Row {
	row := desk.Row{Key: "apart", Text: "built differently", Detail: "Enter: what differs from the sheet, in words"}
	mark := markInHand(s, state(m).piece)
	row.Field = apartField(mark, s.Place(facts(m), mark))
	out := []desk.Row{row}
	for n, d := range b.Apart {
		if slices.Contains(s.Marks(), d.Step.V) || !d.Step.Set && len(d.Steps) == 0 && (d.At == s.Of || d.At == s.Key) {
			out = append(out, deviationRow(n, d))
		}
	}
	return out
}

func apartField(key, at string) *desk.Field {
	return &desk.Field{Label: "what differs at " + at, Set: func(m *desk.Model, text string) error {
		if text == "" {
			return nil
		}
		if _, err := unit.ParseNumber(text); err == nil {
			return fmt.Errorf("type words: what differs from the sheet. A reading goes on the first row")
		}
		d := model.Deviation{At: at, Says: text, Step: model.Some(key)}
		if on := now(m); on != "" {
			d.On = model.Some(on)
		}
		m.Change(edited(m, func(b *model.Build) { b.Apart = append(b.Apart, d) }), "written down at "+at)
		m.Unput() // the next Enter ticks, and asks for no other word
		return nil
	}}
}

// deviationRow is one thing that is built differently, and who has decided that it stays so.
func deviationRow(n int, d model.Deviation) desk.Row {
	text := fmt.Sprintf("  differs at %s: %s", d.At, d.Says)
	detail := "Digits, a scanner, or Enter and a name: who decides that it stays so. Press . to strike it out"
	if d.By.Set {
		text += fmt.Sprintf("  (%s)", strings.TrimSpace(d.By.V+"  "+d.On.V))
	}
	return desk.Row{Key: fmt.Sprint("apart ", n), Text: text, Detail: detail,
		Drop: func(m *desk.Model) {
			m.Change(edited(m, func(b *model.Build) { built.Strike(b, n) }), "struck out")
		},
		Field: &desk.Field{Label: "who decides that it stays so", Scan: true, Value: d.By.V, Set: func(m *desk.Model, who string) error {
			if who == "" {
				return fmt.Errorf("type your number or name")
			}
			m.Change(edited(m, func(b *model.Build) {
				if n < len(b.Apart) {
					b.Apart[n].By = model.Some(who)
				}
			}), "decided by "+who)
			return nil
		}}}
}
