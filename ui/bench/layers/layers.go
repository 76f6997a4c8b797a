package layers

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
)

// The steps of the lay-up.
const (
	Step     desk.Kind = "layers"
	FillStep desk.Kind = "fill"
)

// LayersPage is the lay-up: centre and layers, then the options.
func LayersPage(m *desk.Model, w int, _ string) desk.Page {
	mb, b, ok := m.BranchHere()
	if !ok {
		return desk.Page{Empty: "no branch yet"}
	}
	var p desk.Page
	if len(b.Layers) == 0 {
		p.Empty = "Nothing is laid: no wire runs here, or the size of one is not known"
		if b.Waiting {
			p.Empty = "working out a lay-up"
		}
		return p
	}
	says := "as in the file"
	if b.Proposed {
		says = "proposed"
	}
	p.Lines = []string{fmt.Sprintf("%s, %s, %s", aloud(m, b.Layers), b.Make, says)}
	if built := b.Layers[0].BuiltUp(m.Sys); built != "" && m.ListHeight() >= 8 { // a low screen has it with the centre's row
		p.Lines = append(p.Lines, built)
	}
	columns := layerColumns(m, w)
	p.Cols = columns.Head()
	for k := range b.Layers {
		l := &b.Layers[k]
		r := desk.Row{
			Text: columns.Line(k), Key: "layer " + layerWord(k), Detail: layerDetail(m, k, l), Id: firstID(l), Layer: model.Some(k),
			Mark:  layerMark(m, k, l),
			Enter: func(m *desk.Model) { openLayer(m, k) },
			Step:  func(m *desk.Model, by int) { shift(m, k, by) },
			Why:   desk.FiguresAt(mb.ID, k, layerFigures...),
		}
		p.Rows = append(p.Rows, r.Of(m.Sys.Diameter(l.OverMM), m.Sys.Name()+"  OD of "+model.LayerName(k)))
	}
	if miss := missing(m); len(miss) > 0 {
		p.Rows = append(p.Rows, desk.Row{Text: "not laid: " + strings.Join(miss, " "), Mark: "!", Id: miss[0],
			Detail: "+ lays the first one outermost", Step: func(m *desk.Model, _ int) { move(m, miss[0], len(editLayers(m))-1) }})
	}
	if b.Proposed { // what is to be decided first, past the heading
		p.Start = len(p.Rows) + 1
	}
	p.Rows = append(p.Rows, tableRows(m, w)...)
	p.Rows = append(p.Rows, m.Once("layers", func() []desk.Row { return laidLikeRows(m) })...)
	p.Rows = append(p.Rows, cliffRows(m, w)...)
	p.Rows = append(p.Rows, wishRows(m)...)
	p.Rows = append(p.Rows,
		desk.Row{Key: "lay length", Text: "lay length      " + words.Trim(float64(m.Sheet.Limits.LayRatio)) + " x OD",
			Detail: "Of each layer. A shop rule for the whole harness; 8 to 16 is usual",
			Field: &desk.Field{Label: "lay length, times OD", Value: words.Trim(float64(m.Sheet.Limits.LayRatio)), Number: true,
				Set: func(m *desk.Model, t string) error {
					return m.SetNumber(t, 4, 40, "x OD", func(v float64) *model.Harness {
						n := *m.H
						n.Rules.LayRatio = model.Some(unit.Ratio(v))
						return &n
					})
				}},
			Step: func(m *desk.Model, by int) {
				n := *m.H
				v := m.Sheet.Limits.LayRatio + unit.Ratio(by)
				if v < 4 || v > 40 {
					m.Tell("4 to 40 times OD")
					return
				}
				n.Rules.LayRatio = model.Some(v)
				m.Change(&n, "lay length "+words.Trim(float64(v))+" x OD")
			}},
		desk.Row{Key: "make", Text: "make            " + string(b.Make), Detail: "+ - laid, twisted or straight",
			Step: func(m *desk.Model, by int) { stepMake(m, by) }})
	p.Rows = withNumbers(m, append(p.Rows, foundRows(m, w)...))
	return p
}

// layerColumns are the columns of the lay-up: where its wires leave is told on a wide list only.
func layerColumns(m *desk.Model, w int) kit.Columns[int] {
	mb, b, _ := m.BranchHere()
	sizes, lead := max(7, w-31), 0
	columns := []kit.Column[int]{
		{Head: "layer", Least: 7, Cell: layerWord},
		{Head: "sizes", Least: sizes, Cell: func(k int) string { return holds(m, &b.Layers[k]) }},
	}
	if w >= 64 {
		leaves := (sizes - 3) / 2
		columns[1].Least, lead = sizes-leaves, 1
		columns = append(columns, kit.Column[int]{Head: "leaves at " + mb.To, Least: leaves - 2,
			Cell: func(k int) string { return leavesText(m, &b.Layers[k]) }})
	}
	columns = append(columns,
		kit.Column[int]{Head: "pieces", Lead: lead, Least: 10, Cell: func(k int) string { return takesText(k, &b.Layers[k]) }},
		kit.Column[int]{Head: "OD " + m.Sys.Name(), Least: 8, Align: kit.ToRight,
			Cell: func(k int) string { return m.Sys.Diameter(b.Layers[k].OverMM) }})
	return kit.GivenColumns(columns, m.Cfg.ASCII)
}

