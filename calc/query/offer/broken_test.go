package offer_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/bundle"
	endsphase "contralay/calc/phase/ends"
	"contralay/calc/phase/planning"
	"contralay/calc/query/offer"
	"contralay/model"
)

// Where the other end has no cavity, a spare is offered dead-ended, and lies in the loom
// as any other once it is laid in.
func TestDeadEnd(t *testing.T) {
	s := calctest.Built(t, fmt.Sprintf(calctest.CappedSpare, "from = \"P:2\"\ncapped_at = \"J\""))
	if got := bundle.SparePlaces(s, 0, 0, 1); len(got) > 0 {
		t.Fatalf("a spare with two cavities: %v", got)
	}
	p, ok := offer.DeadEnd(s, 0, 0)
	if !ok || p.From != "P:3" || p.CappedAt != "J" {
		t.Fatalf("dead end %+v, %v", p, ok)
	}
	h := s.H.EditBranch(0, func(b *model.Branch) { b.Layers = []model.Layer{{Of: []string{"w1", "s1"}}} })
	h, w := planning.AddSpare(s, h, 0, 0, p)
	s = calc.Build(h, s.Cat, nil)
	if got := calctest.SaidOf(s, "wire.path"); len(got) > 0 || len(endsphase.Caps(s)) != 2 ||
		!slices.Contains(s.Branches[0].Components, w.ID) {
		t.Errorf("laid in: %v, caps %v, components %v", got, endsphase.Caps(s), s.Branches[0].Components)
	}
}

// A layer whose wires all go on together is whole, one whose wires part is broken, once
// at each breakout.
func TestBroken(t *testing.T) {
	var b strings.Builder
	b.WriteString("format = 1\n[[termination]]\nid = \"P\"\n[[termination]]\nid = \"X\"\n[[termination]]\nid = \"Y\"\n[[breakout]]\nid = " +
		"\"J\"\n[[splice]]\nid = \"S\"\nat = \"J\"\n")
	for k, to := range []string{"X", "X", "Y", "Y", "S"} {
		end := to + ":" + fmt.Sprint(k)
		if to == "S" {
			end = "S"
		}
		fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"P:%d\"\nto = %q\nspec = \"AS22759/32\"\nsize = \"22\"\n", k, k, end)
	}
	for _, e := range [][3]string{{"T", "P", "J"}, {"A", "J", "X"}, {"B", "J", "Y"}} {
		fmt.Fprintf(&b, "[[branch]]\nid = %q\nfrom = %q\nto = %q\nlength_mm = 300.0\n", e[0], e[1], e[2])
	}
	s := calctest.Built(t, b.String())
	for _, c := range []struct {
		layers string
		want   int
	}{{"w0 w1|w2 w3|w4", 0}, {"w0 w2|w1 w3|w4", 2}, {"w0 w1|w2 w3 w4", 1}, {"w0|w1 w2 w3 w4", 1}} {
		var layers []model.Layer
		for _, l := range strings.Split(c.layers, "|") {
			layers = append(layers, model.Layer{Of: strings.Fields(l)})
		}
		if got := offer.Broken(s, 0, layers); got != c.want {
			t.Errorf("%s: %d broken, want %d", c.layers, got, c.want)
		}
	}
}
