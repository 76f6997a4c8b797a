package connector

import (
	"fmt"
	"strings"

	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper/list"
)

// What a cavity is used for, in one word.
const (
	wired    = "wired"
	spare    = "spare"
	drain    = "drain"
	reserved = "reserved"
	blank    = "blank"
)

// Pin is one cavity of a termination and what goes into it.
type Pin struct {
	End    string
	Cavity string
	Also   []string // what else it is called
	State  string
	Wires  []int  // their places in the harness
	Drain  string // unit whose shield is grounded here; "" none
	Size   string // of its contact; "" not known
	Crimp  model.Opt[lists.CrimpRow]
	Closed string // what closes it where no wire is in it; "" nothing
	Plug   string // part of the plug that does; "" none, or not known
}

// Pins is every cavity of a termination, in the order its insert has them.
func Pins(m list.Maker, t int) []Pin {
	out := make([]Pin, 0, len(m.S.Terms[t].Cavities))
	for _, name := range m.S.Terms[t].Cavities {
		out = append(out, pinOf(m, t, name))
	}
	return out
}

func pinOf(m list.Maker, t int, name string) Pin {
	e, worked := &m.H.Terminations[t], &m.S.Terms[t]
	c := worked.State[name]
	p := Pin{End: e.ID, Cavity: name, Also: e.Aliases[name], State: stateOf(m, e, name, c), Drain: c.Drain, Size: c.Size}
	for _, id := range c.Wires {
		if k, ok := m.S.Index.Wire[id]; ok {
			p.Wires = append(p.Wires, k)
		}
	}
	if row, ok := lists.CrimpOf(m.S, t, name); ok {
		p.Crimp = model.Some(row)
	}
	if worked.Sealed && (p.State == reserved || p.State == blank) {
		p.Closed = "contact and plug"
		if e.Firewall.V {
			p.Closed = "contact, stub of wire and plug"
		}
		if _, known := m.S.Cat.Insert(e.Insert.V); known {
			contact, _ := m.S.Cat.Contact(c.Size)
			p.Plug = contact.SealPlug
		}
	}
	return p
}

// stateOf is what a cavity is used for.
func stateOf(m list.Maker, e *model.Termination, name string, c sheet.Cavity) string {
	switch {
	case c.Drain != "" && len(c.Wires) == 0:
		return drain
	case len(c.Wires) == 0 && e.Reserves(name):
		return reserved
	case len(c.Wires) == 0:
		return blank
	case m.Wire(c.Wires[0]).Role.V == model.RoleSpare:
		return spare
	}
	return wired
}

// Filled reports whether something is crimped or joined in a cavity.
func (p Pin) Filled() bool { return len(p.Wires) > 0 || p.Drain != "" }

// colourOf is the colour of a wire in words: "light blue", "white/brown".
func colourOf(w *model.Wire) string {
	return strings.TrimSpace(string(w.Shade.V) + " " + model.ColourWords(w.Colour.V))
}

// pinRow is a row of the list of pins: one thing in a cavity, or a cavity with nothing in it.
type pinRow struct {
	Pin
	wire *model.Wire // nil: a drain, or nothing
	far  string      // where it leads to
}

// rowsOf is a row for each thing in a cavity; one where it is empty.
func rowsOf(m list.Maker, p Pin) []pinRow {
	var out []pinRow
	for _, k := range p.Wires {
		w := &m.H.Wires[k]
		out = append(out, pinRow{Pin: p, wire: w, far: m.End(w, w.To.V != "" && endIs(m, w.To.V, p))})
		out[len(out)-1].Drain = ""
	}
	if p.Drain != "" {
		out = append(out, pinRow{Pin: p, far: "shield of " + p.Drain})
	}
	if len(out) == 0 {
		out = append(out, pinRow{Pin: p})
	}
	return out
}

// endIs reports whether an end of a wire is a cavity.
func endIs(m list.Maker, text string, p Pin) bool {
	e, ok := m.S.Index.End(text)
	return ok && e.Termination == p.End && e.Cavity == p.Cavity
}

// of is what is said of the wire of a row; "" where it has none.
func (r pinRow) of(says func(w *model.Wire) string) string {
	if r.wire == nil {
		return ""
	}
	return says(r.wire)
}

