package bench

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/calc"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/draw"
	"contralay/ui/paper"
)

// wiresPage lists what runs through the branch: size, colour, current, where it
// leaves.
func (m *Model) wiresPage(w int) page {
	_, b, ok := m.b()
	if !ok {
		return page{empty: "no branch yet"}
	}
	var p page
	ids := m.wiresHere()
	p.lines = append(p.lines, fmt.Sprintf("%d things to lay, %d conductors", len(b.Components), len(ids)))
	p.lines = append(p.lines, "free cavities: "+m.freeText())
	if r, ok := m.judgeRow(ids); ok {
		p.rows, p.start = append(p.rows, r), 1
	}
	cut := w >= 66 // the cut length, where there is room for it
	wide := max(6, w-33)
	if cut {
		wide -= 8 + 13
	}
	p.cols = fmt.Sprintf("%-5s%-*s%-8s%-4s%5s  %-6s", "wire", wide, "signal", "size", "col", "A", "to")
	if cut {
		p.cols += fmt.Sprintf("%7s%6s%8s", "most A", "C", "cut "+m.sys.Name())
	}
	p.rows = append(p.rows, m.once(fmt.Sprint("list ", w, m.sys), func() []row { return m.wireRows(ids, wide, cut) })...)
	if len(ids) > 0 {
		p.rows = append(p.rows, m.moreRow(m.h.Wires[ids[len(ids)-1]].ID))
	}
	if len(ids) > 0 {
		p.rows = append(p.rows, m.sizesRow(), m.feedsRow())
	}
	p.rows = append(p.rows, m.once("wires", func() []row { return append(m.likeRows(ids), m.mirrorRows()...) })...)
	p.empty = "no wire runs here yet: its ends are written in the file, or taken from a branch like it"
	return p
}

// wireRows is one row a wire; they hang on the sheet, the branch and the room there is,
// so moving along them makes none of them again.
func (m *Model) wireRows(ids []int, wide int, cut bool) []row {
	mb := &m.h.Branches[m.branch]
	var rows []row
	for _, i := range ids {
		hw := &m.h.Wires[i]
		id := hw.ID
		comp := id
		if u, in := m.sheet.X.UnitOf[hw.ID]; in {
			comp = m.h.Units[u].ID
		}
		r := row{
			textOf: func() string { return m.wireText(i, wide, cut, mb) },
			more:   func() string { return m.wireDetail(i, comp) }, id: comp, mark: m.markFor(hw.ID),
			enter: func(m *Model) { m.open(wireScreen(id)) },
			field: m.ampsField(i),
			step:  func(m *Model, by int) { m.stepSize(m.sheet.X.Wire[id], by) },
			drop:  func(m *Model) { m.removeWire(id) },
			whyOf: func() []reason { return m.wireReasons(i) },
		}
		rows = append(rows, r.of(strings.TrimPrefix(ampsText(hw), "-"), "A  in wire "+id))
	}
	return rows
}

// wireText is wire i's row of the list.
func (m *Model) wireText(i, wide int, cut bool, mb *model.Branch) string {
	hw, cw := &m.h.Wires[i], &m.sheet.Wires[i]
	cutText := ""
	if cut {
		cutText = "       -"
		if cw.Cut > 0 {
			cutText = fmt.Sprintf("%8s", m.sys.Length(cw.Cut))
		}
		cutText = fmt.Sprintf("%7s%6s", mostText(cw), hotText(cw)) + cutText
	}
	return fmt.Sprintf("%s%s%s%s%5s  %s%s", draw.Fit(hw.ID, 4, m.cfg.ASCII)+" ", draw.Fit(hw.Signal.V, wide-1, m.cfg.ASCII)+" ",
		draw.Fit(paper.Size(hw), 7, m.cfg.ASCII)+" ", draw.Fit(hw.Colour.V, 3, m.cfg.ASCII)+" ", ampsText(hw), draw.Fit(m.leaves(hw, mb), 6, m.cfg.ASCII), cutText)
}

// wiresHere is the wires of the branch, units' wires too, in file order.
func (m *Model) wiresHere() []int {
	var out []int
	for i, w := range m.sheet.Wires {
		if slices.Contains(w.Path, m.branch) {
			out = append(out, i)
		}
	}
	return out
}

func ampsText(w *model.Wire) string {
	if !w.Amps.Set {
		return "-"
	}
	return strconv.FormatFloat(float64(w.Amps.V), 'f', -1, 64)
}

// leaves is where a wire ends beyond the branch's to end.
func (m *Model) leaves(w *model.Wire, b *model.Branch) string {
	to := m.sheet.FarEnd(m.branch, w.ID)
	if e, ok := m.sheet.X.End(to); ok {
		if e.Splice != "" {
			return e.Splice
		}
		return e.Termination
	}
	return b.To
}

func (m *Model) freeText() string {
	var parts []string
	for i, t := range m.sheet.Terms {
		if len(t.Free) > 0 {
			parts = append(parts, fmt.Sprintf("%s %d", m.h.Terminations[i].ID, len(t.Free)))
		}
	}
	if len(parts) == 0 {
		return "none"
	}
	if len(parts) > 5 {
		parts = append(parts[:5], "…")
	}
	return strings.Join(parts, ", ")
}

