package model

import (
	"fmt"
	"maps"
	"slices"
	"strconv"

	"contralay/model/unit"
)

// Edits. Each returns a new harness that shares whatever it did not change; the
// old one is left as it was and is its own undo.

// EditWire changes one wire. f gets a copy.
func (h *Harness) EditWire(i int, f func(*Wire)) *Harness {
	n := *h
	n.Wires = slices.Clone(h.Wires)
	changeWire(&n.Wires[i], f)
	return &n
}

// changeWire changes one wire. The shade of a colour goes with it.
func changeWire(w *Wire, f func(*Wire)) {
	colour, shade := w.Colour, w.Shade
	if f(w); w.Colour != colour && w.Shade == shade {
		w.Shade = Opt[Shade]{}
	}
}

// EditTermination changes one termination. f gets a copy and must replace, not
// change, its lists.
func (h *Harness) EditTermination(i int, f func(*Termination)) *Harness {
	n := *h
	n.Terminations = slices.Clone(h.Terminations)
	f(&n.Terminations[i])
	return &n
}

// EditBranch changes one branch. f gets a copy with lists of its own.
func (h *Harness) EditBranch(i int, f func(*Branch)) *Harness {
	n := *h
	n.Branches = slices.Clone(h.Branches)
	b := &n.Branches[i]
	b.Layers = CloneLayers(b.Layers)
	b.Vias = slices.Clone(b.Vias)
	b.Covers = slices.Clone(b.Covers)
	b.Asides = CloneAsides(b.Asides)
	f(b)
	return &n
}

// CloneAsides copies variants with lists of their own.
func CloneAsides(in []Aside) []Aside {
	out := slices.Clone(in)
	for k := range out {
		out[k].Sizes = maps.Clone(out[k].Sizes)
		out[k].Layers = CloneLayers(out[k].Layers)
		out[k].Covers = slices.Clone(out[k].Covers)
	}
	return out
}

// CloneLayers copies layers with lists of their own.
func CloneLayers(in []Layer) []Layer {
	out := slices.Clone(in)
	for k := range out {
		out[k].Of = slices.Clone(out[k].Of)
		out[k].Pinned = slices.Clone(out[k].Pinned)
	}
	return out
}

// SetReel records a diameter measured on this job; 0 takes the record away.
func (h *Harness) SetReel(spec, size string, over unit.Millimetre) *Harness {
	n := *h
	n.Reels = slices.Clone(h.Reels)
	i := slices.IndexFunc(n.Reels, func(r Reel) bool { return r.Spec == spec && r.Size == size })
	switch {
	case over <= 0 && i >= 0:
		n.Reels = slices.Delete(n.Reels, i, i+1)
	case over <= 0:
	case i >= 0:
		n.Reels[i].OverMM = over
	default:
		n.Reels = append(n.Reels, Reel{Spec: spec, Size: size, OverMM: over})
	}
	return &n
}

// EditPart gives what was read off a part a new value; one that then says nothing is taken
// out.
func (h *Harness) EditPart(id string, f func(*Part)) *Harness {
	n := *h
	n.Parts = slices.Clone(h.Parts)
	k := slices.IndexFunc(n.Parts, func(p Part) bool { return p.ID == id })
	if k < 0 {
		n.Parts, k = append(n.Parts, Part{ID: id}), len(n.Parts)
	}
	f(&n.Parts[k])
	if p := n.Parts[k]; !p.WallMM.Set && !p.LengthMM.Set && !p.SuppliedMM.Set && !p.LipRecMM.Set && !p.LipSupMM.Set && !p.CableRecMM.Set &&
		!p.CableSupMM.Set {
		n.Parts = slices.Delete(n.Parts, k, k+1)
	}
	if len(n.Parts) == 0 {
		n.Parts = nil
	}
	return &n
}

// AddWire appends a wire and lays it into the outermost layer of every branch in
// along that has layers.
func (h *Harness) AddWire(w Wire, along []int) *Harness {
	n := *h
	n.Wires = append(slices.Clone(h.Wires), w)
	out := &n
	for _, b := range along {
		if k := len(n.Branches[b].Layers); k > 0 {
			out = out.EditBranch(b, func(b *Branch) { b.AddTo(k-1, w.ID) })
		}
	}
	return out
}

// AddUnit makes loose wires up into a unit: in every branch it lies where the first
// of them lay, and the others leave their layers.
func (h *Harness) AddUnit(u Unit) *Harness {
	n := *h
	n.Units = append(slices.Clone(h.Units), u)
	out := &n
	for b := range n.Branches {
		out = out.InPlaceOf(b, u.ID, u.Wires)
	}
	return out
}

