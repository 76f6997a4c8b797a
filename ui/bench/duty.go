package bench

import (
	"fmt"

	"contralay/model"
	"contralay/model/unit"
)

// How a load comes and goes, and what was measured along its wire.

func (m *Model) dutyRow(id string) row {
	k := m.sheet.X.Wire[id]
	w := &m.h.Wires[k]
	text := "always on"
	if w.OnS.Set || w.PeriodS.Set {
		text = fmt.Sprintf("on %s s in every %s s", secondsOf(w.OnS), secondsOf(w.PeriodS))
		if w.RestA.Set {
			text += fmt.Sprintf(", %s A between", ampsOf(w.RestA))
		}
		text += fmt.Sprintf("; heats as %s A", carriesText(m.sheet, k))
	}
	return row{key: "duty", id: id, text: fmt.Sprintf("%-12s %s", "duty", text), detail: "Enter: a fan that starts, an injector, a coil; heat goes by the mean of the square, drop by the peak", enter: func(m *Model) { m.open(dutyScreen(id)) }, why: figs(id, 0, "", "wire.heats")}
}

func dutyScreen(id string) screen {
	return screen{name: "duty", of: id, page: func(m *Model, w int) page {
		k, ok := m.sheet.X.Wire[id]
		if !ok {
			return page{empty: "wire " + id + " is gone; Esc goes back"}
		}
		hw := &m.h.Wires[k]
		p := page{lines: []string{"duty of wire " + id + ": " + ampsText(hw) + " A while it is on", "heats as " + carriesText(m.sheet, k) + " A; above 5 s on at a time it counts as always on"}, why: figs(id, 0, "", "wire.heats")}
		add := func(key, label, name, value, detail string, most float64, put func(w *model.Wire, v float64), clear func(w *model.Wire)) {
			shown := value
			if value == "-" {
				value = ""
			}
			p.rows = append(p.rows, row{key: key, id: id, text: fmt.Sprintf("%-12s %s %s", label, shown, name), detail: detail, step: func(m *Model, by int) {
				m.stepNumber(value, by, most, name, func(v float64) *model.Harness {
					return m.h.EditWire(m.sheet.X.Wire[id], func(w *model.Wire) { put(w, v) })
				})
			}, field: &field{label: label + ", wire " + id, unit: name, value: value, number: true, set: func(m *Model, text string) error {
				i := m.sheet.X.Wire[id]
				if text == "" {
					m.change(m.h.EditWire(i, clear), "taken away")
					return nil
				}
				return m.setNumber(text, 0, most, name, func(v float64) *model.Harness {
					return m.h.EditWire(i, func(w *model.Wire) { put(w, v) })
				})
			}}})
		}
		add("on", "on for", "s", secondsOf(hw.OnS), "at a time; an empty value takes it away", 86_400, func(w *model.Wire, v float64) { w.OnS = model.Some(unit.Second(v)) }, func(w *model.Wire) { w.OnS = model.Opt[unit.Second]{} })
		add("every", "in every", "s", secondsOf(hw.PeriodS), "from one time it comes on to the next", 86_400, func(w *model.Wire, v float64) { w.PeriodS = model.Some(unit.Second(v)) }, func(w *model.Wire) { w.PeriodS = model.Opt[unit.Second]{} })
		add("between", "in between", "A", ampsOf(hw.RestA), "what it carries the rest of the time: the fan that has started", 1000, func(w *model.Wire, v float64) { w.RestA = model.Some(unit.Ampere(v)) }, func(w *model.Wire) { w.RestA = model.Opt[unit.Ampere]{} })
		return p
	}}
}

// measuredRow is a drop that was measured along a wire, beside what the wire explains.
func (m *Model) measuredRow(id string) row {
	k := m.sheet.X.Wire[id]
	w, c := &m.h.Wires[k], &m.sheet.Wires[k]
	text, value := "not measured", ""
	if w.DropV.Set {
		value = trim(float64(w.DropV.V))
		text = value + " V measured"
		if c.DropKnown {
			text += fmt.Sprintf(", %s explained", unit.Fixed(float64(c.Drop), 2))
		}
	}
	return row{key: "measured", id: id, text: fmt.Sprintf("%-12s %s", "drop", text), detail: "measured from end to end at the current above; what the wire does not explain is lost in contacts, crimps, splices, the ground point", why: figs(id, 0, "", "wire.lost", "wire.drop"), step: func(m *Model, by int) {
		m.stepNumber(value, by, 60, "V", func(v float64) *model.Harness {
			return m.h.EditWire(m.sheet.X.Wire[id], func(w *model.Wire) { w.DropV = model.Some(unit.Volt(v)) })
		})
	},
		field: &field{label: "drop measured along wire " + id, unit: "V", value: value, number: true, set: func(m *Model, text string) error {
			i := m.sheet.X.Wire[id]
			if text == "" {
				m.change(m.h.EditWire(i, func(w *model.Wire) { w.DropV = model.Opt[unit.Volt]{} }), "taken away")
				return nil
			}
			return m.setNumber(text, 0, 60, "V", func(v float64) *model.Harness {
				return m.h.EditWire(i, func(w *model.Wire) { w.DropV = model.Some(unit.Volt(v)) })
			})
		}}}
}

