package run

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/phase/built"
	"contralay/calc/sheet"
	"contralay/model"
)

// A step is gone through piece by piece: one wire to cut, one to lay, one to pin. What a record
// keeps is the step, as ever; while it is begun the pieces that are done stand in it.

// Piece is one piece of a step.
type Piece struct {
	Key    string   // as a record has it: the mark of a wire that is cut, else the piece within its step
	ID     string   // of the wire or the unit; "filler"; "" where a cavity takes only a plug
	Cavity string   // of a PinStep
	Wires  []string // of a PinStep: all that go into the cavity; each is a piece
	Drain  string   // of a PinStep: the unit whose drain goes into the cavity
	Check  Check    // what is tested; its zero value where the piece is no test
}

// Pieces are the pieces of a step, in the order they are done; none of a step that is one act.
func Pieces(s *sheet.Sheet, r RunStep) []Piece {
	switch r.Kind {
	case CutStep:
		var out []Piece
		for n, k := range r.Cut.Wires {
			out = append(out, Piece{Key: r.Marks()[n], ID: s.H.Wires[k].ID})
		}
		return out
	case LayStep:
		return laid(s, r)
	case PinStep:
		return pinned(s, r)
	}
	return tested(s, r)
}

// laid are the pieces of a layer in their order round it. Fillers have numbers: they are alike.
func laid(s *sheet.Sheet, r RunStep) []Piece {
	i, ok := s.Index.Branch[r.Of]
	if !ok || r.Layer >= len(s.Branches[i].Layers) {
		return nil
	}
	var out []Piece
	fillers := 0
	for _, c := range s.Branches[i].Layers[r.Layer].Members {
		p := Piece{Key: c.ID, ID: c.ID}
		if c.Kind == sheet.OfFiller {
			fillers++
			p.Key = fmt.Sprintf("filler %d", fillers)
		}
		out = append(out, p)
	}
	return out
}

// pinned are the wires of an end by cavity, then the cavities that only take a plug.
func pinned(s *sheet.Sheet, r RunStep) []Piece {
	t, ok := s.Index.Termination[r.Of]
	if !ok {
		return nil
	}
	var out, shut []Piece
	for _, name := range s.Terms[t].Cavities {
		switch c := s.Terms[t].State[name]; {
		case len(c.Wires) > 0:
			for _, id := range c.Wires {
				p := Piece{Key: name, ID: id, Cavity: name, Wires: c.Wires, Drain: c.Drain}
				if len(c.Wires) > 1 {
					p.Key += " " + id
				}
				out = append(out, p)
			}
		case c.Drain != "":
			out = append(out, Piece{Key: name, ID: c.Drain, Cavity: name, Drain: c.Drain})
		case s.Terms[t].Sealed:
			shut = append(shut, Piece{Key: name, Cavity: name})
		}
	}
	return append(out, shut...)
}

// Has reports whether a piece of a step is done.
func (r RunStep) Has(b *model.Build, p Piece) bool {
	switch {
	case r.Kind == CutStep:
		return b.Did(p.Key)
	case p.Check.Kind != NoCheck && !b.Did(r.Key):
		result, _ := p.Check.Result(b, r.Key)
		return result >= Conceded
	}
	return b.Did(r.Key) || slices.Contains(b.SoFar(r.Key), p.Key)
}

// FirstOpen is the first of some pieces that is not done; as many as there are where all are.
func (r RunStep) FirstOpen(b *model.Build, all []Piece) int {
	if k := slices.IndexFunc(all, func(p Piece) bool { return !r.Has(b, p) }); k >= 0 {
		return k
	}
	return len(all)
}

// Begin writes pieces of a step down as done. A step whose last piece that is becomes done by it, but
// for a layer: it is measured before it is ticked. at and by are the time and the person, "" where
// that is not known.
func (r RunStep) Begin(b *model.Build, all, done []Piece, facts []built.Fact, at, by string) {
	for _, t := range r.Ticks(facts, at, by) {
		for _, p := range done {
			switch {
			case r.Kind != CutStep:
				b.Begin(t, p.Key)
			case p.Key == t.Key:
				b.Tick(t)
			}
		}
	}
	if r.Kind != LayStep && r.FirstOpen(b, all) == len(all) {
		r.Tick(b, facts, at, by)
	}
}

// Tick writes a whole step down as done.
func (r RunStep) Tick(b *model.Build, facts []built.Fact, at, by string) {
	for _, t := range r.Ticks(facts, at, by) {
		b.Tick(t)
	}
}

