package join

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model/unit"
)

// The circular mils of AS81824/1 and of stub splices, from memory, as in the catalogue.
var parts = []Part{
	{"butt 1", false, 304, 1510}, {"butt 2", false, 779, 2680}, {"butt 3", false, 1900, 6755},
	{"stub 1", true, 304, 1510}, {"stub 2", true, 779, 2680}, {"stub 3", true, 1900, 6755},
}

// Conductors of 19 and 37 strands: AC 43.13-1B table 11-9.
const awg22, awg20, awg18, awg16 = 755, 1216, 1900, 2426

func TestFits(t *testing.T) {
	for _, c := range []struct {
		name string
		part Part
		a, b Side
		want bool
	}{
		{"20 to two 22", parts[1], Side{awg20}, Side{awg22, awg22}, true},
		{"20 to four 22, the feed too thin", parts[2], Side{awg20}, Side{awg22, awg22, awg22, awg22}, false},
		{"20 to four 22, the branches too thick", parts[1], Side{awg20}, Side{awg22, awg22, awg22, awg22}, false},
		{"18 to four 22", parts[2], Side{awg18}, Side{awg22, awg22, awg22, awg22}, true},
		{"all in one barrel", parts[5], Side{awg20}, Side{awg22, awg22, awg22, awg22}, true},
		{"two 20 in a barrel for 16", Part{"", false, 0, awg16}, Side{awg20, awg20}, Side{awg16}, true},
		{"nothing on the other side", parts[1], Side{awg20}, nil, false},
	} {
		if got := c.part.Fits(c.a, c.b); got != c.want {
			t.Errorf("%s: %v", c.name, got)
		}
	}
}

// One 20 AWG to four 22 AWG fits no butt splice; the ways out are a parallel splice, two
// smaller ones, a feed of 18 AWG.
func TestCures(t *testing.T) {
	feed, branch := Side{awg20}, Side{awg22, awg22, awg22, awg22}
	for _, p := range parts[:3] {
		if p.Fits(feed, branch) {
			t.Errorf("%s takes it", p.ID)
		}
	}
	got := Cures(feed, branch, []unit.CircularMil{754, 1216, 1900, 2426, 3831}, parts)
	want := []Cure{{Parts: []string{"stub 3"}}, {Parts: []string{"butt 1", "butt 1"}, Split: 2}, {Feed: 1900, Parts: []string{"butt 3"}}}
	if d := cmp.Diff(want, got); d != "" {
		t.Error(d)
	}
	if got := Cures(Side{200}, Side{90_000}, []unit.CircularMil{200}, parts); len(got) != 0 {
		t.Errorf("a way out for what nothing takes: %+v", got)
	}
}
