package ends_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
)

// What ends where nothing is takes no cavity of another connector: a wire and a drain to a connector that the harness has not, a wire to a
// splice, and one to a splice that it has not. The first connector is one whose cavities are those that are wired, so that a
// stray name would become one.
func TestEndsOfNothing(t *testing.T) {
	var b strings.Builder
	b.WriteString("format = 1\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Z\"\n[[breakout]]\nid = \"J\"\n" +
		"[[splice]]\nid = \"S\"\nat = \"J\"\n")
	for k, to := range []string{"Z:1", "Z:2", "S", "S", "S"} {
		fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"A:%d\"\nto = %q\nspec = \"AS22759/32\"\nsize = \"22\"\n", k, k+1, to)
	}
	b.WriteString("[[unit]]\nid = \"U\"\nwires = [\"w0\", \"w2\"]\nshield = true\ndrain_from = \"A:6\"\n")
	b.WriteString("[[branch]]\nid = \"T1\"\nfrom = \"A\"\nto = \"J\"\nlength_mm = 500.0\n" +
		"[[branch]]\nid = \"T2\"\nfrom = \"J\"\nto = \"Z\"\nlength_mm = 500.0\n")
	h := calctest.Parse(t, b.String()) // a file with such ends is refused, an edit may leave them
	h.Wires[1].To.V, h.Wires[3].To.V, h.Units[0].DrainFrom.V = "X:7", "T", "X:8"
	s := calc.Build(h, calctest.Catalogue(t), nil)
	for i, want := range []string{"1: w0; 2: w1; 3: w2; 4: w3; 5: w4; ", "1: w0; "} {
		got := ""
		for _, c := range s.Terms[i].Cavities {
			at := s.Terms[i].State[c]
			got += c + ": " + strings.Join(at.Wires, " ") + at.Drain + "; "
		}
		if got != want || len(s.Terms[i].State) != strings.Count(want, ";") {
			t.Errorf("%s has %q, %d in all, want %q", s.H.Terminations[i].ID, got, len(s.Terms[i].State), want)
		}
	}
}
