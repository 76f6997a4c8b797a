package set

import (
	"slices"
	"strings"

	"contralay/calc/query/lists"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/connector"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// Kit is what is picked before the work begins: first what cannot be ordered yet, then wire by spool, parts, and the tools with
// their numbers, each with room for its lot.
func Kit(m list.Maker) []page.Block {
	rows := lists.Bill(m.S)
	out := []page.Block{page.Section(KitName)}
	if open := slices.IndexFunc(rows, func(r lists.BillRow) bool { return r.Open == "" }); open != 0 {
		out = append(out, unsettled(m, rows[:max(open, 0)])...)
		rows = rows[max(open, 0):]
	}
	if says := unnumbered(m, rows); says != "" {
		out = append(out, page.Text(says, page.Small))
	}
	out = append(out, spools(rows).Block())
	g := page.Grid{Cols: []page.Col{{Head: "part"}, {Head: "need", Align: list.ToRight, Bold: true}, {Head: "order", Align: list.ToRight},
		{Head: "lot", Align: list.ByHand}}, Columns: 2}
	group, of := "", map[string]int{}
	for _, r := range rows {
		of[r.Group]++
	}
	for _, r := range rows {
		if r.Group == "wire" {
			continue
		}
		says := partOf(m, r)
		switch {
		case of[r.Group] < 6: // a title would take room that the page has not
			says = r.Group + " " + says
		case r.Group != group:
			g.Lines = append(g.Lines, page.Line{Title: r.Group, KeepNext: true})
		}
		group = r.Group
		g.Lines = append(g.Lines, page.Cells(says, amount(r, r.Need)+list.Mem(r.Standing), amount(r, r.Order), ""))
	}
	g.Lines = append(g.Lines, page.Line{Title: "tools, with their numbers", KeepNext: true})
	for _, tool := range tools(m) {
		g.Lines = append(g.Lines, page.Cells(tool, "", "", ""))
	}
	wire := ""
	if all := ordered(rows); all != "" {
		wire = "Wire to order: " + all + ". "
	}
	note := page.Text(wire+"Order adds 10 % to what is cut, 5 % to contacts, "+
		"seals and plugs, and samples; the shelf is taken off. Have wipes, solvent, marker ribbon.", page.Small)
	note.Gap = 2
	note.KeepNext = true
	return append(out, note, g.Block())
}

// unsettled is what cannot be ordered yet, and why: a sentence for each reason.
func unsettled(m list.Maker, rows []lists.BillRow) []page.Block {
	head := page.SubHeading("To settle before you order")
	head.KeepNext = true
	out := []page.Block{head}
	var whys []string
	for _, r := range rows {
		if !slices.Contains(whys, r.Open) {
			whys = append(whys, r.Open)
		}
	}
	for _, why := range whys {
		var parts []string
		group := ""
		for _, r := range rows {
			if r.Open != why {
				continue
			}
			says := amount(r, r.Need) + " x " + partOf(m, r)
			if what := strings.TrimSpace(r.Group + " " + list.Colour(r.Colour)); what != group {
				group = what
				says = what + ": " + says
			}
			parts = append(parts, says)
		}
		out = append(out, page.Text(list.Capital(why)+". "+list.Capital(strings.Join(parts, "; "))+".", page.Small))
	}
	return out
}

// unnumbered says which connectors, boots and terminals have no part number: the catalogue has none, and the shop has not
// typed its own.
func unnumbered(m list.Maker, rows []lists.BillRow) string {
	var parts []string
	for _, r := range rows {
		if r.Stock.Number == "" && slices.Contains([]string{"connector", "boot", "ring terminal"}, r.Group) {
			part := m.Sys.Says(r.Part)
			if !strings.HasPrefix(part, strings.Fields(r.Group)[0]) {
				part = r.Group + " " + part
			}
			parts = append(parts, part)
		}
	}
	if len(parts) == 0 {
		return ""
	}
	return "No part number: " + strings.Join(parts, ", ") + ". Order them by their words, or type yours into the catalogue ([[stock]])."
}

// partOf is a part of the bill with what is said of it, and what the shop orders it as.
func partOf(m list.Maker, r lists.BillRow) string {
	says := m.Sys.Says(r.Part)
	if r.Says != "" && !slices.Contains([]string{"wire flag", "tape", "seal plug"}, r.Group) { // other pages say where they go
		says += ", " + m.Sys.Says(r.Says)
	}
	if r.Stock.Number != "" {
		says += ", order " + strings.TrimSpace(r.Stock.Number+" "+list.Word("from ", r.Stock.Supplier))
	}
	return says
}

// spools is the wire by size and colour, in metres that the harness takes. What is ordered of each colour stands in the file of the
// bill.
func spools(rows []lists.BillRow) page.Grid {
	g := page.Grid{Cols: []page.Col{{Head: "spool"}, {Head: "m", Align: list.ToRight, Bold: true}, {Head: "lot", Align: list.ByHand}},
		Columns: 4}
	reel := ""
	for _, r := range rows {
		if r.Group != "wire" {
			continue
		}
		if r.Part != reel {
			reel = r.Part
			g.Lines = append(g.Lines, page.Line{Title: reelName(reel), KeepNext: true})
		}
		g.Lines = append(g.Lines, page.Cells(list.Dash(list.Colour(r.Colour)), unit.Fixed(r.Need, 1), r.Stock.Number))
	}
	return g
}

// reelName is a specification and a size in words.
func reelName(part string) string {
	at := strings.LastIndex(part, " ") + 1
	return part[:at] + list.Size(&model.Wire{Size: part[at:]})
}

// ordered is how much is ordered of each size of wire, in metres.
func ordered(rows []lists.BillRow) string {
	var names []string
	total := map[string]float64{}
	for _, r := range rows {
		if r.Group == "wire" {
			if total[r.Part] == 0 {
				names = append(names, r.Part)
			}
			total[r.Part] += r.Order
		}
	}
	for k, name := range names {
		names[k] = reelName(name) + " " + unit.Fixed(total[name], 1) + " m"
	}
	return strings.Join(names, ", ")
}

// amount is how much of a thing: metres to a tenth, or pieces.
func amount(r lists.BillRow, v float64) string {
	if r.Metres {
		return unit.Fixed(v, 1) + " m"
	}
	return unit.Fixed(v, 0)
}

// tools are those that the work takes and that have a number to note.
func tools(m list.Maker) []string {
	var out []string
	put := func(what string) {
		if !slices.Contains(out, what) {
			out = append(out, what)
		}
	}
	for _, c := range lists.CrimpList(m.S) {
		if c.Tool.Set {
			put("crimp " + c.Tool.V.Frame + ", " + c.Tool.V.Positioner)
		}
		if tool := connector.InsertionTool(c); tool != "" {
			put("in and out " + tool)
		}
	}
	if len(m.H.Splices) > 0 {
		put("splices, by their maker's sheet")
	}
	put("heat gun, instruments of the tests")
	return out
}

// Tubes is what is cut of tube, piece by piece.
func Tubes(m list.Maker) []page.Block {
	type piece struct {
		of, what, part string
		cut            unit.Millimetre
	}
	var all []piece
	for i := range m.S.Branches {
		b, id := &m.S.Branches[i], m.H.Branches[i].ID
		if b.Sheath.Part != "" && b.Sheath.Tube.Set {
			all = append(all, piece{id, string(model.CoverSheath), b.Sheath.Part, b.Sheath.CutMM})
		}
		for _, c := range b.Covers {
			if c.CutMM > 0 {
				all = append(all, piece{id, string(c.What), list.Dash(c.Part), c.CutMM})
			}
		}
	}
	if len(all) == 0 {
		return nil
	}
	slices.SortStableFunc(all, func(a, b piece) int {
		switch {
		case a.part < b.part:
			return -1
		case a.part > b.part:
			return 1
		}
		return int(b.cut - a.cut)
	})
	g := page.Grid{Cols: []page.Col{{Head: "for", Bold: true}, {Head: m.In("cut"), Align: list.ToRight, Bold: true},
		{Head: "", Wide: 7, Align: list.ByHand}}, Columns: 5}
	part := ""
	for _, p := range all {
		if p.part != part {
			part = p.part
			g.Lines = append(g.Lines, page.Line{Title: part, KeepNext: true})
		}
		of := p.of
		if p.what != string(model.CoverSheath) {
			of += ", " + p.what
		}
		g.Lines = append(g.Lines, page.Cells(of, m.Sys.AtLeast(p.cut), ""))
	}
	return []page.Block{page.SubHeading("Tube pieces: sheath, where no other word stands"), g.Block()}
}