// RemoveWire takes a wire out of the harness and out of every layer. A wire of a
// unit, or one that another names as its return, is left: the error says so.
func (h *Harness) RemoveWire(i int) (*Harness, error) {
	id := h.Wires[i].ID
	for _, u := range h.Units {
		if slices.Contains(u.Wires, id) {
			return h, fmt.Errorf("wire %s belongs to unit %s: take the unit apart first", id, u.ID)
		}
	}
	for _, w := range h.Wires {
		if w.Return.V == id {
			return h, fmt.Errorf("wire %s is the return of wire %s: give that wire another return first", id, w.ID)
		}
	}
	n := *h
	n.Wires = slices.Delete(slices.Clone(h.Wires), i, i+1)
	out := n.Feed(id, -1)
	for b := range n.Branches {
		if slices.ContainsFunc(n.Branches[b].Layers, func(l Layer) bool { return slices.Contains(l.Of, id) }) {
			out = out.EditBranch(b, func(b *Branch) { b.Take(id) })
		}
	}
	return out, nil
}

// AddTo lays a component into a layer.
func (b *Branch) AddTo(k int, id string) {
	was := CloneLayers(b.Layers)
	b.Layers[k].Of = append(b.Layers[k].Of, id)
	b.unwind(was)
}

// unwind takes the tape off a centre that was built up, where the centre now holds something
// else: it was as thick as the old centre wanted it.
func (b *Branch) unwind(was []Layer) {
	if len(was) == 0 || len(b.Layers) == 0 {
		return
	}
	old, now := &was[0], &b.Layers[0]
	if old.BindMM.V <= 0 || now.BindMM != old.BindMM || now.BindPart != old.BindPart || sameIDs(old.Of, now.Of) {
		return
	}
	now.BindMM, now.BindPart = Opt[unit.Millimetre]{}, Opt[string]{}
}

// sameIDs reports whether two lists hold the same ids, in any order.
func sameIDs(a, b []string) bool {
	return slices.Equal(slices.Sorted(slices.Values(a)), slices.Sorted(slices.Values(b)))
}

// take removes a component from every layer; a layer left with nothing goes too.
func (b *Branch) Take(id string) {
	was := CloneLayers(b.Layers)
	defer func() { b.unwind(was) }()
	for k := range b.Layers {
		b.Layers[k].Of = slices.DeleteFunc(b.Layers[k].Of, func(o string) bool { return o == id })
		b.Layers[k].Pinned = slices.DeleteFunc(b.Layers[k].Pinned, func(o string) bool { return o == id })
	}
	b.Layers = slices.DeleteFunc(b.Layers, func(l Layer) bool { return len(l.Of) == 0 && l.Fillers.V == 0 })
}

// Move puts a component into layer to of a branch, from wherever it lies; to may
// be one past the last, which opens a new layer, and −1 takes it out of the
// lay-up. A locked layer and a pinned component stay: the error says which.
func (h *Harness) Move(branch int, id string, to int) (*Harness, error) {
	b := &h.Branches[branch]
	if to > len(b.Layers) || to < -1 {
		return h, fmt.Errorf("there is no layer %d", to)
	}
	from := slices.IndexFunc(b.Layers, func(l Layer) bool { return slices.Contains(l.Of, id) })
	for _, k := range []int{from, to} {
		if k >= 0 && k < len(b.Layers) && b.Layers[k].Locked.V {
			return h, fmt.Errorf("%s is locked: unlock it first", LayerName(k))
		}
	}
	if from >= 0 && slices.Contains(b.Layers[from].Pinned, id) {
		return h, fmt.Errorf("%s is pinned to %s: unpin it first", id, LayerName(from))
	}
	if from == to {
		return h, nil
	}
	return h.EditBranch(branch, func(b *Branch) {
		was := CloneLayers(b.Layers)
		if to == len(b.Layers) {
			b.Layers = append(b.Layers, Layer{})
		}
		if to >= 0 {
			// A mark keeps the place while the component is taken from the old one.
			b.Layers[to].Of = append(b.Layers[to].Of, moving)
		}
		b.Take(id)
		for k := range b.Layers {
			for j, o := range b.Layers[k].Of {
				if o == moving {
					b.Layers[k].Of[j] = id
				}
			}
		}
		b.unwind(was)
	}), nil
}

// moving stands for a component on its way; no id can hold a zero byte.
const moving = "\x00"

// LayerName is how a layer is said.
func LayerName(k int) string {
	if k == 0 {
		return "the centre"
	}
	return "layer " + strconv.Itoa(k)
}

// NextID is the first id after like that is free: the number at its end counted
// up, or "2" put behind it.
func (h *Harness) NextID(like string) string {
	used := map[string]bool{}
	for _, w := range h.Wires {
		used[w.ID] = true
	}
	for _, u := range h.Units {
		used[u.ID] = true
	}
	cut := len(like)
	for cut > 0 && like[cut-1] >= '0' && like[cut-1] <= '9' {
		cut--
	}
	n, err := strconv.Atoi(like[cut:])
	if err != nil {
		n, cut = 1, len(like)
	}
	for {
		n++
		if id := like[:cut] + strconv.Itoa(n); !used[id] {
			return id
		}
	}
}
