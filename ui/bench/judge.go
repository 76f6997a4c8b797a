package bench

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"contralay/calc"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/draw"
	"contralay/ui/paper"
)

// The wires of a branch by how near they are to what they may carry, and the sizes
// that would do for all of them. The list of the Wires step keeps the order of the
// file: it is what currents are entered along.

// share is how much of its limit a wire carries; false where either is not known.
func (m *Model) share(i int) (float64, bool) {
	c := &m.sheet.Wires[i]
	if !m.sheet.Carries(i) || !c.Bounded {
		return 0, false
	}
	if c.Bound.Amps <= 0 {
		return math.Inf(1), c.Heats > 0
	}
	return float64(c.Heats / c.Bound.Amps), true
}

// judgeRow opens the list, worst first.
func (m *Model) judgeRow(ids []int) (row, bool) {
	i, ok := m.closest(ids)
	if !ok {
		return row{}, false
	}
	text := fmt.Sprintf("nearest its limit here: %s, %s of %s A", m.h.Wires[i].ID, carriesText(m.sheet, i), mostText(&m.sheet.Wires[i]))
	return row{key: "judge", text: text, detail: "Enter lists them, worst first: current, limit, drop, temperature, and what decides", enter: func(m *Model) { m.open(judgeScreen()) }, why: m.closestWhy(ids)}, true
}

func judgeScreen() screen {
	return screen{name: "worst first", pick: true, page: func(m *Model, w int) page {
		_, _, ok := m.b()
		if !ok {
			return page{empty: "no branch; Esc goes back"}
		}
		p := page{lines: []string{"Worst first: what they carry of what they may, in " + m.h.Branches[m.branch].ID}, empty: "no wire runs here; Esc goes back"}
		ids := m.wiresHere()
		slices.SortStableFunc(ids, func(a, b int) int {
			x, okX := m.share(a)
			y, okY := m.share(b)
			if okX != okY {
				return map[bool]int{true: -1, false: 1}[okX]
			}
			return cmp.Compare(y, x)
		})
		room := w - 58
		p.cols = fmt.Sprintf("%-6s%-8s%6s%8s%8s%6s   %s", "wire", "size", "A", "most A", "drop V", "C", "what decides")
		if room < 16 {
			p.cols = fmt.Sprintf("%-6s%-8s%6s%8s", "wire", "size", "A", "most A")
		}
		for _, i := range ids {
			hw, c := &m.h.Wires[i], &m.sheet.Wires[i]
			drop, by := "-", "-"
			if c.DropKnown {
				drop = unit.Fixed(float64(c.Circuit), 2)
			}
			if c.Bounded {
				by = c.Bound.By
			}
			text := fmt.Sprintf("%s%s%6s%8s%8s%6s   %s", draw.Fit(hw.ID, 5, m.cfg.ASCII)+" ", draw.Fit(paper.Size(hw), 7, m.cfg.ASCII)+" ", carriesText(m.sheet, i), mostText(c), drop, hotText(c), draw.Fit(by, max(room, 8), m.cfg.ASCII))
			if room < 16 {
				text = fmt.Sprintf("%s%s%6s%8s", draw.Fit(hw.ID, 5, m.cfg.ASCII)+" ", draw.Fit(paper.Size(hw), 7, m.cfg.ASCII)+" ", carriesText(m.sheet, i), mostText(c))
			}
			id := hw.ID
			p.rows = append(p.rows, row{key: id, id: id, mark: m.markFor(id), text: strings.TrimRight(text, " "), more: func() string { return "Enter opens it; " + m.wireDetail(i, id) },
				enter: func(m *Model) { m.open(wireScreen(id)) }, whyOf: func() []reason {
					return append(figs(id, 0, "", "wire.bound", "wire.hottest", "wire.circuit", "wire.heats"), m.wireReasons(i)...)
				}})
		}
		return p
	}}
}

// carriesText is what a wire carries as heat sees it.
func carriesText(s *calc.Sheet, i int) string {
	if !s.Carries(i) {
		return "-"
	}
	step := 0.01
	if s.Wires[i].Heats >= 10 {
		step = 0.1
	}
	return trim(unit.RoundHalfUp(float64(s.Wires[i].Heats), step))
}

// sizesRow opens what would do for all wires at once.
func (m *Model) sizesRow() row {
	return row{key: "sizes", text: "the sizes that do, for all wires at once", detail: "Enter works them out for the whole loom; nothing changes before you take them", enter: func(m *Model) { m.open(sizesScreen()) }}
}

// sizesScreen lists the wires that another size does for: all in one row, then each.
func sizesScreen() screen {
	return screen{name: "sizes", page: func(m *Model, w int) page {
		p := page{lines: []string{"The thinnest size that does for heat, drop, its device and both ends, all taken together.", "Thinner than " + m.sheet.Limits.SizeMin + " is not handled here (size_min in [rules])."},
			empty: "every wire with a current has the size that does; Esc goes back"}
		p.rows = m.once("sizes", func() []row { return m.sizeRows() })
		return p
	}}
}

func (m *Model) sizeRows() []row {
	changes, h, none := m.sheet.Advise()
	var stuck []row
	for _, k := range none {
		id := m.h.Wires[k].ID
		stuck = append(stuck, row{key: "none " + id, id: id, mark: "?", text: fmt.Sprintf("%s no size does: %s", draw.Fit(id, 5, m.cfg.ASCII), m.sheet.Doubt(k, m.h.Wires[k].Size)), detail: "Enter opens the wire", enter: func(m *Model) { m.open(wireScreen(id)) },
			whyOf: func() []reason { return append(m.wireReasons(m.sheet.X.Wire[id]), m.limitReasons(id)...) }})
	}
	if len(changes) == 0 {
		return stuck
	}
	thinner := 0
	for _, c := range changes {
		a, okA := m.sheet.Cat.Wire(m.h.Wires[c.Wire].Spec, c.From)
		b, okB := m.sheet.Cat.Wire(m.h.Wires[c.Wire].Spec, c.To)
		if okA && okB && b.AreaMM2 < a.AreaMM2 {
			thinner++
		}
	}
	says := fmt.Sprintf("take all: %d thinner, %d thicker", thinner, len(changes)-thinner)
	rows := []row{{key: "all", text: says, more: func() string {
		t := m.try("sizes", func() *model.Harness { return h })
		if _, b, _ := t.b(); b.Waiting || len(b.Layers) == 0 {
			return "Enter takes it, Backspace takes it back; the lay-up follows"
		}
		return "Enter takes it: " + m.differs(m.tally(), t.tally())
	}, enter: func(m *Model) {
		m.back()
		m.change(h, fmt.Sprintf("%d wires have another size; Backspace takes it back", len(changes)))
	}}}
	rows = append(rows, stuck...)
	for _, c := range changes {
		w := &m.h.Wires[c.Wire]
		id, to := w.ID, c.To
		rows = append(rows, row{key: id, id: id, text: fmt.Sprintf("%s %-18s%6s of %s A   %s", draw.Fit(id, 5, m.cfg.ASCII), w.Size+" -> "+paper.Size(&model.Wire{Size: to}), carriesText(m.sheet, c.Wire), mostText(&m.sheet.Wires[c.Wire]), w.Signal.V),
			detail: "Enter takes this one alone", whyOf: func() []reason { return m.wireReasons(m.sheet.X.Wire[id]) },
			enter: func(m *Model) {
				m.change(m.h.EditWire(m.sheet.X.Wire[id], func(w *model.Wire) { w.Size = to }), fmt.Sprintf("wire %s is now %s", id, to))
			}})
	}
	return rows
}
