package bench

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"contralay/calc"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper"
)

// wireScreen is one wire: what it is, where it ends, and the reel it comes from.
func wireScreen(id string) screen {
	return screen{name: "wire", of: id, page: func(m *Model, w int) page { return m.wirePage(id) }}
}

func (m *Model) wirePage(id string) page {
	i, ok := m.sheet.X.Wire[id]
	if !ok {
		return page{empty: "wire " + id + " is gone; Esc goes back"}
	}
	w, c := &m.h.Wires[i], &m.sheet.Wires[i]
	p := page{lines: []string{"wire " + id + "   " + w.Signal.V}}
	comp := id
	if u, in := m.sheet.X.UnitOf[id]; in {
		comp = m.h.Units[u].ID
	}
	add := func(label, value, detail string, step func(m *Model, by int), f *field) {
		r := row{text: fmt.Sprintf("%-12s %s", label, orDash(value)), detail: detail, id: comp, step: step, field: f}
		switch label {
		case "reel", "size":
			r.why = figs("", 0, id, "component.over")
			if c.Dia.Known() {
				r.big, r.bigSays = m.sys.Fine(c.Dia.Nominal), m.sys.Name()+"  over of "+id
			}
		case "current":
			r.big, r.bigSays = strings.TrimPrefix(ampsText(w), "-"), "A  in wire "+id
		}
		p.rows = append(p.rows, r)
	}
	set := func(edit func(w *model.Wire, v string)) func(m *Model, text string) error {
		return func(m *Model, text string) error {
			m.change(m.h.EditWire(m.sheet.X.Wire[id], func(w *model.Wire) { edit(w, text) }), "set to "+text)
			return nil
		}
	}
	there := func(m *Model) bool {
		_, ok := m.sheet.X.Wire[id]
		return ok
	}
	choose := func(what string, list func(m *Model) []choice, now func(m *Model) string, edit func(w *model.Wire, v string), other *field) {
		r := &p.rows[len(p.rows)-1]
		r.enter = func(m *Model) {
			m.open(chooseScreen(what, there, list, now, func(m *Model, v string) {
				m.change(m.h.EditWire(m.sheet.X.Wire[id], func(w *model.Wire) { edit(w, v) }), what+" "+v)
			}, other))
		}
	}
	wire := func(m *Model) *model.Wire { return &m.h.Wires[m.sheet.X.Wire[id]] }
	add("reel", m.reelText(w.Spec, w.Size, c.Dia.Nominal), "ten side by side: type what they measure, or that /10; an empty value takes it away", func(m *Model, by int) { m.stepReel(id, by) }, m.reelField(w.Spec, w.Size))
	add("current", ampsText(w)+" A"+m.ofText(id, w.Amps.V, c), "+ - or digits; the limit is the least of what stands below", func(m *Model, by int) { m.stepCurrent(id, by) }, m.ampsField(i))
	add("size", paper.Size(w), "Enter lists the sizes", func(m *Model, by int) { m.stepSize(m.sheet.X.Wire[id], by) }, nil)
	sized := len(p.rows)
	choose("size", m.sizeChoices(id), func(m *Model) string { return wire(m).Size }, func(w *model.Wire, v string) { w.Size = v }, nil)
	if r, any := m.adviceRow(i, comp); any {
		p.rows = append(p.rows[:sized], append([]row{r}, p.rows[sized:]...)...)
	}
	add("spec", w.Spec, "Enter lists them", func(m *Model, by int) { m.stepSpec(id, by) }, nil)
	choose("spec", m.specChoices(id), func(m *Model) string { return wire(m).Spec }, func(w *model.Wire, v string) { w.Spec = v }, nil)
	colour := &field{label: "colour of wire " + id, value: w.Colour.V, set: set(func(w *model.Wire, v string) { w.Colour = model.Some(v) })}
	add("colour", paper.Colour(w.Colour.V), "Enter lists them; digits: 0 black 1 brown 2 red 3 orange 4 yellow 5 green 6 blue 7 violet 8 grey 9 white",
		func(m *Model, by int) { m.stepColour(id, by) }, colour)
	choose("colour", colourChoices, func(m *Model) string { return wire(m).Colour.V }, func(w *model.Wire, v string) { w.Colour = model.Some(v) }, colour)
	add("role", w.Role.V, "Enter lists them", func(m *Model, by int) { m.stepRole(id, by) }, nil)
	choose("role", roleChoices, func(m *Model) string { return wire(m).Role.V }, func(w *model.Wire, v string) { w.Role = model.Some(v) }, nil)
	for _, from := range []bool{true, false} {
		label, now := "to", m.end(id, from)
		if from {
			label = "from"
		}
		typed := &field{label: label + ", TERMINATION:CAVITY or a splice", value: now, set: func(m *Model, t string) error { return m.setEnd(id, from, t) }}
		add(label, now, "+ - next free cavity of the same connector, Enter lists where it could end", func(m *Model, by int) { m.stepEnd(id, from, by) }, nil)
		p.rows[len(p.rows)-1].enter = func(m *Model) {
			m.open(chooseScreen(label, there, func(m *Model) []choice { return m.endChoices(id, from) }, func(m *Model) string { return m.end(id, from) },
				func(m *Model, v string) { m.putEnd(id, from, v) }, typed))
		}
	}
	if calc.Capped(w) {
		if r, any := m.foldRow(id); any {
			p.rows = append(p.rows, r)
		}
	}
	add("signal", w.Signal.V, "", nil, &field{label: "signal of wire " + id, value: w.Signal.V, set: set(func(w *model.Wire, v string) { w.Signal = model.Some(v) })})
	p.rows = append(p.rows, m.dutyRow(id), m.feedRow(id), m.measuredRow(id))
	p.rows = append(p.rows, m.pairRows(id)...)
	if r, any := m.damagedRow(id); any {
		p.rows = append(p.rows, r)
	}
	p.rows = append(p.rows, m.moreRow(id))
	if r, any := m.likeRow(id); any {
		p.rows = append(p.rows, r)
	}
	p.why = figs(id, 0, "", "wire.bound", "wire.heats", "wire.hottest", "wire.cut", "wire.finished", "wire.circuit")
	for n, l := range m.sheet.LimitsOf(i) {
		mem, in := "", "  "
		if l.Standing == catalogue.Memory {
			mem = "~"
		}
		if l == c.Bound {
			in = "= "
		}
		p.rows = append(p.rows, row{key: fmt.Sprint("limit ", n), id: comp, text: fmt.Sprintf("%smay carry %s%s A  %s", in, unit.Fixed(float64(l.Amps), 1), mem, l.By),
			detail: l.By + "; Enter says how it was made, and what it assumes", why: figs(id, n, "", "wire.limit")})
	}
	if c.Finished > 0 {
		p.lines = append(p.lines, fmt.Sprintf("cut %s %s, finished %s with loops", m.sys.Length(c.Cut), m.sys.Name(), m.sys.Length(c.Finished)))
		if laid, flat, ok := m.sheet.TakeUp(i); ok {
			p.lines = append(p.lines, fmt.Sprintf("the twist adds %s %s; a flat fifth would add %s", m.sys.Length(laid), m.sys.Name(), m.sys.Length(flat)))
			p.why = append(p.why, figs(id, 0, "", "wire.takeup", "wire.flat")...)
		}
	}
	return p
}

