package calc_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"sync"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/unit"
	"contralay/ui/paper"
)

var shelf = sync.OnceValues(catalogue.Default)

func entries(t testing.TB) *catalogue.Catalogue {
	t.Helper()
	c, err := shelf()
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func load(t testing.TB, name string) *model.Harness {
	t.Helper()
	d, err := file.Load("../testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	return &d.Harness
}

func parse(t testing.TB, text string) *model.Harness {
	t.Helper()
	d, err := file.Parse([]byte(text), "test")
	if err != nil {
		t.Fatal(err)
	}
	return &d.Harness
}

func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: %.4f, want %.4f ± %g", what, got, want, tol)
	}
}

func has(s *sheet.Sheet, rule, where string) (sheet.Snag, bool) {
	for _, g := range s.Snags {
		if g.Rule == rule && (where == "" || g.Where == where) {
			return g, true
		}
	}
	return sheet.Snag{}, false
}

// The example's trunk, by hand: a unit of 2.9 in the centre, nine of 1.09 and one
// of 1.27 round it: over 2.9 + 2·1.27 = 5.440; gap and room as the file's own page
// states them (0.094, one).
func TestExample(t *testing.T) {
	s := calc.Complete(load(t, "example.toml"), entries(t), nil)
	b := s.Branches[0]
	near(t, "over", float64(b.OverMM), 5.440, 5e-4)
	l := b.Layers[1]
	near(t, "gap", float64(l.Gap), 0.094, 5e-4)
	if l.Room != 1 || l.Takes != 11 || l.Fillers != 0 || l.Spares != 4 {
		t.Errorf("room %d takes %d fillers %d spares %d, want 1 11 0 4", l.Room, l.Takes, l.Fillers, l.Spares)
	}
	if l.Hand != model.HandLeft || b.Layers[0].Hand != model.HandStraight {
		t.Errorf("hands %s, %s", b.Layers[0].Hand, l.Hand)
	}
	// 12 × 5.44 = 65.28; laid on 450 − 25 (zone of J1) − 5.44 (one diameter) = 419.56.
	near(t, "lay", float64(l.LayMM), 65.28, 1e-6)
	near(t, "turns", float64(l.Turns), 419.56/65.28, 1e-6)
	// The band is all wires 0.002 in thin or thick (AS22759/32, from memory); the
	// unit's diameter is given: 5.44 ∓ 2·0.0508.
	near(t, "over, thin", float64(b.OverMinMM), 5.44-2*0.0508, 1e-3)
	near(t, "over, thick", float64(b.OverMaxMM), 5.44+2*0.0508, 1e-3)
	for _, g := range s.Snags {
		if g.Level == sheet.Stop {
			t.Errorf("a stop on the example: %+v", g)
		}
	}
	for i, b := range s.Branches {
		if b.OverMM <= 0 || len(b.Layers) == 0 {
			t.Errorf("branch %s has no lay-up", s.H.Branches[i].ID)
		}
	}
}

// Wire 101 of the example by hand. T1: lay loss √(1+(π·(2.9+1.09)/65.28)²) on
// 419.56, the rest of 450 straight; L1: twisted pair, L = 12·2.18, pitch diameter
// 1.09, laid on 90 − 25 − 2.18; loops 16 at P1 (insert) and 8 at INJ1; tails 100
// and 75; up to 10.
func TestCutLengthByHand(t *testing.T) {
	s := calc.Complete(load(t, "example.toml"), entries(t), nil)
	k1 := math.Sqrt(1 + math.Pow(math.Pi*3.99/65.28, 2))
	k2 := math.Sqrt(1 + math.Pow(math.Pi*1.09/26.16, 2))
	finished := 419.56*k1 + 30.44 + 62.82*k2 + 27.18 + 16 + 8
	w := s.Wires[s.X.Wire["101"]]
	near(t, "finished", float64(w.Finished), finished, 1e-6)
	near(t, "cut", float64(w.Cut), math.Ceil((finished+175)/10)*10, 1e-9)
	// 22 AWG tin: 16.20 Ω/1000 ft (AC 43.13-1B table 11-9), 1 A, 90 °C.
	near(t, "drop", float64(w.Drop), finished/1e6*16.20/0.3048*(234.5+90)/254.5, 1e-5)
	// A splice off its breakout: S1 stands 55 mm along R1. 110 comes to J1 and goes on
	// to it; 112 leaves along R1 and is that much shorter.
	near(t, "110 past J1", float64(s.Wires[s.X.Wire["110"]].Finished-16-55), 419.56*math.Sqrt(1+math.Pow(math.Pi*(2.9+1.27)/65.28, 2))+
		30.44, 1e-6)
	if a, b := s.Wires[s.X.Wire["112"]].Finished, s.Wires[s.X.Wire["113"]].Finished; a >= b {
		t.Errorf("112 (%v) must be shorter than 113 (%v)", a, b)
	}
}

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
	return calc.Complete(parse(t, b.String()), entries(t), nil)
}

