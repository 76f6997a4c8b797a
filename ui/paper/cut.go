package paper

import (
	"fmt"
	"strings"

	"contralay/calc/phase/over"
	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper/list"
	"contralay/ui/paper/set"
)

// What is cut, flagged and made up before anything is laid.

// cutRow is one wire that is cut, with the reel it comes off and its place there.
type cutRow struct {
	reel          string
	wire          *model.Wire
	cut, finished unit.Millimetre
	batch         int             // its number among those of one spool and length
	together      int             // how many wires are cut with it
	running       unit.Millimetre // off its spool up to here
	unit          string          // that it is made up into
	strip         [2]lists.CrimpRow
}

// cutRows is every wire by spool, longest first; a batch is wires of one size and colour that are cut to one length.
func (m maker) cutRows() []cutRow {
	var rows []cutRow
	for n, b := range set.Batches(m.Maker) {
		running := b.TotalMM - b.CutMM*unit.Millimetre(len(b.Wires))
		for _, k := range b.Wires {
			running += b.CutMM
			r := cutRow{reel: b.Spec + " " + list.Size(&model.Wire{Size: b.Size}), wire: &m.H.Wires[k], cut: b.CutMM,
				finished: m.S.Wires[k].Finished, batch: n + 1, together: len(b.Wires), running: running}
			if u, ok := m.S.Index.UnitOf[r.wire.ID]; ok {
				r.unit = m.H.Units[u].ID
			}
			for end, text := range []string{r.wire.From.V, r.wire.To.V} {
				if e, ok := m.S.Index.End(text); ok && e.Cavity != "" {
					r.strip[end], _ = lists.CrimpOf(m.S, m.S.Index.Termination[e.Termination], e.Cavity)
				}
			}
			rows = append(rows, r)
		}
	}
	return rows
}

// cutList is every wire by spool, longest first.
func (m maker) cutList() list.Table {
	wire := func(r cutRow) *model.Wire { return r.wire }
	return list.Of(list.Table{File: "cut-list", Title: "Cut list, by spool",
		Note: "Longest first. Flag both ends as it is cut; the flag stays until its contact is in. Finished is what stays in the " +
			"harness, loops in; what is cut holds the tails too, which come off when it is pinned."},
		[]list.Column[cutRow]{
			list.Text("reel", func(r cutRow) string { return r.reel }).InFile(
				list.Text("spec", func(r cutRow) string { return r.wire.Spec }),
				list.Text("size", func(r cutRow) string { return list.Size(r.wire) }),
				list.Figure("batch", func(r cutRow) string { return fmt.Sprint(r.batch) }),
				list.Figure("wires in batch", func(r cutRow) string { return fmt.Sprint(r.together) })),
			list.Text("wire", func(r cutRow) string { return r.wire.ID }),
			list.Figure(m.In("cut"), func(r cutRow) string { return m.Sys.AtLeast(r.cut) }),
			list.FileOnly(list.Figure(m.In("running total off the spool"), func(r cutRow) string { return m.Sys.AtLeast(r.running) })),
			list.Figure(m.In("finished"), func(r cutRow) string { return m.Sys.Length(r.finished) }),
			list.ColourOf(wire),
			list.Text("from", func(r cutRow) string { return m.End(r.wire, true) }),
			list.Text("to", func(r cutRow) string { return m.End(r.wire, false) }),
			list.Text("signal", func(r cutRow) string { return r.wire.Signal.V }),
			list.FileOnly(
				list.Text("text1", func(r cutRow) string { return m.flag(r.wire, true) }),
				list.Text("text2", func(r cutRow) string { return m.flag(r.wire, false) }),
				list.Text("unit", func(r cutRow) string { return r.unit }),
				list.Figure(m.In("strip end 1 from"), func(r cutRow) string { return strip(m.Sys, r.strip[0].StripMin) }),
				list.Figure(m.In("strip end 1 to"), func(r cutRow) string { return strip(m.Sys, r.strip[0].StripMax) }),
				list.Figure(m.In("strip end 2 from"), func(r cutRow) string { return strip(m.Sys, r.strip[1].StripMin) }),
				list.Figure(m.In("strip end 2 to"), func(r cutRow) string { return strip(m.Sys, r.strip[1].StripMax) })),
			list.Blank[cutRow]("cut").InFile(),
		}, m.cutRows())
}

// strip is a strip length; nothing where the well of the contact is not known.
func strip(sys unit.System, v unit.Millimetre) string {
	if v <= 0 {
		return "-"
	}
	return sys.Diameter(v)
}

