package bench

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/calc"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper"
)

// The bench run: a harness is built step by step, one instruction a screen, in letters that
// are read from across the board. What is done, signed and measured is in the file, so that
// a run that was cut off goes on at its step.

// running is where a run stands.
type running struct {
	serial string
	at     int
	steps  []calc.RunStep
	of     *calc.Sheet // the sheet steps were made for
	asked  string      // the odd thing that was asked last
}

// runSteps are the steps of the harness as it is.
func (m *Model) runSteps() []calc.RunStep {
	if m.run.of == m.sheet {
		return m.run.steps
	}
	was := m.run.steps
	m.run.steps, m.run.of = m.sheet.Run(), m.sheet
	if m.run.at < len(was) { // a change may put steps before the one in hand: it stays in hand
		mark := was[m.run.at].Marks()[0]
		if k := slices.IndexFunc(m.run.steps, func(s calc.RunStep) bool { return slices.Contains(s.Marks(), mark) }); k >= 0 {
			m.run.at = k
		}
	} else if len(was) > 0 {
		m.run.at = len(m.run.steps)
	}
	return m.run.steps
}

func (m *Model) build() *model.Build {
	if k := m.h.BuildOf(m.run.serial); k >= 0 {
		return &m.h.Builds[k]
	}
	return &model.Build{Serial: m.run.serial}
}

// openSerial is the build that a run goes on with: the last that is not through, else the
// next number.
func (m *Model) openSerial() string {
	keys := m.sheet.Run()
	for k := len(m.h.Builds) - 1; k >= 0; k-- {
		b := &m.h.Builds[k]
		if slices.ContainsFunc(keys, func(s calc.RunStep) bool { return !s.In(b.Done) }) {
			return b.Serial
		}
	}
	most := 0
	for _, b := range m.h.Builds {
		if n, err := strconv.Atoi(b.Serial); err == nil {
			most = max(most, n)
		}
	}
	return strconv.Itoa(most + 1)
}

// runRow opens the run of a serial.
func (m *Model) runRow() row {
	serial := m.openSerial()
	b := model.Build{}
	if k := m.h.BuildOf(serial); k >= 0 {
		b = m.h.Builds[k]
	}
	text := "bench run of serial " + serial + ": begin it"
	if n := stepsDone(m.sheet.Run(), &b); n > 0 {
		text = fmt.Sprintf("bench run of serial %s: go on, %s done", serial, plural(n, "step", "steps"))
	}
	return row{key: "run", text: text, detail: "Enter: one instruction a screen, ticked as you build; digits: another serial", enter: func(m *Model) { m.startRun(serial) },
		field: &field{label: "serial to build", value: serial, set: func(m *Model, text string) error {
			if text == "" {
				return fmt.Errorf("a serial is wanted: digits, or any text")
			}
			m.startRun(text)
			return nil
		}}}
}

// stepsDone is how many of the steps a build has done.
func stepsDone(steps []calc.RunStep, b *model.Build) int {
	n := 0
	for _, s := range steps {
		if s.In(b.Done) {
			n++
		}
	}
	return n
}

// Run opens the run of a serial, or of the one that is not through where it is "".
func (m *Model) Run(serial string) {
	if serial == "" {
		serial = m.openSerial()
	}
	m.startRun(serial)
}

// startRun opens a run at its first step that is not done. A new one writes down what is
// only proposed: from then on nothing of it is planned anew.
func (m *Model) startRun(serial string) {
	if len(m.h.Branches) == 0 || len(m.h.Wires) == 0 {
		m.refuse("there is nothing to build yet")
		return
	}
	m.run = running{serial: serial}
	if m.h.BuildOf(serial) < 0 {
		s := calc.Complete(m.h, m.cfg.Cat, m.sheet)
		h := s.Written().EditBuild(serial, func(b *model.Build) {
			if m.cfg.Now != nil {
				b.Begun = model.Some(m.cfg.Now().Format("2006-01-02"))
			}
			if r := m.h.Head.Revision; r.Set {
				b.Revision = r
			}
		})
		was := m.h
		m.change(h, "serial "+serial+" begun; what was proposed is written down and stays")
		if m.h == was {
			return // refused, and said
		}
	}
	m.run.at = m.firstOpen()
	m.face()
	m.step = Build // whoever leaves the run stands where no digit changes a wire
	m.open(runScreen())
}

