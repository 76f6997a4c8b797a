package customer_test

import (
	"html"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/shorttest"
	"contralay/model/unit"
	"contralay/ui/paper"
)

// shop is the program's catalogue with a shop's people and instruments.
func shop(t *testing.T) *catalogue.Catalogue {
	t.Helper()
	return catalogue.Merge(calctest.Catalogue(t), &catalogue.Catalogue{
		People: []catalogue.Person{{ID: "7", Name: "A. Builder"}, {ID: "14", Name: "B. Inspector", MayInspect: true}},
		Instruments: []catalogue.Instrument{{ID: "M1", What: "ohmmeter", Serial: "88", Due: "2026-12-31"},
			{ID: "M2", What: "insulation tester", Serial: "89", Due: "2026-12-31"}}})
}

// finished is a harness with a serial 1 built to its end: every step ticked by 7, every hold signed by 14, every
// test passed, every layer read as the sheet has it. Then change has its record.
func finished(t *testing.T, name string, change func(*model.Build)) *sheet.Sheet {
	t.Helper()
	cat, s := shop(t), sheets[name]
	if s == nil {
		d, err := file.Load(name)
		if err != nil {
			t.Fatal(err)
		}
		h := d.Harness
		h.Builds = nil
		s = calc.Complete(&h, cat, nil)
		sheets[name] = s
	}
	done := s.H.EditBuild("1", func(b *model.Build) {
		b.EachTest, b.Revision, b.Begun = model.Some(true), s.H.Head.Revision, model.Some("2026-05-11")
		b.MassG = model.Some[unit.Gram](260.5)
		for _, step := range run.For(s, b) {
			by := "7"
			if step.Kind == run.HoldStep {
				by = "14"
				b.Signed = append(b.Signed, model.Signature{Step: step.Key, By: by, At: model.Some("2026-05-12 10:00")})
			}
			for _, tick := range step.Ticks(nil, "2026-05-12 09:00", by) {
				b.Tick(tick)
			}
			if step.Kind == run.LotStep {
				b.Lots = append(b.Lots, model.Lot{Of: step.Of, Lot: "R-7"})
			}
			for _, p := range run.Pieces(s, step) {
				if c := p.Check; c.Kind != run.NoCheck {
					b.Tests = append(b.Tests, made(c, step.Key))
				}
			}
			read(s, b, step)
		}
		if change != nil {
			change(b)
		}
	})
	return calc.Build(done, cat, s)
}

// sheets are those of files, not built yet, each worked out once for all tests.
var sheets = map[string]*sheet.Sheet{}

// made is a test that passed: 0.05 ohm, 200 megohm, 0.04 V, 120 N; silence has no number.
func made(c run.Check, step string) model.Test {
	v := map[run.CheckKind]model.Opt[float64]{run.Rings: model.Some(0.05), run.Isolated: model.Some(200.0), run.Drops: model.Some(0.04),
		run.Pulled: model.Some(120.0)}[c.Kind]
	x := c.Record(step, v, "")
	x.Instrument, x.At, x.By = model.Some("M1"), model.Some("2026-05-12 09:30"), model.Some("7")
	if c.Kind == run.Isolated {
		x.Instrument = model.Some("M2")
	}
	return x
}

func read(s *sheet.Sheet, b *model.Build, step run.RunStep) {
	i, ok := s.Index.Branch[step.Of]
	if !ok || step.Kind != run.LayStep || step.Bare {
		return
	}
	b.Readings = append(b.Readings, model.Reading{Branch: step.Of, Layer: step.Layer,
		OverMM: []unit.Millimetre{s.Branches[i].Layers[step.Layer].OverMM}})
}

// handed is the set for a serial, and whether it is certified.
func handed(t *testing.T, s *sheet.Sheet, serial string) (paper.Sheet, bool) {
	t.Helper()
	out, conforms, err := paper.Customer(s, paper.Meta{On: "2026-05-13", Serial: serial, File: "x.toml"})
	if err != nil {
		t.Fatal(err)
	}
	if len(out.Pages.Squeezed) > 0 {
		t.Errorf("made smaller: %v", out.Pages.Squeezed)
	}
	return out, conforms
}

