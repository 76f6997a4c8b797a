package calc_test

import (
	"fmt"
	"runtime"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/model"
	"contralay/model/shorttest"
)

// long is a harness of so many branches one after another. One wire runs through all of it, or
// each branch has its own; or all of them start at one breakout and end in connectors alike.
func long(t testing.TB, shape string, branches int) *model.Harness {
	t.Helper()
	var b strings.Builder
	b.WriteString("format = 1\n[harness]\nsupply_v = 13.8\n")
	term := func(k int) {
		fmt.Fprintf(&b, "[[termination]]\nid = \"P%d\"\ninsert = \"11-35\"\ngender = \"pin\"\nclock = %d\n", k, k%12+1)
	}
	place := func(k int) string { return fmt.Sprintf("P%d", k) }
	switch shape {
	case "one wire through":
		term(0)
		term(branches)
		for k := 1; k < branches; k++ {
			fmt.Fprintf(&b, "[[breakout]]\nid = \"J%d\"\n", k)
		}
		place = func(k int) string {
			if k == 0 || k == branches {
				return fmt.Sprintf("P%d", k)
			}
			return fmt.Sprintf("J%d", k)
		}
		fmt.Fprintf(&b, "[[wire]]\nid = \"w\"\nfrom = \"P0:1\"\nto = \"P%d:1\"\nspec = \"AS22759/32\"\nsize = \"22\"\namps = 1.0\n",
			branches)
	case "a wire in each":
		for k := range branches + 1 {
			term(k)
		}
		for k := range branches {
			fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"P%d:1\"\nto = \"P%d:2\"\nspec = \"AS22759/32\"\nsize = \"22\"\namps = 1.0\n",
				k,
				k, k+1)
		}
	}
	for k := range branches {
		fmt.Fprintf(&b, "[[branch]]\nid = \"B%d\"\nfrom = %q\nto = %q\nlength_mm = 400.0\n", k, place(k), place(k+1))
	}
	return calctest.Parse(t, b.String())
}

var longShapes = []string{"one wire through", "a wire in each"}

// A chain of branches costs what it is long: twice the branches take some twice the memory, not
// four times. Memory stands for work here, for it does not hang on the machine.
func TestChainCostsItsLength(t *testing.T) {
	if testing.Short() {
		t.Skip("it builds chains of 600 branches")
	}
	short := 300
	if shorttest.Long() {
		short = 1000
	}
	for _, shape := range longShapes {
		cost := func(branches int) float64 {
			h, cat := long(t, shape, branches), calctest.Catalogue(t)
			var before, after runtime.MemStats
			runtime.ReadMemStats(&before)
			calc.Complete(h, cat, nil)
			runtime.ReadMemStats(&after)
			return float64(after.TotalAlloc - before.TotalAlloc)
		}
		cost(10) // tables that are made once
		if one, two := cost(short), cost(2*short); two > 2.5*one {
			t.Errorf("%s: %d branches take %.0f MB, %d take %.0f", shape, 2*short, two/1e6, short, one/1e6)
		}
	}
}

// BenchmarkChain works 5,000 branches out from nothing.
func BenchmarkChain(b *testing.B) {
	for _, shape := range longShapes {
		b.Run(shape, func(b *testing.B) {
			h, cat := long(b, shape, 5000), calctest.Catalogue(b)
			b.ReportAllocs()
			for b.Loop() {
				calc.Complete(h, cat, nil)
			}
		})
	}
}