// adviceRow is the smallest size that does, and where that is another than the wire has
// what it costs or saves.
func (m *Model) adviceRow(i int, comp string) (row, bool) {
	w := m.h.Wires[i]
	if !m.sheet.Carries(i) || m.sheet.Unrated || w.Safety.V {
		return row{}, false
	}
	if m.advice.sheet != m.sheet || m.advice.id != w.ID {
		return row{key: "advice", id: comp, text: "advice       is being worked out", detail: "the smallest size that does for heat, drop, its device and both ends"}, true
	}
	rows := m.once("advice "+w.ID, func() []row {
		size := m.advice.size
		switch {
		case m.advice.ok && size == w.Size:
			return []row{{key: "advice", id: comp, text: "advice       " + paper.Size(&w) + " is the smallest that does", detail: "for heat, drop, its device and both ends"}}
		case !m.advice.ok:
			return []row{{key: "advice", id: comp, mark: "?", text: "advice       no size does", detail: w.Spec + " " + paper.Size(&w) + ": " + m.advice.doubt, whyOf: func() []reason { return m.limitReasons(w.ID) }}}
		}
		edit := func(m *Model) *model.Harness {
			return m.h.EditWire(m.sheet.X.Wire[w.ID], func(w *model.Wire) { w.Size = size })
		}
		return []row{{key: "advice", id: comp, text: "advice       " + paper.Size(&model.Wire{Size: size}) + " is the smallest that does",
			more: func() string {
				t := m.try("advice "+w.ID+size, func() *model.Harness { return edit(m) })
				if _, b, _ := t.b(); b.Waiting || len(b.Layers) == 0 {
					return "Enter takes it; the lay-up follows"
				}
				return "Enter takes it: " + m.differs(m.tally(), t.tally())
			},
			enter: func(m *Model) { m.change(edit(m), fmt.Sprintf("wire %s is now %s", w.ID, size)) }}}
	})
	if len(rows) == 0 {
		return row{}, false
	}
	return rows[0], true
}

