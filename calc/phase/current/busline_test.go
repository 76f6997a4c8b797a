package current_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/model/typedtest"
)

// A data bus that is longer than its rate allows is said with both lengths in metres: at 1,000 kbit/s the strictest of
// three makers' manuals allows 25 m; nothing is said of a shorter one, and that no length is published of a rate
// above 1,000. Its wires are twisted, 12 of the bare pair's diameter to a turn: √(1 + (π/24)²) = 1.00853 times the branch, and
// a loop of 8 mm at either end: 40 m become 40.357.
func TestBusIsTooLong(t *testing.T) {
	most, ok := typedtest.Must(t, "can_length").Number("1000", "a_m")
	if !ok {
		t.Fatal("no length at 1000 kbit/s")
	}
	for _, c := range []struct {
		kbit   int
		metres float64
		rule   string
		says   []string
	}{
		{1000, most - 0.5, "", nil},
		{1000, most + 15, "unit.bus", []string{"Its bus is 40.357 m long; at 1000 kbit/s the limit is 25 m"}},
		{2000, 5, "unit.rate", []string{"No lengths are published for 2000 kbit/s: they end at 1000 kbit/s"}},
	} {
		text := "format = 1\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Z\"\n"
		for k := range 2 {
			text += fmt.Sprintf("[[wire]]\nid = \"w%d\"\nfrom = \"A:%d\"\nto = \"Z:%d\"\n", k, k, k) +
				"spec = \"AS22759/32\"\nsize = \"24\"\nrole = \"data\"\n"
		}
		s := calctest.Built(t, text+fmt.Sprintf("[[unit]]\nid = \"U\"\nwires = [\"w0\", \"w1\"]\nbuild = \"pair\"\nkbit_s = %d\n", c.kbit)+
			fmt.Sprintf("[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = %v\n", c.metres*1000)+
			"  [[branch.layer]]\n  of = [\"U\"]\n")
		for _, rule := range []string{"unit.bus", "unit.rate", "unit.stub"} {
			g, ok := calctest.Snag(s, rule, "U")
			if ok != (rule == c.rule) {
				t.Errorf("%d kbit/s over %v m: %s said %v %s", c.kbit, c.metres, rule, ok, g.Says)
			}
			for _, want := range c.says {
				if ok && !strings.Contains(g.Says, want) {
					t.Errorf("%q lacks %q", g.Says, want)
				}
			}
		}
	}
}
