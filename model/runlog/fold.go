package runlog

import (
	"reflect"
	"slices"

	"contralay/model"
	"contralay/model/unit"
)

// Fold is some builds with lines put into them, in their order. The builds that come in are not
// changed, and what comes out shares no list with them that a line has changed.
func Fold(builds []model.Build, lines []Line) []model.Build {
	h := &model.Harness{Builds: builds}
	own := map[string]bool{} // builds that are copies already
	for _, l := range lines {
		k := h.BuildOf(l.Serial)
		switch {
		case l.Do == Close && k >= 0 && empty(&h.Builds[k]): // what somebody else has put into it stays
			n := *h
			n.Builds, own[l.Serial] = slices.Delete(slices.Clone(h.Builds), k, k+1), false
			h = &n
		case l.Do != Open && l.Do != Change:
		case own[l.Serial]:
			put(&h.Builds[k], l.Was, l.Is)
		default:
			h, own[l.Serial] = h.EditBuild(l.Serial, func(b *model.Build) { put(b, l.Was, l.Is) }), true
		}
	}
	return h.Builds
}

// empty reports whether nothing was done of a build.
func empty(b *model.Build) bool {
	return len(b.Done)+len(b.Steps)+len(b.Signed)+len(b.Readings)+len(b.Used)+len(b.Tubes)+len(b.Again)+len(b.Apart)+
		len(b.Tests)+len(b.Lots) == 0
}

// put changes a build by one line.
func put(b *model.Build, was, is model.Build) {
	head(b, was, is)
	exchange(&b.Done, was.Done, is.Done, func(a, o string) bool { return a == o })
	pairs(was.Steps, is.Steps, func(was, is *model.Ticked) { step(b, was, is) })
	exchange(&b.Lots, was.Lots, is.Lots, func(a, o model.Lot) bool { return a.Of == o.Of && a.Lot == o.Lot })
	exchange(&b.Tests, was.Tests, is.Tests, nil)
	exchange(&b.Signed, was.Signed, is.Signed, func(a, o model.Signature) bool { return a.Step == o.Step })
	exchange(&b.Apart, was.Apart, is.Apart, nil)
	pairs(was.Readings, is.Readings, func(was, is *model.Reading) { reading(b, was, is) })
	set(&b.Used, was.Used, is.Used, func(a, o model.UsedWire) bool { return a.Spec == o.Spec && a.Size == o.Size })
	set(&b.Tubes, was.Tubes, is.Tubes, func(a, o model.Recovered) bool { return a.Branch == o.Branch })
	again(b, was.Again, is.Again)
}

// head is what a build says of itself. What it was begun with stays as the first has it; a note and
// a mass are as the last has them.
func head(b *model.Build, was, is model.Build) {
	first(&b.Revision, was.Revision, is.Revision)
	first(&b.Begun, was.Begun, is.Begun)
	first(&b.EachTest, was.EachTest, is.EachTest)
	if !reflect.DeepEqual(was.GoesBy, is.GoesBy) && (was.GoesBy != nil || b.GoesBy == nil) {
		b.GoesBy = is.GoesBy
	}
	if !reflect.DeepEqual(was.Shelf, is.Shelf) && (was.Shelf != nil || b.Shelf == nil) {
		b.Shelf = is.Shelf
	}
	if was.Note != is.Note {
		b.Note = is.Note
	}
	if was.MassG != is.MassG {
		b.MassG = is.MassG
	}
}

func first[T comparable](to *model.Opt[T], was, is model.Opt[T]) {
	if was != is && (was.Set || !to.Set) {
		*to = is
	}
}

// pairs calls f for what went and what came in its place; nil is nothing.
func pairs[T any](was, is []T, f func(was, is *T)) {
	at := func(all []T, k int) *T {
		if k < len(all) {
			return &all[k]
		}
		return nil
	}
	for k := range max(len(was), len(is)) {
		f(at(was, k), at(is, k))
	}
}

// exchange takes out of a list what went, and puts what came in its place. What somebody else took
// out meanwhile is not there to take out; what once is like something that is there stays out.
func exchange[T any](all *[]T, was, is []T, once func(a, b T) bool) {
	pairs(was, is, func(was, is *T) {
		at := -1
		if was != nil {
			at = slices.IndexFunc(*all, func(v T) bool { return reflect.DeepEqual(v, *was) })
		}
		switch {
		case is == nil && at >= 0:
			*all = slices.Delete(*all, at, at+1)
		case is == nil:
		case at >= 0:
			(*all)[at] = *is
		case once == nil || !slices.ContainsFunc(*all, func(v T) bool { return once(v, *is) }):
			*all = append(*all, *is)
		}
	})
}

