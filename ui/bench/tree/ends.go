package tree

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/query/offer"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
	"contralay/ui/paper"
)

// Terminations: what each cavity holds, what is free and for what.

func endsRow(m *desk.Model) desk.Row {
	return desk.Row{Key: "ends", Text: fmt.Sprintf("terminations: %d", len(m.H.Terminations)),
		Detail: "Enter lists them: cavities, contacts, plugs, what they still take", Enter: func(m *desk.Model) { m.Show(EndsKind, "") }}
}

// The screens of terminations and splices.
const (
	EndsKind    desk.Kind = "ends"
	EndKind     desk.Kind = "end"
	SplicesKind desk.Kind = "splices"
	SpliceKind  desk.Kind = "splice"
)

// EndsPage lists the terminations.
func EndsPage(m *desk.Model, w int, _ string) desk.Page {
	p := desk.Page{Lines: []string{"Terminations; a cavity with a spare wire counts as spare."},
		Empty: "no termination yet; Esc goes back"}
	name := max(8, min(28, w-56))
	p.Cols = fmt.Sprintf("%-7s%-*s%-10s%6s%6s%6s%6s%10s", "id", name, "name", "insert", "used", "spare", "held", "blank", "contacts")
	for t := range m.H.Terminations {
		h, s := &m.H.Terminations[t], &m.Sheet.Terms[t]
		id := h.ID
		contacts := "-"
		if s.HasContacts {
			contacts = fmt.Sprint(s.Contacts)
		}
		p.Rows = append(p.Rows, desk.Row{Key: id, Mark: m.MarkFor(id),
			Text: fmt.Sprintf("%s%s%s%6d%6d%6d%6d%10s", draw.Fit(id, 6, m.Cfg.ASCII)+" ", draw.Fit(h.Name.V, name-1, m.Cfg.ASCII)+" ",
				draw.Fit(words.OrDash(h.Insert.V), 9, m.Cfg.ASCII)+" ", s.Used, s.Spare, s.Reserved, s.Blank, contacts),
			Detail: "Enter opens it", Enter: func(m *desk.Model) { m.Show(EndKind, id) }})
	}
	return p
}

// EndPage is one termination: cavity by cavity, in the order its insert has them.
func EndPage(m *desk.Model, _ int, id string) desk.Page {
	t, ok := m.Sheet.Index.Termination[id]
	if !ok {
		return desk.Page{Empty: "termination " + id + " is gone; Esc goes back"}
	}
	h, s := &m.H.Terminations[t], &m.Sheet.Terms[t]
	p := desk.Page{Lines: []string{fmt.Sprintf("%s  %s   %s", id, h.Name.V, endSays(m, h))}}
	p.Lines = append(p.Lines, fmt.Sprintf("%d used, %d spare, %d reserved, %d blank", s.Used, s.Spare, s.Reserved, s.Blank))
	if s.Sealed && s.SealPlugs > 0 {
		p.Lines = append(p.Lines, fmt.Sprintf("every cavity that is not wired takes a contact and a seal plug: %d", s.SealPlugs))
	}
	wall := words.Either(h.Firewall.V, fmt.Sprintf("yes, %d stubs of wire beside the plugs", s.Stubs), "no")
	datum := words.OrDash(string(h.Datum.V))
	p.Rows = append(p.Rows, desk.Row{Key: "datum", Text: "length from  " + datum,
		Detail: "+ - where its branch's length starts; with part_mm and the boot known the length is converted",
		Step: func(m *desk.Model, by int) {
			t := m.Sheet.Index.Termination[id]
			d, _ := words.Around(offer.Data, m.H.Terminations[t].Datum.V, by)
			h, converted := offer.Redatum(m.Sheet, t, d)
			says := "length from the " + string(d) + "; the number stays, for the part's length is not known"
			if converted {
				says = "length from the " + string(d) + ", converted"
			}
			m.Change(h, says)
		}})
	p.Rows = append(p.Rows, desk.Row{Key: "firewall", Text: "firewall     " + wall,
		Detail: "+ - where it stands in one, an unwired cavity takes contact, plug and a stub of wire", Step: func(m *desk.Model, _ int) {
			m.Change(m.H.EditTermination(m.Sheet.Index.Termination[id],
				func(t *model.Termination) { t.Firewall = model.Some(!t.Firewall.V) }),
				id+words.Either(h.Firewall.V, " stands in no firewall", " stands in a firewall"))
		}})
	p.Rows = append(p.Rows, m.Once("pairs "+id, func() []desk.Row { return pairingRows(m, t) })...)
	for _, c := range s.Cavities {
		p.Rows = append(p.Rows, cavityRow(m, t, c))
	}
	return p
}

