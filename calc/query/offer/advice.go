package offer

import (
	"fmt"
	"maps"
	"math"
	"slices"

	"contralay/calc"
	"contralay/calc/formula/wire"
	"contralay/calc/phase/ends"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Does reports whether a size does for a wire: see Doubt.
func Does(s *sheet.Sheet, k int, size string) bool { return Doubt(s, k, size) == "" }

// Doubt says why a size does not do for a wire, "" where it does: its heat is within
// what its way allows, its circuit drops no more than the shop allows, its device
// protects it, contacts and seals at both ends take it, and it is not thinner than the
// shop handles. The rest of the loom is as it is; a lay-up is left as it lies.
func Doubt(s *sheet.Sheet, k int, size string) string {
	if !wires.Carries(s, k) {
		return "no current is entered"
	}
	if says := Handles(s, k, size); says != "" {
		return says
	}
	t := calc.Build(AsLaid(s).EditWire(k, func(w *model.Wire) { w.Size = size }), s.Cat, s)
	return Doubts(t, k)
}

// Handles says why a wire cannot have a size whatever it carries, "" where it can: its specification has it, it is not
// thinner than the shop handles, and contacts and seals at both ends take it.
func Handles(s *sheet.Sheet, k int, size string) string {
	w := s.H.Wires[k]
	e, known := s.Cat.Wire(w.Spec, size)
	switch {
	case !known:
		return fmt.Sprintf("%s has no size %s", w.Spec, size)
	case thin(s, e):
		return "thinner than the shop uses, " + s.Limits.SizeMin
	}
	if end := endRefuses(s, k, size); end != "" {
		return end + " does not take it"
	}
	return ""
}

// Doubts is Doubt of a wire as this sheet has it, its ends and the shop's least size
// apart.
func Doubts(s *sheet.Sheet, k int) string {
	c := &s.Wires[k]
	switch {
	case !c.Bound.Set:
		return "its current limit is not known"
	case c.Heats > c.Bound.V.Amps:
		return fmt.Sprintf("may carry %s A: %s", sheet.PlainAmps(c.Bound.V.Amps), c.Bound.V.Where)
	case c.PulseBurns || c.FeedBurns:
		return "its device does not protect it, or a pulse is too much for it"
	case !c.Drop.Set && s.H.Wires[k].Amps.Set:
		return "its voltage drop is not known"
	}
	for _, i := range append(slices.Clone(wires.Serves(s, k)), k) {
		if most := wires.DropLimit(s, i); s.Wires[i].Drop.Set && s.Wires[i].Circuit > most {
			return fmt.Sprintf("drops %s V of %s V allowed", unit.Fixed(s.Wires[i].Circuit, 2), unit.Fixed(most, 2))
		}
	}
	return ""
}

// endRefuses is the first end of a wire that does not take a size, "" where both do.
func endRefuses(s *sheet.Sheet, k int, size string) string {
	w := &s.H.Wires[k]
	for _, text := range []string{w.From.V, w.To.V} {
		e, _ := s.Index.End(text)
		if t, known := s.Index.Termination[e.Termination]; known && !ends.Takes(s, t, e.Cavity, w.Spec, size) {
			return text
		}
	}
	return ""
}

// thin reports whether a wire is thinner than the shop handles.
func thin(s *sheet.Sheet, e catalogue.Wire) bool {
	least, gauge := catalogue.AWGNumber(s.Limits.SizeMin)
	if n, ok := catalogue.AWGNumber(e.Size); ok && gauge {
		return n > least
	}
	area, ok := catalogue.MetricArea(s.Limits.SizeMin)
	if gauge {
		area, ok = wire.AWG(least).Area()
	}
	return ok && e.AreaMM2 > 0 && e.AreaMM2 < area
}

// SmallestThatDoes is the thinnest size of the wire's specification that Does; false
// where none does, or no current is entered to judge by.
func SmallestThatDoes(s *sheet.Sheet, k int) (string, bool) {
	if !wires.Carries(s, k) || !wires.Rates(s, k) {
		return "", false
	}
	for _, size := range s.Cat.Sizes(s.H.Wires[k].Spec) { // thin to thick
		if Does(s, k, size) {
			return size, true
		}
	}
	return "", false
}

// Change is another size for a wire.
type Change struct {
	Wire     int
	From, To string
}

// Advise is the sizes that do for every wire with a current, all taken together, as
// changes and as the harness with them; wires that no size does for stay as they are and
// are named.
//
// First what is overloaded goes up until the loom is sound. Then each wire's own
// smallest is found with the others as they are by then, like wires once. Then all are
// taken at once, and what no longer does in that company goes up again.
func Advise(s *sheet.Sheet) (changes []Change, h *model.Harness, none []int) {
	want := map[int]string{}
	for k := range s.H.Wires {
		if c := &s.Wires[k]; wires.Carries(s, k) && s.H.Wires[k].Role.V != model.RoleSpare && c.Known && c.HasPath && wires.Rates(s, k) {
			want[k] = s.H.Wires[k].Size
		}
	}
	all := maps.Clone(want)
	sound := settle(s, want)
	like := map[string]string{}
	for _, k := range slices.Sorted(maps.Keys(want)) {
		w, c := &sound.H.Wires[k], &sound.Wires[k]
		key := fmt.Sprint(w.Spec, w.Size, w.Amps, w.OnS, w.PeriodS, w.RestA, w.Return, c.Heats, c.Path, c.Guard.V,
			unit.Fixed(c.Bound.V.Amps, 2), unit.Fixed(c.Circuit, 4), endSizes(s, k))
		size, tried := like[key]
		if !tried {
			size, _ = SmallestThatDoes(sound, k)
			like[key] = size
		}
		if size != "" {
			want[k] = size
		}
	}
	settle(s, want)
	for _, k := range slices.Sorted(maps.Keys(all)) {
		if _, ok := want[k]; !ok {
			none = append(none, k)
		}
	}
	var out []Change
	done := s.H
	for k := range s.H.Wires {
		if size, ok := want[k]; ok && catalogue.CanonicalSize(size) != catalogue.CanonicalSize(s.H.Wires[k].Size) {
			out = append(out, Change{k, s.H.Wires[k].Size, size})
			done = done.EditWire(k, func(w *model.Wire) { w.Size = size })
		}
	}
	return out, done, none
}

// settle takes sizes for wires and lets those go up that do not do in each other's
// company, until all do; one that no size does for leaves want and keeps its own. What
// makes the most heat goes first: a wire that others warm does not go up before them.
// It returns the sheet it came to.
func settle(s *sheet.Sheet, want map[int]string) *sheet.Sheet {
	for { // sizes only go up, one at least a round, so this ends
		h := AsLaid(s)
		for k, size := range want {
			h = h.EditWire(k, func(w *model.Wire) { w.Size = size })
		}
		t := calc.Build(h, s.Cat, s)
		var hot float64
		bad := map[int]bool{}
		for k := range want {
			if Doubts(t, k) != "" || thin(t, t.Wires[k].Entry) || endRefuses(t, k, want[k]) != "" {
				bad[k], hot = true, math.Max(hot, madeBy(t, k))
			}
		}
		if len(bad) == 0 {
			return t
		}
		for k := range bad {
			if madeBy(t, k) < hot/2 {
				continue
			}
			sizes := s.Cat.Sizes(s.H.Wires[k].Spec)
			n := slices.Index(sizes, want[k]) + 1
			for n < len(sizes) && endRefuses(s, k, sizes[n]) != "" {
				n++
			}
			if n >= len(sizes) {
				delete(want, k)
			} else {
				want[k] = sizes[n]
			}
		}
	}
}

// madeBy is the heat a wire makes, W/km at 20 °C.
func madeBy(s *sheet.Sheet, k int) float64 {
	c := &s.Wires[k]
	return float64(c.Heats) * float64(c.Heats) * float64(c.Entry.OhmPerKm)
}

// endSizes is the contact sizes at both ends of a wire.
func endSizes(s *sheet.Sheet, k int) [2]string {
	var out [2]string
	for n, text := range []string{s.H.Wires[k].From.V, s.H.Wires[k].To.V} {
		e, _ := s.Index.End(text)
		if t, ok := s.Index.Termination[e.Termination]; ok {
			out[n] = s.Terms[t].State[e.Cavity].Size + e.Termination
		}
	}
	return out
}

// AsLaid is the harness with every proposal written into it, so that nothing is
// planned anew when it changes.
func AsLaid(s *sheet.Sheet) *model.Harness {
	h := s.H
	for i := range s.Branches {
		if b := &s.Branches[i]; b.Proposed && len(b.As) > 0 {
			as, mk := b.As, b.Make
			h = h.EditBranch(i, func(b *model.Branch) { b.Layers, b.Make = model.CloneLayers(as), model.Some(mk) })
		}
	}
	return h
}
