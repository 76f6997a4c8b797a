package bench

import (
	"cmp"
	"fmt"
	"strings"

	"contralay/calc"
	"contralay/calc/crimp"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper"
)

// listsScreen is what is taken off the shelf: wire by reel, contacts, crimps, units made
// first.
func listsScreen() screen {
	return screen{name: "lists", pick: true, page: func(m *Model, w int) page {
		p := page{lines: []string{"Off the shelf: wire by reel and longest first, contacts to buy, how to crimp, units made first."}, empty: "nothing is cut yet; Esc goes back"}
		p.rows = m.once(fmt.Sprint("lists ", m.sys), func() []row { return m.listRows() })
		return p
	}}
}

func (m *Model) listRows() []row {
	var out []row
	head := func(t string) { out = append(out, row{text: t}) }
	head("WIRE BY REEL, " + m.sys.Name())
	reel := ""
	need := map[string]calc.ReelRow{}
	for _, r := range m.sheet.ReelList() {
		need[r.Spec+" "+r.Size] = r
	}
	for _, c := range m.sheet.CutList() {
		if name := c.Spec + " " + c.Size; name != reel {
			reel = name
			r := need[name]
			text := fmt.Sprintf("%s %s: %s m", c.Spec, paper.Size(&model.Wire{Size: c.Size}), unit.Fixed(float64(r.NeedMM)/1000, 1))
			mark := ""
			if r.Shelved {
				text += fmt.Sprintf(" of %s m on the shelf", unit.Fixed(float64(r.ShelfMM)/1000, 1))
				if r.NeedMM > r.ShelfMM {
					mark = "?"
				}
			}
			out = append(out, row{text: text, mark: mark, detail: "shelf_m of [[reel]] says how much there is", why: figs(c.Spec, 0, c.Size, "reel.need")})
		}
		ids, named := make([]string, 0, len(c.Wires)), make([]string, 0, len(c.Wires))
		var why []reason
		for _, k := range c.Wires {
			ids = append(ids, m.h.Wires[k].ID)
			named = append(named, strings.TrimSpace(m.h.Wires[k].ID+" "+m.h.Wires[k].Colour.V))
			why = append(why, figs(m.h.Wires[k].ID, 0, "", "wire.cut")...)
		}
		out = append(out, row{text: fmt.Sprintf("  %3d off %6s   %s", len(c.Wires), m.sys.Length(c.CutMM), few(ids)), detail: "wire and colour: " + strings.Join(named, ", "), why: why})
	}
	if n := len(m.h.Wires); n > 0 {
		out = append(out, row{text: fmt.Sprintf("  wire flags %d", 2*n), detail: "one at each end of every wire, from the cutting on until its contact is in"})
	}
	if n := len(m.sheet.Mixes()); n > 0 {
		out = append(out, row{text: fmt.Sprintf("  adhesive, %s: %s", m.sheet.Limits.Adhesive, plural(n, "pack", "packs")), detail: "the threading list says which joints each does"})
	}
	head("CONTACTS TO BUY")
	for _, b := range m.sheet.BuyList() {
		part := orDash(b.Part)
		if b.Part == "" && b.Gender == "" {
			part = "gender not given"
		}
		out = append(out, row{text: fmt.Sprintf("  size %-4s %-18s %3d", b.Size, part, b.Buy()), detail: fmt.Sprintf("%d wired, %d in unwired sealed cavities, %d samples to pull, %d more", b.Wired, b.Unwired, b.Samples, b.More)})
		stubs := ""
		if b.Stubs > 0 {
			stubs = fmt.Sprintf("; %d of them in a firewall, with a stub of wire", b.Stubs)
		}
		if b.Plugs > 0 {
			out = append(out, row{text: fmt.Sprintf("  plug      %-18s %3d", orDash(b.Plug), b.Plugs), detail: "one in each cavity that is not wired" + stubs})
		}
	}
	head("CRIMPS")
	for _, c := range m.sheet.CrimpList() {
		out = append(out, m.crimpRow(c))
	}
	if spares := m.spareRows(); len(spares) > 0 {
		head("SPARES")
		out = append(out, spares...)
	}
	if len(m.h.Units) > 0 {
		head("UNITS MADE FIRST, " + m.sys.Name())
	}
	for i := range m.h.Units {
		out = append(out, m.unitRow(i)...)
	}
	return out
}

