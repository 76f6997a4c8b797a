package over

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/calc/formula/cover"
	"contralay/calc/formula/loop"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// lies is a cover that is on a branch and adds so much to its diameter.
func lies(from, to, add unit.Millimetre) sheet.Covered {
	return sheet.Covered{FromMM: from, ToMM: to, UnderMM: 10, OverMM: 10 + add}
}

func alikeMM(a, b unit.Millimetre) bool { return math.Abs(float64(a-b)) < 1e-9 }

// The sorted zone that a tube comes over, by hand: 1.2 times the branch of 10 mm in what lies on its first millimetre, or on as much of
// it as the tube covers; what begins a twentieth further in is not beneath it there.
func TestZoneWithWhatLiesThere(t *testing.T) {
	for _, c := range []struct {
		name           string
		end            int
		from, to       unit.Millimetre
		nominal, added unit.Millimetre
		over           string
	}{
		{"from its from end", 0, 20, 480, 15.6, 3, "the sorted zone at A"},
		{"half a millimetre from there", 0, 0, 0.5, 14.4, 2, "the sorted zone at A"},
		{"from its to end", 1, 20, 480, 19.2, 6, "the sorted zone at J"},
		{"a third of a millimetre from there", 1, 499.7, 500, 16.8, 4, "the sorted zone at J"},
	} {
		s := oneBranch(func(s *sheet.Sheet) {
			s.Limits.ZoneLump = 1.2
			s.Branches[0].Covers = []sheet.Covered{lies(0, 0.4, 2), lies(0.6, 1, 3), lies(1.05, 5, 4), lies(200, 210, 1),
				lies(497, 498.95, 7), lies(499, 499.5, 6), lies(499.6, 500, 4)}
		})
		got := passFrom(s, 0, c.end, c.from, c.to, true, nil)
		if !alikeMM(got.NominalMM, c.nominal) || !alikeMM(got.MaxMM, c.nominal+0.6) || got.AddMM != c.added || !got.Lumped ||
			got.Over != c.over {
			t.Errorf("%s: %+v, want %v over %s", c.name, got, c.nominal, c.over)
		}
	}
	s := oneBranch(func(s *sheet.Sheet) { s.Branches[0].Covers = []sheet.Covered{lies(0, 0.4, 2), lies(200, 210, 1)} })
	if got := passFrom(s, 0, 0, 20, 480, false, nil); got.NominalMM != 12 || got.Over != "what lies beneath it on T" || got.Lumped {
		t.Errorf("from a termination: %+v", got)
	}
}

// The ends that a tube comes on from, by hand: from a termination where there is one, from the end with less in the way where there are
// two, from both where they are alike.
func TestEndsATubeComesOnFrom(t *testing.T) {
	for _, c := range []struct {
		from, to string
		covers   []sheet.Covered
		ends     [2]bool
		nominal  unit.Millimetre
		over     string
	}{
		{"A", "J", nil, [2]bool{true, false}, 10, "the bundle, from 100 to 400 mm of T"},
		{"J", "A", nil, [2]bool{false, true}, 10, "the bundle, from 100 to 400 mm of T"},
		{"A", "B", nil, [2]bool{true, true}, 10, "the bundle, from 100 to 400 mm of T"},
		{"J", "K", nil, [2]bool{true, true}, 12, "the sorted zone at K"},
		{"A", "B", []sheet.Covered{lies(0, 10, 2)}, [2]bool{false, true}, 10, "the bundle, from 100 to 400 mm of T"},
		{"A", "B", []sheet.Covered{lies(450, 460, 2)}, [2]bool{true, false}, 10, "the bundle, from 100 to 400 mm of T"},
		{"A", "J", []sheet.Covered{lies(0, 10, 2)}, [2]bool{true, false}, 12, "what lies beneath it on T"},
		{"J", "K", []sheet.Covered{lies(450, 500, 2)}, [2]bool{true, false}, 12, "the sorted zone at J"},
	} {
		s := oneBranch(func(s *sheet.Sheet) {
			s.Limits.ZoneLump = 1.2
			s.H.Terminations, s.H.Breakouts = append(s.H.Terminations, model.Termination{ID: "B"}), append(s.H.Breakouts,
				model.Breakout{ID: "K"})
			s.H.Branches[0].From, s.H.Branches[0].To, s.Branches[0].Covers = c.from, c.to, c.covers
		})
		if got := pass(s, 0, 100, 400); got.Ends != c.ends || !alikeMM(got.NominalMM, c.nominal) || got.Over != c.over {
			t.Errorf("%s to %s with %v: %+v", c.from, c.to, c.covers, got)
		}
	}
}

