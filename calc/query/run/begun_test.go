package run_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/built"
	"contralay/calc/query/record"
	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// otherShelf is a harness by a catalogue whose wire is 1.20 mm where it was 1.09, and whose tubes have walls twice
// as thick; more entries go over that.
func otherShelf(s *sheet.Sheet, h *model.Harness) *sheet.Sheet {
	cat := *s.Base
	wire := cat.Wires[catalogue.WireKey{Spec: "own", Size: "16"}]
	wire.OverMM = 1.20
	cat.Tubes = slices.Clone(cat.Tubes)
	for k := range cat.Tubes {
		cat.Tubes[k].WallMM *= 2
	}
	return calc.Build(h, catalogue.Merge(&cat, &catalogue.Catalogue{Wires: map[catalogue.WireKey]catalogue.Wire{wire.Key(): wire}}), nil)
}

// A serial keeps the figures of the catalogue that it was begun with: the limits of its layers, what is expected over
// its sheath. The sheet says once what is otherwise now; it is asked for until somebody with a name keeps it or
// takes the new figures, and both are a deviation.
func TestSerialKeepsItsCatalogue(t *testing.T) {
	s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "", calctest.CoverText("sheath", "  part = \"AS23053/16 9.5\"\n"))
	h := s.H.EditBuild("1", func(b *model.Build) {
		b.GoesBy, b.Shelf = built.GoesBy(s), built.Shelf(s)
		b.Readings = []model.Reading{{Branch: "T", Layer: 2, OverMM: []unit.Millimetre{s.Branches[0].Layers[2].OverMM}}}
		b.Tubes = []model.Recovered{{Branch: "T", OverMM: 7}}
	})
	n := otherShelf(s, h)
	step := run.RunStep{Kind: run.LayStep, Of: "T", Layer: 2}
	over := func(s *sheet.Sheet, b *model.Build) float64 {
		v, _ := run.SheetOver(s, b, step)
		return float64(v)
	}
	was, is := over(s, &h.Builds[0]), over(n, nil)
	if is < was*1.08 || math.Abs(over(n, &h.Builds[0])-was) > 0.01 {
		t.Errorf("begun at %.3f, by the catalogue of today %.3f, the serial has %.3f", was, is, over(n, &h.Builds[0]))
	}
	old := &model.Build{Serial: "2"} // begun before the figures were kept
	if math.Abs(over(n, old)-is) > 1e-9 {
		t.Errorf("a record that does not say has %.3f", over(n, old))
	}
	r, _ := record.Of(n, "1")
	then, _ := record.Of(calc.Build(h, s.Base, nil), "1")
	k := slices.IndexFunc(r.Layers, func(l record.Layer) bool { return l.Layer == 2 })
	if l, o := r.Layers[k], then.Layers[k]; l.Told != run.AsSheet || math.Abs(float64(l.LeastMM-o.LeastMM)) > 0.01 ||
		math.Abs(float64(l.MostMM-o.MostMM)) > 0.01 {
		t.Errorf("the certificate has %+v, had %+v", l, o)
	}
	if math.Abs(float64(r.Tubes[0].SheetMM-then.Tubes[0].SheetMM)) > 0.01 || then.Tubes[0].SheetMM == n.Branches[0].Sheath.Verdict.OverMM {
		t.Errorf("over the sheath %v, was %v, today %v", r.Tubes[0].SheetMM, then.Tubes[0].SheetMM, n.Branches[0].Sheath.Verdict.OverMM)
	}
	if g, said := calctest.Snag(n, "built.over", ""); said {
		t.Errorf("a layer that is as it was begun: %s", g.Says)
	}

	c := built.Since(n, &h.Builds[0])
	if len(c.Differences) != 1 || c.Again != 0 ||
		!strings.Contains(c.Says(), "wire own, 16 AWG, is 1.20 mm (1.15 to 1.25), was 1.09 mm (1.04 to 1.14)") ||
		!strings.Contains(c.Says(), "the wall of AS23053/16 9.5 is ") {
		t.Fatalf("it says %s", c.Says())
	}
	g, said := calctest.Snag(n, "built.since", "serial 1")
	if !said || g.Level != sheet.Note || len(calctest.SaidOf(n, "built.since")) != 1 {
		t.Errorf("the sheet says %v %+v", said, g)
	}
	moved := run.Moved(n, &h.Builds[0])
	if want := []string{"T centre was 1.0 to 1.1 mm, would be 1.2 to 1.3", "", "and the limits of 1 more layer"}; len(moved) != 3 ||
		moved[0] != want[0] ||
		!strings.HasPrefix(moved[1], "T layer 1 was 3.1 to 3.4 mm, would be 3.5 to 3.8") || moved[2] != want[2] {
		t.Errorf("the limits that move: %q", moved) // one wire: its own band; 1 · 6: three times that
	}
	for name, settle := range map[string]func(b *model.Build){
		"kept":  func(b *model.Build) { c.Differences[0].Keep(b, "14", "2026-05-12 08:10") },
		"taken": func(b *model.Build) { c.Differences[0].Take(n, b, "14", "2026-05-12 08:10") },
		"finished": func(b *model.Build) {
			b.Tick(model.Ticked{Key: built.HoldLoaded})
		},
	} {
		done := h.EditBuild("1", settle)
		m := otherShelf(s, done)
		b := &done.Builds[0]
		if left := built.Since(m, b); len(left.Differences) > 0 {
			t.Errorf("%s, and still asked: %s", name, left.Says())
		}
		want := was
		if name == "taken" {
			want = is
		}
		if math.Abs(over(m, b)-want) > 0.01 {
			t.Errorf("%s: %.3f, not %.3f", name, over(m, b), want)
		}
		if n := len(b.Apart); n != 1 && name != "finished" || n == 1 && (b.Apart[0].By.V != "14" || b.Apart[0].On.V == "") {
			t.Errorf("%s: %+v", name, b.Apart)
		}
	}
	kept := h.EditBuild("1", func(b *model.Build) { c.Differences[0].Keep(b, "14", "") })
	kept = kept.EditBuild("1", func(b *model.Build) { built.Strike(b, 0) })
	if c := built.Since(otherShelf(s, kept), &kept.Builds[0]); len(c.Differences) != 1 {
		t.Error("struck out, and not asked again")
	}
	reel := h.SetReel("own", "16", 1.11)
	if c := built.Since(otherShelf(s, reel), &reel.Builds[0]); strings.Contains(c.Says(), "wire own, 16") {
		t.Errorf("a reel that was measured, and it says %s", c.Says())
	}
	if s := calc.Build(h, s.Base, nil); run.AsBegun(s, &h.Builds[0]) != s || len(built.Since(s, &h.Builds[0]).Differences) > 0 {
		t.Error("nothing has changed, and something is said")
	}
}

