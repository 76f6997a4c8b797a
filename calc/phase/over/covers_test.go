package over_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/length"
	overphase "contralay/calc/phase/over"
	"contralay/calc/phase/threading"
	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// choice is what is said of one tube for branch 0.
func choice(t *testing.T, s *sheet.Sheet, id string) sheet.Choice {
	t.Helper()
	for _, c := range s.Branches[0].Sheath.Others {
		if c.Tube.ID == id {
			return c
		}
	}
	t.Fatalf("%s is not judged", id)
	return sheet.Choice{}
}

// Thirty wires of 2.0 mm: their areas come to a circle of 10.95 mm, a floor; laid 1 · 6 ·
// 12 · 11 they stand 14.05 mm. 12.7 is refused, 19.0 first, 22.2 passes too, 15.9 is tight
// (88 % of its bore), 25.4 grips by 1.09 only; with every wire at its largest 19.0 is tight
// and the sheet says so. Worked out from the published bores by hand.
func TestThirtyOfTwo(t *testing.T) {
	s := calctest.Ringed(t, 2.0, 0.1, 500, []int{1, 6, 12, 11}, "", "")
	b := &s.Branches[0]
	if math.Abs(float64(b.OverMM)-14.05) > 0.01 || math.Abs(float64(overphase.FloorMM(s, 0))-10.95) > 0.01 {
		t.Errorf("over %v, floor %v; want 14.05, 10.95", b.OverMM, overphase.FloorMM(s, 0))
	}
	if b.Sheath.Part != "AS23053/16 19.0" {
		t.Errorf("first is %s", b.Sheath.Part)
	}
	for _, c := range []struct {
		id                           string
		stop, stretch, grips, slides bool
	}{{"12.7", true, false, true, false}, {"15.9", false, false, true, true}, {"19.0", false, true, true, true},
		{"22.2", false, true, true, true}, {"25.4", false, true, false, true}} {
		v := choice(t, s, "AS23053/16 "+c.id).Verdict
		if v.Stops() != c.stop || v.Stretch.Kept != c.stretch || v.Grips.Kept != c.grips || v.Slides.Kept != c.slides {
			t.Errorf("%s: %+v, want %+v", c.id, v, c)
		}
	}
	if g := choice(t, s, "AS23053/16 25.4").Verdict.GripRatio; math.Abs(float64(g)-1.09) > 0.005 {
		t.Errorf("25.4 grips by %v", g)
	}
	s = calctest.Ringed(t, 2.0, 0.2, 500, []int{1, 6, 12, 11}, "", "")
	if g, ok := calctest.Snag(s, "sheath.stretch", "T"); !ok || g.Level != sheet.Note ||
		!strings.Contains(g.Says, "AS23053/16 19.0 is filled past 80 % of its bore if every wire is at its largest") {
		t.Errorf("19.0 at the largest: %+v", s.Snags)
	}
}

// 450 mm from a boot's lip to a breakout's centre, a boot of 55 mm and a transition port of
// 32, both within 10 %, 15 mm of overlap: the sheath starts at 34.5, stops 13.8 before the
// centre, is 402 long when shrunk and cut 450 (446, up to the next 10).
func TestSheathOfFourFifty(t *testing.T) {
	const more = "[[termination]]\nid = \"P\"\nboot = \"boot-straight-10\"\n[[breakout]]\nid = \"J\"\ntransition = \"own-1\"\n"
	s := calctest.Ringed(t, 1.09, 0.05, 300, []int{1, 6}, more, "")
	h := *s.H
	h.Branches = []model.Branch{h.Branches[0], {ID: "L", From: "J", To: "Q", LengthMM: 100}}
	h.Branches[0].To, h.Branches[0].LengthMM = "J", 450
	own := catalogue.Transition{ID: "own-1", Outlets: []catalogue.Outlet{{ExpandedMM: 20, RecoveredMM: 3, PortMM: 32},
		{ExpandedMM: 20, RecoveredMM: 3, PortMM: 20}}, Origin: catalogue.Origin{Source: "measured", Standing: catalogue.House}}
	s = calc.Complete(&h, catalogue.Merge(s.Cat, &catalogue.Catalogue{Transitions: map[string]catalogue.Transition{"own-1": own}}), nil)
	sh := &s.Branches[0].Sheath
	if math.Abs(float64(sh.FromMM)-34.5) > 1e-9 || math.Abs(float64(sh.ToMM)-(450-13.8)) > 1e-9 || sh.CutMM != 450 {
		t.Errorf("from %v to %v, cut %v; want 34.5, 436.2, 450", sh.FromMM, sh.ToMM, sh.CutMM)
	}
}