// A folded end lies at the end it is capped at, by hand: 60 mm of a branch of 500 mm, whichever way the branch is written.
func TestWhereAFoldLies(t *testing.T) {
	for _, c := range []struct {
		from, to, capped string
		fold             unit.Millimetre
		want             []bulge
	}{
		{"A", "J", "J", 60, []bulge{{440, 500, 1.2, 440, "the folded end of w, from 440 to 500 mm of T", "w",
			", from 440 to 500 mm of T"}}},
		{"J", "A", "J", 60, []bulge{{0, 60, 1.2, 0, "the folded end of w, from 0 to 60 mm of T", "w", ", from 0 to 60 mm of T"}}},
		{"A", "J", "J", 0, nil},
	} {
		s := oneBranch(func(s *sheet.Sheet) {
			s.H.Branches[0].From, s.H.Branches[0].To = c.from, c.to
			s.H.Wires = []model.Wire{{ID: "w", From: model.Some("A:1"), CappedAt: model.Some(c.capped), FoldMM: model.Some(c.fold)}}
			s.Wires = []sheet.Wire{{Path: []int{0}, HasPath: true, Dia: sheet.Dia{Nominal: 1.2}}}
		})
		if got := Bulges(s, 0); !slices.Equal(got, c.want) {
			t.Errorf("%s to %s: %+v, want %+v", c.from, c.to, got, c.want)
		}
	}
}

// What lies on a branch is laid from nothing each time, by hand: tape of 0.2 mm on 10 mm, a braid of 0.3 over it; a branch without a length
// has no covers. A file that lists covers and no sheath has none; one that no catalogue has is told, and kept by its name.
func TestCoversAreLaidAnew(t *testing.T) {
	mm := model.Some[unit.Millimetre]
	tape, braid := model.Cover{What: model.CoverTape, ThickMM: mm(0.2)}, model.Cover{What: model.CoverBraid, ThickMM: mm(0.3)}
	s := oneBranch(func(s *sheet.Sheet) { s.H.Branches[0].Covers = []model.Cover{tape, braid} })
	s.Branches[0].Sheath = sheet.Sheath{Part: "old", ToMM: 9}
	for range 2 {
		stack(s, 0)
		c := s.Branches[0].Covers
		if len(c) != 2 || !alikeMM(c[0].OverMM, 10.4) || !alikeMM(c[0].UnderTapeMin, 9.4) || !alikeMM(c[1].UnderMM, 10.4) ||
			!alikeMM(c[1].OverMM, 11) || !alikeMM(c[1].UnderOverMost, 10.9) || !alikeMM(c[1].UnderTapeMin, 9.8) || c[0].ToMM != 500 {
			t.Fatalf("%+v", c)
		}
		if sh := &s.Branches[0].Sheath; sh.Part != "" || sh.ToMM != 0 || len(s.Snags) != 0 {
			t.Errorf("no sheath is listed: %+v, %+v", sh, s.Snags)
		}
	}
	one := oneBranch(func(s *sheet.Sheet) { s.H.Branches[0].Covers = []model.Cover{tape} })
	if stack(one, 0); one.Branches[0].Sheath.ToMM != 0 || len(one.Snags) != 0 {
		t.Errorf("no sheath is listed beside one cover: %+v, %+v", one.Branches[0].Sheath, one.Snags)
	}
	s.H.Branches[0].LengthMM = 0
	s.Branches[0].Sheath = sheet.Sheath{Part: "old"}
	if CoverBranches(s); s.Branches[0].Covers != nil || s.Branches[0].Sheath.Part != "" {
		t.Errorf("without a length: %+v", s.Branches[0])
	}
	lost := oneBranch(func(s *sheet.Sheet) {
		s.H.Branches[0].Covers = []model.Cover{{What: model.CoverSheath, Part: model.Some("lost")}}
	})
	stack(lost, 0)
	want := sheet.Snag{Level: sheet.Stop, Rule: "sheath.part", Where: "T", Says: `Sheath "lost" is in no catalogue`}
	if sh := &lost.Branches[0].Sheath; len(lost.Snags) != 1 || lost.Snags[0] != want || sh.Part != "lost" || sh.Tube.Set {
		t.Errorf("%+v, %+v", sh, lost.Snags)
	}
	lost.H.Splices = []model.Splice{{ID: "S", Toward: model.Some("other")}}
	if spliceOn(lost, 0) {
		t.Error("a splice on another branch lies on this one")
	}
	lost.H.Splices = append(lost.H.Splices, model.Splice{ID: "S2", Toward: model.Some("T")})
	if !spliceOn(lost, 0) {
		t.Error("a splice of this branch does not lie on it")
	}
}

