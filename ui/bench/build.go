package bench

import (
	"fmt"
	"strings"

	"contralay/calc"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/draw"
	"contralay/ui/paper"
)

// buildPage is the page to read before the build: what stops, what is unmeasured
// or from memory, then the lay card and the cut list, and saving.
func (m *Model) buildPage(w int) page {
	mb, b, ok := m.b()
	if !ok {
		return page{empty: "no branch yet"}
	}
	p := page{}
	name := m.path
	if name == "" {
		name = "a new file"
	}
	state := "saved"
	if m.dirty() || m.path == "" {
		state = "not saved"
	}
	p.rows = append(p.rows, row{text: fmt.Sprintf("save to %s   (%s)", name, state), detail: "Enter saves; the file before stays beside it as .bak", enter: func(m *Model) { m.save() }})
	p.rows = append(p.rows, row{key: "print", text: "print the build sheet", detail: "Enter, or P anywhere on this step: a page for the printer and lists for a spreadsheet, in a folder beside the file", enter: func(m *Model) { m.print() }})
	p.rows = append(p.rows, m.once("run row", func() []row {
		rows := []row{m.revisionRow(), m.runRow()}
		if r, any := m.learnedRow(); any {
			rows = append(rows, r)
		}
		return rows
	})...)
	line := func(mark, text string, why ...reason) {
		for k, t := range wrap(text, max(20, w-7)) {
			if k > 0 {
				mark, t = "", "   "+t
			}
			p.rows = append(p.rows, row{text: t, mark: mark, detail: text, why: why})
		}
	}
	gs := calc.Grouped(m.sheet.Snags)
	if len(gs) == 0 {
		line("", "no snags")
	}
	for _, g := range gs {
		mark := map[calc.Level]string{calc.Stop: "!", calc.Warn: "?", calc.Note: "-"}[g.Level]
		line(mark, fmt.Sprintf("%s %s: %s%s", g.Level, g.Where, g.Says, g.More()), m.snagReasons(g.Snag)...)
	}
	line("", fmt.Sprintf("LAY CARD %s %s, seen from %s, from %s outward", mb.ID, mb.Name.V, mb.From, mb.From))
	line("", m.lengthText(mb))
	for k := range b.Layers {
		l := &b.Layers[k]
		head := capital(model.LayerName(k))
		why := figs(mb.ID, k, "", "layer.over", "layer.lay", "layer.turns")
		switch {
		case l.LayMM > 0:
			line("", fmt.Sprintf("%s: %d, %s, turn %s %s, %s turns, over %s %s", head, len(l.Members), l.Hand, m.sys.Length(l.LayMM), m.sys.Name(), unit.Fixed(float64(l.Turns), 1), m.sys.Diameter(l.OverMM), m.sys.Name()), why...)
		default:
			line("", fmt.Sprintf("%s: %d, straight, over %s %s", head, len(l.Members), m.sys.Diameter(l.OverMM), m.sys.Name()), why...)
		}
		var ids []string
		for j, c := range l.Members {
			id := c.ID
			if j == 0 && c.ID == l.Tracer && k > 0 {
				id = "*" + id
			}
			ids = append(ids, id)
		}
		line("", "  "+strings.Join(ids, " "))
	}
	if b.Sheath.Part != "" {
		line("", fmt.Sprintf("Sheath %s, cut %s, from %s to %s %s", b.Sheath.Part, m.sys.Length(b.Sheath.CutMM), m.sys.Length(b.Sheath.FromMM), m.sys.Length(b.Sheath.ToMM), m.sys.Name()), append(figs(mb.ID, 0, b.Sheath.Part, "tube.cut"), figs(mb.ID, 0, "", "sheath.from", "sheath.to")...)...)
	}
	line("", "CUT LIST "+m.sys.Name())
	for _, i := range m.wiresHere() {
		hw, c := &m.h.Wires[i], &m.sheet.Wires[i]
		if c.Cut <= 0 {
			continue
		}
		spec := fmt.Sprintf("%-14s", hw.Spec)
		if w < 56 { // the specification stands in the detail
			spec = ""
		}
		p.rows = append(p.rows, row{text: fmt.Sprintf("%-5s%s%-8s%-5s%6s  finished %5s", hw.ID, spec, paper.Size(hw), hw.Colour.V, m.sys.Length(c.Cut), m.sys.Length(c.Finished)), id: hw.ID, more: func() string { return m.wireDetail(i, hw.ID) },
			whyOf: func() []reason { return append(m.wireReasons(i), figs(hw.ID, 0, "", "wire.finished")...) }}.of(m.sys.Length(c.Cut), m.sys.Name()+"  cut of wire "+hw.ID))
	}
	line("", "~ marks what rests on a value from memory: measure it, or check the part's sheet. "+cautionLine)
	return p
}

// lengthText is a branch's length with where it is taken from, its tolerance, and who
// took it.
func (m *Model) lengthText(b *model.Branch) string {
	end := func(id string) string {
		if t, ok := m.sheet.X.Termination[id]; ok {
			if d := m.h.Terminations[t].Datum.V; d != "" {
				return d + " of " + id
			}
			return id
		}
		return "the centre of " + id
	}
	text := fmt.Sprintf("%s %s from %s to %s", m.sys.Length(b.LengthMM), m.sys.Name(), end(b.From), end(b.To))
	if t := b.ToleranceMM; len(t) == 2 {
		text += fmt.Sprintf(", -%s +%s", m.sys.Length(t[0]), m.sys.Length(t[1]))
	}
	if m.h.Head.MockUp.V != "" {
		text += "; mock-up: " + m.h.Head.MockUp.V
	}
	return text
}

// cautionLine is the shortest form of the cautions.
const cautionLine = "A planning aid, not an approval: check makers' sheets, series rules and local codes. Fumes under a heat gun; disconnect the battery; sample crimps; ring out before any adhesive."

// wrap breaks text at spaces.
func wrap(text string, w int) []string {
	if draw.Width(text) <= w {
		return []string{text}
	}
	var out []string
	lead := text[:len(text)-len(strings.TrimLeft(text, " "))]
	cur := lead
	for _, word := range strings.Fields(text) {
		switch {
		case strings.TrimSpace(cur) == "":
			cur = lead + word
		case draw.Width(cur)+1+draw.Width(word) <= w:
			cur += " " + word
		default:
			out = append(out, cur)
			cur = lead + word
		}
	}
	return append(out, cur)
}

// print writes the build sheet. One made from work that is not saved says so on each page.
func (m *Model) print() {
	if m.cfg.Print == nil {
		m.refuse("there is nowhere to write a sheet to")
		return
	}
	if len(m.h.Branches) == 0 {
		m.refuse("there is no branch yet, and nothing to print")
		return
	}
	unsaved := m.dirty() || m.path == ""
	where, err := m.cfg.Print(m.path, calc.Complete(m.h, m.cfg.Cat, m.sheet), unsaved)
	if err != nil {
		m.refuse("not printed: " + err.Error())
		return
	}
	says := "written: " + where
	if unsaved {
		says += "; it says on each page that this is not saved"
	}
	m.tell(says)
}
