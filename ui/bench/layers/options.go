package layers

import (
	"fmt"
	"strings"

	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
	"contralay/calc/query/offer"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
	"contralay/ui/paper"
)

// optionRows is the table of lay-ups worth having. Moving along it draws each;
// Enter takes it.
func optionRows(m *desk.Model) []desk.Row {
	_, b, _ := m.BranchHere()
	if b.Make != model.MakeLaid {
		return nil
	}
	key := bundle.PlanKey(m.Sheet, m.Branch)
	prop, ok := m.Sheet.Proposals[key]
	if !ok {
		return []desk.Row{{Text: "options: working out", Detail: "They appear here when they are ready", Key: "options"}}
	}
	if len(prop.Options) == 0 {
		return []desk.Row{{Key: "options", Text: "no other lay-up keeps what is locked",
			Detail: "A locked layer or a pinned piece rules the others out"}}
	}
	var out []desk.Row
	for k := range prop.AtOnce() {
		out = append(out, optionRow(m, prop, k))
	}
	return append(out, searchRow(m, key, prop))
}

// optionRow is one option; its letter stays with it.
func optionRow(m *desk.Model, prop sheet.Proposal, k int) desk.Row {
	mb, _, _ := m.BranchHere()
	o := prop.Options[k]
	in := " "
	if usesOption(m, o) {
		in = "="
	}
	letter, aloud := prop.Letter(k), paper.Aloud(paper.Counts(o.Plan), m.Cfg.ASCII)
	name := fmt.Sprintf("option %d: %s, %d spares, %v", k, aloud, len(o.Spares), o.Cost)
	return desk.Row{
		Key: name,
		Text: fmt.Sprintf("%s %c  %s %5s  %s", in, letter, draw.Fit(aloud, 17, m.Cfg.ASCII), m.Sys.Diameter(o.Plan.Over),
			optionExtras(o)),
		Show: func(m *desk.Model) *desk.Model {
			return m.Try(name, func() *model.Harness { return planning.Laid(m.Sheet, m.H, m.Branch, o) })
		},
		More: func() string {
			if in == "=" {
				return fmt.Sprintf("Option %c: %s, in use. %s%s", letter, aloud, builtText(m), brokenText(m, o))
			}
			t := m.Try(name, func() *model.Harness { return planning.Laid(m.Sheet, m.H, m.Branch, o) })
			return fmt.Sprintf("Option %c: %s%s. Enter takes it: %s", letter, builtText(t), brokenText(m, o),
				t.Tally().Differs(m.Tally(), m.Sys))
		},
		Why:   desk.FiguresAt(mb.ID, k, "option.over"),
		Enter: func(m *desk.Model) { takeOption(m, o) },
	}
}

// builtText is the centre of the branch in hand before what else is said, where it is built up.
func builtText(m *desk.Model) string {
	_, b, ok := m.BranchHere()
	if !ok || len(b.Layers) == 0 || b.Layers[0].BuiltMM <= 0 {
		return ""
	}
	return b.Layers[0].BuiltUp(m.Sys) + ", "
}

// brokenText is how many layers part at the breakouts of the branch in hand.
func brokenText(m *desk.Model, o sheet.Option) string {
	n := offer.Broken(m.Sheet, m.Branch, o.Layers)
	if n == 0 {
		return "no layer splits at a breakout"
	}
	return words.Plural(n, "layer splits", "layers split") + " at its breakouts"
}

// optionExtras is what a lay-up has beside its diameter.
func optionExtras(o sheet.Option) string {
	var t []string
	if n := len(o.Spares); n > 0 {
		t = append(t, words.Plural(n, "spare", "spares"))
	}
	if to, _ := o.Plan.BuiltUp(); to > 0 {
		t = append(t, "built up")
	}
	if n := o.Plan.Rods(); n > 0 {
		t = append(t, words.Plural(n, "filler", "fillers"))
	}
	if o.Buried > 0 {
		t = append(t, fmt.Sprintf("%d buried", o.Buried))
	}
	if o.Plan.Lumpy > 0 {
		t = append(t, "lumpy")
	}
	return strings.Join(t, ", ")
}

