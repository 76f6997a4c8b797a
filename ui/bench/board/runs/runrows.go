package runs

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/phase/built"
	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/board/runs/cards"
	"contralay/ui/bench/board/runs/say"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
)

func leaveRow(m *desk.Model) desk.Row {
	return desk.Row{Key: "leave", Text: "leave the run", Detail: "Esc does the same. The run goes on at this step",
		Enter: func(m *desk.Model) { m.Back() }}
}

// noteRow is what one hand tells the next.
func noteRow(m *desk.Model, b *model.Build) desk.Row {
	return desk.Row{Key: "note", Text: "hand-over  " + words.OrDash(b.Note.V), Detail: "Enter: a note for whoever continues",
		Field: &desk.Field{Label: "hand-over note", Value: b.Note.V, Set: func(m *desk.Model, text string) error {
			m.Change(edited(m, func(b *model.Build) {
				if b.Note = model.Some(text); text == "" {
					b.Note = model.Opt[string]{}
				}
			}), "noted")
			return nil
		}}}
}

// runRows are what can be done at a step; the first is done by Enter alone.
func runRows(m *desk.Model, s run.RunStep, b *model.Build, pages int) []desk.Row {
	r := state(m)
	p, is := pieceOf(m, s, r.piece)
	var first desk.Row
	switch {
	case r.page+1 < pages:
		first = readOnRow(r.page, pages)
	case is && p.Check.Kind != run.NoCheck:
		first = testRow(m, s, p)
	case is:
		first = pieceRow(m, s, p)
	case s.Kind == run.LotStep:
		first = lotRow(m, s, b)
	case s.Kind == run.HoldStep:
		first = holdRow(m, s, b)
	case s.Kind == run.LayStep, s.Kind == run.BuildUpStep:
		first = readRow(m, s, b)
	case s.Kind == run.WeighStep:
		first = weighRow(b)
	case s.Kind == run.ShrinkStep && s.Put.What == sheet.PartSheath:
		first = shrunkRow(m, s, b)
	default:
		first = desk.Row{Key: "done", Does: "done", Text: "done, next", Detail: "Enter marks it as done",
			Enter: func(m *desk.Model) { tick(m, nil) }}
	}
	if (s.Kind != run.HoldStep || is && !p.Check.NeedsReading()) && s.Kind != run.LotStep && r.page+1 == pages {
		first.Step, first.Steps = tickGroup, groupWord(s)
	}
	out := []desk.Row{first}
	if s.Kind == run.LayStep || s.Kind == run.BuildUpStep {
		out = append(out, readingRows(m, s, b)...)
	}
	if s.Kind == run.LayStep && !is && m.ListHeight() < 8 { // a card has it where there is room for one
		for k, text := range kit.Wrap(cards.Order(m, s), max(20, m.ListWidth()-3)) {
			out = append(out, desk.Row{Key: fmt.Sprint("order ", k), Text: text, Detail: "Read on with the arrows"})
		}
	}
	if is && p.Check.Kind != run.NoCheck {
		out = append(out, testRows(m, s, p, b)...)
	}
	if s.Kind == run.LotStep {
		out = append(out, lotRows(m, s, b)...)
	}
	if s.Kind == run.CutStep {
		out = append(out, spoolRow(m, p, b), usedRow(m, s, b))
	}
	if s.Kind == run.PinStep {
		out = append(out, againRow(m, s))
	}
	if s.Kind == run.HoldStep && s.Key != run.HoldStops && !s.In(b) && !is {
		out = append(out, aloneRow(m, s))
	}
	out = append(out, stepsRow(m))
	out = append(out, apartRows(m, s, b)...)
	out = append(out, noteRow(m, b))
	out = append(out, notDoneRows(m, s, b)...)
	out = append(out, otherRows(m)...)
	return append(append(out, goesByRows(m)...), whoRow(m), leaveRow(m))
}

// goesByRows say that a serial keeps the figures it was begun with, where the shop has learned since.
func goesByRows(m *desk.Model) []desk.Row {
	was := own(m).GoesBy
	is := built.GoesBy(m.Sheet)
	if was == nil || slices.Equal(was, is) {
		return nil
	}
	list := func(all []string) string {
		if len(all) == 0 {
			return "nothing"
		}
		return strings.Join(all, ", ")
	}
	return []desk.Row{{Key: "goes by", Text: "figures  as it was begun, corrected by " + list(was),
		Detail: "The shop now corrects by " + list(is) + ". This serial keeps its own"}}
}

// readOnRow turns to the next page of a step that is to be read first.
func readOnRow(page, pages int) desk.Row {
	on := func(m *desk.Model) {
		state(m).page++
		m.Tell("")
	}
	return desk.Row{Key: "done", Does: "read on", Text: fmt.Sprintf("read on: page %d of %d", page+2, pages),
		Detail: "Enter turns the page", Enter: on, Step: func(m *desk.Model, _ int) { on(m) }, Steps: "read on"}
}

