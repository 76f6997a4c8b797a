package bench

import (
	"fmt"
	"slices"

	whyquery "contralay/calc/query/why"
	"contralay/model/catalogue"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// askWhy opens the explanation of the figures that can be asked about.
func askWhy(m *desk.Model) {
	p, r := m.Hand()
	var have []desk.Reason
	for _, re := range reasons(m, p, r) {
		if !re.Known(m) {
			continue
		}
		have = append(have, re)
	}
	if len(have) == 0 {
		m.Tell("no figure here to explain")
		return
	}
	m.Open(whyScreen(have, 0))
}

// whyRow stands at the end of each step, so that no letter is needed to ask.
var whyRow = desk.Row{Key: "why", Text: "how these figures were made", Detail: "Enter lists them. W explains the row you are on",
	Enter: func(m *desk.Model) {
		var have []desk.Reason
		for _, r := range m.Page(m.ListWidth()).Rows {
			have = append(have, r.Reasons()...)
		}
		m.Open(figuresScreen(have))
	}}

// figuresScreen lists figures with their values.
func figuresScreen(all []desk.Reason) desk.Screen {
	var made desk.Kept[desk.Page] // a frame must not wait for it
	return desk.Screen{Kind: figuresKind, Page: func(m *desk.Model, w int) desk.Page {
		return made.Get(m.Sheet, m.Branch, m.Sys.Name(), func() desk.Page { return figuresPage(m, all) })
	}}
}

// figuresPage is the figures that there are.
func figuresPage(m *desk.Model, all []desk.Reason) desk.Page {
	p := desk.Page{Lines: []string{"Enter shows how a figure was made."}, Empty: "no figure here yet"}
	for _, re := range slices.Concat(all, stripReasons(m)) {
		y, ok := re.FigureOnly(m)
		if !ok {
			continue
		}
		one := []desk.Reason{re}
		p.Rows = append(p.Rows, desk.Row{Text: fmt.Sprintf("%12s  %s", measured(m, y.Value, y.Measure), m.Sys.Says(y.Name)),
			Key: fmt.Sprint(re.Figure), Why: one, Enter: func(m *desk.Model) { m.Open(whyScreen(one, 0)) }})
	}
	return p
}

// whyScreen explains one of several figures. + - goes to the next, Enter on an input
// to how that was made.
func whyScreen(all []desk.Reason, at int) desk.Screen {
	type explained struct {
		whyquery.Why
		ok bool
	}
	var made desk.Kept[explained] // a frame must not wait for it
	return desk.Screen{Kind: whyKind, Page: func(m *desk.Model, w int) desk.Page {
		why := made.Get(m.Sheet, 0, fmt.Sprint(at), func() explained {
			y, ok := all[at].Explain(m)
			return explained{y, ok}
		})
		next := func(m *desk.Model, by int) {
			at = (at + by + len(all)) % len(all)
		}
		p := desk.Page{}
		if !why.ok {
			p.Lines = []string{"This figure is gone. Esc goes back"}
			return p
		}
		p.Lines = append(p.Lines, fmt.Sprintf("%s = %s", words.Capital(m.Sys.Says(why.Name)), measured(m, why.Value, why.Measure)),
			words.Capital(m.Sys.Says(why.Says))+".")
		if why.Standing == catalogue.Memory {
			p.Lines = append(p.Lines, "~ It "+standingSays(why.Standing)+".")
		}
		if why.Most != "" {
			p.Lines = append(p.Lines, "What changes it most: "+why.Most+".")
		}
		p.Cols = fmt.Sprintf("%14s  %s", "value", "what it is made from")
		for _, in := range why.In {
			if in.Value == 0 {
				continue // a binder that is not there, a loop on a splice
			}
			mem := " "
			if in.Standing == catalogue.Memory {
				mem = "~"
			}
			r := desk.Row{Text: fmt.Sprintf("%14s%s %s", measured(m, in.Value, in.Measure), mem, m.Sys.Says(in.Name)),
				Detail: m.Sys.Says(in.Source) + ": " + standingSays(in.Standing), Step: next}
			if in.From != nil {
				f := *in.From
				r.Text += ", worked out"
				r.Detail = "Enter: how that was made"
				of := all[at].Of
				r.Enter = func(m *desk.Model) { m.Open(whyScreen([]desk.Reason{{Figure: f, Of: of}}, 0)) }
			}
			p.Rows = append(p.Rows, r)
		}
		if len(all) > 1 {
			p.Rows = append(p.Rows, desk.Row{Text: fmt.Sprintf("figure %d of %d here; + - shows others", at+1, len(all)), Step: next,
				Enter: func(m *desk.Model) { next(m, 1) }})
		}
		return p
	}}
}

// standingSays is how far a value can be trusted, in words.
func standingSays(s catalogue.Standing) string {
	switch s {
	case catalogue.House:
		return "measured or given here"
	case catalogue.Published:
		return "as published"
	case catalogue.Practice:
		return "rests on common practice"
	}
	return "rests on memory: measure it, or check the part's sheet"
}
