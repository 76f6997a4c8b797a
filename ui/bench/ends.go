package bench

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/draw"
	"contralay/ui/paper"
)

// Terminations: what each cavity holds, what is free and for what.

func (m *Model) endsRow() row {
	return row{key: "ends", text: fmt.Sprintf("terminations: %d", len(m.h.Terminations)), detail: "Enter lists them: cavities, contacts, plugs, what they still take", enter: func(m *Model) { m.open(endsScreen()) }}
}

func endsScreen() screen {
	return screen{name: "ends", page: func(m *Model, w int) page {
		p := page{lines: []string{"Terminations; a cavity with a spare wire counts as spare."}, empty: "no termination yet; Esc goes back"}
		name := max(8, min(28, w-56))
		p.cols = fmt.Sprintf("%-7s%-*s%-10s%6s%6s%6s%6s%10s", "id", name, "name", "insert", "used", "spare", "held", "blank", "contacts")
		for t := range m.h.Terminations {
			h, s := &m.h.Terminations[t], &m.sheet.Terms[t]
			id := h.ID
			contacts := "-"
			if s.HasContacts {
				contacts = fmt.Sprint(s.Contacts)
			}
			p.rows = append(p.rows, row{key: id, mark: m.markFor(id), text: fmt.Sprintf("%s%s%s%6d%6d%6d%6d%10s", draw.Fit(id, 6, m.cfg.ASCII)+" ", draw.Fit(h.Name.V, name-1, m.cfg.ASCII)+" ", draw.Fit(orDash(h.Insert.V), 9, m.cfg.ASCII)+" ", s.Used, s.Spare, s.Reserved, s.Blank, contacts),
				detail: "Enter opens it", enter: func(m *Model) { m.open(endScreen(id)) }})
		}
		return p
	}}
}

func endScreen(id string) screen {
	return screen{name: "end", of: id, page: func(m *Model, w int) page { return m.endPage(id) }}
}

// endPage is one termination: cavity by cavity, in the order its insert has them.
func (m *Model) endPage(id string) page {
	t, ok := m.sheet.X.Termination[id]
	if !ok {
		return page{empty: "termination " + id + " is gone; Esc goes back"}
	}
	h, s := &m.h.Terminations[t], &m.sheet.Terms[t]
	p := page{lines: []string{fmt.Sprintf("%s  %s   %s", id, h.Name.V, m.endKind(h))}}
	p.lines = append(p.lines, fmt.Sprintf("%d used, %d spare, %d reserved, %d blank", s.Used, s.Spare, s.Reserved, s.Blank))
	if s.Sealed && s.SealPlugs > 0 {
		p.lines = append(p.lines, fmt.Sprintf("every cavity that is not wired takes a contact and a seal plug: %d", s.SealPlugs))
	}
	wall := map[bool]string{false: "no", true: fmt.Sprintf("yes, %d stubs of wire beside the plugs", s.Stubs)}[h.Firewall.V]
	datum := orDash(h.Datum.V)
	p.rows = append(p.rows, row{key: "datum", text: "length from  " + datum, detail: "+ - where its branch's length starts; with part_mm and the boot known the length is converted", step: func(m *Model, by int) {
		t := m.sheet.X.Termination[id]
		d, _ := around(calc.Data, m.h.Terminations[t].Datum.V, by)
		h, converted := m.sheet.Redatum(t, d)
		says := "length from the " + d + "; the number stays, for the part's length is not known"
		if converted {
			says = "length from the " + d + ", converted"
		}
		m.change(h, says)
	}})
	p.rows = append(p.rows, row{key: "firewall", text: "firewall     " + wall, detail: "+ - where it stands in one, an unwired cavity takes contact, plug and a stub of wire", step: func(m *Model, _ int) {
		m.change(m.h.EditTermination(m.sheet.X.Termination[id], func(t *model.Termination) { t.Firewall = model.Some(!t.Firewall.V) }), map[bool]string{true: id + " stands in no firewall", false: id + " stands in a firewall"}[h.Firewall.V])
	}})
	p.rows = append(p.rows, m.once("pairs "+id, func() []row { return m.pairingRows(t) })...)
	for _, c := range s.Cavities {
		p.rows = append(p.rows, m.cavityRow(t, c))
	}
	return p
}

// endKind is what a termination is and from where it is seen.
func (m *Model) endKind(h *model.Termination) string {
	var parts []string
	if h.Insert.V != "" {
		parts = append(parts, strings.TrimSpace(h.Insert.V+" "+h.Gender.V))
	}
	if h.Key.V != "" {
		parts = append(parts, "key "+h.Key.V)
	}
	if h.Clock.Set {
		parts = append(parts, fmt.Sprintf("clocked %d", h.Clock.V))
	}
	if h.Mount.V != "" {
		parts = append(parts, h.Mount.V)
	}
	return strings.Join(append(parts, "seen from the wire side"), ", ")
}