// legs is a trunk of 12 mm from P to J and legs of so many mm from there, whose names count up; J is closed by a part with outlets.
func legs(outlets []catalogue.Outlet, over ...unit.Millimetre) *sheet.Sheet {
	h := &model.Harness{Terminations: []model.Termination{{ID: "P"}}, Breakouts: []model.Breakout{{ID: "J", Transition: model.Some("own")}},
		Branches: []model.Branch{{ID: "T", From: "P", To: "J", LengthMM: 500, Covers: []model.Cover{{What: model.CoverTape}}}}}
	s := &sheet.Sheet{H: h, Limits: model.Rules{}.Resolve(), Cat: &catalogue.Catalogue{Transitions: map[string]catalogue.Transition{
		"own": {ID: "own", Outlets: outlets}}}, Branches: []sheet.Branch{{OverMM: 12, OverMaxMM: 12, OverMinMM: 12}},
		Terms: []sheet.Term{{Cavities: []string{"1"}}}}
	for k, mm := range over {
		end := fmt.Sprint("E", k)
		h.Terminations = append(h.Terminations, model.Termination{ID: end})
		h.Branches = append(h.Branches, model.Branch{ID: fmt.Sprint("L", k), From: "J", To: end, LengthMM: 300,
			Covers: []model.Cover{{What: model.CoverTape, ThickMM: model.Some[unit.Millimetre](0)}}})
		s.Branches = append(s.Branches, sheet.Branch{OverMM: mm, OverMaxMM: mm + 0.5, OverMinMM: mm - 0.5})
		s.Terms = append(s.Terms, sheet.Term{})
	}
	s.Index = model.NewIndex(h)
	return s
}

// Which outlet each branch goes into, by hand: the trunk into the first, whoever else it would suit; the legs into the others, the larger
// into the larger, of equals the one that is named first. What is in the catalogue twice is the part's first.
func TestOutletsByHand(t *testing.T) {
	o := func(mm, recovered, port unit.Millimetre) catalogue.Outlet {
		return catalogue.Outlet{ExpandedMM: mm, RecoveredMM: recovered, PortMM: port}
	}
	for _, c := range []struct {
		name    string
		outlets []catalogue.Outlet
		legs    []unit.Millimetre
		want    string // of trunk and legs
	}{
		{"the trunk's is its own", []catalogue.Outlet{o(14, 4, 30), o(40, 4, 30)}, []unit.Millimetre{10}, "0 1"},
		{"by size", []catalogue.Outlet{o(20, 4, 30), o(8, 2, 30), o(14, 4, 30)}, []unit.Millimetre{10, 5}, "0 2 1"},
		{"by size, the other way", []catalogue.Outlet{o(20, 4, 30), o(8, 2, 30), o(14, 4, 30)}, []unit.Millimetre{5, 10}, "0 1 2"},
		{"alike, in the part's order", []catalogue.Outlet{o(20, 4, 30), o(14, 4, 30), o(14, 4, 30)}, []unit.Millimetre{10, 10}, "0 1 2"},
		{"as wide, one recovers to more", []catalogue.Outlet{o(20, 4, 30), o(14, 3, 30), o(14, 4, 30)}, []unit.Millimetre{10, 10}, "0 2 1"},
		{"as wide, one is deeper", []catalogue.Outlet{o(20, 4, 30), o(14, 4, 30), o(14, 4, 35)}, []unit.Millimetre{10, 10}, "0 2 1"},
		{"the tight one for what it grips", []catalogue.Outlet{o(20, 4, 30), o(30, 12, 30), o(11, 4, 30)}, []unit.Millimetre{8, 13},
			"0 2 1"},
		{"one outlet for all", []catalogue.Outlet{o(20, 4, 30)}, []unit.Millimetre{10, 5}, "0 0 0"},
	} {
		s := legs(c.outlets, c.legs...)
		chooseOutlets(s)
		var got []string
		for i := range s.Branches {
			at := s.Branches[i].Outlets[0]
			if i == 0 {
				at = s.Branches[0].Outlets[1]
			}
			if !at.Set {
				t.Errorf("%s: branch %d has none", c.name, i)
			}
			got = append(got, fmt.Sprint(at.V))
		}
		if strings.Join(got, " ") != c.want {
			t.Errorf("%s: %v, want %s", c.name, got, c.want)
		}
	}
	// Two widths for two that are alike: who gets which hangs on their names, and not on the order of the part.
	one, turned := legs([]catalogue.Outlet{o(20, 4, 30), o(14, 4, 30), o(15, 4, 30)}, 10, 10),
		legs([]catalogue.Outlet{o(20, 4, 30), o(15, 4, 30), o(14, 4, 30)}, 10, 10)
	chooseOutlets(one)
	chooseOutlets(turned)
	for i := 1; i < 3; i++ {
		if x, y := one.Branches[i].Outlets[0].V, turned.Branches[i].Outlets[0].V; x+y != 3 || x == 0 {
			t.Errorf("L%d goes into outlet %d, and into %d of the part that lists them the other way round", i-1, x, y)
		}
	}
	// What an outlet costs a branch of 10 mm, 9.5 to 10.5: the square of what is left round it at its largest; refused where it does not
	// pass that or recovers to more than the least; filled where 10 mm are more than four fifths of it.
	outlets := []catalogue.Outlet{o(14, 4, 30), o(12, 4, 30), o(10.4, 4, 30), o(14, 9.6, 40), o(12.5, 9.5, 30)}
	s := legs(outlets, 10)
	got := outletCosts(s, wires.Walk{Branch: 1, From: "J", To: "E0"}, outlets, []int{0, 1, 2, 3, 4})
	want := []cover.Cost{{0, 0, 12.25}, {0, 1, 2.25}, {1, 1, 0.01}, {1, 0, 12.25}, {0, 0, 4}}
	for k := range want {
		for n := range want[k] {
			if math.Abs(got[k][n]-want[k][n]) > 1e-9 {
				t.Errorf("outlet %d: %v, want %v", k, got[k], want[k])
			}
		}
	}
	if b := &s.Branches[1]; b.Outlets[0].Set || b.Covers != nil || len(s.Snags) != 0 {
		t.Errorf("what was tried is still there: %+v, %+v", b, s.Snags)
	}
	s.Branches[1].OverMM = 0
	if got := outletCosts(s, wires.Walk{Branch: 1, From: "J", To: "E0"}, outlets, []int{0, 1}); len(got) != 2 || got[0] != (cover.Cost{}) {
		t.Errorf("of a branch of nothing: %v", got)
	}
}