func (m *Model) crimpRow(c calc.CrimpRow) row {
	text := fmt.Sprintf("  size %-4s on %-7s %3d", c.Contact, paper.Size(&model.Wire{Size: c.Size}), c.Count)
	if !c.Circular {
		text += "  of the device's own"
	}
	var why []reason
	say := func(name string, v float64, k calc.Measure, from catalogue.Origin) {
		why = append(why, reason{made: func() (calc.Why, bool) { return calc.Stated(name, "by "+from.Source, v, k, from), true }})
	}
	if c.StripMin > 0 {
		text += fmt.Sprintf("  strip %s to %s mm", unit.Fixed(float64(c.StripMin), 1), unit.Fixed(float64(c.StripMax), 1))
		gap := catalogue.Origin{Source: "well depth and gap (NASA-STD-8739.4 § 10.1.7)", Standing: catalogue.Practice}
		say("strip at least", float64(c.StripMin), calc.Length, gap)
		say("strip at most", float64(c.StripMax), calc.Length, gap)
	}
	if c.PullN > 0 {
		text += fmt.Sprintf("  pull %s%s N", unit.Fixed(float64(c.PullN), 0), memMark(c.PullBy.Standing == catalogue.Memory))
		say("a sample must hold, N", float64(c.PullN), calc.Times, c.PullBy)
	}
	detail := "no tool is known for it: its maker's sheet"
	if c.HasTool {
		detail = fmt.Sprintf("%s with %s~", c.Tool.Frame, c.Tool.Positioner)
		if c.Step > 0 {
			detail += fmt.Sprintf(", step %d%s; the positioner's plate rules", c.Step, memMark(c.StepGuess))
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
			detail += fmt.Sprintf("; strands nicked at most %d, broken %d", nicked, broken)
		}
	}
	if c.PullN > 0 {
		detail += "; pull by " + c.PullBy.Source
	}
	return row{text: text, detail: detail, why: why}
}

// unitRow is what a unit is made of before anything is laid.
func (m *Model) unitRow(i int) []row {
	u, s := &m.h.Units[i], &m.sheet.Units[i]
	text := fmt.Sprintf("  %-5s %s", u.ID, u.Name.V)
	if s.LayMM > 0 {
		text += fmt.Sprintf("  turn %s", m.sys.Length(s.LayMM))
	}
	detail := "twist it before it is laid; a drain to the shell or to a cavity, never both ends of one loop unless meant"
	if u.Shield.V {
		text += "  shielded, drain " + orDash(u.DrainFrom.V) + " and " + orDash(u.DrainTo.V)
		detail = m.shieldText(i)
	}
	out := []row{{text: text, id: u.ID, detail: detail}}
	for _, id := range u.Wires {
		k, ok := m.sheet.X.Wire[id]
		if !ok {
			continue
		}
		w := &m.h.Wires[k]
		out = append(out, row{text: fmt.Sprintf("        %-5s %s  %s  cut %s", id, paper.Size(w), w.Colour.V, m.sys.Length(m.sheet.Wires[k].Cut)), id: id, why: figs(id, 0, "", "wire.cut"), enter: func(m *Model) { m.open(wireScreen(id)) }})
	}
	return out
}

// shieldText is what is done at the ends of a unit's shield.
func (m *Model) shieldText(i int) string {
	u := &m.h.Units[i]
	back := "strip it back as its contacts ask (strip_mm says how far)"
	if u.StripMM.Set {
		back = fmt.Sprintf("strip it back %s %s", m.sys.Length(u.StripMM.V), m.sys.Name())
	}
	n, size := 0, 0
	for _, e := range m.sheet.ShieldEnds() {
		if e.Unit == i && e.To != "cut" && e.To != "" {
			n, size = n+1, e.Sleeve
		}
	}
	switch {
	case n == 0:
		return back + "; the shield is cut and covered at both ends"
	case size == 0:
		return back + "; no solder sleeve is known for its diameter"
	}
	text := fmt.Sprintf("%s; %s of size %d~ for its lead", back, plural(n, "solder sleeve", "solder sleeves"), size)
	if u.DrainMM.Set {
		text += fmt.Sprintf(", %s %s long", m.sys.Length(u.DrainMM.V), m.sys.Name())
	}
	return text
}

// spareRows is where every spare lies, and where the capped ones are found.
func (m *Model) spareRows() []row {
	caps := map[int]calc.Cap{}
	for _, c := range m.sheet.Caps() {
		caps[c.Wire] = c
	}
	var out []row
	for k := range m.h.Wires {
		w := &m.h.Wires[k]
		if w.Role.V != "spare" {
			continue
		}
		text := fmt.Sprintf("  %-5s %s %s  %s to %s", w.ID, paper.Size(w), w.Colour.V, orDash(w.From.V), orDash(w.To.V))
		detail := "a cavity at both ends"
		if c, is := caps[k]; is {
			text = fmt.Sprintf("  %-5s %s %s  %s, capped %s", w.ID, paper.Size(w), w.Colour.V, cmp.Or(w.From.V, w.To.V), m.capText(c))
			detail = fmt.Sprintf("cap it, fold back %s %s from %s and tie it down", m.sys.Length(c.FoldMM), m.sys.Name(), c.Place)
		}
		id := w.ID
		out = append(out, row{text: text, detail: detail, id: id, enter: func(m *Model) { m.open(wireScreen(id)) }})
	}
	return out
}