// Covers add up outward: a tape of 0.1 and a braid of 0.3 add 0.8 to the diameter, the
// sheath is judged and shrunk on that, and a second sheath over a station on the first.
func TestStack(t *testing.T) {
	plain := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "", "")
	over := plain.Branches[0].OverMM
	s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "",
		calctest.CoverText("tape", "  thick_mm = 0.1\n")+calctest.CoverText("braid", "  thick_mm = 0.3\n")+
			calctest.CoverText("sheath", "")+calctest.CoverText("sheath",
			"  part = \"AS23053/16 12.7\"\n  from_mm = 100.0\n  to_mm = 200.0\n"))
	b := &s.Branches[0]
	if len(b.Covers) != 3 {
		t.Fatalf("%d covers beside the sheath", len(b.Covers))
	}
	if d := b.Covers[1].OverMM - over; math.Abs(float64(d)-0.8) > 1e-9 || math.Abs(float64(b.Sheath.BeneathMM)-0.8) > 1e-9 {
		t.Errorf("tape and braid add %v, the sheath lies on %v more", d, b.Sheath.BeneathMM)
	}
	if got, want := b.Sheath.PassMM, over+0.8; math.Abs(float64(got-want)) > 1e-9 {
		t.Errorf("the sheath passes %v, want %v", got, want)
	}
	second := b.Covers[2]
	if math.Abs(float64(second.UnderMM-b.Sheath.Verdict.OverMM)) > 1e-9 || second.OverMM <= second.UnderMM ||
		math.Abs(float64(second.PassMM-b.Sheath.Verdict.OverMM)) > 1e-9 {
		t.Errorf("the second sheath lies on %v and passes %v, the first is %v over", second.UnderMM, second.PassMM, b.Sheath.Verdict.OverMM)
	}
	// The wall keeps its section: 1.19 and 6.35 are the published wall and bore of 12.7.
	if want := math.Sqrt(float64(second.UnderMM*second.UnderMM) + 4*1.19*(6.35+1.19)); math.Abs(float64(second.OverMM)-want) > 1e-6 {
		t.Errorf("over the second sheath %v, want %v", second.OverMM, want)
	}
	if overphase.Outermost(b) != second.OverMM {
		t.Errorf("outermost %v", overphase.Outermost(b))
	}
	var order []string
	for _, th := range threading.Threading(s) {
		if th.Of == "T" {
			order = append(order, string(th.What)+" "+string(th.GoesOn)+" "+th.Part)
		}
	}
	if !slices.Equal(order, []string{"tape wound as stocked", "braid threaded as stocked", "sheath shrunk " + b.Sheath.Part,
		"sheath shrunk AS23053/16 12.7"}) {
		t.Errorf("threaded %v", order)
	}
	for rule, cover := range map[string]string{
		"cover.slide": calctest.CoverText("sheath", "") + calctest.CoverText("sleeve", "  part = \"AS23053/16 4.8\"\n  from_mm = 100.0\n"),
		"cover.loose": calctest.CoverText("sheath", "") + calctest.CoverText("sleeve", "  part = \"AS23053/16 50.8\"\n"),
		"cover.tape":  calctest.CoverText("braid", ""),
		"cover.part":  calctest.CoverText("sleeve", "  part = \"woven\"\n"),
		"cover.place": calctest.CoverText("tape", "  from_mm = 300.0\n  to_mm = 300.0\n"),
	} {
		s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "", cover)
		if _, ok := calctest.Snag(s, rule, "T"); !ok {
			t.Errorf("nothing by %s: %v", rule, s.Snags)
		}
	}
}

