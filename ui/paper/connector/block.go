package connector

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/query/lists"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/cavity"
	"contralay/ui/paper/face"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// mostShared is how many cavities a connector without an insert may have to share the table of all other ends.
const mostShared = 10

// Large are the terminations that have a block of their own, in file order: those with an insert, which may
// have a face, and those with many cavities.
func Large(m list.Maker) (out []int) {
	for t := range m.H.Terminations {
		if isLarge(m, t) {
			out = append(out, t)
		}
	}
	return out
}

func isLarge(m list.Maker, t int) bool {
	_, known := m.S.Cat.Insert(m.H.Terminations[t].Insert.V)
	return known || len(m.S.Terms[t].Cavities) > mostShared
}

// Blocks are the connectors that have a block of their own, a part of the section for each, then all other
// ends. A connector that goes on a page is not cut.
func Blocks(m list.Maker) []page.Block {
	var out []page.Block
	for _, t := range Large(m) {
		out = append(out, block(m, t)...)
	}
	return append(out, others(m)...)
}

// block is one connector: its head, how its contacts are crimped, its face, and the list of its cavities.
func block(m list.Maker, t int) []page.Block {
	e, pins := &m.H.Terminations[t], Pins(m, t)
	head := page.SubHeading(strings.TrimSpace(e.ID + "  " + e.Name.V))
	head.Part = e.ID
	top := []page.Block{head}
	if rows := crimpsOf(m, t); len(rows) > 0 {
		top = append(top, kept(crimpGrid(m, rows)))
	}
	grid := []page.Block{pinGrid(m, pins)}
	words := func(wide unit.Millimetre) []page.Block {
		return append([]page.Block{page.TextIn(about(m, t), page.Small, wide), page.TextIn(Tick, page.Small, wide)},
			empties("", pins, wide)...)
	}
	bare := func(why string) []page.Block {
		out := []page.Block{head, kept(page.Text(about(m, t)+" "+why+" "+Tick, page.Small))}
		return whole(append(out, top[1:]...), append(grid, empties("", pins, page.Wide)...))
	}
	f, why := faceOf(m, t, pins)
	if why != "" {
		return bare(why)
	}
	// The face stands over the list on one page where there is room for both, else on a page before it.
	d, ok := drawnFace(f, false, func(d face.Drawing) bool { return onePage(top, withWords(f, d, words), grid) })
	if !ok {
		d, ok = drawnFace(f, true, func(d face.Drawing) bool { return onePage(top, withWords(f, d, words)) })
	}
	if !ok {
		return bare("No face is drawn: a page has no room for one with letters of 9 pt. Pin by the list.")
	}
	return whole(append(top, withWords(f, d, words)...), grid)
}

// onePage reports whether blocks go on one page together.
func onePage(parts ...[]page.Block) bool {
	var all []page.Block
	for _, p := range parts {
		all = append(all, p...)
	}
	return page.Stack(all...).High <= page.BodyHigh
}

// whole is blocks that stay on one page where they fit on one; the last ones are cut where they do not.
func whole(top, tail []page.Block) []page.Block {
	all := append(append([]page.Block{}, top...), tail...)
	if onePage(all) {
		return []page.Block{page.Stack(all...)}
	}
	return all
}

func kept(b page.Block) page.Block {
	b.KeepNext = true
	return b
}

// about is what a connector is, in a few sentences.
func about(m list.Maker, t int) string {
	e, worked := &m.H.Terminations[t], &m.S.Terms[t]
	insert := e.Insert.V
	if i, known := m.S.Cat.Insert(insert); known {
		var other []string
		for _, n := range i.Names() {
			if n != insert {
				other = append(other, n)
			}
		}
		if insert = "insert " + insert; len(other) > 0 {
			insert += " (" + strings.Join(other, ", ") + ")"
		}
	} else if insert != "" {
		insert = "insert " + insert + ", in no catalogue"
	}
	gender := map[model.Gender]string{model.GenderPin: "pins", model.GenderSocket: "sockets"}[e.Gender.V]
	clock := ""
	if e.Clock.Set {
		clock = fmt.Sprintf(" at %d o'clock", e.Clock.V)
	}
	boot := e.Boot.V
	if !strings.HasPrefix(boot, "boot") {
		boot = list.Word("boot ", boot)
	}
	if e.BootClock.Set {
		boot = strings.TrimSpace(boot + fmt.Sprintf(" to %d o'clock", e.BootClock.V))
	}
	says := strings.Join(list.NonEmpty(insert, gender, list.Word("key ", e.Key.V)+clock, string(e.Mount.V), boot,
		list.Word("fitted to ", e.Device.V)), ", ")
	var counts []string
	for _, c := range []struct {
		n    int
		what string
	}{{worked.Used, "wired"}, {worked.Spare, "spare"}, {worked.Reserved, "kept free"}, {worked.Blank, "empty"}} {
		if c.n > 0 {
			counts = append(counts, fmt.Sprint(c.n, " ", c.what))
		}
	}
	if says != "" {
		says = list.Capital(strings.TrimSpace(says)) + ". "
	}
	return says + fmt.Sprintf("%d cavities: %s.", len(worked.Cavities), strings.Join(counts, ", ")) + shellText(m, t)
}

