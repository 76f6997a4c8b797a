package model

import (
	"reflect"
	"slices"
)

// Earlier is what one harness had other than another, which an edit made of it: the few wires
// and branches that changed, so that thousands of them may be kept where thousands of harnesses
// could not. The zero value is no difference.
type Earlier struct{ change *change }

// EarlierOf finds what was had other than now. What the two share is not looked at.
func EarlierOf(was, now *Harness) Earlier {
	return Earlier{changeOf(reflect.ValueOf(was).Elem(), reflect.ValueOf(now).Elem())}
}

// Of is the harness that was, made of the one that it was compared with.
func (e Earlier) Of(now *Harness) *Harness {
	if e.change == nil {
		return now
	}
	return e.change.of(reflect.ValueOf(now).Elem()).Addr().Interface().(*Harness)
}

// change is how a value was other than it is.
type change struct {
	whole  reflect.Value // as it was, where it is kept whole
	parts  []part        // of a struct its fields, of a list as long as before its elements
	window *window       // of a list that was shorter or longer
}

// part is a field or an element that was different.
type part struct {
	at int
	*change
}

// window is the part of a list between what is the same at its start and at its end.
type window struct {
	was        reflect.Value
	head, tail int // elements that are the same
}

// changeOf compares two values of one type; nil where they are the same. A value that can be
// compared by == is kept whole, as a wire is.
func changeOf(was, now reflect.Value) *change {
	switch was.Kind() {
	case reflect.Struct:
		if was.Comparable() {
			break
		}
		var parts []part
		for k := range was.NumField() {
			if c := changeOf(was.Field(k), now.Field(k)); c != nil {
				parts = append(parts, part{k, c})
			}
		}
		if parts == nil {
			return nil
		}
		return &change{parts: parts}
	case reflect.Slice:
		return listChange(was, now)
	case reflect.Map:
		if was.UnsafePointer() == now.UnsafePointer() || reflect.DeepEqual(was.Interface(), now.Interface()) {
			return nil
		}
		return &change{whole: was}
	}
	if was.Equal(now) {
		return nil
	}
	whole := reflect.New(was.Type()).Elem() // a copy: it must not hold the list that it stood in
	whole.Set(was)
	return &change{whole: whole}
}

// listChange compares two lists.
func listChange(was, now reflect.Value) *change {
	n, m := was.Len(), now.Len()
	switch {
	case was.IsNil() != now.IsNil():
		return &change{whole: was}
	case n == m && (n == 0 || was.UnsafePointer() == now.UnsafePointer()):
		return nil
	case n == m:
		var parts []part
		differ := func(k int) bool { return true }
		switch a := was.Interface().(type) { // the long lists, without a look at every field
		case []Wire:
			b := now.Interface().([]Wire)
			differ = func(k int) bool { return a[k] != b[k] }
		case []string:
			b := now.Interface().([]string)
			if slices.Equal(a, b) {
				return nil
			}
		}
		for k := range n {
			if !differ(k) {
				continue
			}
			if c := changeOf(was.Index(k), now.Index(k)); c != nil {
				parts = append(parts, part{k, c})
			}
		}
		if parts == nil {
			return nil
		}
		return &change{parts: parts}
	}
	w := window{}
	for w.head < min(n, m) && changeOf(was.Index(w.head), now.Index(w.head)) == nil {
		w.head++
	}
	for w.tail < min(n, m)-w.head && changeOf(was.Index(n-1-w.tail), now.Index(m-1-w.tail)) == nil {
		w.tail++
	}
	w.was = reflect.MakeSlice(was.Type(), n-w.head-w.tail, n-w.head-w.tail)
	reflect.Copy(w.was, was.Slice(w.head, n-w.tail))
	return &change{window: &w}
}

// of is the value that was, made of the one that is; that one is not touched.
func (c *change) of(now reflect.Value) reflect.Value {
	switch {
	case c.whole.IsValid():
		return c.whole
	case c.window != nil:
		w := c.window
		n := w.head + w.was.Len() + w.tail
		out := reflect.MakeSlice(now.Type(), n, n)
		reflect.Copy(out, now.Slice(0, w.head))
		reflect.Copy(out.Slice(w.head, n), w.was)
		reflect.Copy(out.Slice(n-w.tail, n), now.Slice(now.Len()-w.tail, now.Len()))
		return out
	case now.Kind() == reflect.Slice:
		out := reflect.MakeSlice(now.Type(), now.Len(), now.Len())
		reflect.Copy(out, now)
		for _, p := range c.parts {
			out.Index(p.at).Set(p.of(now.Index(p.at)))
		}
		return out
	}
	out := reflect.New(now.Type()).Elem()
	out.Set(now)
	for _, p := range c.parts {
		out.Field(p.at).Set(p.of(now.Field(p.at)))
	}
	return out
}
