package runs

import (
	"fmt"

	"contralay/calc/query/run"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/board/runs/say"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// Tests are made one by one: a net rings or does not, a reading is within its limit or not. What is
// out of its limit is a hold of its own, until it is mended and tested again, or somebody with a
// name decides that it stays.

// testRow makes one test: Enter passes it where no number is asked, digits are what was read.
func testRow(m *desk.Model, s run.RunStep, p run.Piece) desk.Row {
	c := p.Check
	row := desk.Row{Key: "done", Does: "passes", Text: say.Passes(c) + ": next",
		Detail: "Enter: it passes. Digits: what the meter reads, " + c.Unit(), Enter: tickPiece, Field: readingField(s, p)}
	if c.NeedsReading() {
		row.Text, row.Does = say.Passes(c)+": type the reading", "type"
		row.Detail = "Digits, then Enter: what the instrument reads, " + c.Unit()
	}
	if c.Kind == run.Silent {
		row.Field, row.Detail = nil, "Enter: it rings to nothing"
	}
	if result, _ := c.Result(build(m), s.Key); result == run.Failed {
		row.Text = "test it again: " + say.Passes(c)
	}
	return row
}

// readingField takes the reading of a test.
func readingField(s run.RunStep, p run.Piece) *desk.Field {
	c := p.Check
	return &desk.Field{Label: say.Passes(c), Unit: c.Unit(), Number: true, Set: func(m *desk.Model, text string) error {
		v, err := unit.ParseNumber(text)
		if err != nil {
			return err
		}
		if v < 0 || v > 1e6 {
			return fmt.Errorf("%s %s cannot be. Measure again and type it again", text, c.Unit())
		}
		record(m, s, p, model.Some(v), "")
		return nil
	}}
}

// passPiece passes the test in hand, where no number is asked.
func passPiece(m *desk.Model, s run.RunStep, p run.Piece) {
	switch result, _ := p.Check.Result(build(m), s.Key); {
	case result == run.Passed || result == run.Conceded || s.In(build(m)):
		next(m, "it was tested already")
	case p.Check.NeedsReading():
		m.OpenField(*readingField(s, p), "")
	default:
		record(m, s, p, model.Opt[float64]{}, "")
	}
}

// record writes a test down; what has passed is gone on from.
func record(m *desk.Model, s run.RunStep, p run.Piece, read model.Opt[float64], fault string) {
	if held(m) {
		return
	}
	r, c := state(m), p.Check
	m.Change(edited(m, func(b *model.Build) {
		s.Test(b, piecesOf(m, s), c, read, fault, r.instrument[c.Kind], now(m), r.who)
	}), "")
	if m.Trouble {
		return
	}
	result, last := c.Result(build(m), s.Key)
	if result == run.Failed {
		m.Refuse("out of limits: " + say.Read(c, last) + ", " + say.Limit(c))
		return
	}
	onward(m)
	m.Tell(say.Passes(c))
}

// faults are what may be wrong with what is tested without a number.
var faults = map[run.CheckKind]string{run.Rings: "does not ring", run.Silent: "rings, and must not", run.Pulled: "came off"}

// testRows are what else can be said of a test: a fault, the instrument, who decides that it stays.
func testRows(m *desk.Model, s run.RunStep, p run.Piece, b *model.Build) []desk.Row {
	c := p.Check
	var out []desk.Row
	if result, last := c.Result(b, s.Key); result == run.Failed {
		out = append(out, desk.Row{Key: "stays", Text: "it stays so: who decides it?", Does: "decide",
			Detail: "Digits, a scanner, or Enter and a name. It is printed as a deviation",
			Field: &desk.Field{Label: "who decides that it stays so", Scan: true, Set: func(m *desk.Model, text string) error {
				who, err := person(m, text)
				if err != nil {
					return err
				}
				d := model.Deviation{At: c.Name, Says: say.Read(c, last) + ", " + say.Limit(c),
					Step: model.Some(s.Key), By: model.Some(who.ID)}
				if on := now(m); on != "" {
					d.On = model.Some(on)
				}
				m.Change(edited(m, func(b *model.Build) { b.Apart = append(b.Apart, d) }), "it stays so, by "+named(m, who.ID))
				m.Unput()
				onward(m)
				return nil
			}}})
	}
	if says := faults[c.Kind]; says != "" && !s.In(b) {
		out = append(out, desk.Row{Key: "fault", Text: "it " + says, Does: "fails",
			Detail: "Enter writes it down. It is a hold until it is mended", Enter: func(m *desk.Model) {
				m.Unput()
				record(m, s, p, model.Opt[float64]{}, says)
			}})
	}
	return append(out, instrumentRow(m, c.Kind))
}

// instrumentRow is what a kind of test is read on: from the shop's list, or any text.
func instrumentRow(m *desk.Model, kind run.CheckKind) desk.Row {
	use := func(m *desk.Model, id string) {
		if state(m).instrument == nil {
			state(m).instrument = map[run.CheckKind]string{}
		}
		state(m).instrument[kind] = id
		m.Unput()
		m.Tell("read on " + say.Instrument(m, id) + " from here on")
	}
	row := desk.Row{Key: "instrument", Text: "instrument  " + words.OrDash(say.Instrument(m, state(m).instrument[kind])),
		Detail: "Enter: what it is read on from here on"}
	typed := &desk.Field{Label: "instrument", Scan: true, Set: func(m *desk.Model, text string) error {
		use(m, text)
		return nil
	}}
	if len(m.Cfg.Cat.Instruments) == 0 {
		row.Field = typed
		return row
	}
	row.Enter = func(m *desk.Model) {
		m.Open(desk.ChooseScreen("instrument", func(*desk.Model) bool { return true }, func(m *desk.Model) []desk.Choice {
			var all []desk.Choice
			for _, i := range m.Cfg.Cat.Instruments {
				all = append(all, desk.Choice{Value: i.ID, Says: say.Instrument(m, i.ID)})
			}
			return all
		}, func(m *desk.Model) string { return state(m).instrument[kind] }, use, nil))
	}
	return row
}