var (
	tag    = regexp.MustCompile(`<[^>]*>`)
	rowOf  = regexp.MustCompile(`(?s)<tr[^>]*>(.*?)</tr>`)
	cellOf = regexp.MustCompile(`(?s)<td[^>]*>(.*?)</td>`)
	points = regexp.MustCompile(`([0-9.]+)pt`)
)

// words is HTML without its tags.
func words(text string) string {
	text = strings.NewReplacer("<br>", " ", "</div>", " ", "</tr>", " ", "</td>", " ").Replace(text)
	return strings.Join(strings.Fields(html.UnescapeString(tag.ReplaceAllString(text, ""))), " ")
}

// rowsIn are the rows of all tables, with strokes between their cells.
func rowsIn(text string) (out []string) {
	for _, r := range rowOf.FindAllStringSubmatch(text, -1) {
		var cells []string
		for _, c := range cellOf.FindAllStringSubmatch(r[1], -1) {
			cells = append(cells, words(c[1]))
		}
		if len(cells) > 0 {
			out = append(out, strings.Join(cells, " | "))
		}
	}
	return out
}

func loom(t *testing.T, change func(*model.Build)) *sheet.Sheet {
	t.Helper()
	return finished(t, "../testdata/byhand.toml", change)
}

// testOf is the last test of a thing at a step.
func testOf(t *testing.T, b *model.Build, step, what string) *model.Test {
	t.Helper()
	for k := len(b.Tests) - 1; k >= 0; k-- {
		if x := &b.Tests[k]; x.Step.V == step && what == x.Net.V+x.Feed.V+x.Pull.V {
			return x
		}
	}
	t.Fatalf("nothing was tested as %s at %s", what, step)
	return nil
}

// eventful is a build in which a net was mended, isolation is conceded, the last hold was signed by who built, and
// a wire has another colour.
func eventful(t *testing.T) func(*model.Build) {
	return func(b *model.Build) {
		fault := *testOf(t, b, run.HoldBare, "P1:C LOG1:A")
		fault.Ohm, fault.Fault = model.Opt[float64]{}, model.Some("does not ring")
		high := *testOf(t, b, run.HoldLoaded, "F1")
		high.Volt = model.Some(0.9)
		b.Tests = append([]model.Test{fault, high}, b.Tests...)
		testOf(t, b, run.HoldPinned, "isolation P1").Megohm = model.Some(3.0)
		b.Apart = []model.Deviation{
			{At: "isolation P1", Says: "read 3 Mohm: damp", Step: model.Some(run.HoldPinned), By: model.Some("14"),
				On: model.Some("2026-05-12 11:00")},
			{At: "loaded drop", Says: "inspected by the one who built it", Step: model.Some(run.HoldLoaded), By: model.Some("7")},
			{At: "102", Says: "green, not red", By: model.Some("14"), On: model.Some("2026-05-11 08:00")},
		}
		for k := range b.Signed {
			if b.Signed[k].Step == run.HoldLoaded {
				b.Signed[k].By = "7"
			}
		}
		b.Again = []model.Again{{End: "LOG1:A", Times: 1}}
		b.Tubes = []model.Recovered{{Branch: "L3", OverMM: 5.6}}
		b.Steps = append([]model.Ticked{{Key: "cut 107", By: model.Some("7"), At: model.Some("2026-05-11 08:00"),
			Undone: model.Some("nicked")}}, b.Steps...)
	}
}