// wishRows is what the options should keep to, with what each costs; a wish that
// could change nothing here is not shown.
func wishRows(m *desk.Model) []desk.Row {
	mb, b, _ := m.BranchHere()
	if b.Make != model.MakeLaid {
		return nil
	}
	prop := m.Sheet.Proposals[bundle.PlanKey(m.Sheet, m.Branch)]
	wish := func(name, why string, on bool, cost unit.Millimetre, known bool, set func(b *model.Branch, v bool)) desk.Row {
		says := words.Either(on, "preferred", "not preferred")
		if on && known {
			switch c := m.Sys.Fine(max(cost, -cost)); {
			case cost < 0 || c == m.Sys.Fine(0):
				says += ", no cost in OD" // less than nothing: a narrower search found a thinner one
			default:
				says += fmt.Sprintf(", costs %s %s", c, m.Sys.Name())
			}
		}
		what := words.Either(strings.HasPrefix(name, "leavers"), "wish.leavers", "wish.units")
		return desk.Row{Key: "wish " + name, Why: desk.FiguresOf(mb.ID, what), Text: fmt.Sprintf("%-18s%s", name, says),
			Detail: why + ". + - changes it and the options",
			Step: func(m *desk.Model, _ int) {
				m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) { set(b, !on) }),
					name+": "+words.Either(on, "not preferred", "preferred"))
			}}
	}
	var out []desk.Row
	differ, units := false, false
	for _, l := range b.Layers {
		for _, c := range l.Members {
			units = units || c.Kind == sheet.OfUnit
			differ = differ || c.Kind != sheet.OfFiller && c.Leaves != b.Layers[0].Members[0].Leaves
		}
	}
	if differ {
		out = append(out, wish("leavers outside", "What leaves first lies outside what runs on", mb.LeaversOut.Or(true),
			prop.LeaversMM.V, prop.LeaversMM.Set,
			func(b *model.Branch, v bool) { b.LeaversOut = model.Some(v) }))
	}
	if units {
		out = append(out, wish("units in centre", "Made-up units lie in the middle", mb.UnitsIn.Or(true), prop.UnitsMM.V,
			prop.UnitsMM.Set,
			func(b *model.Branch, v bool) { b.UnitsIn = model.Some(v) }))
	}
	if r, any := apartRow(m); any {
		out = append(out, r)
	}
	return out
}

// apartRow is the wish to keep trigger and data from power, shown where one lies
// beside the other or would without it.
func apartRow(m *desk.Model) (desk.Row, bool) {
	mb, b, _ := m.BranchHere()
	on := mb.DataApart.V
	flip := func() *model.Harness {
		return m.H.EditBranch(m.Branch, func(b *model.Branch) { b.DataApart = model.Some(!on) })
	}
	beside := func(b *sheet.Branch) (n int) {
		for k := range b.Layers {
			n += b.Layers[k].Beside
		}
		return n
	}
	now := beside(b)
	says := fmt.Sprintf("not preferred, %s", words.Plural(now, "place beside power", "places beside power"))
	if on {
		_, other, _ := m.Try("apart", flip).BranchHere()
		if beside(other) == 0 && now == 0 {
			return desk.Row{}, false
		}
		says = fmt.Sprintf("preferred, %d of %d left", now, beside(other))
		if d := b.OverMM - other.OverMM; m.Sys.Fine(max(d, -d)) != m.Sys.Fine(0) {
			says += fmt.Sprintf(", costs %s %s", m.Sys.Fine(max(d, 0)), m.Sys.Name())
		} else {
			says += ", no cost in OD"
		}
	} else if now == 0 {
		return desk.Row{}, false
	}
	return desk.Row{Key: "wish apart", Why: desk.FiguresOf(mb.ID, "wish.apart"), Text: fmt.Sprintf("%-18s%s", "data apart", says),
		Detail: "Trigger and data do not lie beside power. + - changes only their order",
		Step: func(m *desk.Model, _ int) {
			m.Change(flip(), "data apart: "+words.Either(on, "not preferred", "preferred"))
		}}, true
}
