package current_test

import (
	"fmt"
	"testing"

	"contralay/calc/calctest"
)

// TestRatingAtABound: an electronic device passes its setting for ever, so the least whole setting above what a wire
// may carry is said, and the greatest one below it is not. A contact of size 20 bears 7.5 A alone, one of size
// 16 13 A (MIL-DTL-38999 contact rating table, read in a maker's catalogue); the wire is thick enough for more.
func TestRatingAtABound(t *testing.T) {
	for _, c := range []struct {
		contact, size string
		amps          int
		said          bool
	}{
		{"20", "18", 7, false}, {"20", "18", 8, true},
		{"16", "14", 13, false}, {"16", "14", 14, true},
	} {
		s := calctest.Carrying(t, 20, c.contact, []string{c.size + " 1.0"}, nil,
			feed(fmt.Sprintf("device = \"electronic\"\namps = %d.0\ntrip_s = 0.002\nwires = [\"w0\"]\n", c.amps)))
		if g, ok := calctest.Snag(s, "feed.wire", "F1"); ok != c.said {
			t.Errorf("%d A on a contact of size %s: said %v %s", c.amps, c.contact, ok, g.Says)
		}
	}
}
