package paper

import (
	"fmt"
	"strings"

	"contralay/calc/phase/ends"
	"contralay/calc/query/lists"
	"contralay/model/compare"
	"contralay/model/unit"
	"contralay/ui/paper/list"
)

// What is tested at the ends: what rings to what, and what is held apart.

// rung is one line of the ring-out: a cavity, and one end that it must ring to.
type rung struct {
	end, cavity, wire string
	to, via, ohm      string
}

// ringOut is what must ring at each cavity, and through how much copper.
func (m maker) ringOut() list.Table {
	var rows []rung
	for _, r := range lists.RingOut(m.S) {
		rows = append(rows, m.rungs(r)...)
	}
	return list.Of(list.Table{File: "ring-out", Title: "Ring-out, by connector", Note: m.ringNote()}, []list.Column[rung]{
		list.Text("end", func(r rung) string { return r.end }),
		list.Text("cavity", func(r rung) string { return r.cavity }),
		list.Text("wire", func(r rung) string { return r.wire }),
		list.Text("rings to", func(r rung) string { return r.to }),
		list.Text("by way of", func(r rung) string { return r.via }),
		list.Figure("at most, ohm", func(r rung) string { return r.ohm }),
		list.Blank[rung]("bare"),
		list.Blank[rung]("pinned"),
	}, rows)
}

// ringNote says how it is rung out, and what an independent list says of the same ends.
func (m maker) ringNote() string {
	note := "Twice: bare, before anything covers the wires, and with contacts in, before anything is shrunk. Ohm of the copper at 20 C " +
		"and at most; " +
		"contacts add a few thousandths, the meter's leads are taken off. What is not listed must not ring."
	if from := m.H.Head.ListedFrom.V; len(m.H.Listed) > 0 {
		if n := len(ends.Disagreements(m.S)); n == 0 {
			note += " Held against an independent list, " + list.Dash(from) + ": it joins the same in " + heldText(compare.Held(*m.H)) + "."
			if silent := m.unlisted(); len(silent) > 0 {
				note += " It does not name, and nothing there is held: " + strings.Join(silent, ", ") + "."
			}
		} else {
			note += fmt.Sprintf(" Held against an independent list, %s: %d DISAGREE, see the first page. Do not build before that is "+
				"settled.", list.Dash(from), n)
		}
	}
	return note
}

// heldText is how much of a harness its independent list has.
func heldText(c compare.Count) string {
	if c.Matched == c.All {
		return fmt.Sprintf("all %d wired cavities", c.All)
	}
	return fmt.Sprintf("%d of %d wired cavities", c.Matched, c.All)
}

// rungs is the lines of one cavity: one for each end it rings to, or one that it rings to
// nothing.
func (m maker) rungs(r lists.Ring) []rung {
	of := rung{end: m.H.Terminations[r.Termination].ID, cavity: r.Cavity, wire: "drain of " + r.Drain, to: "nothing", ohm: "open"}
	if r.Wire >= 0 {
		of.wire = m.H.Wires[r.Wire].ID
	}
	if len(r.To) == 0 {
		return []rung{of}
	}
	var out []rung
	for _, to := range r.To {
		of.to, of.via, of.ohm = to.End, strings.Join(to.Via, ", "), "rings"
		if to.Ohm.Set {
			of.ohm = unit.Fixed(to.Ohm.V, 3) + list.Mem(to.Standing)
		}
		out = append(out, of)
	}
	return out
}

// unlisted is the wired ends that the independent list says nothing of.
func (m maker) unlisted() []string {
	named := map[string]bool{}
	for _, n := range m.H.Listed {
		for _, e := range n.Ends {
			named[list.TermOf(e)] = true
		}
	}
	var out []string
	for k := range m.H.Terminations {
		if id := m.H.Terminations[k].ID; !named[id] && m.S.Terms[k].Used > 0 {
			out = append(out, id)
		}
	}
	return out
}

// isolation is what is held against what.
func (m maker) isolation() list.Table {
	var rows []string
	for k := range m.H.Terminations {
		if m.S.Terms[k].Used+m.S.Terms[k].Spare > 0 {
			rows = append(rows, m.H.Terminations[k].ID)
		}
	}
	x := lists.Isolation
	return list.Of(list.Table{Title: "Isolation",
		Note: fmt.Sprintf("Each net against every other, against shields and shells: %s megohm at least, at %s to %s V DC, within %s min "+
			"(%s). Devices off; never more volts than the least rated part stands.", unit.Fixed(x.Megohm, 0),
			unit.Fixed(x.Least, 0), unit.Fixed(x.Top, 0), unit.Fixed(x.Minutes, 0), x.Source)},
		[]list.Column[string]{
			list.Text("at", func(end string) string { return end }),
			list.Blank[string]("volts used"),
			list.Blank[string]("least reading, megohm"),
			list.Blank[string]("between"),
			list.Blank[string]("by"),
		}, rows)
}