// firstOpen is the first step that is not done; as many as there are where all are.
func (m *Model) firstOpen() int {
	done := m.build().Done
	steps := m.runSteps()
	k := slices.IndexFunc(steps, func(s calc.RunStep) bool { return !s.In(done) })
	if k < 0 {
		return len(steps)
	}
	return k
}

func runScreen() screen {
	return screen{name: "run", safe: true, page: func(m *Model, w int) page { return m.runPage(w) }}
}

// runBack goes a step back; nothing is undone by that.
func (m *Model) runBack() {
	if m.run.at == 0 {
		m.tell("this is the first step")
		return
	}
	m.run.at--
	m.face()
	m.tell("a step back; what is done stays done")
}

// tick marks the step in hand as done and goes to the next.
func (m *Model) tick(f func(b *model.Build)) {
	steps := m.runSteps()
	if m.run.at >= len(steps) {
		return
	}
	s := steps[m.run.at]
	if f == nil && s.In(m.build().Done) {
		m.run.at++
		m.face()
		m.tell("it was done already")
		return
	}
	h := m.h.EditBuild(m.run.serial, func(b *model.Build) {
		if f != nil {
			f(b)
		}
		for _, mark := range s.Marks() {
			if !slices.Contains(b.Done, mark) {
				b.Done = append(b.Done, mark)
			}
		}
	})
	m.change(h, "done: "+s.Key)
	m.runSteps() // where the step in hand is by now
	m.run.at++
	m.face()
}

// layingNow reports whether the step in hand lays or shrinks a branch, whose figures then
// stand below.
func (m *Model) layingNow() bool {
	steps := m.runSteps()
	return m.run.at < len(steps) && (steps[m.run.at].Kind == calc.LayStep || steps[m.run.at].What == "sheath")
}

// face turns the bench to the branch of the step in hand.
func (m *Model) face() {
	steps := m.runSteps()
	if m.run.at < len(steps) {
		if i, ok := m.sheet.X.Branch[steps[m.run.at].Of]; ok {
			m.branch = i
		}
	}
}

// runPage is one instruction.
func (m *Model) runPage(w int) page {
	steps := m.runSteps()
	if m.h.BuildOf(m.run.serial) < 0 {
		return page{empty: "serial " + m.run.serial + " is gone; Esc goes back"}
	}
	m.run.at = min(m.run.at, len(steps))
	if m.run.at == len(steps) {
		return m.runOver(w)
	}
	s := steps[m.run.at]
	b := m.build()
	l := m.instruct(s)
	p := page{lines: []string{fmt.Sprintf("serial %s   step %d of %d   %s", m.run.serial, m.run.at+1, len(steps), l.title)}}
	if s.In(b.Done) {
		p.lines[0] += "   DONE"
	}
	p.rows = m.runRows(s, b)
	if arrange(m.w, m.height, true).work < 8 { // no room for more than what it is: the rest are rows
		p.lines = []string{strings.ToUpper(strings.Join(l.large, "  "))}
		var more []row
		for _, t := range l.lines {
			for _, t := range wrap(t, w-3) {
				more = append(more, row{text: t, detail: "read on with the arrows"})
			}
		}
		p.rows = slices.Insert(p.rows, 1, more...)
		return p
	}
	lines := 0
	for _, t := range l.lines {
		lines += len(wrap(t, w))
	}
	p.lines = append(p.lines, m.inLarge(l.large, w, lines+4)...)
	p.lines = append(p.lines, l.lines...)
	return p
}

