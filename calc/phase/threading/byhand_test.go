package threading

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
	"testing"

	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// written is a sheet that is written down and not built, so that every figure of it is free: a trunk T from P to J, from there A to Q,
// E to W and B to K, which the file has the other way round, and from K on C to R. The transition of J has four
// outlets, that of K is in no catalogue; the boot of Q is known, that of P is not.
func written() *sheet.Sheet {
	h := &model.Harness{
		Terminations: []model.Termination{{ID: "P", Boot: model.Some("lost")}, {ID: "Q", Boot: model.Some("own")}, {ID: "R"}, {ID: "W"}},
		Breakouts:    []model.Breakout{{ID: "J", Transition: model.Some("four")}, {ID: "K", Transition: model.Some("gone")}},
		Branches: []model.Branch{
			{ID: "T", From: "P", To: "J", LengthMM: 500},
			{ID: "A", From: "J", To: "Q", LengthMM: 300},
			{ID: "E", From: "J", To: "W", LengthMM: 100},
			{ID: "B", From: "K", To: "J", LengthMM: 200},
			{ID: "C", From: "K", To: "R", LengthMM: 150},
		},
	}
	tube := func(id string, bore unit.Millimetre) model.Opt[catalogue.Tube] {
		return model.Some(catalogue.Tube{ID: id, Kind: id, SuppliedMM: bore, Origin: from(id), Material: "polyolefin"})
	}
	return &sheet.Sheet{H: h, Index: model.NewIndex(h), Limits: model.Limits{ZoneLump: 1.3},
		Terms: []sheet.Term{{Cavities: []string{"1", "2"}}, {}, {}, {}},
		Cat: &catalogue.Catalogue{
			Boots: map[string]catalogue.Boot{"own": {ID: "own", CableSuppliedMM: 14, LengthMM: 40, Origin: from("boot")}},
			Transitions: map[string]catalogue.Transition{"four": {ID: "four", Origin: from("four"), Outlets: []catalogue.Outlet{
				{ExpandedMM: 20, RecoveredMM: 4, PortMM: 30}, {ExpandedMM: 12, RecoveredMM: 3, PortMM: 30},
				{ExpandedMM: 9, RecoveredMM: 3, PortMM: 40}, {ExpandedMM: 9, RecoveredMM: 3, PortMM: 40}}}}},
		Branches: []sheet.Branch{
			{OverMM: 8, OverMinMM: 7.9, OverMaxMM: 8.1, Outlets: [2]model.Opt[int]{1: model.Some(0)},
				Sheath: sheet.Sheath{Part: "S1", Tube: tube("S1", 12), ToMM: 480, FromMM: 10, CutMM: 495, PassMM: 11, PassAt: "the zone",
					Pass: sheet.Passing{Ends: [2]bool{true, false}}},
				Covers: []sheet.Covered{
					{What: model.CoverTape, Under: true, ToMM: 500, UnderMM: 8, OverMM: 8.2},
					{What: model.CoverBraid, Part: "br", FromMM: 20, ToMM: 470, CutMM: 600, UnderMM: 8, OverMM: 8},
					{What: model.CoverSleeve, Part: "S2", Tube: tube("S2", 15), FromMM: 100, ToMM: 200, CutMM: 110, PassMM: 10, PassAt: "T",
						Ends: [2]bool{false, true}, UnderMM: 8, OverMM: 8},
				}},
			{OverMM: 5, OverMinMM: 4.75, OverMaxMM: 5.25, Outlets: [2]model.Opt[int]{model.Some(1)},
				Covers: []sheet.Covered{
					{What: model.CoverSleeve, Part: "S3", Tube: tube("S3", 9), FromMM: 29, ToMM: 80, UnderMM: 5, OverMM: 7},
					{What: model.CoverSleeve, Part: "S4", Tube: tube("S4", 10), FromMM: 240, ToMM: 285, UnderMM: 7, OverMM: 8},
					{What: model.CoverBraid, Part: "br", FromMM: 285, ToMM: 300, UnderMM: 8, OverMM: 11},
				}},
			{OverMM: 50},
			{OverMM: 6, OverMinMM: 5.8, OverMaxMM: 6.5, Outlets: [2]model.Opt[int]{1: model.Some(2)},
				Sheath: sheet.Sheath{Part: "lost", PassMM: 3, PassAt: "nothing", Pass: sheet.Passing{Ends: [2]bool{true, true}}}},
			{OverMM: 4, OverMinMM: 4, OverMaxMM: 4,
				Sheath: sheet.Sheath{Part: "S5", Tube: tube("S5", 7), PassMM: 4, PassAt: "C"},
				Covers: []sheet.Covered{{What: model.CoverSleeve, Part: "S6", Under: true, Tube: tube("S6", 6), UnderMM: 4, OverMM: 4}}},
		}}
}

