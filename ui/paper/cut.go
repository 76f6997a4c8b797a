package paper

import (
	"fmt"
	"strings"

	"contralay/calc/phase/over"
	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/list"
)

// What is cut, flagged and made up before anything is laid.

// cutRow is one wire that is cut, with the reel it comes off.
type cutRow struct {
	reel          string
	wire          *model.Wire
	cut, finished unit.Millimetre
}

// cutList is every wire by reel, longest first.
func (m maker) cutList() list.Table {
	var rows []cutRow
	for _, c := range lists.CutList(m.S) {
		for _, k := range c.Wires {
			rows = append(rows, cutRow{c.Spec + " " + list.Size(&model.Wire{Size: c.Size}), &m.H.Wires[k], c.CutMM, m.S.Wires[k].Finished})
		}
	}
	return list.Of(list.Table{File: "cut-list", Title: "Cut list, by reel",
		Note: "Longest first. Flag both ends as it is cut; the flag stays until its contact is in. Finished is what stays in the " +
			"harness, loops in; what is cut holds the tails too, which come off when it is pinned."},
		[]list.Column[cutRow]{
			list.Text("reel", func(r cutRow) string { return r.reel }),
			list.Text("wire", func(r cutRow) string { return r.wire.ID }),
			list.Figure(m.In("cut"), func(r cutRow) string { return m.Sys.AtLeast(r.cut) }),
			list.Figure(m.In("finished"), func(r cutRow) string { return m.Sys.Length(r.finished) }),
			list.Text("colour", func(r cutRow) string { return list.Colour(r.wire.Colour.V) }),
			list.Text("from", func(r cutRow) string { return m.End(r.wire, true) }),
			list.Text("to", func(r cutRow) string { return m.End(r.wire, false) }),
			list.Text("signal", func(r cutRow) string { return r.wire.Signal.V }),
			list.Blank[cutRow]("cut"),
		}, rows)
}

// flags is what each wire wears at its ends.
func (m maker) flags() list.Table {
	type flag struct{ wire, end, leads string }
	var rows []flag
	for k := range m.H.Wires {
		w := &m.H.Wires[k]
		rows = append(rows, flag{w.ID, "1", m.End(w, true)}, flag{w.ID, "2", m.End(w, false)})
	}
	return list.Of(list.Table{File: "wire-flags", Title: "Wire flags", Note: "Two of each wire, one at each end."}, []list.Column[flag]{
		list.Text("flag", func(f flag) string { return f.wire }),
		list.Text("end", func(f flag) string { return f.end }),
		list.Text("reads", func(f flag) string { return f.wire + "  " + f.leads }),
	}, rows)
}

// unitRow is wires that are made up first, as they are entered and as they are worked out.
type unitRow struct {
	entered *model.Unit
	worked  *sheet.Unit
	sleeve  int // size of the solder sleeve on its shield; 0: none
}

func (m maker) units() list.Table {
	sleeve := map[int]int{}
	for _, e := range over.ShieldEnds(m.S) {
		sleeve[e.Unit] = max(sleeve[e.Unit], e.Sleeve)
	}
	var rows []unitRow
	for k := range m.H.Units {
		rows = append(rows, unitRow{&m.H.Units[k], &m.S.Units[k], sleeve[k]})
	}
	return list.Of(list.Table{File: "units", Title: "Made up first",
		Note: "Twisted, and shielded where it says so, before anything is laid."},
		[]list.Column[unitRow]{
			list.Text("unit", func(r unitRow) string { return r.entered.ID }),
			list.Text("name", func(r unitRow) string { return r.entered.Name.V }),
			list.Text("build", func(r unitRow) string { return string(r.entered.Build.V) }),
			list.Text("wires", m.unitWires),
			list.Figure(m.In("turn"), m.unitTurn),
			list.Figure(m.In("over"), func(r unitRow) string {
				return m.Sys.Diameter(r.worked.Dia.Nominal) + list.Mem(r.worked.Dia.Standing)
			}),
			list.Text("shield", func(r unitRow) string { return map[bool]string{true: "yes", false: "no"}[r.entered.Shield.V] }),
			list.Figure(m.In("shield ends before contacts"), func(r unitRow) string { return m.OptLength(r.entered.StripMM) }),
			list.Figure(m.In("lead"), func(r unitRow) string { return m.OptLength(r.entered.DrainMM) }),
			list.Text("solder sleeve", solderSleeve),
			list.Text("drain from", func(r unitRow) string { return list.Dash(r.entered.DrainFrom.V) }),
			list.Text("drain to", func(r unitRow) string { return list.Dash(r.entered.DrainTo.V) }),
		}, rows)
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
	return fmt.Sprintf("size %d~", r.sleeve)
}
