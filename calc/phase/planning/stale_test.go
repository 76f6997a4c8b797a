package planning_test

import (
	"fmt"
	"slices"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
	"contralay/model"
)

// A lay-up of the file is stale where a wire runs through its branch and lies in no layer, or lies there and runs elsewhere.
func TestStaleByHand(t *testing.T) {
	of := func(trunk, leg string) []int {
		text := "format = 1\n[[breakout]]\nid = \"J\"\n[[termination]]\nid = \"P\"\n" +
			"[[termination]]\nid = \"A\"\n[[termination]]\nid = \"B\"\n"
		for k, to := range []string{"A:1", "A:2", "B:1"} {
			text += fmt.Sprintf("[[wire]]\nid = \"w%d\"\nfrom = \"P:%d\"\nto = %q\nspec = \"AS22759/32\"\nsize = \"22\"\n", k, k, to)
		}
		for _, b := range [][4]string{{"T", "P", "J", trunk}, {"L", "J", "A", leg}, {"M", "J", "B", ""}} {
			text += fmt.Sprintf("[[branch]]\nid = %q\nfrom = %q\nto = %q\nlength_mm = 300.0\n%s", b[0], b[1], b[2], b[3])
		}
		return planning.Stale(calctest.Built(t, text))
	}
	layer := func(of string) string { return "  [[branch.layer]]\n  of = [" + of + "]\n" }
	all, leg := layer(`"w0", "w1", "w2"`), layer(`"w0", "w1"`)
	for _, c := range []struct {
		trunk, leg string
		want       []int
	}{
		{all, leg, nil}, {"", "", nil}, {layer(`"w0", "w1"`), leg, []int{0}}, {all, layer(`"w0"`), []int{1}},
		{all, layer(`"w0", "w1", "w2"`), []int{1}}, {layer(`"w0"`), layer(`"w1"`), []int{0, 1}},
		{"", layer(`"w0"`), []int{1}}, // the first is not laid yet
	} {
		if got := of(c.trunk, c.leg); !slices.Equal(got, c.want) {
			t.Errorf("%q, %q: %v, want %v", c.trunk, c.leg, got, c.want)
		}
	}
}

// What there is to lay is another question where the wire that a spare would be like stands elsewhere in the file: an option
// has its spares by number.
func TestQuestionKnowsTheSpare(t *testing.T) {
	text := calctest.OneSize(7, "22", "length_mm = 400.0\nmake = \"laid\"\n", 10) +
		"[[termination]]\nid = \"X\"\n[[termination]]\nid = \"Y\"\n[[branch]]\nid = \"O\"\nfrom = \"X\"\nto = \"Y\"\nlength_mm = 100.0\n"
	h := calctest.Parse(t, text)
	other := model.Wire{ID: "elsewhere", From: model.Some("X:1"), To: model.Some("Y:1"), Spec: "AS22759/32", Size: "22"}
	last, first := *h, *h
	last.Wires = append(slices.Clone(h.Wires), other)
	first.Wires = append([]model.Wire{other}, h.Wires...)
	last.Rules.SparesWanted, first.Rules.SparesWanted = model.Some(1), model.Some(1)
	a, b := calc.Build(&last, calctest.Catalogue(t), nil), calc.Build(&first, calctest.Catalogue(t), nil)
	if len(bundle.SparesFor(a, 0)) == 0 {
		t.Fatal("no spare is thought of")
	}
	if bundle.Question(a, 0) == bundle.Question(b, 0) {
		t.Error("a spare like wire 0 and one like wire 1 are one question")
	}
	again := calc.Build(&last, calctest.Catalogue(t), nil)
	if bundle.Question(a, 0) != bundle.Question(again, 0) {
		t.Error("the same is another question")
	}
}
