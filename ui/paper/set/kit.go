package set

import (
	"slices"

	"contralay/calc/query/lists"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// Kit is what is picked before the work begins: wire by spool, parts, and the tools with their numbers,
// each with room for its lot.
func Kit(m list.Maker) []page.Block {
	rows := lists.Bill(m.S)
	out := []page.Block{page.Section(KitName), spools(m, rows).Block()}
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
		says := m.Sys.Says(r.Part)
		switch {
		case of[r.Group] < 3: // a title would take as much room as they do
			says = r.Group + " " + says
		case r.Group != group:
			g.Lines = append(g.Lines, page.Line{Title: r.Group, KeepNext: true})
		}
		group = r.Group
		if r.Says != "" && r.Group != "wire flag" {
			says += ", " + m.Sys.Says(r.Says)
		}
		g.Lines = append(g.Lines, page.Cells(says, amount(r, r.Need)+list.Mem(r.Standing), amount(r, r.Order), ""))
	}
	g.Lines = append(g.Lines, page.Line{Title: "tools, with their numbers", KeepNext: true})
	for _, tool := range tools(m) {
		g.Lines = append(g.Lines, page.Cells(tool, "", "", ""))
	}
	note := page.Text("To order: a tenth more of what is cut, a twentieth more of contacts and plugs, samples to pull; what is on the "+
		"shelf is taken off. Beside it: wipes and solvent for the adhesive, lacing tape or thread, marker ribbon.", page.Small)
	note.Gap = 2
	note.KeepNext = true
	return append(out, note, g.Block())
}

// spools is the wire by reel and colour, in metres.
func spools(m list.Maker, rows []lists.BillRow) page.Grid {
	g := page.Grid{Cols: []page.Col{{Head: "spool"}, {Head: "m", Align: list.ToRight, Bold: true}, {Head: "lot", Align: list.ByHand}},
		Columns: 4}
	reel := ""
	batches := Batches(m)
	for k, b := range batches {
		if now := b.Spec + " " + b.Size; now != reel {
			reel = now
			title := b.Spec + " " + list.Size(&model.Wire{Size: b.Size})
			if n := slices.IndexFunc(rows, func(r lists.BillRow) bool { return r.Group == "wire" && r.Part == now }); n >= 0 {
				title += ": " + amount(rows[n], rows[n].Need) + ", order " + amount(rows[n], rows[n].Order)
			}
			g.Lines = append(g.Lines, page.Line{Title: title, KeepNext: true})
		}
		last := k == len(batches)-1 || batches[k+1].Spec != b.Spec || batches[k+1].Size != b.Size || batches[k+1].Colour != b.Colour
		if last {
			g.Lines = append(g.Lines, page.Cells(list.Colour(b.Colour), unit.Fixed(float64(b.TotalMM)/1000, 1), ""))
		}
	}
	return g
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
			put("crimp tool " + c.Tool.V.Frame + ", positioner " + c.Tool.V.Positioner)
		}
	}
	put("heat gun")
	put("meter, pull tester")
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
		{Head: "", Wide: 7, Align: list.ByHand}}, Columns: 4}
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
