package paper

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	wiresphase "contralay/calc/phase/wires"
	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// What the lists of a build sheet share, and those of splices, parts and labels.

// maker makes the tables of one sheet.
type maker struct {
	s   *sheet.Sheet
	h   *model.Harness
	sys unit.System
}

func makerOf(s *sheet.Sheet) maker {
	m := maker{s: s, h: s.H}
	if sys, err := unit.ParseSystem(s.H.Head.Units.V); err == nil {
		m.sys = sys
	}
	return m
}

// in is a column head with its unit.
func (m maker) in(head string) string { return head + ", " + m.sys.Name() }

func dash(s string) string { return cmp.Or(s, "-") }

// mem marks a figure that rests on memory.
func mem(st catalogue.Standing) string {
	if st == catalogue.Memory {
		return "~"
	}
	return ""
}

func (m maker) wire(id string) *model.Wire {
	if k, ok := m.s.Index.Wire[id]; ok {
		return &m.h.Wires[k]
	}
	return &model.Wire{ID: id}
}

// end is an end of a wire in words.
func (m maker) end(w *model.Wire, from bool) string {
	text := w.To.V
	if from {
		text = w.From.V
	}
	switch {
	case text == "" && wiresphase.Capped(w):
		return "capped at " + w.CappedAt.V
	case text == "":
		return "open"
	}
	if _, splice := m.s.Index.Splice[text]; splice {
		return "splice " + text
	}
	return text
}

func (m maker) optLength(v model.Opt[unit.Millimetre]) string {
	if !v.Set {
		return "-"
	}
	return m.sys.Length(v.V)
}

// spliceRow is a splice as it is entered and as it is worked out.
type spliceRow struct {
	entered *model.Splice
	worked  *sheet.Splice
}

func (m maker) splices() Table {
	var rows []spliceRow
	for k := range m.s.Splices {
		rows = append(rows, spliceRow{&m.h.Splices[k], &m.s.Splices[k]})
	}
	return tableOf(Table{File: "splices", Title: "Splices"}, []column[spliceRow]{
		{"splice", toLeft, func(r spliceRow) string { return r.entered.ID }},
		{"at", toLeft, func(r spliceRow) string { return r.entered.At }},
		{"sleeve lies", toLeft, m.sleeveLies},
		{"part", toLeft, func(r spliceRow) string { return dash(r.worked.Part) + mem(r.worked.Standing) }},
		{"first barrel", toLeft, func(r spliceRow) string { return m.wireIDs(r.worked.Near) }},
		{"second barrel", toLeft, func(r spliceRow) string { return m.wireIDs(r.worked.Far) }},
		{"done", byHand, nil},
	}, rows)
}

func (m maker) sleeveLies(r spliceRow) string {
	if r.entered.Toward.V == "" {
		return "at its centre"
	}
	return fmt.Sprintf("%s %s along %s", m.sys.Length(r.entered.OffsetMM.V), m.sys.Name(), r.entered.Toward.V)
}

func (m maker) wireIDs(all []int) string {
	var out []string
	for _, k := range all {
		out = append(out, m.h.Wires[k].ID)
	}
	return strings.Join(out, ", ")
}

func (m maker) bill() Table {
	return tableOf(Table{File: "bill", Title: "Bill of material",
		Note: "To order: a tenth more of what is cut, a twentieth more of contacts and plugs, samples to pull; what is on the shelf is " +
			"taken off. Consumables beside it: wipes and solvent for the adhesive, lacing tape or thread, marker ribbon."},
		[]column[lists.BillRow]{
			{"what", toLeft, func(r lists.BillRow) string { return r.Group }},
			{"part", toLeft, func(r lists.BillRow) string { return billPart(m.sys, r) }},
			{"needed", toRight, func(r lists.BillRow) string { return billed(r, r.Need) + mem(r.Standing) }},
			{"to order", toRight, func(r lists.BillRow) string { return billed(r, r.Order) }},
			{"unit", toLeft, func(r lists.BillRow) string { return map[bool]string{true: "m", false: "pieces"}[r.Metres] }},
			{"says", toLeft, func(r lists.BillRow) string { return m.sys.Says(r.Says) }},
		}, lists.Bill(m.s))
}

// billPart is the part of a row; filler is known by its diameter alone.
func billPart(sys unit.System, r lists.BillRow) string {
	if r.Group == "filler" {
		return sys.Says(r.Part)
	}
	return r.Part
}

// billed is how much of a thing, in the unit of its row.
func billed(r lists.BillRow, amount float64) string {
	if r.Metres {
		return unit.Fixed(amount, 1)
	}
	return unit.Fixed(amount, 0)
}

func (m maker) labels() Table {
	return tableOf(Table{File: "labels", Title: "Labels",
		Note: m.sys.Says("25 to 50 mm off the boot's tail, read from the connector, on the clocked side. Threaded on before the boot.")},
		[]column[lists.Label]{
			{"end", toLeft, func(l lists.Label) string { return l.Of }},
			{"reads", toLeft, func(l lists.Label) string { return strings.Join(l.Text, "  ") }},
			{"sleeve", toLeft, func(l lists.Label) string { return l.Sleeve }},
			{m.in("shrinks on"), toRight, func(l lists.Label) string { return m.sys.Diameter(l.OverMM) }},
			{"on the side of", toLeft, labelSide},
		}, lists.Labels(m.s))
}

func labelSide(l lists.Label) string {
	if l.OnHours <= 0 {
		return "-"
	}
	return fmt.Sprintf("%d o'clock", l.OnHours)
}

// lots is what was used, for whoever has to find it again.
func (m maker) lots() Table {
	var used []string
	put := func(what string) {
		if what != "" && !slices.Contains(used, what) {
			used = append(used, what)
		}
	}
	for _, r := range lists.ReelList(m.s) {
		put(r.Spec + " " + Size(&model.Wire{Size: r.Size}))
	}
	for _, r := range lists.Bill(m.s) {
		if sheet.PartKind(r.Group).IsCover() || slices.Contains([]string{"boot", "transition", "splice", "adhesive"}, r.Group) {
			put(r.Group + " " + r.Part)
		}
	}
	for _, c := range lists.CrimpList(m.s) {
		if c.Tool.Set {
			put("crimp tool " + c.Tool.V.Frame + ", positioner " + c.Tool.V.Positioner)
		}
	}
	put("heat gun")
	put("meter, pull tester")
	return tableOf(Table{Title: "Lots and tools"}, []column[string]{
		{"what", toLeft, func(what string) string { return what }},
		{"lot, date or number", byHand, nil},
	}, used)
}
