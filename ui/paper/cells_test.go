package paper

import (
	"slices"
	"strings"
	"testing"

	"contralay/calc/formula/learn"
	"contralay/calc/formula/plan"
	"contralay/calc/phase/ends"
	"contralay/calc/phase/threading"
	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// What stands in a cell, by hand: a dash of what is not known, however little more than nothing it is.
func TestCellsByHand(t *testing.T) {
	h := &model.Harness{Branches: []model.Branch{{ID: "T1"}, {ID: "L1"}}, Terminations: []model.Termination{{ID: "A"}}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h)}
	m := makerOf(s)
	mm := unit.MM
	load := func(change func(w *sheet.Wire)) loadRow {
		w := &sheet.Wire{Circuit: 0.126}
		change(w)
		return loadRow{&model.Wire{}, w}
	}
	none := load(func(*sheet.Wire) {})
	known := load(func(w *sheet.Wire) {
		w.Bound, w.HottestC, w.Drop = model.Some(sheet.Limit{Amps: 7.654}), model.Some[unit.Celsius](45.6), model.Some[unit.Volt](9)
	})
	feed := func(amps float64) feedRow { return feedRow{model.Feed{Amps: model.Some(unit.Ampere(amps))}, ""} }
	long := &model.Branch{ToleranceMM: []unit.Millimetre{2, 8}}
	for what, c := range map[string][2]string{
		"may carry": {mayCarry(known), "7.7"}, "may not": {mayCarry(none), "-"}, "hottest": {hottest(known), "46"},
		"not hot": {hottest(none), "-"}, "drop": {dropToExpect(known), "0.13"}, "no drop": {dropToExpect(none), "-"},
		"rated": {rated(feed(7.46)), "7.5"}, "not rated": {rated(feedRow{}), "-"}, "hours": {hours(model.Some(3)), "3"},
		"no hours": {hours(model.Opt[int]{}), "-"},
		"shorter":  {mayBe(mm, long, 0), mm.Length(2)}, "longer": {mayBe(mm, long, 1), mm.Length(8)}, "neither": {mayBe(mm,
			&model.Branch{}, 1), "-"},
		"diameter": {diameter(mm, 0.5), mm.Diameter(0.5)}, "no diameter": {diameter(mm, 0), "-"}, "fine": {fine(mm, 0.5), mm.Fine(0.5)},
		"not fine": {fine(mm, 0), "-"}, "strip": {strip(mm, 0.5), mm.Diameter(0.5)}, "no strip": {strip(mm, 0), "-"},
		"surroundings": {surroundings(branchRow{&model.Branch{Environment: []model.Surrounding{"a", "b"}}, &sheet.Branch{Ambient: 85}}),
			"a, b, 85 C"}, "air alone": {surroundings(branchRow{&model.Branch{}, &sheet.Branch{Ambient: 85.4}}), "85 C"},
		"sleeve": {m.sleeveLies(spliceRow{entered: &model.Splice{Toward: model.Some("T1"), OffsetMM: model.Some[unit.Millimetre](60)}}),
			mm.Length(60) + " mm along T1"}, "centre": {m.sleeveLies(spliceRow{entered: &model.Splice{}}), "at its centre"},
		"side": {labelSide(lists.Label{OnHours: 1}), "1 o'clock"}, "no side": {labelSide(lists.Label{}), "-"},
		"bore":            {m.bore(threadRow{Threaded: threading.Threaded{BoreMM: 0.5, PassMM: 0.25}}), mm.Fine(0.5)},
		"pass":            {m.toPass(threadRow{Threaded: threading.Threaded{BoreMM: 0.5, PassMM: 0.25}}), mm.Fine(0.25)},
		"no bore":         {m.bore(threadRow{Threaded: threading.Threaded{PassMM: 5}}), "-"},
		"nothing to pass": {m.toPass(threadRow{Threaded: threading.Threaded{PassMM: 5}}), "-"},
		"capped": {m.capLies(ends.Cap{Branch: 1, FoldMM: 40, AtMM: 360}), "capped, folded back " + mm.Length(40) + " mm; its cap at " +
			mm.Length(360) + " of L1"}, "capped at its place": {m.capLies(ends.Cap{Branch: -1, Place: "J1"}), "capped at J1"},
		"on the first branch": {m.cappedOn(spareRow{cap: &ends.Cap{}}), "T1"},
		"turn":                {m.unitTurn(unitRow{worked: &sheet.Unit{LayMM: 26.2}}), mm.Length(25)},
		"no turn":             {m.unitTurn(unitRow{worked: &sheet.Unit{}}), "-"},
		"solder sleeve":       {solderSleeve(unitRow{sleeve: 1}), "size 1"},
		"none":                {solderSleeve(unitRow{}), "-"},
		"together":            {crimpedWire(lists.CrimpRow{Size: "22 + 22", Together: "19"}), "22 + 22 AWG, together as 19"},
		"alone":               {crimpedWire(lists.CrimpRow{Size: "22"}), "22 AWG"},
		"pulled":              {crimpPull(lists.CrimpRow{PullN: 0.6}), "1"}, "not pulled": {crimpPull(lists.CrimpRow{}), "-"},
		"inserted by": {crimpInsertion(lists.CrimpRow{Contact: "20", Circular: true}), "M81969/14-10"},
		"not round":   {crimpInsertion(lists.CrimpRow{Contact: "20"}), "-"},
		"not known":   {crimpInsertion(lists.CrimpRow{Contact: "x", Circular: true}), "-"},
		"order":       {billOrder(lists.BillRow{Stock: catalogue.Stock{Number: "N", Supplier: "S"}}), "N from S"},
		"packs":       {billOrder(lists.BillRow{Packs: 1, Stock: catalogue.Stock{Number: "N", Pack: 50}}), "N, 1 pack of 50"},
		"more packs": {billOrder(lists.BillRow{Packs: 3, Metres: true, Stock: catalogue.Stock{Number: "N", Pack: 0.5}}),
			"N, 3 packs of " + billed(lists.BillRow{Metres: true}, 0.5)}, "no pack": {billPack(lists.BillRow{}), "-"},
		"no packs": {billPacks(lists.BillRow{}), "-"},
		"one pack": {billPacks(lists.BillRow{Packs: 1}), "1"}, "plural": {plural(2, "x") + plural(1, "x") + plural(0, "x"), "2 xs1 x0 xs"},
		"open":       {bought(m).billNote(lists.BillRow{Open: "why", Says: "s"}), "OPEN: why; s"},
		"open alone": {bought(m).billNote(lists.BillRow{Open: "why"}), "OPEN: why"},
		"note":       {bought(m).billNote(lists.BillRow{Says: "s"}), "s"},
	} {
		if c[0] != c[1] {
			t.Errorf("%s: %q, by hand %q", what, c[0], c[1])
		}
	}
	h.Builds = []model.Build{{Again: []model.Again{{End: "A:1", Times: 2}, {End: "A:2", Times: 1}}}, {Again: []model.Again{{End: "A:2",
		Times: 2}, {End: "B:1", Times: 1}}}}
	if got := m.usedLoops(); len(got) != 2 || got["A"] != 3 || got["B"] != 1 { // of A:2, which was made anew most often
		t.Errorf("%v", got)
	}
}

