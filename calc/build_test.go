package calc_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/figure"
)

// The example's trunk, by hand: a unit of 2.9 in the centre, nine of 1.09 and one
// of 1.27 round it: over 2.9 + 2·1.27 = 5.440; gap and room as the file's own page
// states them (0.094, one).
func TestExample(t *testing.T) {
	s := calc.Complete(calctest.Load(t, "example.toml"), calctest.Catalogue(t), nil)
	b := s.Branches[0]
	calctest.Near(t, "over", float64(b.OverMM), 5.440, 5e-4)
	l := b.Layers[1]
	calctest.Near(t, "gap", float64(l.Gap), 0.094, 5e-4)
	if l.Room != 1 || l.Takes != 11 || l.Fillers != 0 || l.Spares != 4 {
		t.Errorf("room %d takes %d fillers %d spares %d, want 1 11 0 4", l.Room, l.Takes, l.Fillers, l.Spares)
	}
	if l.Hand != model.HandLeft || b.Layers[0].Hand != model.HandStraight {
		t.Errorf("hands %s, %s", b.Layers[0].Hand, l.Hand)
	}
	// 12 × 5.44 = 65.28; laid on 450 − 25 (zone of J1) − 5.44 (one diameter) = 419.56.
	calctest.Near(t, "lay", float64(l.LayMM), 65.28, 1e-6)
	calctest.Near(t, "turns", float64(l.Turns), 419.56/65.28, 1e-6)
	// The band is all wires 0.002 in thin or thick (AS22759/32, from memory); the
	// unit's diameter is given: 5.44 ∓ 2·0.0508.
	calctest.Near(t, "over, thin", float64(b.OverMinMM), 5.44-2*0.0508, 1e-3)
	calctest.Near(t, "over, thick", float64(b.OverMaxMM), 5.44+2*0.0508, 1e-3)
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
			s := calc.Complete(calctest.Parse(t, text), calctest.Catalogue(t), nil)
			g, ok := calctest.Snag(s, c.rule, c.where)
			if !ok || g.Level != sheet.Stop {
				t.Errorf("want a stop %s at %s, got %+v", c.rule, c.where, s.Snags)
			}
			if strings.Contains(g.Says, "  ") || strings.Contains(g.Says, "size is in no catalogue") {
				t.Errorf("said with a gap: %q", g.Says)
			}
		})
	}
	s := calc.Complete(calctest.Parse(t, base+branch), calctest.Catalogue(t), nil)
	for _, g := range s.Snags {
		if g.Level != sheet.Note {
			t.Errorf("the plain harness shows %+v", g)
		}
	}
}

// Order of input never changes a result: wires, and members of a layer.
func TestOrderOfInput(t *testing.T) {
	h := calctest.Load(t, "example.toml")
	a := figures(t, calc.Complete(h, calctest.Catalogue(t), nil))
	g := h.EditBranch(0, func(b *model.Branch) { slices.Reverse(b.Layers[1].Of) })
	if b := figures(t, calc.Complete(g, calctest.Catalogue(t), nil)); a != b {
		t.Error("the order of a layer's members in the file changes the figures")
	}
}

// mm and inch give the same harness: the setting is for the eye.
func TestUnitsAreForTheEye(t *testing.T) {
	h := calctest.Load(t, "example.toml")
	a := figures(t, calc.Complete(h, calctest.Catalogue(t), nil))
	g := *h
	g.Head.Units = model.Some("in")
	if b := figures(t, calc.Complete(&g, calctest.Catalogue(t), nil)); a != b {
		t.Error("inch changes the figures")
	}
}

// A prior sheet changes nothing but the time it takes.
func TestPriorChangesNothing(t *testing.T) {
	h, cat := calctest.Load(t, "example.toml"), calctest.Catalogue(t)
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
	b, err := figure.All(s)
	if err != nil {
		t.Fatal(err) // json refuses NaN and Inf
	}
	return string(b)
}

// Whatever the rules and sizes, no figure is NaN or Inf and nothing panics.
func TestAnyRules(t *testing.T) {
	h, cat := calctest.Load(t, "example.toml"), calctest.Catalogue(t)
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
		if _, err := figure.All(s); err != nil {
			t.Fatal(err)
		}
	})
}

// Whatever a file lays, in whatever layers, nothing panics and every figure is one.
func TestAnyLayers(t *testing.T) {
	h, cat := calctest.Load(t, "example.toml"), calctest.Catalogue(t)
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
		b, err := figure.All(s)
		if err != nil {
			t.Fatal(err)
		}
		if again, _ := figure.All(calc.Build(g, cat, nil)); string(again) != string(b) {
			t.Fatal("the same harness gives other figures")
		}
	})
}

// Mass is not known where a wire is in no catalogue, and is then null, never 0.
func TestUnknownMassIsNull(t *testing.T) {
	h := calctest.Load(t, "example.toml")
	g := h.EditWire(0, func(w *model.Wire) { w.Spec = "own" })
	g = g.SetReel("own", "22", 1.2)
	s := calc.Complete(g, calctest.Catalogue(t), nil)
	if _, ok := calctest.Snag(s, "wire.spec", "101"); !ok || s.Branches[0].Gram.Set || s.Totals.Gram.Set {
		t.Errorf("want wire.spec and no mass, got %+v", s.Snags)
	}
	if text := figures(t, s); !strings.Contains(text, "\"mass_g\": null") {
		t.Error("the figures show a mass")
	}
}
