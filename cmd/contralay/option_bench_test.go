package main

import (
	"fmt"
	"strings"
	"testing"
	"time"
)

// manyWires is a branch of 130 wires in three sizes, unlaid.
func manyWires() string {
	var b strings.Builder
	b.WriteString("format = 1\n[rules]\nspares_wanted = 6\n")
	for _, id := range []string{"A", "Z"} {
		fmt.Fprintf(&b, "[[termination]]\nid = %q\ncavities = [\"0\"", id)
		for c := 1; c < 140; c++ {
			fmt.Fprintf(&b, ", \"%d\"", c)
		}
		b.WriteString("]\n")
	}
	for i := range 130 {
		size := "22"
		if i >= 94 {
			size = "20"
		}
		if i >= 118 {
			size = "16"
		}
		fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"A:%d\"\nto = \"Z:%d\"\nspec = \"AS22759/32\"\nsize = %q\n", i, i, i, size)
	}
	b.WriteString("[[branch]]\nid = \"T1\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 700.0\n")
	return b.String()
}

// A key on the option table of 130 wires, to the first byte of the frame that shows
// the next lay-up, through a pseudo-terminal.
func BenchmarkOptionKey(b *testing.B) {
	s := start(b, 120, 40, nil, fileOf(b, "many.toml", manyWires()))
	s.see("WIRES")
	s.press(right)
	s.until("two options", func(screen string) bool { return strings.Contains(screen, " B  ") })
	s.toRow(optionRow("A"))
	var took []time.Duration
	for n := 0; b.Loop(); n++ {
		before := len(s.sent())
		from := time.Now()
		s.press([]string{down, up}[n%2])
		for len(s.sent()) == before {
			<-s.drawn
		}
		took = append(took, time.Since(from))
		time.Sleep(2 * quiet) // the frame whole, and the clock out of step
	}
	percentiles(b, took)
}
