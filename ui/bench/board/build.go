package board

import (
	"fmt"
	"strings"

	"contralay/calc"
	"contralay/calc/phase/built"
	"contralay/calc/query/record"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/board/runs"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
	"contralay/ui/hours"
	"contralay/ui/paper"
)

// Step is the last step of a branch.
const Step = runs.Step

// BuildPage is the page to read before the build: what stops, what is unmeasured
// or from memory, then the lay card and the cut list, and saving.
func BuildPage(m *desk.Model, w int, _ string) desk.Page {
	mb, b, ok := m.BranchHere()
	if !ok {
		return desk.Page{Empty: "no branch yet"}
	}
	p := desk.Page{}
	name := m.File.Path
	if name == "" {
		name = "a new file"
	}
	state := "saved"
	if m.Dirty() || m.File.Path == "" {
		state = "not saved"
	}
	p.Rows = append(p.Rows, desk.Row{Text: fmt.Sprintf("save to %s   (%s)", name, state),
		Detail: "Enter saves. The file as it was stays beside it as .bak", Enter: func(m *desk.Model) { m.Save() }})
	p.Rows = append(p.Rows, desk.Row{Key: "print", Text: "print the build sheet",
		Detail: "Enter or P writes a page to print, and lists, in a folder beside the file",
		Enter:  func(m *desk.Model) { Print(m) }})
	p.Rows = append(p.Rows, m.Once("run row", func() []desk.Row {
		rows := []desk.Row{revisionRow(m), runs.RunRow(m)}
		if r, any := learnedRow(m); any {
			rows = append(rows, r)
		}
		if h, known := record.Expect(m.Sheet); known {
			rows = append(rows, desk.Row{Key: "hours", Text: hours.Line(h),
				Detail: "Work alone: no pauses, nothing done twice. contralay measured has the minutes of each kind of work"})
		}
		return rows
	})...)
	line := func(mark, text string, why ...desk.Reason) {
		for k, t := range kit.Wrap(text, max(20, w-7)) {
			if k > 0 {
				mark, t = "", "   "+t
			}
			p.Rows = append(p.Rows, desk.Row{Text: t, Mark: mark, Detail: text, Why: why})
		}
	}
	gs := sheet.Grouped(m.Sheet.Snags)
	if len(gs) == 0 {
		line("", "no open points")
	} else {
		line("", "OPEN POINTS: read before you cut")
	}
	for _, g := range gs {
		mark := map[sheet.Level]string{sheet.Stop: "!", sheet.Warn: "?", sheet.Note: "-"}[g.Level]
		line(mark, fmt.Sprintf("%s %s: %s%s", g.Level, g.Where, m.Sys.Says(g.Says), g.More()), desk.SnagReasons(m.Sheet, g.Snag)...)
	}
	line("", fmt.Sprintf("LAY CARD %s %s, seen from %s, from %s outward", mb.ID, mb.Name.V, mb.From, mb.From))
	line("", desk.LengthText(m, mb))
	joints := built.MadeWhen(m.Sheet)
	makeJoints := func(layer int) {
		for k, made := range joints {
			if made.Branch == m.Sheet.Index.Branch[mb.ID] && made.Layer == layer {
				line("", "Make "+paper.Becomes(m.Sheet, m.Sys, k))
			}
		}
	}
	for k := range b.Layers {
		makeJoints(k)
		l := &b.Layers[k]
		head := words.Capital(model.LayerName(k))
		why := desk.FiguresAt(mb.ID, k, "layer.over", "layer.lay", "layer.turns")
		switch {
		case l.LayMM > 0:
			line("", fmt.Sprintf("%s: %d pieces, %s, lay %s %s, %s turns, OD %s %s", head, len(l.Members), l.Hand, m.Sys.Length(l.LayMM),
				m.Sys.Name(), unit.Fixed(l.Turns, 1), m.Sys.Diameter(l.OverMM), m.Sys.Name()), why...)
		default:
			line("", fmt.Sprintf("%s: %s, straight, OD %s %s", head, words.Plural(len(l.Members), "piece", "pieces"),
				m.Sys.Diameter(l.OverMM),
				m.Sys.Name()), why...)
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
		if built := l.BuiltUp(m.Sys); built != "" {
			line("", "  "+built+", before layer 1", desk.FiguresAt(mb.ID, k, "layer.over")...)
		}
	}
	makeJoints(len(b.Layers))
	if b.Sheath.Part != "" {
		line("", fmt.Sprintf("Sheath %s, cut %s, from %s to %s %s", b.Sheath.Part, m.Sys.AtLeast(b.Sheath.CutMM),
			m.Sys.Length(b.Sheath.FromMM), m.Sys.Length(b.Sheath.ToMM), m.Sys.Name()),
			append(desk.FiguresOfPart(mb.ID, b.Sheath.Part, "tube.cut"), desk.FiguresOf(mb.ID, "sheath.from", "sheath.to")...)...)
	}
	line("", "CUT LIST "+m.Sys.Name())
	columns := cutColumns(m, w)
	for _, i := range m.WiresHere() {
		hw, c := &m.H.Wires[i], &m.Sheet.Wires[i]
		if c.Cut <= 0 {
			continue
		}
		p.Rows = append(p.Rows, desk.Row{Text: columns.Line(i), Id: hw.ID, More: func() string { return desk.WireDetail(m, i, hw.ID) },
			WhyOf: func() []desk.Reason {
				return append(desk.WireReasons(m, i), desk.FiguresOf(hw.ID, "wire.finished")...)
			}}.Of(m.Sys.AtLeast(c.Cut), m.Sys.Name()+"  cut of wire "+hw.ID))
	}
	line("", "~ marks a figure that rests on memory: measure it, or check the part's sheet. "+cautionLine)
	return p
}

// cutColumns are the columns of the wires to cut; on a narrow list the specification stands
// in the detail alone.
func cutColumns(m *desk.Model, w int) kit.Columns[int] {
	columns := []kit.Column[int]{{Least: 4, Cell: func(i int) string { return m.H.Wires[i].ID }}}
	if w >= 56 {
		columns = append(columns, kit.Column[int]{Least: 13, Cell: func(i int) string { return m.H.Wires[i].Spec }})
	}
	return kit.GivenColumns(append(columns,
		kit.Column[int]{Least: 7, Cell: func(i int) string { return paper.Size(&m.H.Wires[i]) }},
		kit.Column[int]{Least: 4, Cell: func(i int) string { return m.H.Wires[i].Colour.V }},
		kit.Column[int]{Least: 6, Align: kit.ToRight, Cell: func(i int) string { return m.Sys.AtLeast(m.Sheet.Wires[i].Cut) }},
		kit.Column[int]{Lead: 1, Cell: func(i int) string { return fmt.Sprintf("finished %5s", m.Sys.Length(m.Sheet.Wires[i].Finished)) }},
	), m.Cfg.ASCII)
}

// cautionLine is the shortest form of the cautions.
const cautionLine = "A planning aid, not an approval: check makers' sheets, series rules and local codes. Heat gun fumes harm you. " +
	"Disconnect the battery. Make sample crimps. Ring out before any adhesive."

// Print writes the build sheet. One made from work that is not saved says so on each page.
func Print(m *desk.Model) {
	if m.Cfg.Print == nil {
		m.Refuse("no sheet can be written here")
		return
	}
	if len(m.H.Branches) == 0 {
		m.Refuse("there is no branch yet, so nothing to print")
		return
	}
	unsaved := m.Dirty() || m.File.Path == ""
	where, err := m.Cfg.Print(m.File.Path, calc.Complete(m.H, m.Cfg.Cat, m.Sheet), unsaved)
	if err != nil {
		m.Refuse("not printed: " + err.Error())
		return
	}
	says := "written: " + where
	if unsaved {
		says += ". Each page says PRINTED FROM UNSAVED CHANGES"
	}
	m.Tell(says)
}
