package bench

import (
	"fmt"
	"strings"

	"contralay/calc"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/draw"
	"contralay/ui/paper"
)

// mostOptions is how many lay-ups are listed.
const mostOptions = 8

// optionRows is the table of lay-ups worth having. Moving along it draws each;
// Enter takes it.
func (m *Model) optionRows() []row {
	mb, b, _ := m.b()
	if b.Make != "laid" {
		return nil
	}
	key := m.sheet.PlanKey(m.branch)
	prop, ok := m.sheet.Proposals[key]
	if !ok {
		return []row{{text: "options: working out", detail: "they join when ready", key: "options"}}
	}
	var out []row
	proven := true
	for k, o := range prop.Options {
		if k == mostOptions {
			break
		}
		proven = proven && o.Plan.Proven
		in := " "
		if m.uses(o) {
			in = "="
		}
		aloud := paper.Aloud(paper.Counts(o.Plan), m.cfg.ASCII)
		name := fmt.Sprintf("option %d: %s, %d spares, %v", k, aloud, len(o.Spares), o.Cost)
		out = append(out, row{
			key:  name,
			text: fmt.Sprintf("%s %c  %s %5s  %s", in, 'A'+k, draw.Fit(aloud, 17, m.cfg.ASCII), m.sys.Diameter(o.Plan.Over), optionExtras(o)),
			show: func(m *Model) *Model {
				return m.try(name, func() *model.Harness { return m.sheet.Laid(m.h, m.branch, o) })
			},
			more: func() string {
				if in == "=" {
					return fmt.Sprintf("option %c: %s, as it is laid; %s", 'A'+k, aloud, m.brokenText(o))
				}
				t := m.try(name, func() *model.Harness { return m.sheet.Laid(m.h, m.branch, o) })
				return fmt.Sprintf("option %c, %s, Enter takes it: %s", 'A'+k, m.brokenText(o), m.differs(m.tally(), t.tally()))
			},
			why:   figs(mb.ID, k, "", "option.over"),
			enter: func(m *Model) { m.take(o) },
		})
	}
	switch {
	case len(out) == 0:
		out = append(out, row{key: "options", text: "no other lay-up keeps what is held", detail: "a locked layer or something pinned rules the others out"})
	case m.search != nil && m.search.key == key:
		out = append(out, row{key: "search", text: fmt.Sprintf("  searching on, %d %% done", int(100*m.search.share.Load()/shareWhole)),
			detail: "Enter stops it and keeps the best so far; every key works meanwhile", enter: func(m *Model) { m.stopSearch() }})
	case !proven:
		out = append(out, row{key: "search", text: "  not every lay-up was tried", detail: "Enter searches on, beside your work; it can be stopped", enter: func(m *Model) { m.startSearch() }})
	}
	return out
}

// brokenText is how many layers part at the breakouts of the branch in hand.
func (m *Model) brokenText(o calc.Option) string {
	n := m.sheet.Broken(m.branch, o.Layers)
	if n == 0 {
		return "no layer parts at a breakout"
	}
	return plural(n, "layer parts", "layers part") + " at its breakouts"
}

// optionExtras is what a lay-up has beside its diameter.
func optionExtras(o calc.Option) string {
	var t []string
	if n := len(o.Spares); n > 0 {
		t = append(t, plural(n, "spare", "spares"))
	}
	if o.Plan.Fillers > 0 {
		t = append(t, plural(o.Plan.Fillers, "filler", "fillers"))
	}
	if o.Buried > 0 {
		t = append(t, fmt.Sprintf("%d buried", o.Buried))
	}
	if o.Plan.Lumpy > 0 {
		t = append(t, "lumpy")
	}
	return strings.Join(t, ", ")
}

func plural(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}

// wishRows is what the options should keep to, with what each costs; a wish that
// could change nothing here is not shown.
func (m *Model) wishRows() []row {
	mb, b, _ := m.b()
	if b.Make != "laid" {
		return nil
	}
	prop := m.sheet.Proposals[m.sheet.PlanKey(m.branch)]
	wish := func(name, why string, on bool, cost unit.Millimetre, known bool, set func(b *model.Branch, v bool)) row {
		says := map[bool]string{true: "wished", false: "not wished"}[on]
		if on && known {
			switch c := m.sys.Fine(max(cost, -cost)); {
			case cost < 0 || c == m.sys.Fine(0):
				says += ", costs nothing" // less than nothing: a narrower search found a thinner one
			default:
				says += fmt.Sprintf(", costs %s %s", c, m.sys.Name())
			}
		}
		what := map[bool]string{true: "wish.leavers", false: "wish.units"}[strings.HasPrefix(name, "leavers")]
		return row{key: "wish " + name, why: figs(mb.ID, 0, "", what), text: fmt.Sprintf("%-21s%s", name, says), detail: why + "; + - changes the wish, and the options with it",
			step: func(m *Model, _ int) {
				m.change(m.h.EditBranch(m.branch, func(b *model.Branch) { set(b, !on) }), name+": "+map[bool]string{false: "wished", true: "not wished"}[on])
			}}
	}
	var out []row
	differ, units := false, false
	for _, l := range b.Layers {
		for _, c := range l.Members {
			units = units || c.Kind == calc.OfUnit
			differ = differ || c.Kind != calc.OfFiller && c.Leaves != b.Layers[0].Members[0].Leaves
		}
	}
	if differ {
		out = append(out, wish("leavers outside", "what leaves first has nothing over it that leaves later", mb.LeaversOut.Or(true), prop.LeaversMM, prop.LeaversKnown,
			func(b *model.Branch, v bool) { b.LeaversOut = model.Some(v) }))
	}
	if units {
		out = append(out, wish("units in the centre", "what is made up already lies in the middle", mb.UnitsIn.Or(true), prop.UnitsMM, prop.UnitsKnown,
			func(b *model.Branch, v bool) { b.UnitsIn = model.Some(v) }))
	}
	if r, any := m.apartRow(); any {
		out = append(out, r)
	}
	return out
}

// apartRow is the wish to keep trigger and data from power, shown where one lies
// beside the other or would without it.
func (m *Model) apartRow() (row, bool) {
	mb, b, _ := m.b()
	on := mb.DataApart.V
	flip := func() *model.Harness {
		return m.h.EditBranch(m.branch, func(b *model.Branch) { b.DataApart = model.Some(!on) })
	}
	beside := func(b *calc.Branch) (n int) {
		for k := range b.Layers {
			n += b.Layers[k].Beside
		}
		return n
	}
	now := beside(b)
	says := fmt.Sprintf("not wished, %s", plural(now, "place beside power", "places beside power"))
	if on {
		_, other, _ := m.try("apart", flip).b()
		if beside(other) == 0 && now == 0 {
			return row{}, false
		}
		says = fmt.Sprintf("wished, %d of %d left", now, beside(other))
		if d := b.OverMM - other.OverMM; m.sys.Fine(max(d, -d)) != m.sys.Fine(0) {
			says += fmt.Sprintf(", costs %s %s", m.sys.Fine(max(d, 0)), m.sys.Name())
		} else {
			says += ", costs nothing"
		}
	} else if now == 0 {
		return row{}, false
	}
	return row{key: "wish apart", why: figs(mb.ID, 0, "", "wish.apart"), text: fmt.Sprintf("%-21s%s", "data apart", says), detail: "trigger and data do not lie beside power in a layer; + - changes the wish, and nothing but their order",
		step: func(m *Model, _ int) {
			m.change(flip(), "data apart: "+map[bool]string{false: "wished", true: "not wished"}[on])
		}}, true
}