// The terminations near a place, by hand, in the order of the file: what is too far is passed over, and what lies behind it.
func TestNearByHand(t *testing.T) {
	h := &model.Harness{Terminations: []model.Termination{{ID: "D"}, {ID: "A"}, {ID: "C"}, {ID: "B"}, {ID: "E"}},
		Breakouts: []model.Breakout{{ID: "J"}, {ID: "K"}},
		Branches: []model.Branch{{ID: "1", From: "A", To: "J", LengthMM: 100}, {ID: "2", From: "J", To: "C", LengthMM: 900},
			{ID: "3", From: "B", To: "J", LengthMM: 899}, {ID: "4", From: "J", To: "K", LengthMM: 50}, {ID: "5", From: "K", To: "D",
				LengthMM: 60},
			{ID: "6", From: "C", To: "E", LengthMM: 10}}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h)}
	for within, want := range map[unit.Millimetre]string{1000: "[{0 210} {3 999}]", 1001: "[{0 210} {2 1000} {3 999}]", 100: "[]",
		210: "[]",
		211: "[{0 210}]", 1011: "[{0 210} {2 1000} {3 999} {4 1010}]"} {
		if got := fmt.Sprint(near(s, "A", within)); got != want {
			t.Errorf("within %v: %s, want %s", within, got, want)
		}
	}
}

// What rests on memory is told once of each specification and of each tube.
func TestStandingIsToldOnce(t *testing.T) {
	tube := func(id string, st catalogue.Standing) model.Opt[catalogue.Tube] {
		return model.Some(catalogue.Tube{ID: id, WallStanding: st})
	}
	m, p := catalogue.Memory, catalogue.Published
	s := &sheet.Sheet{H: &model.Harness{}, Branches: []sheet.Branch{{Sheath: sheet.Sheath{Tube: tube("x", p)}},
		{Sheath: sheet.Sheath{Tube: tube("y", m)}, Covers: []sheet.Covered{{Tube: tube("y", m)}, {Tube: tube("z", m)}}}}}
	for _, w := range []struct {
		spec string
		is   catalogue.Standing
	}{{"a", p}, {"b", m}, {"b", m}, {"c", m}, {"a", p}} {
		s.H.Wires = append(s.H.Wires, model.Wire{Spec: w.spec})
		s.Wires = append(s.Wires, sheet.Wire{Dia: sheet.Dia{Origin: catalogue.Origin{Standing: w.is}}})
	}
	Standing(s)
	dia, wall := "Its diameters are from memory: measure the reels before you cut",
		"Its wall is from memory: type it from the maker's sheet"
	want := []sheet.Snag{{Level: sheet.Note, Rule: "standing", Where: "b", Says: dia, Like: "diameters"}, {Level: sheet.Note,
		Rule:  "standing",
		Where: "c", Says: dia, Like: "diameters"}, {Level: sheet.Note, Rule: "standing", Where: "y", Says: wall, Like: "wall"},
		{Level: sheet.Note, Rule: "standing", Where: "z", Says: wall, Like: "wall"}}
	if !slices.Equal(s.Snags, want) {
		t.Errorf("%+v", s.Snags)
	}
}