// endSays is what a termination is and from where it is seen.
func endSays(m *desk.Model, h *model.Termination) string {
	var parts []string
	if h.Insert.V != "" {
		parts = append(parts, strings.TrimSpace(h.Insert.V+" "+string(h.Gender.V)))
	}
	if h.Key.V != "" {
		parts = append(parts, "key "+h.Key.V)
	}
	if h.Clock.Set {
		parts = append(parts, fmt.Sprintf("clocked %d", h.Clock.V))
	}
	if h.Mount.V != "" {
		parts = append(parts, string(h.Mount.V))
	}
	return strings.Join(append(parts, "seen from the wire side"), ", ")
}

func cavityRow(m *desk.Model, t int, name string) desk.Row {
	h, c := &m.H.Terminations[t], m.Sheet.Terms[t].State[name]
	id := h.ID
	where := id + ":" + name
	r := desk.Row{Key: "cavity " + name, Mark: m.MarkFor(where)}
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
		r.Text = fmt.Sprintf("%-*s %-9s %s", wide, called, size, what)
	}
	switch {
	case len(c.Wires) > 0:
		w := &m.H.Wires[m.Sheet.Index.Wire[c.Wires[0]]]
		say(strings.Join(c.Wires, " and ") + "  " + w.Signal.V + "  " + paper.Size(w) + "  " + w.Colour.V)
		first := c.Wires[0]
		r.Id, r.Detail, r.Enter = first, "Enter opens the wire", func(m *desk.Model) { m.Show(desk.KindWire, first) }
	case c.Drain != "":
		say("drain of " + c.Drain)
	case h.Reserves(name):
		say("reserved")
		r.Detail = "+ - gives it free"
		r.Step = func(m *desk.Model, _ int) { reserve(m, id, name, false) }
	default:
		say("free")
		r.Detail = "+ - keeps it reserved"
		r.Step = func(m *desk.Model, _ int) { reserve(m, id, name, true) }
	}
	return r
}

// reserve keeps a cavity, or gives it free.
func reserve(m *desk.Model, id, name string, keep bool) {
	says := "cavity " + name + " of " + id + " is free"
	if keep {
		says = "cavity " + name + " of " + id + " is reserved"
	}
	m.Change(m.H.EditTermination(m.Sheet.Index.Termination[id], func(t *model.Termination) {
		t.Reserved = slices.DeleteFunc(slices.Clone(t.Reserved), func(c string) bool { return t.CavityOf(c) == name })
		if keep {
			t.Reserved = append(t.Reserved, name)
		}
	}), says)
}

// pairingRows is what could still run from a termination to those it shares wires with.
func pairingRows(m *desk.Model, t int) []desk.Row {
	var out []desk.Row
	for _, q := range offer.Pairings(m.Sheet, t) {
		o := m.H.Terminations[q.B].ID
		text := fmt.Sprintf("to %s: %d wires, %d of them spare, takes %d more", o, q.Wires, q.Spares, q.More)
		r := desk.Row{Key: "to " + o, Text: text, Detail: "Enter opens " + o, Enter: func(m *desk.Model) { m.Show(EndKind, o) }}
		if q.More > 0 {
			r.More = func() string { return oneMoreText(m, q) }
		}
		out = append(out, r)
	}
	return out
}

func oneMoreText(m *desk.Model, q offer.Pairing) string {
	b, d, starts, ok := offer.OneMore(m.Sheet, q)
	switch {
	case !ok:
		return "what one more would cost is known when its branches are laid"
	case starts > 0:
		return fmt.Sprintf("one more starts layer %d of %s: it takes a filler layer or good company", starts, m.H.Branches[b].ID)
	case m.Sys.Diameter(d) == m.Sys.Diameter(0):
		return "one more finds room in the outermost layers"
	}
	return "one more makes " + m.H.Branches[b].ID + " a little thicker"
}

func splicesRow(m *desk.Model) desk.Row {
	return desk.Row{Key: "splices", Text: fmt.Sprintf("splices: %d", len(m.H.Splices)), Detail: "Enter lists them: barrels, places",
		Enter: func(m *desk.Model) { m.Show(SplicesKind, "") }}
}

