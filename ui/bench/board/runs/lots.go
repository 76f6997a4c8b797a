package runs

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/query/run"
	"contralay/model"
	"contralay/ui/bench/board/runs/cards"
	"contralay/ui/bench/board/runs/say"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/paper"
)

// The lot of a reel is written down before the first wire comes off it; a spool of one colour may
// have one of its own.

// noLot is what stands for a label without a number.
const noLot = "no number on the label"

// lotField writes a lot down.
func lotField(of, label string, then func(m *desk.Model)) *desk.Field {
	return &desk.Field{Label: label, Scan: true, Set: func(m *desk.Model, text string) error {
		if text == "" {
			return fmt.Errorf("type the number on the label; if it has none, take the row that says so")
		}
		m.Change(withAll(m, inHandStep(m), func(b *model.Build) { putLot(m, b, of, text) }), "lot "+text)
		m.Unput()
		if then != nil && !m.Trouble {
			then(m)
		}
		return nil
	}}
}

func putLot(m *desk.Model, b *model.Build, of, lot string) {
	l := model.Lot{Of: of, Lot: lot}
	if at := now(m); at != "" {
		l.At = model.Some(at)
	}
	if who := state(m).who; who != "" {
		l.By = model.Some(who)
	}
	if !slices.ContainsFunc(b.Lots, func(o model.Lot) bool { return o.Of == of && o.Lot == lot }) {
		b.Lots = append(b.Lots, l)
	}
}

// lotRow takes the lot of a reel; Enter goes on once one is written down.
func lotRow(m *desk.Model, s run.RunStep, b *model.Build) desk.Row {
	row := desk.Row{Key: "done", Does: "type", Text: "the lot of this reel: type it",
		Detail: "Digits, a scanner, or Enter and letters: what the label says",
		Field:  lotField(s.Of, "lot of "+say.Reel(s.Of), func(m *desk.Model) { tick(m, nil) })}
	if len(cards.LotsOf(b, s.Of)) > 0 {
		row.Text, row.Does, row.Detail = "done, next; or another lot: type it", "done", "Enter goes on. Digits: one more lot of this reel"
		row.Enter = func(m *desk.Model) { tick(m, nil) }
	}
	return row
}

// lotRows are what else a lot may be: that of the serial before, or none on the label.
func lotRows(m *desk.Model, s run.RunStep, b *model.Build) []desk.Row {
	take := func(lot string) func(m *desk.Model) {
		return func(m *desk.Model) {
			m.Unput()
			tick(m, func(b *model.Build) { putLot(m, b, s.Of, lot) })
		}
	}
	var out []desk.Row
	if s.In(b) || len(cards.LotsOf(b, s.Of)) > 0 {
		return nil
	}
	for k := len(m.H.Builds) - 1; k >= 0; k-- {
		if all := cards.LotsOf(&m.H.Builds[k], s.Of); len(all) > 0 && all[len(all)-1] != noLot {
			lot := all[len(all)-1]
			out = append(out, desk.Row{Key: "same lot", Text: "the lot of serial " + m.H.Builds[k].Serial + ": " + lot, Does: "take",
				Detail: "Enter takes it", Enter: take(lot)})
			break
		}
	}
	return append(out, desk.Row{Key: "no lot", Text: noLot, Does: "take", Detail: "Enter writes that down, and goes on",
		Enter: take(noLot)})
}

// spoolRow is the lot of the spool that the wire in hand comes off.
func spoolRow(m *desk.Model, p run.Piece, b *model.Build) desk.Row {
	w := &m.H.Wires[m.Sheet.Index.Wire[p.ID]]
	of := strings.TrimSpace(w.Spec + " " + w.Size + " " + model.ColourWords(w.Colour.V))
	label := "lot of the spool " + paper.Size(w) + " " + model.ColourWords(w.Colour.V)
	return desk.Row{Key: "spool", Text: label + "  " + words.OrDash(strings.Join(cards.LotsOf(b, of), ", ")),
		Detail: "Enter: the number on its label, where it has one of its own", Field: lotField(of, label, nil)}
}
