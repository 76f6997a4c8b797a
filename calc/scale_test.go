package calc_test

import (
	"fmt"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/offer"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/unit"
)

// tree is a harness as a car has them: a trunk to a hub, from there sub-trunks to
// breakouts of six legs each, and wires from the trunk's first end to the legs in turn,
// of three sizes; every branch laid.
func tree(t testing.TB, branches, wires int) *sheet.Sheet {
	t.Helper()
	subs := max(1, (branches-1)/7)
	legs := branches - 1 - subs
	var b strings.Builder
	b.WriteString("format = 1\n[harness]\nsupply_v = 13.8\n")
	list := func(n int) string {
		var out []string
		for k := range n {
			out = append(out, fmt.Sprintf("%q", fmt.Sprint(k)))
		}
		return "[" + strings.Join(out, ", ") + "]"
	}
	fmt.Fprintf(&b, "[[termination]]\nid = \"P\"\ncavities = %s\n", list(wires))
	for k := range legs {
		fmt.Fprintf(&b, "[[termination]]\nid = \"D%d\"\ncavities = %s\n", k, list(wires/legs+1))
	}
	fmt.Fprintf(&b, "[[breakout]]\nid = \"J\"\n")
	for k := range subs {
		fmt.Fprintf(&b, "[[breakout]]\nid = \"J%d\"\n", k)
	}
	for k := range wires {
		size := []string{"22", "22", "20", "22", "16"}[k%5]
		fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"P:%d\"\nto = \"D%d:%d\"\nspec = \"AS22759/32\"\nsize = %q\ncolour = "+
			"\"%d\"\namps = %.1f\n", k, k, k%legs, k/legs, size, k%10, 0.1+0.2*float64(k%7))
	}
	fmt.Fprintf(&b, "[[branch]]\nid = \"T\"\nfrom = \"P\"\nto = \"J\"\nlength_mm = 900.0\n")
	for k := range subs {
		fmt.Fprintf(&b, "[[branch]]\nid = \"S%d\"\nfrom = \"J\"\nto = \"J%d\"\nlength_mm = 400.0\n", k, k)
	}
	for k := range legs {
		fmt.Fprintf(&b, "[[branch]]\nid = \"L%d\"\nfrom = \"J%d\"\nto = \"D%d\"\nlength_mm = 300.0\n", k, k%subs, k)
	}
	s := calctest.Built(t, b.String())
	h := s.H
	for i := range s.Branches { // one layer after another, as many as it takes: no planning here
		var layers []model.Layer
		rest := slices.Clone(s.Branches[i].Components)
		for n := 1; len(rest) > 0; n += 6 {
			if n == 7 {
				n = 6
			}
			k := min(n, len(rest))
			layers = append(layers, model.Layer{Of: rest[:k]})
			rest = rest[k:]
		}
		h = h.EditBranch(i, func(b *model.Branch) { b.Layers, b.Make = layers, model.Some(model.MakeLaid) })
	}
	return calc.Build(h, s.Cat, nil)
}

// p95 builds a harness anew so often, one wire changed each time, and reports the time
// that 95 of 100 builds stay below.
func p95(b *testing.B, s *sheet.Sheet, change func(w *model.Wire, n int)) {
	b.ReportAllocs()
	var took []float64
	for b.Loop() {
		n := len(took)
		h := s.H.EditWire(n*37%len(s.H.Wires), func(w *model.Wire) { change(w, n) })
		at := time.Now()
		s = calc.Build(h, s.Cat, s)
		took = append(took, float64(time.Since(at).Microseconds())/1000)
	}
	slices.Sort(took)
	b.ReportMetric(took[len(took)*95/100], "p95-ms")
}

func newCurrent(w *model.Wire, n int) { w.Amps = model.Some(unit.Ampere(0.1 + 0.1*float64(n%9))) }

// BenchmarkTree changes a current of any wire in ever larger harnesses: its cost should
// grow with what changed, the branches on one wire's way, and not with the harness.
func BenchmarkTree(b *testing.B) {
	for _, c := range []struct{ branches, wires int }{{16, 100}, {30, 200}, {60, 400}, {120, 800}} {
		b.Run(fmt.Sprintf("%d branches, %d wires", c.branches, c.wires),
			func(b *testing.B) { p95(b, tree(b, c.branches, c.wires), newCurrent) })
	}
}

// BenchmarkWhole changes any wire of testdata/whole.toml: its current, and its size.
func BenchmarkWhole(b *testing.B) {
	d, err := file.Load(filepath.Join("..", "testdata", "whole.toml"))
	if err != nil {
		b.Fatal(err)
	}
	cat, err := catalogue.Default()
	if err != nil {
		b.Fatal(err)
	}
	s := calc.Complete(&d.Harness, cat, nil)
	s = calc.Build(offer.AsLaid(s), cat, s)
	b.Run("current", func(b *testing.B) { p95(b, s, newCurrent) })
	b.Run("size", func(b *testing.B) {
		p95(b, s, func(w *model.Wire, n int) { w.Size = map[string]string{"22": "24", "24": "22", "20": "22"}[w.Size] })
	})
}
