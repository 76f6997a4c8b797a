package over_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// tubeCase is one branch of wires in a written sheath.
func tubeCase(t *testing.T, wires int, size, part string, reel float64) *sheet.Sheet {
	t.Helper()
	var b strings.Builder
	b.WriteString("format = 1\n")
	if reel > 0 {
		fmt.Fprintf(&b, "[[reel]]\nspec = \"AS22759/32\"\nsize = %q\nover_mm = %v\n", size, reel)
	}
	b.WriteString("[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Z\"\n")
	for i := range wires {
		fmt.Fprintf(&b, "[[wire]]\nid = \"%d\"\nfrom = \"A:%d\"\nto = \"Z:%d\"\nspec = \"AS22759/32\"\nsize = %q\n", i, i, i, size)
	}
	fmt.Fprintf(&b, "[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 300\n[[branch.cover]]\nwhat = \"sheath\"\npart = %q\n",
		part)
	return calc.Complete(calctest.Parse(t, b.String()), calctest.Catalogue(t), nil)
}

// No verdict goes from easy to refused on a hundredth: 0.80 × 9.53 = 7.624 is the
// advice for the 9.5 tube, and it is no more than advice.
func TestVerdictDoesNotHangOnAHundredth(t *testing.T) {
	var got []string
	for _, over := range []float64{7.59, 7.61, 7.63} {
		s := tubeCase(t, 1, "22", "AS23053/16 9.5", over)
		calctest.Near(t, "over", float64(s.Branches[0].OverMM), over, 1e-9)
		worst := "nothing"
		for _, g := range sheet.Worst(s.Snags) {
			if strings.HasPrefix(g.Rule, "sheath.") {
				worst = g.Level.String()
				break
			}
		}
		got = append(got, worst)
	}
	if got[0] != got[1] || got[2] == "stop" {
		t.Errorf("verdicts of 7.59, 7.61, 7.63 in a 9.5 bore: %v", got)
	}
}

// Two 24 AWG: over 1.88, tape 0.94·(2+π)/π = 1.54; a 3.2/1.6 tube recovers to
// 1.57 (AS23053/16 size 1/8, a maker's sheet) and hangs loose.
func TestLooseLeg(t *testing.T) {
	s := tubeCase(t, 2, "24", "AS23053/16 3.2", 0)
	calctest.Near(t, "over", float64(s.Branches[0].OverMM), 1.88, 1e-9)
	calctest.Near(t, "tape", float64(s.Branches[0].TapeMM), 1.54, 5e-3)
	g, ok := calctest.Snag(s, "sheath.loose", "T")
	if !ok || g.Level != sheet.Stop || !strings.Contains(g.Says, "loose") {
		t.Errorf("a loose leg must stop: %+v", s.Snags)
	}
}

// A sheath that cannot slide says by how much and where.
func TestCannotSlide(t *testing.T) {
	s := tubeCase(t, 16, "22", "AS23053/16 4.8", 0)
	g, ok := calctest.Snag(s, "sheath.slide", "T")
	if !ok || g.Level != sheet.Stop {
		t.Fatalf("no stop: %+v", s.Snags)
	}
	by := fmt.Sprintf("%.2f mm too small", float64(s.Branches[0].OverMaxMM)-4.75)
	if !strings.Contains(g.Says, by) || !strings.Contains(g.Says, "from 0 to 300 mm of T") {
		t.Errorf("says %q, want %q and the station", g.Says, by)
	}
}

// A branch shorter than its sorted zone has no place for a sheath, and a single
// wire that is thinner than any tube grips is no fault of the harness.
func TestNoPlaceForASheath(t *testing.T) {
	h := calctest.Load(t, "example.toml")
	l1 := slices.IndexFunc(h.Branches, func(b model.Branch) bool { return b.ID == "L1" })
	s := calc.Complete(h.EditBranch(l1, func(b *model.Branch) { b.LengthMM = 20 }), calctest.Catalogue(t), nil)
	if g, ok := calctest.Snag(s, "sheath.place", "L1"); !ok || g.Level != sheet.Note || s.Branches[l1].Sheath.Part != "" {
		t.Errorf("20 mm with a zone of 25: %+v, sheath %q", g, s.Branches[l1].Sheath.Part)
	}
	one := calctest.Parse(t, "format = 1\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Z\"\n[[wire]]\nid = \"1\"\nfrom = "+
		"\"A:1\"\nto = "+
		"\"Z:1\"\nspec = \"AS22759/32\"\nsize = \"22\"\n[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 100\n")
	for _, g := range calc.Complete(one, calctest.Catalogue(t), nil).Snags {
		if g.Level != sheet.Note {
			t.Errorf("one plain wire shows %+v", g)
		}
	}
}

