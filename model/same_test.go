package model

import (
	"reflect"
	"testing"
)

// Same looks at every table: one changed anywhere is told.
func TestSame(t *testing.T) {
	h := bundle()
	h.Feeds, h.Reels, h.Parts, h.Splices = []Feed{{ID: "F"}}, []Reel{{Spec: "x"}}, []Part{{ID: "y"}}, []Splice{{ID: "S"}}
	h.Builds, h.Listed = []Build{{Serial: "1"}}, []Listed{{Ends: []string{"A:1"}}}
	n := *h
	if !h.Same(&n) || !h.Same(h) {
		t.Fatal("a copy is not the same")
	}
	v := reflect.ValueOf(h).Elem()
	for i := range v.NumField() {
		name := v.Type().Field(i).Name
		n := *h
		f := reflect.ValueOf(&n).Elem().Field(i)
		switch f.Kind() {
		case reflect.Slice:
			f.Set(f.Slice(0, f.Len()-1))
		default:
			switch name {
			case "Head":
				n.Head.Name = Some("x")
			case "Board":
				n.Board.Datum = Some("x")
			case "Rules":
				n.Rules.SizeMin = Some("20")
			default:
				t.Fatalf("%s is not tried", name)
			}
		}
		if h.Same(&n) {
			t.Errorf("another %s is called the same", name)
		}
	}
}
