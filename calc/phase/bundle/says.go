package bundle

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/formula/lay"
	"contralay/calc/formula/plan"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// sayMissing compares what the file lays with what runs through the branch.
func sayMissing(s *sheet.Sheet, i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	if LayersOf(s, i) == nil {
		return
	}
	var laid []string
	for _, l := range b.Layers {
		laid = append(laid, l.Of...)
	}
	if miss := Without(out.Components, laid); len(miss) > 0 {
		s.Say(sheet.Stop, "layer.missing", b.ID, fmt.Sprintf("%s in no layer", isAre(miss)))
	}
	stray := Without(laid, out.Components)
	stray = slices.DeleteFunc(stray, func(id string) bool {
		k, ok := s.Index.Wire[id]
		if !ok {
			return false
		}
		if u, in := s.Index.UnitOf[id]; in {
			s.Say(sheet.Stop, "layer.unit", b.ID, fmt.Sprintf("%s belongs to unit %s: lay the unit instead", id, s.H.Units[u].ID))
			return true
		}
		return !s.Wires[k].HasPath // said already
	})
	if len(stray) > 0 {
		s.Say(sheet.Stop, "layer.stray", b.ID, fmt.Sprintf("%s laid in this branch, but %s not run through it", isAre(stray),
			doDoes(stray)))
	}
}

// Without is a list less what stands in another, in its order.
func Without(a, b []string) []string {
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

func sayRelaxed(s *sheet.Sheet, i int, o sheet.Option) {
	id := s.H.Branches[i].ID
	switch o.Plan.Relaxed {
	case plan.Gaps:
		s.Say(sheet.Warn, "plan.gaps", id, "No lay-up keeps the gap limits. The best one has gaps")
	case plan.GapLift:
		s.Say(sheet.Warn, "plan.tight", id, "No lay-up closes easily. The best one is tight and has gaps")
	case plan.Nothing:
		s.Say(sheet.Warn, "plan.none", id, "No lay-up closes. This one will not close either")
	}
}

// sayLayers tells what is tight, open or without a tracer.
func sayLayers(s *sheet.Sheet, i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	sayMake(s, i)
	if out.Make != model.MakeLaid {
		return
	}
	for k := 1; k < len(out.Layers); k++ {
		l := &out.Layers[k]
		limit := s.Limits.GapInner
		if k == len(out.Layers)-1 {
			limit = s.Limits.GapOuter
		}
		proud := unit.Fixed(l.ProudMM, 2)
		switch {
		case !l.Closes:
			s.Say(sheet.Stop, "layer.lay", b.ID, fmt.Sprintf("Layer %d cannot close with a lay length of %s mm: the lay is too short",
				k, unit.Fixed(l.LayMM, 0)))
		case l.Lift > s.Limits.LiftStop:
			s.Say(sheet.Stop, "layer.full", b.ID, fmt.Sprintf("Layer %d has %d pieces and room for %d: it would stand %s mm proud", k,
				len(l.Members), l.Takes, proud))
		case l.Lift > s.Limits.LiftTight:
			s.Say(sheet.Warn, "layer.close", b.ID,
				fmt.Sprintf("Layer %d will not close: it stands %s mm proud, and has room for %d of its %d pieces", k, proud, l.Takes,
					len(l.Members)))
		case l.Lift > s.Limits.LiftMax:
			s.Say(sheet.Note, "layer.tight", b.ID, fmt.Sprintf("Layer %d is tight: it stands %s mm proud", k, proud))
		case l.Gap > limit:
			s.Say(sheet.Note, "layer.gap", b.ID,
				fmt.Sprintf("Layer %d is %s %% open and has room for %d more", k, unit.Fixed(100*l.Gap, 0), l.Room))
		}
		if l.ZigZag {
			s.Say(sheet.Note, "layer.order", b.ID,
				fmt.Sprintf("Layer %d is laid thick beside thin, because it would not close in the order in which its wires leave", k))
		}
		if l.Tracer == "" && len(l.Members) > 2 {
			s.Say(sheet.Note, "layer.tracer", b.ID, fmt.Sprintf("No colour occurs only once in layer %d: mark one wire as its tracer", k))
		}
	}
	if out.Buried > 0 {
		s.Say(sheet.Note, "layer.buried", b.ID, fmt.Sprintf("Pieces that leave early lie under others that run on: %d of them",
			out.Buried))
	}
}

// sayMake tells what the file asks of a branch and does not get: a kind of make
// that its layers rule out, filler where there is no layer to keep round, a centre
// that is none.
func sayMake(s *sheet.Sheet, i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	if b.Make.Set && b.Make.V != out.Make {
		s.Say(sheet.Note, "branch.make", b.ID, fmt.Sprintf("It has layers, so it is laid and not %s", b.Make.V))
	}
	if out.Make != model.MakeLaid {
		if n := b.Layers; len(n) > 0 && n[0].Fillers.V > 0 {
			s.Say(sheet.Note, "branch.filler", b.ID, fmt.Sprintf("It is made %s, which takes no filler: its fillers are left out (%d)",
				out.Make, n[0].Fillers.V))
		}
		return
	}
	var d []unit.Millimetre
	for _, m := range out.Layers[0].Members {
		if m.Kind != sheet.OfFiller || m.X != 0 || m.Y != 0 {
			d = append(d, m.D)
		}
	}
	if len(d) > 0 && !lay.CanBeCentre(d) {
		s.Say(sheet.Warn, "layer.centre", b.ID,
			fmt.Sprintf("A centre of these %d pieces is not round: use one, two to five of one size, or two or three of different sizes",
				len(d)))
	}
}