// Two 18 AWG of 1.52 mm over a metre, 3.04 mm over: 1/8 in tube leaves 3.18 − 3.04 = 0.14 mm
// of the 2.0 that a metre wants, and nobody slides it on. It is not proposed, and it is a
// warning where it is written, over a metre as over 120 mm, where 0.345 mm is wanted and less
// than half of it is there.
func TestNobodySlidesIt(t *testing.T) {
	const wires = "format = 1\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Z\"\n" +
		"[[wire]]\nid = \"1\"\nfrom = \"A:1\"\nto = \"Z:1\"\nspec = \"AS22759/32\"\nsize = \"18\"\n" +
		"[[wire]]\nid = \"2\"\nfrom = \"A:2\"\nto = \"Z:2\"\nspec = \"AS22759/32\"\nsize = \"18\"\n"
	build := func(length int, cover string) *sheet.Sheet {
		branch := fmt.Sprintf("[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = %d\n", length)
		return calc.Complete(calctest.Parse(t, wires+branch+cover), calctest.Catalogue(t), nil)
	}
	for length, wanted := range map[int]string{120: "0.35", 900: "1.84", 1000: "2.00"} {
		if b := build(length, "").Branches[0]; b.Sheath.Part != "AS23053/16 4.8" || b.Sheath.Verdict.Sticks {
			t.Errorf("%d mm: %s is proposed, %+v", length, b.Sheath.Part, b.Sheath.Verdict)
		}
		g, ok := calctest.Snag(build(length, "[[branch.cover]]\nwhat = \"sheath\"\npart = \"AS23053/16 3.2\"\n"), "sheath.room", "T")
		if !ok || g.Level != sheet.Warn || !strings.Contains(g.Says, "has 0.14 mm to slide") ||
			!strings.Contains(g.Says, wanted+" mm is wanted: nobody slides it on") {
			t.Errorf("%d mm: %+v", length, g)
		}
	}
	// What is slid over the sheath is judged by the same rule.
	over := build(600, "[[branch.cover]]\nwhat = \"sheath\"\npart = \"AS23053/16 4.8\"\n").Branches[0].Sheath.Verdict.OverMM
	sleeve := "[[branch.cover]]\nwhat = \"sheath\"\npart = \"AS23053/16 4.8\"\n[[branch.cover]]\nwhat = \"sleeve\"\n" +
		"part = \"AS23053/16 4.8\"\nfrom_mm = 100.0\nto_mm = 400.0\n"
	if left := 4.75 - over; left < 0.36 || left > 0.37 {
		t.Fatalf("the sleeve has %v mm to slide: the case wants 0.37", left)
	}
	// 300 mm want 0.3 + 200·0.9/400 = 0.75, and half of it is 0.375
	if g, ok := calctest.Snag(build(600, sleeve), "cover.room", "T"); !ok || g.Level != sheet.Warn {
		t.Errorf("a sleeve: %+v", g)
	}
}

// Where every size of the kind that a branch calls for sticks, another kind is proposed that
// does not, and the sheet says so; one that does not suit the place is not.
func TestAnotherKindWhereOneSticks(t *testing.T) {
	s := calctest.Ringed(t, 1.05, 0.0, 900, []int{1, 6}, "", "")
	b := s.Branches[0]
	own := func(material string, flexible bool) *sheet.Sheet {
		cat := *s.Cat
		cat.Tubes = slices.DeleteFunc(slices.Clone(cat.Tubes), func(t catalogue.Tube) bool { return t.Kind != "AS23053/16" })
		// of the elastomer, one size alone: 0.3 mm wider than the bundle
		cat.Tubes = append(cat.Tubes[:0], catalogue.Tube{ID: "AS23053/16 own", Kind: "AS23053/16", SuppliedMM: b.OverMM + 0.3,
			RecoveredMM: b.OverMM / 2, WallMM: 0.8, Density: 1.3, Flexible: true, ServiceMaxC: 120},
			catalogue.Tube{ID: "shop 1", Kind: "shop", SuppliedMM: b.OverMM + 3, RecoveredMM: b.OverMM / 2, WallMM: 0.8, Density: 1.3,
				Flexible: flexible, Material: material, ServiceMaxC: 120})
		return calc.Build(s.H, &cat, nil)
	}
	wide := own("elastomer", true)
	if got := wide.Branches[0].Sheath.Part; got != "shop 1" {
		t.Errorf("%s is proposed", got)
	}
	if g, ok := calctest.Snag(wide, "sheath.kind", "T"); !ok || g.Level != sheet.Note || !strings.Contains(g.Says, "shop 1 is proposed") {
		t.Errorf("%+v", g)
	}
	for _, none := range []*sheet.Sheet{own("elastomer", false), own("polyolefin, the inner wall meltable", true)} {
		if got := none.Branches[0].Sheath.Part; got != "AS23053/16 own" {
			t.Errorf("%s is proposed", got)
		}
		if g, ok := calctest.Snag(none, "sheath.room", "T"); !ok || g.Level != sheet.Warn {
			t.Errorf("a proposal that nobody slides on: %+v", g)
		}
	}
}

// A tube at 0.80 of its bore and a little over: nothing, then a note, and only 2 % of the
// bore further a warning, whether it is 120 or 900 mm long and whether it is written or
// proposed: 0.80 · 9.53 = 7.624 and 0.82 · 9.53 = 7.8146. (Tape is over of one round wire,
// 12.7 in tube grips it by 1.2 and keeps all three over 900 mm, where 1.84 mm is wanted.)
func TestNoEdgeAtFourFifths(t *testing.T) {
	levels := func(over float64, length unit.Millimetre) string {
		s := tubeCase(t, 1, "22", "AS23053/16 9.5", over)
		h := s.H.EditBranch(0, func(b *model.Branch) { b.LengthMM = length })
		g, ok := calctest.Snag(calc.Complete(h, s.Base, nil), "sheath.stretch", "T")
		if !ok {
			return "nothing"
		}
		return g.Level.String()
	}
	for _, length := range []unit.Millimetre{120, 900} {
		for over, want := range map[float64]string{7.40: "nothing", 7.63: "note", 7.81: "note", 7.82: "warn"} {
			if got := levels(over, length); got != want {
				t.Errorf("%v mm of bundle over %v mm: %s, want %s", over, length, got, want)
			}
		}
	}
}
