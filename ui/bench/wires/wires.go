package wires

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/calc/phase/bundle"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/paper"
)

// Step is the first step of a branch: the wires that run through it.
const Step desk.Kind = "wires"

// WiresPage lists what runs through the branch: size, colour, current, where it
// leaves.
func WiresPage(m *desk.Model, w int, _ string) desk.Page {
	_, b, ok := m.BranchHere()
	if !ok {
		return desk.Page{Empty: "no branch yet"}
	}
	var p desk.Page
	ids := m.WiresHere()
	p.Lines = append(p.Lines, fmt.Sprintf("%d pieces to lay, %d conductors", len(b.Components), len(ids)))
	p.Lines = append(p.Lines, "free cavities: "+desk.FreeText(m))
	if r, ok := judgeRow(m, ids); ok {
		p.Rows, p.Start = append(p.Rows, r), 1
	}
	if len(ids) > 1 {
		p.Rows = append(p.Rows, desk.Row{Key: "several", Text: "change several wires",
			Detail: "Enter marks some: size, colour, role, current, units, splices",
			Enter:  func(m *desk.Model) { m.Show(desk.KindSeveral, "") }})
		p.Start = len(p.Rows)
	}
	columns := wireColumns(m, w)
	p.Cols = columns.Head()
	p.Rows = append(p.Rows, m.Once(fmt.Sprint("list ", w, m.Sys), func() []desk.Row { return wireRows(m, ids, columns) })...)
	if len(ids) > 0 {
		p.Rows = append(p.Rows, moreRow(m, m.H.Wires[ids[len(ids)-1]].ID))
	}
	if len(ids) > 0 {
		p.Rows = append(p.Rows, sizesRow(m), feedsRow(m))
	}
	p.Rows = append(p.Rows, m.Once("wires", func() []desk.Row { return append(likeRows(m, ids), mirrorRows(m)...) })...)
	p.Rows = append(p.Rows, desk.BranchRow(m))
	p.Empty = "No wire runs here yet. Open a connector (Esc, terminations) and press Enter on a free cavity, or repeat a similar branch"
	return p
}

// wireRows is one row a wire; they hang on the sheet, the branch and the room there is,
// so moving along them makes none of them again.
func wireRows(m *desk.Model, ids []int, columns kit.Columns[int]) []desk.Row {
	var rows []desk.Row
	for _, i := range ids {
		hw := &m.H.Wires[i]
		id := hw.ID
		comp := id
		if u, in := m.Sheet.Index.UnitOf[hw.ID]; in {
			comp = m.H.Units[u].ID
		}
		r := desk.Row{
			TextOf: func() string { return columns.Line(i) },
			More:   func() string { return desk.WireDetail(m, i, comp) }, Id: comp, Mark: m.MarkFor(hw.ID),
			Enter: func(m *desk.Model) { m.Show(desk.KindWire, id) },
			Field: ampsField(m, i),
			Step:  func(m *desk.Model, by int) { stepSize(m, m.Sheet.Index.Wire[id], by) },
			Drop:  func(m *desk.Model) { removeWire(m, id) },
			WhyOf: func() []desk.Reason { return desk.WireReasons(m, i) },
		}
		rows = append(rows, r.Of(strings.TrimPrefix(ampsText(hw), "-"), "A  in wire "+id))
	}
	return rows
}

