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

// mostOptions is how many lay-ups are listed.
const mostOptions = 8

// OptionRows is the table of lay-ups worth having. Moving along it draws each;
// Enter takes it.
func OptionRows(m *desk.Model) []desk.Row {
	mb, b, _ := m.B()
	if b.Make != model.MakeLaid {
		return nil
	}
	key := bundle.PlanKey(m.Sheet, m.Branch)
	prop, ok := m.Sheet.Proposals[key]
	if !ok {
		return []desk.Row{{Text: "options: working out", Detail: "they join when ready", Key: "options"}}
	}
	var out []desk.Row
	proven := true
	for k, o := range prop.Options {
		if k == mostOptions {
			break
		}
		proven = proven && o.Plan.Proven
		in := " "
		if m.Uses(o) {
			in = "="
		}
		aloud := paper.Aloud(paper.Counts(o.Plan), m.Cfg.ASCII)
		name := fmt.Sprintf("option %d: %s, %d spares, %v", k, aloud, len(o.Spares), o.Cost)
		out = append(out, desk.Row{
			Key: name,
			Text: fmt.Sprintf("%s %c  %s %5s  %s", in, 'A'+k, draw.Fit(aloud, 17, m.Cfg.ASCII), m.Sys.Diameter(o.Plan.Over),
				optionExtras(o)),
			Show: func(m *desk.Model) *desk.Model {
				return m.Try(name, func() *model.Harness { return planning.Laid(m.Sheet, m.H, m.Branch, o) })
			},
			More: func() string {
				if in == "=" {
					return fmt.Sprintf("option %c: %s, as it is laid; %s", 'A'+k, aloud, BrokenText(m, o))
				}
				t := m.Try(name, func() *model.Harness { return planning.Laid(m.Sheet, m.H, m.Branch, o) })
				return fmt.Sprintf("option %c, %s, Enter takes it: %s", 'A'+k, BrokenText(m, o), m.Differs(m.Tally(), t.Tally()))
			},
			Why:   desk.Figs(mb.ID, k, "", "option.over"),
			Enter: func(m *desk.Model) { m.Take(o) },
		})
	}
	switch {
	case len(out) == 0:
		out = append(out, desk.Row{Key: "options", Text: "no other lay-up keeps what is held",
			Detail: "a locked layer or something pinned rules the others out"})
	case m.Search != nil && m.Search.Key == key:
		out = append(out, desk.Row{Key: "search",
			Text:   fmt.Sprintf("  searching on, %d %% done", int(100*m.Search.Share.Load()/desk.ShareWhole)),
			Detail: "Enter stops it and keeps the best so far; every key works meanwhile", Enter: func(m *desk.Model) { m.StopSearch() }})
	case !proven:
		out = append(out, desk.Row{Key: "search", Text: "  not every lay-up was tried",
			Detail: "Enter searches on, beside your work; it can be stopped", Enter: func(m *desk.Model) { m.StartSearch() }})
	}
	return out
}

// BrokenText is how many layers part at the breakouts of the branch in hand.
func BrokenText(m *desk.Model, o sheet.Option) string {
	n := offer.Broken(m.Sheet, m.Branch, o.Layers)
	if n == 0 {
		return "no layer parts at a breakout"
	}
	return words.Plural(n, "layer parts", "layers part") + " at its breakouts"
}

// optionExtras is what a lay-up has beside its diameter.
func optionExtras(o sheet.Option) string {
	var t []string
	if n := len(o.Spares); n > 0 {
		t = append(t, words.Plural(n, "spare", "spares"))
	}
	if o.Plan.Fillers > 0 {
		t = append(t, words.Plural(o.Plan.Fillers, "filler", "fillers"))
	}
	if o.Buried > 0 {
		t = append(t, fmt.Sprintf("%d buried", o.Buried))
	}
	if o.Plan.Lumpy > 0 {
		t = append(t, "lumpy")
	}
	return strings.Join(t, ", ")
}

// WishRows is what the options should keep to, with what each costs; a wish that
// could change nothing here is not shown.
func WishRows(m *desk.Model) []desk.Row {
	mb, b, _ := m.B()
	if b.Make != model.MakeLaid {
		return nil
	}
	prop := m.Sheet.Proposals[bundle.PlanKey(m.Sheet, m.Branch)]
	wish := func(name, why string, on bool, cost unit.Millimetre, known bool, set func(b *model.Branch, v bool)) desk.Row {
		says := map[bool]string{true: "wished", false: "not wished"}[on]
		if on && known {
			switch c := m.Sys.Fine(max(cost, -cost)); {
			case cost < 0 || c == m.Sys.Fine(0):
				says += ", costs nothing" // less than nothing: a narrower search found a thinner one
			default:
				says += fmt.Sprintf(", costs %s %s", c, m.Sys.Name())
			}
		}
		what := map[bool]string{true: "wish.leavers", false: "wish.units"}[strings.HasPrefix(name, "leavers")]
		return desk.Row{Key: "wish " + name, Why: desk.Figs(mb.ID, 0, "", what), Text: fmt.Sprintf("%-21s%s", name, says),
			Detail: why + "; + - changes the wish, and the options with it",
			Step: func(m *desk.Model, _ int) {
				m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) { set(b, !on) }),
					name+": "+map[bool]string{false: "wished", true: "not wished"}[on])
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
		out = append(out, wish("leavers outside", "what leaves first has nothing over it that leaves later", mb.LeaversOut.Or(true),
			prop.LeaversMM, prop.LeaversKnown,
			func(b *model.Branch, v bool) { b.LeaversOut = model.Some(v) }))
	}
	if units {
		out = append(out, wish("units in the centre", "what is made up already lies in the middle", mb.UnitsIn.Or(true), prop.UnitsMM,
			prop.UnitsKnown,
			func(b *model.Branch, v bool) { b.UnitsIn = model.Some(v) }))
	}
	if r, any := ApartRow(m); any {
		out = append(out, r)
	}
	return out
}

// ApartRow is the wish to keep trigger and data from power, shown where one lies
// beside the other or would without it.
func ApartRow(m *desk.Model) (desk.Row, bool) {
	mb, b, _ := m.B()
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
	says := fmt.Sprintf("not wished, %s", words.Plural(now, "place beside power", "places beside power"))
	if on {
		_, other, _ := m.Try("apart", flip).B()
		if beside(other) == 0 && now == 0 {
			return desk.Row{}, false
		}
		says = fmt.Sprintf("wished, %d of %d left", now, beside(other))
		if d := b.OverMM - other.OverMM; m.Sys.Fine(max(d, -d)) != m.Sys.Fine(0) {
			says += fmt.Sprintf(", costs %s %s", m.Sys.Fine(max(d, 0)), m.Sys.Name())
		} else {
			says += ", costs nothing"
		}
	} else if now == 0 {
		return desk.Row{}, false
	}
	return desk.Row{Key: "wish apart", Why: desk.Figs(mb.ID, 0, "", "wish.apart"), Text: fmt.Sprintf("%-21s%s", "data apart", says),
		Detail: "trigger and data do not lie beside power in a layer; + - changes the wish, and nothing but their order",
		Step: func(m *desk.Model, _ int) {
			m.Change(flip(), "data apart: "+map[bool]string{false: "wished", true: "not wished"}[on])
		}}, true
}
