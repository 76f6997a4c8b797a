package desk

import (
	"slices"

	"contralay/calc/query/why"
	"contralay/calc/query/why/explain"
	"contralay/calc/query/why/power"
	"contralay/calc/sheet"
)

// Reason is a figure on a screen and how to have it explained.
type Reason struct {
	Figure why.Figure
	Of     func(m *Model) *sheet.Sheet // nil: the sheet in hand
	Made   func() (why.Why, bool)      // of a figure that stands in no sheet; else nil
}

// WholeLoom stands for the harness itself, where a figure is of no one thing.
const WholeLoom = ""

// FiguresOf are figures of one thing, by their names.
func FiguresOf(of string, names ...string) []Reason { return FiguresIn(of, 0, "", names...) }

// FiguresAt are figures of a layer, a limit or a cover of one thing, by its number.
func FiguresAt(of string, number int, names ...string) []Reason {
	return FiguresIn(of, number, "", names...)
}

// FiguresOfPart are figures of a part or a component in one thing.
func FiguresOfPart(of, part string, names ...string) []Reason {
	return FiguresIn(of, 0, part, names...)
}

// FiguresIn are figures of a part in a numbered layer of one thing.
func FiguresIn(of string, number int, part string, names ...string) []Reason {
	var out []Reason
	for _, name := range names {
		out = append(out, Reason{Figure: why.Figure{What: name, Of: of, K: number, Part: part}})
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

// Explain is the whole explanation, with what would change it most.
func (r Reason) Explain(m *Model) (why.Why, bool) {
	switch {
	case r.Made != nil:
		return r.Made()
	case r.Of != nil:
		return explain.Figure(r.Of(m), r.Figure)
	}
	return explain.Figure(m.Sheet, r.Figure)
}

// LimitReasons is every limit of a wire.
func LimitReasons(s *sheet.Sheet, id string) (out []Reason) {
	for n := range power.LimitsOf(s, s.Index.Wire[id]) {
		out = append(out, FiguresAt(id, n, "wire.limit")...)
	}
	return out
}

// feedReasons is every figure of a feed and of what it protects.
func feedReasons(s *sheet.Sheet, id string) []Reason {
	out := FiguresOf(id, "feed.load", "feed.most", "feed.opens")
	f := &s.Feeds[s.Index.Feed[id]]
	for _, k := range slices.Concat(f.Legs, f.Beyond, f.Back) {
		w := s.H.Wires[k].ID
		out = append(append(out, FiguresOfPart(id, w, "short.far", "short.lets", "short.bears")...), LimitReasons(s, w)...)
	}
	return out
}

// SnagReasons is the figures a snag speaks of.
func SnagReasons(s *sheet.Sheet, g sheet.Snag) []Reason {
	i, isBranch := s.Index.Branch[g.Where]
	if !isBranch {
		switch g.Rule {
		case "wire.drop":
			return FiguresOf(g.Where, "wire.circuit", "wire.drop")
		case "wire.current", "wire.pulse":
			return append(FiguresOf(g.Where, "wire.heats", "wire.bound", "wire.hottest"), LimitReasons(s, g.Where)...)
		case "wire.measured":
			return FiguresOf(g.Where, "wire.drop", "wire.lost")
		case "unit.impedance", "unit.resistance", "unit.bus", "unit.stub":
			return FiguresOf(g.Where, "unit.ohm", "unit.loop", "unit.bus", "unit.stub", "unit.stubs")
		case "feed.load", "feed.start":
			return FiguresOf(g.Where, "feed.load", "feed.most")
		case "feed.wire", "feed.never", "feed.short":
			return feedReasons(s, g.Where)
		case "boot.grip", "boot.slide":
			for k := range s.H.Branches {
				if mb := &s.H.Branches[k]; mb.From == g.Where || mb.To == g.Where {
					return append(append(FiguresOfPart(g.Where, mb.ID, "boot.holds", "boot.fills"),
						FiguresOf(g.Where, "boot.least", "boot.most")...),
						FiguresOfPart(mb.ID, s.Branches[k].Sheath.Part, "tube.over")...)
				}
			}
		}
		return nil
	}
	b := &s.Branches[i]
	each := func(what ...string) (out []Reason) {
		for k := range b.Layers {
			out = append(out, FiguresAt(g.Where, k, what...)...)
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
		return FiguresOf(g.Where, "branch.bend")
	case "bend.turn":
		return each("layer.lay", "layer.bent", "layer.flat")
	case "sheath.none":
		return FiguresOf(g.Where, "sheath.passmost", "branch.tapeleast", "sheath.pass")
	case "sheath.slide", "sheath.loose", "sheath.stretch", "sheath.grip", "sheath.room":
		return append(FiguresOfPart(g.Where, b.Sheath.Part, "tube.worst", "tube.full", "tube.grip", "tube.slide", "tube.room"),
			FiguresOf(g.Where, "branch.tapeleast", "sheath.from", "sheath.to")...)
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