// wireColumns are the columns of the list: what a wire may carry, how hot it gets and its
// cut length only where there is room for them.
func wireColumns(m *desk.Model, w int) kit.Columns[int] {
	wide := w >= 66
	signal := max(5, w-34)
	if wide {
		signal -= 21
	}
	mb := &m.H.Branches[m.Branch]
	columns := []kit.Column[int]{
		{Head: "wire", Least: 4, Cell: func(i int) string { return m.H.Wires[i].ID }},
		{Head: "signal", Least: signal, Cell: func(i int) string { return m.H.Wires[i].Signal.V }},
		{Head: "size", Least: 7, Cell: func(i int) string { return paper.Size(&m.H.Wires[i]) }},
		{Head: "col", Least: 3, Cell: func(i int) string { return m.H.Wires[i].Colour.V }},
		{Head: "A", Least: 5, Align: kit.ToRight, Cell: func(i int) string { return ampsText(&m.H.Wires[i]) }},
		{Head: "to", Lead: 1, Least: 6, Cell: func(i int) string { return leaves(m, &m.H.Wires[i], mb) }},
	}
	if wide {
		columns = append(columns,
			kit.Column[int]{Head: "max A", Least: 6, Align: kit.ToRight,
				Cell: func(i int) string { return desk.MostText(&m.Sheet.Wires[i]) }},
			kit.Column[int]{Head: "C", Least: 5, Align: kit.ToRight, Cell: func(i int) string { return desk.HotText(&m.Sheet.Wires[i]) }},
			kit.Column[int]{Head: "cut " + m.Sys.Name(), Least: 7, Align: kit.ToRight, Cell: func(i int) string {
				if cut := m.Sheet.Wires[i].Cut; cut > 0 {
					return m.Sys.AtLeast(cut)
				}
				return "-"
			}})
	}
	return kit.GivenColumns(columns, m.Cfg.ASCII)
}

func ampsText(w *model.Wire) string {
	if !w.Amps.Set {
		return "-"
	}
	return strconv.FormatFloat(float64(w.Amps.V), 'f', -1, 64)
}

// leaves is where a wire ends beyond the branch's to end.
func leaves(m *desk.Model, w *model.Wire, b *model.Branch) string {
	to := bundle.FarEnd(m.Sheet, m.Branch, w.ID)
	if e, ok := m.Sheet.Index.End(to); ok {
		if e.Splice != "" {
			return e.Splice
		}
		return e.Termination
	}
	return b.To
}

// closest is the wire here that is nearest to its limit of current.
func closest(m *desk.Model, ids []int) (at int, ok bool) {
	worst := 0.0
	for _, i := range ids {
		if share, known := shareOf(m, i); known && share > worst {
			worst, at, ok = share, i, true
		}
	}
	return at, ok
}

func closestWhy(m *desk.Model, ids []int) []desk.Reason {
	i, ok := closest(m, ids)
	if !ok {
		return nil
	}
	return desk.FiguresOf(m.H.Wires[i].ID, "wire.bound", "wire.heats")
}

func removeWire(m *desk.Model, id string) {
	i, ok := m.Sheet.Index.Wire[id]
	if !ok {
		return
	}
	h, err := m.H.RemoveWire(i)
	if err != nil {
		m.Refuse(err.Error())
		return
	}
	m.Change(h, "wire "+id+" removed. Backspace brings it back")
}

// stepSize takes the next thicker or thinner size of the wire's specification.
func stepSize(m *desk.Model, i, by int) {
	w := m.H.Wires[i]
	sizes := m.Sheet.Cat.Sizes(w.Spec)
	at := slices.Index(sizes, w.Size)
	if at < 0 {
		m.Refuse(fmt.Sprintf("%s has no size %s in the catalogue", w.Spec, w.Size))
		return
	}
	if at+by < 0 || at+by >= len(sizes) {
		m.Tell(fmt.Sprintf("%s is the last size of %s", w.Size, w.Spec))
		return
	}
	size := sizes[at+by]
	m.Change(m.H.EditWire(i, func(w *model.Wire) { w.Size = size }), fmt.Sprintf("wire %s is now %s", w.ID, size))
}

func ampsField(m *desk.Model, i int) *desk.Field {
	id := m.H.Wires[i].ID
	value := ""
	if m.H.Wires[i].Amps.Set {
		value = ampsText(&m.H.Wires[i])
	}
	return &desk.Field{Label: "current of wire " + id, Unit: "A", Value: value, Number: true, Set: func(m *desk.Model, text string) error {
		return m.SetNumber(text, 0, 1000, "A", func(v float64) *model.Harness {
			return m.H.EditWire(m.Sheet.Index.Wire[id], func(w *model.Wire) { w.Amps = model.Some(unit.Ampere(v)) })
		})
	}}
}

// stepAmps is what + - changes a current by: as fine as it is small.
func stepAmps(v unit.Ampere) unit.Ampere {
	switch {
	case v < 0.1:
		return 0.01
	case v < 1:
		return 0.1
	case v < 10:
		return 0.5
	}
	return 1
}