// SplicesPage lists the splices.
func SplicesPage(m *desk.Model, _ int, _ string) desk.Page {
	p := desk.Page{Lines: []string{"Splices; the sleeve lies so far along the branch from its breakout."},
		Empty: "no splice; Esc goes back"}
	p.Cols = fmt.Sprintf("%-6s%-20s%8s  %-16s%s", "id", "lies", m.Sys.Name(), "part", "joins")
	for i := range m.H.Splices {
		sp, s := &m.H.Splices[i], &m.Sheet.Splices[i]
		id := sp.ID
		lies := sp.At
		if sp.Toward.V != "" {
			lies += " toward " + sp.Toward.V
		}
		p.Rows = append(p.Rows, desk.Row{Key: id, Mark: m.MarkFor(id),
			Text: fmt.Sprintf("%s%s%8s  %s%s", draw.Fit(id, 5, m.Cfg.ASCII)+" ", draw.Fit(lies, 19, m.Cfg.ASCII)+" ",
				m.Sys.Length(sp.OffsetMM.V), draw.Fit(words.OrDash(s.Part), 15, m.Cfg.ASCII)+" ", desk.JoinText(m, i)),
			Detail: "Enter opens it; + - moves the sleeve", Enter: func(m *desk.Model) { m.Show(SpliceKind, id) },
			Step: func(m *desk.Model, by int) { moveSplice(m, id, by) }})
	}
	return p
}

// moveSplice moves a sleeve by five millimetres.
func moveSplice(m *desk.Model, id string, by int) {
	i := m.Sheet.Index.Splice[id]
	v := max(0, m.H.Splices[i].OffsetMM.V+unit.Millimetre(5*by))
	m.Change(m.H.EditSplice(i, func(s *model.Splice) { s.OffsetMM = model.Some(v) }),
		fmt.Sprintf("%s lies %s %s off %s", id, m.Sys.Length(v), m.Sys.Name(), m.H.Splices[i].At))
}

// SplicePage is one splice: its part, where its sleeve lies, what it joins.
func SplicePage(m *desk.Model, _ int, id string) desk.Page {
	i, ok := m.Sheet.Index.Splice[id]
	if !ok {
		return desk.Page{Empty: "splice " + id + " is gone; Esc goes back"}
	}
	sp, s := &m.H.Splices[i], &m.Sheet.Splices[i]
	p := desk.Page{Lines: []string{"splice " + id + " at " + sp.At}}
	there := func(m *desk.Model) bool { _, ok := m.Sheet.Index.Splice[id]; return ok }
	part := words.OrDash(s.Part)
	if !s.Given && s.Part != "" {
		part += "  proposed"
	}
	p.Rows = append(p.Rows, desk.Row{Key: "part", Text: "part         " + part, Detail: "Enter lists them", Enter: func(m *desk.Model) {
		m.Open(desk.ChooseScreen("part", there, func(m *desk.Model) []desk.Choice { return spliceChoices(m) },
			func(m *desk.Model) string { return m.H.Splices[m.Sheet.Index.Splice[id]].Part.V }, func(m *desk.Model, v string) {
				m.Change(m.H.EditSplice(m.Sheet.Index.Splice[id], func(s *model.Splice) { s.Part = model.Some(v) }), "part "+v)
			}, nil))
	}})
	p.Rows = append(p.Rows, desk.Row{Key: "toward", Text: "lies toward  " + words.OrDash(sp.Toward.V),
		Detail: "+ - the branches of its breakout: the sleeve lies along one, clear of the others", Step: func(m *desk.Model, by int) {
			var all []string
			for _, b := range m.Sheet.Index.Meeting(sp.At) {
				all = append(all, m.H.Branches[b].ID)
			}
			if v, moved := words.Around(all, sp.Toward.V, by); moved || sp.Toward.V == "" {
				m.Change(m.H.EditSplice(m.Sheet.Index.Splice[id], func(s *model.Splice) { s.Toward = model.Some(v) }), "toward "+v)
			}
		}})
	p.Rows = append(p.Rows, desk.Row{Key: "offset", Text: fmt.Sprintf("middle       %s %s along it", m.Sys.Length(sp.OffsetMM.V),
		m.Sys.Name()), Detail: "+ - moves it", Step: func(m *desk.Model, by int) { moveSplice(m, id, by) }})
	for n, side := range [][]int{s.Near, s.Far} {
		for _, k := range side {
			w := &m.H.Wires[k]
			wid := w.ID
			p.Rows = append(p.Rows, desk.Row{Key: "wire " + wid, Id: wid,
				Text: fmt.Sprintf("barrel %d     %s  %s  %s", n+1, wid, paper.Size(w), w.Signal.V), Detail: "Enter opens the wire",
				Enter: func(m *desk.Model) { m.Show(desk.KindWire, wid) }})
		}
	}
	return p
}

func spliceChoices(m *desk.Model) []desk.Choice {
	used := map[string]int{}
	for i := range m.H.Splices {
		used[m.H.Splices[i].Part.V]++
	}
	var out []desk.Choice
	for _, id := range m.Sheet.Cat.SpliceIDs() {
		p, _ := m.Sheet.Cat.Splice(id)
		out = append(out, desk.Choice{Value: id, Says: fmt.Sprintf("%s  %s, %d to %d circular mils", id, p.Build, p.CMAMin, p.CMAMax),
			Used: used[id]})
	}
	return out
}
