package wires

import (
	"fmt"

	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// How a load comes and goes, and what was measured along its wire.

func dutyRow(m *desk.Model, id string) desk.Row {
	k := m.Sheet.Index.Wire[id]
	w := &m.H.Wires[k]
	text := "always on"
	if w.OnS.Set || w.PeriodS.Set {
		text = fmt.Sprintf("on %s s in every %s s", secondsOf(w.OnS), secondsOf(w.PeriodS))
		if w.RestA.Set {
			text += fmt.Sprintf(", %s A between", ampsOf(w.RestA))
		}
		text += fmt.Sprintf("; RMS %s A", desk.CarriesText(m.Sheet, k))
	}
	return desk.Row{Key: "duty", Id: id, Text: fmt.Sprintf("%-12s %s", "duty", text),
		Detail: "For a load that switches. Heating uses the RMS current, drop uses the peak",
		Enter:  func(m *desk.Model) { m.Show(DutyKind, id) }, Why: desk.FiguresOf(id, "wire.heats")}
}

// DutyKind is the screen of how a load comes and goes.
const DutyKind desk.Kind = "duty"

// DutyPage is how the load of a wire comes and goes.
func DutyPage(m *desk.Model, _ int, id string) desk.Page {
	k, ok := m.Sheet.Index.Wire[id]
	if !ok {
		return desk.Page{Empty: "wire " + id + " is gone. Esc goes back"}
	}
	hw := &m.H.Wires[k]
	p := desk.Page{Lines: []string{"duty of wire " + id + ": " + ampsText(hw) + " A while it is on",
		"RMS current " + desk.CarriesText(m.Sheet, k) + " A. Above 5 s on at a time it counts as always on"}, Why: desk.FiguresOf(id,
		"wire.heats")}
	add := func(key, label, name, value, detail string, most float64, put func(w *model.Wire, v float64), clear func(w *model.Wire)) {
		shown := value
		if value == "-" {
			value = ""
		}
		p.Rows = append(p.Rows, desk.Row{Key: key, Id: id, Text: fmt.Sprintf("%-12s %s %s", label, shown, name), Detail: detail,
			Step: func(m *desk.Model, by int) {
				stepNumber(m, value, by, most, name, func(v float64) *model.Harness {
					return m.H.EditWire(m.Sheet.Index.Wire[id], func(w *model.Wire) { put(w, v) })
				})
			}, Field: &desk.Field{Label: label + ", wire " + id, Unit: name, Value: value, Number: true,
				Set: func(m *desk.Model, text string) error {
					i := m.Sheet.Index.Wire[id]
					if text == "" {
						m.Change(m.H.EditWire(i, clear), "removed")
						return nil
					}
					return m.SetNumber(text, 0, most, name, func(v float64) *model.Harness {
						return m.H.EditWire(i, func(w *model.Wire) { put(w, v) })
					})
				}}})
	}
	add("on", "on for", "s", secondsOf(hw.OnS), "How long it is on at a time. An empty value removes it", 86_400,
		func(w *model.Wire, v float64) { w.OnS = model.Some(unit.Second(v)) }, func(w *model.Wire) { w.OnS = model.Opt[unit.Second]{} })
	add("every", "in every", "s", secondsOf(hw.PeriodS), "From one start to the next", 86_400,
		func(w *model.Wire, v float64) { w.PeriodS = model.Some(unit.Second(v)) },
		func(w *model.Wire) { w.PeriodS = model.Opt[unit.Second]{} })
	add("between", "in between", "A", ampsOf(hw.RestA), "What it carries the rest of the time, such as a fan after its start", 1000,
		func(w *model.Wire, v float64) { w.RestA = model.Some(unit.Ampere(v)) },
		func(w *model.Wire) { w.RestA = model.Opt[unit.Ampere]{} })
	return p
}

// measuredRow is a drop that was measured along a wire, beside what the wire explains.
func measuredRow(m *desk.Model, id string) desk.Row {
	k := m.Sheet.Index.Wire[id]
	w, c := &m.H.Wires[k], &m.Sheet.Wires[k]
	text, value := "not measured", ""
	if w.DropV.Set {
		value = words.Trim(float64(w.DropV.V))
		text = value + " V measured"
		if c.Drop.Set {
			text += fmt.Sprintf(", wire alone %s", unit.Fixed(c.Drop.V, 2))
		}
	}
	return desk.Row{Key: "measured", Id: id, Text: fmt.Sprintf("%-12s %s", "drop", text),
		Detail: "Measure end to end at the current above. Contacts and joints lose the rest",
		Why:    desk.FiguresOf(id, "wire.lost", "wire.drop"), Step: func(m *desk.Model, by int) {
			stepNumber(m, value, by, 60, "V", func(v float64) *model.Harness {
				return m.H.EditWire(m.Sheet.Index.Wire[id], func(w *model.Wire) { w.DropV = model.Some(unit.Volt(v)) })
			})
		},
		Field: &desk.Field{Label: "drop measured along wire " + id, Unit: "V", Value: value, Number: true,
			Set: func(m *desk.Model, text string) error {
				i := m.Sheet.Index.Wire[id]
				if text == "" {
					m.Change(m.H.EditWire(i, func(w *model.Wire) { w.DropV = model.Opt[unit.Volt]{} }), "removed")
					return nil
				}
				return m.SetNumber(text, 0, 60, "V", func(v float64) *model.Harness {
					return m.H.EditWire(i, func(w *model.Wire) { w.DropV = model.Some(unit.Volt(v)) })
				})
			}}}
}

// pairRows is what the pair of a data wire does to a signal.
func pairRows(m *desk.Model, id string) []desk.Row {
	u, in := m.Sheet.Index.UnitOf[id]
	if !in || !m.Sheet.Units[u].Pair.Known {
		return nil
	}
	k := m.Sheet.Index.Wire[id]
	p, name := m.Sheet.Units[u].Pair, m.H.Units[u].ID
	if m.H.Wires[k].Role.V != model.RoleData && m.H.Units[u].Kbit.V <= 0 {
		return nil
	}
	text := fmt.Sprintf("pair %s      about %s ohm alone in air, loop %s mohm/m", name, unit.Fixed(p.Ohm, 0),
		unit.Fixed(p.Loop, 0))
	detail := "Shield, sheath and neighbours lower it. The formula is for tighter twist"
	rows := []desk.Row{{Key: "pair", Id: name, Text: text, Detail: detail, Why: desk.FiguresOf(name, "unit.ohm", "unit.loop"),
		Step: func(m *desk.Model, by int) { stepRate(m, name, by) },
		Field: &desk.Field{Label: "bit rate of the bus of " + name, Unit: "kbit/s", Value: kbitText(&m.H.Units[u]), Number: true,
			Set: func(m *desk.Model, text string) error {
				return m.SetNumber(text, 0, 100_000, "kbit/s", func(v float64) *model.Harness {
					return m.H.EditUnit(m.Sheet.Index.Unit[name], func(u *model.Unit) { u.Kbit = model.Some(unit.KilobitPerSec(v)) })
				})
			}}}}
	if p.Bus.Known {
		t := fmt.Sprintf("bus %s       %s kbit/s, %s %s long", name, kbitText(&m.H.Units[u]), m.Sys.Length(p.Bus.MM), m.Sys.Name())
		if p.Bus.StubMM > 0 {
			t += fmt.Sprintf(", longest stub %s", m.Sys.Length(p.Bus.StubMM))
		}
		rows = append(rows, desk.Row{Key: "bus", Id: name, Text: t,
			Detail: "The bus is the longest way through its splices. The rest are stubs",
			Why:    desk.FiguresOf(name, "unit.bus", "unit.stub")})
	}
	return rows
}

// busRates are the bit rates that + and - go through; digits give any other.
var busRates = [...]unit.KilobitPerSec{0, 50, 125, 250, 500, 800, 1000}

func stepRate(m *desk.Model, name string, by int) {
	i := m.Sheet.Index.Unit[name]
	at := 0
	for k, r := range busRates {
		if r <= m.H.Units[i].Kbit.V {
			at = k
		}
	}
	if at+by < 0 || at+by >= len(busRates) {
		m.Tell("that is the last")
		return
	}
	v := busRates[at+by]
	m.Change(m.H.EditUnit(i, func(u *model.Unit) { u.Kbit = model.Some(v) }), words.Trim(float64(v))+" kbit/s")
}

// stepNumber changes a number, "" for none, by one step as fine as it is small.
func stepNumber(m *desk.Model, value string, by int, most float64, name string, make func(v float64) *model.Harness) {
	v, _ := unit.ParseNumber(value)
	step := stepOf(v)
	if by < 0 && v > 0 {
		step = stepOf(v - step/1e6)
	}
	v = unit.RoundHalfUp(max(0, v+float64(by)*step), 0.001)
	switch {
	case v > most:
		m.Tell(words.Trim(most) + " " + name + " is the highest")
	case value != "" && words.Trim(v) == value:
		m.Tell("0 " + name + " is the lowest")
	default:
		m.Change(make(v), fmt.Sprintf("set to %s %s", words.Trim(v), name))
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
	return words.Trim(float64(u.Kbit.V))
}