// The certificate of the loom is what was written down by hand: its tests from the nets, crimps and feeds of
// ../testdata/byhand.txt (8, 12 and 20 lbf are 35.6, 53.4 and 89.0 N), the rest from the record above.
func TestCertificateByHand(t *testing.T) {
	out, conforms := handed(t, loom(t, eventful(t)), "1")
	first := string(out.Pages.Pages[0].HTML)
	if name := out.Pages.Pages[0].Name; !conforms || name != "Certificate of conformity" {
		t.Fatalf("certified %v, headed %s: %v", conforms, name, rowsIn(first))
	}
	want := strings.Split(`number | TR1-LMP-02 | name | Trailer, lamp and logger loom
revision | B | serial | 1
begun | 2026-05-11 | finished | 2026-05-12 09:00
printed | 2026-05-13 | workmanship class | the file states none
built by | A. Builder (7), N steps
inspected by | B. Inspector (14): ring out bare 2026-05-12 10:00, ring out pinned 2026-05-12 10:00, trial fit 2026-05-12 10:00
 | A. Builder (7): loaded drop 2026-05-12 10:00. Built it too: a concession
isolation P1 | read 3 Mohm: damp | B. Inspector (14) | 2026-05-12 11:00
loaded drop | inspected by the one who built it | A. Builder (7) | -
pull AS22759/32 22 in size 20 | at least 35.6 N | 120 N, 120 N, 120 N | M1 | passed
pull AS22759/32 22 in size 20 M39029/57-357 | at least 53.4 N | 120 N, 120 N, 120 N | M1 | passed
pull AS22759/32 20 in size 20 M39029/58-363 | at least 89 N | 120 N, 120 N, 120 N | M1 | passed
pull AS22759/32 22 in size 20 M39029/58-363 | at least 53.4 N | 120 N, 120 N, 120 N | M1 | passed
isolation P1 | at least 100 Mohm | 3 Mohm | M2 | conceded
drop of feed F1 | at most 0.5 V | 0.04 V (the last of 2 readings) | M1 | passed
drop of feed F2 | at most 1 V | 0.04 V | M1 | passed
M1 | ohmmeter | 88 | 2026-12-31 | ring out bare, samples, ring out pinned, loaded drop
M2 | insulation tester | 89 | 2026-12-31 | ring out pinned
P1:A | LMP1:1 | 0.05 | 0.05
P1:A | LMP2:1 | 0.05 | 0.05
P1:A | LOG1:C | 0.05 | 0.05
P1:B | GND1:1 | 0.05 | 0.05
P1:B | LMP1:2 | 0.05 | 0.05
P1:B | LMP2:2 | 0.05 | 0.05
P1:C | LOG1:A | 0.05 again | 0.05
P1:D | LOG1:B | 0.05 | 0.05
P1:E | LMP1:3 | 0.05 | 0.05
P1:F | LMP1:4 | 0.05 | 0.05
P1:G | LMP2:3 | 0.05 | 0.05
P1:H | nothing | passed | passed
 |  | `, "\n")
	got := rowsIn(first)
	for k := range got {
		got[k] = regexp.MustCompile(`[0-9]+ steps`).ReplaceAllString(got[k], "N steps")
	}
	if diff := strings.Join(got, "\n"); diff != strings.Join(want, "\n") {
		t.Errorf("the certificate has:\n%s", diff)
	}
	for _, says := range []string{`"As built" below has 1 deviation.`, "Each at most 0.5.", "TR1-LMP-02 rev B, serial 1.",
		"the last test counts", "no number was written down", "released by"} {
		if !strings.Contains(words(first), says) {
			t.Errorf("nothing says %q", says)
		}
	}
}