// What a shop learns in words, by hand.
func TestLessonsByHand(t *testing.T) {
	for v, want := range map[float64]string{0.0123: "+1.2 %", -0.0123: "-1.2 %", 0: "0.0 %", 0.0001: "+0.0 %"} {
		if got := percent(v); got != want {
			t.Errorf("%v: %q, want %q", v, got, want)
		}
	}
	l := learn.Lesson{Group: "over", N: 3, Bias: 0.02, Low: -0.01, High: 0.05, Spread: 0.031, Confidence: 0.95, Bounded: true,
		Enough: true, Matters: true, Skipped: 1, Outliers: []learn.Outlier{{Of: "T1", Ratio: 1.25}},
		LeftOut: []learn.Outlier{{Of: "T2", Ratio: 0.75}}}
	want := []string{"over: 3 readings, measured +2.0 % of the prediction (-1.0 % to +5.0 % at 95 %), spread 3.1 %",
		"  enough to correct by", "  odd one out: T1, +25.0 % of the prediction; look at it before you accept, or leave it out by its name",
		"  left out: T2, -25.0 % of the prediction", "  1 skipped: no two sizes above zero"}
	if got := Lesson(l); !slices.Equal(got, want) {
		t.Errorf("%s", strings.Join(got, "\n"))
	}
	l.Bounded, l.Enough, l.Skipped, l.Outliers, l.LeftOut, l.Least, l.N = false, false, 0, nil, nil, 5, 1
	if got := Lesson(l); !slices.Equal(got, []string{"over: 1 readings, measured +2.0 % of the prediction",
		"  too few: 5 at least; nothing is corrected"}) {
		t.Errorf("%q", got)
	}
	if _, ok := Accepted(l, "d", "f"); ok {
		t.Error("too few are accepted")
	}
	c := &catalogue.Catalogue{Corrections: []catalogue.Correction{{Of: "x", On: "d0"}, {Of: "over", Bias: 0.01, Readings: 5, On: "d1"},
		{Of: "over", Bias: 0.02, Spread: 0.031, Readings: 7, On: "d2"}}}
	if got := InUse(c, "over"); got != "over: +2.0 %, spread 3.1 %, 7 readings; accepted: +1.0 % of 5 d1, then +2.0 % of 7 d2" {
		t.Errorf("%q", got)
	}
	c.Corrections = append(c.Corrections, catalogue.Correction{Of: "over", Withdrawn: true, On: "d3"})
	if got := InUse(c, "over"); got != "over: not corrected; +1.0 % of 5 d1, then +2.0 % of 7 d2, then withdrawn d3" {
		t.Errorf("%q", got)
	}
}

// What the bench shares with paper, and a list of lay-ups of which one has a sheath of a kind.
func TestSharedWithTheBench(t *testing.T) {
	if got := Colour("96"); got != "96  white/blue" || Colour("own") != "own" {
		t.Errorf("%q", got)
	}
	if Turn(62) != 60 || Turn(63) != 65 {
		t.Errorf("%v, %v", Turn(62), Turn(63))
	}
	ps := []plan.Plan{{Cost: 8, Proven: true, Layers: []plan.Layer{{Sizes: []unit.Millimetre{1}, N: []int{1}}}}}
	got := Plans(ps, []*sheet.Branch{{Sheath: sheet.Sheath{Part: "RNF 9.5"}}})
	if !strings.HasSuffix(got,
		"Proven: no lay-up costs less than the first.\nSheath: RNF, on a straight branch of 1000 mm. The g/m do not "+
			"count it.\nbend: the least radius in mm.\n") {
		t.Errorf("%s", got)
	}
	if got := Plans(ps, nil); !strings.HasSuffix(got, "than the first.\n") || strings.Contains(got, "Sheath:") {
		t.Errorf("%s", got)
	}
}
