package bench

import (
	"strings"

	"contralay/calc/query/why"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// reasons is every figure that can be asked about now: those of the row in hand
// first, then those of the page and of the strip.
func reasons(m *desk.Model, p desk.Page, r *desk.Row) []desk.Reason {
	var out []desk.Reason
	seen := m
	if r != nil {
		out = append(out, r.Reasons()...)
		if r.Show != nil {
			seen = r.Show(m)
		}
	}
	out = append(out, p.Why...)
	strip := stripReasons(seen)
	if seen != m {
		strip = desk.InTrial(r.Show, strip)
	}
	return append(out, strip...)
}

// stripReasons is the figures of the strip and of the snag over the keys.
func stripReasons(m *desk.Model) []desk.Reason {
	mb, b, ok := m.BranchHere()
	if !ok {
		return nil
	}
	out := desk.FiguresOf(mb.ID, "branch.over", "branch.least", "branch.most")
	if b.Sheath.Part != "" {
		out = append(out, desk.FiguresOfPart(mb.ID, b.Sheath.Part, "tube.over")...)
	}
	out = append(out, desk.FiguresOf(mb.ID, "branch.mass", "branch.bend", "branch.hottest", "branch.length")...)
	out = append(out, desk.FiguresOf(desk.WholeLoom, "loom.wire", "loom.mass")...)
	if g, _, any := desk.Worst(m.Sheet); any {
		out = append(out, desk.SnagReasons(m.Sheet, g.Snag)...)
	}
	return out
}

// measured is a value of an explanation with its unit, finer than on the screens.
func measured(m *desk.Model, v float64, k why.Measure) string {
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
