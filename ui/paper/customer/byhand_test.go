package customer

import (
	"html"
	"regexp"
	"slices"
	"strings"
	"testing"

	"contralay/calc/query/record"
	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

var (
	rowsOf  = regexp.MustCompile(`(?s)<tr([^>]*)>(.*?)</tr>`)
	cellsOf = regexp.MustCompile(`(?s)<t([dh])([^>]*)>(.*?)</t[dh]>`)
	tags    = regexp.MustCompile(`<[^>]*>`)
)

// shown is blocks in lines: a row with strokes between its cells, * before what is heavy in it, # before what is grey; a text as it is.
// What stays with the next has a +.
func shown(blocks []page.Block) (out []string) {
	for _, b := range blocks {
		text := string(b.HTML)
		if b.Cut != nil {
			text = string(b.Cut.Head)
			for _, r := range b.Cut.Rows {
				text += string(r.HTML)
			}
		}
		text = strings.NewReplacer("<br>", " ", "</div><div>", " ").Replace(text)
		plain := func(text string) string {
			return html.UnescapeString(strings.Join(strings.Fields(tags.ReplaceAllString(text, "")), " "))
		}
		keep := map[bool]string{true: "+"}[b.KeepNext]
		rows := rowsOf.FindAllStringSubmatch(text, -1)
		if len(rows) == 0 {
			out = append(out, keep+plain(text))
		}
		for _, r := range rows {
			var cells []string
			for _, c := range cellsOf.FindAllStringSubmatch(r[2], -1) {
				mark := ""
				if c[1] == "d" && strings.Contains(c[2]+c[3], "p9b") {
					mark = "*"
				}
				if strings.Contains(r[1]+c[2], "shade") {
					mark += "#"
				}
				cells = append(cells, mark+plain(c[3]))
			}
			out = append(out, keep+strings.Join(cells, "|"))
		}
	}
	return out
}

func says(t *testing.T, what string, blocks []page.Block, want ...string) {
	t.Helper()
	if got := shown(blocks); !slices.Equal(got, want) {
		t.Errorf("%s:\n%s\nwant\n%s", what, strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

// bare is a set of a loom of nothing with a record.
func bare(r record.Record) Set {
	h := &model.Harness{}
	cat := &catalogue.Catalogue{People: []catalogue.Person{{ID: "14", Name: "B. Inspector"}}}
	return Set{Maker: list.Maker{H: h, S: &sheet.Sheet{H: h, Cat: cat, Index: model.NewIndex(h)}}, Record: &r, On: "2026-05-13"}
}

// test is a test of a kind that came to something, with a reading, on an instrument.
func test(kind run.CheckKind, what, hold string, result run.Result, read float64, change ...func(t *record.Tested)) record.Tested {
	out := record.Tested{Hold: hold, What: what, Result: result, Times: 1, Check: run.Check{Kind: kind, Name: what, From: what, To: "Z:1",
		Limit: 0.5}}
	if read >= 0 {
		out.Read = model.Some(read)
	}
	out.On.ID = "M1"
	for _, c := range change {
		c(&out)
	}
	return out
}

// Tests in words, by hand.
func TestTestsInWords(t *testing.T) {
	for r, want := range map[run.Result]string{run.Passed: "passed", run.Conceded: "conceded", run.Failed: "FAILED",
		run.Untested: "not tested"} {
		if got := result(record.Tested{Result: r}); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	for _, c := range []struct {
		kind  run.CheckKind
		limit float64
		want  string
	}{{run.Silent, 0.5, "rings to nothing"}, {run.Rings, 0, "no limit known"}, {run.Rings, 0.5, "at most 0.5 ohm"}, {run.Rings, 0.1234,
		"at most 0.123 ohm"}, {run.Isolated, 100, "at least 100 Mohm"},
		{run.Drops, 2, "at most 2 V"}, {run.Pulled, 53.38, "at least 53.4 N"}, {run.Pulled, 89, "at least 89 N"}} {
		if got := limit(run.Check{Kind: c.kind, Limit: c.limit}); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
	fault := func(t *record.Tested) { t.Fault = "broken" }
	twice := func(t *record.Tested) { t.Times = 2 }
	none := func(t *record.Tested) { t.On.ID = "" }
	for want, x := range map[string]record.Tested{
		"not tested": test(run.Rings, "n", "h", run.Untested, 0.1, fault), "0.25": test(run.Rings, "n", "h", run.Passed, 0.25),
		"passed":        test(run.Rings, "n", "h", run.Passed, -1),
		"FAILED broken": test(run.Rings, "n", "h", run.Failed, 0.25, fault), "conceded 0.75": test(run.Rings, "n", "h", run.Conceded, 0.75),
		"0.3 again": test(run.Silent, "n", "h", run.Passed, 0.3, twice), "0.4": test(run.Drops, "n", "h", run.Passed, 0.4, twice),
	} {
		if got := read(x, false); got != want {
			t.Errorf("%q, want %q", got, want)
		}
		if more := map[bool]string{true: " M1"}[want != "not tested"]; read(x, true) != want+more {
			t.Errorf("beside another: %q, want %q", read(x, true), want+more)
		}
	}
	if got := read(test(run.Rings, "n", "h", run.Passed, 0.25, none), true); got != "0.25" {
		t.Errorf("%q", got)
	}
	for hold, want := range map[string]string{"ring out pinned": "in", "ring out bare": "bare", "else": "else"} {
		if got := short(hold); got != want {
			t.Errorf("%s: %q", hold, got)
		}
	}
	for kind, want := range map[run.CheckKind]string{run.Drops: "drop of feed n", run.Pulled: "pull n", run.Isolated: "n"} {
		if got := testName(run.Check{Kind: kind, Name: "n"}); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// The ring-out, by hand: each net once with a column for each hold; a column of limits where these differ; a dash where a net was not of
// a hold; the instrument where there were two.
func TestRingOutByHand(t *testing.T) {
	const bareHold, pinned = "ring out bare", "ring out pinned"
	silent := test(run.Silent, "P1:H", pinned, run.Passed, -1)
	c := bare(record.Record{Tests: []record.Tested{test(run.Rings, "P1:A", bareHold, run.Passed, 0.1), test(run.Rings, "P1:b", bareHold,
		run.Failed, 0.75), test(run.Pulled, "x", "samples", run.Passed, 90),
		test(run.Rings, "P1:A", pinned, run.Passed, 0.2), silent}})
	const each = "Each net once, in ohms: bare, and with its contacts in."
	const passed = " Passed: it rang, or was silent where it leads to nothing; no number was written down."
	says(t, "one limit", c.rings(), "+Ring-out", "+"+each+" Each at most 0.5."+passed, "from|to|bare|in", "*P1:A|Z:1|0.1|0.2",
		"*P1:b|Z:1|*FAILED 0.75|-",
		"*P1:H|nothing|-|passed")
	c.Record.Tests[3].Check.Limit, c.Record.Tests[3].On.ID, c.Record.Tests[3].Times = 0.7, "M2", 2
	c.Record.Tests[0].Check.Limit = 0
	got := shown(c.rings())
	if got[1] != "+"+each+passed+" Again: it was tested more than once, and the last test counts." ||
		got[2] != "from|to|at most|bare|in" || got[3] != "*P1:A|Z:1|-|0.1|0.2 again M2" ||
		got[4] != "*P1:b|Z:1|0.5|*FAILED 0.75|-" ||
		got[5] != "*P1:H|nothing|0.5|-|passed M1" {
		t.Errorf("%s", strings.Join(got, "\n"))
	}
	c.Record.Tests = c.Record.Tests[2:3]
	if got := c.rings(); got != nil {
		t.Errorf("%v", got)
	}
	for _, c := range []struct {
		limits []float64
		want   string
	}{{nil, ""}, {[]float64{0.5}, "0.5"}, {[]float64{0.5, 0.5}, "0.5"}, {[]float64{0.5, 0.7}, ""}, {[]float64{0.5, 0}, ""}, {[]float64{0,
		0.5}, ""}} {
		nets := []record.Tested{silent}
		for _, l := range c.limits {
			nets = append(nets, test(run.Rings, "n", "h", run.Passed, 0, func(t *record.Tested) { t.Check.Limit = l }))
		}
		if got := oneLimit(nets); got != c.want {
			t.Errorf("%v: %q, want %q", c.limits, got, c.want)
		}
	}
}

// Isolation, drop and pulled samples, by hand: the samples of a crimp in one row, the worst of them first; what did not pass is grey.
func TestOtherTestsByHand(t *testing.T) {
	pulled := func(result run.Result, read float64, on string) record.Tested {
		return test(run.Pulled, "22 in 20", "samples", result, read, func(t *record.Tested) {
			t.Check.Limit, t.On.ID, t.Times = 53.38, on,
				3
		})
	}
	c := bare(record.Record{Tests: []record.Tested{pulled(run.Passed, 60, "M1"), pulled(run.Conceded, 50, "M2"), pulled(run.Passed, 61.5,
		"M1"),
		test(run.Pulled, "20 in 20", "samples", run.Passed, 90), test(run.Isolated, "P1", "ring out pinned", run.Failed, 0.25,
			func(t *record.Tested) { t.Times = 2 }),
		test(run.Drops, "F1", "loaded drop", run.Failed, 0.9, func(t *record.Tested) { t.Fault = "smoke" }), test(run.Drops, "F2",
			"loaded drop", run.Untested, -1),
		test(run.Rings, "P1:A", "ring out bare", run.Passed, 0.1)}})
	says(t, "others", c.others(), "+Isolation, drop under load, pulled samples", "test|must read|read|on|result",
		"*#pull 22 in 20|#at least 53.4 N|#60 N, 50 N, 61.5 N|#M1, M2|*#conceded",
		"*pull 20 in 20|at least 0.5 N|90 N|M1|passed", "*#P1|#at least 0.5 Mohm|#0.25 Mohm (the last of 2 readings)|#M1|*#FAILED",
		"*#drop of feed F1|#at most 0.5 V|#smoke|#M1|*#FAILED",
		"*#drop of feed F2|#at most 0.5 V|#not tested|#-|*#not tested")
	c.Record.Tests = c.Record.Tests[7:]
	if got := c.others(); got != nil {
		t.Errorf("%v", got)
	}
	c.Record.Tests = nil
	says(t, "none", c.testPages(), "+Tests", "The record has no tests: it was begun before they were written down.")
}

// What was measured with, by hand: each instrument once with the holds that it was used for, and what is not known or was over said.
func TestInstrumentsByHand(t *testing.T) {
	on := func(id, hold string, result run.Result, change func(i *record.Instrument)) record.Tested {
		return test(run.Rings, "n", hold, result, 0.1, func(t *record.Tested) { t.On = record.Instrument{}; t.On.ID = id; change(&t.On) })
	}
	known := func(due string, over bool) func(i *record.Instrument) {
		return func(i *record.Instrument) {
			i.Known, i.What, i.Serial, i.Due, i.Overdue = true, "meter", "88", due, over
		}
	}
	none := func(*record.Instrument) {}
	c := bare(record.Record{Tests: []record.Tested{on("M1", "a", run.Passed, known("2026-12-31", false)), on("M1", "b", run.Passed,
		known("2026-12-31", true)), on("M1", "a", run.Passed, known("2026-12-31", false)),
		on("M2", "a", run.Failed, known("", false)), on("M3", "b", run.Passed, none), on("", "c", run.Passed, none), on("M4", "c",
			run.Untested, known("", false)), on("M2", "d", run.Untested, none)}})
	says(t, "instruments", c.instrumentTable(), "instrument|what|its serial|calibrated until|used for",
		"*M1|meter|88|2026-12-31, was over|a, b", "*M2|meter|88|not known|a",
		"*M3|not in the shop's list|-|-|b", "*-|no instrument was written down|-|-|c")
	c.Record.Tests = c.Record.Tests[6:7]
	if got := c.instrumentTable(); got != nil {
		t.Errorf("%v", got)
	}
}

// The certificate, by hand: complete it says so and has room to sign; else it says what stands against it.
func TestCertificateByHand(t *testing.T) {
	r := record.Record{Serial: "7", Number: "N-1", Revision: "B", Name: "loom", Begun: "2026-05-01", Ended: "2026-05-12 10:00",
		Built: []record.Worker{{ID: "7", Name: "A", Steps: 2}, {ID: "8", Name: "8", Steps: 1}},
		Inspected: []record.Inspected{{Hold: "fit", ID: "14", Name: "B", At: "2026-05-12"}, {Hold: "drop", ID: "7", Name: "A",
			Alone: true}, {Hold: "bare", ID: "14", Name: "B"}},
		Tests: []record.Tested{test(run.Drops, "F1", "loaded drop", run.Passed, 0.1)}}
	c := bare(r)
	named := []string{"number|*N-1|name|*loom", "revision|*B|serial|*7", "begun|*2026-05-01|finished|*2026-05-12 10:00",
		"printed|*2026-05-13|workmanship class|*the file states none"}
	people := []string{"built by|A (7), 2 steps; 8, 1 step", "inspected by|B (14): fit 2026-05-12, bare without a day",
		"|A (7): drop without a day. Built it too: a concession",
		"concessions|the inspection, as said above"}
	tested := []string{"+Isolation, drop under load, pulled samples", "test|must read|read|on|result",
		"*drop of feed F1|at most 0.5 V|0.1 V|M1|passed",
		"instrument|what|its serial|calibrated until|used for", "*M1|not in the shop's list|-|-|loaded drop"}
	says(t, "complete", c.certificate(), slices.Concat([]string{"+Certificate of conformity",
		"The harness named here was built to its build sheet, inspected and tested. Every test passed, or stands " +
			"below as conceded. Revision and serial are those that it carries: N-1 rev B, serial 7."}, named, people, tested, []string{
		"released by|signature|day", "||"})...)
	if !c.Conforms() || (Set{}).Conforms() {
		t.Error("it does not conform")
	}
	r.Open, r.Ended, r.Built, r.Inspected, r.Number, r.Begun = []string{"a step is open", "it is 25.4 mm too long"}, "", nil, nil, "", ""
	r.Deviations = []model.Deviation{{At: "P1", Step: model.Some("hold fit"), Says: "it is 25.4 mm long", By: model.Some("14"),
		On: model.Some("2026-05-12")}, {Step: model.Some("pull x"), Says: "b"},
		{At: "T1", Says: "c", By: model.Some("99")}}
	c = bare(r)
	named[0], named[2] = "number|*-|name|*loom", "begun|*-|finished|*not finished"
	says(t, "open", c.certificate(), slices.Concat([]string{"+NOT COMPLETE", "+This is no certificate. What stands against one:",
		"#A step is open.", "#It is 25.4 mm too long."}, named,
		[]string{"built by|nobody has a name in the record", "inspected by|nobody has signed a hold", "+Concessions",
			"at|what differs|decided by|on", "*P1|it is 25.4 mm long|B. Inspector (14)|2026-05-12",
			"*-|b|nobody has decided|-", `"As built" below has 1 deviation.`}, tested)...)
	if c.Conforms() {
		t.Error("it conforms")
	}
	c.Record.Deviations = c.Record.Deviations[2:]
	c.Record.Deviations = append(c.Record.Deviations, c.Record.Deviations[0])
	if got := c.noConcession(); got != `none of tests or inspection. "As built" below has 2 deviations` {
		t.Errorf("%q", got)
	}
	if len(c.concessions()) != 0 {
		t.Error("concessions that are none")
	}
	for _, p := range [][3]string{{"", "x", "-"}, {"7", "", "7"}, {"7", "7", "7"}, {"7", "A", "A (7)"}} {
		if got := person(p[0], p[1]); got != p[2] {
			t.Errorf("%q, want %q", got, p[2])
		}
	}
}

// How it was built, by hand: layers with a star where one is out, the turn where one was measured, what lies over sheaths; lots; what
// differs.
func TestAsBuiltByHand(t *testing.T) {
	mm := func(v unit.Millimetre) string { return unit.MM.Fine(v) }
	c := bare(record.Record{Layers: []record.Layer{{Branch: "T1", SheetMM: 2.9, LeastMM: 2.8, MostMM: 3, ReadMM: []unit.Millimetre{2.9},
		MeanMM: 2.9}, {Branch: "T1", Layer: 1, Bare: true, SheetMM: 5.4},
		{Branch: "T1", Layer: 2, LeastMM: 7, MostMM: 8, ReadMM: []unit.Millimetre{9, 9.2}, MeanMM: 9.1, Told: run.TooThick}},
		Tubes: []record.Tube{{Branch: "T1", OverMM: 7.5}}, Lots: []model.Lot{{Of: "wire", Lot: "R-7", Expires: model.Some("2027-01-01")},
			{Of: "tape"}}})
	if !c.Record.Layers[0].Within() || c.Record.Layers[2].Within() {
		t.Fatal("the layers are not what they are meant to be")
	}
	head := "Diameters over each layer in mm: by the sheet, what the tolerance of its wire allows, and the mean of what was read. A " +
		"dash: not measured."
	none := "No deviation is written down beside the concessions of tests and inspection."
	lots := []string{"material|lot|expires", "*wire|R-7|2027-01-01", "*tape|-|-"}
	says(t, "built", c.built(), slices.Concat([]string{"+As built", "+" + head + " Bare: before its tape. A star: out of tolerance.",
		"layer|sheet|wire allows|read",
		"*T1 centre|" + mm(2.9) + "|" + mm(2.8) + "–" + mm(3) + "|" + mm(2.9), "*T1 layer 1, bare|" + mm(5.4) + "|-|-", "*T1 layer 2|-|" +
			mm(7) + "–" + mm(8) + "|*" + mm(9.1) + "*", "*T1 over sheath|-|-|" + mm(7.5), none}, lots)...)
	c.Record.Layers = c.Record.Layers[:1]
	c.Record.Layers[0].LayMM, c.Record.Layers[0].SheetLay = model.Some[unit.Millimetre](64), 66.2
	c.Record.Deviations = []model.Deviation{{At: "T1", Says: "c"}}
	c.Record.Again = []model.Again{{End: "P1:A", Times: 2}}
	c.Record.Lots = nil
	says(t, "turned", c.built(), "+As built", "+"+head, "layer|sheet|wire allows|read|turn", "*T1 centre|"+mm(2.9)+"|"+mm(2.8)+"–"+mm(3)+
		"|"+mm(2.9)+"|64 of 65", "*T1 over sheath|-|-|"+mm(7.5)+"|-",
		"deviation at|what differs|decided by|on", "*T1|c|nobody has decided|-", "Done again: contact P1:A made again, 2 times.",
		"No lot of material is written down.")
	c.Record.Layers, c.Record.Tubes = nil, nil
	if got := c.layers(); got != nil {
		t.Errorf("%v", got)
	}
	for want, l := range map[string]record.Layer{"not measured": {}, "within": {LeastMM: 2.8, MostMM: 3, ReadMM: []unit.Millimetre{2.9},
		MeanMM: 2.9}, "conceded": {ReadMM: []unit.Millimetre{9}, Told: run.TooThick, Decided: true},
		"TOO THICK": {ReadMM: []unit.Millimetre{9}, Told: run.TooThick}, "TOO THIN": {ReadMM: []unit.Millimetre{9}, Told: run.TooThin}} {
		if got := layerResult(l); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// The files, by hand: a row for each reading, and one for each thing else.
func TestFilesByHand(t *testing.T) {
	c := bare(record.Record{Serial: "1", Layers: []record.Layer{{Branch: "T1", SheetMM: 2.9, ReadMM: []unit.Millimetre{2.9, 3},
		MeanMM: 2.95, LayMM: model.Some[unit.Millimetre](64), SheetLay: 66.2}, {Branch: "T1", Layer: 1}},
		Tubes: []record.Tube{{Branch: "T1", OverMM: 7.5}}, Deviations: []model.Deviation{{At: "T1", Says: "c", By: model.Some("14"),
			On: model.Some("d")}}, Again: []model.Again{{End: "P1:A", Times: 2}},
		Lots:  []model.Lot{{Of: "wire", Lot: "R-7", Expires: model.Some("e"), By: model.Some("7"), At: model.Some("t")}},
		MassG: model.Some[unit.Gram](260.55)})
	c.H.Builds = []model.Build{{Serial: "1", Steps: []model.Ticked{{Key: "cut", Undone: model.Some("why"), By: model.Some("7"),
		At: model.Some("t")}}}}
	var got []string
	for _, r := range c.asBuilt().Rows {
		got = append(got, strings.Join(r, "|"))
	}
	mm := func(v unit.Millimetre) string { return unit.MM.Fine(v) }
	over := "over|T1 the centre|" + mm(2.9) + "|||"
	within := c.asBuilt().Rows[0][7]
	want := []string{over + mm(2.9) + "|mm|" + within + "||||", over + mm(3) + "|mm|" + within + "||||",
		"turn|T1 the centre|65|||64|mm|||||", "over|T1 layer 1|||||mm|not measured||||",
		"over the sheath|T1||||" + mm(7.5) + "|mm|||||", "deviation|T1|||||||c||14|d", "contact made again|P1:A||||2|times|||||",
		"step undone|cut|||||||why||7|t", "lot|wire|||||||R-7|e|7|t",
		"mass on the scale|harness||||" + unit.Fixed(unit.Gram(260.55), 1) + "|g|||||"}
	if !slices.Equal(got, want) {
		t.Errorf("%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	full := test(run.Isolated, "P1", "h", run.Failed, 0.25, func(t *record.Tested) {
		t.Fault, t.On.Serial, t.On.Due, t.At, t.By, t.Name = "f", "88", "due", "at", "7", "A"
	})
	c.Record.Tests = []record.Tested{full, test(run.Pulled, "x", "samples", run.Passed, -1,
		func(t *record.Tested) { t.Check.Sample = 2 }), test(run.Drops, "F1", "h", run.Passed, 0.1),
		test(run.Rings, "n", "h", run.Untested, -1, func(t *record.Tested) { t.Check.Limit = 0 })}
	got = nil
	for _, r := range c.tests().Rows {
		got = append(got, strings.Join(r, "|"))
	}
	want = []string{"h|P1||0.5||0.25|Mohm|FAILED|f|1|M1|88|due|at|7|A", "samples|x|2|0.5|||N|passed||1|M1|||||",
		"h|F1|||0.5|0.1|V|passed||1|M1|||||", "h|n|||||ohm|not tested||1|M1|||||"}
	if !slices.Equal(got, want) {
		t.Errorf("%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

// What branches weigh, by hand: what is not known is named; what is not there is a dash.
func TestMassByHand(t *testing.T) {
	c := bare(record.Record{MassG: model.Some[unit.Gram](99.94)})
	c.H.Branches = []model.Branch{{ID: "T1", From: "P1", To: "J", LengthMM: 400}, {ID: "L1", From: "J", To: "A", LengthMM: 200}}
	c.S.Branches = []sheet.Branch{{Gram: model.Some[unit.Gram](10.04), Sheath: sheet.Sheath{Part: "X", Gram: 2}},
		{Gram: model.Some[unit.Gram](3)}}
	const more = " Connectors, contacts, boots, labels and adhesive are not in that."
	const in = "Lengths in mm, mass in g. "
	says(t, "known", c.mass(), "+Branches, length and mass", "+On the scale: 99.9 g, finished. "+in+
		"With its covers it comes to 15.0 g by the sheet."+more,
		"branch|from|to|long|tol|bundle|sheath|sum", "T1|P1|J|400|-|10.0|2.0|12.0", "L1|J|A|200|-|3.0|-|3.0")
	c.S.Branches[0].Covers = []sheet.Covered{{What: model.CoverTape, Gram: 1}, {What: model.CoverBraid}}
	c.S.Branches[0].Sheath.Gram = 0
	c.S.Branches[1] = sheet.Branch{Covers: []sheet.Covered{{What: model.CoverTape, Gram: 0.5}}}
	c.Record.MassG.Set = false
	says(t, "unknown", c.mass(), "+Branches, length and mass", "+It was not weighed. "+in+
		"What is known of it comes to 11.5 g by the sheet. Not known: the sheath of T1, braid on T1, the bundle of L1."+more,
		"branch|from|to|long|tol|bundle|sheath|other|sum", "T1|P1|J|400|-|10.0|not known|not known|not known",
		"L1|J|A|200|-|not known|-|0.5|not known")
	c.S.Branches[0].Covers, c.S.Branches[1] = nil, sheet.Branch{Gram: model.Some[unit.Gram](1)}
	if got := c.weights(); !strings.Contains(got, "What is known of it comes to 11.0 g by the sheet. Not known: the sheath of T1.") {
		t.Errorf("%q", got)
	}
	c.Record = nil
	if got := c.weights(); !strings.HasPrefix(got, in) {
		t.Errorf("%q", got)
	}
	c.S.Branches = nil
	if got := c.mass(); got != nil {
		t.Errorf("%v", got)
	}
	for v, want := range map[model.Opt[unit.Gram]]string{{}: "not known", {Set: true}: "-", {Set: true, V: 1.26}: "1.3"} {
		if got := gram(v); got != want {
			t.Errorf("%v: %q", v, got)
		}
	}
}

// How many grids stand side by side, by hand: of a page of 186 mm with 3 between them and 0.3 for outer lines, 4 of 43.95, 3 of 59.7, 2
// of 91.2, one of 185.7.
func TestGridsSideBySide(t *testing.T) {
	for n, want := range map[int]unit.Millimetre{1: 185.7, 2: 91.2, 3: 59.7, 4: 43.95} {
		if got := each(n); got < want-1e-6 || got > want+1e-6 {
			t.Errorf("%d are %v wide, by hand %v", n, got, want)
		}
	}
	for least, want := range map[unit.Millimetre]int{10: 4, 43.9: 4, 44: 3, 59.6: 3, 59.8: 2, 91.1: 2, 91.3: 1, 300: 1} {
		if got := side(page.Grid{Cols: []page.Col{{Least: least}}}); got != want {
			t.Errorf("of %v mm %d stand side by side, by hand %d", least, got, want)
		}
	}
	g := page.Grid{Cols: []page.Col{{Head: "loom"}, {Bold: true}, {Least: 50}}, Lines: []page.Line{page.Cells("i", "loom"),
		{Cells: []page.Cell{{Text: "loom loom", Bold: true}, {Wide: 40}}}}}
	for k, want := range []unit.Millimetre{page.Strong.Wide("loom loom") + 2.1, 42.1, 50} {
		if got := needs(g, k); got < want-1e-6 || got > want+1e-6 {
			t.Errorf("column %d needs %v, by hand %v", k, got, want)
		}
	}
	plain := page.Grid{Cols: []page.Col{{Head: "i"}}, Lines: []page.Line{page.Cells("loom")}}
	if got := needs(plain, 0); got != page.Small.Wide("loom")+2.1 {
		t.Errorf("%v", got)
	}
	// What the others leave: 185.7 less both is what the broken one has at least.
	rest := 185.7 - needs(g, 0) - needs(g, 1)
	for more, given := range map[unit.Millimetre]bool{-0.01: true, 0.01: false} {
		h := page.Grid{Cols: slices.Clone(g.Cols), Lines: g.Lines}
		breaks(&h, rest+more, 2)
		if (h.Cols[0].Wide == needs(g, 0)) != given || (h.Cols[1].Wide == needs(g, 1)) != given || h.Cols[2].Wide != 0 {
			t.Errorf("%v more: %+v", more, h.Cols)
		}
	}
}
