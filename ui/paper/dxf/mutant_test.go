package dxf_test

import (
	"slices"
	"testing"

	"contralay/ui/paper/dxf"
	"contralay/ui/paper/plot"
)

// Each layer of the table has its name, its colour and its kind of line, which the table of lines has: in the reference of the
// form those are the group codes 2, 62 and 6.
func TestLayersAreWhole(t *testing.T) {
	s := &plot.Sheet{Title: "x", Box: plot.Box{High: plot.Point{X: 10, Y: 10}}}
	s.Way(plot.Bundle, 0.25, plot.Point{}, s.Box.High)
	kinds := map[string]bool{}
	var layers []map[int]string
	var now map[int]string
	for _, p := range read(t, dxf.Bytes(s)) {
		if p.code == 0 {
			now = nil
			if p.value == "LAYER" || p.value == "LTYPE" {
				now = map[int]string{0: p.value}
				if p.value == "LAYER" {
					layers = append(layers, now)
				}
			}
		} else if now != nil {
			now[p.code] = p.value
			if now[0] == "LTYPE" && p.code == 2 {
				kinds[p.value] = true
			}
		}
	}
	layers = slices.DeleteFunc(layers, func(l map[int]string) bool { return l[62] == "" }) // an entity's layer is no record
	if len(layers) != len(plot.Layers) || len(kinds) == 0 {
		t.Fatalf("%d layers of %d, kinds of line %v", len(layers), len(plot.Layers), kinds)
	}
	for k, l := range layers {
		if l[2] != string(plot.Layers[k]) || !kinds[l[6]] {
			t.Errorf("%+v", l)
		}
	}
}
