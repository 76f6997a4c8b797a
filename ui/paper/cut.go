package paper

import (
	"fmt"
	"strings"

	"contralay/calc/phase/over"
	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// What is cut, flagged and made up before anything is laid.

// cutRow is one wire that is cut, with the reel it comes off.
type cutRow struct {
	reel          string
	wire          *model.Wire
	cut, finished unit.Millimetre
}

// cutList is every wire by reel, longest first.
func (m maker) cutList() Table {
	var rows []cutRow
	for _, c := range lists.CutList(m.s) {
		for _, k := range c.Wires {
			rows = append(rows, cutRow{c.Spec + " " + Size(&model.Wire{Size: c.Size}), &m.h.Wires[k], c.CutMM, m.s.Wires[k].Finished})
		}
	}
	return tableOf(Table{File: "cut-list", Title: "Cut list, by reel",
		Note: "Longest first. Flag both ends as it is cut; the flag stays until its contact is in. Finished is what stays in the " +
			"harness, loops in; what is cut holds the tails too, which come off when it is pinned."},
		[]column[cutRow]{
			{"reel", toLeft, func(r cutRow) string { return r.reel }},
			{"wire", toLeft, func(r cutRow) string { return r.wire.ID }},
			{m.in("cut"), toRight, func(r cutRow) string { return m.sys.AtLeast(r.cut) }},
			{m.in("finished"), toRight, func(r cutRow) string { return m.sys.Length(r.finished) }},
			{"colour", toLeft, func(r cutRow) string { return Colour(r.wire.Colour.V) }},
			{"from", toLeft, func(r cutRow) string { return m.end(r.wire, true) }},
			{"to", toLeft, func(r cutRow) string { return m.end(r.wire, false) }},
			{"signal", toLeft, func(r cutRow) string { return r.wire.Signal.V }},
			{"cut", byHand, nil},
		}, rows)
}

// flags is what each wire wears at its ends.
func (m maker) flags() Table {
	type flag struct{ wire, end, leads string }
	var rows []flag
	for k := range m.h.Wires {
		w := &m.h.Wires[k]
		rows = append(rows, flag{w.ID, "1", m.end(w, true)}, flag{w.ID, "2", m.end(w, false)})
	}
	return tableOf(Table{File: "wire-flags", Title: "Wire flags", Note: "Two of each wire, one at each end."}, []column[flag]{
		{"flag", toLeft, func(f flag) string { return f.wire }},
		{"end", toLeft, func(f flag) string { return f.end }},
		{"reads", toLeft, func(f flag) string { return f.wire + "  " + f.leads }},
	}, rows)
}

// unitRow is wires that are made up first, as they are entered and as they are worked out.
type unitRow struct {
	entered *model.Unit
	worked  *sheet.Unit
	sleeve  int // size of the solder sleeve on its shield; 0: none
}

func (m maker) units() Table {
	sleeve := map[int]int{}
	for _, e := range over.ShieldEnds(m.s) {
		sleeve[e.Unit] = max(sleeve[e.Unit], e.Sleeve)
	}
	var rows []unitRow
	for k := range m.h.Units {
		rows = append(rows, unitRow{&m.h.Units[k], &m.s.Units[k], sleeve[k]})
	}
	return tableOf(Table{File: "units", Title: "Made up first",
		Note: "Twisted, and shielded where it says so, before anything is laid."},
		[]column[unitRow]{
			{"unit", toLeft, func(r unitRow) string { return r.entered.ID }},
			{"name", toLeft, func(r unitRow) string { return r.entered.Name.V }},
			{"build", toLeft, func(r unitRow) string { return string(r.entered.Build.V) }},
			{"wires", toLeft, m.unitWires},
			{m.in("turn"), toRight, m.unitTurn},
			{m.in("over"), toRight, func(r unitRow) string { return m.sys.Diameter(r.worked.Dia.Nominal) + mem(r.worked.Dia.Standing) }},
			{"shield", toLeft, func(r unitRow) string { return map[bool]string{true: "yes", false: "no"}[r.entered.Shield.V] }},
			{m.in("shield ends before contacts"), toRight, func(r unitRow) string { return m.optLength(r.entered.StripMM) }},
			{m.in("lead"), toRight, func(r unitRow) string { return m.optLength(r.entered.DrainMM) }},
			{"solder sleeve", toLeft, solderSleeve},
			{"drain from", toLeft, func(r unitRow) string { return dash(r.entered.DrainFrom.V) }},
			{"drain to", toLeft, func(r unitRow) string { return dash(r.entered.DrainTo.V) }},
		}, rows)
}

func (m maker) unitWires(r unitRow) string {
	var out []string
	for _, id := range r.entered.Wires {
		w := m.wire(id)
		out = append(out, strings.TrimSpace(fmt.Sprintf("%s %s %s", id, Size(w), Colour(w.Colour.V))))
	}
	return strings.Join(out, "; ")
}

func (m maker) unitTurn(r unitRow) string {
	if r.worked.LayMM <= 0 {
		return "-"
	}
	return m.sys.Length(Turn(r.worked.LayMM))
}

func solderSleeve(r unitRow) string {
	if r.sleeve <= 0 {
		return "-"
	}
	return fmt.Sprintf("size %d~", r.sleeve)
}