// set is as exchange, for what there is one of each: the last that was measured counts.
func set[T any](all *[]T, was, is []T, like func(a, b T) bool) {
	pairs(was, is, func(was, is *T) {
		if was != nil && (is == nil || !like(*was, *is)) {
			*all = slices.DeleteFunc(*all, func(v T) bool { return reflect.DeepEqual(v, *was) })
		}
		if is == nil {
			return
		}
		if k := slices.IndexFunc(*all, func(v T) bool { return like(v, *is) }); k >= 0 {
			(*all)[k] = *is
			return
		}
		*all = append(*all, *is)
	})
}

// again counts contacts that were made again: those of both add up.
func again(b *model.Build, was, is []model.Again) {
	count := func(end string, by int) {
		k := slices.IndexFunc(b.Again, func(a model.Again) bool { return a.End == end })
		if k < 0 {
			b.Again, k = append(b.Again, model.Again{End: end}), len(b.Again)
		}
		if b.Again[k].Times += by; b.Again[k].Times <= 0 {
			b.Again = slices.Delete(b.Again, k, k+1)
		}
	}
	pairs(was, is, func(was, is *model.Again) {
		if was != nil && is != nil && was.End == is.End {
			count(is.End, is.Times-was.Times)
			return
		}
		if was != nil {
			count(was.End, -was.Times)
		}
		if is != nil {
			count(is.End, is.Times)
		}
	})
}

// reading takes values of a layer out and puts others in.
func reading(b *model.Build, was, is *model.Reading) {
	like := is
	if like == nil {
		like = was
	}
	r := b.ReadingOf(like.Branch, like.Layer)
	if r == nil {
		if is == nil {
			return
		}
		b.Readings = append(b.Readings, model.Reading{Branch: is.Branch, Layer: is.Layer})
		r = &b.Readings[len(b.Readings)-1]
	}
	values := func(all *[]unit.Millimetre, gone, come []unit.Millimetre) {
		for _, v := range gone {
			if k := slices.Index(*all, v); k >= 0 {
				*all = slices.Delete(*all, k, k+1)
			}
		}
		*all = append(*all, come...)
	}
	var none model.Reading
	if was == nil {
		was = &none
	}
	gone := is == nil
	if gone {
		is = &none
	}
	values(&r.BareMM, was.BareMM, is.BareMM)
	values(&r.OverMM, was.OverMM, is.OverMM)
	if was.LayMM != is.LayMM {
		r.LayMM = is.LayMM
	}
	if gone && len(r.BareMM)+len(r.OverMM) == 0 && !r.LayMM.Set {
		b.Readings = slices.DeleteFunc(b.Readings, func(o model.Reading) bool { return o.Branch == like.Branch && o.Layer == like.Layer })
	}
}

// step changes the record of one step.
func step(b *model.Build, was, is *model.Ticked) {
	switch {
	case was == nil && is.Undone.Set:
		b.Steps = append(b.Steps, *is)
	case was == nil:
		tick(b, *is)
	case is == nil && was.Begun() && !was.Undone.Set:
		for _, p := range was.SoFar {
			b.TakeOff(was.Key, p)
		}
	case is == nil: // not if somebody else has ticked it too: his stays
		if k := same(b, was); k >= 0 {
			b.Steps = slices.Delete(b.Steps, k, k+1)
		}
	case is.Undone.Set && !was.Undone.Set:
		b.Undo(is.Key, is.Undone.V)
	case was.Begun() && is.Begun() && !was.Undone.Set:
		for _, p := range less(was.SoFar, is.SoFar) {
			b.TakeOff(is.Key, p)
		}
		if more := less(is.SoFar, was.SoFar); len(more) > 0 {
			b.Begin(*is, more...)
		}
		if t := b.TickOf(is.Key); t != nil && t.Begun() && !reflect.DeepEqual(was.Sheet, is.Sheet) {
			t.Sheet = is.Sheet
		}
	case was.Begun() && !was.Undone.Set:
		tick(b, *is)
	default:
		if k := same(b, was); k >= 0 {
			b.Steps[k] = *is
		} else if t := b.TickOf(is.Key); t != nil && !t.Begun() {
			t.Sheet = is.Sheet // kept as it was built, whoever ticked it
		} else {
			tick(b, *is)
		}
	}
}

// tick ticks a step, or the pieces that are done of it; what counts already stays as it is.
func tick(b *model.Build, t model.Ticked) {
	if t.Begun() {
		b.Begin(t, t.SoFar...)
		return
	}
	b.Tick(t)
}

func same(b *model.Build, t *model.Ticked) int {
	return slices.IndexFunc(b.Steps, func(o model.Ticked) bool { return reflect.DeepEqual(o, *t) })
}