// What an adhesive withstands, by hand: as the file says, before what its kind does; of a kind that nobody knows, nothing.
func TestAdhesiveByHand(t *testing.T) {
	hot := catalogue.Origin{Source: "a maker's hot-melt specification", Standing: catalogue.Published}
	given := catalogue.Origin{Source: "given in the file", Standing: catalogue.House}
	for _, c := range []struct {
		adhesive string
		given    model.Opt[unit.Celsius]
		want     unit.Celsius
		from     catalogue.Origin
		ok       bool
	}{
		{"", model.Opt[unit.Celsius]{}, 0, catalogue.Origin{}, false}, {"epoxy", model.Opt[unit.Celsius]{}, 0, catalogue.Origin{}, false},
		{"hot melt", model.Opt[unit.Celsius]{}, 90, hot, true}, {"hot melt", model.Some[unit.Celsius](80), 80, given, true},
		{"epoxy", model.Some[unit.Celsius](150), 150, given, true},
	} {
		s := oneBranch(func(s *sheet.Sheet) { s.Limits.Adhesive, s.Limits.AdhesiveC = c.adhesive, c.given })
		if got, from, ok := AdhesiveC(s); got != c.want || from != c.from || ok != c.ok {
			t.Errorf("%s, given %v: %v from %+v, %v", c.adhesive, c.given, got, from, ok)
		}
		for air, over := range map[unit.Celsius]bool{c.want: false, c.want + 1: c.ok} {
			s.Snags, s.Branches[0].Ambient = nil, air
			sayMargins(s, 0)
			says := fmt.Sprintf("The air around it is %v C, and the adhesive is for %v C at most", air, c.want)
			if over != (len(s.Snags) == 1) || over && s.Snags[0] != (sheet.Snag{Level: sheet.Stop, Rule: "hot.adhesive", Where: "T",
				Says: says}) {
				t.Errorf("%s in air of %v: %+v", c.adhesive, air, s.Snags)
			}
		}
	}
}

// A service loop in its boot, by hand: 20 mm of lip round a bundle of 10 leave 5 mm beside it; a wire of 1.5 mm is bent to 4.5 mm at
// the least.
func TestLoopInItsBoot(t *testing.T) {
	for _, c := range []struct {
		loop, lip, length, over unit.Millimetre
		shape                   string
		known, fits             bool
		room                    unit.Millimetre
	}{
		{3, 20, 40, 10, "straight", true, true, 5}, {300, 20, 40, 10, "90", true, false, 5}, {300, 8, 40, 10, "45", true, false, 0},
		{300, 0, 40, 10, "90", false, true, 0}, {300, 20, 0, 10, "90", false, true, 0}, {300, 20, 40, 0, "90", false, true, 0},
	} {
		s := oneBranch(func(s *sheet.Sheet) {
			s.H.Terminations[0].LoopMM, s.H.Terminations[0].Boot = model.Some(c.loop), model.Some("own")
			s.Cat.Boots = map[string]catalogue.Boot{"own": {ID: "own", LipSuppliedMM: c.lip, LengthMM: c.length, Shape: c.shape}}
			s.H.Wires, s.Wires = []model.Wire{{ID: "v"}, {ID: "w"}}, []sheet.Wire{{Dia: sheet.Dia{Nominal: 1.5}},
				{Dia: sheet.Dia{Nominal: 1}}}
			s.Terms = []sheet.Term{{State: map[string]sheet.Cavity{"1": {Wires: []string{"v", "w"}}}}}
			s.Branches[0].OverMM = c.over
		})
		want := LoopRoom{LoopMM: c.loop, Again: loop.Again(c.loop), Fits: true, Known: c.known}
		if c.known {
			want.RoomMM, want.TurnMM = c.room, loop.Turn(10, map[string]unit.Degree{"45": 45, "90": 90}[c.shape])
			want.Bows, want.BowMM, want.Fits = loop.Fit(c.loop, 40, c.room, 4.5)
			if !want.Fits {
				want.LongestMM = loop.Longest(40, c.room, 4.5)
			}
		}
		if got := LoopRoomOf(s, 0); got != want || got.Fits != c.fits {
			t.Errorf("%+v: %+v, want %+v", c, got, want)
		}
	}
}

