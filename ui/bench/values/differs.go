package values

import (
	"fmt"
	"math"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/words"
)

// differs says in one line what one sheet has other than another, what decides first.
func differs(was, is *sheet.Sheet, sys unit.System) string {
	var out []string
	put := func(format string, a ...any) { out = append(out, fmt.Sprintf(format, a...)) }
	points := func(s *sheet.Sheet, level sheet.Level) (n int) {
		for _, p := range s.Snags {
			if p.Level == level {
				n++
			}
		}
		return n
	}
	count := func(a, b int, one, many string) {
		if b != a {
			d := max(b-a, a-b)
			put("%d %s %s", d, words.Either(b > a, "more", "fewer"), words.Either(d == 1, one, many))
		}
	}
	count(points(was, sheet.Stop), points(is, sheet.Stop), "stop", "stops")
	count(points(was, sheet.Warn), points(is, sheet.Warn), "warning", "warnings")
	branchChanges(was, is, sys, put)
	count(was.Totals.Fillers, is.Totals.Fillers, "filler", "fillers")
	count(was.Totals.Spares, is.Totals.Spares, "spare", "spares")
	if d := float64(is.Totals.WireMM-was.Totals.WireMM) / 1000; math.Abs(d) >= 0.05 {
		put("%s m of wire %s", unit.Fixed(math.Abs(d), 1), words.Either(d > 0, "more", "less"))
	}
	if a, b := was.Totals.Gram, is.Totals.Gram; a.Set && b.Set && math.Abs(float64(b.V-a.V)) >= 0.5 {
		put("%s g %s", unit.Fixed(math.Abs(float64(b.V-a.V)), 0), words.Either(b.V > a.V, "heavier", "lighter"))
	}
	limitChanges(was, is, put)
	if len(out) == 0 {
		return "nothing changes on this harness"
	}
	if len(out) > 5 {
		out = append(out[:5], "and more")
	}
	return strings.Join(out, ", ")
}

// branchChanges are what changes on the first branch that changes, and how many others do.
func branchChanges(was, is *sheet.Sheet, sys unit.System, put func(format string, a ...any)) {
	more := 0
	for i := range min(len(was.Branches), len(is.Branches)) {
		a, b := &was.Branches[i], &is.Branches[i]
		lay := -1
		for k := range min(len(a.Layers), len(b.Layers)) {
			if sys.Length(a.Layers[k].LayMM) != sys.Length(b.Layers[k].LayMM) {
				lay = k
			}
		}
		makes, over := a.Make != b.Make, sys.Diameter(a.OverMM) != sys.Diameter(b.OverMM)
		layers := len(a.Layers) != len(b.Layers)
		sheath := a.Sheath.Part != b.Sheath.Part
		id := is.H.Branches[i].ID
		switch {
		case !makes && !over && !layers && lay < 0 && !sheath:
			continue
		case more > 0:
			more++
			continue
		case makes:
			put("%s %s, now %s", id, b.Make, a.Make)
		case layers:
			put("%s in %s, now %d", id, words.Plural(len(b.Layers), "layer", "layers"), len(a.Layers))
		}
		more++
		if over {
			put("%s OD %s, now %s %s", id, sys.Diameter(b.OverMM), sys.Diameter(a.OverMM), sys.Name())
		}
		if lay >= 0 && !layers {
			put("%s %s lay %s, now %s %s", id, model.LayerName(lay), sys.Length(b.Layers[lay].LayMM), sys.Length(a.Layers[lay].LayMM),
				sys.Name())
		}
		if sheath {
			put("%s sheath %s, now %s", id, words.OrDash(b.Sheath.Part), words.OrDash(a.Sheath.Part))
		}
	}
	if more > 1 {
		put("%s more", words.Plural(more-1, "branch", "branches"))
	}
}

// limitChanges are what changes in what wires may carry and how warm they get.
func limitChanges(was, is *sheet.Sheet, put func(format string, a ...any)) {
	n, first := 0, ""
	cuts := 0
	for k := range min(len(was.Wires), len(is.Wires)) {
		a, b := &was.Wires[k], &is.Wires[k]
		if a.Cut != b.Cut {
			cuts++
		}
		if at, bt := unit.Fixed(a.Bound.V.Amps, 1), unit.Fixed(b.Bound.V.Amps, 1); at != bt {
			if n++; n == 1 {
				first = fmt.Sprintf("wire %s may carry %s, now %s A", is.H.Wires[k].ID, bt, at)
			}
		}
	}
	switch {
	case n == 1:
		put("%s", first)
	case n > 1:
		put("%s and %d others", first, n-1)
	}
	if cuts > 0 {
		put("%s cut to another length", words.Plural(cuts, "wire", "wires"))
	}
}
