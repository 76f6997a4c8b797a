package wires

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"contralay/calc/phase/wires"
	"contralay/calc/query/offer"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/draw"
	"contralay/ui/paper"
)

// The wires of a branch by how near they are to what they may carry, and the sizes
// that would do for all of them. The list of the Wires step keeps the order of the
// file: it is what currents are entered along.

// shareOf is how much of its limit a wire carries; false where either is not known.
func shareOf(m *desk.Model, i int) (float64, bool) {
	c := &m.Sheet.Wires[i]
	if !wires.Carries(m.Sheet, i) || !c.Bound.Set {
		return 0, false
	}
	if c.Bound.V.Amps <= 0 {
		return math.Inf(1), c.Heats > 0
	}
	return float64(c.Heats / c.Bound.V.Amps), true
}

// judgeRow opens the list, worst first.
func judgeRow(m *desk.Model, ids []int) (desk.Row, bool) {
	i, ok := closest(m, ids)
	if !ok {
		return desk.Row{}, false
	}
	text := fmt.Sprintf("nearest its limit: %s, %s of %s A", m.H.Wires[i].ID, desk.CarriesText(m.Sheet, i),
		desk.MostText(&m.Sheet.Wires[i]))
	return desk.Row{Key: "judge", Text: text, Detail: "Enter lists all wires, worst first: current, limit, drop, temperature",
		Enter: func(m *desk.Model) { m.Show(JudgeKind, "") }, Why: closestWhy(m, ids)}, true
}

// The screens of what wires carry of what they may.
const (
	JudgeKind desk.Kind = "worst first"
	SizesKind desk.Kind = "sizes"
)

// JudgePage lists the wires of the branch, worst first.
func JudgePage(m *desk.Model, w int, _ string) desk.Page {
	_, _, ok := m.BranchHere()
	if !ok {
		return desk.Page{Empty: "No branch. Esc goes back"}
	}
	p := desk.Page{Lines: []string{"Worst first: current and limit of each wire in " + m.H.Branches[m.Branch].ID},
		Empty: "No wire runs here. Esc goes back"}
	ids := m.WiresHere()
	slices.SortStableFunc(ids, func(a, b int) int {
		x, okX := shareOf(m, a)
		y, okY := shareOf(m, b)
		switch { // what is not known comes last
		case okX && !okY:
			return -1
		case okY && !okX:
			return 1
		}
		return cmp.Compare(y, x)
	})
	columns := judgeColumns(m, w)
	p.Cols = columns.Head()
	for _, i := range ids {
		id := m.H.Wires[i].ID
		p.Rows = append(p.Rows, desk.Row{Key: id, Id: id, Mark: m.MarkFor(id), Text: columns.Line(i),
			More:  func() string { return "Enter opens it; " + desk.WireDetail(m, i, id) },
			Enter: func(m *desk.Model) { m.Show(desk.KindWire, id) }, WhyOf: func() []desk.Reason {
				return append(desk.FiguresOf(id, "wire.bound", "wire.hottest", "wire.circuit", "wire.heats"), desk.WireReasons(m, i)...)
			}})
	}
	return p
}

// judgeColumns are the columns of the list: a narrow one leaves out what limits a wire.
func judgeColumns(m *desk.Model, w int) kit.Columns[int] {
	columns := []kit.Column[int]{
		{Head: "wire", Least: 5, Cell: func(i int) string { return m.H.Wires[i].ID }},
		{Head: "size", Least: 7, Cell: func(i int) string { return paper.Size(&m.H.Wires[i]) }},
		{Head: "A", Least: 6, Align: kit.ToRight, Cell: func(i int) string { return desk.CarriesText(m.Sheet, i) }},
		{Head: "max A", Least: 7, Align: kit.ToRight, Cell: func(i int) string { return desk.MostText(&m.Sheet.Wires[i]) }},
	}
	if room := w - 58; room >= 16 {
		columns = append(columns,
			kit.Column[int]{Head: "drop V", Least: 7, Align: kit.ToRight, Cell: func(i int) string {
				if c := &m.Sheet.Wires[i]; c.Drop.Set {
					return unit.Fixed(c.Circuit, 2)
				}
				return "-"
			}},
			kit.Column[int]{Head: "C", Least: 5, Align: kit.ToRight, Cell: func(i int) string { return desk.HotText(&m.Sheet.Wires[i]) }},
			kit.Column[int]{Head: "limited by", Lead: 2, Least: room, Cell: func(i int) string {
				if c := &m.Sheet.Wires[i]; c.Bound.Set {
					return c.Bound.V.Where
				}
				return "-"
			}})
	}
	return kit.GivenColumns(columns, m.Cfg.ASCII)
}

