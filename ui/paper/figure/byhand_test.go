package figure

import (
	"encoding/json"
	"testing"

	"contralay/calc/formula/cover"
	"contralay/calc/formula/plan"
	"contralay/calc/formula/protect"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// reads compares figures as JSON with what was written by hand.
func reads(t *testing.T, what string, v any, want string) {
	t.Helper()
	text, err := json.Marshal(v)
	if err != nil {
		t.Fatal(err)
	}
	if string(text) != want {
		t.Errorf("%s:\n%s, by hand\n%s", what, text, want)
	}
}

// Totals, ends and feeds, by hand: metres to a tenth of a millimetre, grams to a milligram, amperes to a milliampere; null what is not
// known.
func TestTotalsByHand(t *testing.T) {
	s := &sheet.Sheet{H: &model.Harness{Terminations: []model.Termination{{ID: "P1"}}, Feeds: []model.Feed{{ID: "F1"}}}}
	s.Totals.Wires, s.Totals.Units, s.Totals.Spares, s.Totals.Fillers, s.Totals.WireMM = 13, 1, 2, 4, 9123.4567
	reads(t, "totals", figureTotals(s), `{"wires":13,"units":1,"spares":2,"fillers":4,"wire_m":9.1235,"mass_g":null}`)
	s.Totals.Gram = model.Some[unit.Gram](40.12345)
	reads(t, "totals", figureTotals(s), `{"wires":13,"units":1,"spares":2,"fillers":4,"wire_m":9.1235,"mass_g":40.123}`)

	s.Terms = []sheet.Term{{Used: 6, Spare: 2, Reserved: 1, Blank: 3, Contacts: 7, SealPlugs: 4}}
	reads(t, "end", term(s, 0), `{"id":"P1","used":6,"spare":2,"reserved":1,"blank":3,"contacts":null,"seal_plugs":null}`)
	s.Terms[0].HasContacts = true
	reads(t, "end", term(s, 0), `{"id":"P1","used":6,"spare":2,"reserved":1,"blank":3,"contacts":7,"seal_plugs":4}`)

	s.Feeds = []sheet.Feed{{Load: 1.23456, Most: 2.34567}}
	reads(t, "feed", feed(s, 0), `{"id":"F1","load_a":null,"most_a":null,"opens_a":null}`)
	s.Feeds[0].Device = model.Some(protect.Device{Kind: protect.Electronic, Rating: 3.45678}) // it opens at what it is set to
	reads(t, "feed", feed(s, 0), `{"id":"F1","load_a":1.235,"most_a":2.346,"opens_a":3.457}`)
}

// A wire by hand: nothing of what is not known; its drop only where it has a way.
func TestWireByHand(t *testing.T) {
	s := &sheet.Sheet{H: &model.Harness{Wires: []model.Wire{{ID: "1"}}, Branches: []model.Branch{{ID: "T1"}, {ID: "L1"}}}}
	s.Wires = []sheet.Wire{{Drop: model.Some[unit.Volt](0.123456789), Cut: 500}}
	const none = `"carries_a":null,"limit_a":null,"limited_by":null,"hottest_c":null}`
	reads(t, "no way", wire(s, 0), `{"id":"1","cut_mm":null,"finished_mm":null,"path":[],"drop_v":null,`+none)
	w := &s.Wires[0]
	w.Path, w.Finished = []int{1, 0}, 450.12345
	reads(t, "a way", wire(s, 0), `{"id":"1","cut_mm":500,"finished_mm":450.123,"path":["L1","T1"],"drop_v":0.12346,`+none)
	w.Drop, w.Finished = model.Opt[unit.Volt]{}, 0.5
	w.Heats, w.HottestC = 1.23456, model.Some[unit.Celsius](45.678)
	w.Bound = model.Some(sheet.Limit{Amps: 7.6543, Where: "heat in T1"})
	reads(t, "warm", wire(s, 0),
		`{"id":"1","cut_mm":500,"finished_mm":0.5,"path":["L1","T1"],"drop_v":null,"carries_a":1.235,"limit_a":7.65,`+
			`"limited_by":"heat in T1","hottest_c":45.68}`)
}

// A layer by hand: the centre has no beds and no room; what is straight has no lay; what has no filler no size of it.
func TestLayerByHand(t *testing.T) {
	l := sheet.Layer{Members: []sheet.Member{{ID: "1"}, {ID: "2"}}, Spares: 1, Takes: 6, Room: 2, Gap: 0.12345678, BedMM: 1.23456,
		OverMM: 5.43215, TapeMM: 5.5, LayDeg: 12.345678,
		Hand: "LH", Loss: 0.012345678, ProudMM: 0.1234, FillerMM: 1.1, Turns: 3.45678}
	b := &sheet.Branch{Layers: []sheet.Layer{l, l}}
	const first, over = `"members":["1","2"],"fillers":0,"filler_mm":null,"spares":1,`, `"over_mm":5.432,"tape_mm":5.5,`
	const bare = `"built_to_mm":null,"built_mm":null,"built_of":null,"lay_mm":null,"turns":null,"lay_deg":12.3457,"hand":"LH",` +
		`"lay_loss":0.012346,"proud_mm":0.123}`
	reads(t, "centre", layer(b, 0), `{"index":0,`+first+`"takes":null,"room":null,"gap":null,"bed_mm":null,`+over+bare)
	reads(t, "layer 1", layer(b, 1), `{"index":1,`+first+`"takes":6,"room":2,"gap":0.123457,"bed_mm":1.235,`+over+bare)
	c := &b.Layers[0]
	c.BuiltMM, c.LayMM, c.Fillers = 0.25, 65, 1
	const lay = `"lay_mm":65,"turns":3.4568,"lay_deg":12.3457,"hand":"LH","lay_loss":0.012346,"proud_mm":0.123}`
	const filled = `{"index":0,"members":["1","2"],"fillers":1,"filler_mm":1.1,"spares":1,"takes":null,"room":null,"gap":null,` +
		`"bed_mm":null,`
	reads(t, "built up", layer(b, 0), filled+over+`"built_to_mm":5.432,"built_mm":0.25,"built_of":null,`+lay)
	c.BuiltOf = "tape X"
	reads(t, "built up of something", layer(b, 0), filled+over+`"built_to_mm":5.432,"built_mm":0.25,"built_of":"tape X",`+lay)
	reads(t, "nothing in it", layer(&sheet.Branch{Layers: []sheet.Layer{{}}}, 0).Members, `[]`)
}

// A branch by hand: without a diameter nothing but its name; turns only where its length is known.
func TestBranchByHand(t *testing.T) {
	s := &sheet.Sheet{H: &model.Harness{Branches: []model.Branch{{ID: "T1"}}}}
	s.Branches = []sheet.Branch{{Make: model.MakeTwisted, Proposed: true, OverMinMM: 5, OverMaxMM: 6, TapeMM: 5.6,
		Gram:   model.Some[unit.Gram](1.23456),
		Layers: []sheet.Layer{{LayMM: 60, Turns: 3}}, Bend: sheet.Bend{MinMM: 32.1, Rule: "6 x OD"}}}
	const null = `"mass_g":null,"hottest_c":null,"layers":[],"bend":null,"sheath":null,"covers":[]}`
	reads(t, "nothing", branch(s, 0),
		`{"id":"T1","make":"twisted","proposed":true,"over_mm":null,"over_min_mm":null,"over_max_mm":null,"tape_mm":null,`+null)
	b := &s.Branches[0]
	b.OverMM = 5.4
	const bend = `"bend":{"min_mm":32.1,"rule":"6 x ` +
		`OD","mismatch_mm":null},"sheath":{"part":null,"proposed":false,"slides":null,"grips":null,"slide_mm":null,"grip_ratio":null,` +
		`"wall_mm":null,"over_mm":null,"cut_mm":null},"covers":[]}`
	got := branch(s, 0)
	if len(got.Layers) != 1 || got.Layers[0].Turns != nil || *got.Layers[0].LayMM != 60 {
		t.Errorf("%+v", got.Layers)
	}
	got.Layers = nil
	reads(t, "an OD", got,
		`{"id":"T1","make":"twisted","proposed":true,"over_mm":5.4,"over_min_mm":5,"over_max_mm":6,"tape_mm":5.6,"mass_g":1.235,`+
			`"hottest_c":null,"layers":null,`+bend)
	s.H.Branches[0].LengthMM = 400
	b.Learned.Of, b.Learned.PredictedMM, b.Learned.Spread, b.Warm.Known, b.Warm.HottestC = "over, 2 layers", 5.1, 0.02, true, 45.678
	b.Gram = model.Opt[unit.Gram]{}
	b.Bend.MismatchMM = model.Some[unit.Millimetre](0.5)
	got = branch(s, 0)
	if got.Layers[0].Turns == nil {
		t.Error("the turns of a branch of a known length are not told")
	}
	got.Layers, got.Sheath = nil, nil
	// 5.4 − 5.1 = 0.3 was learned, give or take 0.02 · 5.4 = 0.108
	reads(t, "learned", got,
		`{"id":"T1","make":"twisted","proposed":true,"over_mm":5.4,"over_min_mm":5,"over_max_mm":6,"tape_mm":5.6,`+
			`"predicted_over_mm":5.1,"learned_over_mm":0.3,`+
			`"learned_spread_mm":0.108,"mass_g":null,"hottest_c":45.68,"layers":null,"bend":{"min_mm":32.1,"rule":"6 x `+
			`OD","mismatch_mm":0.5},"sheath":null,"covers":[]}`)
}

// A sheath and the covers round it, by hand: what it is only where the catalogue has it, its wall only where it wraps; it lies between
// those beneath it and those over it.
func TestCoversByHand(t *testing.T) {
	sh := sheet.Sheath{Part: "X 3", FromMM: 35, ToMM: 375, CutMM: 380.5, Proposed: true}
	const unknown = `"slides":null,"grips":null,"slide_mm":null,"grip_ratio":null,"wall_mm":null,"over_mm":null,"cut_mm":null}`
	reads(t, "unknown", sheath(&sh), `{"part":"X 3","proposed":true,`+unknown)
	reads(t, "none", sheath(&sheet.Sheath{Tube: model.Some(catalogue.Tube{}), CutMM: 3}), `{"part":null,"proposed":false,`+unknown)
	sh.Tube = model.Some(catalogue.Tube{})
	sh.Verdict.SlideMM, sh.Verdict.GripRatio, sh.Verdict.WallMM, sh.Verdict.OverMM = 1.23456, 1.123456, 0.9, 7.2
	for _, c := range []struct {
		stopSlide, slides, stopLoose, grips bool
		want                                string
	}{{false, true, false, true, `"slides":true,"grips":true`}, {true, true, false, false, `"slides":false,"grips":false`}, {false, false,
		true, true, `"slides":false,"grips":false`}} {
		v := &sh.Verdict
		v.StopSlide, v.Slides, v.StopLoose, v.Grips = c.stopSlide, cover.Advice{Kept: c.slides}, c.stopLoose, cover.Advice{Kept: c.grips}
		reads(t, "known", sheath(&sh), `{"part":"X 3","proposed":true,`+c.want+
			`,"slide_mm":1.235,"grip_ratio":1.1235,"wall_mm":null,"over_mm":null,"cut_mm":380.5}`)
	}
	sh.Verdict.Wraps = true
	reads(t, "wraps", sheath(&sh), `{"part":"X `+
		`3","proposed":true,"slides":false,"grips":false,"slide_mm":1.235,"grip_ratio":1.1235,"wall_mm":0.9,"over_mm":7.2,"cut_mm":380.5}`)

	under := sheet.Covered{Under: true, What: model.CoverTape, FromMM: 1, ToMM: 2, CutMM: 0.5, ThickMM: 0.3, OverMM: 9}
	over := sheet.Covered{What: model.CoverSleeve, Part: "Y", FromMM: 3, ToMM: 4, OverMM: 9}
	tape := `{"what":"tape","part":null,"from_mm":1,"to_mm":2,"thick_mm":0.3,"over_mm":9,"cut_mm":0.5,"goes_on":"` +
		string(under.GoesOn()) + `"}`
	sleeve := `{"what":"sleeve","part":"Y","from_mm":3,"to_mm":4,"thick_mm":null,"over_mm":null,"cut_mm":null,"goes_on":"` +
		string(over.GoesOn()) + `"}`
	tube := `{"what":"sheath","part":"X 3","from_mm":35,"to_mm":375,"thick_mm":0.9,"over_mm":7.2,"cut_mm":380.5,"goes_on":"` +
		string(model.ShrunkOn) + `"}`
	for want, b := range map[string]*sheet.Branch{"[]": {}, "[" + tube + "]": {Sheath: sh}, "[" + tape + "," + sleeve +
		"]": {Covers: []sheet.Covered{under, over}},
		"[" + tape + "," + tube + "," + sleeve + "," + sleeve + "]": {Sheath: sh, Covers: []sheet.Covered{under, over, over}}, "[" +
			tape + "," + tube + "]": {Sheath: sh, Covers: []sheet.Covered{under}}} {
		reads(t, "covers", covers(b), want)
	}
	for _, c := range []struct {
		v    float64
		n    int
		want float64
	}{{1.2345, 2, 1.23}, {-0.001, 2, 0}, {1.235, 0, 1}, {123.456, 1, 123.5}} {
		if got := round(c.v, c.n); got != c.want || 1/got < 0 {
			t.Errorf("%v to %d places is %v, want %v", c.v, c.n, got, c.want)
		}
	}
}

// Lay-ups by hand, the cheapest first: a filler's size, the room of a layer and what a centre is built up to only where there are any;
// mass of one metre.
func TestPlansByHand(t *testing.T) {
	ps := []plan.Plan{{Cost: 2, Least: 1.5, Fillers: 3, Spares: 1, Over: 5.5, Lumpy: 2, Relaxed: plan.GapLift, Layers: []plan.Layer{
		{Sizes: []unit.Millimetre{1.2}, N: []int{1}, Takes: 9, Room: 9, Gap: 9, Over: 1.2, CentreMM: 1.5, FillerMM: 8},
		{Sizes: []unit.Millimetre{1, 1.25, 1}, N: []int{3, 2, 1}, Fillers: 1, FillerMM: 1.1, Spares: 1, Takes: 6, Room: 1, Gap: 0.25,
			Over: 5.5, Proud: 0.1}}},
		{Cost: 1, Proven: true, Relaxed: plan.Keeps}, {Cost: 3, Relaxed: plan.Gaps}, {Cost: 4, Relaxed: plan.Nothing}}
	as := []*sheet.Branch{{Gram: model.Some[unit.Gram](12.34567), Bend: sheet.Bend{MinMM: 30, Rule: "r"}}, nil, {}}
	text, err := Plans(ps, as)
	if err != nil {
		t.Fatal(err)
	}
	var all []json.RawMessage
	if err := json.Unmarshal(text, &all); err != nil || text[len(text)-1] != '\n' || len(all) != 4 {
		t.Fatalf("%v %s", err, text)
	}
	sheath := `"sheath":{"part":null,"proposed":false,"slides":null,"grips":null,"slide_mm":null,"grip_ratio":null,"wall_mm":null,` +
		`"over_mm":null,"cut_mm":null}}`
	none := `"fillers":0,"spares":0,"over_mm":0,"lumpy":0,"layers":null,"relaxed":`
	for k, want := range []string{`{"cost":1,"proven":true,"least_cost":0,` + none + `"none","g_per_m":null,"bend":null,"sheath":null}`,
		`{"cost":2,"proven":false,"least_cost":1.5,"fillers":3,"spares":1,"over_mm":5.5,"lumpy":2,"layers":[` +
			`{"sizes":{"1.2":1},"fillers":0,"filler_mm":null,"spares":0,"takes":null,"room":null,"gap":null,"over_mm":1.2,` +
			`"proud_mm":0,"centre_mm":1.5},` +
			`{"sizes":{"1":4,"1.25":2},"fillers":1,"filler_mm":1.1,"spares":1,"takes":6,"room":1,"gap":0.25,"over_mm":5.5,` +
			`"proud_mm":0.1}],` +
			`"relaxed":"gaps and lift","g_per_m":12.346,"bend":{"min_mm":30,"rule":"r","mismatch_mm":null},` + sheath,
		`{"cost":3,"proven":false,"least_cost":0,` + none + `"gaps","g_per_m":null,"bend":{"min_mm":0,"rule":"","mismatch_mm":null},` +
			sheath,
		`{"cost":4,"proven":false,"least_cost":0,` + none + `"all","g_per_m":null,"bend":null,"sheath":null}`} {
		reads(t, "plan", all[k], want)
	}
	if text, err := Plans(nil, nil); err != nil || string(text) != "[]\n" {
		t.Errorf("%q %v", text, err)
	}
}

// All of a sheet of nothing is its keys with nothing in them; snags have their level, the worst first.
func TestAllOfNothing(t *testing.T) {
	s := &sheet.Sheet{H: &model.Harness{}}
	s.H.Head.Name, s.H.Head.Number, s.H.Head.Revision = model.Some("n"), model.Some("N-1"), model.Some("B")
	s.Snags = []sheet.Snag{{Level: sheet.Note, Rule: "r", Where: "w", Says: "s"}, {Level: sheet.Stop, Rule: "r2", Where: "w2", Says: "s2"}}
	text, err := All(s)
	if err != nil || text[len(text)-1] != '\n' {
		t.Fatalf("%v %q", err, text)
	}
	reads(t, "nothing", json.RawMessage(text),
		`{"harness":{"name":"n","number":"N-1","revision":"B"},"totals":{"wires":0,"units":0,"spares":0,"fillers":0,"wire_m":0,`+
			`"mass_g":null},`+
			`"branches":[],"wires":[],"terminations":[],"feeds":[],"snags":[{"level":"`+sheet.Stop.String()+
			`","rule":"r2","where":"w2","says":"s2"},{"level":"`+sheet.Note.String()+
			`","rule":"r","where":"w","says":"s"}]}`)
}