// Away is where a wire goes beyond the far end of branch i, as its end is written, and where it
// comes from; neither where it does not run through that branch.
func Away(s *sheet.Sheet, i, k int) (to, from string) {
	w, path := &s.H.Wires[k], s.Wires[k].Path
	at := slices.Index(path, i)
	if at < 0 {
		return "", ""
	}
	mb := &s.H.Branches[i]
	forward := at+1 < len(path) && slices.Contains(s.Index.Meeting(mb.To), path[at+1]) ||
		at > 0 && slices.Contains(s.Index.Meeting(mb.From), path[at-1])
	if len(path) == 1 {
		a, _, _ := s.Index.Places(w)
		forward = a == mb.From
	}
	if forward {
		return w.To.V, w.From.V
	}
	return w.From.V, w.To.V
}

// Item is one piece of one step, or a step that is one act; its piece is then the zero value.
type Item struct {
	Step  int
	Piece Piece
}

// Group is what goes with a piece of step at: all that whoever knows the work does in one go. It is
// the wires off one spool, the layer, the cavities of one end, what is threaded on from one end or
// shrunk there; else the step alone. Only what is open is in it, and nothing beyond a hold.
func Group(s *sheet.Sheet, steps []RunStep, b *model.Build, at int, p Piece) []Item {
	var out []Item
	r := steps[at]
	first, end := between(steps, at)
	switch r.Kind {
	case CutStep:
		k := s.Index.Wire[p.ID]
		for n := first; n < end; n++ {
			for _, o := range Pieces(s, steps[n]) {
				if steps[n].Kind == CutStep && sameSpool(s, k, s.Index.Wire[o.ID]) && !steps[n].Has(b, o) {
					out = append(out, Item{n, o})
				}
			}
		}
		return out
	case LayStep, PinStep:
		for _, o := range Pieces(s, r) {
			if !r.Has(b, o) {
				out = append(out, Item{at, o})
			}
		}
		return out
	case ThreadStep, ShrinkStep:
		for n := first; n < end; n++ {
			if steps[n].Kind == r.Kind && steps[n].Put.From == r.Put.From && !steps[n].In(b) {
				out = append(out, Item{Step: n})
			}
		}
		return out
	case HoldStep, PullStep:
		return untested(s, r, b, at, p)
	}
	if r.In(b) {
		return nil
	}
	return []Item{{Step: at}}
}

// untested are the tests of a step that pass without a number and have not been made: of nets those
// that begin at one termination. What has failed is in none: it is tested again by itself.
func untested(s *sheet.Sheet, r RunStep, b *model.Build, at int, p Piece) []Item {
	end := func(p Piece) string {
		id, _, _ := strings.Cut(p.Check.From, ":")
		return id
	}
	var out []Item
	for _, o := range Pieces(s, r) {
		if o.Check.NeedsReading() || end(o) != end(p) || o.Check.Kind == NoCheck || r.Has(b, o) {
			continue
		}
		if result, _ := o.Check.Result(b, r.Key); result == Untested {
			out = append(out, Item{at, o})
		}
	}
	return out
}

// Test writes a test down that was made now, and ticks a step of samples with its last.
func (r RunStep) Test(b *model.Build, all []Piece, c Check, read model.Opt[float64], fault, instrument, at, by string) {
	t := c.Record(r.Key, read, fault)
	for _, o := range []struct {
		to   *model.Opt[string]
		text string
	}{{&t.Instrument, instrument}, {&t.At, at}, {&t.By, by}} {
		if o.text != "" {
			*o.to = model.Some(o.text)
		}
	}
	b.Tests = append(b.Tests, t)
	if r.Kind == PullStep && r.FirstOpen(b, all) == len(all) {
		r.Tick(b, nil, at, by)
	}
}

// between is the steps round one that no hold parts from it.
func between(steps []RunStep, at int) (first, end int) {
	for first = at; first > 0 && steps[first-1].Kind != HoldStep; first-- {
	}
	for end = at; end < len(steps) && steps[end].Kind != HoldStep; end++ {
	}
	return first, end
}

// sameSpool reports whether two wires come off one spool: of one specification, size and colour.
func sameSpool(s *sheet.Sheet, a, b int) bool {
	one, other := &s.H.Wires[a], &s.H.Wires[b]
	return one.Spec == other.Spec && one.Size == other.Size && one.Colour.V == other.Colour.V
}
