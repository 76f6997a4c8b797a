package threading_test

import (
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/threading"
	"contralay/model"
)

// A loop of branches is refused by the loader. Handed over all the same, it ends.
func TestLoopEnds(t *testing.T) {
	s := calctest.Built(t, "format = 1\n[[breakout]]\nid = \"A\"\n[[breakout]]\nid = \"B\"\n[[breakout]]\nid = \"C\"\n"+
		"[[branch]]\nid = \"1\"\nfrom = \"A\"\nto = \"B\"\nlength_mm = 100.0\n[[branch]]\nid = \"2\"\nfrom = \"B\"\nto = "+
		"\"C\"\nlength_mm = 100.0\n")
	h := *s.H
	h.Branches = append(append([]model.Branch{}, h.Branches...), model.Branch{ID: "3", From: "C", To: "A", LengthMM: 100})
	if n := len(threading.Threading(calc.Build(&h, s.Cat, nil))); n > 100 {
		t.Errorf("%d parts are threaded on three branches", n)
	}
}
