package bench

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// reason is a figure on a screen and how to have it explained.
type reason struct {
	figure calc.Figure
	of     func(m *Model) *calc.Sheet // nil: the sheet in hand
	made   func() (calc.Why, bool)    // of a figure that stands in no sheet; else nil
}

// figs are figures of one thing, by their names.
func figs(of string, k int, part string, what ...string) []reason {
	var out []reason
	for _, w := range what {
		out = append(out, reason{figure: calc.Figure{What: w, Of: of, K: k, Part: part}})
	}
	return out
}

// reasons is the figures of a row.
func (r *row) reasons() []reason {
	if r.whyOf != nil {
		return r.whyOf()
	}
	return r.why
}

// inTrial makes reasons those of a lay-up that is only looked at.
func inTrial(show func(m *Model) *Model, rs []reason) []reason {
	for k := range rs {
		rs[k].of = func(m *Model) *calc.Sheet { return show(m).sheet }
	}
	return rs
}

func (r reason) explain(m *Model) (calc.Why, bool) {
	switch {
	case r.made != nil:
		return r.made()
	case r.of != nil:
		return r.of(m).Explain(r.figure)
	}
	return m.sheet.Explain(r.figure)
}

// reasons is every figure that can be asked about now: those of the row in hand
// first, then those of the page and of the strip.
func (m *Model) reasons(p page, r *row) []reason {
	var out []reason
	seen := m
	if r != nil {
		out = append(out, r.reasons()...)
		if r.show != nil {
			seen = r.show(m)
		}
	}
	out = append(out, p.why...)
	strip := seen.stripReasons()
	if seen != m {
		strip = inTrial(r.show, strip)
	}
	return append(out, strip...)
}

// stripReasons is the figures of the strip and of the snag over the keys.
func (m *Model) stripReasons() []reason {
	mb, b, ok := m.b()
	if !ok {
		return nil
	}
	out := figs(mb.ID, 0, "", "branch.over", "branch.least", "branch.most")
	if b.Sheath.Part != "" {
		out = append(out, figs(mb.ID, 0, b.Sheath.Part, "tube.over")...)
	}
	out = append(out, figs(mb.ID, 0, "", "branch.mass", "branch.bend", "branch.hottest", "branch.length")...)
	out = append(out, figs("", 0, "", "loom.wire", "loom.mass")...)
	if g, _, any := m.worst(); any {
		out = append(out, m.snagReasons(g.Snag)...)
	}
	return out
}

// limitReasons is every limit of a wire.
func (m *Model) limitReasons(id string) (out []reason) {
	for n := range m.sheet.LimitsOf(m.sheet.X.Wire[id]) {
		out = append(out, figs(id, n, "", "wire.limit")...)
	}
	return out
}

// feedReasons is every figure of a feed and of what it protects.
func (m *Model) feedReasons(id string) []reason {
	out := figs(id, 0, "", "feed.load", "feed.most", "feed.opens")
	f := &m.sheet.Feeds[m.sheet.X.Feed[id]]
	for _, k := range slices.Concat(f.Legs, f.Beyond, f.Back) {
		w := m.h.Wires[k].ID
		out = append(append(out, figs(id, 0, w, "short.far", "short.lets", "short.bears")...), m.limitReasons(w)...)
	}
	return out
}

