package explain

import (
	"cmp"
	"fmt"
	"maps"
	"math"
	"slices"

	"contralay/calc"
	"contralay/calc/phase/wires"
	"contralay/calc/query/offer"
	"contralay/calc/query/why"
	"contralay/calc/query/why/power"
	"contralay/calc/query/why/shape"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// makers are those of both halves, by the name of their figure.
var makers = func() map[string]why.Maker {
	all := maps.Clone(shape.Makers)
	maps.Copy(all, power.Makers)
	return all
}()

// Of explains the figures of a sheet one after the other and keeps what it explained.
func Of(s *sheet.Sheet) why.Explainer { return why.New(s, makers) }

// Figure says how a figure of the sheet was made; false where the sheet has no
// such figure. It is worked out on demand and leaves the sheet as it is.
func Figure(s *sheet.Sheet, f why.Figure) (why.Why, bool) {
	e := Of(s)
	w, ok := e.Why(f)
	if !ok {
		return why.Why{}, false
	}
	w.Most = mostBy(s, f, w)
	return w, true
}

// Brief is Figure without Most, which takes a build for each thing it tries.
func Brief(s *sheet.Sheet, f why.Figure) (why.Why, bool) {
	return Of(s).Why(f)
}

// FigureNames is every What that can be explained, sorted.
func FigureNames() []string { return slices.Sorted(maps.Keys(makers)) }

// runsThrough is the branches that can have a say in a figure.
func runsThrough(s *sheet.Sheet, f why.Figure) map[int]bool {
	runs := map[int]bool{}
	if i, ok := s.Index.Branch[f.Of]; ok {
		runs[i] = true
		return runs
	}
	id := cmp.Or(f.Of, f.Part)
	if k, ok := s.Index.Wire[id]; ok {
		for _, b := range s.Wires[k].Path {
			runs[b] = true
		}
		return runs
	}
	for i := range s.Branches {
		runs[i] = true
	}
	return runs
}

// lever is an input from outside, made larger.
type lever struct {
	name string
	h    *model.Harness
	cat  *catalogue.Catalogue
}

// thicker makes a size of wire thicker where it was measured, else in the catalogue,
// so that its band stays what it is.
func thicker(s *sheet.Sheet, h *model.Harness, w *model.Wire, d unit.Millimetre) lever {
	name := "the diameter of " + w.Spec + " " + w.Size
	e, ok := s.Cat.Wire(w.Spec, w.Size)
	if _, measured := wires.Reel(s, w.Spec, w.Size); measured || !ok {
		return lever{name, h.SetReel(w.Spec, w.Size, d), s.Cat}
	}
	e.OverMM = d
	return lever{name, h, catalogue.Merge(s.Cat, &catalogue.Catalogue{Wires: map[catalogue.WireKey]catalogue.Wire{e.Key(): e}})}
}

// mostBy tries which input from outside moves a figure most: each is made 1 %
// larger in turn and the sheet built anew.
func mostBy(s *sheet.Sheet, f why.Figure, was why.Why) string {
	h := offer.AsLaid(s) // so that nothing is planned anew
	const more = 1.01
	var levers []lever
	runs := runsThrough(s, f)
	seen := map[string]bool{}
	for k := range h.Wires {
		w, d := &h.Wires[k], s.Wires[k].Dia.Nominal
		name := w.Spec + " " + w.Size
		if !slices.ContainsFunc(s.Wires[k].Path, func(b int) bool { return runs[b] }) {
			continue
		}
		if d > 0 && !seen[name] {
			levers = append(levers, thicker(s, h, w, d*more))
		}
		seen[name] = true
	}
	ratio := *h
	ratio.Rules.LayRatio = model.Some(s.Limits.LayRatio * more)
	levers = append(levers, lever{"the lay ratio", &ratio, s.Cat})
	for i := range h.Branches {
		if !runs[i] {
			continue
		}
		l := h.Branches[i].LengthMM * more
		levers = append(levers, lever{"the length of " + h.Branches[i].ID, h.EditBranch(i, func(b *model.Branch) { b.LengthMM = l }),
			s.Cat})
	}
	if f.What == "wire.drop" || f.What == "wire.circuit" || f.What == "wire.hottest" {
		k := s.Index.Wire[f.Of]
		levers = append(levers, lever{"its current", h.EditWire(k, func(w *model.Wire) { w.Amps.V *= more }), s.Cat})
	}
	best, change := "", 0.0
	for _, l := range levers {
		t := calc.Build(l.h, l.cat, s)
		e := Of(t)
		if w, ok := e.Why(f); ok {
			if d := w.Value - was.Value; math.Abs(d) > math.Abs(change)+1e-12 {
				best, change = l.name, d
			}
		}
	}
	if best == "" || was.Value == 0 {
		return ""
	}
	share := 100 * change / math.Abs(was.Value)
	if math.Abs(share) < 0.05 {
		return ""
	}
	which := "smaller"
	if change > 0 {
		which = "larger"
	}
	return fmt.Sprintf("%s: 1 %% more of it makes this figure %s %% %s", best, unit.Fixed(math.Abs(share), 1), which)
}