// A second sheath or a sleeve that says nothing of its ends lies as the sheath does, not
// over the bare ends where it could not hold; one that overhangs the sheath by more than an
// overlap is held by the rest of it, and a note says where it is not; one that lies mostly
// beside it is loose.
func TestSecondSheathLiesOnTheFirst(t *testing.T) {
	const boot = "[[termination]]\nid = \"P\"\ninsert = \"18-32\"\nboot = \"boot-straight-18\"\nloop_mm = 4.0\n"
	for _, what := range []string{"sheath", "sleeve"} {
		s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, boot,
			calctest.CoverText("sheath", "")+calctest.CoverText(what, "  part = \"AS23053/16 12.7\"\n"))
		b := &s.Branches[0]
		if c := b.Covers[0]; b.Sheath.FromMM <= 15 || c.FromMM != b.Sheath.FromMM || c.ToMM != b.Sheath.ToMM {
			t.Errorf("%s from %v to %v, the sheath from %v to %v", what, c.FromMM, c.ToMM, b.Sheath.FromMM, b.Sheath.ToMM)
		}
		if g, ok := calctest.Snag(s, "cover.loose", "T"); ok {
			t.Errorf("%s: %+v", what, g)
		}
	}
	for keys, want := range map[string]string{
		"  from_mm = 20.0\n  to_mm = 200.0\n": "cover.held", "  from_mm = 90.0\n  to_mm = 200.0\n": "",
		"  from_mm = 20.0\n  to_mm = 120.0\n": "cover.loose",
	} {
		s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "",
			calctest.CoverText("sheath", "  from_mm = 100.0\n")+calctest.CoverText("sleeve", "  part = \"AS23053/16 12.7\"\n"+keys))
		for _, rule := range []string{"cover.held", "cover.loose"} {
			if g, ok := calctest.Snag(s, rule, "T"); ok != (rule == want) {
				t.Errorf("%q: %s %v %+v", keys, rule, ok, g)
			}
		}
	}
}

// A boot is judged on what lies under its cable end: a tape and a braid that build the
// bundle up count, a sleeve far from it does not.
func TestBootLiesOnWhatIsThere(t *testing.T) {
	const boot = "[[part]]\nid = \"boot-straight-18\"\ncable_recovered_mm = 9.0\n[[termination]]\nid = \"P\"\ninsert = \"18-32\"\nboot = " +
		"\"boot-straight-18\"\nloop_mm = 4.0\n"
	up := calctest.CoverText("tape", "  thick_mm = 1.5\n")
	for covers, want := range map[string]bool{
		"": true, up + calctest.CoverText("sheath", ""): false,
		calctest.CoverText("sheath", "") + calctest.CoverText("sleeve", "  thick_mm = 1.0\n  from_mm = 200.0\n"): true,
		calctest.CoverText("sheath", "") + calctest.CoverText("sleeve", "  thick_mm = 1.0\n"):                    false,
	} {
		s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, boot, covers)
		if g, ok := calctest.Snag(s, "boot.grip", "P"); ok != want {
			t.Errorf("%q: %v %+v, over the sheath %v", covers, ok, g, s.Branches[0].Sheath.Verdict.OverMM)
		}
	}
}

// Whatever tube lies on a branch, its heat, its wall and its recovery count: not only that
// of the sheath.
func TestEveryTubeCounts(t *testing.T) {
	const sleeve = "  part = \"AS23053/4 12.7\"\n"
	s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "",
		"ambient_c = 145.0\n"+calctest.CoverText("sheath", "  part = \"AS23053/13 9.5\"\n")+
			calctest.CoverText("sleeve", sleeve))
	if len(overphase.Tubes(s, 0)) != 2 {
		t.Fatalf("%d tubes: %v", len(overphase.Tubes(s, 0)), s.Snags)
	}
	if g, ok := calctest.Snag(s, "hot.sheath", "T"); !ok || !strings.Contains(g.Says, "AS23053/4") {
		t.Errorf("the sleeve stands 135 and it is 145: %v", s.Snags)
	}
	if !slices.ContainsFunc(threading.Margins(s, 0),
		func(m threading.Margin) bool { return strings.HasPrefix(m.What, "sleeve ") && m.Left() < 0 }) {
		t.Errorf("the margins do not list the sleeve: %+v", threading.Margins(s, 0))
	}
}

