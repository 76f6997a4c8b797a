package run

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// thickCentre is six of 22 AWG round one of 20.
func thickCentre(t *testing.T) *sheet.Sheet {
	t.Helper()
	return calctest.Carrying(t, 20, "", append([]string{"20 1"}, calctest.Repeated(6, "22 1")...), [][]int{{0}, {1, 2, 3, 4, 5, 6}}, "")
}

// A reading of the layer of 22 AWG is explained by that size, not by the one in the centre: with such a reel the layer comes to what was
// read, and the branch to what is said of it. Where the shop learned that two layers stand 5 % off, so does the layer.
func TestReadingIsOfItsOwnSize(t *testing.T) {
	s := thickCentre(t)
	for _, bias := range []float64{0, 0.05} {
		if bias > 0 {
			s = calc.Build(s.H, calctest.Corrected(s, catalogue.Correction{Of: "over, 2 layers", Bias: unit.Ratio(bias)}), nil)
		}
		read := s.Branches[0].Layers[1].OverMM*unit.Millimetre(1+bias) + 0.09
		e, ok := ExplainReading(s, nil, 0, 1, []unit.Millimetre{read})
		if !ok || e.Spec != "AS22759/32" || e.Size != "22" || e.Told != AsWire || !(e.AsIfMM > e.NominalMM) {
			t.Fatalf("%v %+v", ok, e)
		}
		is := calc.Build(s.H.SetReel(e.Spec, e.Size, e.AsIfMM), s.Base, nil).Branches[0]
		calctest.Near(t, "layer as if", float64(is.Layers[1].OverMM)*(1+bias), float64(read), 0.002)
		calctest.Near(t, "branch as if", float64(e.OverMM), float64(is.OverMM), 1e-9)
	}
}