// pinGrid is what goes into each cavity that is not empty, in columns side by side.
func pinGrid(m list.Maker, pins []Pin) page.Block {
	g := page.Grid{Columns: 3, Cols: []page.Col{{Head: "cavity"}, {Head: "wire", Bold: true}, {Head: "colour"},
		{Head: "bare", Align: list.ByHand, Wide: boxWide}, {Head: "in", Align: list.ByHand, Wide: inWide}}}
	for _, p := range pins {
		for _, line := range linesOf(m, p) {
			g.Lines = append(g.Lines, page.Line{Cells: append(line, page.Cell{}, page.Cell{})})
		}
	}
	if len(g.Lines) <= mostShared {
		g.Columns = 2
	}
	b := g.Block()
	b.Gap = 2
	return b
}

// Boxes to tick, mm.
const boxWide, inWide unit.Millimetre = 9.4, 6

// linesOf is a row for each thing in a cavity: cavity, wire, colour; none where it is empty.
func linesOf(m list.Maker, p Pin) (out [][]page.Cell) {
	for _, r := range rowsOf(m, p) {
		switch {
		case r.wire != nil:
			out = append(out, []page.Cell{cellOf(p), {Text: r.wire.ID}, {Text: colourOf(r.wire)}})
		case r.Drain != "":
			out = append(out, []page.Cell{cellOf(p), {Text: "drain"}, {Text: "shield of " + r.Drain}})
		}
	}
	return out
}

// cellOf is the name of a cavity, and what else it is called.
func cellOf(p Pin) page.Cell {
	return cavity.Cell("", p.Cavity, alsoText(p), true)
}

// alsoText is what else a cavity is called; "" where it has one name.
func alsoText(p Pin) string {
	if len(p.Also) == 0 {
		return ""
	}
	return " (" + strings.Join(p.Also, ", ") + ")"
}

// empties is what closes the cavities without a wire, a sentence in a width for each way; before begins each.
func empties(before string, pins []Pin, wide unit.Millimetre) []page.Block {
	type kind struct{ closed, plug, state string }
	var order []kind
	names := map[kind][]string{}
	for _, p := range pins {
		if p.Filled() {
			continue
		}
		k := kind{p.Closed, p.Plug, p.State}
		if names[k] == nil {
			order = append(order, k)
		}
		names[k] = append(names[k], p.Cavity)
	}
	var out []page.Block
	for _, k := range order {
		says := "Nothing goes in:"
		if k.closed != "" {
			says = list.Capital(k.closed) + list.Word(" ", k.plug) + " in:"
		}
		if k.state == reserved {
			says = "Kept free for later. " + says
		}
		out = append(out, cavity.Sentence(append(cavity.Words(before+says), cavity.Names(names[k], ".")...), wide))
	}
	return out
}

// Tick says what the boxes of a connector are for.
const Tick = "Tick bare when it rang before its contact went on; tick in when the contact is in, was pulled at and rang again."

