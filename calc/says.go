package calc

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/lay"
	"contralay/calc/plan"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// sayMissing compares what the file lays with what runs through the branch.
func (s *Sheet) sayMissing(i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	if s.layersOf(i) == nil {
		return
	}
	var laid []string
	for _, l := range b.Layers {
		laid = append(laid, l.Of...)
	}
	if miss := without(out.Components, laid); len(miss) > 0 {
		s.say(Stop, "layer.missing", b.ID, fmt.Sprintf("%s in no layer", isAre(miss)))
	}
	stray := without(laid, out.Components)
	stray = slices.DeleteFunc(stray, func(id string) bool {
		k, ok := s.X.Wire[id]
		if !ok {
			return false
		}
		if u, in := s.X.UnitOf[id]; in {
			s.say(Stop, "layer.unit", b.ID, fmt.Sprintf("%s belongs to unit %s: lay that", id, s.H.Units[u].ID))
			return true
		}
		return !s.Wires[k].HasPath // said already
	})
	if len(stray) > 0 {
		s.say(Stop, "layer.stray", b.ID, fmt.Sprintf("%s laid here and %s not run through it", isAre(stray), doDoes(stray)))
	}
}

func without(a, b []string) []string {
	in := make(map[string]bool, len(b))
	for _, id := range b {
		in[id] = true
	}
	var out []string
	for _, id := range a {
		if !in[id] {
			out = append(out, id)
		}
	}
	return out
}

func isAre(ids []string) string {
	if len(ids) == 1 {
		return ids[0] + " is"
	}
	if len(ids) > 6 {
		return fmt.Sprintf("%s and %d more are", strings.Join(ids[:5], ", "), len(ids)-5)
	}
	return strings.Join(ids, ", ") + " are"
}

func doDoes(ids []string) string {
	if len(ids) == 1 {
		return "does"
	}
	return "do"
}

func (s *Sheet) sayRelaxed(i int, o Option) {
	id := s.H.Branches[i].ID
	switch o.Plan.Relaxed {
	case plan.Gaps:
		s.say(Warn, "plan.gaps", id, "no lay-up keeps the gap limits; the best has gaps")
	case plan.GapLift:
		s.say(Warn, "plan.tight", id, "no lay-up closes easily; the best is tight and has gaps")
	case plan.Nothing:
		s.say(Warn, "plan.none", id, "no lay-up closes; this one will not close as it is")
	}
}

// sayLayers tells what is tight, open or without a tracer.
func (s *Sheet) sayLayers(i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	s.sayMake(i)
	if out.Make != "laid" {
		return
	}
	for k := 1; k < len(out.Layers); k++ {
		l := &out.Layers[k]
		limit := s.Limits.GapInner
		if k == len(out.Layers)-1 {
			limit = s.Limits.GapOuter
		}
		proud := unit.Fixed(float64(l.ProudMM), 2)
		switch {
		case !l.Closes:
			s.say(Stop, "layer.lay", b.ID, fmt.Sprintf("layer %d closes at no diameter with a lay length of %s mm: it is too short", k, unit.Fixed(float64(l.LayMM), 0)))
		case l.Lift > s.Limits.LiftStop:
			s.say(Stop, "layer.full", b.ID, fmt.Sprintf("layer %d holds %d and takes %d: it would stand %s mm proud", k, len(l.Members), l.Takes, proud))
		case l.Lift > s.Limits.LiftTight:
			s.say(Warn, "layer.close", b.ID, fmt.Sprintf("layer %d will not close as it is: it stands %s mm proud, and takes %d of the %d it holds", k, proud, l.Takes, len(l.Members)))
		case l.Lift > s.Limits.LiftMax:
			s.say(Note, "layer.tight", b.ID, fmt.Sprintf("layer %d is tight: it stands %s mm proud", k, proud))
		case l.Gap > limit:
			s.say(Note, "layer.gap", b.ID, fmt.Sprintf("layer %d is %s %% open and has room for %d", k, unit.Fixed(100*float64(l.Gap), 0), l.Room))
		}
		if l.ZigZag {
			s.say(Note, "layer.order", b.ID, fmt.Sprintf("layer %d is laid thick beside thin; in the order of leaving it would not close", k))
		}
		if l.Tracer == "" && len(l.Members) > 2 {
			s.say(Note, "layer.tracer", b.ID, fmt.Sprintf("layer %d has no colour that stands once: mark one wire as its tracer", k))
		}
	}
	if out.Buried > 0 {
		s.say(Note, "layer.buried", b.ID, fmt.Sprintf("%d of its components leave early and lie under others that run on", out.Buried))
	}
}

// sayMake tells what the file asks of a branch and does not get: a kind of make
// that its layers rule out, filler where there is no layer to keep round, a centre
// that is none.
func (s *Sheet) sayMake(i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	if b.Make.Set && b.Make.V != out.Make {
		s.say(Note, "branch.make", b.ID, fmt.Sprintf("has layers, so it is laid and not %s", b.Make.V))
	}
	if out.Make != "laid" {
		if n := b.Layers; len(n) > 0 && n[0].Fillers.V > 0 {
			s.say(Note, "branch.filler", b.ID, fmt.Sprintf("is %s, which takes no filler: %d are left out", out.Make, n[0].Fillers.V))
		}
		return
	}
	var d []unit.Millimetre
	for _, m := range out.Layers[0].Members {
		if m.Kind != OfFiller || m.X != 0 || m.Y != 0 {
			d = append(d, m.D)
		}
	}
	if len(d) > 0 && !lay.CanBeCentre(d) {
		s.say(Warn, "layer.centre", b.ID, fmt.Sprintf("%d in the centre do not lie round: one, two to five equal, or two or three unequal do", len(d)))
	}
}

// standing says once for each specification that its diameters rest on memory.
func (s *Sheet) standing() {
	seen := map[string]bool{}
	for i := range s.Wires {
		w := &s.Wires[i]
		if w.Dia.Standing == catalogue.Memory && !seen[s.H.Wires[i].Spec] {
			seen[s.H.Wires[i].Spec] = true
			s.sayLike(Note, "standing", s.H.Wires[i].Spec, "diameters", "its diameters are from memory: measure the reels before cutting")
		}
	}
	for i := range s.Branches {
		for _, t := range s.tubes(i) {
			if t.WallStanding == catalogue.Memory && !seen[t.ID] {
				seen[t.ID] = true
				s.sayLike(Note, "standing", t.ID, "wall", "its wall is from memory: type it from the reel's sheet")
			}
		}
	}
}