// From the end a sleeve comes on, everything on the way is passed: a splice, and what a
// breakout's zone stands thicker by where it lies between two.
func TestSleevePassesWhatASheathPasses(t *testing.T) {
	s := calctest.Laid(t, "whole")
	n := 0
	for i := range s.Branches {
		b := &s.Branches[i]
		if !b.Sheath.Tube.Set || b.Sheath.PassMM <= b.OverMM {
			continue
		}
		n++
		covers := []model.Cover{{What: model.CoverSleeve, Part: model.Some(b.Sheath.Part)}}
		if got := calc.Build(s.H.EditBranch(i, func(b *model.Branch) { b.Covers = covers }), s.Cat,
			s).Branches[i].Covers[0]; got.PassMM != b.Sheath.PassMM || got.PassAt != b.Sheath.PassAt {
			t.Errorf("%s: the sheath passes %v, %s; the same tube as a sleeve %v, %s", s.H.Branches[i].ID, b.Sheath.PassMM, b.Sheath.PassAt,
				got.PassMM, got.PassAt)
		}
	}
	if n == 0 {
		t.Fatal("no sheath passes more than its bundle")
	}
}

// A cover that starts past its stop, or runs past its branch, says so and nothing else.
func TestCoverOutOfPlace(t *testing.T) {
	for keys, want := range map[string]string{
		"  from_mm = 300.0\n  to_mm = 200.0\n": "the start must come before the stop",
		"  from_mm = 100.0\n  to_mm = 900.0\n": "it stops at the end of the branch",
		"  from_mm = 500.0\n  to_mm = 600.0\n": "the branch is 400 mm long",
	} {
		for _, what := range []string{"sheath", "sleeve"} {
			covers := calctest.CoverText("sheath", keys)
			if what == "sleeve" {
				covers = calctest.CoverText("sheath", "") + calctest.CoverText("sleeve", "  part = \"AS23053/16 12.7\"\n"+keys)
			}
			s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "", covers)
			g, ok := calctest.Snag(s, "cover.place", "T")
			if !ok || !strings.Contains(g.Says, want) {
				t.Errorf("%s %q: %+v", what, keys, g)
			}
			for _, g := range s.Snags {
				if g.Level > sheet.Note && g.Rule != "cover.place" {
					t.Errorf("%s %q also: %+v", what, keys, g)
				}
			}
		}
	}
}

// A second length of tube goes on where the first ends, and where one station is set the
// other gives way to it.
func TestOneStationSet(t *testing.T) {
	s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "",
		calctest.CoverText("sheath", "  part = \"AS23053/16 9.5\"\n  to_mm = 200.0\n")+
			calctest.CoverText("sheath", "  part = \"AS23053/16 9.5\"\n  from_mm = 200.0\n"))
	if g, ok := calctest.Snag(s, "cover.place", "T"); ok {
		t.Errorf("%+v", g)
	}
	if c := s.Branches[0].Covers[0]; c.FromMM != 200 || c.ToMM != 400 {
		t.Errorf("the second from %v to %v", c.FromMM, c.ToMM)
	}
}