func (m *Model) cavityRow(t int, name string) row {
	h, c := &m.h.Terminations[t], m.sheet.Terms[t].State[name]
	id := h.ID
	where := id + ":" + name
	r := row{key: "cavity " + name, mark: m.markFor(where)}
	called := name
	if also := h.Aliases[name]; len(also) > 0 {
		called += " (" + strings.Join(also, ", ") + ")"
	}
	wide := 4
	if len(h.Aliases) > 0 {
		wide = 9
	}
	size := ""
	if c.Size != "" {
		size = "size " + c.Size
	}
	say := func(what string) {
		r.text = fmt.Sprintf("%-*s %-9s %s", wide, called, size, what)
	}
	switch {
	case len(c.Wires) > 0:
		w := &m.h.Wires[m.sheet.X.Wire[c.Wires[0]]]
		say(strings.Join(c.Wires, " and ") + "  " + w.Signal.V + "  " + paper.Size(w) + "  " + w.Colour.V)
		first := c.Wires[0]
		r.id, r.detail, r.enter = first, "Enter opens the wire", func(m *Model) { m.open(wireScreen(first)) }
	case c.Drain != "":
		say("drain of " + c.Drain)
	case h.Reserves(name):
		say("reserved")
		r.detail = "+ - gives it free"
		r.step = func(m *Model, _ int) { m.reserve(id, name, false) }
	default:
		say("free")
		r.detail = "+ - keeps it reserved"
		r.step = func(m *Model, _ int) { m.reserve(id, name, true) }
	}
	return r
}

// reserve keeps a cavity, or gives it free.
func (m *Model) reserve(id, name string, keep bool) {
	says := "cavity " + name + " of " + id + " is free"
	if keep {
		says = "cavity " + name + " of " + id + " is reserved"
	}
	m.change(m.h.EditTermination(m.sheet.X.Termination[id], func(t *model.Termination) {
		t.Reserved = slices.DeleteFunc(slices.Clone(t.Reserved), func(c string) bool { return t.CavityOf(c) == name })
		if keep {
			t.Reserved = append(t.Reserved, name)
		}
	}), says)
}

// pairingRows is what could still run from a termination to those it shares wires with.
func (m *Model) pairingRows(t int) []row {
	var out []row
	for _, q := range m.sheet.Pairings(t) {
		o := m.h.Terminations[q.B].ID
		text := fmt.Sprintf("to %s: %d wires, %d of them spare, takes %d more", o, q.Wires, q.Spares, q.More)
		r := row{key: "to " + o, text: text, detail: "Enter opens " + o, enter: func(m *Model) { m.open(endScreen(o)) }}
		if q.More > 0 {
			r.more = func() string { return m.oneMoreText(q) }
		}
		out = append(out, r)
	}
	return out
}

func (m *Model) oneMoreText(q calc.Pairing) string {
	b, d, starts, ok := m.sheet.OneMore(q)
	switch {
	case !ok:
		return "what one more would cost is known when its branches are laid"
	case starts > 0:
		return fmt.Sprintf("one more starts layer %d of %s: it takes a filler layer or good company", starts, m.h.Branches[b].ID)
	case m.sys.Diameter(d) == m.sys.Diameter(0):
		return "one more finds room in the outermost layers"
	}
	return "one more makes " + m.h.Branches[b].ID + " a little thicker"
}

// damagedRow says which spare stands in for a wire.
func (m *Model) damagedRow(id string) (row, bool) {
	all := m.sheet.Substitutes(m.sheet.X.Wire[id])
	if len(all) == 0 {
		return row{}, false
	}
	a := all[0]
	spare := m.h.Wires[a.Wire].ID
	return row{key: "damaged", id: spare, text: "if damaged   " + spare + " goes the same way", detail: fmt.Sprintf("re-pin %s from %s to %s and from %s to %s; seal what it leaves", spare, a.ToA, a.FromA, a.ToB, a.FromB), enter: func(m *Model) { m.open(wireScreen(spare)) }}, true
}

func (m *Model) splicesRow() row {
	return row{key: "splices", text: fmt.Sprintf("splices: %d", len(m.h.Splices)), detail: "Enter lists them: barrels, places", enter: func(m *Model) { m.open(splicesScreen()) }}
}