// No verdict goes from easy to refused on a hundredth: 0.80 × 9.53 = 7.624 is the
// advice for the 9.5 tube, and it is no more than advice.
func TestVerdictDoesNotHangOnAHundredth(t *testing.T) {
	var got []string
	for _, over := range []float64{7.59, 7.61, 7.63} {
		s := tubeCase(t, 1, "22", "AS23053/16 9.5", over)
		near(t, "over", float64(s.Branches[0].OverMM), over, 1e-9)
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
	near(t, "over", float64(s.Branches[0].OverMM), 1.88, 1e-9)
	near(t, "tape", float64(s.Branches[0].TapeMM), 1.54, 5e-3)
	g, ok := has(s, "sheath.loose", "T")
	if !ok || g.Level != sheet.Stop || !strings.Contains(g.Says, "loose") {
		t.Errorf("a loose leg must stop: %+v", s.Snags)
	}
}

// A sheath that cannot slide says by how much and where.
func TestCannotSlide(t *testing.T) {
	s := tubeCase(t, 16, "22", "AS23053/16 4.8", 0)
	g, ok := has(s, "sheath.slide", "T")
	if !ok || g.Level != sheet.Stop {
		t.Fatalf("no stop: %+v", s.Snags)
	}
	by := fmt.Sprintf("%.2f mm too small", float64(s.Branches[0].OverMaxMM)-4.75)
	if !strings.Contains(g.Says, by) || !strings.Contains(g.Says, "from 0 to 300 mm of T") {
		t.Errorf("says %q, want %q and the station", g.Says, by)
	}
}

// What can be drawn but not built loads and is a stop.
func TestStops(t *testing.T) {
	base := `format = 1
[[termination]]
id = "A"
insert = "8-98"
[[termination]]
id = "Z"
cavities = ["1", "2", "3"]
contacts = { "20" = ["1", "2", "3"] }
[[termination]]
id = "Y"
[[wire]]
id = "1"
from = "A:A"
to = "Z:1"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "2"
from = "A:B"
to = "Z:2"
spec = "AS22759/32"
size = "22"
`
	branch := "[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 300\n"
	wire := func(id, from, to, size string) string {
		return fmt.Sprintf("[[wire]]\nid = %q\nfrom = %q\nto = %q\nspec = \"AS22759/32\"\nsize = %q\n", id, from, to, size)
	}
	for _, c := range []struct{ name, text, rule, where string }{
		{"two wires in a sealed cavity", wire("3", "A:A", "Z:3", "22") + branch, "cavity.twice", "A:A"},
		{"a cavity the insert lacks", wire("3", "A:I", "Z:3", "22") + branch, "cavity.none", "3"},
		{"more wires than cavities", wire("3", "A:C", "Z:3", "22") + wire("4", "A:D", "Z:4", "22") + branch, "cavity.none", "4"},
		{"one end", wire("3", "A:C", "", "22") + branch, "wire.path", "3"},
		{"no path", wire("3", "A:C", "Y:1", "22") + branch, "wire.path", "3"},
		{"a wire in no layer", branch + "[[branch.layer]]\nof = [\"1\"]\n", "layer.missing", "T"},
		{"a member that is not on the path", wire("3", "A:C", "Y:1", "22") + branch +
			"[[branch.layer]]\nof = [\"1\", \"2\", \"3\"]\n[[branch]]\nid = \"V\"\nfrom = \"A\"\nto = \"Y\"\nlength_mm = 200\n",
			"layer.stray", "T"},
		{"a unit's wire laid for itself", branch + "[[branch.layer]]\nof = [\"1\", \"2\"]\n[[unit]]\nid = \"U\"\nwires = [\"1\", \"2\"]\n",
			"layer.unit", "T"},
		{"a unit without wires", branch + "[[unit]]\nid = \"U\"\nwires = []\n", "unit.build", "U"},
		{"an empty layer", branch + "[[branch.layer]]\nof = [\"1\", \"2\"]\n[[branch.layer]]\nof = []\n", "layer.empty", "T"},
		{"fuel", branch + "environment = [\"fuel\"]\n", "fuel", "T"},
		{"hotter than the wire is rated", branch + "ambient_c = 160\n", "hot.wire", "T"},
		{"a size no catalogue has", wire("3", "A:C", "Z:3", "23") + branch, "wire.size", "3"},
		{"no size", wire("3", "A:C", "Z:3", "") + branch, "wire.size", "3"},
		{"a conductor too thick for the barrel", wire("3", "A:C", "Z:3", "16") + branch, "cavity.barrel", "A:C"},
		{"a sheath no catalogue has", branch + "[[branch.cover]]\nwhat = \"sheath\"\npart = \"tube\"\n", "sheath.part", "T"},
		{"above 60 V", "[harness]\nsupply_v = 400\n" + branch, "supply", "harness"},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := base + c.text
			if head, rest, ok := strings.Cut(c.text, "[[branch]]"); ok && strings.HasPrefix(head, "[harness]") {
				text = strings.Replace(base, "format = 1\n", "format = 1\n"+head, 1) + "[[branch]]" + rest
			}
			s := calc.Complete(parse(t, text), entries(t), nil)
			g, ok := has(s, c.rule, c.where)
			if !ok || g.Level != sheet.Stop {
				t.Errorf("want a stop %s at %s, got %+v", c.rule, c.where, s.Snags)
			}
			if strings.Contains(g.Says, "  ") || strings.Contains(g.Says, "size is in no catalogue") {
				t.Errorf("said with a gap: %q", g.Says)
			}
		})
	}
	s := calc.Complete(parse(t, base+branch), entries(t), nil)
	for _, g := range s.Snags {
		if g.Level != sheet.Note {
			t.Errorf("the plain harness shows %+v", g)
		}
	}
}

