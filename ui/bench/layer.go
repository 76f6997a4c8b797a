package bench

import (
	"fmt"
	"slices"

	"contralay/calc"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper"
)

// layerScreen is one layer: each member, and what can be set on the layer.
func layerScreen(k int) screen {
	return screen{name: "layer", page: func(m *Model, w int) page { return m.layerPage(k) }}
}

func (m *Model) layerPage(k int) page {
	mb, b, ok := m.b()
	if !ok || k >= len(b.Layers) {
		return page{empty: "that layer is gone; Esc goes back"}
	}
	l := &b.Layers[k]
	p := page{lines: []string{m.layerDetail(k, l), "+ further out, - further in, Enter pins, . takes it out of the lay-up"}}
	p.why = figs(mb.ID, k, "", layerFigures...)
	for j, c := range l.Members {
		if c.Kind == calc.OfFiller {
			continue
		}
		id := c.ID
		name := ""
		if i, is := m.sheet.X.Wire[id]; is {
			name = fmt.Sprintf("%s  %s  %s", paper.Size(&m.h.Wires[i]), paper.Colour(m.h.Wires[i].Colour.V), m.h.Wires[i].Signal.V)
		} else if i, is := m.sheet.X.Unit[id]; is {
			name = m.h.Units[i].Name.V
		}
		pin := ""
		if m.pinned(k, id) {
			pin = "  (pinned)"
		}
		text := fmt.Sprintf("%2d  %-5s %s%s", j+1, id, name, pin)
		p.rows = append(p.rows, row{text: text, id: id, key: id,
			detail: fmt.Sprintf("%s, over %s %s; Enter %s", id, m.sys.Fine(c.D), m.sys.Name(), map[bool]string{false: "pins it to this layer", true: "lets it move again"}[pin != ""]),
			why:    figs(mb.ID, k, id, "component.over", "component.loss", "component.run"),
			enter:  func(m *Model) { m.pin(k, id) },
			step: func(m *Model, by int) {
				if k+by < 0 {
					m.tell("the centre is innermost")
					return
				}
				if m.move(id, k+by) { // the screen goes with it, so that - takes back what + did
					m.back()
					m.open(layerScreen(m.layerOf(id)))
					m.on[m.cursorKey()] = id
				}
			},
			drop: func(m *Model) { m.move(id, -1) }})
	}
	locked := m.locked(k)
	p.rows = append(p.rows, row{key: "locked", text: "locked       " + map[bool]string{true: "yes", false: "no"}[locked],
		detail: "cut, tied or meant so: no option and no move changes it", step: func(m *Model, _ int) { m.lock(k, !locked) }})
	if k > 0 {
		p.rows = append(p.rows, row{text: fmt.Sprintf("fillers      %d", l.Fillers), detail: "white wire off the layer's own reel, or a stock size in the Fill step",
			why:  figs(mb.ID, k, "", "layer.filler"),
			step: func(m *Model, by int) { m.addFiller(k, by, 0) }})
	}
	if l.LayMM > 0 {
		p.rows = append(p.rows, row{big: m.sys.Length(l.LayMM), bigSays: m.sys.Name() + "  one turn of " + model.LayerName(k), text: fmt.Sprintf("turn length  %s %s", m.sys.Length(l.LayMM), m.sys.Name()), detail: "+ - 5 mm; 0 follows the lay ratio", step: m.layerStep(k, "turn length", 5, 2000, l.LayMM, func(l *model.Layer, v unit.Millimetre) { l.LayMM = model.Some(v) }), why: figs(mb.ID, k, "", "layer.lay", "layer.turns"),
			field: m.layerField(k, "turn length", 0, 2000, func(l *model.Layer, v unit.Millimetre) { l.LayMM = model.Some(v) })})
	}
	p.rows = append(p.rows, row{text: "binder       " + m.sys.Fine(m.bind(k)) + " " + m.sys.Name(), detail: "what tape or thread adds to the diameter; + - 0.05 mm",
		step:  m.layerStep(k, "binder", 0.05, 5, m.bind(k), func(l *model.Layer, v unit.Millimetre) { l.BindMM = model.Some(v) }),
		field: m.layerField(k, "binder", 0, 5, func(l *model.Layer, v unit.Millimetre) { l.BindMM = model.Some(v) })})
	return p
}