// Lengths of shield and lead in whole sentences; and what noise spoils: a bus, a wire of data.
func TestShieldsByHand(t *testing.T) {
	for _, c := range []struct {
		mm        unit.Millimetre
		sensitive bool
		want      string
	}{
		{20, true, ""}, {100, false, ""}, {21, false, ""}, {21, true, "note It ends 21 mm off; 20 mm at most if noise matters"},
		{100, true, "note It ends 100 mm off; 20 mm at most if noise matters"}, {101, true, "warn It ends 101 mm off; 100 mm at most"},
		{101, false, "warn It ends 101 mm off; 100 mm at most"},
	} {
		s := &sheet.Sheet{}
		shieldLength(s, "U", "It ends %s mm off", c.mm, 100, 20, c.sensitive)
		got := ""
		for _, g := range s.Snags {
			got += fmt.Sprint(g.Level, " ", g.Says)
			if g.Rule != "shield.length" || g.Where != "U" {
				t.Errorf("%+v", g)
			}
		}
		if got != c.want {
			t.Errorf("%v mm: %q, want %q", c.mm, got, c.want)
		}
	}
	s := &sheet.Sheet{H: &model.Harness{Wires: []model.Wire{{ID: "p", Role: model.Some(model.RolePower)}, {ID: "d",
		Role: model.Some(model.RoleData)},
		{ID: "n"}}, Units: []model.Unit{{ID: "plain", Wires: []string{"p", "n", "lost"}}, {ID: "data", Wires: []string{"lost", "n", "d"}},
		{ID: "bus", Wires: []string{"n"}, Kbit: model.Some[unit.KilobitPerSec](500)}, {ID: "none"}}}}
	s.Index = model.NewIndex(s.H)
	for i, want := range []bool{false, true, true, false} {
		if sensitive(s, i) != want {
			t.Errorf("%s: %v", s.H.Units[i].ID, !want)
		}
	}
}

// Filler off the shelf melts under the heat that a tube is shrunk with, by hand: polyethylene at 110 °C. It is said once, and of the tube
// that needs most.
func TestFillerUnderHeat(t *testing.T) {
	for _, c := range []struct {
		of       string
		recovery unit.Celsius
		fillers  []int
		want     string
	}{
		{"polyethylene", 110, []int{0, 1}, ""}, {"polyethylene", 111, []int{0, 0}, ""}, {"fluoropolymer", 300, []int{1}, ""},
		{"polyethylene", 111, []int{0, 1, 1}, "Its polyethylene filler melts at about 110 C, and hot is shrunk at 111 C: " +
			"use fluoropolymer, " +
			"polyester, or white wire"},
	} {
		s := oneBranch(func(s *sheet.Sheet) {
			s.Limits.FillerOf = c.of
			s.Branches[0].Sheath.Tube = model.Some(catalogue.Tube{Kind: "cool", RecoveryC: 100})
			s.Branches[0].Covers = []sheet.Covered{{Tube: model.Some(catalogue.Tube{Kind: "hot", RecoveryC: c.recovery})},
				{Tube: model.Some(catalogue.Tube{Kind: "cold", RecoveryC: 90})}}
			for _, n := range c.fillers {
				s.Branches[0].Layers = append(s.Branches[0].Layers, sheet.Layer{Fillers: n, FillerMM: 1})
			}
		})
		sayRecovery(s, 0)
		got := ""
		for _, g := range s.Snags {
			got += g.Says
			if g.Level != sheet.Stop || g.Rule != "filler.melts" || g.Where != "T" || g.Like != c.of {
				t.Errorf("%+v", g)
			}
		}
		if got != c.want {
			t.Errorf("%s at %v: %q, want %q", c.of, c.recovery, got, c.want)
		}
		least, any := FillerStands(s, 0)
		if has := c.of == "polyethylene" && slices.Max(c.fillers) > 0; any != has || has && least != 110 {
			t.Errorf("%s, %v: it withstands %v, %v", c.of, c.fillers, least, any)
		}
	}
}