func from(source string) catalogue.Origin {
	return catalogue.Origin{Source: source, Standing: catalogue.House}
}

// What is threaded on, by hand. T: the tape beneath, the sheath, the braid over it; S2 after them, for
// nothing closes P. A: S3 starts at 29 of a port of 30 mm and goes on before the transition of J, S4 after. That
// transition gets over A in S3 at its largest, 7 + 0.25 in a bore of 12, over B bare and gathered at K, 1.3 × 6.5 = 8.45 in one of 9,
// which is nearest to it; E has no outlet. A label lies 25 to 50 mm off a boot of 40 mm: on 5 mm of A, in the smallest sleeve that it
// fills to four fifths, 6.4 (5 / 6.4 = 0.78), and clear of S4; on 8.2 at P: 12.7 (8.2 / 9.5 = 0.86); on 4 at R: 6.4 (4 / 4.8 = 0.83);
// on 50 mm none. The boot of Q grips from 0.9 × 40 - 15 = 21 to 40 mm: S4 on A, 6, and not the braid of the last 15; that of
// P, whose length nobody knows, the end of the tape.
func TestThreadingByHand(t *testing.T) {
	const beyondJ, beyondK = "the ends beyond J", "the ends beyond K"
	marker := catalogue.Origin{Source: "a marker-tube specification", Standing: catalogue.Published}
	end := "the sheathed end"
	want := []Threaded{
		{What: "tape", GoesOn: model.WoundOn, Of: "T", Part: "as stocked", ToMM: 500},
		{What: "sheath", GoesOn: model.ShrunkOn, Of: "T", Part: "S1", Over: "the zone", From: "P", FromMM: 10, ToMM: 480, CutMM: 495,
			BoreMM: 12, PassMM: 11, Origin: from("S1")},
		{What: "braid", GoesOn: model.ThreadedOn, Of: "T", Part: "br", From: "P", Outside: true, FromMM: 20, ToMM: 470, CutMM: 600},
		{What: "sleeve", GoesOn: model.ShrunkOn, Of: "T", Part: "S2", Over: "T", From: beyondJ, Outside: true, FromMM: 100, ToMM: 200,
			CutMM: 110, BoreMM: 15, PassMM: 10, Origin: from("S2")},
		{What: "sleeve", GoesOn: model.ShrunkOn, Of: "A", Part: "S3", From: "Q", Outside: true, FromMM: 29, ToMM: 80, BoreMM: 9,
			Origin: from("S3")},
		{What: "braid", GoesOn: model.ThreadedOn, Of: "A", Part: "br", From: "Q", Outside: true, FromMM: 285, ToMM: 300},
		{What: "sheath", GoesOn: model.ShrunkOn, Of: "B", Part: "lost", From: beyondK},
		{What: "transition", GoesOn: model.ShrunkOn, Of: "J", Part: "four", Over: "the bare tails gathered at K", From: beyondJ, BoreMM: 9,
			PassMM: 8.45, Origin: from("four")},
		{What: "sleeve", GoesOn: model.ShrunkOn, Of: "A", Part: "S4", From: "Q", Outside: true, FromMM: 240, ToMM: 285, BoreMM: 10,
			Origin: from("S4")},
		{What: "sleeve", GoesOn: model.ShrunkOn, Of: "C", Part: "S6", From: "R", BoreMM: 6, Origin: from("S6")},
		{What: "sheath", GoesOn: model.ShrunkOn, Of: "C", Part: "S5", Over: "C", From: "R", BoreMM: 7, PassMM: 4, Origin: from("S5")},
		{What: "transition", GoesOn: model.ShrunkOn, Of: "K", Part: "gone", From: beyondK},
		{What: "label", GoesOn: model.ShrunkOn, Of: "P", Part: "marker sleeve 12.7", Over: end, From: "P", BoreMM: 12.7, PassMM: 8.2,
			Origin: marker},
		{What: "boot", GoesOn: model.ShrunkOn, Of: "P", Part: "lost", Over: end, From: "P", PassMM: 8.2},
		{What: "contacts", Of: "P", From: "P"},
		{What: "label", GoesOn: model.ShrunkOn, Of: "Q", Part: "marker sleeve 6.4", Over: end, From: "Q", BoreMM: 6.4, PassMM: 5,
			Origin: marker},
		{What: "boot", GoesOn: model.ShrunkOn, Of: "Q", Part: "own", Over: end, From: "Q", BoreMM: 14, PassMM: 6, Origin: from("boot")},
		{What: "contacts", Of: "Q", From: "Q"},
		{What: "contacts", Of: "W", From: "W"},
		{What: "label", GoesOn: model.ShrunkOn, Of: "R", Part: "marker sleeve 6.4", Over: end, From: "R", BoreMM: 6.4, PassMM: 4,
			Origin: marker},
		{What: "contacts", Of: "R", From: "R"},
	}
	got := Threading(written())
	for k := range max(len(got), len(want)) {
		var g, w Threaded
		if k < len(got) {
			g = got[k]
			g.PassMM = rounded(g.PassMM)
		}
		if k < len(want) {
			w = want[k]
		}
		if !reflect.DeepEqual(g, w) {
			t.Errorf("%d:\n%+v, want\n%+v", k, g, w)
		}
	}
	first := written() // 7.25 mm in 7.3 is nearer than 8.45 in 9, though it comes first
	first.Cat.Transitions["four"].Outlets[1].ExpandedMM = 7.3
	if th := Threading(first)[7]; th.What != sheet.PartTransition || th.BoreMM != 7.3 || th.PassMM != 7.25 || th.Over != "A in its sheath" {
		t.Errorf("%+v", th)
	}
	var tail []string
	for _, th := range TailOf(written(), "R") {
		tail = append(tail, fmt.Sprint(th.What, " ", th.Of))
	}
	if got := strings.Join(tail, ", "); got != "sleeve T, sheath B, transition J, sleeve C, sheath C, transition K, label R, contacts R" {
		t.Error(got)
	}
}