// groupWord is what + ticks at a step, in a word.
func groupWord(s run.RunStep) string {
	switch s.Kind {
	case run.CutStep:
		return "spool"
	case run.LayStep:
		return "layer"
	case run.PinStep:
		return "connector"
	case run.ThreadStep, run.ShrinkStep:
		return "all of this end"
	case run.HoldStep:
		return "connector"
	case run.PullStep:
		return "samples"
	}
	return "done"
}

// pieceRow does the piece in hand.
func pieceRow(m *desk.Model, s run.RunStep, p run.Piece) desk.Row {
	n := len(run.Group(m.Sheet, runSteps(m), build(m), state(m).at, p))
	row := desk.Row{Key: "done", Does: "next", Text: say.Piece(m, s, p) + ": next", Enter: tickPiece,
		Detail: "Enter ticks this one. + ticks " + say.Group(m, s, p, n)}
	if s.Kind == run.LayStep {
		row.Field = odField(m, s)
		row.Detail += ". Digits: measured OD"
	}
	return row
}

// notDoneRows take back what is done: the piece in hand, or the whole step. What was done stays on
// record, with the reason.
func notDoneRows(m *desk.Model, s run.RunStep, b *model.Build) []desk.Row {
	p, is := pieceOf(m, s, state(m).piece)
	if is && p.Check.Kind != run.NoCheck && !s.In(b) {
		return nil // a test that was made is made again, and the last one counts
	}
	if is && s.Has(b, p) && (s.Kind == run.CutStep || !s.In(b)) {
		if s.Kind == run.CutStep {
			return []desk.Row{notDoneRow(s, "take it back: "+say.Piece(m, s, p), []string{p.Key})}
		}
		return []desk.Row{{Key: "not done", Text: "take it back: " + say.Piece(m, s, p), Detail: "Enter asks why, then takes the tick off",
			Enter: func(m *desk.Model) {
				askReason(m, func(m *desk.Model, reason string) {
					m.Change(withAll(m, s, func(b *model.Build) { b.TakeOff(s.Key, p.Key) }), "taken back: "+reason)
				})
			}}}
	}
	if !s.In(b) {
		return nil
	}
	return []desk.Row{notDoneRow(s, "not done after all", s.Marks())}
}

// takeBack takes marks of a step back, with the holds that were signed for them, the mass that they are in, and the
// concessions that those were signed with. It says what is asked again besides.
func takeBack(m *desk.Model, s run.RunStep, marks []string, reason string) {
	all, says := facts(m), "taken back: "+reason
	if proofs := built.Proofs(all, build(m), marks); len(proofs) > 0 {
		says += ". To do again for it: " + strings.Join(stepNames(m, proofs), "; ")
	}
	m.Change(withAll(m, s, func(b *model.Build) {
		for _, key := range slices.Concat(built.Proofs(all, b, marks), marks) {
			built.Undo(b, key, reason)
			b.Apart = slices.DeleteFunc(b.Apart, func(d model.Deviation) bool { return d.Step.V == key && d.Says == aloneSays })
		}
	}), says)
}

// notDoneRow asks why it is taken back: that stays on record beside the tick.
func notDoneRow(s run.RunStep, text string, marks []string) desk.Row {
	return desk.Row{Key: "not done", Text: text, Detail: "Enter asks why, then takes the tick off. What was done stays on record",
		Enter: func(m *desk.Model) {
			askReason(m, func(m *desk.Model, reason string) { takeBack(m, s, marks, reason) })
		}}
}

// reasons are what work is taken back for; any other is typed. Common practice, no source.
var reasons = []string{"ticked by mistake", "wrong wire", "wrong length", "wrong place", "damaged", "done again"}

// askReason lists reasons and takes work back with the one that is chosen.
func askReason(m *desk.Model, take func(m *desk.Model, reason string)) {
	undo := func(m *desk.Model, reason string) {
		take(m, reason)
		m.Unput() // the next Enter does it, and takes nothing else off
	}
	var all []desk.Choice
	for _, r := range reasons {
		all = append(all, desk.Choice{Value: r, Says: r})
	}
	m.Open(desk.ChooseScreen("why it is taken back", func(*desk.Model) bool { return true },
		func(*desk.Model) []desk.Choice { return slices.Clone(all) }, func(*desk.Model) string { return "" }, undo,
		&desk.Field{Label: "why it is taken back", Set: func(m *desk.Model, text string) error {
			if text == "" {
				return fmt.Errorf("type the reason in words")
			}
			undo(m, text)
			return nil
		}}))
}

// holdRow passes a hold point: Enter alone does not, somebody signs who has not built it.
func holdRow(m *desk.Model, s run.RunStep, b *model.Build) desk.Row {
	text := "sign to continue"
	for _, g := range b.Signed {
		if g.Step == s.Key {
			text = "signed by " + named(m, g.By) + "  " + g.At.V
		}
	}
	detail := "Digits, a scanner, or Enter and a name: who has inspected it"
	if s.Key == run.HoldStops {
		detail = "Digits, a scanner, or Enter and a name: who decides it"
	}
	row := desk.Row{Key: "sign", Does: "sign", Text: text, Detail: detail,
		Field: &desk.Field{Label: "passed by", Scan: true, Set: func(m *desk.Model, text string) error {
			who, err := inspector(m, s, build(m), text)
			if err != nil {
				return err
			}
			sign(m, s, who, nil)
			return nil
		}}}
	if s.In(b) {
		row.Does, row.Enter = "next", func(m *desk.Model) { next(m, "it was signed already") }
	}
	return row
}

