package desk

import (
	"fmt"
	"math"
	"strings"

	"contralay/calc"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// trials keeps the sheets of lay-ups that are looked at and not taken, so that
// moving along them costs one build each.
type trials struct {
	of   *sheet.Sheet // the sheet they are tried against
	at   int          // and the branch
	seen map[string]*Model
}

// Try is the bench as it would be with another harness: to draw and to compare,
// never to change. name tells trials against one sheet apart.
func (m *Model) Try(name string, as func() *model.Harness) *Model {
	if m.trials.of != m.Sheet || m.trials.at != m.Branch {
		m.trials = trials{m.Sheet, m.Branch, map[string]*Model{}}
	}
	if t := m.trials.seen[name]; t != nil {
		t.W, t.Height, t.Sys, t.Zoom, t.By = m.W, m.Height, m.Sys, m.Zoom, m.By
		return t
	}
	t := *m
	t.H = as()
	t.Sheet = calc.Build(t.H, m.Cfg.Cat, m.Sheet)
	m.trials.seen[name] = &t
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
}

func (m *Model) Tally() Tally {
	_, b, ok := m.B()
	if !ok {
		return Tally{}
	}
	t := Tally{Over: b.OverMM, Gram: b.Gram, GramKnown: b.GramKnown, Buried: b.Buried, layers: len(b.Layers), sheath: b.Sheath.Part,
		laid: len(b.Layers) > 0, minBend: b.Bend.MinMM}
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
func (m *Model) Differs(from, to Tally) string {
	if !to.laid {
		return "nothing laid"
	}
	var out []string
	put := func(format string, a ...any) { out = append(out, fmt.Sprintf(format, a...)) }
	if d := to.Over - from.Over; m.Sys.Diameter(to.Over) != m.Sys.Diameter(from.Over) {
		put("%s %s %s", m.Sys.Diameter(max(d, -d)), m.Sys.Name(), map[bool]string{true: "thinner", false: "thicker"}[d < 0])
	}
	count := func(a, b int, one, many string) {
		switch n := b - a; {
		case n == 1 || n == -1:
			put("1 %s %s", one, map[bool]string{true: "more", false: "fewer"}[n > 0])
		case n != 0:
			put("%d %s %s", max(n, -n), many, map[bool]string{true: "more", false: "fewer"}[n > 0])
		}
	}
	count(from.Spares, to.Spares, "spare", "spares")
	count(from.Fillers, to.Fillers, "filler", "fillers")
	if g := math.Round(float64(to.Gram)) - math.Round(float64(from.Gram)); from.GramKnown && to.GramKnown && g != 0 {
		put("%s g %s", unit.Fixed(math.Abs(g), 0), map[bool]string{true: "lighter", false: "heavier"}[g < 0])
	}
	count(from.lumpy, to.lumpy, "lumpy layer", "lumpy layers")
	count(from.Buried, to.Buried, "early leaver buried", "early leavers buried")
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
