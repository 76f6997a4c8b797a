package laycard

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/phase/built"
	"contralay/calc/phase/over"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/laycard/joint"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// unitRow is wires that are made up first, as they are entered and as they are worked out.
type unitRow struct {
	entered *model.Unit
	worked  *sheet.Unit
	cut     unit.Millimetre // of the longest of its wires; 0: not known
	sleeve  int             // size of the solder sleeve on its shield; 0: none
}

// UnitTable is what is made up before anything is laid, as a list.
func UnitTable(m list.Maker) list.Table {
	sleeve := map[int]int{}
	for _, e := range over.ShieldEnds(m.S) {
		sleeve[e.Unit] = max(sleeve[e.Unit], e.Sleeve)
	}
	var rows []unitRow
	shielded := false
	for k := range m.H.Units {
		u := &m.H.Units[k]
		row := unitRow{entered: u, worked: &m.S.Units[k], sleeve: sleeve[k]}
		for _, id := range u.Wires {
			if w, ok := m.S.Index.Wire[id]; ok {
				row.cut = max(row.cut, m.S.Wires[w].Cut)
			}
		}
		shielded = shielded || u.Shield.V
		rows = append(rows, row)
	}
	columns := []list.Column[unitRow]{
		list.Text("unit", func(r unitRow) string { return r.entered.ID }),
		list.Text("name", func(r unitRow) string { return r.entered.Name.V }),
		list.Text("wires", func(r unitRow) string { return unitWires(m, r.entered, joint.Colour) }),
		list.Text("size", func(r unitRow) string { return unitSizes(m, r.entered) }),
		list.Figure(m.In("lay"), func(r unitRow) string { return lengthOr(m, list.Turn(r.worked.LayMM)) }),
		list.Figure(m.In("wires cut"), func(r unitRow) string { return lengthOr(m, r.cut) }),
		list.Figure(m.In("OD"), func(r unitRow) string { return m.Sys.Diameter(r.worked.Dia.Nominal) + list.Mem(r.worked.Dia.Standing) }),
	}
	if shielded {
		columns = append(columns,
			list.Text("shield", func(r unitRow) string { return map[bool]string{true: "yes", false: "none"}[r.entered.Shield.V] }),
			list.Figure(m.In("strip back"), func(r unitRow) string { return ofShield(r, m.OptLength(r.entered.StripMM)) }),
			list.Figure(m.In("drain"), func(r unitRow) string { return ofShield(r, m.OptLength(r.entered.DrainMM)) }),
			list.Text("drain from", func(r unitRow) string { return ofShield(r, list.Dash(r.entered.DrainFrom.V)) }),
			list.Text("drain to", func(r unitRow) string { return ofShield(r, list.Dash(r.entered.DrainTo.V)) }),
			list.Text("solder sleeve", func(r unitRow) string { return ofShield(r, solderSleeve(r.sleeve)) }))
	}
	return list.Of(list.Table{File: "units", Title: "Made up first", Note: "Twist these before anything is laid. Strip back: how " +
		"far before the " +
		"contacts the shield ends. Drain: how long the lead is that takes it to ground."},
		append(columns, list.Blank[unitRow]("made")), rows)
}

// ofShield is a text about a shield; nothing of a unit without.
func ofShield(r unitRow, says string) string {
	if !r.entered.Shield.V {
		return ""
	}
	return says
}

func lengthOr(m list.Maker, v unit.Millimetre) string {
	if v <= 0 {
		return "-"
	}
	return m.Sys.Length(v)
}

// unitWires is the wires of a unit, each with something of it.
func unitWires(m list.Maker, u *model.Unit, of func(w *model.Wire) string) string {
	var out []string
	for _, id := range u.Wires {
		out = append(out, strings.TrimSpace(id+" "+of(m.Wire(id))))
	}
	return strings.Join(out, ", ")
}

// unitSizes is the size of the wires of a unit, once where all have it.
func unitSizes(m list.Maker, u *model.Unit) string {
	var out []string
	for _, id := range u.Wires {
		out = append(out, list.Size(m.Wire(id)))
	}
	return strings.Join(slices.Compact(out), ", ")
}

func solderSleeve(size int) string {
	if size <= 0 {
		return "-"
	}
	return fmt.Sprintf("size %d~", size)
}

// Units is the table of what is made up first as blocks, and what its dashes lack.
func Units(m list.Maker) []page.Block {
	out := page.List(UnitTable(m))
	if says := unitsLack(m); says != "" {
		out = append(out, page.Text(says, page.Small))
	}
	return out
}

