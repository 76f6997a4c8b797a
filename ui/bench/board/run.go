package board

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/calc"
	"contralay/calc/query/run"
	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/paper"
)

// The bench run: a harness is built step by step, one instruction a screen, in letters that
// are read from across the board. What is done, signed and measured is in the file, so that
// a run that was cut off goes on at its step.

// running is where a run stands.
type running struct {
	serial string
	at     int                      // the step in hand; as many as there are where all are done
	steps  []run.RunStep            // those it was at before
	made   desk.Kept[[]run.RunStep] // those of the sheet in hand
	asked  string                   // the odd thing that was asked last
	read   desk.Kept[reading]       // what the readings of a layer come to
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
		r.steps = run.Run(m.Sheet)
		switch {
		case r.at < len(was): // a change may put steps before the one in hand: it stays in hand
			mark := was[r.at].Marks()[0]
			if k := slices.IndexFunc(r.steps, func(s run.RunStep) bool { return slices.Contains(s.Marks(), mark) }); k >= 0 {
				r.at = k
			}
		case len(was) > 0:
			r.at = len(r.steps)
		}
		return r.steps
	})
}

// edited is the harness with a change to what is built.
func edited(m *desk.Model, f func(b *model.Build)) *model.Harness {
	return m.H.EditBuild(state(m).serial, f)
}

// build is what is built, as far as it is.
func build(m *desk.Model) *model.Build {
	if k := m.H.BuildOf(state(m).serial); k >= 0 {
		return &m.H.Builds[k]
	}
	return &model.Build{Serial: state(m).serial}
}