// ofText is a wire's limit and temperature behind its current.
func (m *Model) ofText(id string, amps unit.Ampere, c *calc.Wire) string {
	t := ""
	if w := unit.RoundHalfUp(float64(c.Heats), 0.01); c.Heats > 0 && w != unit.RoundHalfUp(float64(amps), 0.01) {
		t = ", heats as " + carriesText(m.sheet, m.sheet.X.Wire[id])
	}
	if c.Bounded {
		t += fmt.Sprintf(" of %s A", mostText(c))
	}
	if c.HottestKnown {
		t += fmt.Sprintf(", %s C in %s", hotText(c), c.HottestIn)
	}
	return t
}

func (m *Model) stepSpec(id string, by int) {
	i := m.sheet.X.Wire[id]
	size := m.h.Wires[i].Size
	var specs []string // only those that have the size
	for _, s := range m.sheet.Cat.Specs() {
		if _, ok := m.sheet.Cat.Wire(s, size); ok {
			specs = append(specs, s)
		}
	}
	spec, ok := around(specs, m.h.Wires[i].Spec, by)
	if !ok {
		m.refuse("no other specification has size " + size)
		return
	}
	m.change(m.h.EditWire(i, func(w *model.Wire) { w.Spec = spec }), fmt.Sprintf("wire %s is now %s", id, spec))
}

// stepCurrent changes a current by + -.
func (m *Model) stepCurrent(id string, by int) {
	k := m.sheet.X.Wire[id]
	v := m.h.Wires[k].Amps.V
	by1 := stepAmps(v)
	if by < 0 && v > 0 {
		by1 = stepAmps(v - stepAmps(v)/1e6) // down from 1 goes by tenths
	}
	v = unit.Ampere(unit.RoundHalfUp(float64(v+unit.Ampere(by)*by1), 0.01))
	if v < 0 {
		m.tell("0 A is the least")
		return
	}
	m.change(m.h.EditWire(k, func(w *model.Wire) { w.Amps = model.Some(v) }), fmt.Sprintf("set to %s A", trim(float64(v))))
}

// stepReel changes a measured diameter by a hundredth.
func (m *Model) stepReel(id string, by int) {
	k := m.sheet.X.Wire[id]
	w, d := &m.h.Wires[k], m.sheet.Wires[k].Dia.Nominal
	if d <= 0 {
		m.refuse("no diameter to start from: type what you measured")
		return
	}
	v := unit.Millimetre(unit.RoundHalfUp(float64(d)+0.01*float64(by), 0.01))
	if v < leastReel {
		m.tell("that is the thinnest")
		return
	}
	m.change(m.h.SetReel(w.Spec, w.Size, v), fmt.Sprintf("reel %s %s measures %s %s", w.Spec, w.Size, m.sys.Fine(v), m.sys.Name()))
}

// tenSide is how many wires are laid side by side to measure one.
const tenSide = 10

// leastReel and mostReel bound what a reel may measure.
const (
	leastReel unit.Millimetre = 0.2
	mostReel  unit.Millimetre = 30
)

// around is the entry by places on from cur, round and round.
func around(all []string, cur string, by int) (string, bool) {
	if len(all) == 0 {
		return "", false
	}
	at := slices.Index(all, cur)
	if at < 0 {
		return all[0], true
	}
	next := all[((at+by)%len(all)+len(all))%len(all)]
	return next, next != cur
}

func (m *Model) stepColour(id string, by int) {
	var all []string
	for a := range 10 {
		all = append(all, fmt.Sprint(a))
	}
	for a := range 9 {
		all = append(all, fmt.Sprint(90+a)) // white with one stripe
	}
	i := m.sheet.X.Wire[id]
	c, _ := around(all, m.h.Wires[i].Colour.V, by)
	m.change(m.h.EditWire(i, func(w *model.Wire) { w.Colour = model.Some(c) }), "colour "+paper.Colour(c))
}

func (m *Model) stepRole(id string, by int) {
	i := m.sheet.X.Wire[id]
	r, _ := around(roles[:], m.h.Wires[i].Role.V, by)
	m.change(m.h.EditWire(i, func(w *model.Wire) { w.Role = model.Some(r) }), fmt.Sprintf("wire %s is %s", id, r))
}

func (m *Model) end(id string, from bool) string {
	return endText(&m.h.Wires[m.sheet.X.Wire[id]], from)
}

// endText is one end of a wire in words: a cavity, a splice, or where it is capped.
func endText(w *model.Wire, from bool) string {
	text := w.To.V
	if from {
		text = w.From.V
	}
	if text == "" && calc.Capped(w) {
		return capAt + w.CappedAt.V
	}
	return text
}

// capAt stands before the place where a spare's end is capped.
const capAt = "cap at "

