package paper

import (
	"fmt"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
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
		list.Text(m.In("tolerance"), func(r branchRow) string { return m.Tolerance(r.entered) }).InFile(
			list.Figure(m.In("may be shorter by"), func(r branchRow) string { return mayBe(m.Sys, r.entered, 0) }),
			list.Figure(m.In("may be longer by"), func(r branchRow) string { return mayBe(m.Sys, r.entered, 1) })),
		list.Figure("pieces", func(r branchRow) string { return fmt.Sprint(len(r.worked.Components)) }),
		list.Text(m.In("over"), func(r branchRow) string { return m.Band(r.worked) }).InFile(
			list.Figure(m.In("over"), func(r branchRow) string { return diameter(m.Sys, r.worked.OverMM) }).Stands(
				func(r branchRow) catalogue.Standing { return r.worked.Standing }),
			list.Figure(m.In("over at least"), func(r branchRow) string { return diameter(m.Sys, r.worked.OverMinMM) }),
			list.Figure(m.In("over at most"), func(r branchRow) string { return diameter(m.Sys, r.worked.OverMaxMM) })),
		list.Figure(m.In("in sheath"), func(r branchRow) string { return m.InSheath(r.worked) }),
		list.Figure(m.In("bend at least"), func(r branchRow) string { return m.Sys.AtLeast(r.worked.Bend.MinMM) }),
		list.Text("surroundings", surroundings).InFile(
			list.Text("surroundings", surroundedBy),
			list.Figure("air, C", func(r branchRow) string { return unit.Fixed(r.worked.Ambient, 0) })),
	}, rows)
}

func surroundings(r branchRow) string {
	return strings.Join(list.NonEmpty(surroundedBy(r), unit.Fixed(r.worked.Ambient, 0)+" C"), ", ")
}

// surroundedBy is what a branch has to bear, in the file's words.
func surroundedBy(r branchRow) string {
	var out []string
	for _, e := range r.entered.Environment {
		out = append(out, string(e))
	}
	return strings.Join(out, ", ")
}

// mayBe is one of the two tolerances of a branch.
func mayBe(sys unit.System, b *model.Branch, which int) string {
	if len(b.ToleranceMM) != 2 {
		return "-"
	}
	return sys.Length(b.ToleranceMM[which])
}

// diameter is one over a bundle; a dash where nothing runs through it.
func diameter(sys unit.System, v unit.Millimetre) string {
	if v <= 0 {
		return "-"
	}
	return sys.Diameter(v)
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
		list.Text("clock", func(r endRow) string { return m.Clock(r.entered) }).InFile(
			list.Figure("key at, o'clock", func(r endRow) string { return hours(r.entered.Clock) }),
			list.Figure("boot to, o'clock", func(r endRow) string { return hours(r.entered.BootClock) })),
		list.Text("boot", func(r endRow) string { return list.Dash(r.entered.Boot.V) }),
		list.Figure("wired", func(r endRow) string { return fmt.Sprint(r.worked.Used) }),
		list.Figure("spare", func(r endRow) string { return fmt.Sprint(r.worked.Spare) }),
		list.Figure("reserved", func(r endRow) string { return fmt.Sprint(r.worked.Reserved) }),
		list.Figure("blank", func(r endRow) string { return fmt.Sprint(r.worked.Blank) }),
		list.Figure("plugs", func(r endRow) string { return fmt.Sprint(r.worked.SealPlugs) }),
	}, rows)
}

// hours is what a clock says; a dash where it is not given.
func hours(v model.Opt[int]) string {
	if !v.Set {
		return "-"
	}
	return fmt.Sprint(v.V)
}
