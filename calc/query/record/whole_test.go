package record

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Everything that stands against a certificate, each in one sentence and in this order.
func TestWhatStandsAgainstIt(t *testing.T) {
	steps := []run.RunStep{{Key: "make C1", Kind: run.MakeStep}, {Key: "lay T1 0", Kind: run.LayStep},
		{Key: "hold bare", Kind: run.HoldStep,
			Name: "ring out bare"}, {Key: run.HoldStops, Kind: run.HoldStep}}
	b := &model.Build{}
	b.Tick(model.Ticked{Key: "make C1"})
	late := Instrument{Instrument: catalogue.Instrument{ID: "M2", Due: "2026-05-10"}, Known: true, Overdue: true}
	r := Record{Revision: "", SheetAt: "C", Tests: []Tested{
		{Hold: "bare", What: "N1", Result: run.Untested}, {Hold: "samples", What: "P1", Result: run.Untested},
		{Hold: "bare", What: "N2", Result: run.Untested}, {Hold: "bare", What: "N3", Result: run.Failed, Fault: "open"},
		{Hold: "bare", What: "N4", Result: run.Failed}, {Hold: "bare", What: "N5", Result: run.Passed, On: late},
		{Hold: "bare", What: "N6", Result: run.Passed}, {Hold: "bare", What: "N7", Result: run.Conceded, Fault: "open"}},
		Layers: []Layer{{Branch: "T1", Layer: 0, ReadMM: []unit.Millimetre{3}, Told: run.TooThick},
			{Branch: "T1", Layer: 1, ReadMM: []unit.Millimetre{3}, Told: run.TooThin, Decided: true}, {Branch: "T1", Layer: 2},
			{Branch: "T1", Layer: 3, ReadMM: []unit.Millimetre{3}}, {Branch: "L1", Layer: 1, ReadMM: []unit.Millimetre{3},
				Told: run.TooThin}},
		Deviations: []model.Deviation{{At: "101", Says: "green"}, {At: "102", Says: "red", By: model.Some("14")}}}
	r.open(&sheet.Sheet{}, b, steps)
	want := []string{
		"steps that are not done: 3 of 4, the first is lay T1 0",
		"the hold ring out bare is not signed",
		"the hold open stops is not signed",
		"it was built from revision -, the sheet is revision C",
		"its record is of before tests were written down: the holds are signed, not measured",
		"bare: N1 was not tested, and 1 more",
		"samples: P1 was not tested",
		"bare: N3 failed (open), and it was neither mended nor decided on",
		"bare: N4 is out of its limit, and nobody has decided on it",
		"bare: N5 was read on M2, whose calibration ended on 2026-05-10",
		"T1 the centre is out of tolerance, and nobody has decided on it",
		"L1 layer 1 is out of tolerance, and nobody has decided on it",
		"nobody has decided on what differs at 101: green",
	}
	if !slices.Equal(r.Open, want) {
		t.Errorf("%s\nwant\n%s", strings.Join(r.Open, "\n"), strings.Join(want, "\n"))
	}
	for _, c := range []struct {
		l    Layer
		want bool
	}{{Layer{}, false}, {Layer{ReadMM: []unit.Millimetre{3}}, true}, {Layer{ReadMM: []unit.Millimetre{3}, Told: run.TooThick}, false},
		{Layer{ReadMM: []unit.Millimetre{3}, Told: run.TooThin}, false}} {
		if c.l.Within() != c.want {
			t.Errorf("%+v is within its tolerance: %v", c.l, c.l.Within())
		}
	}
}

// One wire between two ends, built to the end: each step ticked, each test passed, each hold signed. Nothing stands against its
// certificate, and it ended with the last tick that counts.
func TestARecordThatIsWhole(t *testing.T) {
	s := calctest.Built(t, calctest.OneSize(1, "22", "length_mm = 300.0\n  [[branch.cover]]\n  what = \"tape\"\n", 1))
	whole := func(more func(b *model.Build)) *sheet.Sheet {
		return calc.Build(s.H.EditBuild("9", func(b *model.Build) {
			b.EachTest = model.Some(true)
			for n, step := range run.For(s, b) {
				at := fmt.Sprintf("2026-05-11 %02d:00", 20-n)
				for _, p := range run.Pieces(s, step) {
					if p.Check.Kind != run.NoCheck {
						read := model.Opt[float64]{}
						if p.Check.NeedsReading() {
							read = model.Some(p.Check.Limit)
						}
						b.Tests = append(b.Tests, p.Check.Record(step.Key, read, ""))
					}
				}
				step.Tick(b, nil, at, "7")
				if step.Kind == run.HoldStep {
					b.Signed = append(b.Signed, model.Signature{Step: step.Key, By: "14"})
				}
			}
			more(b)
		}), s.Base, nil)
	}
	done := whole(func(b *model.Build) {
		b.Steps = append(b.Steps, model.Ticked{Key: "cut 0", At: model.Some("2026-05-12 08:00"), Undone: model.Some("damaged")})
	})
	r, ok := Of(done, "9")
	if !ok || len(r.Open) > 0 || r.Ended != "2026-05-11 20:00" || len(r.Tests) == 0 {
		t.Errorf("%v, ended %q, open %q", ok, r.Ended, r.Open)
	}
	for _, x := range r.Tests {
		if x.Result != run.Passed || x.Times != 1 || x.What == "" {
			t.Errorf("%+v", x)
		}
	}
	if r, _ = Of(whole(func(b *model.Build) { b.Signed = b.Signed[1:] }), "9"); r.Ended != "" || len(r.Open) != 1 {
		t.Errorf("a hold is open, and it ended %q: %q", r.Ended, r.Open)
	}
	if r, _ = Of(whole(func(b *model.Build) { b.Tests = b.Tests[1:] }), "9"); len(r.Open) != 1 || strings.Contains(r.Open[0], "more") ||
		!strings.HasSuffix(r.Open[0], " was not tested") {
		t.Errorf("%q", r.Open)
	}
}