// snagReasons is the figures a snag speaks of.
func (m *Model) snagReasons(g calc.Snag) []reason {
	i, isBranch := m.sheet.X.Branch[g.Where]
	if !isBranch {
		switch g.Rule {
		case "wire.drop":
			return figs(g.Where, 0, "", "wire.circuit", "wire.drop")
		case "wire.current", "wire.pulse":
			return append(figs(g.Where, 0, "", "wire.heats", "wire.bound", "wire.hottest"), m.limitReasons(g.Where)...)
		case "wire.measured":
			return figs(g.Where, 0, "", "wire.drop", "wire.lost")
		case "unit.impedance", "unit.resistance", "unit.bus", "unit.stub":
			return figs(g.Where, 0, "", "unit.ohm", "unit.loop", "unit.bus", "unit.stub", "unit.stubs")
		case "feed.load", "feed.start":
			return figs(g.Where, 0, "", "feed.load", "feed.most")
		case "feed.wire", "feed.never", "feed.short":
			return m.feedReasons(g.Where)
		case "boot.grip", "boot.slide":
			for k := range m.h.Branches {
				if mb := &m.h.Branches[k]; mb.From == g.Where || mb.To == g.Where {
					return append(figs(g.Where, 0, "", "boot.least", "boot.most"), figs(mb.ID, 0, m.sheet.Branches[k].Sheath.Part, "tube.over")...)
				}
			}
		}
		return nil
	}
	b := &m.sheet.Branches[i]
	each := func(what ...string) (out []reason) {
		for k := range b.Layers {
			out = append(out, figs(g.Where, k, "", what...)...)
		}
		return out
	}
	switch g.Rule {
	case "layer.full", "layer.close", "layer.tight":
		return each("layer.proud", "layer.takes")
	case "layer.gap":
		return each("layer.gap", "layer.room")
	case "layer.lay":
		return each("layer.lay")
	case "bend":
		return figs(g.Where, 0, "", "branch.bend")
	case "bend.turn":
		return each("layer.lay", "layer.bent", "layer.flat")
	case "sheath.none":
		return figs(g.Where, 0, "", "sheath.passmost", "branch.tapeleast", "sheath.pass")
	case "sheath.slide", "sheath.loose", "sheath.stretch", "sheath.grip", "sheath.room":
		return append(figs(g.Where, 0, b.Sheath.Part, "tube.worst", "tube.full", "tube.grip", "tube.slide", "tube.room"), figs(g.Where, 0, "", "branch.tapeleast", "sheath.from", "sheath.to")...)
	}
	return nil
}

// askWhy opens the explanation of the figures that can be asked about.
func (m *Model) askWhy() {
	p := m.page(m.listWidth())
	var r *row
	if len(p.rows) > 0 {
		r = &p.rows[m.at(p)]
	}
	var have []reason
	for _, re := range m.reasons(p, r) {
		if !re.known(m) {
			continue
		}
		have = append(have, re)
	}
	if len(have) == 0 {
		m.tell("no figure here to explain")
		return
	}
	m.open(whyScreen(have, 0))
}

// whyRow stands at the end of each step, so that no letter is needed to ask.
func whyRow(all func(m *Model) []row) row {
	return row{key: "why", text: "how the figures here were made", detail: "Enter lists them; W asks about the row in hand", enter: func(m *Model) {
		var have []reason
		for _, r := range all(m) {
			have = append(have, r.reasons()...)
		}
		m.open(figuresScreen(have))
	}}
}

// figuresScreen lists figures with their values.
func figuresScreen(all []reason) screen {
	return screen{name: "figures", page: func(m *Model, w int) page {
		p := page{lines: []string{"Enter says how a figure was made."}, empty: "no figure here yet"}
		for _, re := range append(all, m.stripReasons()...) {
			if !re.known(m) {
				continue
			}
			y, ok := re.figureOnly(m)
			if !ok {
				continue
			}
			one := []reason{re}
			p.rows = append(p.rows, row{text: fmt.Sprintf("%12s  %s", m.measured(y.Value, y.Measure), y.Name), key: fmt.Sprint(re.figure), why: one, enter: func(m *Model) { m.open(whyScreen(one, 0)) }})
		}
		return p
	}}
}

// figureOnly is the explanation without what would change it most, which takes a
// build for each lever.
func (r reason) figureOnly(m *Model) (calc.Why, bool) {
	if r.made != nil {
		return r.made()
	}
	s := m.sheet
	if r.of != nil {
		s = r.of(m)
	}
	return s.Figure(r.figure)
}