// Order of input never changes a result: wires, and members of a layer.
func TestOrderOfInput(t *testing.T) {
	h := load(t, "example.toml")
	a := figures(t, calc.Complete(h, entries(t), nil))
	g := h.EditBranch(0, func(b *model.Branch) { slices.Reverse(b.Layers[1].Of) })
	if b := figures(t, calc.Complete(g, entries(t), nil)); a != b {
		t.Error("the order of a layer's members in the file changes the figures")
	}
}

// mm and inch give the same harness: the setting is for the eye.
func TestUnitsAreForTheEye(t *testing.T) {
	h := load(t, "example.toml")
	a := figures(t, calc.Complete(h, entries(t), nil))
	g := *h
	g.Head.Units = model.Some("in")
	if b := figures(t, calc.Complete(&g, entries(t), nil)); a != b {
		t.Error("inch changes the figures")
	}
}

// A prior sheet changes nothing but the time it takes.
func TestPriorChangesNothing(t *testing.T) {
	h, cat := load(t, "example.toml"), entries(t)
	s := calc.Complete(h, cat, nil)
	for i := range h.Wires {
		g := h.EditWire(i, func(w *model.Wire) { w.Size, w.Colour = "20", model.Some("8") })
		if figures(t, calc.Complete(g, cat, s)) != figures(t, calc.Complete(g, cat, nil)) {
			t.Errorf("with a prior sheet, wire %s comes out otherwise", h.Wires[i].ID)
		}
	}
}

func figures(t testing.TB, s *sheet.Sheet) string {
	t.Helper()
	b, err := paper.Figures(s)
	if err != nil {
		t.Fatal(err) // json refuses NaN and Inf
	}
	return string(b)
}

