package whatif

import (
	"errors"
	"fmt"
	"maps"
	"reflect"
	"slices"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Aside is branch i in that way as a variant, under the next free letter: what Taken makes the same harness of as
// Changed does. What the branch has as it is, it leaves out; of the present value nothing, to come back to. The error is that of Changed.
func Aside(s *sheet.Sheet, i int, v Value) (model.Aside, error) {
	t, err := changed(s, i, v)
	if err != nil {
		return model.Aside{}, err
	}
	was, is := &written(s, s.H, i).Branches[i], &t.h.Branches[i]
	if t.h == s.H { // to come back to
		return model.Aside{Name: freeName(was, v.Name()), Letter: was.FreeLetter(), Make: model.Some(s.Branches[i].Make), Outer: was.Outer,
			Layers: model.CloneLayers(s.Branches[i].As), Covers: slices.Clone(was.Covers)}, nil
	}
	a := model.Aside{Name: freeName(was, v.Name()), Letter: was.FreeLetter()}
	switch c := v.change.(type) {
	case spec:
		a.Spec = model.Some(string(c))
	case size:
		a.Sizes = map[string]string{c.from: c.to}
	case spare:
		a.Spares = model.Some(int(c))
	}
	if is.Outer != was.Outer {
		a.Outer = is.Outer
	}
	if len(is.Layers) > 0 && !reflect.DeepEqual(is.Layers, was.Layers) {
		a.Make, a.Layers = is.Make, model.CloneLayers(is.Layers)
	}
	if !reflect.DeepEqual(is.Covers, was.Covers) {
		a.Covers = slices.Clone(is.Covers)
	}
	return a, nil
}

// freeName is a name that no variant of a branch has.
func freeName(b *model.Branch, like string) string {
	name := like
	for n := 2; slices.ContainsFunc(b.Asides, func(a model.Aside) bool { return a.Name == name }); n++ {
		name = fmt.Sprintf("%s, %d", like, n)
	}
	return name
}

// layUpOnly reports whether a variant is nothing but a lay-up set aside: how it is made and which way it turns is then
// part of it, given or not.
func layUpOnly(a *model.Aside) bool {
	return !a.Letter.Set && !a.Spec.Set && len(a.Sizes) == 0 && !a.Spares.Set && len(a.Covers) == 0
}

// Taken is the harness with a variant of branch i taken up: its specification, its sizes, its number of spares, as Changed
// makes them; its layers and its covers. What it leaves out is as the branch has it, and where that is the lay-up or the
// sheath, these follow as they do in Changed. gone is what it names that does not run here any more, and is left out.
// The error is one sentence: why it cannot be taken up.
func Taken(s *sheet.Sheet, i int, a model.Aside) (h *model.Harness, gone []string, err error) {
	if i < 0 || i >= len(s.Branches) {
		return s.H, nil, errors.New("there is no such branch")
	}
	t, fresh, gone, err := wired(s, i, &a)
	if err != nil {
		return s.H, nil, err
	}
	only := layUpOnly(&a)
	if a.Outer.Set || only {
		t.edit(i, func(b *model.Branch) { b.Outer = a.Outer })
	}
	switch {
	case len(a.Layers) > 0 || only:
		layers, lost := stillHere(t.sheet(s), i, a.Layers, fresh)
		gone = append(gone, lost...)
		t.edit(i, func(b *model.Branch) {
			if b.Layers = layers; a.Make.Set || only {
				b.Make = a.Make
			}
		})
	case a.Make.Set && a.Make.V != s.Branches[i].Make: // a proposal follows what it is made as
		t.edit(i, func(b *model.Branch) { b.Layers, b.Make = nil, a.Make })
	case t.lays:
		if err := t.layAnew(s, i); err != nil {
			return s.H, nil, err
		}
	}
	switch {
	case len(a.Covers) > 0:
		t.edit(i, func(b *model.Branch) { b.Covers = slices.Clone(a.Covers) })
	case !only:
		t.follow(s, i)
	}
	return t.h, gone, nil
}

// wired makes what a variant says of wires. fresh is the spares that it lays in, none is the sizes it names that no wire
// here has any more.
func wired(s *sheet.Sheet, i int, a *model.Aside) (t trial, fresh, none []string, err error) {
	t = trial{h: s.H, built: s}
	if !a.Spec.Set && len(a.Sizes) == 0 && !a.Spares.Set {
		return t, nil, nil, nil
	}
	if len(s.Branches[i].As) == 0 {
		return trial{}, nil, nil, errors.New("the branch is not laid yet")
	}
	sizes := map[string]string{}
	for _, from := range slices.Sorted(maps.Keys(a.Sizes)) {
		switch {
		case !hasAny(s, i, from):
			none = append(none, "size "+from)
		case !catalogue.SameSize(from, a.Sizes[from]):
			sizes[from] = a.Sizes[from]
		}
	}
	var all []change
	if a.Spec.Set {
		all = append(all, spec(a.Spec.V))
	}
	if len(sizes) > 0 {
		all = append(all, several(sizes))
	}
	if a.Spares.Set {
		all = append(all, spare(a.Spares.V))
	}
	for _, c := range all {
		at := t.sheet(s)
		if c.present(at, i) {
			continue
		}
		next, err := c.make(at, i)
		if err != nil {
			return trial{}, nil, nil, err
		}
		next.lays, next.resized = true, next.resized || t.resized
		t = next
	}
	for k := range t.h.Wires {
		if id := t.h.Wires[k].ID; !slices.ContainsFunc(s.H.Wires, func(w model.Wire) bool { return w.ID == id }) {
			fresh = append(fresh, id)
		}
	}
	return t, fresh, none, nil
}

// several is other sizes for several sizes at once.
type several map[string]string

func (c several) present(*sheet.Sheet, int) bool            { return false }
func (c several) make(s *sheet.Sheet, i int) (trial, error) { return resized(s, i, c) }

// hasAny reports whether a wire of that size runs through branch i by itself.
func hasAny(s *sheet.Sheet, i int, size string) bool {
	return slices.ContainsFunc(s.Branches[i].Components, func(id string) bool {
		k, ok := s.Index.Wire[id]
		return ok && catalogue.SameSize(s.H.Wires[k].Size, size)
	})
}

// stillHere is layers without what does not run through branch i any more, and what that is. Spares laid in just now take
// the places of those that have another name by now.
func stillHere(s *sheet.Sheet, i int, in []model.Layer, fresh []string) (out []model.Layer, gone []string) {
	here := s.Branches[i].Components
	for _, l := range in {
		for _, id := range l.Of {
			fresh = slices.DeleteFunc(slices.Clone(fresh), func(f string) bool { return f == id })
		}
	}
	out = model.CloneLayers(in)
	for k := range out {
		l := &out[k]
		for n, id := range l.Of {
			switch {
			case slices.Contains(here, id):
			case len(fresh) > 0:
				l.Of[n], fresh = fresh[0], fresh[1:]
			default:
				gone = append(gone, id)
			}
		}
		l.Of = slices.DeleteFunc(l.Of, func(id string) bool { return slices.Contains(gone, id) })
		l.Pinned = slices.DeleteFunc(l.Pinned, func(id string) bool { return !slices.Contains(l.Of, id) })
	}
	out = slices.DeleteFunc(out, func(l model.Layer) bool { return len(l.Of) == 0 && l.Fillers.V == 0 })
	if last := len(out) - 1; last >= 0 {
		out[last].Of = append(out[last].Of, fresh...)
		if !sameSet(out[0].Of, in[0].Of) { // its tape was for what lay in it
			out[0].BindMM, out[0].BindPart = model.Opt[unit.Millimetre]{}, model.Opt[string]{}
		}
	}
	return out, gone
}
