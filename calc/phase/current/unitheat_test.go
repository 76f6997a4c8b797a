package current_test

import (
	"fmt"
	"testing"

	"contralay/calc/calctest"
)

// What a unit carries heats the wires in it and what lies beside it: a pair of 22 AWG at 6 A between six idle wires is well
// above the air, each of its two alike, and warmer than any that carries nothing.
func TestUnitHeats(t *testing.T) {
	text := "format = 1\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Z\"\n"
	for k := range 8 {
		amps := "0.0"
		if k < 2 {
			amps = "6.0"
		}
		text += fmt.Sprintf("[[wire]]\nid = \"w%d\"\nfrom = \"A:%d\"\nto = \"Z:%d\"\namps = %s\n", k, k, k, amps) +
			"spec = \"AS22759/32\"\nsize = \"22\"\n"
	}
	s := calctest.Built(t, text+"[[unit]]\nid = \"U\"\nwires = [\"w0\", \"w1\"]\nbuild = \"pair\"\n"+
		"[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 1000.0\nambient_c = 40\n"+
		"  [[branch.layer]]\n  of = [\"U\"]\n  [[branch.layer]]\n  of = [\"w2\", \"w3\", \"w4\", \"w5\", \"w6\", \"w7\"]\n")
	hot := func(k int) float64 {
		if !s.Wires[k].HottestC.Set {
			t.Fatalf("w%d: not known", k)
		}
		return float64(s.Wires[k].HottestC.V)
	}
	calctest.Near(t, "one against the other", hot(0)-hot(1), 0, 2)
	if hot(0) < 45 {
		t.Errorf("at 6 A it is at %v in air of 40", hot(0))
	}
	for k := 2; k < 8; k++ {
		if hot(k) >= hot(0) || hot(k) <= 40 {
			t.Errorf("w%d, idle, is at %v, the pair at %v", k, hot(k), hot(0))
		}
	}
}
