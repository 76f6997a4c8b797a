package sheath

import (
	"fmt"

	"contralay/calc/phase/threading"
	"contralay/calc/query/why"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
)

// marginRow is what has least left to its temperature in the branch, and opens the list.
func marginRow(m *desk.Model) (desk.Row, bool) {
	all := threading.Margins(m.Sheet, m.Branch)
	if len(all) == 0 {
		return desk.Row{}, false
	}
	r := marginOf(m, all[0])
	r.Key, r.Text = "margins", "heat margin   "+r.Text
	r.Detail = "Enter lists every part that has a limit here, smallest margin first"
	r.Enter = func(m *desk.Model) { m.Show(MarginsKind, "") }
	return r, true
}

func marginOf(m *desk.Model, g threading.Margin) desk.Row {
	mem := words.MemMark(g.Standing == catalogue.Memory)
	mark := ""
	if g.Left() < 0 {
		mark = "!"
	}
	say := func(name string, v unit.Celsius, from catalogue.Origin) desk.Reason {
		return desk.Reason{Made: func() (why.Why, bool) {
			return why.Stated(name, "by "+from.Source, float64(v), why.Celsius, from), true
		}}
	}
	return desk.Row{Key: g.What, Mark: mark, Text: fmt.Sprintf("%s C  %s, %s of %s%s", unit.Fixed(g.Left(), 0),
		draw.Cut(g.What, 30, m.Cfg.ASCII), unit.Fixed(g.AtC, 0), unit.Fixed(g.LimitC, 0), mem),
		Why: []desk.Reason{say("temperature limit of "+g.What+"", g.LimitC, g.Origin),
			say("how hot it gets here", g.AtC, catalogue.Origin{Source: "the air, or the heat balance", Standing: catalogue.Memory})}}
}

// MarginsKind is the screen of what is left to the temperature that each thing stands.
const MarginsKind desk.Kind = "margins"

// MarginsPage lists it for the branch, least first.
func MarginsPage(m *desk.Model, _ int, _ string) desk.Page {
	p := desk.Page{Lines: []string{"Temperature margin of each part, smallest first."},
		Empty: "No part here has a temperature limit. Esc goes back"}
	for _, g := range threading.Margins(m.Sheet, m.Branch) {
		p.Rows = append(p.Rows, marginOf(m, g))
	}
	return p
}
