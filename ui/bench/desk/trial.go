package desk

import (
	"fmt"
	"math"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/words"
)

// Try is the bench as it would be with another harness: to draw and to compare,
// never to change. name tells trials against one sheet apart; each costs one build.
func (m *Model) Try(name string, as func() *model.Harness) *Model {
	t := m.trials.Get(m.Sheet, m.Branch, name, func() *Model {
		t := *m
		t.H = as()
		t.Sheet = m.Built(t.H)
		return &t
	})
	t.W, t.Height, t.Sys = m.W, m.Height, m.Sys
	return t
}

// Instead is the bench with another sheet, that of a harness that was worked out before: to draw and to
// compare, never to change.
func Instead(m *Model, s *sheet.Sheet) *Model {
	t := *m
	t.H, t.Sheet = s.H, s
	return &t
}

// Tally is what two lay-ups of a branch are told apart by.
type Tally struct {
	Over, Wire      unit.Millimetre
	Gram            unit.Gram
	GramKnown       bool
	Fillers, Spares int
	lumpy, Buried   int
	layers, short   int
	sheath          string
	laid            bool
	minBend         unit.Millimetre
	built           bool // the centre is built up
}

// Tally counts up the branch in hand.
func (m *Model) Tally() Tally {
	_, b, ok := m.BranchHere()
	if !ok {
		return Tally{}
	}
	t := Tally{Over: b.OverMM, Gram: b.Gram.V, GramKnown: b.Gram.Set, Buried: b.Buried, layers: len(b.Layers), sheath: b.Sheath.Part,
		laid: len(b.Layers) > 0, minBend: b.Bend.MinMM}
	if len(b.Layers) > 0 {
		t.built = b.Layers[0].BuiltMM > 0
	}
	for k := range b.Layers {
		l := &b.Layers[k]
		t.Fillers, t.Spares = t.Fillers+l.Fillers, t.Spares+l.Spares
		lo, hi := unit.Millimetre(math.Inf(1)), unit.Millimetre(0)
		for _, c := range l.Members {
			if c.Kind != sheet.OfFiller {
				lo, hi = min(lo, c.D), max(hi, c.D)
			}
		}
		if hi > lo*unit.Millimetre(m.Sheet.Limits.LumpyAt) {
			t.lumpy++
		}
		if l.Lift > m.Sheet.Limits.LiftTight {
			t.short++
		}
	}
	for _, i := range m.WiresHere() {
		t.Wire += m.Sheet.Wires[i].Cut
	}
	return t
}

// Differs says in words what changes from one lay-up to another: "0.4 mm thinner,
// 2 g lighter, 3 fillers fewer".
func (to Tally) Differs(from Tally, sys unit.System) string {
	if !to.laid {
		return "nothing laid"
	}
	var out []string
	put := func(format string, a ...any) { out = append(out, fmt.Sprintf(format, a...)) }
	if d := to.Over - from.Over; sys.Diameter(to.Over) != sys.Diameter(from.Over) {
		put("%s %s %s", sys.Diameter(max(d, -d)), sys.Name(), words.Either(d < 0, "thinner", "thicker"))
	}
	count := func(a, b int, one, many string) {
		switch n := b - a; {
		case n == 1 || n == -1:
			put("1 %s %s", words.Either(n > 0, "more", "fewer"), one)
		case n != 0:
			put("%d %s %s", max(n, -n), words.Either(n > 0, "more", "fewer"), many)
		}
	}
	count(from.Spares, to.Spares, "spare", "spares")
	count(from.Fillers, to.Fillers, "filler", "fillers")
	if to.built != from.built {
		put("%s round the centre", words.Either(to.built, "tape", "no tape"))
	}
	if g := math.Round(float64(to.Gram)) - math.Round(float64(from.Gram)); from.GramKnown && to.GramKnown && g != 0 {
		put("%s g %s", unit.Fixed(math.Abs(g), 0), words.Either(g < 0, "lighter", "heavier"))
	}
	count(from.lumpy, to.lumpy, "lumpy layer", "lumpy layers")
	count(from.Buried, to.Buried, "buried wire", "buried wires")
	count(from.layers, to.layers, "layer", "layers")
	count(from.short, to.short, "layer that will not close", "layers that will not close")
	if from.sheath != to.sheath && to.sheath != "" {
		put("sheath %s", to.sheath)
	}
	if len(out) == 0 {
		return "the same figures"
	}
	return strings.Join(out, ", ")
}
