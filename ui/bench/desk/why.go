package desk

import (
	"slices"
	"strings"

	"contralay/calc/query/why"
	"contralay/calc/query/why/explain"
	"contralay/calc/query/why/power"
	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/ui/bench/words"
)

// Reason is a figure on a screen and how to have it explained.
type Reason struct {
	Figure why.Figure
	Of     func(m *Model) *sheet.Sheet // nil: the sheet in hand
	Made   func() (why.Why, bool)      // of a figure that stands in no sheet; else nil
}

// Figs are figures of one thing, by their names.
func Figs(of string, k int, part string, what ...string) []Reason {
	var out []Reason
	for _, w := range what {
		out = append(out, Reason{Figure: why.Figure{What: w, Of: of, K: k, Part: part}})
	}
	return out
}

// Reasons is the figures of a row.
func (r *Row) Reasons() []Reason {
	if r.WhyOf != nil {
		return r.WhyOf()
	}
	return r.Why
}

// InTrial makes reasons those of a lay-up that is only looked at.
func InTrial(show func(m *Model) *Model, rs []Reason) []Reason {
	for k := range rs {
		rs[k].Of = func(m *Model) *sheet.Sheet { return show(m).Sheet }
	}
	return rs
}

func (r Reason) Explain(m *Model) (why.Why, bool) {
	switch {
	case r.Made != nil:
		return r.Made()
	case r.Of != nil:
		return explain.Figure(r.Of(m), r.Figure)
	}
	return explain.Figure(m.Sheet, r.Figure)
}

// Reasons is every figure that can be asked about now: those of the row in hand
// first, then those of the page and of the strip.
func (m *Model) Reasons(p Page, r *Row) []Reason {
	var out []Reason
	seen := m
	if r != nil {
		out = append(out, r.Reasons()...)
		if r.Show != nil {
			seen = r.Show(m)
		}
	}
	out = append(out, p.Why...)
	strip := seen.StripReasons()
	if seen != m {
		strip = InTrial(r.Show, strip)
	}
	return append(out, strip...)
}

// StripReasons is the figures of the strip and of the snag over the keys.
func (m *Model) StripReasons() []Reason {
	mb, b, ok := m.B()
	if !ok {
		return nil
	}
	out := Figs(mb.ID, 0, "", "branch.over", "branch.least", "branch.most")
	if b.Sheath.Part != "" {
		out = append(out, Figs(mb.ID, 0, b.Sheath.Part, "tube.over")...)
	}
	out = append(out, Figs(mb.ID, 0, "", "branch.mass", "branch.bend", "branch.hottest", "branch.length")...)
	out = append(out, Figs("", 0, "", "loom.wire", "loom.mass")...)
	if g, _, any := m.Worst(); any {
		out = append(out, m.SnagReasons(g.Snag)...)
	}
	return out
}

// LimitReasons is every limit of a wire.
func (m *Model) LimitReasons(id string) (out []Reason) {
	for n := range power.LimitsOf(m.Sheet, m.Sheet.X.Wire[id]) {
		out = append(out, Figs(id, n, "", "wire.limit")...)
	}
	return out
}

// feedReasons is every figure of a feed and of what it protects.
func (m *Model) feedReasons(id string) []Reason {
	out := Figs(id, 0, "", "feed.load", "feed.most", "feed.opens")
	f := &m.Sheet.Feeds[m.Sheet.X.Feed[id]]
	for _, k := range slices.Concat(f.Legs, f.Beyond, f.Back) {
		w := m.H.Wires[k].ID
		out = append(append(out, Figs(id, 0, w, "short.far", "short.lets", "short.bears")...), m.LimitReasons(w)...)
	}
	return out
}

