package bench

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/draw"
	"contralay/ui/paper"
)

// layersPage is the lay-up: centre and layers, then the options.
func (m *Model) layersPage(w int) page {
	mb, b, ok := m.b()
	if !ok {
		return page{empty: "no branch yet"}
	}
	var p page
	if len(b.Layers) == 0 {
		p.empty = "nothing laid: no wire runs here, or one has no known size"
		if b.Waiting {
			p.empty = "working out a lay-up"
		}
		return p
	}
	says := "as in the file"
	if b.Proposed {
		says = "proposed"
	}
	p.lines = []string{fmt.Sprintf("%s, %s, %s", m.aloud(b.Layers), b.Make, says)}
	wide, leave := max(8, w-30), 0
	if w >= 64 {
		leave = (wide - 4) / 2
		wide -= leave
	}
	p.cols = fmt.Sprintf("%-8s%-*s%-*s%-11s%8s", "layer", wide, "holds", leave, map[bool]string{true: "leaves at " + mb.To}[leave > 0], "takes", "over "+m.sys.Name())
	for k := range b.Layers {
		l := &b.Layers[k]
		r := row{
			text: fmt.Sprintf("%-8s%s%s%-11s%8s", layerWord(k), draw.Fit(m.holds(l), wide-1, m.cfg.ASCII)+" ", draw.Fit(m.leavesText(l), max(0, leave-2), m.cfg.ASCII)+map[bool]string{true: "  "}[leave > 0], takesText(k, l), m.sys.Diameter(l.OverMM)),
			key:  "layer " + layerWord(k), detail: m.layerDetail(k, l), id: firstID(l), mark: layerMark(m, k, l),
			enter: func(m *Model) { m.open(layerScreen(k)) },
			step:  func(m *Model, by int) { m.shift(k, by) },
			why:   figs(mb.ID, k, "", layerFigures...),
		}
		p.rows = append(p.rows, m.diameterOf(r, l.OverMM, "over of "+model.LayerName(k)))
	}
	if miss := m.missing(); len(miss) > 0 {
		p.rows = append(p.rows, row{text: "not laid " + strings.Join(miss, " "), mark: "!", id: miss[0],
			detail: "+ lays the first of them outermost", step: func(m *Model, _ int) { m.move(miss[0], len(m.editLayers())-1) }})
	}
	if b.Proposed { // what is to be decided first
		p.start = len(p.rows)
	}
	p.rows = append(p.rows, m.optionRows()...)
	p.rows = append(p.rows, m.once("layers", m.laidLikeRows)...)
	p.rows = append(p.rows, m.asideRows()...)
	p.rows = append(p.rows, m.wishRows()...)
	p.rows = append(p.rows,
		row{text: "outer layer laid   " + m.outer(mb), detail: "LH: going away from you over the top the wire passes to the left", step: func(m *Model, _ int) { m.flipOuter() }},
		row{text: "lay length         " + trim(float64(m.sheet.Limits.LayRatio)) + " x over", detail: "of each layer, shop rule for the whole harness; 8 to 16 is usual",
			field: &field{label: "lay length, times over", value: trim(float64(m.sheet.Limits.LayRatio)), number: true, set: func(m *Model, t string) error {
				return m.setNumber(t, 4, 40, "x over", func(v float64) *model.Harness {
					n := *m.h
					n.Rules.LayRatio = model.Some(unit.Ratio(v))
					return &n
				})
			}},
			step: func(m *Model, by int) {
				n := *m.h
				v := m.sheet.Limits.LayRatio + unit.Ratio(by)
				if v < 4 || v > 40 {
					m.tell("4 to 40 times over")
					return
				}
				n.Rules.LayRatio = model.Some(v)
				m.change(&n, "lay length "+trim(float64(v))+" x over")
			}},
		row{text: "make               " + b.Make, detail: "laid, twisted or straight", step: func(m *Model, by int) { m.stepMake(by) }})
	return p
}

// layerFigures is what a layer's row and its detail show.
var layerFigures = []string{"layer.over", "layer.takes", "layer.room", "layer.proud", "layer.lay", "layer.turns", "layer.bent", "layer.flat"}

func (m *Model) aloud(ls []calc.Layer) string {
	var n []int
	for k, l := range ls {
		c := len(l.Members)
		if k == 0 && l.Fillers > 0 && len(l.Members) == 6 {
			c-- // the rod in the middle of five
		}
		n = append(n, c)
	}
	return paper.Aloud(n, m.cfg.ASCII)
}