// Minutes by the civil calendar: of neighbours one, over the end of a day, a month, a year, a leap day and none. Source: the Gregorian
// rule; 2000 had 29 February, 2100 has not.
func TestMinutesByTheCalendar(t *testing.T) {
	for _, c := range []struct {
		from, to string
		want     int
	}{
		{"2026-05-11 16:44", "2026-05-11 16:45", 1}, {"2026-05-11 23:59", "2026-05-12 00:00", 1}, {"2026-04-30 23:59",
			"2026-05-01 00:00", 1},
		{"2025-12-31 23:59", "2026-01-01 00:00", 1}, {"2024-02-28 12:00", "2024-02-29 12:00", 1440}, {"2024-02-29 12:00",
			"2024-03-01 12:00", 1440},
		{"2026-02-28 12:00", "2026-03-01 12:00", 1440}, {"2000-02-28 00:00", "2000-03-01 00:00", 2880}, {"2100-02-28 00:00",
			"2100-03-01 00:00", 1440},
		{"2026-01-31 10:00", "2026-02-01 11:30", 1530}, {"2026-01-01 00:00", "2027-01-01 00:00", 365 * 1440},
		{"2024-01-01 00:00", "2025-01-01 00:00", 366 * 1440}, {"2026-07-31 00:00", "2026-09-01 00:00", 32 * 1440},
		{"2026-10-31 00:00", "2026-12-01 00:00", 31 * 1440},
	} {
		a, ok1 := minuteOf(c.from)
		b, ok2 := minuteOf(c.to)
		if !ok1 || !ok2 || b-a != c.want {
			t.Errorf("from %s to %s: %d minutes, want %d", c.from, c.to, b-a, c.want)
		}
	}
	for _, bad := range []string{"", "2026-05-11", "2026-05-11T16:44", "2026-05-11 16-44", "2026/05-11 16:44", "2026-05/11 16:44",
		"2026-13-11 16:44",
		"2026-00-11 16:44", "2026-05-00 16:44", "2026-05-32 16:44", "2026-05-11 24:00", "2026-05-11 16:60", "20x6-05-11 16:44",
		"2026-0/-11 16:44", "2026-05-1: 16:44", "2026-05-11 16:44 "} {
		if m, ok := minuteOf(bad); ok {
			t.Errorf("%q is minute %d", bad, m)
		}
	}
	for _, good := range []string{"2026-12-31 23:59", "2026-01-01 00:00"} {
		if _, ok := minuteOf(good); !ok {
			t.Errorf("%q is no time", good)
		}
	}
}

// How long work took, by hand: the time since the same person ticked before; half an hour, or two minutes a piece, is no pause and a
// minute more is one; a wire cut for two serials in one minute is one stretch; what is begun is told with its last piece.
func TestHowLongWorkTook(t *testing.T) {
	s := calctest.Built(t, calctest.OneSize(20, "22", "length_mm = 300.0\nmake = \"straight\"\n", 20))
	at := func(key, clock, by string) model.Ticked {
		return model.Ticked{Key: key, At: model.Some("2026-05-11 " + clock), By: model.Some(by)}
	}
	build := func(h *model.Harness, serial string, steps ...model.Ticked) *model.Harness {
		return h.EditBuild(serial, func(b *model.Build) { b.EachTest, b.Steps = model.Some(true), steps })
	}
	// Serial 1: 7 cuts 0 (first: none), 1 after 3 minutes; 8 lays after 40 minutes: its 20 pieces may take 40; 7 cuts 2 after 31: a pause.
	h := build(s.H, "1", at("cut 0", "08:00", "7"), at("cut 1", "08:03", "7"), at("cut 5", "08:00", "8"), at("lay T1 0", "08:40", "8"),
		at("cut 2", "08:34", "7"), at("cut 3", "09:04", "7"), model.Ticked{Key: "cut 4"})
	h = build(h, "2", at("cut 1", "08:03", "7"))
	out, breaks := Minutes(calc.Build(h, s.Base, nil))
	var got []string
	for _, m := range out {
		got = append(got, fmt.Sprintf("%s %s of %s by %s: %d pieces, %d min", m.Work, m.Key, strings.Join(m.Serials, "+"), m.By,
			m.Pieces, m.Minutes))
	}
	want := []string{"cut cut 1 of 1+2 by 7: 2 pieces, 3 min", "lay lay T1 0 of 1 by 8: 20 pieces, 40 min",
		"cut cut 3 of 1 by 7: 1 pieces, 30 min"}
	if !slices.Equal(got, want) || breaks != 1 {
		t.Errorf("%q, %d pauses", got, breaks)
	}
	if spell := out[0].Spell("loom"); spell.Group != "minutes, cut" && spell.Group != catalogue.MinutesOf+"cut" ||
		spell.Of != "loom serial 1, 2 cut 1" ||
		spell.Minutes != 3 || spell.Pieces != 2 {
		t.Errorf("%+v", spell)
	}
}