// Whatever the rules and sizes, no figure is NaN or Inf and nothing panics.
func TestAnyRules(t *testing.T) {
	h, cat := load(t, "example.toml"), entries(t)
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.SampledFrom([]float64{0, 1e-9, 0.01, 0.5, 1, 7, 12, 400, 1e9})
		r := func(name string) model.Opt[unit.Ratio] { return model.Some(unit.Ratio(v.Draw(t, name))) }
		mm := func(name string) model.Opt[unit.Millimetre] { return model.Some(unit.Millimetre(v.Draw(t, name))) }
		g := *h
		g.Rules.LayRatio, g.Rules.LiftMax, g.Rules.GapInner = r("ratio"), r("lift"), r("gap")
		g.Rules.LumpyAt, g.Rules.ZoneLump = r("lumpy"), r("lump")
		g.Rules.ZoneMM, g.Rules.CutStepMM, g.Rules.LoopMM = mm("zone"), mm("step"), mm("loop")
		g.Reels = []model.Reel{{Spec: "AS22759/32", Size: "22", OverMM: unit.Millimetre(max(1e-9, v.Draw(t, "reel")))}}
		g2 := g.EditBranch(0, func(b *model.Branch) {
			b.LengthMM = unit.Millimetre(max(1e-9, v.Draw(t, "length")))
			b.Layers[1].LayMM, b.Layers[1].BindMM = mm("lay"), mm("bind")
			b.BendMM, b.BendDeg = mm("bend"), model.Some(unit.Degree(v.Draw(t, "deg")))
		})
		s := calc.Build(g2, cat, nil)
		if _, err := paper.Figures(s); err != nil {
			t.Fatal(err)
		}
	})
}

// Whatever a file lays, in whatever layers, nothing panics and every figure is one.
func TestAnyLayers(t *testing.T) {
	h, cat := load(t, "example.toml"), entries(t)
	var ids []string
	for _, w := range h.Wires {
		ids = append(ids, w.ID)
	}
	ids = append(ids, "C1")
	rapid.Check(t, func(t *rapid.T) {
		all := rapid.Permutation(ids).Draw(t, "order")
		g := h.EditBranch(0, func(b *model.Branch) {
			b.Layers = nil
			for range rapid.IntRange(0, 5).Draw(t, "layers") {
				n := min(len(all), rapid.IntRange(0, 9).Draw(t, "n"))
				l := model.Layer{Of: all[:n:n], Fillers: model.Some(rapid.IntRange(0, 3).Draw(t, "fillers"))}
				all = all[n:]
				if rapid.Bool().Draw(t, "sized") {
					l.FillerMM = model.Some(unit.Millimetre(rapid.SampledFrom([]float64{0, 0.05, 1.09, 5}).Draw(t, "filler")))
				}
				b.Layers = append(b.Layers, l)
			}
			b.Make = model.Some(rapid.SampledFrom(model.Makes).Draw(t, "make"))
		})
		s := calc.Build(g, cat, nil)
		b, err := paper.Figures(s)
		if err != nil {
			t.Fatal(err)
		}
		if again, _ := paper.Figures(calc.Build(g, cat, nil)); string(again) != string(b) {
			t.Fatal("the same harness gives other figures")
		}
	})
}

// A branch shorter than its sorted zone has no place for a sheath, and a single
// wire that is thinner than any tube grips is no fault of the harness.
func TestNoPlaceForASheath(t *testing.T) {
	h := load(t, "example.toml")
	l1 := slices.IndexFunc(h.Branches, func(b model.Branch) bool { return b.ID == "L1" })
	s := calc.Complete(h.EditBranch(l1, func(b *model.Branch) { b.LengthMM = 20 }), entries(t), nil)
	if g, ok := has(s, "sheath.place", "L1"); !ok || g.Level != sheet.Note || s.Branches[l1].Sheath.Part != "" {
		t.Errorf("20 mm with a zone of 25: %+v, sheath %q", g, s.Branches[l1].Sheath.Part)
	}
	one := parse(t, "format = 1\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Z\"\n[[wire]]\nid = \"1\"\nfrom = \"A:1\"\nto = "+
		"\"Z:1\"\nspec = \"AS22759/32\"\nsize = \"22\"\n[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 100\n")
	for _, g := range calc.Complete(one, entries(t), nil).Snags {
		if g.Level != sheet.Note {
			t.Errorf("one plain wire shows %+v", g)
		}
	}
}

