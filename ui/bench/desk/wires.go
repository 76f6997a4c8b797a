package desk

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/bench/words"
	"contralay/ui/paper"
)

// WiresHere is the wires of the branch, units' wires too, in file order.
func (m *Model) WiresHere() []int {
	var out []int
	for i, w := range m.Sheet.Wires {
		if slices.Contains(w.Path, m.Branch) {
			out = append(out, i)
		}
	}
	return out
}

func (m *Model) FreeText() string {
	var parts []string
	for i, t := range m.Sheet.Terms {
		if len(t.Free) > 0 {
			parts = append(parts, fmt.Sprintf("%s %d", m.H.Terminations[i].ID, len(t.Free)))
		}
	}
	if len(parts) == 0 {
		return "none"
	}
	if len(parts) > 5 {
		parts = append(parts[:5], "…")
	}
	return strings.Join(parts, ", ")
}

func (m *Model) WireDetail(i int, comp string) string {
	w, c := &m.H.Wires[i], &m.Sheet.Wires[i]
	text := w.ID + ": "
	if c.Bounded {
		text += fmt.Sprintf("%s of %s A, %s; ", CarriesText(m.Sheet, i), MostText(c), c.Bound.By)
	}
	if c.HottestKnown {
		text += HotText(c) + " C; "
	}
	text += fmt.Sprintf("%s %s, %s to %s", w.Spec, paper.Size(w), words.OrDash(w.From.V), words.OrDash(w.To.V))
	if c.Dia.Known() {
		text += fmt.Sprintf(", over %s %s", m.diaText(c.Dia.Nominal, c.Dia), m.Sys.Name())
	}
	if c.DropKnown {
		text += fmt.Sprintf(", drops %s V", unit.Fixed(c.Circuit, 2))
	}
	if comp != w.ID {
		text += ", in " + comp
	}
	return text
}

// WireReasons is the figures of a wire in a list and in its detail.
func (m *Model) WireReasons(i int) []Reason {
	id := m.H.Wires[i].ID
	out := Figs(id, 0, "", "wire.cut", "wire.heats", "wire.bound", "wire.hottest", "wire.circuit", "wire.drop")
	if c := &m.Sheet.Wires[i]; c.Bounded {
		out = append(out, Figs(id, c.BoundAt, "", "wire.limit")...)
	}
	return append(out, Figs("", 0, id, "component.over")...)
}

// MostText is a wire's limit of current, marked where it rests on memory.
func MostText(c *sheet.Wire) string {
	if !c.Bounded {
		return "-"
	}
	t := unit.Fixed(c.Bound.Amps, 1)
	if c.Bound.Standing == catalogue.Memory {
		t += "~"
	}
	return t
}

// HotText is how warm its conductor gets.
func HotText(c *sheet.Wire) string {
	if !c.HottestKnown {
		return "-"
	}
	return unit.Fixed(c.HottestC, 0)
}

func (m *Model) diaText(v unit.Millimetre, d sheet.Dia) string {
	t := m.Sys.Fine(v)
	if d.Standing == "memory" {
		t += "~"
	}
	return t
}

// MarkFor is the mark of the worst snag about a thing.
func (m *Model) MarkFor(id string) string {
	mark := ""
	for _, s := range m.Sheet.Snags {
		if s.Where != id {
			continue
		}
		switch s.Level {
		case sheet.Stop:
			return "!"
		case sheet.Warn:
			mark = "?"
		}
	}
	return mark
}

// SetNumber reads a number, tests its range and makes the change.
func (m *Model) SetNumber(text string, least, most float64, name string, make func(v float64) *model.Harness) error {
	v, err := unit.ParseNumber(text)
	if err != nil {
		return fmt.Errorf("a number is wanted, %s to %s %s", words.Trim(least), words.Trim(most), name)
	}
	if v < least || v > most {
		return fmt.Errorf("%s %s is out of range: %s to %s %s", words.Trim(v), name, words.Trim(least), words.Trim(most), name)
	}
	m.Change(make(v), fmt.Sprintf("set to %s %s", words.Trim(v), name))
	return nil
}