// Whatever stands against a certificate is said in its place, and nothing is released.
func TestNotComplete(t *testing.T) {
	for says, change := range map[string]func(b *model.Build){
		"Steps that are not done: 1 of N, the first is lay T1 1.": func(b *model.Build) { b.Undo("lay T1 1", "crossed") },
		"The hold trial fit is not signed.": func(b *model.Build) {
			b.Signed = slices.DeleteFunc(b.Signed, func(g model.Signature) bool { return g.Step == run.HoldFit })
		},
		"Ring out bare: P1:C LOG1:A failed (does not ring), and it was neither mended nor decided on.": func(b *model.Build) {
			x := testOf(t, b, run.HoldBare, "P1:C LOG1:A")
			x.Ohm, x.Fault = model.Opt[float64]{}, model.Some("does not ring")
		},
		"Ring out pinned: isolation P1 is out of its limit, and nobody has decided on it.": func(b *model.Build) {
			testOf(t, b, run.HoldPinned, "isolation P1").Megohm = model.Some(3.0)
		},
		"Loaded drop: F1 was read on M1, whose calibration ended on 2026-12-31.": func(b *model.Build) {
			testOf(t, b, run.HoldLoaded, "F1").At = model.Some("2027-01-01 09:30")
		},
		"Ring out bare: P1:A LMP1:1 was not tested, and 1 more.": func(b *model.Build) {
			b.Tests = slices.DeleteFunc(b.Tests, func(x model.Test) bool {
				return x.Step.V == run.HoldBare && (x.Net.V == "P1:A LMP1:1" || x.Net.V == "P1:A LMP2:1")
			})
		},
		"T1 layer 1 is out of tolerance, and nobody has decided on it.": func(b *model.Build) {
			b.ReadingOf("T1", 1).OverMM = []unit.Millimetre{12}
		},
		"Nobody has decided on what differs at 102: green, not red.": func(b *model.Build) {
			b.Apart = []model.Deviation{{At: "102", Says: "green, not red"}}
		},
		"It was built from revision A, the sheet is revision B.": func(b *model.Build) { b.Revision = model.Some("A") },
		"Its record is of before tests were written down: the holds are signed, not measured.": func(b *model.Build) {
			b.EachTest = model.Opt[bool]{}
		},
	} {
		out, conforms := handed(t, loom(t, change), "1")
		first := string(out.Pages.Pages[0].HTML)
		rows := rowsIn(first)
		got := regexp.MustCompile(`of [0-9]+,`).ReplaceAllString(rows[0], "of N,")
		if conforms || out.Pages.Pages[0].Name != "NOT COMPLETE" || got != says || !strings.HasPrefix(rows[1], "number | ") {
			t.Errorf("%s: certified %v, headed %s: %q", says, conforms, out.Pages.Pages[0].Name, rows[:2])
		}
		if all := words(string(out.HTML)); strings.Contains(all, "Certificate of conformity") || strings.Contains(all, "released by") {
			t.Errorf("%s: a page speaks of a certificate all the same", says)
		}
	}
}

