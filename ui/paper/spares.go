package paper

import (
	"fmt"
	"strings"

	"contralay/calc/phase/ends"
	"contralay/calc/phase/over"
	"contralay/model"
)

// What goes with the harness for whoever mends it: its spares, and the loops left in it.

// spareRow is one spare: its wire, the branches it runs through, and where its end lies.
type spareRow struct {
	wire      *model.Wire
	way, lies string
}

// spares is where each spare is found when it is wanted.
func (m maker) spares() Table {
	caps := map[int]ends.Cap{}
	for _, c := range ends.Caps(m.s) {
		caps[c.Wire] = c
	}
	var rows []spareRow
	for k := range m.h.Wires {
		w := &m.h.Wires[k]
		if w.Role.V != model.RoleSpare {
			continue
		}
		var way []string
		for _, b := range m.s.Wires[k].Path {
			way = append(way, m.h.Branches[b].ID)
		}
		lies := "a cavity at both ends"
		if c, is := caps[k]; is {
			lies = m.capLies(c)
		}
		rows = append(rows, spareRow{w, strings.Join(way, " "), lies})
	}
	return tableOf(Table{File: "spares", Title: "Spares card", Note: "Goes with the harness: what is free in it, and where."},
		[]column[spareRow]{
			{"wire", toLeft, func(r spareRow) string { return r.wire.ID }},
			{"size", toLeft, func(r spareRow) string { return Size(r.wire) }},
			{"colour", toLeft, func(r spareRow) string { return Colour(r.wire.Colour.V) }},
			{"from", toLeft, func(r spareRow) string { return m.end(r.wire, true) }},
			{"to", toLeft, func(r spareRow) string { return m.end(r.wire, false) }},
			{"runs through", toLeft, func(r spareRow) string { return r.way }},
			{"where its end lies", toLeft, func(r spareRow) string { return r.lies }},
		}, rows)
}

func (m maker) capLies(c ends.Cap) string {
	if c.Branch < 0 {
		return "capped at " + c.Place
	}
	return fmt.Sprintf("capped, folded back %s %s; its cap at %s of %s", m.sys.Length(c.FoldMM), m.sys.Name(),
		m.sys.Length(c.AtMM), m.h.Branches[c.Branch].ID)
}

// loopRow is the loop at one end, and how often a contact was made anew out of it.
type loopRow struct {
	over.LoopRoom
	end  string
	used int
}

// loops is how often the contacts of an end can be made anew, and how often they were.
func (m maker) loops() Table {
	used := map[string]int{}
	for i := range m.h.Builds {
		for _, a := range m.h.Builds[i].Again {
			used[a.End] += a.Times
		}
	}
	var rows []loopRow
	for k := range m.h.Terminations {
		row := loopRow{LoopRoom: over.LoopRoomOf(m.s, k), end: m.h.Terminations[k].ID}
		for end, times := range used {
			if termOf(end) == row.end {
				row.used = max(row.used, times)
			}
		}
		rows = append(rows, row)
	}
	return tableOf(Table{File: "loops", Title: "Loop ledger", Note: "Each new contact takes some loop. Strike one out when it is used."},
		[]column[loopRow]{
			{"end", toLeft, func(r loopRow) string { return r.end }},
			{m.in("loop"), toRight, func(r loopRow) string { return m.sys.Length(r.LoopMM) }},
			{"good for", toRight, func(r loopRow) string { return fmt.Sprint(r.LoopRoom.Again) }},
			{"used so far", toRight, func(r loopRow) string { return fmt.Sprint(r.used) }},
			{"left", toRight, func(r loopRow) string { return fmt.Sprint(max(0, r.LoopRoom.Again-r.used)) }},
			{"struck out", byHand, nil},
		}, rows)
}
