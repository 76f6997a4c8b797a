package model

import (
	"slices"
	"strings"
)

// Index finds the things of a harness by id and knows the tree its branches
// make. It is built from one Harness value and only read afterwards. Of two
// things with one id the first counts; the loader refuses such a file.
type Index struct {
	H           *Harness
	Termination map[string]int
	Breakout    map[string]int
	Splice      map[string]int
	Wire        map[string]int
	Unit        map[string]int
	Branch      map[string]int
	Feed        map[string]int
	FeedOf      map[string]int // wire id → feed that names it
	UnitOf      map[string]int // wire id → unit
	meet        map[string][]int
	up          map[string]stride // nil where branches close a loop
}

// NewIndex reads a harness once.
func NewIndex(h *Harness) *Index {
	x := &Index{H: h, UnitOf: map[string]int{}, FeedOf: map[string]int{}, meet: map[string][]int{}}
	x.Termination = number(h.Terminations, func(t *Termination) string { return t.ID })
	x.Breakout = number(h.Breakouts, func(t *Breakout) string { return t.ID })
	x.Splice = number(h.Splices, func(t *Splice) string { return t.ID })
	x.Wire = number(h.Wires, func(t *Wire) string { return t.ID })
	x.Unit = number(h.Units, func(t *Unit) string { return t.ID })
	x.Branch = number(h.Branches, func(t *Branch) string { return t.ID })
	x.Feed = number(h.Feeds, func(t *Feed) string { return t.ID })
	for i := range h.Feeds {
		for _, w := range h.Feeds[i].Wires {
			if _, taken := x.FeedOf[w]; !taken {
				x.FeedOf[w] = i
			}
		}
	}
	for i := range h.Units {
		for _, w := range h.Units[i].Wires {
			if _, taken := x.UnitOf[w]; !taken {
				x.UnitOf[w] = i
			}
		}
	}
	for i := range h.Branches {
		b := &h.Branches[i]
		x.meet[b.From] = append(x.meet[b.From], i)
		x.meet[b.To] = append(x.meet[b.To], i)
	}
	x.up = x.ways()
	return x
}

func number[T any](all []T, id func(*T) string) map[string]int {
	m := make(map[string]int, len(all))
	for i := range all {
		if _, taken := m[id(&all[i])]; !taken {
			m[id(&all[i])] = i
		}
	}
	return m
}

// End is where a wire stops.
type End struct {
	Termination string // "" where it is a splice
	Cavity      string
	Splice      string
}

// ParseEnd reads "TERMINATION:CAVITY" or a splice id. The empty text is no end.
func ParseEnd(text string) (End, bool) {
	if text == "" {
		return End{}, false
	}
	if t, c, ok := strings.Cut(text, ":"); ok {
		return End{Termination: t, Cavity: c}, true
	}
	return End{Splice: text}, true
}

// Place is the node of the tree where an end stands: a termination, or the
// breakout of a splice. ok is false where there is no such thing.
func (x *Index) Place(end End) (string, bool) {
	if end.Splice != "" {
		i, ok := x.Splice[end.Splice]
		if !ok {
			return "", false
		}
		return x.H.Splices[i].At, true
	}
	_, ok := x.Termination[end.Termination]
	return end.Termination, ok
}

// Places is the two nodes of the tree that a wire runs between: those of its ends, or of
// its one end and of the place where it is capped. ok is false where it has no two.
func (x *Index) Places(w *Wire) (from, to string, ok bool) {
	at := func(text string) (string, bool) {
		if text == "" && w.CappedAt.V != "" && (w.From.V != "" || w.To.V != "") {
			return w.CappedAt.V, true
		}
		e, ok := ParseEnd(text)
		if !ok {
			return "", false
		}
		return x.Place(e)
	}
	from, ok1 := at(w.From.V)
	to, ok2 := at(w.To.V)
	return from, to, ok1 && ok2
}

// End is ParseEnd with another name of a cavity read as the cavity.
func (x *Index) End(text string) (End, bool) {
	e, ok := ParseEnd(text)
	if t, known := x.Termination[e.Termination]; ok && known && len(x.H.Terminations[t].Aliases) > 0 {
		e.Cavity = x.H.Terminations[t].CavityOf(e.Cavity)
	}
	return e, ok
}

// Meeting returns the branches that meet at a termination or breakout, in file order.
func (x *Index) Meeting(place string) []int { return x.meet[place] }

// Other is the far end of branch b, seen from place.
func (x *Index) Other(b int, place string) string {
	if x.H.Branches[b].From == place {
		return x.H.Branches[b].To
	}
	return x.H.Branches[b].From
}

// CavityOf is the cavity that a name stands for: its own, or an alias of it; of two
// cavities that claim one name the first in the alphabet. What it cannot know is whether an
// insert has a cavity of that name: the sheet refuses such an alias.
func (t *Termination) CavityOf(name string) string {
	if _, own := t.Aliases[name]; own || slices.Contains(t.Cavities, name) {
		return name
	}
	best, found := name, false
	for c, also := range t.Aliases {
		if slices.Contains(also, name) && (!found || c < best) {
			best, found = c, true
		}
	}
	return best
}

// Reserves reports whether a cavity is kept free, by whichever of its names.
func (t *Termination) Reserves(cavity string) bool {
	return slices.ContainsFunc(t.Reserved, func(c string) bool { return t.CavityOf(c) == cavity })
}

// Component is what a layer holds: a wire or a unit of the harness.
type Component struct {
	ID   string
	Unit bool
	At   int // index into Units or Wires
}

// Component finds a layer member by id; ok is false for one that is not there.
// A wire that belongs to a unit is no component of its own.
func (x *Index) Component(id string) (Component, bool) {
	if i, ok := x.Unit[id]; ok {
		return Component{id, true, i}, true
	}
	if i, ok := x.Wire[id]; ok {
		return Component{id, false, i}, true
	}
	return Component{}, false
}
