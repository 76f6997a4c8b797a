package bulk

import (
	"fmt"
	"slices"

	"contralay/calc"
	"contralay/calc/phase/ends"
	"contralay/calc/query/offer"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// SpliceAsk asks for wires that end at one termination to be joined, with one wire on to it.
type SpliceAsk struct {
	Wires  []string
	Common string // the termination that they share; "" finds it
	At     string // the breakout where the splice sits; "" is where their ways part
}

// joining is a splice as it comes together.
type joining struct {
	s      *sheet.Sheet
	at     []int
	term   int    // the termination that the wires share
	from   []bool // by wire of at: its end there is its from end
	place  string // the breakout
	shared []int  // branches from the termination to it
	free   []string
}

// SpliceOf joins wires that share a termination: the end of each there goes onto a splice at the
// breakout where their ways part, and one wire goes on from the splice to the first of their
// cavities that takes it. That wire carries the sum of their currents, as if all were on at once,
// and has the smallest size that satisfies it and for which there is a splice.
func SpliceOf(s *sheet.Sheet, ask SpliceAsk) (Made, error) {
	at, err := picked(s, ask.Wires)
	if err != nil {
		return Made{}, err
	}
	j := joining{s: s, at: at}
	if err := j.mayJoin(); err != nil {
		return Made{}, err
	}
	if err := j.meet(ask.Common); err != nil {
		return Made{}, err
	}
	if err := j.part(ask.At); err != nil {
		return Made{}, err
	}
	return j.make()
}

// mayJoin refuses what must not be one net: two roles, two feeds; and what is laid as a unit.
func (j *joining) mayJoin() error {
	s := j.s
	if len(j.at) < 2 {
		return fmt.Errorf("a splice joins two wires or more: choose more")
	}
	first, fed := &model.Wire{}, none // first: that has a role
	for _, k := range j.at {
		w := &s.H.Wires[k]
		if u, in := s.Index.UnitOf[w.ID]; in {
			return fmt.Errorf("wire %s is in unit %s: its end stays with the unit", w.ID, s.H.Units[u].ID)
		}
		switch role := w.Role.V; {
		case role == model.RoleSpare:
			return fmt.Errorf("wire %s is a spare: it is joined to nothing", w.ID)
		case role != "" && first.Role.V == "":
			first = w
		case role != "" && role != first.Role.V:
			return fmt.Errorf("%s is %s and %s is %s: a splice would join them", first.ID, first.Role.V, w.ID, role)
		}
		f, on := s.Index.FeedOf[w.ID]
		switch {
		case !on:
		case fed == none:
			fed = f
		case fed != f:
			return fmt.Errorf("feed %s and feed %s would be joined: wire %s is on %s", s.H.Feeds[fed].ID, s.H.Feeds[f].ID, w.ID,
				s.H.Feeds[f].ID)
		}
	}
	return nil
}

const none = -1

// meet finds the termination that every wire has an end at.
func (j *joining) meet(common string) error {
	s := j.s
	var shared []int
	for n, k := range j.at {
		w := &s.H.Wires[k]
		if !s.Wires[k].HasPath {
			return fmt.Errorf("wire %s runs nowhere yet: give it both ends", w.ID)
		}
		var here []int
		for _, text := range []string{w.From.V, w.To.V} {
			if t, _, ok := cavityAt(s, text); ok {
				here = append(here, t)
			}
		}
		if n == 0 {
			shared = here
			continue
		}
		shared = slices.DeleteFunc(shared, func(t int) bool { return !slices.Contains(here, t) })
	}
	if common != "" {
		t, known := s.Index.Termination[common]
		if !known || !slices.Contains(shared, t) {
			return fmt.Errorf("not every wire ends at %s", common)
		}
		shared = []int{t}
	}
	switch len(slices.Compact(slices.Sorted(slices.Values(shared)))) {
	case 0:
		return fmt.Errorf("%s share no connector: choose wires that end at one", Named(idsOf(s.H, j.at)))
	case 1:
	default:
		return fmt.Errorf("the wires share both ends, %s and %s: choose which of them the one wire goes to", s.H.Terminations[shared[0]].ID,
			s.H.Terminations[shared[1]].ID)
	}
	j.term = shared[0]
	for _, k := range j.at {
		t, c, ok := cavityAt(s, s.H.Wires[k].From.V)
		from := ok && t == j.term
		if !from {
			_, c, _ = cavityAt(s, s.H.Wires[k].To.V)
		}
		j.from = append(j.from, from)
		if !slices.Contains(j.free, c) {
			j.free = append(j.free, c)
		}
	}
	order := s.Terms[j.term].Cavities
	slices.SortStableFunc(j.free, func(a, b string) int { return slices.Index(order, a) - slices.Index(order, b) })
	return nil
}

// part finds the breakout: the last that all of them pass on their way from the termination, or a
// chosen one of those.
func (j *joining) part(at string) error {
	id, places := j.s.H.Terminations[j.term].ID, j.passed()
	if at == "" && len(places) > 0 {
		at = places[len(places)-1]
	}
	n := slices.Index(places, at)
	switch {
	case len(places) == 0:
		return fmt.Errorf("%s pass no breakout together from %s: hang one on their way", Named(idsOf(j.s.H, j.at)), id)
	case n < 0:
		return fmt.Errorf("they do not all pass %s: choose %s", at, Named(places))
	}
	j.place, j.shared = at, j.way(0)[:n+1]
	return nil
}

// way is the branches of a wire from the shared termination on.
func (j *joining) way(n int) []int {
	way := slices.Clone(j.s.Wires[j.at[n]].Path)
	if !j.from[n] {
		slices.Reverse(way)
	}
	return way
}

// passed is the breakouts that all of them pass, from the termination on.
func (j *joining) passed() []string {
	var out []string
	place, first := j.s.H.Terminations[j.term].ID, j.way(0)
	for n, b := range first {
		for k := range j.at {
			if way := j.way(k); n >= len(way) || way[n] != b {
				return out
			}
		}
		if place = j.s.Index.Other(b, place); !j.breakout(place) {
			return out
		}
		out = append(out, place)
	}
	return out
}

func (j *joining) breakout(place string) bool { _, is := j.s.Index.Breakout[place]; return is }

// SpliceChoices is what a splice of wires can be chosen of: the terminations that all of them end
// at, and the breakouts that they pass together from one of those; common "" is the first.
func SpliceChoices(s *sheet.Sheet, ids []string, common string) (commons, places []string) {
	at, err := picked(s, ids)
	if err != nil {
		return nil, nil
	}
	for t := range s.H.Terminations {
		id := s.H.Terminations[t].ID
		j := joining{s: s, at: at}
		if j.meet(id) != nil {
			continue
		}
		if commons = append(commons, id); common == "" || common == id {
			common, places = id, j.passed()
		}
	}
	return commons, places
}

// make is the harness with the splice; the size of its one wire is judged with every branch as it
// is laid now.
func (j *joining) make() (Made, error) {
	s := j.s
	first := s.H.Wires[j.at[0]]
	w := model.Wire{ID: s.H.NextID(s.H.Wires[j.at[len(j.at)-1]].ID), Spec: first.Spec, Size: j.thickest(), Role: first.Role,
		Signal: first.Signal, Colour: first.Colour}
	sum, unknown := unit.Ampere(0), []string{}
	for _, k := range j.at {
		o := &s.H.Wires[k]
		if !o.Amps.Set {
			unknown = append(unknown, o.ID)
		}
		sum += o.Amps.V
		w.Signal, w.Colour = same(w.Signal, o.Signal), same(w.Colour, o.Colour)
		if o.Safety.V {
			w.Safety = model.Some(true)
		}
		if !w.Role.Set {
			w.Role = o.Role
		}
	}
	if len(unknown) == 0 {
		w.Amps = model.Some(unit.Ampere(unit.RoundHalfUp(float64(sum), 0.001)))
	}
	cavity, size, why := j.sized(w)
	w.Size = size
	h, splice := j.joined(s.H, w, cavity)
	says := fmt.Sprintf("splice %s at %s joins %s; wire %s, %s, goes on to %s:%s", splice, j.place, Named(idsOf(s.H, j.at)), w.ID,
		model.SizeWords(w.Size), s.H.Terminations[j.term].ID, cavity)
	switch {
	case len(unknown) > 0:
		says += ". The current of " + Named(unknown) + " is not entered: its size is that of the thickest"
	case why != "":
		says += ". " + why
	default:
		says += ", for " + trimmed(float64(w.Amps.V)) + " A with all on at once"
	}
	return Made{H: h, Wires: []string{w.ID}, Says: says}, nil
}

// same is a value that two wires share, or none.
func same(a, b model.Opt[string]) model.Opt[string] {
	if a == b {
		return a
	}
	return model.Opt[string]{}
}

// thickest is the size of the wire with most copper.
func (j *joining) thickest() string {
	best := j.at[0]
	for _, k := range j.at {
		if j.s.Wires[k].Entry.AreaMM2 > j.s.Wires[best].Entry.AreaMM2 {
			best = k
		}
	}
	return j.s.H.Wires[best].Size
}

// joined is a harness with the splice and the wire on from it.
func (j *joining) joined(h *model.Harness, w model.Wire, cavity string) (*model.Harness, string) {
	n := *h
	id := h.FreeID("S")
	n.Splices = append(slices.Clone(h.Splices), model.Splice{ID: id, At: j.place})
	from := map[string]bool{}
	for k, i := range j.at {
		from[h.Wires[i].ID] = j.from[k]
	}
	out := n.EditWires(j.at, func(w *model.Wire) {
		if from[w.ID] {
			w.From = model.Some(id)
		} else {
			w.To = model.Some(id)
		}
	})
	w.From, w.To = model.Some(j.s.H.Terminations[j.term].ID+":"+cavity), model.Some(id)
	ids := idsOf(h, j.at)
	out = out.AddWire(w, nil)
	for _, b := range j.shared {
		laid := out.InPlaceOf(b, w.ID, ids)
		if k := len(laid.Branches[b].Layers); k > 0 && laid == out {
			laid = out.EditBranch(b, func(b *model.Branch) { b.AddTo(k-1, w.ID) })
		}
		out = laid
	}
	for _, k := range j.at { // the one wire is on the feed now
		if f, on := j.s.Index.FeedOf[h.Wires[k].ID]; on {
			out = out.Feed(h.Wires[k].ID, none).Feed(w.ID, f)
		}
	}
	return out, id
}

// sized is the smallest size that satisfies the wire on from the splice, with the cavity that takes
// it: one for which there is a splice, where there is any. why says that none satisfies it, and
// then the thickest that a cavity takes is given.
func (j *joining) sized(w model.Wire) (cavity, size, why string) {
	s := j.s
	if unrated := s.Unrated || w.Safety.V; unrated || !w.Amps.Set {
		if unrated {
			why = "This sheet gives no electrical figures for it: its size is that of the thickest"
		}
		for _, c := range j.free {
			if ends.Takes(s, j.term, c, w.Spec, w.Size) {
				return c, w.Size, why
			}
		}
		return j.free[0], w.Size, why
	}
	fallback := ""
	tried := map[string]bool{}
	for _, c := range j.free {
		contact := s.Terms[j.term].State[c].Size
		if tried[contact] && contact != "" {
			continue
		}
		tried[contact] = true
		t, k := j.built(w, c)
		if least, ok := offer.SmallestThatDoes(t, k); ok {
			return c, j.spliced(w, c, least), ""
		}
		for _, size := range s.Cat.Sizes(w.Spec) {
			if ends.Takes(s, j.term, c, w.Spec, size) {
				cavity, fallback = c, size
			}
		}
	}
	if cavity == "" {
		cavity, fallback = j.free[0], w.Size
	}
	return cavity, fallback, fmt.Sprintf("No size satisfies %s A there: see its page", trimmed(float64(w.Amps.V)))
}

// spliced is the smallest size from one on that there is a splice for; that one where there is none.
func (j *joining) spliced(w model.Wire, cavity, least string) string {
	sizes := j.s.Cat.Sizes(w.Spec)
	for n := max(0, slices.IndexFunc(sizes, func(o string) bool {
		return catalogue.CanonicalSize(o) == catalogue.CanonicalSize(least)
	})); n < len(sizes); n++ {
		if !ends.Takes(j.s, j.term, cavity, w.Spec, sizes[n]) {
			continue
		}
		w.Size = sizes[n]
		if t, _ := j.built(w, cavity); t.Splices[len(t.Splices)-1].Fits {
			return sizes[n]
		}
	}
	return least
}

// built is the sheet with the splice, every branch laid as it is now.
func (j *joining) built(w model.Wire, cavity string) (*sheet.Sheet, int) {
	h, _ := j.joined(offer.AsLaid(j.s), w, cavity)
	t := calc.Build(h, j.s.Base, j.s)
	return t, t.Index.Wire[w.ID]
}