// shieldsOf is the shields of units, with their verb.
func shieldsOf(ids []string) string {
	if len(ids) == 1 {
		return "the shield of " + ids[0] + " is"
	}
	return "the shields of " + andOf(ids) + " are"
}

// unitsLack says which units have a shield whose ends the file does not give, and where that is typed.
func unitsLack(m list.Maker) string {
	var strip, drain []string
	for k := range m.H.Units {
		u := &m.H.Units[k]
		leads := u.DrainFrom.V != "" && u.DrainFrom.V != "cut" || u.DrainTo.V != "" && u.DrainTo.V != "cut"
		if u.Shield.V && !u.StripMM.Set {
			strip = append(strip, u.ID)
		}
		if u.Shield.V && leads && !u.DrainMM.Set {
			drain = append(drain, u.ID)
		}
	}
	var says []string
	if len(strip) > 0 {
		says = append(says, "how far "+shieldsOf(strip)+" stripped back (strip_mm)")
	}
	if len(drain) > 0 {
		says = append(says, "how long the drain lead of "+andOf(drain)+" is (drain_mm)")
	}
	if len(says) == 0 {
		return ""
	}
	return "The file does not say " + strings.Join(says, ", nor ") + ". Type it at the unit in the file, or agree it and write it in above."
}

// splicesOf is every splice: those that are drawn on the card of the branch in which they are made in a table,
// the others drawn here, two beside each other where all are narrow enough. drawn are those branches.
func splicesOf(m list.Maker, drawn map[int]bool) []page.Block {
	if len(m.H.Splices) == 0 {
		return nil
	}
	g := page.Grid{Cols: []page.Col{{Head: "splice", Bold: true}, {Head: "wire", Bold: true}, {Head: "becomes"}, {Head: "middle of " +
		"its sleeve"},
		{Head: "part"}, {Head: "made", Align: list.ByHand, Wide: 12}}}
	var rest []int
	var parts []string
	made := built.MadeWhen(m.S)
	for i := range m.H.Splices {
		j := joint.Of(m, i)
		if !drawn[made[i].Branch] {
			rest = append(rest, i)
			continue
		}
		g.Lines = append(g.Lines, page.Cells(j.ID, wordOr(j.Is, "-"), strings.ReplaceAll(wordOr(j.Becomes, "-"), " and ", ", "),
			m.Sys.Says(j.Lies()), j.Part, ""))
		if part := strings.Join(list.NonEmpty(j.Part, j.Sleeve), ": "); j.Sleeve != "" && !slices.Contains(parts, part) {
			parts = append(parts, part)
		}
	}
	out := []page.Block{page.Section("Splices")}
	if len(g.Lines) > 0 {
		note := page.Text(strings.Join(append([]string{"Drawn on the card of the branch that each is made in"}, parts...), ". ")+".",
			page.Small)
		note.KeepNext = true
		out = append(out, note, g.Block())
	}
	const gap unit.Millimetre = 2
	per, wide := 2, (page.Wide-gap)/2
	for _, i := range rest {
		if _, w, _ := joint.Of(m, i).Picture(); w > wide {
			per, wide = 1, page.Wide
			break
		}
	}
	for ; len(rest) > 0; rest = rest[min(per, len(rest)):] {
		var columns []page.Column
		for _, i := range rest[:min(per, len(rest))] {
			columns = append(columns, page.Column{Wide: wide, Blocks: splice(m, i, wide)})
		}
		b := page.Beside(gap, columns...)
		b.Gap = 2.5
		out = append(out, b)
	}
	return out
}

// splice is one splice with all that is needed to make it.
func splice(m list.Maker, i int, wide unit.Millimetre) []page.Block {
	j := joint.Of(m, i)
	text := page.TextIn(m.Sys.Says(j.Says()+"; middle of its sleeve "+j.Lies())+".", page.Strong, wide)
	part := page.TextIn(strings.Join(list.NonEmpty(strings.Join(list.NonEmpty("Part "+j.Part, j.Sleeve,
		list.Word("OD of the bundle over it ", j.Over)), ", ")+".", joint.Goes([]joint.Joint{j})), " "), page.Small, wide)
	part.Gap = 0.3
	svg, _, high := j.Picture()
	return []page.Block{text, part, {HTML: svg, High: high, Gap: 1.2}}
}