func layerWord(k int) string {
	if k == 0 {
		return "centre"
	}
	return fmt.Sprint(k)
}

func firstID(l *calc.Layer) string {
	if len(l.Members) == 0 {
		return ""
	}
	return l.Members[0].ID
}

// holds is what a layer has, by size: "C1 + 9 x 22 + 1 x 20".
func (m *Model) holds(l *calc.Layer) string {
	count := map[string]int{}
	var order []string
	for _, c := range l.Members {
		name := c.ID
		if i, ok := m.sheet.X.Wire[c.ID]; ok {
			name = m.h.Wires[i].Size
		} else if c.Kind == calc.OfFiller {
			name = "filler"
		}
		if count[name]++; count[name] == 1 {
			order = append(order, name)
		}
	}
	var parts []string
	for _, n := range order {
		if _, isUnit := m.sheet.X.Unit[n]; isUnit {
			parts = append(parts, n)
			continue
		}
		parts = append(parts, fmt.Sprintf("%d x %s", count[n], n))
	}
	return strings.Join(parts, " + ")
}

// leavesText is where the members of a layer go on from the branch's to end, by
// the next branch or the end itself: "R1 6, L2 1".
func (m *Model) leavesText(l *calc.Layer) string {
	count := map[string]int{}
	var order []string
	for _, c := range l.Members {
		if c.Kind == calc.OfFiller {
			continue
		}
		to := m.sheet.NextAfter(m.branch, c.ID)
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

func takesText(k int, l *calc.Layer) string {
	switch {
	case k == 0:
		return ""
	case l.Room > 0:
		return fmt.Sprintf("%d room %d", l.Takes, l.Room)
	case l.Takes < len(l.Members):
		return fmt.Sprintf("%d short %d", l.Takes, len(l.Members)-l.Takes)
	}
	return fmt.Sprint(l.Takes)
}

func layerMark(m *Model, k int, l *calc.Layer) string {
	switch {
	case k == 0:
		return ""
	case l.Lift > m.sheet.Limits.LiftStop || !l.Closes:
		return "!"
	case l.Lift > m.sheet.Limits.LiftTight:
		return "?"
	}
	return ""
}

func (m *Model) layerDetail(k int, l *calc.Layer) string {
	closes := "easy"
	switch {
	case k == 0:
		closes = ""
	case l.Lift > m.sheet.Limits.LiftTight:
		closes = fmt.Sprintf("will not close: stands %s mm proud", unit.Fixed(float64(l.ProudMM), 2))
	case l.Lift > m.sheet.Limits.LiftMax:
		closes = fmt.Sprintf("tight: stands %s mm proud", unit.Fixed(float64(l.ProudMM), 2))
	}
	text := capital(model.LayerName(k))
	if closes != "" {
		text += " " + closes
	}
	if l.LayMM > 0 {
		text += fmt.Sprintf(", %s, turn %s %s, %s turns", l.Hand, m.sys.Length(l.LayMM), m.sys.Name(), unit.Fixed(float64(l.Turns), 1))
	}
	if l.FlatMM > 0 && k > 0 {
		text += fmt.Sprintf(", in the bend %s of %s", m.sys.Fine(l.BentMM), m.sys.Fine(l.FlatMM))
	}
	if l.Tracer != "" {
		text += ", tracer " + l.Tracer
	}
	return text
}

func capital(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

func (m *Model) missing() []string {
	b := &m.h.Branches[m.branch]
	if len(b.Layers) == 0 {
		return nil
	}
	var out []string
	for _, id := range m.sheet.Branches[m.branch].Components {
		if !slices.ContainsFunc(b.Layers, func(l model.Layer) bool { return slices.Contains(l.Of, id) }) {
			out = append(out, id)
		}
	}
	return out
}

// uses reports whether the branch is laid as an option.
func (m *Model) uses(o calc.Option) bool {
	_, b, _ := m.b()
	if len(o.Layers) != len(b.Layers) || len(o.Spares) > 0 {
		return false
	}
	for k, l := range o.Layers {
		ids := map[string]bool{}
		for _, c := range b.Layers[k].Members {
			ids[c.ID] = true
		}
		fillers := b.Layers[k].Fillers
		if k == 0 && len(l.Of) == 5 {
			fillers = 0
		}
		if fillers != l.Fillers.V || b.As[k].BindMM.V != l.BindMM.V || len(b.As[k].Of) != len(l.Of) {
			return false
		}
		for _, id := range l.Of {
			if !ids[id] {
				return false
			}
		}
	}
	return true
}