// The lists beside the set: its pinout is the pins that were worked out by hand, the rest is the record above.
func TestListsByHand(t *testing.T) {
	out, _ := handed(t, loom(t, eventful(t)), "1")
	rows := map[string][]string{}
	for _, l := range out.Lists {
		for _, r := range append([][]string{l.Head}, l.Rows...) {
			rows[l.File] = append(rows[l.File], strings.Join(r, " | "))
		}
	}
	text, err := os.ReadFile("../testdata/byhand.txt")
	if err != nil {
		t.Fatal(err)
	}
	_, pins, _ := strings.Cut(string(text), "== pins\n")
	pins, _, _ = strings.Cut(pins, "\n\n")
	var want []string
	for line := range strings.Lines(pins) {
		cells := strings.Split(strings.TrimSuffix(line, "\n"), " | ")
		if len(cells) > 9 && cells[3] != "" {
			want = append(want, strings.Join([]string{cells[0], cells[1], cells[3], cells[8], cells[4], cells[9]}, " | "))
		}
	}
	if got := rows["pinout"]; !slices.Equal(got, want) {
		t.Errorf("pinout\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	for _, c := range [][2]string{
		{"spares", "113 | 22 AWG | 95  white/green | P1:H | capped at J1 | T1 | capped, folded back 40 mm; its cap at 360 of T1"},
		{"repair", "LOG1 | Logger | 16 | 1 | size 20, M39029/57-357, in and out by M81969/14-10 | - | 9.5"},
		{"tests", "ring out bare | P1:C LOG1:A |  |  | 0.5 | 0.05 | ohm | passed |  | 2 | M1 | 88 | 2026-12-31 | " +
			"2026-05-12 09:30 | 7 | A. Builder"},
		{"tests", "ring out pinned | isolation P1 |  | 100 |  | 3 | Mohm | conceded |  | 1 | M2 | 89 | 2026-12-31 | " +
			"2026-05-12 09:30 | 7 | A. Builder"},
		{"tests", "samples | AS22759/32 20 in size 20 M39029/58-363 | 2 | 89 |  | 120 | N | passed |  | 3 | M1 | 88 | 2026-12-31 | " +
			"2026-05-12 09:30 | 7 | A. Builder"},
		{"as-built", "deviation | 102 |  |  |  |  |  |  | green, not red |  | 14 | 2026-05-11 08:00"},
		{"as-built", "contact made again | LOG1:A |  |  |  | 1 | times |  |  |  |  | "},
		{"as-built", "step undone | cut 107 |  |  |  |  |  |  | nicked |  | 7 | 2026-05-11 08:00"},
		{"as-built", "lot | AS22759/32 22 |  |  |  |  |  |  | R-7 |  |  | "},
		// Lengths from the file, grams under mass of byhand.txt: sheath alone covers a branch.
		{"mass", "T1 | P1 | J1 | 400 | -2 +8 | 25.1 | 8.8 | - | 34.0"}, {"mass", "L1 | J1 | LMP1 | 200 | -0 +5 | 3.4 | 2.0 | - | 5.4"},
		{"mass", "L2 | J1 | LMP2 | 250 | - | 3.2 | 1.7 | - | 4.8"}, {"mass", "L3 | J1 | LOG1 | 300 | - | 6.0 | 4.6 | - | 10.5"},
		{"mass", "L4 | J1 | GND1 | 150 | - | 2.2 | 0.9 | - | 3.1"},
		{"as-built", "mass on the scale | harness |  |  |  | 260.5 | g |  |  |  |  | "},
	} {
		if !slices.Contains(rows[c[0]], c[1]) {
			t.Errorf("%s lacks %q:\n%s", c[0], c[1], strings.Join(rows[c[0]], "\n"))
		}
	}
	all := words(string(out.HTML))
	for _, says := range []string{"On the scale: 260.5 g", "Scale 1:"} { // few words beside its drawing: it has all of them
		if !strings.Contains(all, says) {
			t.Errorf("nothing says %q", says)
		}
	}
	if strings.Contains(strings.ToLower(all), "minutes") {
		t.Error("minutes are printed")
	}
}

// Without a serial there are the pages that hold for all, and they say so; one that is not there is refused with
// those that are.
func TestSerial(t *testing.T) {
	s := loom(t, nil)
	out, conforms := handed(t, s, "")
	all := words(string(out.HTML))
	if conforms || !strings.Contains(all, "No serial was named, so there is no certificate") || strings.Contains(all, "As built") ||
		!strings.Contains(all, "Spares, loops and repair") || !strings.Contains(all, "Branches, length and mass") {
		t.Errorf("without a serial: %s", all)
	}
	if _, _, err := paper.Customer(s, paper.Meta{Serial: "9"}); err == nil || err.Error() != "the file has no serial 9. Its serials: 1" {
		t.Errorf("serial 9: %v", err)
	}
}

// happened is what happened to the demonstration: two layers too thick, one who works alone, a contact made again.
func happened(b *model.Build) {

	b.ReadingOf("T1", 2).OverMM = []unit.Millimetre{11.2, 11.3}
	b.ReadingOf("N1", 1).OverMM = []unit.Millimetre{8.9}
	for _, at := range []string{"lay T1 2", "lay N1 1"} {
		b.Apart = append(b.Apart, model.Deviation{At: at, Says: "thicker than its wire allows: tape under it, left as it is",
			Step: model.Some(at), By: model.Some("14"), On: model.Some("2026-05-12 11:00")})
	}
	b.Apart = append(b.Apart, model.Deviation{At: "loaded drop", Says: "inspected by the one who built it: nobody else works here",
		Step: model.Some(run.HoldLoaded), By: model.Some("7")})
	b.Again = []model.Again{{End: "P1:A", Times: 1}}
}

// The demonstration built to its end is four pages, with what happened above and without, and no
// letter is under 9 points; so is that of all kinds, however long.
func TestPages(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(*model.Build)
		most   int
	}{{"demo", nil, 4}, {"demo", happened, 4}, {"whole", nil, 20}} {
		if c.name == "whole" && !shorttest.Long() {
			continue // its lay-ups alone take a second
		}
		out, conforms := handed(t, finished(t, "../../../testdata/"+c.name+".toml", c.change), "1")
		if n := len(out.Pages.Pages); n > c.most || !conforms {
			t.Errorf("%s: %d pages, certified %v: %.500s", c.name, n, conforms, words(string(out.Pages.Pages[0].HTML)))
		}
		if c.name == "demo" && !strings.Contains(words(string(out.HTML)), "True proportions") {
			t.Errorf("%s: its drawing is crowded with words", c.name)
		}
		for _, p := range out.Pages.Pages {
			for _, m := range points.FindAllStringSubmatch(string(p.HTML), -1) {
				if v, err := strconv.ParseFloat(m[1], 64); err == nil && v < 9 {
					t.Errorf("%s: %s", c.name, m[0])
				}
			}
		}
	}
}