func (m *Model) wireDetail(i int, comp string) string {
	w, c := &m.h.Wires[i], &m.sheet.Wires[i]
	text := w.ID + ": "
	if c.Bounded {
		text += fmt.Sprintf("%s of %s A, %s; ", carriesText(m.sheet, i), mostText(c), c.Bound.By)
	}
	if c.HottestKnown {
		text += hotText(c) + " C; "
	}
	text += fmt.Sprintf("%s %s, %s to %s", w.Spec, paper.Size(w), orDash(w.From.V), orDash(w.To.V))
	if c.Dia.Known() {
		text += fmt.Sprintf(", over %s %s", m.diaText(c.Dia.Nominal, c.Dia), m.sys.Name())
	}
	if c.DropKnown {
		text += fmt.Sprintf(", drops %s V", unit.Fixed(float64(c.Circuit), 2))
	}
	if comp != w.ID {
		text += ", in " + comp
	}
	return text
}

// wireReasons is the figures of a wire in a list and in its detail.
func (m *Model) wireReasons(i int) []reason {
	id := m.h.Wires[i].ID
	out := figs(id, 0, "", "wire.cut", "wire.heats", "wire.bound", "wire.hottest", "wire.circuit", "wire.drop")
	if c := &m.sheet.Wires[i]; c.Bounded {
		out = append(out, figs(id, c.BoundAt, "", "wire.limit")...)
	}
	return append(out, figs("", 0, id, "component.over")...)
}

// mostText is a wire's limit of current, marked where it rests on memory.
func mostText(c *calc.Wire) string {
	if !c.Bounded {
		return "-"
	}
	t := unit.Fixed(float64(c.Bound.Amps), 1)
	if c.Bound.Standing == catalogue.Memory {
		t += "~"
	}
	return t
}

// hotText is how warm its conductor gets.
func hotText(c *calc.Wire) string {
	if !c.HottestKnown {
		return "-"
	}
	return unit.Fixed(float64(c.HottestC), 0)
}

// closest is the wire here that is nearest to its limit of current.
func (m *Model) closest(ids []int) (at int, ok bool) {
	worst := 0.0
	for _, i := range ids {
		if share, known := m.share(i); known && share > worst {
			worst, at, ok = share, i, true
		}
	}
	return at, ok
}

func (m *Model) closestWhy(ids []int) []reason {
	i, ok := m.closest(ids)
	if !ok {
		return nil
	}
	return figs(m.h.Wires[i].ID, 0, "", "wire.bound", "wire.heats")
}

func (m *Model) diaText(v unit.Millimetre, d calc.Dia) string {
	t := m.sys.Fine(v)
	if d.Standing == "memory" {
		t += "~"
	}
	return t
}

func orDash(s string) string {
	if s == "" {
		return "-"
	}
	return s
}

// markFor is the mark of the worst snag about a thing.
func (m *Model) markFor(id string) string {
	mark := ""
	for _, s := range m.sheet.Snags {
		if s.Where != id {
			continue
		}
		switch s.Level {
		case calc.Stop:
			return "!"
		case calc.Warn:
			mark = "?"
		}
	}
	return mark
}

func (m *Model) removeWire(id string) {
	i, ok := m.sheet.X.Wire[id]
	if !ok {
		return
	}
	h, err := m.h.RemoveWire(i)
	if err != nil {
		m.refuse(err.Error())
		return
	}
	m.change(h, "wire "+id+" taken out; Backspace brings it back")
}

// stepSize takes the next thicker or thinner size of the wire's specification.
func (m *Model) stepSize(i, by int) {
	w := m.h.Wires[i]
	sizes := m.sheet.Cat.Sizes(w.Spec)
	at := slices.Index(sizes, w.Size)
	if at < 0 {
		m.refuse(fmt.Sprintf("%s has no size %s in the catalogue", w.Spec, w.Size))
		return
	}
	if at+by < 0 || at+by >= len(sizes) {
		m.tell(fmt.Sprintf("%s is the last size of %s", w.Size, w.Spec))
		return
	}
	size := sizes[at+by]
	m.change(m.h.EditWire(i, func(w *model.Wire) { w.Size = size }), fmt.Sprintf("wire %s is now %s", w.ID, size))
}

func (m *Model) ampsField(i int) *field {
	id := m.h.Wires[i].ID
	value := ""
	if m.h.Wires[i].Amps.Set {
		value = ampsText(&m.h.Wires[i])
	}
	return &field{label: "current of wire " + id, unit: "A", value: value, number: true, set: func(m *Model, text string) error {
		return m.setNumber(text, 0, 1000, "A", func(v float64) *model.Harness {
			return m.h.EditWire(m.sheet.X.Wire[id], func(w *model.Wire) { w.Amps = model.Some(unit.Ampere(v)) })
		})
	}}
}

// setNumber reads a number, tests its range and makes the change.
func (m *Model) setNumber(text string, least, most float64, name string, make func(v float64) *model.Harness) error {
	v, err := unit.ParseNumber(text)
	if err != nil {
		return fmt.Errorf("a number is wanted, %s to %s %s", trim(least), trim(most), name)
	}
	if v < least || v > most {
		return fmt.Errorf("%s %s is out of range: %s to %s %s", trim(v), name, trim(least), trim(most), name)
	}
	m.change(make(v), fmt.Sprintf("set to %s %s", trim(v), name))
	return nil
}

func trim(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

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