// A splice is as long as it is: a tube that ends over half of it passes it too; two side by
// side stand out together, apart each by itself.
func TestSpliceHasALength(t *testing.T) {
	at := func(one, two unit.Millimetre, to float64) sheet.Sheath {
		more := "[[breakout]]\nid = \"J\"\n[[termination]]\nid = \"P\"\n[[splice]]\nid = \"S1\"\nat = \"J\"\ntoward = \"T\"\npart = " +
			"\"stub-1\"\n[[splice]]\nid = \"S2\"\nat = \"J\"\ntoward = \"T\"\npart = \"stub-1\"\n"
		s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, more, "")
		h := *s.H
		h.Branches = append(slices.Clone(h.Branches), model.Branch{ID: "L", From: "J", To: "Q", LengthMM: 100})
		h.Branches[0].To = "J"
		h.Branches[0].Covers = []model.Cover{{What: model.CoverSheath, ToMM: model.Some(unit.Millimetre(to))}}
		h.Splices, h.Wires = slices.Clone(h.Splices), slices.Clone(h.Wires)
		for k, to := range map[int]string{15: "S1", 16: "S1", 17: "S2", 18: "S2"} {
			h.Wires[k].To = model.Some(to)
		}
		h.Splices[0].OffsetMM, h.Splices[1].OffsetMM = model.Some(one), model.Some(two)
		return calc.Build(&h, s.Cat, nil).Branches[0].Sheath
	}
	bare := at(10, 10, 300).PassMM
	one := at(100, 10, 320).PassMM
	if one <= bare {
		t.Fatalf("%v past a splice, %v without", one, bare)
	}
	if half := at(100, 10, 295).PassMM; half != one { // its middle lies at 300
		t.Errorf("over half of it %v, over all of it %v", half, one)
	}
	if clear := at(100, 10, 250).PassMM; clear != bare {
		t.Errorf("clear of it %v, want %v", clear, bare)
	}
	both := at(100, 110, 320)
	if d := both.PassMM - one; d < 0.5*(one-bare) || !strings.Contains(both.PassAt, "S1") || !strings.Contains(both.PassAt, "S2") {
		t.Errorf("two side by side stand %v more than one, which stands %v: %s", d, one-bare, both.PassAt)
	}
	if apart := at(100, 200, 350).PassMM; apart != one {
		t.Errorf("apart they are passed one by one: %v, want %v", apart, one)
	}
}

// A boot whose size was read off it is advised on like a sheath.
func TestBootAdvice(t *testing.T) {
	const boot = "[[termination]]\nid = \"P\"\ninsert = \"18-32\"\nboot = \"boot-straight-18\"\nloop_mm = 4.0\n"
	s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, boot, "")
	d := s.Branches[0].Sheath.Verdict.OverMM
	for read, want := range map[unit.Millimetre]bool{d / 1.05: true, d / 1.2: false} {
		h := *s.H
		h.Parts = []model.Part{{ID: "boot-straight-18", CableRecMM: model.Some(read)}}
		if g, ok := calctest.Snag(calc.Build(&h, s.Base, nil), "boot.gripslittle", "P"); ok != want || ok && g.Level != sheet.Note {
			t.Errorf("read %v on %v: %v %+v", read, d, ok, g)
		}
	}
}

// A braid over a sheath lies on no wire; one over two tapes that meet neither.
func TestBraidOnWhat(t *testing.T) {
	for covers, want := range map[string]bool{
		calctest.CoverText("braid", ""):                                    true,
		calctest.CoverText("sheath", "") + calctest.CoverText("braid", ""): false,
		calctest.CoverText("tape", "  to_mm = 200.0\n") + calctest.CoverText("tape", "  from_mm = 200.0\n") + calctest.CoverText("braid",
			""): false,
		calctest.CoverText("tape", "  to_mm = 200.0\n") + calctest.CoverText("braid",
			""): true,
		calctest.CoverText("sheath", "  from_mm = 30.0\n  to_mm = 370.0\n") + calctest.CoverText("braid",
			""): false,
		calctest.CoverText("tape", "  thick_mm = 0.0\n") + calctest.CoverText("braid",
			""): false,
	} {
		s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "", covers)
		if g, ok := calctest.Snag(s, "cover.tape", "T"); ok != want {
			t.Errorf("%s: %v %+v", covers, ok, g)
		}
	}
}

// Sizes that no part can have are refused by name, those of a file like those typed.
// A tube recovers to half its bore, and no wall is taken above half of that and a
// millimetre: 12.7 mm to 6.35 mm, and 6.35 / 2 + 1 = 4.18 mm. The boot's other bores are
// those of the catalogue, 31 mm as supplied and 20 mm recovered.
func TestImpossibleParts(t *testing.T) {
	for part, want := range map[string]string{
		"id = \"AS23053/16 12.7\"\nwall_mm = 9.0\n": "You typed a wall of 9.00 mm, and it recovers to 6.35 mm: a wall of " +
			"4.18 mm at most is accepted",
		"id = \"boot-straight-18\"\ncable_recovered_mm = 60.0\n": "At the cable it would shrink to 60.00 mm from 31.00 mm: the recovered " +
			"bore must be the smaller one",
		"id = \"boot-straight-18\"\nlip_supplied_mm = 1.0\n": "At the connector it would shrink to 20.00 mm from 1.00 mm: the " +
			"recovered bore must be the smaller one",
	} {
		s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "[[part]]\n"+part, "")
		if i := slices.IndexFunc(s.Snags, func(g sheet.Snag) bool { return g.Rule == "part.size" && g.Level == sheet.Stop }); i < 0 ||
			!strings.Contains(s.Snags[i].Says, want) {
			t.Errorf("%s: %v", part, s.Snags)
		}
	}
}