// SnagReasons is the figures a snag speaks of.
func (m *Model) SnagReasons(g sheet.Snag) []Reason {
	i, isBranch := m.Sheet.X.Branch[g.Where]
	if !isBranch {
		switch g.Rule {
		case "wire.drop":
			return Figs(g.Where, 0, "", "wire.circuit", "wire.drop")
		case "wire.current", "wire.pulse":
			return append(Figs(g.Where, 0, "", "wire.heats", "wire.bound", "wire.hottest"), m.LimitReasons(g.Where)...)
		case "wire.measured":
			return Figs(g.Where, 0, "", "wire.drop", "wire.lost")
		case "unit.impedance", "unit.resistance", "unit.bus", "unit.stub":
			return Figs(g.Where, 0, "", "unit.ohm", "unit.loop", "unit.bus", "unit.stub", "unit.stubs")
		case "feed.load", "feed.start":
			return Figs(g.Where, 0, "", "feed.load", "feed.most")
		case "feed.wire", "feed.never", "feed.short":
			return m.feedReasons(g.Where)
		case "boot.grip", "boot.slide":
			for k := range m.H.Branches {
				if mb := &m.H.Branches[k]; mb.From == g.Where || mb.To == g.Where {
					return append(Figs(g.Where, 0, "", "boot.least", "boot.most"),
						Figs(mb.ID, 0, m.Sheet.Branches[k].Sheath.Part, "tube.over")...)
				}
			}
		}
		return nil
	}
	b := &m.Sheet.Branches[i]
	each := func(what ...string) (out []Reason) {
		for k := range b.Layers {
			out = append(out, Figs(g.Where, k, "", what...)...)
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
		return Figs(g.Where, 0, "", "branch.bend")
	case "bend.turn":
		return each("layer.lay", "layer.bent", "layer.flat")
	case "sheath.none":
		return Figs(g.Where, 0, "", "sheath.passmost", "branch.tapeleast", "sheath.pass")
	case "sheath.slide", "sheath.loose", "sheath.stretch", "sheath.grip", "sheath.room":
		return append(Figs(g.Where, 0, b.Sheath.Part, "tube.worst", "tube.full", "tube.grip", "tube.slide", "tube.room"),
			Figs(g.Where, 0, "", "branch.tapeleast", "sheath.from", "sheath.to")...)
	}
	return nil
}

// FigureOnly is the explanation without what would change it most, which takes a
// build for each lever.
func (r Reason) FigureOnly(m *Model) (why.Why, bool) {
	if r.Made != nil {
		return r.Made()
	}
	s := m.Sheet
	if r.Of != nil {
		s = r.Of(m)
	}
	return explain.Brief(s, r.Figure)
}

// Known reports whether a sheet has the figure at all.
func (r Reason) Known(m *Model) bool {
	_, ok := r.FigureOnly(m)
	return ok
}

// Measured is a value of an explanation with its unit, finer than on the screens.
func (m *Model) Measured(v float64, k why.Measure) string {
	switch k {
	case why.Diameter:
		return m.Sys.Fine(unit.Millimetre(v)) + " " + m.Sys.Name()
	case why.Length:
		if m.Sys == unit.Inch {
			return unit.Fixed(v/unit.MillimetrePerInch, 2) + " in"
		}
		return unit.Fixed(v, 1) + " mm"
	case why.Mass:
		return unit.Fixed(v, 1) + " g"
	case why.PerMetre:
		return unit.Fixed(v, 2) + " g/m"
	case why.Volts:
		return unit.Fixed(v, 3) + " V"
	case why.Amperes:
		return words.Trim(unit.RoundHalfUp(v*100, 1)/100) + " A"
	case why.Celsius:
		return unit.Fixed(v, 1) + " C"
	case why.WattsPerM:
		return unit.Fixed(v, 2) + " W/m"
	case why.OhmsPerKm:
		return unit.Fixed(v, 2) + " ohm/km"
	case why.Ohms:
		return unit.Fixed(v, 3) + " ohm"
	case why.Squares:
		return unit.Fixed(v, 4) + " mm2"
	case why.Seconds:
		return words.Trim(unit.RoundHalfUp(v, 0.0001)) + " s"
	case why.Withstands:
		return unit.Fixed(v, 0) + " A2s"
	case why.Percent:
		return unit.Fixed(100*v, 1) + " %"
	case why.Count:
		return unit.Fixed(v, 0)
	}
	return strings.TrimRight(strings.TrimRight(unit.Fixed(v, 4), "0"), ".")
}
