package bench

import (
	"fmt"

	"contralay/calc"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/draw"
)

// marginRow is what has least left to its temperature in the branch, and opens the list.
func (m *Model) marginRow() (row, bool) {
	all := m.sheet.Margins(m.branch)
	if len(all) == 0 {
		return row{}, false
	}
	r := m.marginOf(all[0])
	r.key, r.text = "margins", "least margin  "+r.text
	r.detail = "Enter lists all that has a limit here, by what is left"
	r.enter = func(m *Model) { m.open(marginsScreen()) }
	return r, true
}

func (m *Model) marginOf(g calc.Margin) row {
	mem := memMark(g.Standing == catalogue.Memory)
	mark := ""
	if g.Left() < 0 {
		mark = "!"
	}
	say := func(name string, v unit.Celsius, from catalogue.Origin) reason {
		return reason{made: func() (calc.Why, bool) {
			return calc.Stated(name, "by "+from.Source, float64(v), calc.Celsius, from), true
		}}
	}
	return row{key: g.What, mark: mark, text: fmt.Sprintf("%s C  %s, %s of %s%s", unit.Fixed(float64(g.Left()), 0), draw.Cut(g.What, 30, m.cfg.ASCII), unit.Fixed(float64(g.AtC), 0), unit.Fixed(float64(g.LimitC), 0), mem),
		why: []reason{say("what "+g.What+" stands", g.LimitC, g.Origin), say("what it meets here", g.AtC, catalogue.Origin{Source: "the air, or the heat balance", Standing: catalogue.Memory})}}
}

func marginsScreen() screen {
	return screen{name: "margins", pick: true, page: func(m *Model, w int) page {
		p := page{lines: []string{"What is left to the temperature each thing stands, least first."}, empty: "nothing with a limit lies here; Esc goes back"}
		for _, g := range m.sheet.Margins(m.branch) {
			p.rows = append(p.rows, m.marginOf(g))
		}
		return p
	}}
}