// others are all ends without a block of their own, in one table: a title for each, a row for each thing in
// each cavity.
func others(m list.Maker) []page.Block {
	var terms []int
	for t := range m.H.Terminations {
		if !isLarge(m, t) && len(m.S.Terms[t].Cavities) > 0 {
			terms = append(terms, t)
		}
	}
	if len(terms) == 0 {
		return nil
	}
	heading := page.SubHeading("All other ends")
	heading.Part = "others"
	out := []page.Block{heading}
	rows := crimpsOf(m, terms...)
	if len(rows) > 0 {
		out = append(out, kept(crimpGrid(m, rows)))
	}
	var lines []endLine
	var closed []page.Block
	for _, t := range terms {
		pins, first := Pins(m, t), true
		for _, p := range pins {
			for _, cells := range linesOf(m, p) {
				cells[0] = cavity.Cell(p.End+":", p.Cavity, alsoText(p), first)
				first = false
				lines = append(lines, endLine{p.End, cells, stripOf(m, p), contactOf(p)})
			}
		}
		closed = append(closed, empties(m.H.Terminations[t].ID+": ", pins, page.Wide)...)
	}
	note, g := othersGrid(lines, studs(m, terms))
	for _, r := range rows {
		if r.StripMin <= 0 {
			note += " Strip - : as the maker's sheet of the contact says."
			break
		}
	}
	out = append(out, kept(page.Text(Tick+note, page.Small)), g.Block())
	for _, t := range terms {
		if says := studs(m, []int{t})[m.H.Terminations[t].ID]; says != "" {
			out = append(out, page.Text(says, page.Small))
		}
	}
	return append(out, closed...)
}

// endLine is one thing in a cavity of a small end: its cells, and how its contact is made.
type endLine struct {
	end            string
	cells          []page.Cell
	strip, contact string
}

// othersGrid is the table of small ends. A column that would say the same in every row is left out, for the table of
// the crimps says it; ends without a contact are named in the note.
func othersGrid(lines []endLine, studs map[string]string) (note string, g page.Grid) {
	strips, contacts := map[string]bool{}, map[string]bool{}
	var without []string
	for _, l := range lines {
		strips[l.strip] = true
		if l.contact != "-" {
			contacts[l.contact] = true
		} else if !slices.Contains(without, l.end) && studs[l.end] == "" {
			without = append(without, l.end)
		}
	}
	g = page.Grid{Columns: 3, Cols: []page.Col{{Head: "end"}, {Head: "wire", Bold: true}, {Head: "colour"}}}
	if len(strips) > 1 {
		g.Columns, g.Cols = 2, append(g.Cols, page.Col{Head: "strip"})
	}
	if len(contacts) > 1 {
		g.Columns, g.Cols = 2, append(g.Cols, page.Col{Head: "contact"})
	} else if len(without) > 0 {
		note = " No size of contact is given for " + strings.Join(without, ", ") + "."
	}
	g.Cols = append(g.Cols, page.Col{Head: "bare", Align: list.ByHand, Wide: boxWide}, page.Col{Head: "in", Align: list.ByHand,
		Wide: inWide})
	for _, l := range lines {
		cells := l.cells
		if len(strips) > 1 {
			cells = append(cells, page.Cell{Text: l.strip})
		}
		if len(contacts) > 1 {
			cells = append(cells, page.Cell{Text: l.contact})
		}
		g.Lines = append(g.Lines, page.Line{Cells: append(cells, page.Cell{}, page.Cell{})})
	}
	return note, g
}

// studs is how the ring terminals of ends on studs are made, by the id of the end: no table has them.
func studs(m list.Maker, terms []int) map[string]string {
	out := map[string]string{}
	for _, t := range terms {
		e := &m.H.Terminations[t]
		size, is := lists.StudOf(e)
		if !is {
			continue
		}
		says := e.ID + ": ring terminal on " + strings.TrimSpace("a stud "+size)
		for _, p := range Pins(m, t) {
			if len(p.Wires) == 0 {
				continue
			}
			count := map[string]int{}
			var sizes []string
			for _, k := range p.Wires {
				size := list.Size(&m.H.Wires[k])
				if count[size]++; count[size] == 1 {
					sizes = append(sizes, size)
				}
			}
			for k, size := range sizes {
				sizes[k] = fmt.Sprintf("%d x %s", count[size], size)
			}
			says += fmt.Sprintf(", %s in one barrel", strings.Join(sizes, " and "))
		}
		out[e.ID] = says + ". Strip, tool, pull: its maker's sheet. Samples, N: ____ ____ ____"
	}
	return out
}

func stripOf(m list.Maker, p Pin) string {
	if !p.Crimp.Set {
		return "-"
	}
	return stripText(m.Sys, p.Crimp.V)
}

// contactOf is the size of the contact in a cavity.
func contactOf(p Pin) string {
	if !p.Crimp.Set {
		return "-"
	}
	return list.Dash(p.Crimp.V.Contact)
}
