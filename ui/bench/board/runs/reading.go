package runs

import (
	"fmt"
	"slices"

	"contralay/calc/phase/built"
	"contralay/calc/query/run"
	"contralay/calc/query/why"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/board/runs/cards"
	"contralay/ui/bench/desk"
)

// measured reads a size that was measured, where about so much is expected; 0 is not known. One
// that is less than half or more than twice that is asked for again, however often Enter is
// pressed: a burst of the calliper, 53 for 5.3, inch for mm. The end of the run names it.
func measured(m *desk.Model, text, of string, most, about unit.Millimetre) (unit.Millimetre, error) {
	r := state(m)
	refuse := func(err error) (unit.Millimetre, error) {
		if text != "" {
			if r.refused == nil {
				r.refused = map[string]string{}
			}
			r.refused[r.serial+"\n"+of] = text
		}
		return 0, err
	}
	v, err := m.PartSize(text, most)
	if err != nil {
		return refuse(err)
	}
	if about > 0 && (v > 2*about || v < about/2) {
		return refuse(fmt.Errorf("%s %s cannot be: the sheet has %s. Measure again and type it again", m.Sys.Fine(v), m.Sys.Name(),
			m.Sys.Diameter(about)))
	}
	delete(r.refused, r.serial+"\n"+of)
	return v, nil
}

// sheathOver is the OD over the sheath of a branch by the sheet; 0 where it is not known.
func sheathOver(m *desk.Model, branch string) unit.Millimetre {
	s := begun(m)
	i, ok := s.Index.Branch[branch]
	if !ok || !s.Branches[i].Sheath.Verdict.Wraps {
		return 0
	}
	return s.Branches[i].Sheath.Verdict.OverMM
}

// readRow takes readings of a layer: digits and Enter each; Enter alone goes on.
func readRow(m *desk.Model, s run.RunStep, b *model.Build) desk.Row {
	text := "done, next; or digits: measured OD" + readWhen(s)
	if r := b.ReadingOf(s.Of, s.Layer); r != nil && len(*s.Readings(r)) > 0 {
		text = fmt.Sprintf("done, next; digits: another reading, %d so far", len(*s.Readings(r)))
	}
	return desk.Row{Key: "done", Does: "done", Text: text, Detail: "Turn the bundle between readings. You can leave measuring out",
		Enter: func(m *desk.Model) {
			if !odd(m, s) {
				tick(m, nil)
			}
		}, Field: odField(m, s)}
}

// readWhen is when a step measures, where that is to be said.
func readWhen(s run.RunStep) string {
	switch {
	case s.Bare:
		return " before the tape"
	case s.Kind == run.BuildUpStep:
		return " with the tape"
	}
	return ""
}

// odField takes a reading of a layer.
func odField(m *desk.Model, s run.RunStep) *desk.Field {
	when := readWhen(s)
	f := &desk.Field{Label: "OD of " + model.LayerName(s.Layer) + when, Unit: m.Sys.Name(), Number: true}
	f.Set = func(m *desk.Model, text string) error {
		over, _ := run.SheetOver(begun(m), own(m), s)
		v, err := measured(m, text, "OD of "+built.LayerAt(s.Of, s.Layer)+when, desk.MostPart, over)
		if err != nil {
			return err
		}
		m.Change(edited(m, func(b *model.Build) {
			r := b.ReadingOf(s.Of, s.Layer)
			if r == nil {
				b.Readings = append(b.Readings, model.Reading{Branch: s.Of, Layer: s.Layer})
				r = &b.Readings[len(b.Readings)-1]
			}
			read := s.Readings(r)
			*read = append(*read, v)
		}), "read "+m.Sys.Fine(v)+" "+m.Sys.Name())
		return nil
	}
	return f
}