// What a layer teaches it teaches of the size that it is of, the first wire of the file among them.
func TestLayersTeachTheirOwnSize(t *testing.T) {
	s := thickCentre(t)
	s = calc.Build(s.H.EditBuild("1", func(b *model.Build) {
		for k := range 2 {
			b.Readings = append(b.Readings, model.Reading{Branch: "T1", Layer: k, OverMM: []unit.Millimetre{2, 4}})
		}
	}), s.Base, nil)
	var got []string
	for _, r := range Measured(s, "loom") {
		got = append(got, fmt.Sprintf("%s %s %v", r.Group, r.Of, r.Measured))
	}
	want := []string{"over, 1 layer loom serial 1 T1 the centre 3", "over, AS22759/32 20 loom serial 1 T1 the centre 3",
		"over, 2 layers loom serial 1 T1 layer 1 3", "over, AS22759/32 22 loom serial 1 T1 layer 1 3"}
	if !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

// A reading is told at its edges: as far as callipers tell beyond the tolerance it is still that of the wire, and no further.
func TestToldAtTheEdges(t *testing.T) {
	e := Explained{SheetMM: 3, LeastMM: 2.9, MostMM: 3.2}
	const callipers unit.Millimetre = 0.05
	most, least := e.MostMM+callipers, e.LeastMM-callipers
	next := func(v unit.Millimetre, to float64) unit.Millimetre {
		return unit.Millimetre(math.Nextafter(float64(v), to))
	}
	for read, want := range map[unit.Millimetre]Told{3: AsSheet, 3.04: AsSheet, 2.96: AsSheet, 3.06: AsWire, most: AsWire,
		next(most, 9): TooThick, least: AsWire, next(least, 0): TooThin} {
		if e.ReadMM = read; tellOf(e) != want {
			t.Errorf("%v: %v, want %v", read, tellOf(e), want)
		}
	}
}

// Written down is what is proposed: a lay-up; a sheath where it is known and the branch names no cover.
func TestWrittenDown(t *testing.T) {
	of := []model.Layer{{Of: []string{"a"}}, {Of: []string{"b", "c"}}}
	tape := []model.Cover{{What: model.CoverTape}}
	for _, c := range []struct {
		lay, sheath, tube bool
		covers            []model.Cover
		layers, written   int
	}{{true, true, true, nil, 2, 1}, {true, true, false, nil, 2, 0}, {true, false, true, nil, 2, 0}, {false, true, true, nil, 0, 1},
		{false, true, true, tape, 0, 0}, {false, false, false, nil, 0, 0}} {
		s := &sheet.Sheet{H: &model.Harness{Branches: []model.Branch{{ID: "T", Covers: c.covers}}},
			Branches: []sheet.Branch{{Proposed: c.lay, As: of, Make: model.MakeLaid}}}
		sh := &s.Branches[0].Sheath
		sh.Proposed, sh.Part, sh.Tube.Set = c.sheath, "own 1", c.tube
		b := Written(s).Branches[0]
		if len(b.Layers) != c.layers || b.Make.Set != c.lay || len(b.Covers) != len(c.covers)+c.written ||
			c.written > 0 && (b.Covers[0].What != model.CoverSheath || b.Covers[0].Part.V != "own 1") {
			t.Errorf("%+v: %+v", c, b)
		}
	}
}

// A wall by hand: 8 mm with 0.4 of tape beneath, a bore of 4: over² = 8.4² + 4·0.6·4.6 = 81.6 is a wall of 0.6, where the tube has 0.5, or
// what the file gives to this part and to no other.
func TestWallOnWhatLiesBeneath(t *testing.T) {
	h := &model.Harness{Branches: []model.Branch{{ID: "T"}}, Parts: []model.Part{{ID: "other", WallMM: model.Some[unit.Millimetre](0.9)},
		{ID: "own 1"}}}
	s := &sheet.Sheet{H: h, Base: &catalogue.Catalogue{Tubes: []catalogue.Tube{{ID: "own 1", Kind: "own", WallMM: 0.5, RecoveredMM: 4}}},
		Branches: []sheet.Branch{{OverMM: 8}}}
	sh := &s.Branches[0].Sheath
	sh.Part, sh.BeneathMM, sh.Tube = "own 1", 0.4, model.Some(catalogue.Tube{ID: "own 1", Kind: "own"})
	for _, want := range []float64{0.5, 0.55} {
		got := wallReading(s, "loom", 0, &model.Build{}, model.Recovered{Branch: "T", OverMM: unit.Millimetre(math.Sqrt(81.6))})
		if len(got) != 1 || got[0].Predicted != want || math.Abs(got[0].Measured-0.6) > 1e-9 || got[0].Group != "wall, own" ||
			got[0].Of != "loom T" {
			t.Errorf("%+v, want %v", got, want)
		}
		h.Parts[1].WallMM = model.Some[unit.Millimetre](0.55)
	}
}

// What the sheet stops for is counted before anything is built, and its first is named; what it only warns of holds nothing.
func TestHeldByStops(t *testing.T) {
	stop := func(where string) sheet.Snag {
		return sheet.Snag{Level: sheet.Stop, Rule: "own", Where: where, Says: "It is too short"}
	}
	warn := sheet.Snag{Level: sheet.Warn, Rule: "own", Where: "W", Says: "It is long"}
	for _, c := range []struct {
		snags []sheet.Snag
		says  string
	}{
		{nil, ""}, {[]sheet.Snag{warn}, ""},
		{[]sheet.Snag{warn, stop("T1")}, "the sheet has 1 stop; the worst: T1: It is too short"},
		{[]sheet.Snag{stop("T1"), warn, stop("T2")}, "the sheet has 2 stops; the worst: T1: It is too short"},
		{[]sheet.Snag{stop("T1"), stop("T2"), stop("T3")}, "the sheet has 3 stops; the worst: T1: It is too short"},
	} {
		h, holds := stopsHold(&sheet.Sheet{Snags: c.snags})
		if holds != (c.says != "") || holds && (h.Says != c.says || h.Key != HoldStops || h.Kind != HoldStep) {
			t.Errorf("%+v: %v %+v, want %q", c.snags, holds, h, c.says)
		}
	}
}