// layerFigures is what a layer's row and its detail show.
var layerFigures = []string{"layer.over", "layer.takes", "layer.room", "layer.proud", "layer.lay", "layer.turns", "layer.bent",
	"layer.flat"}

func layerWord(k int) string {
	if k == 0 {
		return "centre"
	}
	return fmt.Sprint(k)
}

func firstID(l *sheet.Layer) string {
	if len(l.Members) == 0 {
		return ""
	}
	return l.Members[0].ID
}

// holds is what a layer has, by size: "C1 + 9 x 22 + 1 x 20".
func holds(m *desk.Model, l *sheet.Layer) string {
	count := map[string]int{}
	var order []string
	for _, c := range l.Members {
		name := c.ID
		if i, ok := m.Sheet.Index.Wire[c.ID]; ok {
			name = m.H.Wires[i].Size
		} else if c.Kind == sheet.OfFiller {
			name = "filler"
		}
		if count[name]++; count[name] == 1 {
			order = append(order, name)
		}
	}
	var parts []string
	for _, n := range order {
		if _, isUnit := m.Sheet.Index.Unit[n]; isUnit {
			parts = append(parts, n)
			continue
		}
		parts = append(parts, fmt.Sprintf("%d x %s", count[n], n))
	}
	if l.BuiltMM > 0 {
		return strings.Join(parts, " + ") + " built up"
	}
	return strings.Join(parts, " + ")
}

// leavesText is where the members of a layer go on from the branch's to end, by
// the next branch or the end itself: "R1 6, L2 1".
func leavesText(m *desk.Model, l *sheet.Layer) string {
	count := map[string]int{}
	var order []string
	for _, c := range l.Members {
		if c.Kind == sheet.OfFiller {
			continue
		}
		to := bundle.NextAfter(m.Sheet, m.Branch, c.ID)
		if count[to]++; count[to] == 1 {
			order = append(order, to)
		}
	}
	var parts []string
	for _, to := range order {
		parts = append(parts, fmt.Sprintf("%s %d", to, count[to]))
	}
	return strings.Join(parts, ", ")
}

func takesText(k int, l *sheet.Layer) string {
	if k == 0 {
		return ""
	}
	return fmt.Sprintf("%d of %d", len(l.Members), l.Takes)
}

func layerMark(m *desk.Model, k int, l *sheet.Layer) string {
	switch {
	case k == 0:
		return ""
	case l.Lift > m.Sheet.Limits.LiftStop || !l.Closes:
		return "!"
	case l.Lift > m.Sheet.Limits.LiftTight:
		return "?"
	}
	return ""
}

func layerDetail(m *desk.Model, k int, l *sheet.Layer) string {
	closes := "closes easily"
	switch {
	case k == 0:
		closes = ""
	case l.Lift > m.Sheet.Limits.LiftTight:
		closes = fmt.Sprintf("will not close: it stands %s %s proud", m.Sys.Fine(l.ProudMM), m.Sys.Name())
	case l.Lift > m.Sheet.Limits.LiftMax:
		closes = fmt.Sprintf("is tight: it stands %s %s proud", m.Sys.Fine(l.ProudMM), m.Sys.Name())
	}
	text := words.Capital(model.LayerName(k))
	if built := l.BuiltUp(m.Sys); built != "" {
		text = built // it says that it is the centre, and a narrow screen has room for it
	}
	if closes != "" {
		text += " " + closes
	}
	switch more := len(l.Members) - l.Takes; {
	case k > 0 && l.Room > 0:
		text += fmt.Sprintf(", room for %d", l.Room)
	case k > 0 && more > 0:
		text += fmt.Sprintf(", %d too many", more)
	}
	if l.LayMM > 0 {
		text += fmt.Sprintf(", %s, lay %s %s, %s turns", l.Hand, m.Sys.Length(l.LayMM), m.Sys.Name(), unit.Fixed(l.Turns, 1))
	}
	if l.FlatMM > 0 && k > 0 {
		text += fmt.Sprintf(", bend needs %s %s (%s if straight)", m.Sys.Fine(l.BentMM), m.Sys.Name(), m.Sys.Fine(l.FlatMM))
	}
	if l.Tracer != "" {
		text += ", tracer " + l.Tracer
	}
	return text
}

func missing(m *desk.Model) []string {
	b := &m.H.Branches[m.Branch]
	if len(b.Layers) == 0 {
		return nil
	}
	var out []string
	for _, id := range m.Sheet.Branches[m.Branch].Components {
		if !slices.ContainsFunc(b.Layers, func(l model.Layer) bool { return slices.Contains(l.Of, id) }) {
			out = append(out, id)
		}
	}
	return out
}
