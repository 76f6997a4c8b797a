package offer

import (
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
)

// The wire most used between two terminations, whichever way it is written; of equals the first in the file, and without any 22 of the
// shop's specification.
func TestWireMostUsedBetweenTwo(t *testing.T) {
	h := &model.Harness{Terminations: []model.Termination{{ID: "A"}, {ID: "B"}, {ID: "C"}}, Splices: []model.Splice{{ID: "S"}}}
	wire := func(from, to, spec, size string) {
		h.Wires = append(h.Wires, model.Wire{From: model.Some(from), To: model.Some(to), Spec: spec, Size: size})
	}
	s := &sheet.Sheet{H: h, Limits: model.Rules{}.Resolve()}
	shop := [2]string{s.Limits.Spec, "22"}
	is := func(step string, a, b int, want [2]string) {
		s.Index = model.NewIndex(h)
		if got := commonSize(s, a, b); got != want {
			t.Errorf("%s: %v, want %v", step, got, want)
		}
		if got := commonSize(s, b, a); got != want {
			t.Errorf("%s, the other way: %v, want %v", step, got, want)
		}
	}
	is("none", 0, 1, shop)
	wire("A:1", "B:1", "s", "20")
	is("one", 0, 1, [2]string{"s", "20"})
	wire("B:2", "A:2", "r", "20")
	is("one of each", 0, 1, [2]string{"s", "20"})
	wire("A:3", "C:1", "r", "20")
	wire("A:4", "S", "r", "20")
	is("others elsewhere", 0, 1, [2]string{"s", "20"})
	is("those", 0, 2, [2]string{"r", "20"})
	wire("A:5", "B:5", "r", "20")
	is("two of the second", 0, 1, [2]string{"r", "20"})
	is("still none", 1, 2, shop)
}
