package paper

import (
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
)

// The pin tables: every cavity of a connector and what is in it.

// state is what a cavity is used for.
func (m maker) state(t int, name string, c sheet.Cavity) string {
	switch {
	case c.Drain != "" && len(c.Wires) == 0:
		return "drain"
	case len(c.Wires) == 0 && m.h.Terminations[t].Reserves(name):
		return "reserved"
	case len(c.Wires) == 0:
		return "blank"
	case m.wire(c.Wires[0]).Role.V == model.RoleSpare:
		return "spare"
	}
	return "wired"
}

// pin is one cavity as the pin tables have it: the end it is of, and what is said of all
// that is in it.
type pin struct {
	end, cavity, state                               string
	wires, signals, sizes, colours, contact, farEnds string
}

// pinColumns is what both pin tables say of a cavity.
func pinColumns() []column[pin] {
	return []column[pin]{
		{"cavity", toLeft, func(p pin) string { return p.cavity }},
		{"state", toLeft, func(p pin) string { return p.state }},
		{"wire", toLeft, func(p pin) string { return p.wires }},
		{"signal", toLeft, func(p pin) string { return p.signals }},
		{"size", toLeft, func(p pin) string { return p.sizes }},
		{"colour", toLeft, func(p pin) string { return p.colours }},
		{"contact", toLeft, func(p pin) string { return p.contact }},
		{"leads to", toLeft, func(p pin) string { return p.farEnds }},
	}
}

// pins is a connector, cavity by cavity.
func (m maker) pins(k int) Table {
	e := &m.h.Terminations[k]
	return tableOf(Table{Title: strings.TrimSpace("Pins of " + e.ID + "  " + e.Name.V),
		Note: strings.Join(nonEmpty("seen from the wire side", e.Insert.V, string(e.Gender.V), word("key ", e.Key.V), m.clock(e),
			word("boot ", e.Boot.V), word("fitted to ", e.Device.V)), "; ")},
		append(pinColumns(), column[pin]{"in", byHand, nil}), m.pinsOf(k))
}

// pinList is every connector in one list, for a spreadsheet.
func (m maker) pinList() Table {
	var rows []pin
	for k := range m.h.Terminations {
		rows = append(rows, m.pinsOf(k)...)
	}
	end := column[pin]{"end", toLeft, func(p pin) string { return p.end }}
	return tableOf(Table{File: "pins", Title: "Pin tables"}, append([]column[pin]{end}, pinColumns()...), rows)
}

// pinsOf is the cavities of a termination, in the order its insert has them.
func (m maker) pinsOf(k int) []pin {
	var out []pin
	for _, name := range m.s.Terms[k].Cavities {
		out = append(out, m.pin(k, name))
	}
	return out
}

func (m maker) pin(k int, name string) pin {
	e, c := &m.h.Terminations[k], &m.s.Terms[k]
	cavity := c.State[name]
	called := name
	if also := e.Aliases[name]; len(also) > 0 {
		called += " (" + strings.Join(also, ", ") + ")"
	}
	state := m.state(k, name, cavity)
	if c.Sealed && (state == "reserved" || state == "blank") {
		plug := "contact and plug"
		if e.Firewall.V {
			plug = "contact, stub of wire and plug"
		}
		state += ", " + plug
	}
	var ids, signals, sizes, colours, far []string
	for _, id := range cavity.Wires {
		w := m.wire(id)
		ids, signals, sizes, colours = append(ids, id), append(signals, w.Signal.V), append(sizes, Size(w)),
			append(colours, Colour(w.Colour.V))
		other := m.end(w, w.To.V != "" && e.ID == termOf(w.To.V))
		far = append(far, other)
	}
	if cavity.Drain != "" {
		ids, far = append(ids, "drain of "+cavity.Drain), append(far, "shield of "+cavity.Drain)
	}
	return pin{end: e.ID, cavity: called, state: state, wires: strings.Join(ids, ", "), signals: strings.Join(signals, ", "),
		sizes: strings.Join(sizes, ", "), colours: strings.Join(colours, ", "), contact: word("size ", cavity.Size),
		farEnds: strings.Join(far, ", ")}
}
