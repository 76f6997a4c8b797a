package ends_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/calctest"
	endsphase "contralay/calc/phase/ends"
)

// A cavity takes what its seal and its contact take: a seal of 0.76 to 1.27 mm, a contact of size 22D for 22 to 28 AWG
// (MIL-DTL-38999N table IV); of a wire that no catalogue knows nothing is refused.
func TestTakesByHand(t *testing.T) {
	s := calctest.InCavities(t, "cavities = [\"1\"]\ncontacts = { \"22D\" = [\"1\"] }\nseal_mm = [0.76, 1.27]", "22 1")
	for _, c := range []struct {
		spec, size string
		want       bool
	}{{"AS22759/32", "22", true}, {"AS22759/32", "28", false}, {"AS22759/32", "16", false}, {"nonesuch", "22", true},
		{"AS22759/16", "22", false}} { // 28 AWG of 0.69 mm and 22 of 1.32 do not fit the seal
		if got := endsphase.Takes(s, 0, "1", c.spec, c.size); got != c.want {
			t.Errorf("%s %s: %v", c.spec, c.size, got)
		}
	}
}

// Where a splice lies on a branch, what goes on along that branch is in the barrel beyond, the rest in the near one.
func TestSidesByTheBranch(t *testing.T) {
	s := spliced(t, "20", "22", 2, "toward = \"L1\"\noffset_mm = 300.0")
	side := func(all []int) string {
		var out []string
		for _, k := range all {
			out = append(out, s.H.Wires[k].ID)
		}
		return strings.Join(out, " ")
	}
	if near, far := side(s.Splices[0].Near), side(s.Splices[0].Far); near != "f" || far != "b0 b1" {
		t.Errorf("near %q, far %q", near, far)
	}
	s = spliced(t, "20", "22", 2, "toward = \"T1\"\noffset_mm = 300.0")
	if near, far := side(s.Splices[0].Near), side(s.Splices[0].Far); near != "b0 b1" || far != "f" {
		t.Errorf("toward the feed: near %q, far %q", near, far)
	}
}

// A spare that is capped in its own connector runs through no branch.
func TestCappedAtOnce(t *testing.T) {
	s := calctest.Built(t, fmt.Sprintf(calctest.CappedSpare, "from = \"P:2\"\ncapped_at = \"P\""))
	for _, c := range endsphase.Caps(s) {
		if c.Branch != -1 || c.Place != "P" {
			t.Errorf("%+v", c)
		}
	}
	if len(endsphase.Caps(s)) != 1 {
		t.Errorf("%d caps", len(endsphase.Caps(s)))
	}
}
