package meter

import (
	"fmt"
	"strings"

	"contralay/calc/phase/ends"
	"contralay/calc/query/lists"
	"contralay/model/catalogue"
	"contralay/model/compare"
	"contralay/model/unit"
	"contralay/ui/paper/cavity"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// The places on the pages of tests that the first page points to.
const (
	RingMark      = "ring-out"
	IsolationMark = "isolation"
	DropMark      = "loaded drop"
)

// The ring-out: each net once.

// ring is one test: a probe at each of two ends, or one end that must ring to nothing.
type ring struct {
	net   int // from 1
	first bool
	of    lists.Net
	to    lists.RungTo // End is "" for one that rings to nothing
}

// rings is every test, net by net.
func rings(m list.Maker) (out []ring) {
	for k, n := range lists.Nets(m.S) {
		if len(n.To) == 0 {
			out = append(out, ring{net: k + 1, first: true, of: n})
		}
		for j, to := range n.To {
			out = append(out, ring{k + 1, j == 0, n, to})
		}
	}
	return out
}

// open reports whether the end must ring to nothing.
func (r ring) open() bool { return r.to.End == "" }

func (r ring) toText() string {
	if r.open() {
		return "nothing"
	}
	return r.to.End
}

// by is the wires on the way.
func (r ring) by(m list.Maker) string {
	if r.open() {
		var ids []string
		for _, k := range r.of.Wires {
			ids = append(ids, m.H.Wires[k].ID)
		}
		return strings.Join(ids, " ")
	}
	return strings.Join(r.to.Via, " ")
}

// ohm is what is said of the copper on the way, where it is known.
func (r ring) ohm(says func(copper unit.Ohm) string) string {
	if r.open() || !r.to.Ohm.Set {
		return ""
	}
	return says(r.to.Ohm.V)
}

// fine is a resistance to a thousandth, coarse one to a tenth.
func fine(v unit.Ohm) string   { return unit.Fixed(v, 3) }
func coarse(v unit.Ohm) string { return unit.Fixed(v, 1) }

// RingTable is the ring-out as a file: a row for each test, a value in each cell, and what is read left blank.
func RingTable(m list.Maker) list.Table {
	return list.Of(list.Table{File: "ring-out", Title: "Ring-out"}, []list.Column[ring]{
		list.Figure("net", func(r ring) string { return fmt.Sprint(r.net) }),
		list.Text("group", func(r ring) string { return string(r.of.Group) }),
		list.Text("signal", func(r ring) string { return r.of.Signal }),
		list.Text("from", func(r ring) string { return r.of.From }),
		list.Text("rings to", ring.toText),
		list.Text("by way of", func(r ring) string { return r.by(m) }),
		list.Text("expect", func(r ring) string { return map[bool]string{true: "open", false: "rings"}[r.open()] }),
		list.Figure("copper at 20 C, ohm", func(r ring) string { return r.ohm(fine) }),
		list.Text("copper standing", func(r ring) string { return r.ohm(func(unit.Ohm) string { return string(r.to.Standing) }) }),
		list.Figure("four-wire meter with contacts, at most, ohm", func(r ring) string {
			return r.ohm(func(v unit.Ohm) string { return fine(v + lists.ContactOhm) })
		}),
		list.Figure("hand meter, under, ohm", func(r ring) string {
			return r.ohm(func(v unit.Ohm) string { return coarse(lists.HandOhm(v)) })
		}),
		list.Blank[ring]("reading bare, ohm"),
		list.Blank[ring]("reading with contacts, ohm"),
		list.Blank[ring]("bare"),
		list.Blank[ring]("pinned"),
		list.Blank[ring]("by"),
	}, rings(m))
}

// Ring is the ring-out as blocks: a section with its notes, and the tests in three columns, or two where each has a limit of its own.
func Ring(m list.Maker) []page.Block {
	all := rings(m)
	if len(all) == 0 {
		return nil
	}
	same, limit := standing(all), oneLimit(all)
	head := page.SubHeading("Ring-out")
	head.Mark = RingMark
	out := []page.Block{head, kept(page.Text(ringNote(m, all, same, limit), page.Small))}
	g := page.Grid{Columns: 3, Cols: []page.Col{{Head: "from"}, {Head: "rings to"}, {Head: "ohm", Align: list.ToRight}}}
	if limit == 0 {
		g.Columns = 2 // the ends of a net would break
		g.Cols = append(g.Cols, page.Col{Head: "hand", Align: list.ToRight})
	}
	g.Cols = append(g.Cols, page.Col{Head: "bare", Align: list.ByHand, Wide: 9.4}, page.Col{Head: "in", Align: list.ByHand, Wide: 6})
	for _, r := range all {
		line := page.Line{Cells: []page.Cell{cavity.EndCell(r.of.From, r.first), cavity.EndCell(r.toText(), false),
			{Text: r.fourWire(same)}}}
		if limit == 0 {
			line.Cells = append(line.Cells, page.Cell{Text: r.hand()})
		}
		line.Cells = append(line.Cells, page.Cell{}, page.Cell{})
		g.Lines = append(g.Lines, line)
	}
	return append(out, g.Block())
}

// oneLimit is the limit of a hand meter where all tests have the same; 0 where they do not.
func oneLimit(all []ring) (limit unit.Ohm) {
	for _, r := range all {
		if r.open() || !r.to.Ohm.Set {
			continue
		}
		hand := lists.HandOhm(r.to.Ohm.V)
		if limit > 0 && hand != limit {
			return 0
		}
		limit = hand
	}
	return limit
}

// standing is what all figures of copper share; "" where they do not.
func standing(all []ring) (same catalogue.Standing) {
	met := false
	for _, r := range all {
		if !r.to.Ohm.Set {
			continue
		}
		if !met {
			met, same = true, r.to.Standing
		}
		if same != r.to.Standing {
			same = ""
		}
	}
	return same
}

// fourWire is what a four-wire meter reads at most.
func (r ring) fourWire(same catalogue.Standing) string {
	switch {
	case r.open():
		return "open"
	case !r.to.Ohm.Set:
		return "-"
	case same == "":
		return fine(r.to.Ohm.V) + list.Mem(r.to.Standing)
	}
	return fine(r.to.Ohm.V)
}

// hand is what a hand meter reads less than.
func (r ring) hand() string {
	switch {
	case r.open():
		return "open"
	case !r.to.Ohm.Set:
		return "-"
	}
	return coarse(lists.HandOhm(r.to.Ohm.V))
}

// ringNote says how it is rung out, and what an independent list says of the same ends. limit is that of a hand
// meter, 0 where each row has its own.
func ringNote(m list.Maker, all []ring, same catalogue.Standing, limit unit.Ohm) string {
	hand := "less than the column hand"
	if limit > 0 {
		hand = "under " + coarse(limit) + " ohm"
	}
	note := fmt.Sprintf("%s, %s. Keep one probe at \"from\". Ring out bare, before anything covers the wires, and with contacts in, "+
		"before tubes are shrunk. Devices off. Nothing else may ring. Hand meter, leads and all: %s. Four-wire meter: at most "+
		"the ohm of the row, copper at 20 C; %s more with contacts in (limits: common practice, no source).",
		count(all[len(all)-1].net, "net"), count(len(all), "test"), hand, unit.Fixed(lists.ContactOhm, 2))
	for _, r := range all {
		if !r.open() && !r.to.Ohm.Set {
			note += " A dash: not known; it must ring."
			break
		}
	}
	if same == catalogue.Memory {
		note += " The ohm rest on figures of the wire from memory (~): check them against the spool."
	}
	for _, n := range loops(m) {
		note += " " + n
	}
	return note + listedNote(m)
}

// loops says where ringing does not prove a wire.
func loops(m list.Maker) (out []string) {
	for _, n := range lists.Nets(m.S) {
		if len(n.Loops) > 0 {
			out = append(out, fmt.Sprintf("Ring %s before it is joined: in the net of %s another wire joins the same ends.",
				m.WireIDs(n.Loops), n.From))
		}
	}
	return out
}

// listedNote is what an independent list says of the same ends.
func listedNote(m list.Maker) string {
	if len(m.H.Listed) == 0 {
		return ""
	}
	from := list.Dash(m.H.Head.ListedFrom.V)
	if n := len(ends.Disagreements(m.S)); n > 0 {
		return fmt.Sprintf(" Held against an independent list, %s: %d DISAGREE, see the first page. Do not build before that is "+
			"settled.", from,
			n)
	}
	note := " Held against an independent list, " + from + ": it joins the same in " + heldText(compare.Held(*m.H)) + "."
	if silent := unlisted(m); len(silent) > 0 {
		note += " It does not name, and nothing there is held: " + strings.Join(silent, ", ") + "."
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

// unlisted is the wired ends that the independent list says nothing of.
func unlisted(m list.Maker) (out []string) {
	named := map[string]bool{}
	for _, n := range m.H.Listed {
		for _, e := range n.Ends {
			named[list.TermOf(e)] = true
		}
	}
	for k := range m.H.Terminations {
		if id := m.H.Terminations[k].ID; !named[id] && m.S.Terms[k].Used > 0 {
			out = append(out, id)
		}
	}
	return out
}

// count is a number of things in words.
func count(n int, of string) string {
	if n == 1 {
		return "1 " + of
	}
	return fmt.Sprint(n, " ", of, "s")
}

func kept(b page.Block) page.Block {
	b.KeepNext = true
	return b
}