// flag is the text of the flag at one end of a wire: the wire, and where that end goes.
func (m maker) flag(w *model.Wire, from bool) string { return w.ID + " " + m.End(w, from) }

// flags is what each wire wears at its ends.
func (m maker) flags() list.Table {
	var rows []int
	for k := range m.H.Wires {
		rows = append(rows, k)
	}
	return list.Of(list.Table{File: "wire-flags", Title: "Wire flags", Note: "Two of each wire, one at each end."}, []list.Column[int]{
		list.Text("wire", func(k int) string { return m.H.Wires[k].ID }),
		list.Text("text1", func(k int) string { return m.flag(&m.H.Wires[k], true) }),
		list.Text("text2", func(k int) string { return m.flag(&m.H.Wires[k], false) }),
		list.FileOnly(
			list.Figure("copies of each", func(int) string { return "1" }),
			list.Figure(m.In("wire OD"), func(k int) string { return fine(m.Sys, m.S.Wires[k].Dia.Nominal) }).Stands(
				func(k int) catalogue.Standing { return m.S.Wires[k].Dia.Standing })),
	}, rows)
}

// fine is a diameter to a hundredth; a dash where it is not known.
func fine(sys unit.System, v unit.Millimetre) string {
	if v <= 0 {
		return "-"
	}
	return sys.Fine(v)
}

// unitRow is wires that are made up first, as they are entered and as they are worked out.
type unitRow struct {
	entered *model.Unit
	worked  *sheet.Unit
	sleeve  int    // size of the solder sleeve on its shield; 0: none
	wire    string // one of its wires, in a file
}

func (m maker) units() list.Table {
	sleeve := map[int]int{}
	for _, e := range over.ShieldEnds(m.S) {
		sleeve[e.Unit] = max(sleeve[e.Unit], e.Sleeve)
	}
	var paper, file []unitRow
	for k := range m.H.Units {
		row := unitRow{&m.H.Units[k], &m.S.Units[k], sleeve[k], ""}
		paper = append(paper, row)
		for _, row.wire = range m.H.Units[k].Wires {
			file = append(file, row)
		}
	}
	wire := func(r unitRow) *model.Wire { return m.Wire(r.wire) }
	return list.OfBoth(list.Table{File: "units", Title: "Made up first",
		Note: "Twisted, and shielded where it says so, before anything is laid."},
		[]list.Column[unitRow]{
			list.Text("unit", func(r unitRow) string { return r.entered.ID }),
			list.Text("name", func(r unitRow) string { return r.entered.Name.V }),
			list.Text("build", func(r unitRow) string { return string(r.entered.Build.V) }),
			list.Text("wires", m.unitWires).InFile(list.Text("wire", func(r unitRow) string { return r.wire }), list.SizeOf(wire),
				list.ColourOf(wire)),
			list.Figure(m.In("turn"), m.unitTurn),
			list.Figure(m.In("over"), func(r unitRow) string { return m.Sys.Diameter(r.worked.Dia.Nominal) }).Stands(
				func(r unitRow) catalogue.Standing { return r.worked.Dia.Standing }),
			list.Text("shield", func(r unitRow) string { return map[bool]string{true: "yes", false: "no"}[r.entered.Shield.V] }),
			list.Figure(m.In("shield ends before contacts"), func(r unitRow) string { return m.OptLength(r.entered.StripMM) }),
			list.Figure(m.In("lead"), func(r unitRow) string { return m.OptLength(r.entered.DrainMM) }),
			list.Text("solder sleeve", solderSleeve).Stands(func(unitRow) catalogue.Standing { return catalogue.Memory }),
			list.Text("drain from", func(r unitRow) string { return list.Dash(r.entered.DrainFrom.V) }),
			list.Text("drain to", func(r unitRow) string { return list.Dash(r.entered.DrainTo.V) }),
		}, paper, file)
}

func (m maker) unitWires(r unitRow) string {
	var out []string
	for _, id := range r.entered.Wires {
		w := m.Wire(id)
		out = append(out, strings.TrimSpace(fmt.Sprintf("%s %s %s", id, list.Size(w), list.Colour(w.Colour.V))))
	}
	return strings.Join(out, "; ")
}

func (m maker) unitTurn(r unitRow) string {
	if r.worked.LayMM <= 0 {
		return "-"
	}
	return m.Sys.Length(list.Turn(r.worked.LayMM))
}

func solderSleeve(r unitRow) string {
	if r.sleeve <= 0 {
		return "-"
	}
	return fmt.Sprintf("size %d", r.sleeve)
}