// pairRows is what the pair of a data wire does to a signal.
func (m *Model) pairRows(id string) []row {
	u, in := m.sheet.X.UnitOf[id]
	if !in || !m.sheet.Units[u].Pair.Known {
		return nil
	}
	k := m.sheet.X.Wire[id]
	p, name := m.sheet.Units[u].Pair, m.h.Units[u].ID
	if m.h.Wires[k].Role.V != "data" && m.h.Units[u].Kbit.V <= 0 {
		return nil
	}
	text := fmt.Sprintf("pair %s      about %s ohm alone in air, loop %s mohm/m", name, unit.Fixed(float64(p.Ohm), 0), unit.Fixed(float64(p.Loop), 0))
	detail := "a shield, a sheath and wires beside it lower it; the formula was fitted to tighter twist"
	rows := []row{{key: "pair", id: name, text: text, detail: detail, why: figs(name, 0, "", "unit.ohm", "unit.loop"), step: func(m *Model, by int) { m.stepRate(name, by) }, field: &field{label: "bit rate of the bus of " + name, unit: "kbit/s", value: kbitText(&m.h.Units[u]), number: true, set: func(m *Model, text string) error {
		return m.setNumber(text, 0, 100_000, "kbit/s", func(v float64) *model.Harness {
			return m.h.EditUnit(m.sheet.X.Unit[name], func(u *model.Unit) { u.Kbit = model.Some(unit.KilobitPerSec(v)) })
		})
	}}}}
	if p.Bus.Known {
		t := fmt.Sprintf("bus %s       %s kbit/s, %s %s long", name, kbitText(&m.h.Units[u]), m.sys.Length(p.Bus.MM), m.sys.Name())
		if p.Bus.StubMM > 0 {
			t += fmt.Sprintf(", longest stub %s", m.sys.Length(p.Bus.StubMM))
		}
		rows = append(rows, row{key: "bus", id: name, text: t, detail: "its longest way over splices; the rest are stubs", why: figs(name, 0, "", "unit.bus", "unit.stub")})
	}
	return rows
}

// busRates are the bit rates that + and - go through; digits give any other.
var busRates = [...]unit.KilobitPerSec{0, 50, 125, 250, 500, 800, 1000}

func (m *Model) stepRate(name string, by int) {
	i := m.sheet.X.Unit[name]
	at := 0
	for k, r := range busRates {
		if r <= m.h.Units[i].Kbit.V {
			at = k
		}
	}
	if at+by < 0 || at+by >= len(busRates) {
		m.tell("that is the last")
		return
	}
	v := busRates[at+by]
	m.change(m.h.EditUnit(i, func(u *model.Unit) { u.Kbit = model.Some(v) }), trim(float64(v))+" kbit/s")
}

// stepNumber changes a number, "" for none, by one step as fine as it is small.
func (m *Model) stepNumber(value string, by int, most float64, name string, make func(v float64) *model.Harness) {
	v, _ := unit.ParseNumber(value)
	step := stepOf(v)
	if by < 0 && v > 0 {
		step = stepOf(v - step/1e6)
	}
	v = unit.RoundHalfUp(max(0, v+float64(by)*step), 0.001)
	switch {
	case v > most:
		m.tell(trim(most) + " " + name + " is the most")
	case value != "" && trim(v) == value:
		m.tell("0 " + name + " is the least")
	default:
		m.change(make(v), fmt.Sprintf("set to %s %s", trim(v), name))
	}
}

// stepOf is a tenth of the power of ten below a number, at least a thousandth.
func stepOf(v float64) float64 {
	for _, s := range []float64{0.001, 0.01, 0.1, 1} {
		if v < 10*s {
			return s
		}
	}
	return 10
}

func kbitText(u *model.Unit) string {
	if u.Kbit.V <= 0 {
		return ""
	}
	return trim(float64(u.Kbit.V))
}