// Boots at both ends are looked at, whatever the first has.
func TestBootsAtBothEnds(t *testing.T) {
	for first, want := range map[string]int{"": 1, "none": 2} {
		s := oneBranch(func(s *sheet.Sheet) {
			s.H.Terminations = []model.Termination{{ID: "A", Boot: model.Opt[string]{V: first, Set: first != ""}}, {ID: "B",
				Boot: model.Some("lost")}}
			s.H.Branches[0].To = "B"
		})
		if boots(s, 0); len(s.Snags) != want || s.Snags[want-1] != (sheet.Snag{Level: sheet.Warn, Rule: "boot.part", Where: "B",
			Says: `Boot "lost" is in no catalogue`}) {
			t.Errorf("%q: %+v", first, s.Snags)
		}
	}
}

// Two keys at the ends of a run that is too short, in the whole sentence, by hand: 3 and 3 o'clock, each seen from its own side, are half
// a turn apart, which 10 mm take up in 30 x 10 x 2 = 600 mm. Ends without a key are passed over.
func TestClockedByHand(t *testing.T) {
	for length, want := range map[unit.Millimetre]string{600: "",
		599: "Its key is at 3 and the key of C at 3, each seen from its wire side: " +
			"the run must turn by 180 degrees, and it is 599 mm long. Allow 600 mm for that (common practice, 30 x OD a quarter turn), " +
			"or clock C at 9"} {
		s := oneBranch(func(s *sheet.Sheet) {
			s.H.Terminations = []model.Termination{{ID: "A"}, {ID: "B", Clock: model.Some(3)}, {ID: "C", Clock: model.Some(3)}}
			s.H.Branches[0].From, s.H.Branches[0].To, s.H.Branches[0].LengthMM = "B", "C", length
		})
		Clocked(s)
		got := ""
		for _, g := range s.Snags {
			got += g.Says
			if g.Level != sheet.Warn || g.Rule != "clock" || g.Where != "B" {
				t.Errorf("%+v", g)
			}
		}
		if got != want {
			t.Errorf("%v mm: %q, want %q", length, got, want)
		}
	}
}

// What is behind a connector, and what a device withstands, in whole sentences, by hand: a straight boot of 40 mm, 60 mm of bend and 10 mm
// of branch take 110 mm.
func TestSpaceAndDeviceInWords(t *testing.T) {
	for _, c := range []struct {
		space, limit, air float64
		want              string
	}{
		{110, 85, 85, ""},
		{109.6, 85, 20, "warn boot.space A: It has 110 mm behind it, and a straight boot with its bend takes 110 mm: " +
			"use a 90 degree boot, or another place"},
		{90, 85, 20, "warn boot.space A: It has 90 mm behind it, and a straight boot with its bend takes 110 mm: " +
			"use a 90 degree boot, or another place"},
		{110, 85, 86, "stop hot.device A: It withstands 85 C, and the air is 86 C around T"},
	} {
		s := oneBranch(func(s *sheet.Sheet) {
			a := &s.H.Terminations[0]
			a.SpaceMM, a.LimitC = model.Some(unit.Millimetre(c.space)), model.Some(unit.Celsius(c.limit))
			a.Boot = model.Some("own")
			s.Cat.Boots = map[string]catalogue.Boot{"own": {ID: "own", Shape: "straight", LengthMM: 40,
				Origin: catalogue.Origin{Standing: catalogue.House}}}
			s.Branches[0].Bend.MinMM, s.Branches[0].Ambient = 60, unit.Celsius(c.air)
		})
		space(s, &s.H.Terminations[0])
		sayMargins(s, 0)
		var got []string
		for _, g := range s.Snags {
			got = append(got, fmt.Sprint(g.Level, " ", g.Rule, " ", g.Where, ": ", g.Says))
		}
		if strings.Join(got, "; ") != c.want {
			t.Errorf("%+v: %q", c, got)
		}
	}
}