// What the shop has learned of a tube's wall since a serial was begun does not move what is expected over its sheath.
func TestSerialKeepsItsWalls(t *testing.T) {
	s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "", calctest.CoverText("sheath", "  part = \"AS23053/16 9.5\"\n"))
	n := calc.Build(s.H, calctest.Corrected(s, catalogue.Correction{Of: "wall, AS23053/16", Bias: 0.2}), nil)
	was, is := s.Branches[0].Sheath.Verdict.OverMM, n.Branches[0].Sheath.Verdict.OverMM
	for _, c := range []struct {
		begun []string
		want  unit.Millimetre
	}{{[]string{}, was}, {[]string{"wall, AS23053/16: +20.0 %"}, is}, {nil, is}} {
		got := run.AsBegun(n, &model.Build{GoesBy: c.begun}).Branches[0].Sheath.Verdict.OverMM
		if was == is || math.Abs(float64(got-c.want)) > 1e-9 {
			t.Errorf("begun by %q: %v, not %v", c.begun, got, c.want)
		}
	}
}

// The limit of a net that is not rung out yet goes by the ohms that the catalogue had.
func TestTestsKeepTheirCatalogue(t *testing.T) {
	s := calctest.Laid(t, "example")
	b := &model.Build{Serial: "1", EachTest: model.Some(true), GoesBy: []string{}, Shelf: built.Shelf(s)}
	cat := *s.Base
	cat.Wires = map[catalogue.WireKey]catalogue.Wire{}
	for key, w := range s.Base.Wires {
		w.OhmPerKm *= 40
		cat.Wires[key] = w
	}
	n := calc.Build(s.H, &cat, s)
	limits := func(s *sheet.Sheet) (out []float64) {
		for _, p := range run.Pieces(s, run.RunStep{Key: run.HoldBare, Kind: run.HoldStep}) {
			out = append(out, p.Check.Limit)
		}
		return out
	}
	if was := limits(s); len(was) == 0 || slices.Equal(was, limits(n)) || !slices.Equal(was, limits(run.AsBegun(n, b))) {
		t.Errorf("limits %v, today %v, of the serial %v", was, limits(n), limits(run.AsBegun(n, b)))
	}
}
