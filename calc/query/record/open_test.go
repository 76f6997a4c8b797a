package record_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/query/record"
	"contralay/calc/query/run"
	"contralay/model"
)

// Against a certificate stands each hold that nobody signed, once, and no other step; and of each hold the first thing that
// was not tested by its name, with how many more there are.
func TestHoldsAreOpenOnce(t *testing.T) {
	for _, signed := range []int{0, 1} {
		s := shop(t, func(b *model.Build) {
			for range signed {
				b.Signed = append(b.Signed, model.Signature{Step: run.HoldBare, By: "14"})
			}
		})
		r, ok := record.Of(s, "003")
		if !ok {
			t.Fatal("no such serial")
		}
		holds := 0
		for _, step := range run.For(s, &s.H.Builds[s.H.BuildOf("003")]) {
			if step.Kind == run.HoldStep {
				holds++
			}
		}
		said := strings.Count(strings.Join(r.Open, "\n"), "is not signed")
		if holds < 3 || said != holds-signed {
			t.Errorf("%d of %d holds are signed, %d are said to be open", signed, holds, said)
		}
	}
	s := shop(t, func(b *model.Build) {})
	r, _ := record.Of(s, "003")
	first, n := map[string]string{}, map[string]int{}
	for _, x := range r.Tests {
		if x.Result == run.Untested {
			if n[x.Hold]++; n[x.Hold] == 1 {
				first[x.Hold] = x.What
			}
		}
	}
	text := strings.Join(r.Open, "\n")
	for hold, what := range first {
		want := fmt.Sprintf("%s: %s was not tested", hold, what)
		if n[hold] > 1 {
			want += fmt.Sprintf(", and %d more", n[hold]-1)
		}
		if what == "" || strings.Count(text, want) != 1 {
			t.Errorf("%q is not said once in\n%s", want, text)
		}
	}
}
