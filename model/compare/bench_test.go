package compare_test

import (
	"fmt"
	"testing"

	"contralay/model"
	"contralay/model/compare"
)

// large is a harness of n wires over 40 connectors.
func large(n int) model.Harness {
	var h model.Harness
	for i := range 40 {
		h.Terminations = append(h.Terminations, model.Termination{ID: fmt.Sprintf("T%d", i)})
	}
	for i := range n {
		h.Wires = append(h.Wires, model.Wire{ID: fmt.Sprint(i), Signal: model.Some(fmt.Sprintf("Signal %d", i)),
			From: model.Some(fmt.Sprintf("T%d:%d", i%20, i/20)),
			To:   model.Some(fmt.Sprintf("T%d:%d", 20+i%20, i/20)), Spec: "AS22759/32", Size: "22", Colour: model.Some("92")})
	}
	return h
}

func BenchmarkLists20000(b *testing.B) {
	was := large(20_000)
	is := was
	is.Wires = append([]model.Wire{}, was.Wires...)
	for i := 0; i+1 < len(is.Wires); i += 10 {
		is.Wires[i].From, is.Wires[i+1].From = is.Wires[i+1].From, is.Wires[i].From
		is.Wires[i+2].Colour = model.Some("6")
		is.Wires[i+3].ID += "x"
	}
	b.ReportAllocs()
	for b.Loop() {
		compare.Lists(was, is)
	}
}

func BenchmarkDisagreements20000(b *testing.B) {
	was := large(20_000)
	is := was
	is.Wires = append([]model.Wire{}, was.Wires...)
	for i := 0; i+1 < len(is.Wires); i += 10 {
		is.Wires[i].From, is.Wires[i+1].From = is.Wires[i+1].From, is.Wires[i].From
	}
	b.ReportAllocs()
	for b.Loop() {
		compare.Disagreements(was, is)
	}
}
