package desk

import (
	"fmt"

	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/bench/words"
	"contralay/ui/paper"
)

// CarriesText is what a wire carries as heat sees it.
func CarriesText(s *sheet.Sheet, i int) string {
	if !wires.Carries(s, i) {
		return "-"
	}
	step := 0.01
	if s.Wires[i].Heats >= 10 {
		step = 0.1
	}
	return words.Trim(unit.RoundHalfUp(float64(s.Wires[i].Heats), step))
}

// WireDetail is wire i in one line; comp is the component it is laid as.
func WireDetail(m *Model, i int, comp string) string {
	w, c := &m.H.Wires[i], &m.Sheet.Wires[i]
	text := w.ID + ": "
	if c.Bound.Set {
		text += fmt.Sprintf("%s of %s A, %s; ", CarriesText(m.Sheet, i), MostText(c), c.Bound.V.Where)
	}
	if c.HottestC.Set {
		text += HotText(c) + " C; "
	}
	text += words.OrDash(w.From.V) + " to " + words.OrDash(w.To.V)
	if c.Dia.Known() {
		text += fmt.Sprintf(", OD %s %s", diaText(m, c.Dia.Nominal, c.Dia), m.Sys.Name())
	}
	if c.Drop.Set {
		text += fmt.Sprintf(", drops %s V", unit.Fixed(c.Circuit, 2))
	}
	if comp != w.ID {
		text += ", in " + comp
	}
	return text + ", " + w.Spec + " " + paper.Size(w)
}

// WireReasons is the figures of a wire in a list and in its detail.
func WireReasons(m *Model, i int) []Reason {
	id := m.H.Wires[i].ID
	out := FiguresOf(id, "wire.cut", "wire.heats", "wire.bound", "wire.hottest", "wire.circuit", "wire.drop")
	if c := &m.Sheet.Wires[i]; c.Bound.Set {
		out = append(out, FiguresAt(id, c.BoundAt, "wire.limit")...)
	}
	return append(out, FiguresOfPart(WholeLoom, id, "component.over")...)
}

// MostText is a wire's limit of current, marked where it rests on memory.
func MostText(c *sheet.Wire) string {
	if !c.Bound.Set {
		return "-"
	}
	t := unit.Fixed(c.Bound.V.Amps, 1)
	if c.Bound.V.Standing == catalogue.Memory {
		t += "~"
	}
	return t
}

// HotText is how warm its conductor gets.
func HotText(c *sheet.Wire) string {
	if !c.HottestC.Set {
		return "-"
	}
	return unit.Fixed(c.HottestC.V, 0)
}

// diaText is a diameter, marked where it rests on memory.
func diaText(m *Model, v unit.Millimetre, d sheet.Dia) string {
	t := m.Sys.Fine(v)
	if d.Standing == "memory" {
		t += "~"
	}
	return t
}
