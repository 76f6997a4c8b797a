package bench

import (
	"fmt"
	"slices"

	"contralay/model"
	"contralay/model/unit"
)

// wireScreen is one wire: what it is, where it ends, and the reel it comes from.
func wireScreen(id string) screen {
	return screen{name: "wire", page: func(m *Model, w int) page { return m.wirePage(id) }}
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
		if label == "reel" {
			r.why = figs("", 0, id, "component.over")
		}
		p.rows = append(p.rows, r)
	}
	set := func(edit func(w *model.Wire, v string)) func(m *Model, text string) error {
		return func(m *Model, text string) error {
			m.change(m.h.EditWire(m.sheet.X.Wire[id], func(w *model.Wire) { edit(w, text) }), "set to "+text)
			return nil
		}
	}
	add("spec", w.Spec, "", func(m *Model, by int) { m.stepSpec(id, by) }, nil)
	add("size", sizeText(w), "", func(m *Model, by int) { m.stepSize(m.sheet.X.Wire[id], by) }, nil)
	add("colour", colourText(w.Colour.V), "digits: 0 black 1 brown 2 red 3 orange 4 yellow 5 green 6 blue 7 violet 8 grey 9 white",
		func(m *Model, by int) { m.stepColour(id, by) },
		&field{label: "colour of wire " + id, value: w.Colour.V, set: set(func(w *model.Wire, v string) { w.Colour = model.Some(v) })})
	add("current", ampsText(w)+" A", "", nil, m.ampsField(i))
	add("role", w.Role.V, "", func(m *Model, by int) { m.stepRole(id, by) }, nil)
	add("from", w.From.V, "+ - next free cavity of the same connector, Enter types it", func(m *Model, by int) { m.stepEnd(id, true, by) },
		&field{label: "from, TERMINATION:CAVITY or a splice", value: w.From.V, set: func(m *Model, t string) error { return m.setEnd(id, true, t) }})
	add("to", w.To.V, "+ - next free cavity of the same connector, Enter types it", func(m *Model, by int) { m.stepEnd(id, false, by) },
		&field{label: "to, TERMINATION:CAVITY or a splice", value: w.To.V, set: func(m *Model, t string) error { return m.setEnd(id, false, t) }})
	add("signal", w.Signal.V, "", nil, &field{label: "signal of wire " + id, value: w.Signal.V, set: set(func(w *model.Wire, v string) { w.Signal = model.Some(v) })})
	add("reel", m.reelText(w.Spec, w.Size, c.Dia.Nominal), "ten side by side, divided by ten; an empty value takes the measurement away", nil, m.reelField(w.Spec, w.Size))
	p.why = figs(id, 0, "", "wire.cut", "wire.finished", "wire.circuit")
	if c.Finished > 0 {
		p.lines = append(p.lines, fmt.Sprintf("cut %s %s, finished %s with loops", m.sys.Length(c.Cut), m.sys.Name(), m.sys.Length(c.Finished)))
	}
	return p
}

var colourNames = [10]string{"black", "brown", "red", "orange", "yellow", "green", "blue", "violet", "grey", "white"}

// colourText is a colour code with its words: the digits of MIL-STD-681, base
// first, then stripes.
func colourText(code string) string {
	says := ""
	for _, r := range code {
		if r < '0' || r > '9' {
			return code
		}
		if says != "" {
			says += "/"
		}
		says += colourNames[r-'0']
	}
	if says == "" {
		return code
	}
	return code + "  " + says
}

func (m *Model) stepSpec(id string, by int) {
	i := m.sheet.X.Wire[id]
	size := m.h.Wires[i].Size
	var specs []string // only those that have the size
	for _, s := range m.cfg.Cat.Specs() {
		if _, ok := m.cfg.Cat.Wire(s, size); ok {
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
	m.change(m.h.EditWire(i, func(w *model.Wire) { w.Colour = model.Some(c) }), "colour "+colourText(c))
}

func (m *Model) stepRole(id string, by int) {
	i := m.sheet.X.Wire[id]
	r, _ := around([]string{"power", "ground", "signal", "data", "spare"}, m.h.Wires[i].Role.V, by)
	m.change(m.h.EditWire(i, func(w *model.Wire) { w.Role = model.Some(r) }), fmt.Sprintf("wire %s is %s", id, r))
}

func (m *Model) end(id string, from bool) string {
	w := &m.h.Wires[m.sheet.X.Wire[id]]
	if from {
		return w.From.V
	}
	return w.To.V
}

func (m *Model) stepEnd(id string, from bool, by int) {
	e, ok := model.ParseEnd(m.end(id, from))
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
	e, ok := model.ParseEnd(text)
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

func (m *Model) putEnd(id string, from bool, text string) {
	m.change(m.h.EditWire(m.sheet.X.Wire[id], func(w *model.Wire) {
		if from {
			w.From = model.Some(text)
		} else {
			w.To = model.Some(text)
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
	return m.sys.Fine(d) + " " + m.sys.Name() + "  from the catalogue, not measured"
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
		if v < 0.2 || v > 30 {
			return fmt.Errorf("%s %s is out of range: 0.2 to 30 mm", text, m.sys.Name())
		}
		m.change(m.h.SetReel(spec, size, v), fmt.Sprintf("reel %s %s measures %s %s", spec, size, m.sys.Fine(v), m.sys.Name()))
		return nil
	}}
}
