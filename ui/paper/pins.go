package paper

import (
	"strings"

	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
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

// pin is one cavity as the pin tables have it: the end it is of, and what is in it; in a file one of its wires.
type pin struct {
	end, cavity, also, state, filled string
	size                             string // of its contact
	crimp                            lists.CrimpRow
	in                               []pinned
}

// pinned is a wire, or the drain of a shield, in a cavity.
type pinned struct {
	id   string
	wire *model.Wire // nil: a drain
	far  string
}

// each is what is said of everything in a cavity, with commas.
func (p pin) each(says func(pinned) string) string {
	var out []string
	for _, in := range p.in {
		out = append(out, says(in))
	}
	return strings.Join(out, ", ")
}

// ofWires is the same of its wires alone.
func (p pin) ofWires(says func(*model.Wire) string) string {
	var out []string
	for _, in := range p.in {
		if in.wire != nil {
			out = append(out, says(in.wire))
		}
	}
	return strings.Join(out, ", ")
}

// pinColumns is what both pin tables say of a cavity.
func (m maker) pinColumns() []list.Column[pin] {
	each := func(head string, says func(*model.Wire) string) list.Column[pin] {
		return list.Text(head, func(p pin) string { return p.ofWires(says) })
	}
	return []list.Column[pin]{
		list.Text("cavity", func(p pin) string {
			if p.also == "" {
				return p.cavity
			}
			return p.cavity + " (" + p.also + ")"
		}).InFile(list.Text("cavity", func(p pin) string { return p.cavity }),
			list.Text("also called", func(p pin) string { return p.also })),
		list.Text("state", func(p pin) string { return strings.Join(list.NonEmpty(p.state, p.filled), ", ") }).InFile(
			list.Text("state", func(p pin) string { return p.state }),
			list.Text("filled with", func(p pin) string { return p.filled })),
		list.Text("wire", func(p pin) string { return p.each(func(in pinned) string { return in.id }) }),
		each("signal", func(w *model.Wire) string { return w.Signal.V }),
		each("size", list.Size),
		each("colour", func(w *model.Wire) string { return list.Colour(w.Colour.V) }).InFile(
			each("colour", list.ColourWord), each("colour code", func(w *model.Wire) string { return w.Colour.V })),
		list.Text("contact", func(p pin) string { return list.Word("size ", p.size) }).InFile(
			list.Text("contact size", func(p pin) string { return p.size }),
			list.Text("contact part", func(p pin) string { return p.crimp.Part }),
			list.Figure(m.In("strip from"), func(p pin) string { return strip(m.Sys, p.crimp.StripMin) }),
			list.Figure(m.In("strip to"), func(p pin) string { return strip(m.Sys, p.crimp.StripMax) }),
			list.Text("tool", func(p pin) string { return p.crimp.Tool.V.Frame }),
			list.Text("positioner", func(p pin) string { return p.crimp.Tool.V.Positioner }).Stands(
				func(pin) catalogue.Standing { return catalogue.Memory }),
			list.Text("setting", func(p pin) string { return crimpSetting(p.crimp) }).Stands(
				func(p pin) catalogue.Standing { return settingStands(p.crimp) })),
		list.Text("leads to", func(p pin) string { return p.each(func(in pinned) string { return in.far }) }),
	}
}

// pins is a connector, cavity by cavity.
func (m maker) pins(k int) list.Table {
	e := &m.H.Terminations[k]
	return list.Of(list.Table{Title: strings.TrimSpace("Pins of " + e.ID + "  " + e.Name.V),
		Note: strings.Join(list.NonEmpty("seen from the wire side", e.Insert.V, string(e.Gender.V), list.Word("key ", e.Key.V), m.Clock(e),
			list.Word("boot ", e.Boot.V), list.Word("fitted to ", e.Device.V)), "; ")},
		append(m.pinColumns(), list.Blank[pin]("in")), m.pinsOf(k))
}

// pinList is every connector in one list, for a spreadsheet: a row for each wire where several share a cavity.
func (m maker) pinList() list.Table {
	var paper, file []pin
	for k := range m.H.Terminations {
		paper = append(paper, m.pinsOf(k)...)
	}
	for _, p := range paper {
		all := p.in
		for n := range all {
			p.in = all[n : n+1]
			file = append(file, p)
		}
		if len(all) == 0 {
			file = append(file, p)
		}
	}
	end := list.Text("end", func(p pin) string { return p.end })
	return list.OfBoth(list.Table{File: "pins", Title: "Pin tables"}, append([]list.Column[pin]{end}, m.pinColumns()...), paper, file)
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
	p := pin{end: e.ID, cavity: name, also: strings.Join(e.Aliases[name], ", "), state: m.state(k, name, cavity), size: cavity.Size}
	p.crimp, _ = lists.CrimpOf(m.S, k, name)
	if c.Sealed && (p.state == "reserved" || p.state == "blank") {
		p.filled = "contact and plug"
		if e.Firewall.V {
			p.filled = "contact, stub of wire and plug"
		}
	}
	for _, id := range cavity.Wires {
		w := m.Wire(id)
		to, ok := m.S.Index.End(w.To.V)
		here := ok && to.Termination == e.ID && to.Cavity == name
		p.in = append(p.in, pinned{id, w, m.End(w, here)})
	}
	if cavity.Drain != "" {
		p.in = append(p.in, pinned{"drain of " + cavity.Drain, nil, "shield of " + cavity.Drain})
	}
	return p
}
