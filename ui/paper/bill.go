package paper

import (
	"fmt"
	"strings"

	"contralay/calc/query/lists"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper/list"
)

// The bill of material, and what is cut off it piece by piece.

// bought makes the lists of what is bought, cut of tube, weighed and laid ready.
type bought struct{ list.Maker }

// lists is every one of them.
func (m bought) lists() []list.Table {
	return []list.Table{m.bill(), m.tubes(), m.masses(), m.crimps(), m.pulls(), m.tools(), m.consumables()}
}

func (m bought) bill() list.Table {
	return list.Of(list.Table{File: "bill", Title: "Bill of material", Note: "First what cannot be ordered yet, and why. " +
		"Each line of wire is a spool of its own. To order: " +
		"a tenth more of what is cut, a twentieth more of contacts, seals and plugs, samples to pull; " +
		"what is on the shelf is taken off."},
		[]list.Column[lists.BillRow]{
			list.Text("what", func(r lists.BillRow) string { return r.Group }),
			list.Text("part", m.billPart),
			billColour(),
			list.Figure("needed", func(r lists.BillRow) string { return billed(r, r.Need) }).Stands(
				func(r lists.BillRow) catalogue.Standing { return r.Standing }),
			list.Figure("to order", func(r lists.BillRow) string { return billed(r, r.Order) }),
			list.Text("unit", func(r lists.BillRow) string { return map[bool]string{true: "m", false: "pieces"}[r.Metres] }),
			list.Text("note", m.billNote).InFile(
				list.Text("open point", func(r lists.BillRow) string { return r.Open }),
				list.Text("note", func(r lists.BillRow) string { return m.Sys.Says(r.Says) })),
			list.Text("order as", billOrder).InFile(
				list.Text("number", func(r lists.BillRow) string { return r.Stock.Number }),
				list.Text("supplier", func(r lists.BillRow) string { return r.Stock.Supplier }),
				list.Figure("in a pack", billPack), list.Figure("packs", billPacks)),
		}, lists.Bill(m.S))
}

// billColour is the colour of wire: one spool for each.
func billColour() list.Column[lists.BillRow] {
	code := func(r lists.BillRow) (shade, code string) {
		if before, after, ok := strings.Cut(r.Colour, " "); ok {
			return before, after
		}
		return "", r.Colour
	}
	word := func(r lists.BillRow) string {
		shade, colour := code(r)
		return list.ColourWord(&model.Wire{Colour: model.Some(colour), Shade: model.Some(model.Shade(shade))})
	}
	return list.Text("colour", func(r lists.BillRow) string {
		_, colour := code(r)
		return strings.TrimSpace(colour + "  " + word(r))
	}).InFile(list.Text("colour", word), list.Text("colour code", func(r lists.BillRow) string { _, colour := code(r); return colour }))
}

// billPart is the part of a row; filler, and the wire that an end cap is for, are known by a diameter alone.
func (m bought) billPart(r lists.BillRow) string {
	if r.Group == "filler" || r.Group == "end cap" || r.Group == "wire seal" {
		return m.Sys.Says(r.Part)
	}
	return r.Part
}

// billNote says why a row cannot be ordered yet, and what is said of it.
func (m bought) billNote(r lists.BillRow) string {
	says := m.Sys.Says(r.Says)
	if r.Open == "" {
		return says
	}
	return strings.Join(list.NonEmpty("OPEN: "+r.Open, says), "; ")
}

// billOrder is the shop's own number of a row, who sells it, and how many packs.
func billOrder(r lists.BillRow) string {
	says := strings.TrimSpace(r.Stock.Number + " " + list.Word("from ", r.Stock.Supplier))
	if r.Packs > 0 {
		says = strings.TrimSpace(fmt.Sprintf("%s, %s of %s", says, plural(r.Packs, "pack"), billPack(r)))
	}
	return says
}

func billPack(r lists.BillRow) string {
	if r.Stock.Pack <= 0 {
		return "-"
	}
	return billed(r, r.Stock.Pack)
}

func billPacks(r lists.BillRow) string {
	if r.Packs <= 0 {
		return "-"
	}
	return fmt.Sprint(r.Packs)
}

// plural is a count of things that take an s.
func plural(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}

// billed is how much of a thing, in the unit of its row.
func billed(r lists.BillRow, amount float64) string {
	if r.Metres {
		return unit.Fixed(amount, 1)
	}
	return unit.Fixed(amount, 0)
}

// tubes is every piece of tube to cut.
func (m bought) tubes() list.Table {
	return list.Of(list.Table{File: "tubes", Title: "Tubes to cut", Note: "In the order they are threaded on. " +
		"A tube is cut longer than it is to lie: it shortens as it shrinks."},
		[]list.Column[lists.TubeRow]{
			list.Text("branch", func(r lists.TubeRow) string { return r.Branch }),
			list.Text("what", func(r lists.TubeRow) string { return string(r.What) }),
			list.Text("tube", func(r lists.TubeRow) string { return r.Part }),
			list.Text("shelf", m.shelfLabel),
			list.Figure(m.In("cut"), m.tubeCut),
			list.Figure(m.In("start"), func(r lists.TubeRow) string { return m.Sys.Length(r.FromMM) }),
			list.Figure(m.In("stop"), func(r lists.TubeRow) string { return m.Sys.Length(r.ToMM) }),
			list.Blank[lists.TubeRow]("done").InFile(),
		}, lists.Tubes(m.S))
}

func (m bought) shelfLabel(r lists.TubeRow) string {
	if t, ok := m.S.Cat.Tube(r.Part); ok {
		return t.ShelfLabel
	}
	return "-"
}

func (m bought) tubeCut(r lists.TubeRow) string {
	if r.CutMM <= 0 {
		return "-"
	}
	return m.Sys.AtLeast(r.CutMM)
}

// masses is what each branch weighs, and the whole.
func (m bought) masses() list.Table {
	type massRow struct {
		lists.MassRow
		branch, name string
	}
	var rows []massRow
	whole := massRow{branch: "whole", name: "all branches"}
	whole.Bundle.Set, whole.Covers.Set = true, true
	for _, r := range lists.Masses(m.S) {
		b := &m.H.Branches[r.Branch]
		rows = append(rows, massRow{r, b.ID, b.Name.V})
		whole.Bundle.V, whole.Bundle.Set = whole.Bundle.V+r.Bundle.V, whole.Bundle.Set && r.Bundle.Set
		whole.Covers.V, whole.Covers.Set = whole.Covers.V+r.Covers.V, whole.Covers.Set && r.Covers.Set
		whole.Without += r.Without
	}
	if len(rows) > 0 {
		rows = append(rows, whole)
	}
	gram := func(v model.Opt[unit.Gram]) string {
		if !v.Set {
			return "-"
		}
		return unit.Fixed(v.V, 1)
	}
	return list.Of(list.Table{File: "mass", Title: "Mass", Note: "Bundle: wires, units and fillers. Covers: sheaths and " +
		"whatever else lies over the bundle. Connectors, contacts, boots, transitions, labels and adhesive are not in it. " +
		"A dash: one part of it is not known."},
		[]list.Column[massRow]{
			list.Text("branch", func(r massRow) string { return r.branch }),
			list.Text("name", func(r massRow) string { return r.name }),
			list.Figure("bundle, g", func(r massRow) string { return gram(r.Bundle) }),
			list.Figure("covers, g", func(r massRow) string { return gram(r.Covers) }),
			list.Figure("together, g", func(r massRow) string { return gram(r.Whole()) }),
			list.Figure("covers not known", func(r massRow) string { return fmt.Sprint(r.Without) }),
		}, rows)
}