// readingRows are the offers that follow from a reading, the readings, and the turn.
func readingRows(m *desk.Model, s run.RunStep, b *model.Build) []desk.Row {
	var out []desk.Row
	r := b.ReadingOf(s.Of, s.Layer)
	if e, ok := explained(m, s, r); ok {
		if e.Told == run.AsWire && e.Spec != "" {
			spec, size, d := e.Spec, e.Size, unit.Millimetre(unit.RoundHalfUp(float64(e.AsIfMM), 0.01))
			out = append(out, desk.Row{Key: "reel", Text: fmt.Sprintf("take %s as measured for %s %s", m.Sys.Fine(d), spec, size),
				Detail: "Measure ten side by side first. Enter takes it and changes every figure", Enter: func(m *desk.Model) {
					m.Change(m.H.SetReel(spec, size, d), fmt.Sprintf("%s %s is %s %s", spec, size, m.Sys.Fine(d), m.Sys.Name()))
				}})
		}
		if e.Told != run.TooThick && e.Told != run.TooThin && e.OtherSheath != "" {
			other, i := e.OtherSheath, m.Sheet.Index.Branch[s.Of]
			out = append(out, desk.Row{Key: "sheath", Text: "take " + other + " as sheath instead", Detail: "Enter takes it. Cut it again",
				Enter: func(m *desk.Model) {
					m.Change(m.H.EditBranch(i, func(b *model.Branch) { desk.SheathOf(b).Part = model.Some(other) }),
						"sheath of "+s.Of+" is "+other)
				}})
		}
	}
	if r != nil {
		for n, v := range *s.Readings(r) {
			out = append(out, desk.Row{Key: fmt.Sprint("reading ", n),
				Text: fmt.Sprintf("reading %d  %s %s", n+1, m.Sys.Fine(v), m.Sys.Name()), Detail: "Press . to strike it out",
				Drop: func(m *desk.Model) {
					m.Change(edited(m, func(b *model.Build) {
						if r := b.ReadingOf(s.Of, s.Layer); r != nil && n < len(*s.Readings(r)) {
							read := s.Readings(r)
							*read = slices.Delete(*read, n, n+1)
						}
					}), "struck out")
				}, Why: []desk.Reason{{Made: func() (why.Why, bool) {
					return why.Stated("reading", "as it was measured", float64(v), why.Diameter, desk.Given), true
				}}}})
		}
	}
	if s.Kind == run.BuildUpStep {
		return out // tape has no lay
	}
	turn := "-"
	if r != nil && r.LayMM.Set {
		turn = m.Sys.Length(r.LayMM.V) + " " + m.Sys.Name()
	}
	return append(out, desk.Row{Key: "turn", Text: "measured lay  " + turn, Detail: "Digits: one turn, measured along the bundle",
		Field: &desk.Field{Label: "measured lay", Unit: m.Sys.Name(), Number: true, Set: func(m *desk.Model, text string) error {
			lay := unit.Millimetre(0)
			if l, ok := cards.LayerAt(m, s); ok {
				lay = l.LayMM
			}
			v, err := measured(m, text, "lay of "+built.LayerAt(s.Of, s.Layer), 2000, lay)
			if err != nil {
				return err
			}
			m.Change(edited(m, func(b *model.Build) {
				r := b.ReadingOf(s.Of, s.Layer)
				if r == nil {
					b.Readings = append(b.Readings, model.Reading{Branch: s.Of, Layer: s.Layer})
					r = &b.Readings[len(b.Readings)-1]
				}
				r.LayMM = model.Some(v)
			}), "lay "+m.Sys.Length(v))
			return nil
		}}})
}

// explained is what the readings of a layer come to.
func explained(m *desk.Model, s run.RunStep, r *model.Reading) (run.Explained, bool) {
	i, ok := m.Sheet.Index.Branch[s.Of]
	if !ok || r == nil {
		return run.Explained{}, false
	}
	read := *s.Readings(r)
	told := state(m).read.Get(m.Sheet, 0, fmt.Sprint(state(m).serial, s.Key, read, own(m).GoesBy), func() reading {
		e, ok := run.Explain(begun(m), own(m), i, s, read)
		return reading{e, ok}
	})
	return told.Explained, told.ok
}