func (m *Model) stepEnd(id string, from bool, by int) {
	e, ok := m.sheet.X.End(m.end(id, from))
	t, known := m.sheet.X.Termination[e.Termination]
	if !ok || !known {
		m.refuse("not in a connector: Enter types another end")
		return
	}
	all := m.sheet.Terms[t].Cavities
	var open []string
	for _, c := range all {
		if c == e.Cavity || slices.Contains(m.sheet.Terms[t].Free, c) {
			open = append(open, c)
		}
	}
	c, moved := around(open, e.Cavity, by)
	if !moved {
		m.refuse(e.Termination + " has no other free cavity")
		return
	}
	m.putEnd(id, from, e.Termination+":"+c)
}

func (m *Model) setEnd(id string, from bool, text string) error {
	if at, is := strings.CutPrefix(text, capAt); is {
		return m.capEnd(id, from, at)
	}
	e, ok := m.sheet.X.End(text)
	if !ok {
		return fmt.Errorf("an end is wanted: TERMINATION:CAVITY, or a splice")
	}
	if e.Splice != "" {
		if _, known := m.sheet.X.Splice[e.Splice]; !known {
			return fmt.Errorf("there is no splice %q; a connector end is written TERMINATION:CAVITY", e.Splice)
		}
	} else if _, known := m.sheet.X.Termination[e.Termination]; !known || e.Cavity == "" {
		return fmt.Errorf("there is no termination %q with a cavity %q", e.Termination, e.Cavity)
	}
	m.putEnd(id, from, text)
	return nil
}

// capEnd caps one end of a wire at a place, where its other end stands in a cavity.
func (m *Model) capEnd(id string, from bool, at string) error {
	_, breakout := m.sheet.X.Breakout[at]
	if _, termination := m.sheet.X.Termination[at]; !breakout && !termination {
		return fmt.Errorf("there is no breakout and no termination %q to cap it at", at)
	}
	if other := m.end(id, !from); other == "" || strings.HasPrefix(other, capAt) {
		return fmt.Errorf("wire %s needs a cavity at its other end to be capped at this one", id)
	}
	m.putEnd(id, from, capAt+at)
	return nil
}

func (m *Model) putEnd(id string, from bool, text string) {
	m.change(m.h.EditWire(m.sheet.X.Wire[id], func(w *model.Wire) {
		end := &w.To
		if from {
			end = &w.From
		}
		if at, is := strings.CutPrefix(text, capAt); is {
			*end, w.CappedAt = model.Opt[string]{}, model.Some(at)
			return
		}
		if *end = model.Some(text); w.From.V != "" && w.To.V != "" {
			w.CappedAt, w.FoldMM = model.Opt[string]{}, model.Opt[unit.Millimetre]{}
		}
	}), fmt.Sprintf("wire %s now ends in %s", id, text))
}

func (m *Model) reelText(spec, size string, d unit.Millimetre) string {
	for _, r := range m.h.Reels {
		if r.Spec == spec && r.Size == size {
			return m.sys.Fine(r.OverMM) + " " + m.sys.Name() + "  measured"
		}
	}
	if d <= 0 {
		return "not known: measure it"
	}
	return m.sys.Fine(d) + " " + m.sys.Name() + "  not measured yet"
}

// reelField takes the diameter of a reel measured on this job.
func (m *Model) reelField(spec, size string) *field {
	value := ""
	for _, r := range m.h.Reels {
		if r.Spec == spec && r.Size == size {
			value = m.sys.Fine(r.OverMM)
		}
	}
	return &field{label: fmt.Sprintf("over of %s %s, measured", spec, size), unit: m.sys.Name(), value: value, number: true, set: func(m *Model, text string) error {
		if text == "" {
			m.change(m.h.SetReel(spec, size, 0), "back to the catalogue's diameter")
			return nil
		}
		v, err := m.sys.Parse(text)
		if err != nil {
			return err
		}
		says := ""
		if e, ok := m.sheet.Cat.Wire(spec, size); ok && e.OverMM > 0 {
			switch r := v / e.OverMM; {
			case r > 7 && r < 13: // nobody has a wire ten times as thick: these are the ten
				v = unit.Millimetre(math.Round(float64(v)/tenSide*1e4) / 1e4)
				says = fmt.Sprintf(", %s being ten side by side", text)
			case r < 0.6 || r > 1.6:
				defer func() { m.trouble = true }()
				says = fmt.Sprintf(": the catalogue has %s; is that the right reel?", m.sys.Fine(e.OverMM))
			}
		}
		if v < leastReel || v > mostReel {
			return fmt.Errorf("%s %s is out of range: %s to %s %s", text, m.sys.Name(), m.sys.Fine(leastReel), m.sys.Fine(mostReel), m.sys.Name())
		}
		m.change(m.h.SetReel(spec, size, v), fmt.Sprintf("reel %s %s measures %s %s%s", spec, size, m.sys.Fine(v), m.sys.Name(), says))
		return nil
	}}
}
