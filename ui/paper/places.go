package paper

import (
	"fmt"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/list"
)

// The tables of places: branches and ends.

// branchRow is a branch as it is entered and as it is worked out.
type branchRow struct {
	entered *model.Branch
	worked  *sheet.Branch
}

func (m maker) branches() list.Table {
	var rows []branchRow
	for k := range m.H.Branches {
		rows = append(rows, branchRow{&m.H.Branches[k], &m.S.Branches[k]})
	}
	return list.Of(list.Table{File: "branches", Title: "Branches", Note: "Lengths along the centre line."}, []list.Column[branchRow]{
		list.Text("branch", func(r branchRow) string { return r.entered.ID }),
		list.Text("name", func(r branchRow) string { return r.entered.Name.V }),
		list.Text("from", func(r branchRow) string { return m.Datum(r.entered.From) }),
		list.Text("to", func(r branchRow) string { return m.Datum(r.entered.To) }),
		list.Figure(m.In("length"), func(r branchRow) string { return list.Long(m.Sys, r.entered) }),
		list.Text(m.In("tolerance"), func(r branchRow) string { return m.Tolerance(r.entered) }),
		list.Figure("pieces", func(r branchRow) string { return fmt.Sprint(len(r.worked.Components)) }),
		list.Text(m.In("over"), func(r branchRow) string { return m.Band(r.worked) }),
		list.Text(m.In("in sheath"), func(r branchRow) string { return m.InSheath(r.worked) }),
		list.Figure(m.In("bend at least"), func(r branchRow) string { return m.Sys.AtLeast(r.worked.Bend.MinMM) }),
		list.Text("surroundings", surroundings),
	}, rows)
}

func surroundings(r branchRow) string {
	var out []string
	for _, e := range r.entered.Environment {
		out = append(out, string(e))
	}
	return strings.Join(append(out, unit.Fixed(r.worked.Ambient, 0)+" C"), ", ")
}

// endRow is a termination as it is entered and as it is worked out.
type endRow struct {
	entered *model.Termination
	worked  *sheet.Term
}

func (m maker) ends() list.Table {
	var rows []endRow
	for k := range m.H.Terminations {
		rows = append(rows, endRow{&m.H.Terminations[k], &m.S.Terms[k]})
	}
	return list.Of(list.Table{File: "ends", Title: "Ends", Note: "Clocks seen from the wire side."}, []list.Column[endRow]{
		list.Text("end", func(r endRow) string { return r.entered.ID }),
		list.Text("name", func(r endRow) string { return r.entered.Name.V }),
		list.Text("device", func(r endRow) string { return r.entered.Device.V }),
		list.Text("insert", func(r endRow) string { return list.Dash(r.entered.Insert.V) }),
		list.Text("contacts", func(r endRow) string { return list.Dash(string(r.entered.Gender.V)) }),
		list.Text("key", func(r endRow) string { return list.Dash(r.entered.Key.V) }),
		list.Text("mount", func(r endRow) string { return list.Dash(string(r.entered.Mount.V)) }),
		list.Text("clock", func(r endRow) string { return m.Clock(r.entered) }),
		list.Text("boot", func(r endRow) string { return list.Dash(r.entered.Boot.V) }),
		list.Figure("wired", func(r endRow) string { return fmt.Sprint(r.worked.Used) }),
		list.Figure("spare", func(r endRow) string { return fmt.Sprint(r.worked.Spare) }),
		list.Figure("reserved", func(r endRow) string { return fmt.Sprint(r.worked.Reserved) }),
		list.Figure("blank", func(r endRow) string { return fmt.Sprint(r.worked.Blank) }),
		list.Figure("plugs", func(r endRow) string { return fmt.Sprint(r.worked.SealPlugs) }),
	}, rows)
}