// Our own default loop in a boot that is known from memory is no finding; one that was
// written down is.
func TestDefaultLoopIsNoFinding(t *testing.T) {
	for keys, want := range map[string]bool{"": false, "loop_mm = 60.0\n": true} {
		s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "[[termination]]\nid = \"P\"\ninsert = \"8-35\"\nboot = \"boot-90-8\"\n"+
			keys, "")
		if l := overphase.LoopRoomOf(s, 0); l.Fits && want {
			t.Fatalf("the loop fits: %+v", l)
		}
		if g, ok := calctest.Snag(s, "loop.room", ""); ok != want {
			t.Errorf("%q: %v %+v", keys, ok, g)
		}
	}
}

// A sleeve that begins where the sheath ends lies partly on the bare bundle: it must pass
// the sheath only from the side it comes, and grip the bundle.
func TestSleeveOnTheBareEnd(t *testing.T) {
	s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "",
		calctest.CoverText("sheath", "  to_mm = 200.0\n")+calctest.CoverText("sleeve",
			"  part = \"AS23053/16 9.5\"\n  from_mm = 250.0\n  to_mm = 350.0\n"))
	b := &s.Branches[0]
	if c := b.Covers[0]; math.Abs(float64(c.UnderMM-b.OverMM)) > 1e-9 || math.Abs(float64(c.PassMM-b.OverMM)) > 1e-9 {
		t.Errorf("it lies on %v and passes %v; the bundle is %v", c.UnderMM, c.PassMM, b.OverMM)
	}
}

// A plain loom, wire of 150 °C under a tube for 175 °C recovery, vibration, supported: no
// warning. Thin wall on it where it is not supported, and a filler of polyethylene, are one
// stop each.
func TestPlaceDecides(t *testing.T) {
	vibrates := "environment = [\"vibration\"]\nsupported = true\n"
	plain := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "[rules]\nfiller_stock_mm = [1.5]\nfiller_of = \"fluoropolymer\"\n",
		vibrates)
	for _, g := range plain.Snags {
		if g.Level > sheet.Note {
			t.Errorf("a plain loom: %+v", g)
		}
	}
	thin := calctest.CoverText("sheath", "  part = \"AS23053/16 thin 12.7\"\n")
	for branch, want := range map[string]bool{vibrates + thin: false, "environment = [\"vibration\"]\nsupported = false\n" + thin: true,
		"environment = [\"vibration\"]\n" + thin: true, thin: false} {
		s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "", branch)
		if g, ok := calctest.Snag(s, "sheath.thin", "T"); ok != want || ok && g.Level != sheet.Stop {
			t.Errorf("%s: %v, %+v", branch, ok, g)
		}
	}
	for of, want := range map[string]int{"polyethylene": 1, "polyester": 0, "fluoropolymer": 0, "nylon": 0} {
		s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 11}, "[rules]\nfiller_stock_mm = [1.2]\nfiller_of = \""+of+"\"\n", vibrates)
		h := s.H.EditBranch(0, func(b *model.Branch) {
			b.Layers[2].Fillers, b.Layers[2].FillerMM = model.Some(1), model.Some[unit.Millimetre](1.2)
		})
		s = calc.Build(h, s.Cat, nil)
		n := 0
		for _, g := range s.Snags {
			if g.Level == sheet.Stop {
				n++
				if g.Rule != "filler.melts" {
					t.Errorf("%s: %+v", of, g)
				}
			}
		}
		if n != want {
			t.Errorf("%s: %d stops, want %d: %v", of, n, want, s.Snags)
		}
	}
}

