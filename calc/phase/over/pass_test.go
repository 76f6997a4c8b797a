package over

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
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

// Where splices and folded ends lie on a branch T of 500 mm from A to J, by hand. S1 of 30 mm is 3 mm over, lies on wires of 1.2 and 1 mm
// and 100 mm from J: 1.8 stand out from 385 to 415. S2 is at A, whose stations are counted from there: 85 to 115. S3 is on wires as thick
// as itself, S4 lies on another branch, S5 has no part that the catalogue has. Of a capped spare 40 mm are folded back from J.
func TestWhereItStandsOut(t *testing.T) {
	s := oneBranch(func(s *sheet.Sheet) {
		s.Cat.Splices = map[string]catalogue.Splice{"sleeve": {OverMM: 3, LengthMM: 30}, "thin": {OverMM: 1.2, LengthMM: 30}}
		h := s.H
		for k, at := range []string{"J", "A", "J", "J", "J"} {
			toward, part := "T", "sleeve"
			switch k {
			case 2:
				part = "thin"
			case 3:
				toward = "L"
			case 4:
				part = "none"
			}
			id := fmt.Sprint("S", k+1)
			h.Splices = append(h.Splices, model.Splice{ID: id, At: at, Toward: model.Some(toward),
				OffsetMM: model.Some[unit.Millimetre](100)})
			s.Splices = append(s.Splices, sheet.Splice{Part: part})
			h.Wires = append(h.Wires, model.Wire{ID: "a" + id, To: model.Some(id)}, model.Wire{ID: "b" + id, From: model.Some(id)})
			for _, d := range []unit.Millimetre{1.2, 1} {
				w := sheet.Wire{}
				w.Dia.Nominal = d
				s.Wires = append(s.Wires, w)
			}
		}
		h.Wires = append(h.Wires, model.Wire{ID: "v", From: model.Some("A:1"), CappedAt: model.Some("J"),
			FoldMM: model.Some[unit.Millimetre](40)})
		v := sheet.Wire{HasPath: true, Path: []int{0}}
		v.Dia.Nominal = 0.9
		s.Wires = append(s.Wires, v)
	})
	want := []bulge{{385, 415, 1.8, 400, "splice S1, at 400 mm of T", "", ""}, {85, 115, 1.8, 100, "splice S2, at 100 mm of T", "", ""},
		{460, 500, 0.9, 460, "the folded end of v, from 460 to 500 mm of T", "v", ", from 460 to 500 mm of T"}}
	got := Bulges(s, 0)
	if len(got) != len(want) {
		t.Fatalf("%+v, want %+v", got, want)
	}
	for k, w := range want {
		g := got[k]
		for _, c := range [][2]unit.Millimetre{{g.from, w.from}, {g.to, w.to}, {g.Mm, w.Mm}, {g.station, w.station}} {
			if math.Abs(float64(c[0]-c[1])) > 1e-9 {
				t.Errorf("%+v, want %+v", g, w)
			}
		}
		if g.name != w.name || g.wire != w.wire || g.where != w.where {
			t.Errorf("%+v, want %+v", g, w)
		}
	}
}
