package tree

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/query/offer"
	"contralay/model"
	"contralay/model/edit"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/ends"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
	"contralay/ui/paper"
)

// Terminations: what each cavity holds, what is free and for what.

func endsRow(m *desk.Model) desk.Row {
	return desk.Row{Key: "ends", Text: fmt.Sprintf("terminations: %d", len(m.H.Terminations)),
		Detail: "Enter lists them: cavities, contacts, plugs, room for more", Enter: func(m *desk.Model) { m.Show(EndsKind, "") }}
}

// The screens of terminations and splices.
const (
	EndsKind    desk.Kind = "ends"
	EndKind               = desk.KindEnd
	SplicesKind desk.Kind = "splices"
	SpliceKind  desk.Kind = "splice"
)

// EndsPage lists the terminations.
func EndsPage(m *desk.Model, w int, _ string) desk.Page {
	p := desk.Page{Lines: []string{"A cavity that has a spare wire in it counts as spare."},
		Empty: "No termination yet. Esc goes back"}
	columns := endColumns(m, w)
	p.Cols = columns.Head()
	for t := range m.H.Terminations {
		id := m.H.Terminations[t].ID
		p.Rows = append(p.Rows, desk.Row{Key: id, Mark: m.MarkFor(id), Text: columns.Line(t),
			Detail: "Enter opens it, . removes it", Enter: func(m *desk.Model) { m.Show(EndKind, id) },
			Drop: func(m *desk.Model) { removeThing(m, edit.Termination, id) }})
	}
	return p
}

// endColumns are the columns of the list of terminations.
func endColumns(m *desk.Model, w int) kit.Columns[int] {
	return kit.GivenColumns([]kit.Column[int]{
		{Head: "id", Least: 6, Cell: func(t int) string { return m.H.Terminations[t].ID }},
		{Head: "name", Least: max(7, min(27, w-57)), Cell: func(t int) string { return m.H.Terminations[t].Name.V }},
		{Head: "insert", Least: 9, Cell: func(t int) string { return words.OrDash(m.H.Terminations[t].Insert.V) }},
		{Head: "used", Least: 6, Align: kit.ToRight, Cell: func(t int) string { return fmt.Sprint(m.Sheet.Terms[t].Used) }},
		{Head: "spare", Least: 5, Align: kit.ToRight, Cell: func(t int) string { return fmt.Sprint(m.Sheet.Terms[t].Spare) }},
		{Head: "held", Least: 5, Align: kit.ToRight, Cell: func(t int) string { return fmt.Sprint(m.Sheet.Terms[t].Reserved) }},
		{Head: "blank", Least: 5, Align: kit.ToRight, Cell: func(t int) string { return fmt.Sprint(m.Sheet.Terms[t].Blank) }},
		{Head: "contacts", Least: 9, Align: kit.ToRight, Cell: func(t int) string {
			if s := &m.Sheet.Terms[t]; s.HasContacts {
				return fmt.Sprint(s.Contacts)
			}
			return "-"
		}},
	}, m.Cfg.ASCII)
}

// EndPage is one termination: cavity by cavity, in the order its insert has them.
func EndPage(m *desk.Model, _ int, id string) desk.Page {
	t, ok := m.Sheet.Index.Termination[id]
	if !ok {
		return desk.Page{Empty: "termination " + id + " is gone. Esc goes back"}
	}
	h, s := &m.H.Terminations[t], &m.Sheet.Terms[t]
	p := desk.Page{Lines: []string{fmt.Sprintf("%s  %s   %s", id, h.Name.V, endSays(m, h))}}
	p.Lines = append(p.Lines, fmt.Sprintf("%d used, %d spare, %d reserved, %d blank", s.Used, s.Spare, s.Reserved, s.Blank))
	if s.Sealed && s.SealPlugs > 0 {
		p.Lines = append(p.Lines, fmt.Sprintf("each unwired cavity takes a contact and a seal plug: %d", s.SealPlugs))
	}
	wall := words.Either(h.Firewall.V, fmt.Sprintf("yes: plugs, and %d stubs of wire", s.Stubs), "no")
	datum := words.OrDash(string(h.Datum.V))
	p.Rows = append(p.Rows, desk.Row{Key: "datum", Text: "length from  " + datum,
		Detail: "+ - where its length starts. With part_mm and the boot it is converted",
		Step: func(m *desk.Model, by int) {
			t := m.Sheet.Index.Termination[id]
			d, _ := words.Around(offer.Data, m.H.Terminations[t].Datum.V, by)
			h, converted := offer.Redatum(m.Sheet, t, d)
			says := "length from the " + string(d) + ". The number stays, because the part's length is not known"
			if converted {
				says = "length from the " + string(d) + ", converted"
			}
			m.Change(h, says)
		}})
	p.Rows = append(p.Rows, desk.Row{Key: "firewall", Text: "firewall     " + wall,
		Detail: "+ - in a firewall each unwired cavity takes contact, plug and a stub of wire", Step: func(m *desk.Model, _ int) {
			m.Change(m.H.EditTermination(m.Sheet.Index.Termination[id],
				func(t *model.Termination) { t.Firewall = model.Some(!t.Firewall.V) }),
				id+words.Either(h.Firewall.V, " is in no firewall", " is in a firewall"))
		}})
	p.Rows = append(p.Rows, ends.WhichRow(m, id))
	if s.Used+s.Spare > 0 {
		p.Rows = append(p.Rows, desk.Row{Key: "several", Text: "change several wires of " + id,
			Detail: "Enter marks some: size, colour, role, current, units, splices",
			Enter:  func(m *desk.Model) { m.Show(desk.KindSeveral, id) }})
	}
	p.Rows = append(p.Rows, contactRows(m, id)...)
	p.Rows = append(p.Rows, desk.AllValuesRow("termination", id)) // above the cavities, which may be eighty
	p.Rows = append(p.Rows, placeRows(m, edit.Termination, id)...)
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
		r.Detail = "+ - frees it"
		r.Step = func(m *desk.Model, _ int) { reserve(m, id, name, false) }
	default:
		say("free")
		r.Detail = "Enter makes wires from here on, + - reserves it"
		r.Enter = func(m *desk.Model) { m.Show(desk.KindFrom, where) }
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
		text := pairingText(o, q.Wires, q.Spares, q.More)
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
		return "What one more costs is known when its branches are laid"
	case starts > 0:
		return fmt.Sprintf("One more starts layer %d of %s: fill that with filler or with more wires", starts, m.H.Branches[b].ID)
	case m.Sys.Diameter(d) == m.Sys.Diameter(0):
		return "One more fits in the outermost layers"
	}
	return "One more makes " + m.H.Branches[b].ID + " a little thicker"
}

