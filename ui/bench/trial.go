package bench

import (
	"fmt"
	"math"
	"strings"

	"contralay/calc"
	"contralay/model"
	"contralay/model/unit"
)

// trials keeps the sheets of lay-ups that are looked at and not taken, so that
// moving along them costs one build each.
type trials struct {
	of   *calc.Sheet // the sheet they are tried against
	at   int         // and the branch
	seen map[string]*Model
}

// try is the bench as it would be with another harness: to draw and to compare,
// never to change. name tells trials against one sheet apart.
func (m *Model) try(name string, as func() *model.Harness) *Model {
	if m.trials.of != m.sheet || m.trials.at != m.branch {
		m.trials = trials{m.sheet, m.branch, map[string]*Model{}}
	}
	if t := m.trials.seen[name]; t != nil {
		t.w, t.height, t.sys, t.zoom, t.by = m.w, m.height, m.sys, m.zoom, m.by
		return t
	}
	t := *m
	t.h = as()
	t.sheet = calc.Build(t.h, m.cfg.Cat, m.sheet)
	m.trials.seen[name] = &t
	return &t
}

// tally is what two lay-ups of a branch are told apart by.
type tally struct {
	over, wire      unit.Millimetre
	gram            unit.Gram
	gramKnown       bool
	fillers, spares int
	lumpy, buried   int
	layers, short   int
	sheath          string
	laid            bool
	minBend         unit.Millimetre
}

func (m *Model) tally() tally {
	_, b, ok := m.b()
	if !ok {
		return tally{}
	}
	t := tally{over: b.OverMM, gram: b.Gram, gramKnown: b.GramKnown, buried: b.Buried, layers: len(b.Layers), sheath: b.Sheath.Part,
		laid: len(b.Layers) > 0, minBend: b.Bend.MinMM}
	for k := range b.Layers {
		l := &b.Layers[k]
		t.fillers, t.spares = t.fillers+l.Fillers, t.spares+l.Spares
		lo, hi := unit.Millimetre(math.Inf(1)), unit.Millimetre(0)
		for _, c := range l.Members {
			if c.Kind != calc.OfFiller {
				lo, hi = min(lo, c.D), max(hi, c.D)
			}
		}
		if hi > lo*unit.Millimetre(m.sheet.Limits.LumpyAt) {
			t.lumpy++
		}
		if l.Lift > m.sheet.Limits.LiftTight {
			t.short++
		}
	}
	for _, i := range m.wiresHere() {
		t.wire += m.sheet.Wires[i].Cut
	}
	return t
}

// differs says in words what changes from one lay-up to another: "0.4 mm thinner,
// 2 g lighter, 3 fillers fewer".
func (m *Model) differs(from, to tally) string {
	if !to.laid {
		return "nothing laid"
	}
	var out []string
	put := func(format string, a ...any) { out = append(out, fmt.Sprintf(format, a...)) }
	if d := to.over - from.over; m.sys.Diameter(to.over) != m.sys.Diameter(from.over) {
		put("%s %s %s", m.sys.Diameter(max(d, -d)), m.sys.Name(), map[bool]string{true: "thinner", false: "thicker"}[d < 0])
	}
	count := func(a, b int, one, many string) {
		switch n := b - a; {
		case n == 1 || n == -1:
			put("1 %s %s", one, map[bool]string{true: "more", false: "fewer"}[n > 0])
		case n != 0:
			put("%d %s %s", max(n, -n), many, map[bool]string{true: "more", false: "fewer"}[n > 0])
		}
	}
	count(from.spares, to.spares, "spare", "spares")
	count(from.fillers, to.fillers, "filler", "fillers")
	if g := math.Round(float64(to.gram)) - math.Round(float64(from.gram)); from.gramKnown && to.gramKnown && g != 0 {
		put("%s g %s", unit.Fixed(math.Abs(g), 0), map[bool]string{true: "lighter", false: "heavier"}[g < 0])
	}
	count(from.lumpy, to.lumpy, "lumpy layer", "lumpy layers")
	count(from.buried, to.buried, "early leaver buried", "early leavers buried")
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