func rounded(mm unit.Millimetre) unit.Millimetre {
	return unit.Millimetre(float64(int(mm*1000+0.5)) / 1000)
}

// The end a cover comes on from: one of those its branch lets it, of two the one further out; a part that may come from
// neither is asked nothing.
func TestEndItComesOnFrom(t *testing.T) {
	s := written()
	s.H.Branches = append(s.H.Branches, model.Branch{ID: "D", From: "W", To: "R"})
	for _, c := range []struct {
		branch   int
		from, to string
		ends     [2]bool
		want     string
	}{
		{0, "P", "J", [2]bool{}, "P"},
		{0, "P", "J", [2]bool{true, true}, "P"},
		{0, "P", "J", [2]bool{true, false}, "P"},
		{0, "P", "J", [2]bool{false, true}, "the ends beyond J"},
		{3, "J", "K", [2]bool{}, "the ends beyond K"},
		{3, "J", "K", [2]bool{true, false}, "the ends beyond K"},
		{3, "J", "K", [2]bool{false, true}, "the ends beyond J"},
		{4, "K", "R", [2]bool{}, "R"},
		{4, "K", "R", [2]bool{true, false}, "the ends beyond K"},
		{4, "K", "R", [2]bool{false, true}, "R"},
		{5, "R", "W", [2]bool{true, true}, "W"},
		{5, "W", "R", [2]bool{true, true}, "R"},
	} {
		if got := comesFrom(s, wires.Walk{Branch: c.branch, From: c.from, To: c.to}, c.ends); got != c.want {
			t.Errorf("%s from %s, %v: %q, want %q", s.H.Branches[c.branch].ID, c.from, c.ends, got, c.want)
		}
	}
}

