package paper

import (
	"strings"
	"testing"

	"contralay/calc/calctest"
)

// What a harness lacks and no open point says stands at the end of a check; what one says does not,
// and neither does anything of a harness that lacks nothing or holds nothing.
func TestCheckSaysWhatIsMissing(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"nothing missing", calctest.LacksNothing, ""},
		{"a current", strings.Replace(calctest.LacksNothing, "amps = 2.0\n", "", 1), "      the current of wire 1 is not known\n"},
		{"a length", strings.Replace(calctest.LacksNothing, "100.0", "0.0", 1), ""}, // a stop
		{"a number and a colour", strings.NewReplacer("number = \"A1\"\n", "", "colour = \"5\"\n", "").Replace(calctest.LacksNothing),
			"      the harness has no number\n      wire 4 has no colour\n"},
		{"nothing at all", "format = 1\n", ""},
	} {
		_, got, _ := strings.Cut(Check(calctest.Built(t, c.text)), "still missing:\n")
		if got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}
