package paper

import (
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/ui/paper/list"
)

// The pin tables: every cavity of a connector and what is in it.

// state is what a cavity is used for.
func (m maker) state(t int, name string, c sheet.Cavity) string {
	switch {
	case c.Drain != "" && len(c.Wires) == 0:
		return "drain"
	case len(c.Wires) == 0 && m.H.Terminations[t].Reserves(name):
		return "reserved"
	case len(c.Wires) == 0:
		return "blank"
	case m.Wire(c.Wires[0]).Role.V == model.RoleSpare:
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
func pinColumns() []list.Column[pin] {
	return []list.Column[pin]{
		list.Text("cavity", func(p pin) string { return p.cavity }),
		list.Text("state", func(p pin) string { return p.state }),
		list.Text("wire", func(p pin) string { return p.wires }),
		list.Text("signal", func(p pin) string { return p.signals }),
		list.Text("size", func(p pin) string { return p.sizes }),
		list.Text("colour", func(p pin) string { return p.colours }),
		list.Text("contact", func(p pin) string { return p.contact }),
		list.Text("leads to", func(p pin) string { return p.farEnds }),
	}
}

// pins is a connector, cavity by cavity.
func (m maker) pins(k int) list.Table {
	e := &m.H.Terminations[k]
	return list.Of(list.Table{Title: strings.TrimSpace("Pins of " + e.ID + "  " + e.Name.V),
		Note: strings.Join(list.NonEmpty("seen from the wire side", e.Insert.V, string(e.Gender.V), list.Word("key ", e.Key.V), m.Clock(e),
			list.Word("boot ", e.Boot.V), list.Word("fitted to ", e.Device.V)), "; ")},
		append(pinColumns(), list.Blank[pin]("in")), m.pinsOf(k))
}

// pinList is every connector in one list, for a spreadsheet.
func (m maker) pinList() list.Table {
	var rows []pin
	for k := range m.H.Terminations {
		rows = append(rows, m.pinsOf(k)...)
	}
	end := list.Text("end", func(p pin) string { return p.end })
	return list.Of(list.Table{File: "pins", Title: "Pin tables"}, append([]list.Column[pin]{end}, pinColumns()...), rows)
}

// pinsOf is the cavities of a termination, in the order its insert has them.
func (m maker) pinsOf(k int) []pin {
	var out []pin
	for _, name := range m.S.Terms[k].Cavities {
		out = append(out, m.pin(k, name))
	}
	return out
}

func (m maker) pin(k int, name string) pin {
	e, c := &m.H.Terminations[k], &m.S.Terms[k]
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
		w := m.Wire(id)
		ids, signals, sizes, colours = append(ids, id), append(signals, w.Signal.V), append(sizes, list.Size(w)),
			append(colours, list.Colour(w.Colour.V))
		other := m.End(w, w.To.V != "" && e.ID == list.TermOf(w.To.V))
		far = append(far, other)
	}
	if cavity.Drain != "" {
		ids, far = append(ids, "drain of "+cavity.Drain), append(far, "shield of "+cavity.Drain)
	}
	return pin{end: e.ID, cavity: called, state: state, wires: strings.Join(ids, ", "), signals: strings.Join(signals, ", "),
		sizes: strings.Join(sizes, ", "), colours: strings.Join(colours, ", "), contact: list.Word("size ", cavity.Size),
		farEnds: strings.Join(far, ", ")}
}