// Filler of polyethylene melts under the sheath whatever its diameter, that of the wire
// round it among them, and it is no wire in the bill and in the mass. The shop that stocks
// polyethylene of another size only has white wire there.
func TestPolyethyleneOfAnyDiameter(t *testing.T) {
	build := func(rules string, d unit.Millimetre) *sheet.Sheet {
		s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 11}, "[rules]\n"+rules, "")
		h := s.H.EditBranch(0, func(b *model.Branch) { b.Layers[2].Fillers, b.Layers[2].FillerMM = model.Some(1), model.Some(d) })
		return calc.Build(h, s.Cat, nil)
	}
	for _, d := range []unit.Millimetre{0.9, 1.0, 1.08, 1.09, 1.1, 1.2} {
		for rules, want := range map[string]bool{
			"filler_of = \"polyethylene\"\n": true,
			fmt.Sprintf("filler_of = \"polyethylene\"\nfiller_stock_mm = [%v]\n", float64(d)): true,
			"filler_of = \"polyethylene\"\nfiller_stock_mm = [2.5]\n":                         d != 1.09,
			"filler_of = \"polyester\"\n":                                                     false,
		} {
			s := build(rules, d)
			if g, ok := calctest.Snag(s, "filler.melts", "T"); ok != want || ok && g.Level != sheet.Stop {
				t.Errorf("%v mm, %q: %v %+v", d, rules, ok, g)
			}
			of := ""
			for _, row := range lists.Bill(s) {
				if row.Group == "filler" {
					of = row.Says
				}
			}
			if white := d == 1.09 && strings.Contains(rules, "2.5"); (of == "") != white {
				t.Errorf("%v mm, %q: the bill says %q", d, rules, of)
			}
		}
	}
	// 1.09 mm of a rod is π/4 · 1.09² · 1.70 = 1.586 g/m; the wire in white weighs as wire does.
	grams := func(s *sheet.Sheet, kind sheet.Kind) float64 {
		l := s.Branches[0].Layers[2]
		k := slices.IndexFunc(l.Members, func(m sheet.Member) bool { return m.Kind == kind })
		return float64(length.GramPerM(s, l.Members[k], l))
	}
	calctest.Near(t, "a rod off the shelf", grams(build("filler_of = \"polyester\"\n", 1.09), sheet.OfFiller), 1.586, 1e-3)
	white := build("", 1.09)
	calctest.Near(t, "white wire", grams(white, sheet.OfFiller), grams(white, sheet.OfWire), 1e-9)
}

// A boot of 39 mm recovered, within 10 %, measured 18.5 mm as supplied: nothing is said,
// for no maker holds to the length as supplied.
func TestSuppliedLengthSaysNothing(t *testing.T) {
	const boot = "[[termination]]\nid = \"P\"\ninsert = \"8-35\"\nloop_mm = 5.0\nboot = \"boot-straight-8\"\n"
	s := calctest.Ringed(t, 1.2, 0.05, 300, []int{1, 6, 12}, boot, "")
	h := *s.H
	h.Parts = []model.Part{{ID: "boot-straight-8", SuppliedMM: model.Some[unit.Millimetre](18.5)}}
	n := calc.Build(&h, s.Base, nil)
	if len(n.Snags) != len(s.Snags) || n.Branches[0].Sheath.FromMM != s.Branches[0].Sheath.FromMM {
		t.Errorf("with: %v\nwithout: %v", n.Snags, s.Snags)
	}
	if math.Abs(float64(n.Branches[0].Sheath.FromMM)-(0.9*39-15)) > 1e-9 {
		t.Errorf("the sheath starts at %v: under the shortest boot of 39 mm it is 20.1", n.Branches[0].Sheath.FromMM)
	}
}

// A straight boot and the bend behind it need their room; a boot of 90 degrees does not.
func TestSpaceBehind(t *testing.T) {
	for boot, want := range map[string]bool{"boot-straight-18": true, "boot-90-18": false} {
		more := "[[termination]]\nid = \"P\"\ninsert = \"18-32\"\nboot = \"" + boot + "\"\nspace_mm = 90.0\n"
		s := calctest.Ringed(t, 2.0, 0.1, 500, []int{1, 6, 12, 11}, more, "")
		if _, ok := calctest.Snag(s, "boot.space", "P"); ok != want {
			t.Errorf("%s: %v, want %v", boot, ok, want)
		}
	}
}