// A drain that ends in a cavity takes it: no spare is offered there, and the four
// states still add up.
func TestDrainTakesItsCavity(t *testing.T) {
	h := load(t, "example.toml")
	before := calc.Build(h, entries(t), nil)
	g := *h
	g.Units = slices.Clone(h.Units)
	g.Units[0].DrainFrom = model.Some("P1:L")
	s := calc.Build(&g, entries(t), nil)
	p := s.X.Termination["P1"]
	a, b := before.Terms[p], s.Terms[p]
	if b.Used != a.Used+1 || b.Blank != a.Blank-1 || slices.Contains(b.Free, "L") || b.Used+b.Spare+b.Reserved+b.Blank != len(b.Cavities) ||
		b.Contacts != a.Contacts || b.SealPlugs != a.SealPlugs-1 {
		t.Errorf("before %+v\nafter %+v", a, b)
	}
	for drain, rule := range map[string]string{"P1:A": "cavity.twice", "P1:I": "cavity.none"} {
		g.Units = slices.Clone(h.Units)
		g.Units[0].DrainFrom = model.Some(drain)
		if got, ok := has(calc.Build(&g, entries(t), nil), rule, ""); !ok || got.Level != sheet.Stop {
			t.Errorf("a drain in %s: want a stop %s, got %+v", drain, rule, got)
		}
	}
}

// A return without amps of its own carries what comes through the wire: 22 AWG tin,
// 16.20 Ω/1000 ft (AC 43.13-1B table 11-9), 10 A there and back at 40 °C. Two wires
// that name each other are one circuit and warn once.
func TestDropWithReturn(t *testing.T) {
	for _, c := range []struct {
		name, there, back string
		warns             int
	}{{"its current unsaid", "return = \"2\"\n", "", 1}, {"naming each other", "return = \"2\"\n", "amps = 10\nreturn = \"1\"\n", 1},
		{"naming itself", "return = \"1\"\n", "amps = 0\n", 1}} {
		t.Run(c.name, func(t *testing.T) {
			s := calc.Complete(parse(t, `format = 1
[[termination]]
id = "A"
[[termination]]
id = "Z"
[[wire]]
id = "1"
from = "A:1"
to = "Z:1"
spec = "AS22759/32"
size = "22"
amps = 10
`+c.there+`[[wire]]
id = "2"
from = "A:2"
to = "Z:2"
spec = "AS22759/32"
size = "22"
`+c.back+`[[branch]]
id = "T"
from = "A"
to = "Z"
length_mm = 1500
`), entries(t), nil)
			one := float64(s.Wires[0].Finished) / 1e6 * 16.20 / 0.3048 * (234.5 + 40) / 254.5 * 10
			want := 2 * one
			if c.name == "naming itself" {
				want = one
			}
			near(t, "circuit", float64(s.Wires[0].Circuit), want, 2e-4)
			n := 0
			for _, g := range s.Snags {
				if g.Rule == "wire.drop" {
					n++
				}
			}
			if n != c.warns {
				t.Errorf("%d warnings of drop, want %d", n, c.warns)
			}
		})
	}
}

// Mass is not known where a wire is in no catalogue, and is then null, never 0.
func TestUnknownMassIsNull(t *testing.T) {
	h := load(t, "example.toml")
	g := h.EditWire(0, func(w *model.Wire) { w.Spec = "own" })
	g = g.SetReel("own", "22", 1.2)
	s := calc.Complete(g, entries(t), nil)
	if _, ok := has(s, "wire.spec", "101"); !ok || s.Branches[0].GramKnown || s.Totals.GramKnown {
		t.Errorf("want wire.spec and no mass, got %+v", s.Snags)
	}
	if text := figures(t, s); !strings.Contains(text, "\"mass_g\": null") {
		t.Error("the figures show a mass")
	}
}

// What leaves first lies outermost whichever way round the branch is written.
func TestLeaversWhicheverWay(t *testing.T) {
	h := load(t, "example.toml")
	turned := h.EditBranch(0, func(b *model.Branch) { b.From, b.To = b.To, b.From })
	a, b := calc.Complete(h, entries(t), nil), calc.Complete(turned, entries(t), nil)
	if a.Branches[0].Buried != b.Branches[0].Buried {
		t.Errorf("buried %d, and %d with the branch turned round", a.Branches[0].Buried, b.Branches[0].Buried)
	}
}