// sizesRow opens what would do for all wires at once.
func sizesRow(m *desk.Model) desk.Row {
	return desk.Row{Key: "sizes", Text: "sizes that satisfy all wires",
		Detail: "Enter works them out for the harness. Nothing changes until you take them",
		Enter:  func(m *desk.Model) { m.Show(SizesKind, "") }}
}

// SizesPage lists the wires that another size does for: all in one row, then each.
func SizesPage(m *desk.Model, _ int, _ string) desk.Page {
	p := desk.Page{Lines: []string{"The smallest sizes that satisfy heating, voltage drop, the fuses and both contacts together.",
		"Sizes thinner than " + m.Sheet.Limits.SizeMin + " AWG are not used here (size_min in [rules])."},
		Empty: "Every wire that has a current has the right size already. Esc goes back"}
	p.Rows = m.Once("sizes", func() []desk.Row { return sizeRows(m) })
	return p
}

func sizeRows(m *desk.Model) []desk.Row {
	changes, h, none := offer.Advise(m.Sheet)
	var stuck []desk.Row
	for _, k := range none {
		id := m.H.Wires[k].ID
		stuck = append(stuck, desk.Row{Key: "none " + id, Id: id, Mark: "?",
			Text:   fmt.Sprintf("%s no size works: %s", draw.Fit(id, 5, m.Cfg.ASCII), offer.Doubt(m.Sheet, k, m.H.Wires[k].Size)),
			Detail: "Enter opens the wire", Enter: func(m *desk.Model) { m.Show(desk.KindWire, id) },
			WhyOf: func() []desk.Reason {
				return append(desk.WireReasons(m, m.Sheet.Index.Wire[id]), desk.LimitReasons(m.Sheet, id)...)
			}})
	}
	if len(changes) == 0 {
		return stuck
	}
	thinner := 0
	for _, c := range changes {
		a, okA := m.Sheet.Cat.Wire(m.H.Wires[c.Wire].Spec, c.From)
		b, okB := m.Sheet.Cat.Wire(m.H.Wires[c.Wire].Spec, c.To)
		if okA && okB && b.AreaMM2 < a.AreaMM2 {
			thinner++
		}
	}
	says := fmt.Sprintf("take all: %d thinner, %d thicker", thinner, len(changes)-thinner)
	rows := []desk.Row{{Key: "all", Text: says, More: func() string {
		t := m.Try("sizes", func() *model.Harness { return h })
		if _, b, _ := t.BranchHere(); b.Waiting || len(b.Layers) == 0 {
			return "Enter takes it, Backspace undoes it. A new lay-up is worked out after that"
		}
		return "Enter takes it: " + t.Tally().Differs(m.Tally(), m.Sys)
	}, Enter: func(m *desk.Model) {
		m.Back()
		m.Change(h, fmt.Sprintf("%d wires have another size. Backspace undoes it", len(changes)))
	}}}
	rows = append(rows, stuck...)
	for _, c := range changes {
		w := &m.H.Wires[c.Wire]
		id, to := w.ID, c.To
		rows = append(rows, desk.Row{Key: id, Id: id, Text: fmt.Sprintf("%s %-17s %6s of %s A   %s", draw.Fit(id, 5, m.Cfg.ASCII),
			w.Size+" -> "+paper.Size(&model.Wire{Size: to}), desk.CarriesText(m.Sheet, c.Wire), desk.MostText(&m.Sheet.Wires[c.Wire]),
			w.Signal.V),
			Detail: "Enter takes this one only", WhyOf: func() []desk.Reason { return desk.WireReasons(m, m.Sheet.Index.Wire[id]) },
			Enter: func(m *desk.Model) {
				m.Change(m.H.EditWire(m.Sheet.Index.Wire[id], func(w *model.Wire) { w.Size = to }),
					fmt.Sprintf("wire %s is now %s", id, to))
			}})
	}
	return rows
}
