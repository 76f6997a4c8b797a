package layers

import (
	"fmt"
	"strings"

	"contralay/calc/phase/bundle"
	"contralay/calc/query/offer"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/layers/ways"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
)

// layupRows are the lay-ups worth having that were worked out at once, and how far the search for more has come.
func layupRows(m *desk.Model, k ways.Kind, t ways.Columns) []desk.Row {
	var out []desk.Row
	more := 0
	for n, w := range k.Ways {
		switch {
		case w.Found:
		case len(out) < ways.FirstLayups:
			out = append(out, layupRow(m, k, n, t))
		default:
			more++
		}
	}
	if more > 0 {
		out = append(out, desk.Row{Key: "kind " + ways.LayupID,
			Text:   draw.Fit("  lay-up", tableName, m.Cfg.ASCII) + fmt.Sprintf(" %d more", more),
			Detail: "Enter opens all that are worth having, side by side",
			Enter:  func(m *desk.Model) { openWays(m, ways.LayupID, ways.FirstLayups) }})
	}
	return append(out, searchRows(m)...)
}

// layupRow is one lay-up. The picture shows it while the row is in hand; Enter takes it.
func layupRow(m *desk.Model, k ways.Kind, n int, t ways.Columns) desk.Row {
	mb, b, _ := m.BranchHere()
	w := k.Ways[n]
	o := m.Sheet.Proposals[bundle.PlanKey(m.Sheet, m.Branch)].Options[w.Option]
	name := fmt.Sprintf("%c  %s", w.Letter, closeUp(w.Text(m), tableName-len("= A  ")))
	var r desk.Row
	if n == k.Now {
		r = t.Row(ways.Entry{Name: "= " + name, Figures: ways.Present(m)})
		r.Tints = nil
		r.WhyOf = func() []desk.Reason { return reasons(m, m.Sheet) }
		r.More = func() string {
			if b.Proposed {
				return fmt.Sprintf("Option %c is proposed: %s. Enter lays the branch so", w.Letter, inUseText(m, o))
			}
			return fmt.Sprintf("Option %c is in use: %s", w.Letter, inUseText(m, o))
		}
	} else {
		r = outcomeRow(m, t, "  "+name, w)
		if came, known := ways.Came(m, w); known && came.Err == nil {
			r.More = func() string { return ways.DiffersText(m, fmt.Sprintf("Option %c", w.Letter), came, "Enter takes it") }
		}
	}
	r.Key, r.Why = w.Key, desk.FiguresAt(mb.ID, w.Option, "option.over")
	if made := r.WhyOf; made != nil {
		r.WhyOf = func() []desk.Reason { return append(desk.FiguresAt(mb.ID, w.Option, "option.over"), made()...) }
	}
	r.Enter, r.Does = func(m *desk.Model) { takeOption(m, o) }, "take"
	return r
}

// closeUp is a lay-up said aloud, without its blanks where it has no room with them.
func closeUp(aloud string, room int) string {
	if draw.Width(aloud) > room {
		return strings.ReplaceAll(aloud, " ", "")
	}
	return aloud
}

// searchRows says how far the search for lay-ups of the branch in hand has come.
func searchRows(m *desk.Model) []desk.Row {
	_, b, ok := m.BranchHere()
	if !ok || b.Make != model.MakeLaid {
		return nil
	}
	key := bundle.PlanKey(m.Sheet, m.Branch)
	p, known := m.Sheet.Proposals[key]
	switch {
	case !known:
		return []desk.Row{{Text: "options: working out", Detail: "They appear here when they are ready", Key: "options"}}
	case len(p.Options) == 0:
		return []desk.Row{{Key: "options", Text: "no other lay-up keeps what is locked",
			Detail: "A locked layer or a pinned piece rules the others out"}}
	}
	return []desk.Row{searchRow(m, key, p)}
}

// inUseText is what is to be said of a lay-up that the branch in hand has.
func inUseText(m *desk.Model, o sheet.Option) string {
	return strings.TrimPrefix(ways.BuiltText(m)+", ", ", ") + brokenText(m, o)
}

// brokenText is how many layers part at the breakouts of the branch in hand.
func brokenText(m *desk.Model, o sheet.Option) string {
	n := offer.Broken(m.Sheet, m.Branch, o.Layers)
	if n == 0 {
		return "no layer splits at a breakout"
	}
	return words.Plural(n, "layer splits", "layers split") + " at its breakouts"
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