// inLarge is as many lines in large letters as leave room for what else is to be read;
// where there is none, or a line is too long, it stands as it is.
func (m *Model) inLarge(lines []string, w, rest int) []string {
	each := 4
	if m.cfg.ASCII {
		each = 6
	}
	room := arrange(m.w, m.height, true).work - 2 - rest
	var out []string
	for _, t := range lines {
		big := letters(t, w, m.cfg.ASCII)
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
func (m *Model) runOver(w int) page {
	b := m.build()
	p := page{lines: append([]string{fmt.Sprintf("serial %s   every step is done", b.Serial)}, m.inLarge([]string{"done"}, w, 6)...)}
	p.lines = append(p.lines, fmt.Sprintf("%s, %s, %s", plural(len(b.Readings), "layer measured", "layers measured"), plural(len(b.Signed), "hold signed", "holds signed"), plural(len(b.Apart), "deviation", "deviations")))
	p.rows = []row{{key: "save", text: "save it", detail: "Enter saves; the sheet then has what was built", enter: func(m *Model) { m.save() }}, m.noteRow(b), m.leaveRow()}
	return p
}

func (m *Model) leaveRow() row {
	return row{key: "leave", text: "leave the run", detail: "Esc does the same; it goes on at this step", enter: func(m *Model) { m.back() }}
}

// noteRow is what one hand tells the next.
func (m *Model) noteRow(b *model.Build) row {
	return row{key: "note", text: "hand-over  " + orDash(b.Note.V), detail: "Enter: a note for whoever goes on", field: &field{label: "hand-over note", value: b.Note.V, set: func(m *Model, text string) error {
		m.change(m.h.EditBuild(m.run.serial, func(b *model.Build) {
			if b.Note = model.Some(text); text == "" {
				b.Note = model.Opt[string]{}
			}
		}), "noted")
		return nil
	}}}
}

// runRows are what can be done at a step; the first is done by Enter alone.
func (m *Model) runRows(s calc.RunStep, b *model.Build) []row {
	var out []row
	switch {
	case s.Kind == calc.HoldStep:
		out = append(out, m.holdRow(s, b))
	case s.Kind == calc.LayStep:
		out = append(out, m.readRow(s, b))
	case s.Kind == calc.ShrinkStep && s.What == "sheath":
		out = append(out, m.shrunkRow(s, b))
	default:
		out = append(out, row{key: "done", text: "done, next", detail: "Enter: it is done", enter: func(m *Model) { m.tick(nil) }})
	}
	if s.Kind == calc.LayStep {
		out = append(out, m.readingRows(s, b)...)
	}
	if s.Kind == calc.CutStep {
		out = append(out, m.usedRow(s, b))
	}
	if s.Kind == calc.PinStep {
		out = append(out, m.againRow(s))
	}
	at := cmp.Or(s.Of, s.Key)
	out = append(out, row{key: "apart", text: "built otherwise", detail: "Enter: what differs from the sheet, in words", field: &field{label: "what differs at " + at, set: func(m *Model, text string) error {
		if text == "" {
			return nil
		}
		if _, err := unit.ParseNumber(text); err == nil {
			return fmt.Errorf("words are wanted: what differs from the sheet; a reading goes on the first row")
		}
		m.change(m.h.EditBuild(m.run.serial, func(b *model.Build) { b.Apart = append(b.Apart, model.Deviation{At: at, Says: text}) }), "written down")
		return nil
	}}})
	for n, d := range b.Apart {
		if d.At == at {
			out = append(out, row{key: fmt.Sprint("apart ", n), text: "  differs: " + d.Says, detail: ". strikes it out", drop: func(m *Model) {
				m.change(m.h.EditBuild(m.run.serial, func(b *model.Build) {
					if n < len(b.Apart) {
						b.Apart = slices.Delete(b.Apart, n, n+1)
					}
				}), "struck out")
			}})
		}
	}
	out = append(out, m.noteRow(b))
	if s.In(b.Done) {
		out = append(out, row{key: "not done", text: "not done after all", detail: "Enter takes the tick and the signature off", enter: func(m *Model) {
			m.change(m.h.EditBuild(m.run.serial, func(b *model.Build) {
				b.Done = slices.DeleteFunc(b.Done, func(k string) bool { return slices.Contains(s.Marks(), k) })
				b.Signed = slices.DeleteFunc(b.Signed, func(g model.Signature) bool { return g.Step == s.Key })
			}), "no longer done: "+s.Key)
		}})
	}
	return append(out, m.leaveRow())
}

// holdRow passes a hold point: Enter alone does not, somebody signs.
func (m *Model) holdRow(s calc.RunStep, b *model.Build) row {
	text := "sign to go on"
	for _, g := range b.Signed {
		if g.Step == s.Key {
			text = "signed by " + g.By + "  " + g.At.V
		}
	}
	return row{key: "sign", text: text, detail: "digits or a name, then Enter: who has passed it", field: &field{label: "passed by", set: func(m *Model, who string) error {
		if who == "" {
			return fmt.Errorf("a hold is signed: your number or name")
		}
		m.tick(func(b *model.Build) {
			g := model.Signature{Step: s.Key, By: who}
			if m.cfg.Now != nil {
				g.At = model.Some(m.cfg.Now().Format("2006-01-02 15:04"))
			}
			b.Signed = append(slices.DeleteFunc(b.Signed, func(o model.Signature) bool { return o.Step == s.Key }), g)
		})
		return nil
	}}}
}

// again reports whether the same was asked just before: what is odd is done when it is
// asked twice.
func (m *Model) again(what string) bool {
	was := m.run.asked
	m.run.asked = what
	return was == what
}

func (m *Model) layerAt(s calc.RunStep) (*calc.Layer, bool) {
	i, ok := m.sheet.X.Branch[s.Of]
	if !ok || s.Layer >= len(m.sheet.Branches[i].Layers) {
		return nil, false
	}
	return &m.sheet.Branches[i].Layers[s.Layer], true
}

// readRow takes readings of a layer: digits and Enter each; Enter alone goes on.
func (m *Model) readRow(s calc.RunStep, b *model.Build) row {
	text := "done, next; or digits: over, as measured"
	if r := b.ReadingOf(s.Of, s.Layer); r != nil && len(r.OverMM) > 0 {
		text = fmt.Sprintf("done, next; digits: another reading, %d so far", len(r.OverMM))
	}
	return row{key: "done", text: text, detail: "turn the bundle between readings; measuring can be left out", enter: func(m *Model) {
		if e, ok := m.explained(s, m.build().ReadingOf(s.Of, s.Layer)); ok && (e.Told == calc.TooThick || e.Told == calc.TooThin) && !s.In(m.build().Done) && !m.again(s.Key+" as it is") {
			m.refuse("it is out of tolerance: look first; Enter once more goes on as it is")
			return
		}
		m.tick(nil)
	},
		field: &field{label: "over of " + model.LayerName(s.Layer), unit: m.sys.Name(), number: true, set: func(m *Model, text string) error {
			v, err := m.partSize(text, mostPart)
			if err != nil {
				return err
			}
			if l, ok := m.layerAt(s); ok && (v > 2*l.OverMM || v < l.OverMM/2) && !m.again(s.Key+text) {
				return fmt.Errorf("%s %s is far off %s: mm or inch, the right layer? Enter once more if it is so", m.sys.Fine(v), m.sys.Name(), m.sys.Diameter(l.OverMM))
			}
			m.change(m.h.EditBuild(m.run.serial, func(b *model.Build) {
				r := b.ReadingOf(s.Of, s.Layer)
				if r == nil {
					b.Readings = append(b.Readings, model.Reading{Branch: s.Of, Layer: s.Layer})
					r = &b.Readings[len(b.Readings)-1]
				}
				r.OverMM = append(r.OverMM, v)
			}), "read "+m.sys.Fine(v)+" "+m.sys.Name())
			return nil
		}}}
}

// readingRows are the offers that follow from a reading, the readings, and the turn.
func (m *Model) readingRows(s calc.RunStep, b *model.Build) []row {
	var out []row
	r := b.ReadingOf(s.Of, s.Layer)
	if e, ok := m.explained(s, r); ok {
		if e.Told == calc.AsWire && e.Spec != "" {
			spec, size, d := e.Spec, e.Size, unit.Millimetre(unit.RoundHalfUp(float64(e.AsIfMM), 0.01))
			out = append(out, row{key: "reel", text: fmt.Sprintf("take %s as measured for %s %s", m.sys.Fine(d), spec, size), detail: "measure ten side by side first; Enter takes it, and every figure follows", enter: func(m *Model) {
				m.change(m.h.SetReel(spec, size, d), fmt.Sprintf("%s %s is %s %s", spec, size, m.sys.Fine(d), m.sys.Name()))
			}})
		}
		if e.Told != calc.TooThick && e.Told != calc.TooThin && e.OtherSheath != "" {
			other, i := e.OtherSheath, m.sheet.X.Branch[s.Of]
			out = append(out, row{key: "sheath", text: "take " + other + " as sheath instead", detail: "Enter takes it; cut it anew", enter: func(m *Model) {
				m.change(m.h.EditBranch(i, func(b *model.Branch) { sheathOf(b).Part = model.Some(other) }), "sheath of "+s.Of+" is "+other)
			}})
		}
	}
	if r != nil {
		for n, v := range r.OverMM {
			out = append(out, row{key: fmt.Sprint("reading ", n), text: fmt.Sprintf("reading %d  %s %s", n+1, m.sys.Fine(v), m.sys.Name()), detail: ". strikes it out", drop: func(m *Model) {
				m.change(m.h.EditBuild(m.run.serial, func(b *model.Build) {
					if r := b.ReadingOf(s.Of, s.Layer); r != nil && n < len(r.OverMM) {
						r.OverMM = slices.Delete(r.OverMM, n, n+1)
					}
				}), "struck out")
			}, why: []reason{{made: func() (calc.Why, bool) {
				return calc.Stated("reading", "as it was measured", float64(v), calc.Diameter, given), true
			}}}})
		}
	}
	turn := "-"
	if r != nil && r.LayMM.Set {
		turn = m.sys.Length(r.LayMM.V) + " " + m.sys.Name()
	}
	return append(out, row{key: "turn", text: "turn as laid  " + turn, detail: "digits: one turn, measured along the bundle", field: &field{label: "turn as laid", unit: m.sys.Name(), number: true, set: func(m *Model, text string) error {
		v, err := m.partSize(text, 2000)
		if err != nil {
			return err
		}
		m.change(m.h.EditBuild(m.run.serial, func(b *model.Build) {
			r := b.ReadingOf(s.Of, s.Layer)
			if r == nil {
				b.Readings = append(b.Readings, model.Reading{Branch: s.Of, Layer: s.Layer})
				r = &b.Readings[len(b.Readings)-1]
			}
			r.LayMM = model.Some(v)
		}), "turn "+m.sys.Length(v))
		return nil
	}}})
}

func (m *Model) shrunkRow(s calc.RunStep, b *model.Build) row {
	text := "done, next; or digits: over the sheath, as measured"
	for _, r := range b.Tubes {
		if r.Branch == s.Of {
			text = fmt.Sprintf("done, next; measured %s %s", m.sys.Fine(r.OverMM), m.sys.Name())
		}
	}
	return row{key: "done", text: text, detail: "measured cold; it can be left out", enter: func(m *Model) { m.tick(nil) },
		field: &field{label: "over the sheath of " + s.Of, unit: m.sys.Name(), number: true, set: func(m *Model, text string) error {
			v, err := m.partSize(text, mostPart)
			if err != nil {
				return err
			}
			m.change(m.h.EditBuild(m.run.serial, func(b *model.Build) {
				b.Tubes = append(slices.DeleteFunc(b.Tubes, func(r model.Recovered) bool { return r.Branch == s.Of }), model.Recovered{Branch: s.Of, OverMM: v})
			}), "over the sheath "+m.sys.Fine(v))
			return nil
		}}}
}

// usedRow is what has gone off a reel, waste and all.
func (m *Model) usedRow(s calc.RunStep, b *model.Build) row {
	spec, size, now := s.Cut.Spec, s.Cut.Size, ""
	for _, u := range b.Used {
		if u.Spec == spec && u.Size == size {
			now = m.sys.Length(u.UsedMM)
		}
	}
	return row{key: "used", text: "off the reel so far  " + orDash(now), detail: "digits: all that was taken off it for this one, waste included, " + m.sys.Name(), field: &field{label: "taken off " + spec + " " + size, unit: m.sys.Name(), value: now, number: true, set: func(m *Model, text string) error {
		v, err := m.partSize(text, 1e7)
		if err != nil {
			return err
		}
		m.change(m.h.EditBuild(m.run.serial, func(b *model.Build) {
			b.Used = append(slices.DeleteFunc(b.Used, func(u model.UsedWire) bool { return u.Spec == spec && u.Size == size }), model.UsedWire{Spec: spec, Size: size, UsedMM: v})
		}), "written down")
		return nil
	}}}
}

// againRow counts a contact that had to be made anew: it takes from the loop.
func (m *Model) againRow(s calc.RunStep) row {
	return row{key: "again", text: "a contact was made anew", detail: "digits or a name: which cavity; it takes from the loop", field: &field{label: "cavity of " + s.Of, set: func(m *Model, text string) error {
		t := m.sheet.X.Termination[s.Of]
		name := m.h.Terminations[t].CavityOf(text)
		if _, ok := m.sheet.Terms[t].State[name]; !ok {
			return fmt.Errorf("%s has no cavity %q", s.Of, text)
		}
		end := s.Of + ":" + name
		m.change(m.h.EditBuild(m.run.serial, func(b *model.Build) {
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
func (m *Model) explained(s calc.RunStep, r *model.Reading) (calc.Explained, bool) {
	i, ok := m.sheet.X.Branch[s.Of]
	if !ok || r == nil {
		return calc.Explained{}, false
	}
	key := fmt.Sprint("explained ", s.Key, r.OverMM)
	if m.told.of != m.sheet || m.told.key != key {
		m.told.of, m.told.key = m.sheet, key
		m.told.e, m.told.ok = m.sheet.ExplainReading(i, s.Layer, r.OverMM)
	}
	return m.told.e, m.told.ok
}

// readingSays explains readings before they are obeyed.
func (m *Model) readingSays(e calc.Explained) []string {
	mm := m.sys.Name()
	read := m.sys.Fine(e.ReadMM)
	if e.HighMM > e.ReadMM+0.005 {
		read += " (mean; highest " + m.sys.Fine(e.HighMM) + ")"
	}
	head := fmt.Sprintf("Read %s %s, the sheet has %s (%s to %s)", read, mm, m.sys.Diameter(e.SheetMM), m.sys.Diameter(e.LeastMM), m.sys.Diameter(e.MostMM))
	if e.Told == calc.TooThick || e.Told == calc.TooThin {
		word, could := "TOO LARGE", "too large for tolerance: a crossed wire or tape"
		if e.Told == calc.TooThin {
			word, could = "TOO SMALL", "too small for tolerance: a wire is missing, or the jaws pressed"
		}
		return []string{word + ": look before you go on.", head + ": " + could + "."} // what is wrong is found first
	}
	switch e.Told {
	case calc.AsSheet:
		return []string{head + ": as it should be."}
	case calc.AsWire:
		end := ""
		switch {
		case e.Top:
			end = ", the top of its tolerance"
		case e.Bottom:
			end = ", the bottom of its tolerance"
		}
		head += fmt.Sprintf(": as if wire were %s%s: measure the reel.", m.sys.Fine(e.AsIfMM), end)
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
		if e.Told != calc.TooThick && e.Told != calc.TooThin && e.OtherSheath != "" {
			sheath += ": " + e.OtherSheath + " does"
		}
	}
	return []string{head, fmt.Sprintf("If so: %sover comes to %s %s%s. Nothing is moved.", next, m.sys.Diameter(e.OverMM), mm, sheath)}
}

// sleeveSays is where a tube lies.
func (m *Model) coverWhere(s calc.RunStep) string {
	i, ok := m.sheet.X.Branch[s.Of]
	if !ok {
		return ""
	}
	b := &m.sheet.Branches[i]
	from, to := b.Sheath.FromMM, b.Sheath.ToMM
	if s.What != "sheath" || b.Sheath.Part != s.Part {
		for _, c := range b.Covers {
			if c.What == s.What && c.Part == s.Part {
				from, to = c.FromMM, c.ToMM
			}
		}
	}
	return fmt.Sprintf("from %s to %s %s, counted from %s", m.sys.Length(from), m.sys.Length(to), m.sys.Name(), m.h.Branches[i].From)
}

// sizeOf is a size as it is said.
func sizeOf(size string) string { return paper.Size(&model.Wire{Size: size}) }