// What fits is as wide as its bore at most; alike parts are counted.
func TestFitsAndKeys(t *testing.T) {
	for pass, want := range map[unit.Millimetre]bool{4.9: true, 5: true, 5.1: false} {
		if got := (Threaded{BoreMM: 5, PassMM: pass}).Fits(); got != want {
			t.Errorf("%v in 5: %v", pass, got)
		}
	}
	if !(Threaded{PassMM: 5}).Fits() || (Threaded{BoreMM: 0.9, PassMM: 5}).Fits() {
		t.Error("a bore that is not known fits, a small one does not")
	}
	got := Keys([]Threaded{{What: "sleeve", Of: "T", Part: "a"}, {What: "sleeve", Of: "T", Part: "b"}, {What: "sleeve", Of: "T", Part: "a"},
		{What: "sleeve", Of: "U", Part: "a"}, {What: "sleeve", Of: "T", Part: "a"}})
	if want := []string{"sleeve T a", "sleeve T b", "sleeve T a 2", "sleeve U a", "sleeve T a 3"}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

// What is glued, by hand: both transitions at each branch that meets there, both boots at lip and cable.
func TestGlueByHand(t *testing.T) {
	s := written()
	s.Limits.Adhesive = "epoxy"
	want := []Glued{{"J", "four", []string{"T", "A", "E", "B"}}, {"K", "gone", []string{"B", "C"}}, {"P", "lost", []string{"lip", "cable"}},
		{"Q", "own", []string{"lip", "cable"}}}
	if got := Glue(s); !reflect.DeepEqual(got, want) {
		t.Errorf("%v, want %v", got, want)
	}
	s.Limits.PackJoints = 5
	if got := fmt.Sprint(Mixes(s)); got != "[{[J T, A, E, B]} {[K B, C P lip, cable]} {[Q lip, cable]}]" {
		t.Error(got)
	}
	one, two, four := Glued{"a", "", []string{"1"}}, Glued{"b", "", []string{"1", "2"}}, Glued{"c", "", []string{"1", "2", "3", "4"}}
	for _, c := range []struct {
		most  int
		glued []Glued
		want  string
	}{
		{3, nil, "[]"},
		{3, []Glued{one}, "[{[a 1]}]"},
		{1, []Glued{one, two}, "[{[a 1]} {[b 1]} {[b 2]}]"},
		{2, []Glued{one, one, one}, "[{[a 1 a 1]} {[a 1]}]"},
		{2, []Glued{one, two, one}, "[{[a 1]} {[b 1, 2]} {[a 1]}]"},            // b would be torn, and fits a pack
		{3, []Glued{one, two, one}, "[{[a 1 b 1, 2]} {[a 1]}]"},                // b fits what is left
		{3, []Glued{one, four, two}, "[{[a 1 c 1, 2]} {[c 3, 4]} {[b 1, 2]}]"}, // c fits no pack: none is begun for it
		{4, []Glued{one, four, two}, "[{[a 1]} {[c 1, 2, 3, 4]} {[b 1, 2]}]"},
	} {
		if got := fmt.Sprint(packed(c.glued, c.most)); got != c.want {
			t.Errorf("packs of %d: %s, want %s", c.most, got, c.want)
		}
	}
}

// Hot melt is said once of each part that is to be glued to an elastomer, and of no other.
func TestHotMeltByHand(t *testing.T) {
	s := written()
	for _, adhesive := range []string{"", "epoxy", "hot melt"} {
		s.Limits.Adhesive = adhesive
		if SayAdhesive(s); len(s.Snags) > 0 {
			t.Errorf("%q on polyolefin: %+v", adhesive, s.Snags)
		}
	}
	s.Branches[0].Sheath.Tube.V.Material = "fluid-resistant elastomer"
	s.Branches[0].Covers[2].Under = true // so that the sheath is outermost at J
	s.Branches[1].Covers[0].Tube.V.Material = "elastomer"
	SayAdhesive(s)
	want := []sheet.Snag{
		{Level: sheet.Note, Rule: "adhesive.pair", Where: "J", Like: "S1",
			Says: "It would be glued with hot melt on S1, which needs epoxy"},
		{Level: sheet.Note, Rule: "adhesive.pair", Where: "P", Like: "S1",
			Says: "It would be glued with hot melt on S1, which needs epoxy"},
	}
	if !slices.Equal(s.Snags, want) {
		t.Errorf("%+v, want %+v", s.Snags, want)
	}
}

// What is said of transitions, by hand: one that no catalogue has, one with an outlet too few, and of each branch whether its outlet
// passes, holds and is not overfilled. A is 7.25 mm over S3 at its largest, and its outlet lies from 0.9 × 30 - 15 = 12 to 30 mm of it,
// of which S3 covers one with 7 mm, and most lies on 5 mm, 4.75 at its smallest. At equality nothing is said.
func TestTransitionsByHand(t *testing.T) {
	wide := catalogue.Outlet{ExpandedMM: 100, RecoveredMM: 1, PortMM: 30}
	said := func(trunk unit.Millimetre, standing catalogue.Standing, outlets ...catalogue.Outlet) []string {
		s := written()
		s.Branches[0].OverMM = trunk
		s.H.Breakouts[1].Transition = model.Opt[string]{}
		s.Cat.Transitions["four"] = catalogue.Transition{ID: "four", Outlets: outlets,
			Origin: catalogue.Origin{Source: "four", Standing: standing}}
		SayThreading(s)
		var out []string
		for _, g := range s.Snags {
			out = append(out, fmt.Sprint(g.Level, " ", g.Rule, " ", g.Where, ": ", g.Says))
		}
		return out
	}
	of := func(expanded, recovered unit.Millimetre) []catalogue.Outlet {
		return []catalogue.Outlet{wide, {ExpandedMM: expanded, RecoveredMM: recovered, PortMM: 30}, wide, wide}
	}
	for _, c := range []struct {
		name    string
		trunk   unit.Millimetre
		outlets []catalogue.Outlet
		memory  bool
		want    string
	}{
		{"all wide", 8, []catalogue.Outlet{wide, wide, wide, wide}, false, ""},
		{"three", 8, []catalogue.Outlet{wide, wide, wide}, false,
			"stop transition.outlets J: four has 3 outlets, but 4 branches meet there"},
		{"too narrow", 8, of(7.126, 1), false, "stop transition.slide J: four does not pass A in its sheath, 7.25 mm, with an outlet of " +
			"7.13 mm: take a wider one, a split one, or tape the breakout"},
		{"too narrow, from memory", 8, of(7.1, 1), true, "warn transition.slide J: four does not pass A in its sheath, 7.25 mm, with an " +
			"outlet of 7.10 mm: take a wider one, a split one, or tape the breakout"},
		{"just wide enough", 8, of(7.25, 1), false, "note transition.stretch J: Its outlet for A is filled to 97 % of its bore; at most " +
			"80 % is advised"},
		{"loose", 8, of(9, 4.914), false, "stop transition.grip J: Its outlet for A recovers to 4.91 mm and lies on 4.75 mm with every " +
			"wire at its smallest: it stays loose"},
		{"loose, from memory", 8, of(9, 5), true, "warn transition.grip J: Its outlet for A recovers to 5.00 mm and lies on 4.75 mm with " +
			"every wire at its smallest: it stays loose"},
		{"just held", 8, of(9, 4.75), false, ""},
		{"a trunk of nothing", 0, of(9, 4.914), false, "stop transition.grip J: Its outlet for A recovers to 4.91 mm and lies on 4.75 mm " +
			"with every wire at its smallest: it stays loose"},
		{"a trunk of next to nothing, in tape", 0.5, of(9, 1), false, "stop transition.grip J: Its outlet for T recovers to 1.00 mm and " +
			"lies on 0.70 mm with every wire at its smallest: it stays loose"},
		{"filled by four fifths", 8, of(8.75, 1), false, ""},
	} {
		standing := catalogue.House
		if c.memory {
			standing = catalogue.Memory
		}
		if got := strings.Join(said(c.trunk, standing, c.outlets...), "\n"); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
	for of, want := range map[[2]string]string{
		{"four", "gone"}: `transition.part K: Transition "gone" is in no catalogue`,
		{"gone", "four"}: `transition.part J: Transition "gone" is in no catalogue, ` +
			`transition.outlets K: four has 4 outlets, but 2 branches meet there`,
		{"two", "gone"}: `transition.outlets J: two has 2 outlets, but 4 branches meet there, ` +
			`transition.part K: Transition "gone" is in no catalogue`,
	} {
		s := written()
		s.Cat.Transitions["two"] = catalogue.Transition{ID: "two", Outlets: s.Cat.Transitions["four"].Outlets[:2]}
		s.H.Breakouts[0].Transition, s.H.Breakouts[1].Transition = model.Some(of[0]), model.Some(of[1])
		SayThreading(s)
		var got []string
		for _, g := range s.Snags {
			got = append(got, fmt.Sprint(g.Rule, " ", g.Where, ": ", g.Says))
		}
		if strings.Join(got, ", ") != want {
			t.Errorf("%q: %q, want %q", of, got, want)
		}
	}
}