func splicesRow(m *desk.Model) desk.Row {
	return desk.Row{Key: "splices", Text: fmt.Sprintf("splices: %d", len(m.H.Splices)), Detail: "Enter lists them: barrels, places",
		Enter: func(m *desk.Model) { m.Show(SplicesKind, "") }}
}

// SplicesPage lists the splices.
func SplicesPage(m *desk.Model, _ int, _ string) desk.Page {
	p := desk.Page{Lines: []string{"The sleeve lies this far along the branch from its breakout."},
		Empty: "No splice. Esc goes back"}
	columns := spliceColumns(m)
	p.Cols = columns.Head()
	for i := range m.H.Splices {
		id := m.H.Splices[i].ID
		p.Rows = append(p.Rows, desk.Row{Key: id, Mark: m.MarkFor(id), Text: columns.Line(i),
			Detail: "Enter opens it, + - moves the sleeve, . removes it", Enter: func(m *desk.Model) { m.Show(SpliceKind, id) },
			Step: func(m *desk.Model, by int) { moveSplice(m, id, by) }, Drop: func(m *desk.Model) { removeThing(m, edit.Splice, id) }})
	}
	return p
}

// spliceColumns are the columns of the list of splices.
func spliceColumns(m *desk.Model) kit.Columns[int] {
	return kit.GivenColumns([]kit.Column[int]{
		{Head: "id", Least: 5, Cell: func(i int) string { return m.H.Splices[i].ID }},
		{Head: "lies", Least: 19, Cell: func(i int) string {
			sp := &m.H.Splices[i]
			if sp.Toward.V == "" {
				return sp.At
			}
			return sp.At + " toward " + sp.Toward.V
		}},
		{Head: m.Sys.Name(), Least: 8, Align: kit.ToRight, Cell: func(i int) string { return m.Sys.Length(m.H.Splices[i].OffsetMM.V) }},
		{Head: "part", Lead: 1, Least: 15, Cell: func(i int) string { return words.OrDash(m.Sheet.Splices[i].Part) }},
		{Head: "joins", Cell: func(i int) string { return desk.JoinText(m, i) }},
	}, m.Cfg.ASCII)
}

// moveSplice moves a sleeve by five millimetres.
func moveSplice(m *desk.Model, id string, by int) {
	i := m.Sheet.Index.Splice[id]
	v := max(0, unit.Written(m.H.Splices[i].OffsetMM.V+unit.Millimetre(5*by)))
	m.Change(m.H.EditSplice(i, func(s *model.Splice) { s.OffsetMM = model.Some(v) }),
		fmt.Sprintf("%s lies %s %s from %s", id, m.Sys.Length(v), m.Sys.Name(), m.H.Splices[i].At))
}

// SplicePage is one splice: its part, where its sleeve lies, what it joins.
func SplicePage(m *desk.Model, _ int, id string) desk.Page {
	i, ok := m.Sheet.Index.Splice[id]
	if !ok {
		return desk.Page{Empty: "splice " + id + " is gone. Esc goes back"}
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
		Detail: "+ - which branch of its breakout the sleeve lies along", Step: func(m *desk.Model, by int) {
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
	remove := func(m *desk.Model) { removeThing(m, edit.Splice, id) }
	p.Rows = append(p.Rows, RenameRow(m, edit.Splice, id), desk.Row{Key: "remove", Text: label("remove", id), Does: "remove",
		Detail: "Enter or . removes it: its wires lose that end. Backspace brings it back whole", Enter: remove, Drop: remove})
	for n, side := range [][]int{s.Near, s.Far} {
		for _, k := range side {
			w := &m.H.Wires[k]
			wid := w.ID
			p.Rows = append(p.Rows, desk.Row{Key: "wire " + wid, Id: wid,
				Text: fmt.Sprintf("barrel %d     %s  %s  %s", n+1, wid, paper.Size(w), w.Signal.V), Detail: "Enter opens the wire",
				Enter: func(m *desk.Model) { m.Show(desk.KindWire, wid) }})
		}
	}
	p.Rows = append(p.Rows, desk.AllValuesRow("splice", id))
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

// pairingText is the wires between one end and another, and how many more fit; what is none is
// not said.
func pairingText(to string, wires, spares, more int) string {
	text := fmt.Sprintf("to %s: %s", to, words.Plural(wires, "wire", "wires"))
	if spares > 0 {
		text += fmt.Sprintf(", %d spare", spares)
	}
	if more > 0 {
		text += fmt.Sprintf(", room for %d", more)
	}
	return text
}