// openSerial is the build that a run goes on with: the last that is not through, else the
// next number.
func openSerial(m *desk.Model) string {
	keys := run.Run(m.Sheet)
	for k := len(m.H.Builds) - 1; k >= 0; k-- {
		b := &m.H.Builds[k]
		if slices.ContainsFunc(keys, func(s run.RunStep) bool { return !s.In(b.Done) }) {
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

// runRow opens the run of a serial.
func runRow(m *desk.Model) desk.Row {
	serial := openSerial(m)
	b := model.Build{}
	if k := m.H.BuildOf(serial); k >= 0 {
		b = m.H.Builds[k]
	}
	text := "bench run of serial " + serial + ": begin it"
	if n := stepsDone(run.Run(m.Sheet), &b); n > 0 {
		text = fmt.Sprintf("bench run of serial %s: go on, %s done", serial, words.Plural(n, "step", "steps"))
	}
	return desk.Row{Key: "run", Text: text, Detail: "Enter: one instruction a screen, ticked as you build; digits: another serial",
		Enter: func(m *desk.Model) { startRun(m, serial) },
		Field: &desk.Field{Label: "serial to build", Value: serial, Set: func(m *desk.Model, text string) error {
			if text == "" {
				return fmt.Errorf("a serial is wanted: digits, or any text")
			}
			startRun(m, text)
			return nil
		}}}
}

// stepsDone is how many of the steps a build has done.
func stepsDone(steps []run.RunStep, b *model.Build) int {
	n := 0
	for _, s := range steps {
		if s.In(b.Done) {
			n++
		}
	}
	return n
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
	*state(m) = running{serial: serial}
	if m.H.BuildOf(serial) < 0 {
		s := calc.Complete(m.H, m.Cfg.Cat, m.Sheet)
		h := run.Written(s).EditBuild(serial, func(b *model.Build) {
			if m.Cfg.Now != nil {
				b.Begun = model.Some(m.Cfg.Now().Format("2006-01-02"))
			}
			if r := m.H.Head.Revision; r.Set {
				b.Revision = r
			}
		})
		was := m.H
		m.Change(h, "serial "+serial+" begun; what was proposed is written down and stays")
		if m.H == was {
			return // refused, and said
		}
	}
	state(m).at = firstOpen(m)
	face(m)
	m.Step = Step // whoever leaves the run stands where no digit changes a wire
	m.Show(RunKind, "")
}

// firstOpen is the first step that is not done; as many as there are where all are.
func firstOpen(m *desk.Model) int {
	done := build(m).Done
	steps := runSteps(m)
	k := slices.IndexFunc(steps, func(s run.RunStep) bool { return !s.In(done) })
	if k < 0 {
		return len(steps)
	}
	return k
}

// RunKind is the screen of a bench run.
const RunKind desk.Kind = "run"

// RunBack goes a step back; nothing is undone by that.
func RunBack(m *desk.Model) {
	r := state(m)
	if r.at == 0 {
		m.Tell("this is the first step")
		return
	}
	r.at--
	face(m)
	m.Tell("a step back; what is done stays done")
}

// tick marks the step in hand as done and goes to the next.
func tick(m *desk.Model, f func(b *model.Build)) {
	r := state(m)
	steps := runSteps(m)
	if r.at >= len(steps) {
		return
	}
	s := steps[r.at]
	if f == nil && s.In(build(m).Done) {
		r.at++
		face(m)
		m.Tell("it was done already")
		return
	}
	h := edited(m, func(b *model.Build) {
		if f != nil {
			f(b)
		}
		for _, mark := range s.Marks() {
			if !slices.Contains(b.Done, mark) {
				b.Done = append(b.Done, mark)
			}
		}
	})
	m.Change(h, "done: "+s.Key)
	runSteps(m) // where the step in hand is by now
	r.at++
	face(m)
}

// layingNow reports whether the step in hand lays or shrinks a branch, whose figures then
// stand below.
func layingNow(m *desk.Model) bool {
	r := state(m)
	steps := runSteps(m)
	return r.at < len(steps) && (steps[r.at].Kind == run.LayStep || steps[r.at].Put.What == sheet.PartSheath)
}

// Strip is how far the run is, but where a branch is laid or shrunk, whose figures stand there.
func Strip(m *desk.Model) (string, bool) {
	if layingNow(m) {
		return "", false
	}
	return fmt.Sprintf("%d of %d steps done", stepsDone(runSteps(m), build(m)), len(runSteps(m))), true
}

// face turns the bench to the branch of the step in hand.
func face(m *desk.Model) {
	r := state(m)
	steps := runSteps(m)
	if r.at < len(steps) {
		if i, ok := m.Sheet.X.Branch[steps[r.at].Of]; ok {
			m.Branch = i
		}
	}
}

// RunPage is one instruction.
func RunPage(m *desk.Model, w int, _ string) desk.Page {
	r := state(m)
	steps := runSteps(m)
	if m.H.BuildOf(r.serial) < 0 {
		return desk.Page{Empty: "serial " + r.serial + " is gone; Esc goes back"}
	}
	r.at = min(r.at, len(steps))
	if r.at == len(steps) {
		return runOver(m, w)
	}
	s := steps[r.at]
	b := build(m)
	l := instruct(m, s)
	p := desk.Page{Lines: []string{fmt.Sprintf("serial %s   step %d of %d   %s", r.serial, r.at+1, len(steps), l.title)}}
	if s.In(b.Done) {
		p.Lines[0] += "   DONE"
	}
	p.Rows = runRows(m, s, b)
	if desk.Arrange(m.W, m.Height, true).Work < 8 { // no room for more than what it is: the rest are rows
		p.Lines = []string{strings.ToUpper(strings.Join(l.large, "  "))}
		var more []desk.Row
		for _, t := range l.lines {
			for _, t := range words.Wrap(t, w-3) {
				more = append(more, desk.Row{Text: t, Detail: "read on with the arrows"})
			}
		}
		p.Rows = slices.Insert(p.Rows, 1, more...)
		return p
	}
	lines := 0
	for _, t := range l.lines {
		lines += len(words.Wrap(t, w))
	}
	p.Lines = append(p.Lines, inLarge(m, l.large, w, lines+4)...)
	p.Lines = append(p.Lines, l.lines...)
	return p
}

// inLarge is as many lines in large letters as leave room for what else is to be read;
// where there is none, or a line is too long, it stands as it is.
func inLarge(m *desk.Model, lines []string, w, rest int) []string {
	each := 4
	if m.Cfg.ASCII {
		each = 6
	}
	room := desk.Arrange(m.W, m.Height, true).Work - 2 - rest
	var out []string
	for _, t := range lines {
		big := words.Letters(t, w, m.Cfg.ASCII)
		if big == nil || room < each {
			out = append(out, strings.ToUpper(t))
			room--
			continue
		}
		room -= each
		out = append(append(out, ""), big...)
	}
	return append(out, "")
}

// runOver is the end of a run.
func runOver(m *desk.Model, w int) desk.Page {
	b := build(m)
	p := desk.Page{Lines: append([]string{fmt.Sprintf("serial %s   every step is done", b.Serial)}, inLarge(m, []string{"done"}, w, 6)...)}
	p.Lines = append(p.Lines, fmt.Sprintf("%s, %s, %s", words.Plural(len(b.Readings), "layer measured", "layers measured"),
		words.Plural(len(b.Signed), "hold signed", "holds signed"), words.Plural(len(b.Apart), "deviation", "deviations")))
	p.Rows = []desk.Row{{Key: "save", Text: "save it", Detail: "Enter saves; the sheet then has what was built",
		Enter: func(m *desk.Model) { m.Save() }}, noteRow(m, b), leaveRow(m)}
	return p
}

func leaveRow(m *desk.Model) desk.Row {
	return desk.Row{Key: "leave", Text: "leave the run", Detail: "Esc does the same; it goes on at this step",
		Enter: func(m *desk.Model) { m.Back() }}
}

// noteRow is what one hand tells the next.
func noteRow(m *desk.Model, b *model.Build) desk.Row {
	return desk.Row{Key: "note", Text: "hand-over  " + words.OrDash(b.Note.V), Detail: "Enter: a note for whoever goes on",
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
func runRows(m *desk.Model, s run.RunStep, b *model.Build) []desk.Row {
	var out []desk.Row
	switch {
	case s.Kind == run.HoldStep:
		out = append(out, holdRow(m, s, b))
	case s.Kind == run.LayStep:
		out = append(out, readRow(m, s, b))
	case s.Kind == run.ShrinkStep && s.Put.What == sheet.PartSheath:
		out = append(out, shrunkRow(m, s, b))
	default:
		out = append(out, desk.Row{Key: "done", Does: "done", Text: "done, next", Detail: "Enter: it is done",
			Enter: func(m *desk.Model) { tick(m, nil) }})
	}
	if s.Kind == run.LayStep {
		out = append(out, readingRows(m, s, b)...)
	}
	if s.Kind == run.CutStep {
		out = append(out, usedRow(m, s, b))
	}
	if s.Kind == run.PinStep {
		out = append(out, againRow(m, s))
	}
	at := cmp.Or(s.Of, s.Key)
	out = append(out, desk.Row{Key: "apart", Text: "built otherwise", Detail: "Enter: what differs from the sheet, in words",
		Field: &desk.Field{Label: "what differs at " + at, Set: func(m *desk.Model, text string) error {
			if text == "" {
				return nil
			}
			if _, err := unit.ParseNumber(text); err == nil {
				return fmt.Errorf("words are wanted: what differs from the sheet; a reading goes on the first row")
			}
			m.Change(edited(m, func(b *model.Build) { b.Apart = append(b.Apart, model.Deviation{At: at, Says: text}) }),
				"written down")
			return nil
		}}})
	for n, d := range b.Apart {
		if d.At == at {
			out = append(out, desk.Row{Key: fmt.Sprint("apart ", n), Text: "  differs: " + d.Says, Detail: ". strikes it out",
				Drop: func(m *desk.Model) {
					m.Change(edited(m, func(b *model.Build) {
						if n < len(b.Apart) {
							b.Apart = slices.Delete(b.Apart, n, n+1)
						}
					}), "struck out")
				}})
		}
	}
	out = append(out, noteRow(m, b))
	if s.In(b.Done) {
		out = append(out, desk.Row{Key: "not done", Text: "not done after all", Detail: "Enter takes the tick and the signature off",
			Enter: func(m *desk.Model) {
				m.Change(edited(m, func(b *model.Build) {
					b.Done = slices.DeleteFunc(b.Done, func(k string) bool { return slices.Contains(s.Marks(), k) })
					b.Signed = slices.DeleteFunc(b.Signed, func(g model.Signature) bool { return g.Step == s.Key })
				}), "no longer done: "+s.Key)
			}})
	}
	return append(out, leaveRow(m))
}

// holdRow passes a hold point: Enter alone does not, somebody signs.
func holdRow(m *desk.Model, s run.RunStep, b *model.Build) desk.Row {
	text := "sign to go on"
	for _, g := range b.Signed {
		if g.Step == s.Key {
			text = "signed by " + g.By + "  " + g.At.V
		}
	}
	return desk.Row{Key: "sign", Text: text, Detail: "digits or a name, then Enter: who has passed it",
		Field: &desk.Field{Label: "passed by", Set: func(m *desk.Model, who string) error {
			if who == "" {
				return fmt.Errorf("a hold is signed: your number or name")
			}
			tick(m, func(b *model.Build) {
				g := model.Signature{Step: s.Key, By: who}
				if m.Cfg.Now != nil {
					g.At = model.Some(m.Cfg.Now().Format("2006-01-02 15:04"))
				}
				b.Signed = append(slices.DeleteFunc(b.Signed, func(o model.Signature) bool { return o.Step == s.Key }), g)
			})
			return nil
		}}}
}

// again reports whether the same was asked just before: what is odd is done when it is
// asked twice.
func again(m *desk.Model, what string) bool {
	was := state(m).asked
	state(m).asked = what
	return was == what
}

func layerAt(m *desk.Model, s run.RunStep) (*sheet.Layer, bool) {
	i, ok := m.Sheet.X.Branch[s.Of]
	if !ok || s.Layer >= len(m.Sheet.Branches[i].Layers) {
		return nil, false
	}
	return &m.Sheet.Branches[i].Layers[s.Layer], true
}

// readRow takes readings of a layer: digits and Enter each; Enter alone goes on.
func readRow(m *desk.Model, s run.RunStep, b *model.Build) desk.Row {
	text := "done, next; or digits: over, as measured"
	if r := b.ReadingOf(s.Of, s.Layer); r != nil && len(r.OverMM) > 0 {
		text = fmt.Sprintf("done, next; digits: another reading, %d so far", len(r.OverMM))
	}
	return desk.Row{Key: "done", Does: "done", Text: text, Detail: "turn the bundle between readings; measuring can be left out",
		Enter: func(m *desk.Model) {
			if e, ok := explained(m, s, build(m).ReadingOf(s.Of, s.Layer)); ok && (e.Told == run.TooThick || e.Told == run.TooThin) &&
				!s.In(build(m).Done) && !again(m, s.Key+" as it is") {
				m.Refuse("it is out of tolerance: look first; Enter once more goes on as it is")
				return
			}
			tick(m, nil)
		},
		Field: &desk.Field{Label: "over of " + model.LayerName(s.Layer), Unit: m.Sys.Name(), Number: true,
			Set: func(m *desk.Model, text string) error {
				v, err := m.PartSize(text, desk.MostPart)
				if err != nil {
					return err
				}
				if l, ok := layerAt(m, s); ok && (v > 2*l.OverMM || v < l.OverMM/2) && !again(m, s.Key+text) {
					return fmt.Errorf("%s %s is far off %s: mm or inch, the right layer? Enter once more if it is so", m.Sys.Fine(v),
						m.Sys.Name(), m.Sys.Diameter(l.OverMM))
				}
				m.Change(edited(m, func(b *model.Build) {
					r := b.ReadingOf(s.Of, s.Layer)
					if r == nil {
						b.Readings = append(b.Readings, model.Reading{Branch: s.Of, Layer: s.Layer})
						r = &b.Readings[len(b.Readings)-1]
					}
					r.OverMM = append(r.OverMM, v)
				}), "read "+m.Sys.Fine(v)+" "+m.Sys.Name())
				return nil
			}}}
}

// readingRows are the offers that follow from a reading, the readings, and the turn.
func readingRows(m *desk.Model, s run.RunStep, b *model.Build) []desk.Row {
	var out []desk.Row
	r := b.ReadingOf(s.Of, s.Layer)
	if e, ok := explained(m, s, r); ok {
		if e.Told == run.AsWire && e.Spec != "" {
			spec, size, d := e.Spec, e.Size, unit.Millimetre(unit.RoundHalfUp(float64(e.AsIfMM), 0.01))
			out = append(out, desk.Row{Key: "reel", Text: fmt.Sprintf("take %s as measured for %s %s", m.Sys.Fine(d), spec, size),
				Detail: "measure ten side by side first; Enter takes it, and every figure follows", Enter: func(m *desk.Model) {
					m.Change(m.H.SetReel(spec, size, d), fmt.Sprintf("%s %s is %s %s", spec, size, m.Sys.Fine(d), m.Sys.Name()))
				}})
		}
		if e.Told != run.TooThick && e.Told != run.TooThin && e.OtherSheath != "" {
			other, i := e.OtherSheath, m.Sheet.X.Branch[s.Of]
			out = append(out, desk.Row{Key: "sheath", Text: "take " + other + " as sheath instead", Detail: "Enter takes it; cut it anew",
				Enter: func(m *desk.Model) {
					m.Change(m.H.EditBranch(i, func(b *model.Branch) { desk.SheathOf(b).Part = model.Some(other) }),
						"sheath of "+s.Of+" is "+other)
				}})
		}
	}
	if r != nil {
		for n, v := range r.OverMM {
			out = append(out, desk.Row{Key: fmt.Sprint("reading ", n),
				Text: fmt.Sprintf("reading %d  %s %s", n+1, m.Sys.Fine(v), m.Sys.Name()), Detail: ". strikes it out",
				Drop: func(m *desk.Model) {
					m.Change(edited(m, func(b *model.Build) {
						if r := b.ReadingOf(s.Of, s.Layer); r != nil && n < len(r.OverMM) {
							r.OverMM = slices.Delete(r.OverMM, n, n+1)
						}
					}), "struck out")
				}, Why: []desk.Reason{{Made: func() (why.Why, bool) {
					return why.Stated("reading", "as it was measured", float64(v), why.Diameter, desk.Given), true
				}}}})
		}
	}
	turn := "-"
	if r != nil && r.LayMM.Set {
		turn = m.Sys.Length(r.LayMM.V) + " " + m.Sys.Name()
	}
	return append(out, desk.Row{Key: "turn", Text: "turn as laid  " + turn, Detail: "digits: one turn, measured along the bundle",
		Field: &desk.Field{Label: "turn as laid", Unit: m.Sys.Name(), Number: true, Set: func(m *desk.Model, text string) error {
			v, err := m.PartSize(text, 2000)
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
			}), "turn "+m.Sys.Length(v))
			return nil
		}}})
}

func shrunkRow(m *desk.Model, s run.RunStep, b *model.Build) desk.Row {
	text := "done, next; or digits: over the sheath, as measured"
	for _, r := range b.Tubes {
		if r.Branch == s.Of {
			text = fmt.Sprintf("done, next; measured %s %s", m.Sys.Fine(r.OverMM), m.Sys.Name())
		}
	}
	return desk.Row{Key: "done", Does: "done", Text: text, Detail: "measured cold; it can be left out",
		Enter: func(m *desk.Model) { tick(m, nil) },
		Field: &desk.Field{Label: "over the sheath of " + s.Of, Unit: m.Sys.Name(), Number: true,
			Set: func(m *desk.Model, text string) error {
				v, err := m.PartSize(text, desk.MostPart)
				if err != nil {
					return err
				}
				m.Change(edited(m, func(b *model.Build) {
					b.Tubes = append(slices.DeleteFunc(b.Tubes, func(r model.Recovered) bool { return r.Branch == s.Of }),
						model.Recovered{Branch: s.Of, OverMM: v})
				}), "over the sheath "+m.Sys.Fine(v))
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
	return desk.Row{Key: "used", Text: "off the reel so far  " + words.OrDash(now),
		Detail: "digits: all that was taken off it for this one, waste included, " + m.Sys.Name(),
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
	return desk.Row{Key: "again", Text: "a contact was made anew", Detail: "digits or a name: which cavity; it takes from the loop",
		Field: &desk.Field{Label: "cavity of " + s.Of, Set: func(m *desk.Model, text string) error {
			t := m.Sheet.X.Termination[s.Of]
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
			}), "made anew: "+end)
			return nil
		}}}
}

// explained is what the readings of a layer come to.
func explained(m *desk.Model, s run.RunStep, r *model.Reading) (run.Explained, bool) {
	i, ok := m.Sheet.X.Branch[s.Of]
	if !ok || r == nil {
		return run.Explained{}, false
	}
	told := state(m).read.Get(m.Sheet, 0, fmt.Sprint(s.Key, r.OverMM), func() reading {
		e, ok := run.ExplainReading(m.Sheet, i, s.Layer, r.OverMM)
		return reading{e, ok}
	})
	return told.Explained, told.ok
}

// readingSays explains readings before they are obeyed.
func readingSays(m *desk.Model, e run.Explained) []string {
	mm := m.Sys.Name()
	read := m.Sys.Fine(e.ReadMM)
	if e.HighMM > e.ReadMM+0.005 {
		read += " (mean; highest " + m.Sys.Fine(e.HighMM) + ")"
	}
	head := fmt.Sprintf("Read %s %s, the sheet has %s (%s to %s)", read, mm, m.Sys.Diameter(e.SheetMM), m.Sys.Diameter(e.LeastMM),
		m.Sys.Diameter(e.MostMM))
	if e.Told == run.TooThick || e.Told == run.TooThin {
		word, could := "TOO LARGE", "too large for tolerance: a crossed wire or tape"
		if e.Told == run.TooThin {
			word, could = "TOO SMALL", "too small for tolerance: a wire is missing, or the jaws pressed"
		}
		return []string{word + ": look before you go on.", head + ": " + could + "."} // what is wrong is found first
	}
	switch e.Told {
	case run.AsSheet:
		return []string{head + ": as it should be."}
	case run.AsWire:
		end := ""
		switch {
		case e.Top:
			end = ", the top of its tolerance"
		case e.Bottom:
			end = ", the bottom of its tolerance"
		}
		head += fmt.Sprintf(": as if wire were %s%s: measure the reel.", m.Sys.Fine(e.AsIfMM), end)
	}
	if e.Spec == "" {
		return []string{head}
	}
	next := ""
	if e.NextHolds > 0 {
		next = fmt.Sprintf("the next layer stays at %d and takes %d; ", e.NextHolds, e.NextTakes)
	}
	sheath := ""
	switch {
	case e.Sheath == "":
	case e.SheathFits:
		sheath = ", and " + e.Sheath + " still does"
	default:
		sheath = ", and " + e.Sheath + " will not do"
		if e.Told != run.TooThick && e.Told != run.TooThin && e.OtherSheath != "" {
			sheath += ": " + e.OtherSheath + " does"
		}
	}
	return []string{head, fmt.Sprintf("If so: %sover comes to %s %s%s. Nothing is moved.", next, m.Sys.Diameter(e.OverMM), mm, sheath)}
}

// coverWhere is where a cover lies; "" of a part that is no cover.
func coverWhere(m *desk.Model, s run.RunStep) string {
	i, ok := m.Sheet.X.Branch[s.Of]
	if !ok {
		return ""
	}
	return fmt.Sprintf("from %s to %s %s, counted from %s", m.Sys.Length(s.Put.FromMM), m.Sys.Length(s.Put.ToMM), m.Sys.Name(),
		m.H.Branches[i].From)
}

// sizeOf is a size as it is said.
func sizeOf(size string) string { return paper.Size(&model.Wire{Size: size}) }
