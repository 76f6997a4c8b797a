package paper

import (
	"fmt"
	"strings"

	"contralay/calc/phase/ends"
	"contralay/calc/phase/over"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/list"
)

// What goes with the harness for whoever mends it: its spares, and the loops left in it.

// spareRow is one spare: its wire, the branches it runs through, and where its end lies.
type spareRow struct {
	wire      *model.Wire
	way, lies string
	cap       *ends.Cap // where it is capped; nil: it has a cavity at both ends
}

// spares is where each spare is found when it is wanted.
func (m maker) spares() list.Table {
	caps := map[int]ends.Cap{}
	for _, c := range ends.Caps(m.S) {
		caps[c.Wire] = c
	}
	var rows []spareRow
	for k := range m.H.Wires {
		w := &m.H.Wires[k]
		if w.Role.V != model.RoleSpare {
			continue
		}
		var way []string
		for _, b := range m.S.Wires[k].Path {
			way = append(way, m.H.Branches[b].ID)
		}
		row := spareRow{w, strings.Join(way, " "), "a cavity at both ends", nil}
		if c, is := caps[k]; is {
			row.lies, row.cap = m.capLies(c), &c
		}
		rows = append(rows, row)
	}
	wire := func(r spareRow) *model.Wire { return r.wire }
	capped := func(length func(c ends.Cap) unit.Millimetre) func(spareRow) string {
		return func(r spareRow) string {
			if r.cap == nil || r.cap.Branch < 0 {
				return "-"
			}
			return m.Sys.Length(length(*r.cap))
		}
	}
	return list.Of(list.Table{File: "spares", Title: "Spares card", Note: "Goes with the harness: what is free in it, and where."},
		[]list.Column[spareRow]{
			list.Text("wire", func(r spareRow) string { return r.wire.ID }),
			list.SizeOf(wire),
			list.ColourOf(wire),
			list.Text("from", func(r spareRow) string { return m.End(r.wire, true) }),
			list.Text("to", func(r spareRow) string { return m.End(r.wire, false) }),
			list.Text("runs through", func(r spareRow) string { return r.way }),
			list.Text("where its end lies", func(r spareRow) string { return r.lies }).InFile(
				list.Text("capped on branch", m.cappedOn),
				list.Figure(m.In("cap at"), capped(func(c ends.Cap) unit.Millimetre { return c.AtMM })),
				list.Figure(m.In("folded back"), capped(func(c ends.Cap) unit.Millimetre { return c.FoldMM }))),
		}, rows)
}

// cappedOn is the branch that the folded end of a capped spare lies on.
func (m maker) cappedOn(r spareRow) string {
	if r.cap == nil || r.cap.Branch < 0 {
		return "-"
	}
	return m.H.Branches[r.cap.Branch].ID
}

func (m maker) capLies(c ends.Cap) string {
	if c.Branch < 0 {
		return "capped at " + c.Place
	}
	return fmt.Sprintf("capped, folded back %s %s; its cap at %s of %s", m.Sys.Length(c.FoldMM), m.Sys.Name(),
		m.Sys.Length(c.AtMM), m.H.Branches[c.Branch].ID)
}

// loopRow is the loop at one end, and how often a contact was made anew out of it.
type loopRow struct {
	over.LoopRoom
	end  string
	used int
}

// loops is how often the contacts of an end can be made anew, and how often they were.
func (m maker) loops() list.Table {
	used := m.usedLoops()
	var rows []loopRow
	for k := range m.H.Terminations {
		id := m.H.Terminations[k].ID
		rows = append(rows, loopRow{LoopRoom: over.LoopRoomOf(m.S, k), end: id, used: used[id]})
	}
	return list.Of(list.Table{File: "loops", Title: "Loop ledger",
		Note: "Each new contact takes some loop. Strike one out when it is used."},
		[]list.Column[loopRow]{
			list.Text("end", func(r loopRow) string { return r.end }),
			list.Figure(m.In("loop"), func(r loopRow) string { return m.Sys.Length(r.LoopMM) }),
			list.Figure("good for", func(r loopRow) string { return fmt.Sprint(r.LoopRoom.Again) }),
			list.Figure("used so far", func(r loopRow) string { return fmt.Sprint(r.used) }),
			list.Figure("left", func(r loopRow) string { return fmt.Sprint(max(0, r.LoopRoom.Again-r.used)) }),
			list.Blank[loopRow]("struck out").InFile(),
		}, rows)
}

// usedLoops is how often the contacts of each end were made again: those of the cavity that was, most often.
func (m maker) usedLoops() map[string]int {
	times, out := map[string]int{}, map[string]int{}
	for i := range m.H.Builds {
		for _, a := range m.H.Builds[i].Again {
			times[a.End] += a.Times
		}
	}
	for end, n := range times {
		out[list.TermOf(end)] = max(out[list.TermOf(end)], n)
	}
	return out
}
