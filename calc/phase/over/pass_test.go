package over

import (
	"math"
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/model/unit"
)

// What a tube gets over on the way from one end, by hand, on a branch of 500 mm that is 10 mm over, 10.5 at most: the bundle; 1.2 times
// that where it begins in a sorted zone; what stands out on the way, beside what else stands out where it begins.
func TestWhatATubeGetsOver(t *testing.T) {
	splice := bulge{from: 200, to: 230, Mm: 1.5, station: 215, name: "S1"}
	beside := bulge{from: 190, to: 210, Mm: 0.75, station: 195, name: "S2"}
	behind := bulge{from: 220, to: 240, Mm: 0.6, station: 230, name: "S3"}
	fold := func(wire string) bulge {
		return bulge{from: 200, to: 230, Mm: 1, wire: wire, where: " at J", name: "the folded end of " +
			wire}
	}
	big := splice
	big.Mm = 2.5
	for _, c := range []struct {
		name     string
		end      int
		from, to unit.Millimetre
		lumped   bool
		bulges   []bulge
		nominal  unit.Millimetre
		bulge    unit.Millimetre
		over     string
	}{
		{"bare", 0, 20, 480, false, nil, 10, 0, "the bundle, from 20 to 480 mm of T"},
		{"from a breakout", 0, 20, 480, true, nil, 12, 0, "the sorted zone at A"},
		{"from the other", 1, 20, 480, true, nil, 12, 0, "the sorted zone at J"},
		{"a splice", 0, 20, 480, false, []bulge{splice}, 11.5, 1.5, "S1"},
		{"less than the zone", 0, 20, 480, true, []bulge{splice}, 12, 0, "the sorted zone at A"},
		{"more than the zone", 0, 20, 480, true, []bulge{big}, 12.5, 2.5, "S1"},
		{"it ends before it", 0, 20, 200, false, []bulge{splice}, 10, 0, "the bundle, from 20 to 200 mm of T"},
		{"it ends on it", 0, 20, 201, false, []bulge{splice}, 11.5, 1.5, "S1"},
		{"from behind it", 1, 230, 480, false, []bulge{splice}, 10, 0, "the bundle, from 230 to 480 mm of T"},
		{"over it from behind", 1, 229, 480, false, []bulge{splice}, 11.5, 1.5, "S1"},
		{"past it to its place", 0, 300, 480, false, []bulge{splice}, 11.5, 1.5, "S1"},
		{"one beside it", 0, 20, 480, false, []bulge{splice, beside}, 12.25, 2.25, "S1 beside S2"},
		{"one behind it", 0, 20, 480, false, []bulge{behind, splice}, 12.1, 2.1, "S3 beside S1"},
		{"two folds", 0, 20, 480, false, []bulge{fold("v"), fold("w")}, 12, 2, "the folded ends of v and w at J"},
	} {
		s := oneBranch(func(s *sheet.Sheet) { s.Limits.ZoneLump = 1.2 })
		got := passFrom(s, 0, c.end, c.from, c.to, c.lumped, c.bulges)
		lump := strings.HasPrefix(c.over, "the sorted zone")
		most := c.nominal + 0.5
		if lump {
			most = 12.6
		}
		if math.Abs(float64(got.NominalMM-c.nominal)) > 1e-9 || math.Abs(float64(got.MaxMM-most)) > 1e-9 || got.AddMM != 0 ||
			math.Abs(float64(got.BulgeMM-c.bulge)) > 1e-9 || got.Over != c.over || got.Lumped != lump {
			t.Errorf("%s: %+v, want %v over %s", c.name, got, c.nominal, c.over)
		}
	}
}

// Folded ends that lie along the same stretch are named once, by all their wires.
func TestWhatStandsOutTogether(t *testing.T) {
	fold := func(wire string, from unit.Millimetre) bulge {
		return bulge{from: from, to: from + 30, wire: wire, where: " at J", name: "the folded end of " + wire}
	}
	for _, c := range []struct {
		all  []bulge
		want string
	}{
		{nil, ""}, {[]bulge{{name: "S1"}, {name: "S2"}}, "S1 beside S2"}, {[]bulge{fold("a", 1)}, "the folded end of a"},
		{[]bulge{fold("a", 1), fold("b", 1), fold("c", 1)}, "the folded ends of a, b and c at J"},
		{[]bulge{fold("a", 1), fold("b", 2), fold("c", 2)}, "the folded end of a beside the folded ends of b and c at J"},
		{[]bulge{fold("a", 1), {from: 1, to: 31, name: "S1"}, fold("b", 1)}, "the folded end of a beside S1 beside the folded end of b"},
	} {
		if got := together(c.all); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
}