// again reports whether the same was asked just before: what is odd is done when it is
// asked twice.
func again(m *desk.Model, what string) bool {
	was := state(m).asked
	state(m).asked = what
	return was == what
}

func shrunkRow(m *desk.Model, s run.RunStep, b *model.Build) desk.Row {
	text := "done, next; or digits: measured OD of the sheath"
	for _, r := range b.Tubes {
		if r.Branch == s.Of {
			text = fmt.Sprintf("done, next; measured %s %s", m.Sys.Fine(r.OverMM), m.Sys.Name())
		}
	}
	return desk.Row{Key: "done", Does: "done", Text: text, Detail: "Measure it cold. You can leave it out",
		Enter: func(m *desk.Model) { tick(m, nil) },
		Field: &desk.Field{Label: "OD over sheath of " + s.Of, Unit: m.Sys.Name(), Number: true,
			Set: func(m *desk.Model, text string) error {
				v, err := measured(m, text, "OD over sheath of "+s.Of, desk.MostPart, sheathOver(m, s.Of))
				if err != nil {
					return err
				}
				m.Change(edited(m, func(b *model.Build) {
					b.Tubes = append(slices.DeleteFunc(b.Tubes, func(r model.Recovered) bool { return r.Branch == s.Of }),
						model.Recovered{Branch: s.Of, OverMM: v})
				}), "OD over sheath "+m.Sys.Fine(v))
				return nil
			}}}
}

// weighRow takes the mass of the finished harness.
func weighRow(b *model.Build) desk.Row {
	text := "done, next; or digits: what it weighs, g"
	if b.MassG.Set {
		text = "done, next; it weighs " + unit.Fixed(b.MassG.V, 1) + " g"
	}
	return desk.Row{Key: "done", Does: "done", Text: text, Detail: "Digits, then Enter: its mass in g. You can leave it out",
		Enter: func(m *desk.Model) { tick(m, nil) },
		Field: &desk.Field{Label: "mass", Unit: "g", Number: true, Set: func(m *desk.Model, text string) error {
			v, err := unit.ParseNumber(text)
			if err != nil {
				return err
			}
			if v <= 0 || v > 1e6 {
				return fmt.Errorf("%s g cannot be. Weigh it again and type it again", text)
			}
			m.Change(edited(m, func(b *model.Build) { b.MassG = model.Some(unit.Gram(v)) }), "it weighs "+unit.Fixed(v, 1)+" g")
			return nil
		}}}
}

// usedRow is what has gone off a reel, waste and all.
func usedRow(m *desk.Model, s run.RunStep, b *model.Build) desk.Row {
	spec, size, now := s.Cut.Spec, s.Cut.Size, ""
	for _, u := range b.Used {
		if u.Spec == spec && u.Size == size {
			now = m.Sys.Length(u.UsedMM)
		}
	}
	return desk.Row{Key: "used", Text: "taken off the reel  " + words.OrDash(now),
		Detail: "Digits: all taken off the reel for this serial, waste too, " + m.Sys.Name(),
		Field: &desk.Field{Label: "taken off " + spec + " " + size, Unit: m.Sys.Name(), Value: now, Number: true,
			Set: func(m *desk.Model, text string) error {
				v, err := m.PartSize(text, 1e7)
				if err != nil {
					return err
				}
				m.Change(edited(m, func(b *model.Build) {
					b.Used = append(slices.DeleteFunc(b.Used, func(u model.UsedWire) bool { return u.Spec == spec && u.Size == size }),
						model.UsedWire{Spec: spec, Size: size, UsedMM: v})
				}), "written down")
				return nil
			}}}
}

// againRow counts a contact that had to be made anew: it takes from the loop.
func againRow(m *desk.Model, s run.RunStep) desk.Row {
	return desk.Row{Key: "again", Text: "a contact was made again", Detail: "Digits or a name: which cavity. It uses up some of the loop",
		Field: &desk.Field{Label: "cavity of " + s.Of, ID: true, Set: func(m *desk.Model, text string) error {
			t := m.Sheet.Index.Termination[s.Of]
			name := m.H.Terminations[t].CavityOf(text)
			if _, ok := m.Sheet.Terms[t].State[name]; !ok {
				return fmt.Errorf("%s has no cavity %q", s.Of, text)
			}
			end := s.Of + ":" + name
			m.Change(edited(m, func(b *model.Build) {
				for k := range b.Again {
					if b.Again[k].End == end {
						b.Again[k].Times++
						return
					}
				}
				b.Again = append(b.Again, model.Again{End: end, Times: 1})
			}), "made again: "+end)
			return nil
		}}}
}
