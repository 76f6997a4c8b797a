package paper

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// The tables of places: branches and ends.

// datum is where a branch's length is taken from at one of its ends.
func (m maker) datum(id string) string {
	if t, ok := m.s.Index.Termination[id]; ok {
		if d := m.h.Terminations[t].Datum.V; d != "" {
			return string(d) + " of " + id
		}
		return id
	}
	return "centre of " + id
}

// clock is how a termination is clocked, seen from the wire side.
func (m maker) clock(t *model.Termination) string {
	var out []string
	if t.Clock.Set {
		out = append(out, fmt.Sprintf("key at %d", t.Clock.V))
	}
	if t.BootClock.Set {
		out = append(out, fmt.Sprintf("boot to %d", t.BootClock.V))
	}
	return dash(strings.Join(out, ", "))
}

// band is a diameter with its band from the tolerance of its wires.
func (m maker) band(b *sheet.Branch) string {
	if b.OverMM <= 0 {
		return "-"
	}
	return fmt.Sprintf("%s%s (%s to %s)%s", m.sys.Diameter(b.OverMM), mem(b.Standing), m.sys.Diameter(b.OverMinMM),
		m.sys.Diameter(b.OverMaxMM), m.learned(b))
}

// learned is the prediction, what was learned on it, and its spread.
func (m maker) learned(b *sheet.Branch) string {
	l := &b.Learned
	if l.Of == "" {
		return ""
	}
	return fmt.Sprintf("; predicted %s, learned %s, spread %s from %d readings", m.sys.Diameter(l.PredictedMM),
		m.signed(b.OverMM-l.PredictedMM), m.sys.Fine(b.OverMM*unit.Millimetre(l.Spread)), l.Readings)
}

// signed is a difference with its sign.
func (m maker) signed(v unit.Millimetre) string {
	if v < 0 {
		return "-" + m.sys.Fine(-v)
	}
	return "+" + m.sys.Fine(v)
}

func (m maker) tolerance(b *model.Branch) string {
	if t := b.ToleranceMM; len(t) == 2 {
		return fmt.Sprintf("-%s +%s", m.sys.Length(t[0]), m.sys.Length(t[1]))
	}
	return "-"
}

// branchRow is a branch as it is entered and as it is worked out.
type branchRow struct {
	entered *model.Branch
	worked  *sheet.Branch
}

func (m maker) branches() Table {
	var rows []branchRow
	for k := range m.h.Branches {
		rows = append(rows, branchRow{&m.h.Branches[k], &m.s.Branches[k]})
	}
	return tableOf(Table{File: "branches", Title: "Branches", Note: "Lengths along the centre line."}, []column[branchRow]{
		{"branch", toLeft, func(r branchRow) string { return r.entered.ID }},
		{"name", toLeft, func(r branchRow) string { return r.entered.Name.V }},
		{"from", toLeft, func(r branchRow) string { return m.datum(r.entered.From) }},
		{"to", toLeft, func(r branchRow) string { return m.datum(r.entered.To) }},
		{m.in("length"), toRight, func(r branchRow) string { return long(m.sys, r.entered) }},
		{m.in("tolerance"), toLeft, func(r branchRow) string { return m.tolerance(r.entered) }},
		{"pieces", toRight, func(r branchRow) string { return fmt.Sprint(len(r.worked.Components)) }},
		{m.in("over"), toLeft, func(r branchRow) string { return m.band(r.worked) }},
		{m.in("in sheath"), toLeft, func(r branchRow) string { return m.inSheath(r.worked) }},
		{m.in("bend at least"), toRight, func(r branchRow) string { return m.sys.AtLeast(r.worked.Bend.MinMM) }},
		{"surroundings", toLeft, surroundings},
	}, rows)
}

// inSheath is the diameter over the sheath of a branch.
func (m maker) inSheath(b *sheet.Branch) string {
	if !b.Sheath.Tube.Set || !b.Sheath.Verdict.Wraps {
		return "-"
	}
	return m.sys.Diameter(b.Sheath.Verdict.OverMM)
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

func (m maker) ends() Table {
	var rows []endRow
	for k := range m.h.Terminations {
		rows = append(rows, endRow{&m.h.Terminations[k], &m.s.Terms[k]})
	}
	return tableOf(Table{File: "ends", Title: "Ends", Note: "Clocks seen from the wire side."}, []column[endRow]{
		{"end", toLeft, func(r endRow) string { return r.entered.ID }},
		{"name", toLeft, func(r endRow) string { return r.entered.Name.V }},
		{"device", toLeft, func(r endRow) string { return r.entered.Device.V }},
		{"insert", toLeft, func(r endRow) string { return dash(r.entered.Insert.V) }},
		{"contacts", toLeft, func(r endRow) string { return dash(string(r.entered.Gender.V)) }},
		{"key", toLeft, func(r endRow) string { return dash(r.entered.Key.V) }},
		{"mount", toLeft, func(r endRow) string { return dash(string(r.entered.Mount.V)) }},
		{"clock", toLeft, func(r endRow) string { return m.clock(r.entered) }},
		{"boot", toLeft, func(r endRow) string { return dash(r.entered.Boot.V) }},
		{"wired", toRight, func(r endRow) string { return fmt.Sprint(r.worked.Used) }},
		{"spare", toRight, func(r endRow) string { return fmt.Sprint(r.worked.Spare) }},
		{"reserved", toRight, func(r endRow) string { return fmt.Sprint(r.worked.Reserved) }},
		{"blank", toRight, func(r endRow) string { return fmt.Sprint(r.worked.Blank) }},
		{"plugs", toRight, func(r endRow) string { return fmt.Sprint(r.worked.SealPlugs) }},
	}, rows)
}

func termOf(end string) string {
	t, _, _ := strings.Cut(end, ":")
	return t
}

// word is a word before a text, or nothing where there is none.
func word(before, text string) string {
	if text == "" {
		return ""
	}
	return before + text
}

func nonEmpty(all ...string) []string {
	return slices.DeleteFunc(all, func(s string) bool { return s == "" || s == "-" })
}