func splicesScreen() screen {
	return screen{name: "splices", page: func(m *Model, w int) page {
		p := page{lines: []string{"Splices; the sleeve lies so far along the branch from its breakout."}, empty: "no splice; Esc goes back"}
		p.cols = fmt.Sprintf("%-6s%-20s%8s  %-16s%s", "id", "lies", m.sys.Name(), "part", "joins")
		for i := range m.h.Splices {
			sp, s := &m.h.Splices[i], &m.sheet.Splices[i]
			id := sp.ID
			lies := sp.At
			if sp.Toward.V != "" {
				lies += " toward " + sp.Toward.V
			}
			p.rows = append(p.rows, row{key: id, mark: m.markFor(id), text: fmt.Sprintf("%s%s%8s  %s%s", draw.Fit(id, 5, m.cfg.ASCII)+" ", draw.Fit(lies, 19, m.cfg.ASCII)+" ", m.sys.Length(sp.OffsetMM.V), draw.Fit(orDash(s.Part), 15, m.cfg.ASCII)+" ", m.joinText(i)),
				detail: "Enter opens it; + - moves the sleeve", enter: func(m *Model) { m.open(spliceScreen(id)) }, step: func(m *Model, by int) { m.moveSplice(id, by) }})
		}
		return p
	}}
}

// joinText is what goes into the two barrels.
func (m *Model) joinText(i int) string {
	side := func(all []int) string {
		var out []string
		for _, k := range all {
			out = append(out, m.h.Wires[k].ID)
		}
		return few(out)
	}
	s := &m.sheet.Splices[i]
	return side(s.Near) + " | " + side(s.Far)
}

// moveSplice moves a sleeve by five millimetres.
func (m *Model) moveSplice(id string, by int) {
	i := m.sheet.X.Splice[id]
	v := max(0, m.h.Splices[i].OffsetMM.V+unit.Millimetre(5*by))
	m.change(m.h.EditSplice(i, func(s *model.Splice) { s.OffsetMM = model.Some(v) }), fmt.Sprintf("%s lies %s %s off %s", id, m.sys.Length(v), m.sys.Name(), m.h.Splices[i].At))
}

func spliceScreen(id string) screen {
	return screen{name: "splice", of: id, page: func(m *Model, w int) page {
		i, ok := m.sheet.X.Splice[id]
		if !ok {
			return page{empty: "splice " + id + " is gone; Esc goes back"}
		}
		sp, s := &m.h.Splices[i], &m.sheet.Splices[i]
		p := page{lines: []string{"splice " + id + " at " + sp.At}}
		there := func(m *Model) bool { _, ok := m.sheet.X.Splice[id]; return ok }
		part := orDash(s.Part)
		if !s.Given && s.Part != "" {
			part += "  proposed"
		}
		p.rows = append(p.rows, row{key: "part", text: "part         " + part, detail: "Enter lists them", enter: func(m *Model) {
			m.open(chooseScreen("part", there, func(m *Model) []choice { return m.spliceChoices() }, func(m *Model) string { return m.h.Splices[m.sheet.X.Splice[id]].Part.V }, func(m *Model, v string) {
				m.change(m.h.EditSplice(m.sheet.X.Splice[id], func(s *model.Splice) { s.Part = model.Some(v) }), "part "+v)
			}, nil))
		}})
		p.rows = append(p.rows, row{key: "toward", text: "lies toward  " + orDash(sp.Toward.V), detail: "+ - the branches of its breakout: the sleeve lies along one, clear of the others", step: func(m *Model, by int) {
			var all []string
			for _, b := range m.sheet.X.Meeting(sp.At) {
				all = append(all, m.h.Branches[b].ID)
			}
			if v, moved := around(all, sp.Toward.V, by); moved || sp.Toward.V == "" {
				m.change(m.h.EditSplice(m.sheet.X.Splice[id], func(s *model.Splice) { s.Toward = model.Some(v) }), "toward "+v)
			}
		}})
		p.rows = append(p.rows, row{key: "offset", text: fmt.Sprintf("middle       %s %s along it", m.sys.Length(sp.OffsetMM.V), m.sys.Name()), detail: "+ - moves it", step: func(m *Model, by int) { m.moveSplice(id, by) }})
		for n, side := range [][]int{s.Near, s.Far} {
			for _, k := range side {
				w := &m.h.Wires[k]
				wid := w.ID
				p.rows = append(p.rows, row{key: "wire " + wid, id: wid, text: fmt.Sprintf("barrel %d     %s  %s  %s", n+1, wid, paper.Size(w), w.Signal.V), detail: "Enter opens the wire", enter: func(m *Model) { m.open(wireScreen(wid)) }})
			}
		}
		return p
	}}
}

func (m *Model) spliceChoices() []choice {
	used := map[string]int{}
	for i := range m.h.Splices {
		used[m.h.Splices[i].Part.V]++
	}
	var out []choice
	for _, id := range m.sheet.Cat.SpliceIDs() {
		p, _ := m.sheet.Cat.Splice(id)
		out = append(out, choice{value: id, says: fmt.Sprintf("%s  %s, %d to %d circular mils", id, p.Build, p.CMAMin, p.CMAMax), used: used[id]})
	}
	return out
}