// layerOf is the layer a component lies in now.
func (m *Model) layerOf(id string) int {
	_, b, _ := m.b()
	for k := range b.Layers {
		if slices.ContainsFunc(b.Layers[k].Members, func(c calc.Member) bool { return c.ID == id }) {
			return k
		}
	}
	return 0
}

func (m *Model) locked(k int) bool {
	ls := m.h.Branches[m.branch].Layers
	return k < len(ls) && ls[k].Locked.V
}

func (m *Model) lock(k int, on bool) {
	m.change(m.written().EditBranch(m.branch, func(b *model.Branch) { b.Layers[k].Locked = model.Some(on) }),
		model.LayerName(k)+map[bool]string{true: " is locked", false: " is open again"}[on])
}

func (m *Model) pinned(k int, id string) bool {
	ls := m.h.Branches[m.branch].Layers
	return k < len(ls) && slices.Contains(ls[k].Pinned, id)
}

// pin keeps a component in its layer, or lets it go.
func (m *Model) pin(k int, id string) {
	off := m.pinned(k, id)
	m.change(m.written().EditBranch(m.branch, func(b *model.Branch) {
		l := &b.Layers[k]
		if off {
			l.Pinned = slices.DeleteFunc(l.Pinned, func(o string) bool { return o == id })
		} else {
			l.Pinned = append(l.Pinned, id)
		}
	}), id+map[bool]string{true: " may move again", false: " is pinned to " + model.LayerName(k)}[off])
}

func (m *Model) bind(k int) unit.Millimetre {
	if ls := m.h.Branches[m.branch].Layers; k < len(ls) {
		return ls[k].BindMM.V
	}
	return 0
}

func (m *Model) layerField(k int, label string, least, most unit.Millimetre, set func(l *model.Layer, v unit.Millimetre)) *field {
	return &field{label: label + " of " + model.LayerName(k), unit: m.sys.Name(), number: true, set: func(m *Model, text string) error {
		v, err := m.sys.Parse(text)
		if err != nil {
			return err
		}
		if v < least || v > most {
			return fmt.Errorf("%s is out of range: %s to %s %s", text, m.sys.Length(least), m.sys.Length(most), m.sys.Name())
		}
		m.change(m.written().EditBranch(m.branch, func(b *model.Branch) { set(&b.Layers[k], v) }), label+" set")
		return nil
	}}
}

// layerStep changes a value of a layer by + -, in steps.
func (m *Model) layerStep(k int, label string, step, most, now unit.Millimetre, set func(l *model.Layer, v unit.Millimetre)) func(m *Model, by int) {
	return func(m *Model, by int) {
		v := unit.Millimetre(unit.RoundHalfUp(float64(now), float64(step))) + step*unit.Millimetre(by)
		if v < 0 || v > most {
			m.tell(fmt.Sprintf("%s goes from 0 to %s mm", label, trim(float64(most))))
			return
		}
		v = unit.Millimetre(unit.RoundHalfUp(float64(v), 0.001))
		m.change(m.written().EditBranch(m.branch, func(b *model.Branch) { set(&b.Layers[k], v) }), label+" "+m.sys.Fine(v)+" "+m.sys.Name())
	}
}

// addFiller puts fillers into a layer or takes them out; size 0 is the layer's
// smallest, or what its fillers are already.
func (m *Model) addFiller(k, by int, size unit.Millimetre) {
	h := m.written()
	l := h.Branches[m.branch].Layers[k]
	n := l.Fillers.V + by
	if n < 0 {
		m.tell("no filler in this layer")
		return
	}
	m.change(h.EditBranch(m.branch, func(b *model.Branch) {
		l := &b.Layers[k]
		l.Fillers = model.Some(n)
		if size > 0 {
			l.FillerMM = model.Some(size)
		}
		if n == 0 {
			l.Fillers, l.FillerMM = model.Opt[int]{}, model.Opt[unit.Millimetre]{}
		}
	}), fmt.Sprintf("%s has %d of filler", model.LayerName(k), n))
}