// A tube over a branch, by hand: from 100 to 300 mm are 200 mm, cut to whole steps of 5 mm, with a wall of its own. What is said of the
// covers is kept with the branch. A sheath that would start beyond the end is none, and is proposed only where no part is written.
func TestTubeOverABranch(t *testing.T) {
	mm := model.Some[unit.Millimetre]
	tube := catalogue.Tube{ID: "own", Kind: "own", SuppliedMM: 14, RecoveredMM: 6, WallMM: 0.8, Density: 1.3, Flexible: true}
	s := oneBranch(func(s *sheet.Sheet) {
		s.Cat.Tubes, s.Limits.CutStepMM = []catalogue.Tube{tube}, 5
		s.H.Branches[0].Covers = []model.Cover{{What: model.CoverSleeve, Part: model.Some("own"), FromMM: mm(100), ToMM: mm(300)},
			{What: model.CoverBraid, FromMM: mm(0), ToMM: mm(900), ThickMM: mm(0.1)}}
	})
	CoverBranches(s)
	c := s.Branches[0].Covers[0]
	cut, _ := cover.CutLength(200, 0, 5)
	mass, ok := cover.Mass(cover.Tube{SuppliedMM: 14, RecoveredMM: 6, WallMM: 0.8, Density: 1.3})
	if c.CutMM != cut || !ok || math.Abs(float64(c.Gram)-float64(mass)*float64(cut)/1000) > 1e-9 || c.Gram <= 0 || c.PassMM != 10 {
		t.Errorf("cut %v, %v g, passes %v; want %v mm", c.CutMM, c.Gram, c.PassMM, cut)
	}
	if len(s.Snags) == 0 || !slices.Equal(s.Branches[0].SaidOver, s.Snags) {
		t.Errorf("said %+v, kept %+v", s.Snags, s.Branches[0].SaidOver)
	}
	for part, proposed := range map[string]bool{"": true, "own": false} {
		s := oneBranch(func(s *sheet.Sheet) {
			s.Cat.Tubes = []catalogue.Tube{tube}
			s.H.Branches[0].Covers = []model.Cover{{What: model.CoverSheath, Part: model.Opt[string]{V: part, Set: part != ""},
				FromMM: mm(600)}}
		})
		stack(s, 0)
		if sh := &s.Branches[0].Sheath; sh.Part != "" || sh.Proposed != proposed || len(s.Snags) != 1 || s.Snags[0].Rule != "cover.place" {
			t.Errorf("%q: %+v, %+v", part, sh, s.Snags)
		}
	}
}

// Where a sheath stops, the shells of both boots are looked at all the same.
func TestShellsOfBothBoots(t *testing.T) {
	s := oneBranch(func(s *sheet.Sheet) {
		s.H.Terminations = []model.Termination{{ID: "A", Boot: model.Some("B"), Insert: model.Some("I")}, {ID: "Z", Boot: model.Some("B"),
			Insert: model.Some("I")}}
		s.H.Branches[0].To = "Z"
		s.Cat.Inserts = map[string]catalogue.Insert{"I": {Shell: 10}}
		s.Cat.Boots = map[string]catalogue.Boot{"B": {ID: "B", Shell: 8, LengthMM: 50}}
		s.Branches[0].Sheath.Tube, s.Branches[0].Sheath.Verdict.StopLoose = model.Some(catalogue.Tube{ID: "X"}), true
	})
	if boots(s, 0); len(s.Snags) != 2 || s.Snags[0].Where != "A" || s.Snags[1].Where != "Z" || s.Snags[1].Rule != "boot.shell" {
		t.Errorf("%+v", s.Snags)
	}
}

// Two layers hold the same where they name the same pieces, in whatever order, with as many fillers; what a splice stands in place of is
// the thickest wire that ends on it.
func TestSameMembersAndSpliceWire(t *testing.T) {
	of := func(fillers int, ids ...string) *sheet.Layer {
		l := &sheet.Layer{Fillers: fillers}
		for _, id := range ids {
			l.Members = append(l.Members, sheet.Member{ID: id})
		}
		return l
	}
	for _, c := range []struct {
		a, b *sheet.Layer
		want bool
	}{{of(1, "a", "b"), of(1, "b", "a"), true}, {of(0, "a", "b"), of(0, "a", "c"), false}, {of(0, "a", "b"), of(0, "a"), false},
		{of(1, "a", "b"), of(0, "a", "b"), false}} {
		if sameMembers(c.a, c.b) != c.want {
			t.Errorf("%+v and %+v: %v", c.a, c.b, !c.want)
		}
	}
	s := oneBranch(func(s *sheet.Sheet) {
		s.H.Wires = []model.Wire{{From: model.Some("S")}, {To: model.Some("S")}, {From: model.Some("T")}, {To: model.Some("U")}}
		s.Wires = []sheet.Wire{{Dia: sheet.Dia{Nominal: 1.2}}, {Dia: sheet.Dia{Nominal: 1.5}}, {Dia: sheet.Dia{Nominal: 0.8}},
			{Dia: sheet.Dia{Nominal: 3}}}
	})
	for id, want := range map[string]unit.Millimetre{"S": 1.5, "T": 0.8, "U": 3, "V": 0} {
		if got := spliceWire(s, id); got != want {
			t.Errorf("%s stands in place of %v, want %v", id, got, want)
		}
	}
}
