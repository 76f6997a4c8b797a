package paper

import (
	"cmp"
	"encoding/json"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/calc/formula/plan"
	"contralay/calc/sheet"
)

// Check is the snags of a sheet as text, worst first, one cause a line. Without a
// snag it says so.
func Check(s *sheet.Sheet) string {
	gs := sheet.Grouped(s.Snags)
	if len(gs) == 0 {
		if s.H != nil && len(s.H.Wires) == 0 {
			return "no open points: it holds no wire yet\n"
		}
		return "no open points\n"
	}
	var b strings.Builder
	wide := 0
	for _, g := range gs {
		wide = max(wide, len(g.Where))
	}
	for _, g := range gs {
		fmt.Fprintf(&b, "%-4s  %-*s  %s%s  [%s]\n", g.Level, wide, g.Where, g.Says, g.More(), g.Rule)
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
		aloud := Aloud(Counts(p), false)
		pad := max(0, 22-len([]rune(aloud)))
		fmt.Fprintf(&b, "%s%s %7d %7d %7d %9.3f %7.3f%s\n", aloud, strings.Repeat(" ", pad), p.Spares, p.Fillers, p.Lumpy, float64(p.Over),
			float64(p.Cost), note)
	}
	return b.String()
}

// PlansJSON is the plans as JSON; the first layer is the centre.
func PlansJSON(ps []plan.Plan) ([]byte, error) {
	type layerOut struct {
		Sizes    map[string]int `json:"sizes"`
		Fillers  int            `json:"fillers"`
		FillerMM *float64       `json:"filler_mm"`
		Spares   int            `json:"spares"`
		Takes    *int           `json:"takes"`
		Room     *int           `json:"room"`
		Gap      *float64       `json:"gap"`
		OverMM   float64        `json:"over_mm"`
		ProudMM  float64        `json:"proud_mm"`
		CentreMM *float64       `json:"centre_mm,omitempty"`
	}
	type planOut struct {
		Cost    float64    `json:"cost"`
		Proven  bool       `json:"proven"`
		Fillers int        `json:"fillers"`
		Spares  int        `json:"spares"`
		OverMM  float64    `json:"over_mm"`
		Lumpy   int        `json:"lumpy"`
		Layers  []layerOut `json:"layers"`
	}
	out := make([]planOut, 0, len(ps))
	for _, p := range ps {
		o := planOut{float64(p.Cost), p.Proven, p.Fillers, p.Spares, float64(p.Over), p.Lumpy, nil}
		for k, l := range p.Layers {
			y := layerOut{Sizes: map[string]int{}, Fillers: l.Fillers, Spares: l.Spares, OverMM: float64(l.Over), ProudMM: float64(l.Proud)}
			for z, d := range l.Sizes {
				y.Sizes[strconv.FormatFloat(float64(d), 'f', -1, 64)] += l.N[z]
			}
			if l.Fillers > 0 {
				y.FillerMM = some(float64(l.FillerMM))
			}
			if k > 0 {
				y.Takes, y.Room, y.Gap = some(l.Takes), some(l.Room), some(float64(l.Gap))
			}
			if l.CentreMM > 0 {
				y.CentreMM = some(float64(l.CentreMM))
			}
			o.Layers = append(o.Layers, y)
		}
		out = append(out, o)
	}
	slices.SortStableFunc(out, func(a, b planOut) int { return cmp.Compare(a.Cost, b.Cost) })
	b, err := json.MarshalIndent(out, "", "  ")
	if err != nil {
		return nil, err
	}
	return append(b, '\n'), nil
}
