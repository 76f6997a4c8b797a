package paper

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/calc/formula/plan"
	"contralay/calc/query/missing"
	"contralay/calc/query/offer"
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

// Plans is a ranked list of plans as text; as is what each would be as a branch, nil where it is not known.
func Plans(ps []plan.Plan, as []*sheet.Branch) string {
	var b strings.Builder
	wide := len("lay-up")
	for _, p := range ps {
		wide = max(wide, len([]rune(Aloud(Counts(p), false))))
	}
	fmt.Fprintf(&b, "%-*s %6s %6s %5s %8s %8s %6s %5s %5s\n", wide, "lay-up", "spares", "filler", "lumpy", "over mm", "cost", "sheath",
		"g/m",
		"bend")
	var kinds []string
	for k, p := range ps {
		note := ""
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
		sheath, gram, bend := "-", "-", "-"
		if k < len(as) && as[k] != nil {
			size, kind := sheathSize(as[k].Sheath.Part)
			if sheath = size; kind != "" && !slices.Contains(kinds, kind) {
				kinds = append(kinds, kind)
			}
			if as[k].Gram.Set {
				gram = fmt.Sprintf("%.0f", float64(as[k].Gram.V)/float64(offer.PlannedMM)*1000)
			}
			bend = fmt.Sprintf("%.0f", float64(as[k].Bend.MinMM))
		}
		aloud := Aloud(Counts(p), false)
		pad := wide - len([]rune(aloud))
		fmt.Fprintf(&b, "%s%s %6d %6d %5d %8.3f %8.3f %6s %5s %5s%s\n", aloud, strings.Repeat(" ", pad), p.Spares, p.Rods(), p.Lumpy,
			float64(p.Over), float64(p.Cost), sheath, gram, bend, note)
	}
	if len(ps) == 0 {
		return "There is no such lay-up.\n"
	}
	switch first := ps[0]; {
	case first.Proven:
		b.WriteString("Proven: no lay-up costs less than the first.\n")
	case first.Least > 0:
		fmt.Fprintf(&b, "Not proven: a lay-up could cost up to %.1f %% less than the first.\n--effort N searches longer.\n",
			100*(1-float64(first.Least/first.Cost)))
	}
	if len(kinds) > 0 {
		fmt.Fprintf(&b, "Sheath: %s, on a straight branch of %.0f mm. The g/m do not count it.\nbend: the least radius in mm.\n",
			strings.Join(kinds, ", "), float64(offer.PlannedMM))
	}
	return b.String()
}

// sheathSize parts a tube's name into its size and its kind; "none" where no tube holds.
func sheathSize(part string) (size, kind string) {
	if part == "" {
		return "none", ""
	}
	if i := strings.LastIndex(part, " "); i > 0 {
		return part[i+1:], part[:i]
	}
	return part, ""
}
