package paper

import (
	"strings"
	"testing"

	"contralay/calc/calctest"
)

// The lay card says before which layer a splice is made, where it lies and which wire
// becomes which: on the card of the branch that is laid then, and on no other.
func TestLayCardShowsSplices(t *testing.T) {
	s := calctest.Laid(t, "demo")
	m := makerOf(s)
	const want = "Before you lay layer 2, make splice S3, 75 mm from J1 along T1: wire 230 becomes 4 wires, 231, 232, 233 and 234."
	seen := map[string]int{}
	for i := range s.Branches {
		c := m.card(i)
		for _, says := range c.Splices {
			_, after, _ := strings.Cut(says, "make splice ")
			id, _, _ := strings.Cut(after, ",")
			seen[id]++
			if id == "S3" && (c.ID != "T1" || says != want) {
				t.Errorf("%s: %s", c.ID, says)
			}
		}
		for k, l := range c.Layers {
			if c.ID == "T1" && l.First != map[int]string{2: "splices S3, S4"}[k] {
				t.Errorf("T1, layer %d: make %q first", k, l.First)
			}
		}
	}
	for _, sp := range s.H.Splices {
		if seen[sp.ID] != 1 {
			t.Errorf("%s is on %d cards", sp.ID, seen[sp.ID])
		}
	}
}
