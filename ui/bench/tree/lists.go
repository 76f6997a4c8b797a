package tree

import (
	"cmp"
	"fmt"
	"strings"

	"contralay/calc/formula/crimp"
	"contralay/calc/phase/ends"
	"contralay/calc/phase/threading"
	"contralay/calc/query/lists"
	whyquery "contralay/calc/query/why"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/paper"
)

// ListsKind is the screen of what is taken off the shelf.
const ListsKind desk.Kind = "lists"

// ListsPage is what is taken off the shelf: wire by reel, contacts, crimps, units made
// first.
func ListsPage(m *desk.Model, _ int, _ string) desk.Page {
	p := desk.Page{Lines: []string{"Off the shelf: wire by reel, longest first; contacts to buy; how to crimp; units to make first."},
		Empty: "Nothing to cut yet. Esc goes back"}
	p.Rows = m.Once(fmt.Sprint("lists ", m.Sys), func() []desk.Row { return listRows(m) })
	return p
}

func listRows(m *desk.Model) []desk.Row {
	var out []desk.Row
	head := func(t string) { out = append(out, desk.Row{Text: t}) }
	head("WIRE BY REEL, " + m.Sys.Name())
	reel := ""
	need := map[string]lists.ReelRow{}
	for _, r := range lists.ReelList(m.Sheet) {
		need[r.Spec+" "+r.Size] = r
	}
	for _, c := range lists.CutList(m.Sheet) {
		if name := c.Spec + " " + c.Size; name != reel {
			reel = name
			r := need[name]
			text := fmt.Sprintf("%s %s: %s m", c.Spec, paper.Size(&model.Wire{Size: c.Size}), unit.Fixed(r.NeedMM/1000, 1))
			mark := ""
			if r.Shelved {
				text += fmt.Sprintf(" of %s m on the shelf", unit.Fixed(r.ShelfMM/1000, 1))
				if r.NeedMM > r.ShelfMM {
					mark = "?"
				}
			}
			out = append(out, desk.Row{Text: text, Mark: mark, Detail: "How much you have is on the reel: everything in the file, reels",
				Why: desk.FiguresOfPart(c.Spec, c.Size, "reel.need")})
		}
		ids, named := make([]string, 0, len(c.Wires)), make([]string, 0, len(c.Wires))
		var why []desk.Reason
		for _, k := range c.Wires {
			ids = append(ids, m.H.Wires[k].ID)
			named = append(named, strings.TrimSpace(m.H.Wires[k].ID+" "+m.H.Wires[k].Colour.V))
			why = append(why, desk.FiguresOf(m.H.Wires[k].ID, "wire.cut")...)
		}
		out = append(out, desk.Row{Text: fmt.Sprintf("  %3d off %6s   %s", len(c.Wires), m.Sys.AtLeast(c.CutMM), words.Few(ids)),
			Detail: "Wire and colour: " + strings.Join(named, ", "), Why: why})
	}
	if n := len(m.H.Wires); n > 0 {
		out = append(out, desk.Row{Text: fmt.Sprintf("  wire flags %d", 2*n),
			Detail: "One at each end of every wire, from the cut until its contact is in"})
	}
	if n := len(threading.Mixes(m.Sheet)); n > 0 {
		out = append(out, desk.Row{Text: fmt.Sprintf("  adhesive, %s: %s", m.Sheet.Limits.Adhesive, words.Plural(n, "pack", "packs")),
			Detail: "The threading list says which joints each mix is for"})
	}
	head("CONTACTS TO BUY")
	for _, b := range lists.BuyList(m.Sheet) {
		part := words.OrDash(b.Part)
		if b.Part == "" && b.Gender == "" {
			part = "gender not given"
		}
		out = append(out, desk.Row{Text: fmt.Sprintf("  size %-4s %-18s %3d", b.Size, part, b.Buy()),
			Detail: fmt.Sprintf("%d for wires, %d for unwired sealed cavities, %d samples, %d extra", b.Wired, b.Unwired, b.Samples,
				b.More)})
		stubs := ""
		if b.Stubs > 0 {
			stubs = fmt.Sprintf("; %d in a firewall, with a stub of wire", b.Stubs)
		}
		if b.Plugs > 0 {
			out = append(out, desk.Row{Text: fmt.Sprintf("  plug      %-18s %3d", words.OrDash(b.Plug), b.Plugs),
				Detail: "One in each cavity that has no wire" + stubs})
		}
	}
	head("CRIMPS")
	for _, c := range lists.CrimpList(m.Sheet) {
		out = append(out, crimpRow(m, c))
	}
	if spares := spareRows(m); len(spares) > 0 {
		head("SPARES")
		out = append(out, spares...)
	}
	if len(m.H.Units) > 0 {
		head("UNITS TO MAKE FIRST, " + m.Sys.Name())
	}
	for i := range m.H.Units {
		out = append(out, unitRow(m, i)...)
	}
	return out
}