// crimped is what is said of the crimp of a row; "" where nothing is crimped or it is not known.
func (r pinRow) crimped(says func(c lists.CrimpRow) string) string {
	if !r.Crimp.Set || r.wire == nil {
		return ""
	}
	return says(r.Crimp.V)
}

// PinTable is the list of pins: a row for each wire and drain in each cavity, and for each empty cavity, a
// value in each cell.
func PinTable(m list.Maker) list.Table {
	var rows []pinRow
	for t := range m.H.Terminations {
		for _, p := range Pins(m, t) {
			rows = append(rows, rowsOf(m, p)...)
		}
	}
	columns := []list.Column[pinRow]{
		list.Text("end", func(r pinRow) string { return r.End }),
		list.Text("cavity", func(r pinRow) string { return r.Cavity }),
		list.Text("also called", func(r pinRow) string { return strings.Join(r.Also, " ") }),
		list.Text("state", func(r pinRow) string { return r.State }),
		list.Text("wire", func(r pinRow) string { return r.of(func(w *model.Wire) string { return w.ID }) }),
		list.Text("drain of", func(r pinRow) string { return r.Drain }),
		list.Text("signal", func(r pinRow) string { return r.of(func(w *model.Wire) string { return w.Signal.V }) }),
		list.Text("spec", func(r pinRow) string { return r.of(func(w *model.Wire) string { return w.Spec }) }),
		list.Text("size", func(r pinRow) string { return r.of(list.Size) }),
		list.Text("colour code", func(r pinRow) string { return r.of(func(w *model.Wire) string { return w.Colour.V }) }),
		list.Text("colour", func(r pinRow) string { return r.of(colourOf) }),
		list.Text("leads to", func(r pinRow) string { return r.far }),
		list.Text("contact size", func(r pinRow) string { return r.Size }),
		list.Text("contact part", func(r pinRow) string { return r.crimped(func(c lists.CrimpRow) string { return c.Part }) }),
		list.Text("closed by", func(r pinRow) string { return r.Closed }),
		list.Text("plug", func(r pinRow) string { return r.Plug }),
	}
	for _, c := range crimpColumns(m.Sys) {
		columns = append(columns, list.Column[pinRow]{Head: c.Head, Align: c.Align,
			Cell: func(r pinRow) string { return r.crimped(c.Cell) }})
	}
	return list.Of(list.Table{File: "pins", Title: "Pin tables"},
		append(columns, list.Blank[pinRow]("bare"), list.Blank[pinRow]("pinned")), rows)
}

// crimpColumns is how a contact is crimped, as a file has it: a value in each cell, what is not known left
// empty, and beside a value that is from memory its standing.
func crimpColumns(sys unit.System) []list.Column[lists.CrimpRow] {
	memory := func(is bool) string { return map[bool]string{true: string(catalogue.Memory)}[is] }
	return []list.Column[lists.CrimpRow]{
		list.Figure("strip at least, "+sys.Name(), func(c lists.CrimpRow) string { return strip(sys, c.StripMin) }),
		list.Figure("strip at most, "+sys.Name(), func(c lists.CrimpRow) string { return strip(sys, c.StripMax) }),
		list.Text("tool", func(c lists.CrimpRow) string { return c.Tool.V.Frame }),
		list.Text("positioner", func(c lists.CrimpRow) string { return c.Tool.V.Positioner }),
		list.Text("positioner standing", func(c lists.CrimpRow) string { return memory(c.Tool.V.Memory) }),
		list.Figure("setting", func(c lists.CrimpRow) string { return some(c.Step) }),
		list.Text("setting standing", func(c lists.CrimpRow) string { return memory(c.Step > 0 && c.StepGuess) }),
		list.Text("insertion tool", InsertionTool),
		list.Figure("pull at least, N", pull),
		list.Text("pull standing", func(c lists.CrimpRow) string {
			return memory(c.PullN > 0 && c.PullBy.Standing == catalogue.Memory)
		}),
	}
}

// strip is a length of stripping; "" where it is not known.
func strip(sys unit.System, v unit.Millimetre) string {
	if v <= 0 {
		return ""
	}
	return sys.Diameter(v)
}

// some is a count; "" for none.
func some(n int) string {
	if n <= 0 {
		return ""
	}
	return fmt.Sprint(n)
}
