package paper

import (
	"fmt"
	"strconv"
	"strings"

	"contralay/calc/formula/plan"
	"contralay/calc/query/missing"
	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/model/visible"
)

// Check is the snags of a sheet as text, worst first, one cause a line. Without a
// snag it says so. What is missing and no snag says stands below.
func Check(s *sheet.Sheet) string { return openPoints(s) + stillMissing(s) }

// stillMissing is what a harness lacks and no open point says; nothing for one that is empty.
func stillMissing(s *sheet.Sheet) string {
	if s.H == nil || len(s.H.Wires) == 0 {
		return ""
	}
	var b strings.Builder
	for _, n := range missing.Of(s) {
		if len(n.Rules) > 0 {
			continue
		}
		if b.Len() == 0 {
			b.WriteString("still missing:\n")
		}
		b.WriteString(visible.Note("      "+n.Says) + "\n")
	}
	return b.String()
}

func openPoints(s *sheet.Sheet) string {
	gs := sheet.Grouped(s.Snags)
	if len(gs) == 0 {
		if s.H != nil && len(s.H.Wires) == 0 {
			return "no open points: it holds no wire yet\n"
		}
		return "no open points\n"
	}
	sys := unit.MM
	if s.H != nil {
		if named, err := unit.ParseSystem(s.H.Head.Units.V); err == nil {
			sys = named
		}
	}
	var b strings.Builder
	wide := 0
	for _, g := range gs {
		wide = max(wide, len(g.Where))
	}
	for _, g := range gs {
		b.WriteString(visible.Note(fmt.Sprintf("%-4s  %-*s  %s%s  [%s]", g.Level, wide, g.Where, sys.Says(g.Says), g.More(), g.Rule)) +
			"\n")
	}
	return b.String()
}

// Aloud says a lay-up as a builder does: "1 · 6 · 12"; ascii takes a plain dot.
func Aloud(counts []int, ascii bool) string {
	var parts []string
	for _, n := range counts {
		parts = append(parts, strconv.Itoa(n))
	}
	if ascii {
		return strings.Join(parts, " . ")
	}
	return strings.Join(parts, " · ")
}

// Counts is how many each layer of a plan holds, fillers counted, the rod in the
// middle of a centre not.
func Counts(p plan.Plan) []int {
	var out []int
	for k, l := range p.Layers {
		n := l.Count()
		if k > 0 {
			n += l.Fillers
		}
		out = append(out, n)
	}
	return out
}

// Plans is a ranked list of plans as text.
func Plans(ps []plan.Plan) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%-22s %7s %7s %7s %9s %7s\n", "lay-up", "spares", "filler", "lumpy", "over mm", "cost")
	for _, p := range ps {
		note := ""
		if !p.Proven {
			note = "  not every lay-up was tried"
		}
		switch p.Relaxed {
		case plan.Gaps:
			note += "  has gaps over the limit"
		case plan.GapLift:
			note += "  tight, and has gaps over the limit"
		case plan.Nothing:
			note += "  will not close as it is"
		}
		if to, by := p.BuiltUp(); to > 0 {
			note = fmt.Sprintf("  centre built up to %.1f with %.2f mm of tape%s", float64(to), float64(by),
				strings.ReplaceAll(note, "  ", ", "))
		}
		aloud := Aloud(Counts(p), false)
		pad := max(0, 22-len([]rune(aloud)))
		fmt.Fprintf(&b, "%s%s %7d %7d %7d %9.3f %7.3f%s\n", aloud, strings.Repeat(" ", pad), p.Spares, p.Rods(), p.Lumpy, float64(p.Over),
			float64(p.Cost), note)
	}
	return b.String()
}