func crimpRow(m *desk.Model, c lists.CrimpRow) desk.Row {
	text := fmt.Sprintf("  size %-4s on %-7s %3d", c.Contact, paper.Size(&model.Wire{Size: c.Size}), c.Count)
	if !c.Circular {
		text += "  the device's own"
	}
	var why []desk.Reason
	say := func(name string, v float64, k whyquery.Measure, from catalogue.Origin) {
		why = append(why, desk.Reason{Made: func() (whyquery.Why, bool) {
			return whyquery.Stated(name, "by "+from.Source, v, k, from),
				true
		}})
	}
	if c.StripMin > 0 {
		text += fmt.Sprintf("  strip %s to %s %s", m.Sys.Diameter(c.StripMin), m.Sys.Diameter(c.StripMax), m.Sys.Name())
		gap := catalogue.Origin{Source: "well depth and gap (NASA-STD-8739.4 § 10.1.7)", Standing: catalogue.Practice}
		say("strip at least", float64(c.StripMin), whyquery.Length, gap)
		say("strip at most", float64(c.StripMax), whyquery.Length, gap)
	}
	if c.PullN > 0 {
		text += fmt.Sprintf("  pull %s%s N", unit.Fixed(c.PullN, 0), words.MemMark(c.PullBy.Standing == catalogue.Memory))
		say("a sample must hold, N", float64(c.PullN), whyquery.Times, c.PullBy)
	}
	detail := "no tool is known: see its maker's sheet"
	if c.Tool.Set {
		detail = fmt.Sprintf("%s with %s~", c.Tool.V.Frame, c.Tool.V.Positioner)
		if c.Step > 0 {
			detail += fmt.Sprintf(", step %d%s; check the positioner's plate", c.Step, words.MemMark(c.StepGuess))
		}
	}
	if c.Part != "" {
		detail = c.Part + ": " + detail
	}
	if t, ok := crimp.Insertion(c.Contact); ok && c.Circular {
		detail += "; insert with " + t
	}
	if c.Together != "" {
		detail += "; together they count as " + c.Together + " AWG, strands side by side, not twisted"
	}
	if n, ok := catalogue.AWGNumber(cmp.Or(c.Together, c.Size)); ok {
		if nicked, broken, ok := crimp.Damage(n); ok {
			detail += fmt.Sprintf("; at most %d strands nicked, %d broken", nicked, broken)
		}
	}
	if c.PullN > 0 {
		detail += "; pull from " + c.PullBy.Source
	}
	return desk.Row{Text: text, Detail: detail, Why: why}
}

// unitRow is what a unit is made of before anything is laid.
func unitRow(m *desk.Model, i int) []desk.Row {
	u, s := &m.H.Units[i], &m.Sheet.Units[i]
	text := fmt.Sprintf("  %-5s %s", u.ID, u.Name.V)
	if s.LayMM > 0 {
		text += fmt.Sprintf("  lay %s", m.Sys.Length(s.LayMM))
	}
	detail := "Twist it before you lay it. Ground a drain at one end, unless you want a loop"
	if u.Shield.V {
		text += "  shielded, drain " + words.OrDash(u.DrainFrom.V) + " and " + words.OrDash(u.DrainTo.V)
		detail = desk.ShieldText(m, i)
	}
	out := []desk.Row{{Text: text, Id: u.ID, Detail: detail, Enter: desk.AllValuesRow("unit", u.ID).Enter}}
	for _, id := range u.Wires {
		k, ok := m.Sheet.Index.Wire[id]
		if !ok {
			continue
		}
		w := &m.H.Wires[k]
		out = append(out, desk.Row{Text: fmt.Sprintf("        %-5s %s  %s  cut %s", id, paper.Size(w), w.Colour.V,
			m.Sys.AtLeast(m.Sheet.Wires[k].Cut)), Id: id, Why: desk.FiguresOf(id, "wire.cut"),
			Enter: func(m *desk.Model) { m.Show(desk.KindWire, id) }})
	}
	return out
}

// spareRows is where every spare lies, and where the capped ones are found.
func spareRows(m *desk.Model) []desk.Row {
	caps := map[int]ends.Cap{}
	for _, c := range ends.Caps(m.Sheet) {
		caps[c.Wire] = c
	}
	var out []desk.Row
	for k := range m.H.Wires {
		w := &m.H.Wires[k]
		if w.Role.V != model.RoleSpare {
			continue
		}
		text := fmt.Sprintf("  %-5s %s %s  %s to %s", w.ID, paper.Size(w), w.Colour.V, words.OrDash(w.From.V), words.OrDash(w.To.V))
		detail := "It has a cavity at both ends"
		if c, is := caps[k]; is {
			text = fmt.Sprintf("  %-5s %s %s  %s, capped %s", w.ID, paper.Size(w), w.Colour.V, cmp.Or(w.From.V, w.To.V), desk.CapText(m, c))
			detail = fmt.Sprintf("Cap it, fold it back %s %s from %s and tie it down", m.Sys.Length(c.FoldMM), m.Sys.Name(), c.Place)
		}
		id := w.ID
		out = append(out, desk.Row{Text: text, Detail: detail, Id: id, Enter: func(m *desk.Model) { m.Show(desk.KindWire, id) }})
	}
	return out
}
