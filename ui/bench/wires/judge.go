package wires

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"contralay/calc/phase/wires"
	"contralay/calc/query/offer"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
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
	text := fmt.Sprintf("nearest its limit here: %s, %s of %s A", m.H.Wires[i].ID, desk.CarriesText(m.Sheet, i),
		desk.MostText(&m.Sheet.Wires[i]))
	return desk.Row{Key: "judge", Text: text, Detail: "Enter lists them, worst first: current, limit, drop, temperature, and what decides",
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
		return desk.Page{Empty: "no branch; Esc goes back"}
	}
	p := desk.Page{Lines: []string{"Worst first: what they carry of what they may, in " + m.H.Branches[m.Branch].ID},
		Empty: "no wire runs here; Esc goes back"}
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
	room := w - 58
	p.Cols = fmt.Sprintf("%-6s%-8s%6s%8s%8s%6s   %s", "wire", "size", "A", "most A", "drop V", "C", "what decides")
	if room < 16 {
		p.Cols = fmt.Sprintf("%-6s%-8s%6s%8s", "wire", "size", "A", "most A")
	}
	for _, i := range ids {
		hw, c := &m.H.Wires[i], &m.Sheet.Wires[i]
		drop, by := "-", "-"
		if c.Drop.Set {
			drop = unit.Fixed(c.Circuit, 2)
		}
		if c.Bound.Set {
			by = c.Bound.V.Where
		}
		text := fmt.Sprintf("%s%s%6s%8s%8s%6s   %s", draw.Fit(hw.ID, 5, m.Cfg.ASCII)+" ", draw.Fit(paper.Size(hw), 7, m.Cfg.ASCII)+" ",
			desk.CarriesText(m.Sheet, i), desk.MostText(c), drop, desk.HotText(c), draw.Fit(by, max(room, 8), m.Cfg.ASCII))
		if room < 16 {
			text = fmt.Sprintf("%s%s%6s%8s", draw.Fit(hw.ID, 5, m.Cfg.ASCII)+" ", draw.Fit(paper.Size(hw), 7, m.Cfg.ASCII)+" ",
				desk.CarriesText(m.Sheet, i), desk.MostText(c))
		}
		id := hw.ID
		p.Rows = append(p.Rows, desk.Row{Key: id, Id: id, Mark: m.MarkFor(id), Text: strings.TrimRight(text, " "),
			More:  func() string { return "Enter opens it; " + desk.WireDetail(m, i, id) },
			Enter: func(m *desk.Model) { m.Show(desk.KindWire, id) }, WhyOf: func() []desk.Reason {
				return append(desk.FiguresOf(id, "wire.bound", "wire.hottest", "wire.circuit", "wire.heats"), desk.WireReasons(m, i)...)
			}})
	}
	return p
}

// sizesRow opens what would do for all wires at once.
func sizesRow(m *desk.Model) desk.Row {
	return desk.Row{Key: "sizes", Text: "the sizes that do, for all wires at once",
		Detail: "Enter works them out for the whole loom; nothing changes before you take them",
		Enter:  func(m *desk.Model) { m.Show(SizesKind, "") }}
}

// SizesPage lists the wires that another size does for: all in one row, then each.
func SizesPage(m *desk.Model, _ int, _ string) desk.Page {
	p := desk.Page{Lines: []string{"The thinnest size that does for heat, drop, its device and both ends, all taken together.",
		"Thinner than " + m.Sheet.Limits.SizeMin + " is not handled here (size_min in [rules])."},
		Empty: "every wire with a current has the size that does; Esc goes back"}
	p.Rows = m.Once("sizes", func() []desk.Row { return sizeRows(m) })
	return p
}

func sizeRows(m *desk.Model) []desk.Row {
	changes, h, none := offer.Advise(m.Sheet)
	var stuck []desk.Row
	for _, k := range none {
		id := m.H.Wires[k].ID
		stuck = append(stuck, desk.Row{Key: "none " + id, Id: id, Mark: "?",
			Text:   fmt.Sprintf("%s no size does: %s", draw.Fit(id, 5, m.Cfg.ASCII), offer.Doubt(m.Sheet, k, m.H.Wires[k].Size)),
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
			return "Enter takes it, Backspace takes it back; the lay-up follows"
		}
		return "Enter takes it: " + t.Tally().Differs(m.Tally(), m.Sys)
	}, Enter: func(m *desk.Model) {
		m.Back()
		m.Change(h, fmt.Sprintf("%d wires have another size; Backspace takes it back", len(changes)))
	}}}
	rows = append(rows, stuck...)
	for _, c := range changes {
		w := &m.H.Wires[c.Wire]
		id, to := w.ID, c.To
		rows = append(rows, desk.Row{Key: id, Id: id, Text: fmt.Sprintf("%s %-18s%6s of %s A   %s", draw.Fit(id, 5, m.Cfg.ASCII),
			w.Size+" -> "+paper.Size(&model.Wire{Size: to}), desk.CarriesText(m.Sheet, c.Wire), desk.MostText(&m.Sheet.Wires[c.Wire]),
			w.Signal.V),
			Detail: "Enter takes this one alone", WhyOf: func() []desk.Reason { return desk.WireReasons(m, m.Sheet.Index.Wire[id]) },
			Enter: func(m *desk.Model) {
				m.Change(m.H.EditWire(m.Sheet.Index.Wire[id], func(w *model.Wire) { w.Size = to }),
					fmt.Sprintf("wire %s is now %s", id, to))
			}})
	}
	return rows
}
