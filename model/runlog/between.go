package runlog

import (
	"reflect"
	"slices"

	"contralay/model"
	"contralay/model/unit"
)

// Between is the lines that lead from some builds to others. Fold(was, Between(was, is)) holds what
// is does; where one thing of a build has changed, in the same order.
func Between(was, is []model.Build) []Line {
	var out []Line
	for k := range is {
		old := model.Build{}
		if n := find(was, is[k].Serial); n >= 0 {
			old = was[n]
		} else {
			out = append(out, Line{Serial: is[k].Serial, Do: Open})
		}
		out = append(out, between(is[k].Serial, &old, &is[k])...)
	}
	for k := range was {
		if serial := was[k].Serial; find(is, serial) < 0 {
			out = append(out, between(serial, &was[k], &model.Build{})...)
			out = append(out, Line{Serial: serial, Do: Close})
		}
	}
	return out
}

func find(all []model.Build, serial string) int {
	return slices.IndexFunc(all, func(b model.Build) bool { return b.Serial == serial })
}

// between is the lines of one build.
func between(serial string, was, is *model.Build) []Line {
	var out []Line
	put := func(was, is model.Build) { out = append(out, Line{Serial: serial, Was: was, Is: is}) }
	if a, b := headOf(was), headOf(is); !reflect.DeepEqual(a, b) {
		put(a, b)
	}
	changed(was.Done, is.Done, func(a, b []string) { put(model.Build{Done: a}, model.Build{Done: b}) })
	steps(was.Steps, is.Steps, func(a, b []model.Ticked) { put(model.Build{Steps: a}, model.Build{Steps: b}) })
	changed(was.Lots, is.Lots, func(a, b []model.Lot) { put(model.Build{Lots: a}, model.Build{Lots: b}) })
	changed(was.Tests, is.Tests, func(a, b []model.Test) { put(model.Build{Tests: a}, model.Build{Tests: b}) })
	changed(was.Signed, is.Signed, func(a, b []model.Signature) { put(model.Build{Signed: a}, model.Build{Signed: b}) })
	changed(was.Apart, is.Apart, func(a, b []model.Deviation) { put(model.Build{Apart: a}, model.Build{Apart: b}) })
	readings(was.Readings, is.Readings, func(a, b []model.Reading) { put(model.Build{Readings: a}, model.Build{Readings: b}) })
	changed(was.Used, is.Used, func(a, b []model.UsedWire) { put(model.Build{Used: a}, model.Build{Used: b}) })
	changed(was.Tubes, is.Tubes, func(a, b []model.Recovered) { put(model.Build{Tubes: a}, model.Build{Tubes: b}) })
	changed(was.Again, is.Again, func(a, b []model.Again) { put(model.Build{Again: a}, model.Build{Again: b}) })
	return out
}

// headOf is what a build says of itself, without its lists.
func headOf(b *model.Build) model.Build {
	h := *b
	h.Serial, h.Done, h.Steps, h.Signed, h.Readings, h.Used = "", nil, nil, nil, nil, nil
	h.Tubes, h.Again, h.Apart, h.Tests, h.Lots = nil, nil, nil, nil, nil
	return h
}

// changed gives what one list has and another has not, in pairs: what went and what came in its
// place, then what only went or only came.
func changed[T any](was, is []T, put func(was, is []T)) {
	gone, come := less(was, is), less(is, was)
	for k := range max(len(gone), len(come)) {
		put(gone[min(k, len(gone)):min(k+1, len(gone))], come[min(k, len(come)):min(k+1, len(come))])
	}
}

// less is a list without what another has, each as often as it is there.
func less[T any](all, others []T) []T {
	others = slices.Clone(others)
	var out []T
	for _, v := range all {
		if k := slices.IndexFunc(others, func(o T) bool { return reflect.DeepEqual(o, v) }); k >= 0 {
			others = slices.Delete(others, k, k+1)
			continue
		}
		out = append(out, v)
	}
	return out
}

// steps gives the records of steps that differ, key by key.
func steps(was, is []model.Ticked, put func(was, is []model.Ticked)) {
	byKey := func(all []model.Ticked) map[string][]model.Ticked { // a whole run has hundreds: each is looked at once
		out := map[string][]model.Ticked{}
		for _, t := range all {
			out[t.Key] = append(out[t.Key], t)
		}
		return out
	}
	had, has := byKey(was), byKey(is)
	met := map[string]bool{}
	for _, t := range slices.Concat(is, was) {
		if met[t.Key] {
			continue
		}
		met[t.Key] = true
		a, b := had[t.Key], has[t.Key]
		for len(a) > 0 && len(b) > 0 && reflect.DeepEqual(a[0], b[0]) {
			a, b = a[1:], b[1:]
		}
		for k := range max(len(a), len(b)) {
			put(a[min(k, len(a)):min(k+1, len(a))], b[min(k, len(b)):min(k+1, len(b))])
		}
	}
}

// readings gives what was read of each layer and is not in the other, value by value.
func readings(was, is []model.Reading, put func(was, is []model.Reading)) {
	of := func(all []model.Reading, like model.Reading) []model.Reading {
		k := slices.IndexFunc(all, func(r model.Reading) bool { return r.Branch == like.Branch && r.Layer == like.Layer })
		if k < 0 {
			return nil
		}
		return all[k : k+1]
	}
	for _, r := range slices.Concat(is, slices.DeleteFunc(slices.Clone(was), func(r model.Reading) bool { return of(is, r) != nil })) {
		a, b := of(was, r), of(is, r)
		if reflect.DeepEqual(a, b) {
			continue
		}
		var left, right model.Reading
		if a != nil {
			left = a[0]
		}
		if b != nil {
			right = b[0]
		}
		part := func(of []model.Reading, mine, other model.Reading) []model.Reading {
			if of == nil {
				return nil
			}
			values := func(mine, other []unit.Millimetre) []unit.Millimetre { return less(mine, other) }
			return []model.Reading{{Branch: r.Branch, Layer: r.Layer, BareMM: values(mine.BareMM, other.BareMM),
				OverMM: values(mine.OverMM, other.OverMM), LayMM: mine.LayMM}}
		}
		put(part(a, left, right), part(b, right, left))
	}
}
