package model

import (
	"fmt"
	old "math/rand" // testing/quick draws from it
	"math/rand/v2"
	"reflect"
	"slices"
	"testing"
	"testing/quick"
)

// drawn is a harness with something in every field.
func drawn(t *testing.T, seed uint64) *Harness {
	t.Helper()
	v, ok := quick.Value(reflect.TypeFor[Harness](), old.New(old.NewSource(int64(seed))))
	if !ok {
		t.Fatal("a harness cannot be drawn")
	}
	h := v.Interface().(Harness)
	return &h
}

// mixed takes each field of a harness from one of two, and each element of its lists.
func mixed(r *rand.Rand, a, b *Harness) *Harness {
	n := *a
	to, from := reflect.ValueOf(&n).Elem(), reflect.ValueOf(b).Elem()
	for k := range to.NumField() {
		f, o := to.Field(k), from.Field(k)
		switch r.IntN(4) {
		case 0:
			f.Set(o)
		case 1:
			if f.Kind() != reflect.Slice || f.Len() == 0 || o.Len() == 0 {
				continue
			}
			list := reflect.AppendSlice(reflect.MakeSlice(f.Type(), 0, f.Len()), f)
			for range 3 {
				list.Index(r.IntN(list.Len())).Set(o.Index(r.IntN(o.Len())))
			}
			at := r.IntN(list.Len() + 1)
			switch r.IntN(3) {
			case 0: // some more in between
				list = reflect.AppendSlice(reflect.AppendSlice(reflect.MakeSlice(f.Type(), 0, 0), list.Slice(0, at)),
					reflect.AppendSlice(o, list.Slice(at, list.Len())))
			case 1: // some fewer
				list = list.Slice(0, at)
			}
			f.Set(list)
		}
	}
	return &n
}

// What a harness had other than a later one gives it back, whatever changed: fields, elements of
// lists, more and fewer of them; and the later one is not touched.
func TestEarlierGivesBack(t *testing.T) {
	for seed := range uint64(40) {
		r := rand.New(rand.NewPCG(seed, 5))
		a, b := drawn(t, seed), drawn(t, seed+1000)
		was := mixed(r, a, b)
		for _, now := range []*Harness{a, b, was} {
			before := fmt.Sprintf("%#v", now)
			got := EarlierOf(was, now).Of(now)
			if !reflect.DeepEqual(got, was) {
				t.Fatalf("seed %d: not what it was", seed)
			}
			if fmt.Sprintf("%#v", now) != before {
				t.Fatalf("seed %d: the later harness changed", seed)
			}
		}
	}
}

// Of a harness of many wires, of which one changed, one wire is kept.
func TestEarlierKeepsWhatChanged(t *testing.T) {
	h := &Harness{Wires: make([]Wire, 400), Branches: []Branch{{Layers: []Layer{{Of: []string{"a", "b"}}}}}}
	n := h.EditWire(7, func(w *Wire) { w.Size = "22" })
	e := EarlierOf(h, n)
	if len(e.change.parts) != 1 || len(e.change.parts[0].parts) != 1 || e.change.parts[0].parts[0].at != 7 {
		t.Errorf("%+v", e.change)
	}
	n = h.EditBranch(0, func(b *Branch) {}) // lists of its own, and nothing changed
	if e := EarlierOf(h, n); e.change != nil {
		t.Errorf("%+v", e.change)
	}
	n = h.EditBranch(0, func(b *Branch) { b.Layers[0].Of = slices.Insert(b.Layers[0].Of, 1, "x") })
	if got := EarlierOf(n, h).change.parts[0].parts[0].parts[0].parts[0].parts[0].window; got == nil || got.was.Len() != 1 {
		t.Errorf("%+v", got)
	}
}