// known reports whether a sheet has the figure at all.
func (r reason) known(m *Model) bool {
	_, ok := r.figureOnly(m)
	return ok
}

// whyScreen explains one of several figures. + - goes to the next, Enter on an input
// to how that was made.
func whyScreen(all []reason, at int) screen {
	var last *calc.Sheet
	var lastAt int
	var why calc.Why
	var ok bool
	return screen{name: "why", safe: true, page: func(m *Model, w int) page {
		if last != m.sheet || lastAt != at { // made once: a frame must not wait for it
			why, ok = all[at].explain(m)
			last, lastAt = m.sheet, at
		}
		next := func(m *Model, by int) {
			at = (at + by + len(all)) % len(all)
		}
		p := page{}
		if !ok {
			p.lines = []string{"this figure is gone; Esc goes back"}
			return p
		}
		p.lines = append(p.lines, fmt.Sprintf("%s = %s", capital(why.Name), m.measured(why.Value, why.Measure)), capital(why.Says)+".")
		if why.Standing == catalogue.Memory {
			p.lines = append(p.lines, "~ It "+standingSays(why.Standing)+".")
		}
		if why.Most != "" {
			p.lines = append(p.lines, "What changes it most: "+why.Most+".")
		}
		p.cols = fmt.Sprintf("%14s  %s", "value", "what it is made from")
		for _, in := range why.In {
			if in.Value == 0 {
				continue // a binder that is not there, a loop on a splice
			}
			mem := " "
			if in.Standing == catalogue.Memory {
				mem = "~"
			}
			r := row{text: fmt.Sprintf("%14s%s %s", m.measured(in.Value, in.Measure), mem, in.Name), detail: in.Source + ": " + standingSays(in.Standing), step: next}
			if in.From != nil {
				f := *in.From
				r.text += ", worked out"
				r.detail = "Enter: how that was made"
				of := all[at].of
				r.enter = func(m *Model) { m.open(whyScreen([]reason{{figure: f, of: of}}, 0)) }
			}
			p.rows = append(p.rows, r)
		}
		if len(all) > 1 {
			p.rows = append(p.rows, row{text: fmt.Sprintf("figure %d of %d here; + - the next", at+1, len(all)), step: next, enter: func(m *Model) { next(m, 1) }})
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

// measured is a value of an explanation with its unit, finer than on the screens.
func (m *Model) measured(v float64, k calc.Measure) string {
	switch k {
	case calc.Diameter:
		return m.sys.Fine(unit.Millimetre(v)) + " " + m.sys.Name()
	case calc.Length:
		if m.sys == unit.Inch {
			return unit.Fixed(v/unit.MillimetrePerInch, 2) + " in"
		}
		return unit.Fixed(v, 1) + " mm"
	case calc.Mass:
		return unit.Fixed(v, 1) + " g"
	case calc.PerMetre:
		return unit.Fixed(v, 2) + " g/m"
	case calc.Volts:
		return unit.Fixed(v, 3) + " V"
	case calc.Amperes:
		return trim(unit.RoundHalfUp(v*100, 1)/100) + " A"
	case calc.Celsius:
		return unit.Fixed(v, 1) + " C"
	case calc.WattsPerM:
		return unit.Fixed(v, 2) + " W/m"
	case calc.OhmsPerKm:
		return unit.Fixed(v, 2) + " ohm/km"
	case calc.Ohms:
		return unit.Fixed(v, 3) + " ohm"
	case calc.Squares:
		return unit.Fixed(v, 4) + " mm2"
	case calc.Seconds:
		return trim(unit.RoundHalfUp(v, 0.0001)) + " s"
	case calc.Withstands:
		return unit.Fixed(v, 0) + " A2s"
	case calc.Percent:
		return unit.Fixed(100*v, 1) + " %"
	case calc.Count:
		return unit.Fixed(v, 0)
	}
	return strings.TrimRight(strings.TrimRight(unit.Fixed(v, 4), "0"), ".")
}
