package record_test

import (
	"math"
	"reflect"
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

// shop is the example with a shop's people and instruments, and one serial begun.
func shop(t *testing.T, f func(b *model.Build)) *sheet.Sheet {
	t.Helper()
	s := calctest.Laid(t, "example")
	cat := catalogue.Merge(s.Base, &catalogue.Catalogue{
		People: []catalogue.Person{{ID: "7", Name: "A. Builder"}, {ID: "14", Name: "B. Inspector", MayInspect: true}},
		Instruments: []catalogue.Instrument{{ID: "M1", What: "ohmmeter", Serial: "88", Due: "2026-05-11"},
			{ID: "M2", What: "insulation tester", Serial: "89", Due: "2026-05-10"}}})
	h := run.Written(s).EditBuild("003", func(b *model.Build) {
		b.EachTest, b.Revision, b.Begun = model.Some(true), s.H.Head.Revision, model.Some("2026-05-11")
	})
	return calc.Build(h.EditBuild("003", f), cat, nil)
}

func at(step, clock, by string) model.Ticked {
	return model.Ticked{Key: step, At: model.Some("2026-05-11 " + clock), By: model.Some(by)}
}

// A record by hand: two people, a reading in limits and one out, instruments of which one is overdue, a
// signature by who has built, a deviation, lots, the mass.
func TestRecord(t *testing.T) {
	s := shop(t, func(b *model.Build) {
		b.Steps = []model.Ticked{at("cut 101", "08:00", "7"), at("cut 102", "08:03", "7"), at("cut 120", "08:05", "8"),
			at("hold bare", "09:00", "14"),
			{Key: "cut 103", By: model.Some("8"), Undone: model.Some("damaged")}}
		net := run.Tests(calctest.Laid(t, "example"), run.RunStep{Key: run.HoldBare, Kind: run.HoldStep})[0]
		bad, good := net.Record(run.HoldBare, model.Some(99.5), ""), net.Record(run.HoldBare, model.Some(0.05), "")
		good.Instrument, good.At, good.By = model.Some("M1"), model.Some("2026-05-11 08:30"), model.Some("7")
		late := run.Tests(calctest.Laid(t, "example"), run.RunStep{Key: run.HoldBare, Kind: run.HoldStep})[1].Record(run.HoldBare,
			model.Opt[float64]{}, "")
		late.Instrument, late.At = model.Some("M2"), model.Some("2026-05-11 08:31")
		b.Tests = []model.Test{bad, good, late}
		b.Signed = []model.Signature{{Step: run.HoldBare, By: "14", At: model.Some("2026-05-11 09:00")}, {Step: run.HoldFit, By: "7"}}
		b.Apart = []model.Deviation{{At: "101", Says: "green", By: model.Some("14")}, {At: "102", Says: "short"}}
		b.Lots = []model.Lot{{Of: "AS22759/32 22", Lot: "R-7"}}
		b.Readings = []model.Reading{{Branch: "T1", Layer: 1, OverMM: []unit.Millimetre{9, 9.2}}}
		b.MassG = model.Some[unit.Gram](243.5)
	})
	r, ok := record.Of(s, "003")
	if _, other := record.Of(s, "004"); !ok || other {
		t.Fatal("which serials there are")
	}
	if r.Serial != "003" || r.Revision != s.H.Head.Revision.V || r.MassG.V != 243.5 || len(r.Lots) != 1 ||
		r.Begun != "2026-05-11" || r.Ended != "" {
		t.Errorf("%+v", r)
	}
	one := r.Tests[slices.IndexFunc(r.Tests, func(x record.Tested) bool { return x.Hold == "ring out bare" })]
	if one.Result != run.Passed || one.Read.V != 0.05 || one.Times != 2 || one.Name != "A. Builder" ||
		one.On.Serial != "88" || one.On.Overdue {
		t.Errorf("%+v", one) // the calibration ends on the day of the test
	}
	late := r.Tests[slices.IndexFunc(r.Tests, func(x record.Tested) bool { return x.On.ID == "M2" })]
	if !late.On.Overdue || !late.On.Known {
		t.Errorf("%+v", late.On)
	}
	if len(r.Built) != 2 || r.Built[0] != (record.Worker{ID: "7", Name: "A. Builder", Steps: 2}) || r.Built[1].Steps != 1 {
		t.Errorf("%+v", r.Built)
	}
	if len(r.Inspected) != 2 || r.Inspected[0].Name != "B. Inspector" || r.Inspected[0].Alone || !r.Inspected[1].Alone ||
		r.Inspected[1].Hold != "trial fit" {
		t.Errorf("%+v", r.Inspected)
	}
	layer := r.Layers[slices.IndexFunc(r.Layers, func(l record.Layer) bool { return l.Branch == "T1" && l.Layer == 1 })]
	calctest.Near(t, "mean of 9 and 9.2", float64(layer.MeanMM), 9.1, 1e-9)
	if layer.Within() || layer.Decided || layer.Told != run.TooThick {
		t.Errorf("%+v", layer) // the sheet has 5.4
	}
	text := strings.Join(r.Open, "\n")
	for _, want := range []string{"steps that are not done", "T1 layer 1 is out of tolerance",
		"nobody has decided on what differs at 102: short",
		"was read on M2, whose calibration ended on 2026-05-10", "was not tested"} {
		if !strings.Contains(text, want) {
			t.Errorf("nothing says %q:\n%s", want, text)
		}
	}
	if strings.Contains(text, "at 101") {
		t.Errorf("what is decided on is open:\n%s", text)
	}
}

// Minutes by hand: each since the same person did something before, whichever serial it was for; a pause is
// none, nor is a signature; tests and samples count by themselves, and what is cut for two serials is one
// stretch of work. Over midnight, a month and the leap day of 2028.
func TestMinutes(t *testing.T) {
	test := func(of, clock, by string) model.Test {
		return model.Test{Step: model.Some(run.HoldBare), Net: model.Some(of), At: model.Some("2026-05-11 " + clock), By: model.Some(by)}
	}
	s := shop(t, func(b *model.Build) {
		b.Steps = []model.Ticked{at("cut 101", "08:00", "7"), at("cut 102", "08:03", "7"), at("cut 120", "08:05", "8"),
			at("cut 121", "08:06", "8"), at("lay T1 1", "08:23", "7"), at("hold bare", "08:50", "7"), at("lay T1 0", "12:00", "7"),
			at("no such", "12:01", "7"), at("cut 110", "12:11", "7")}
		b.Tests = []model.Test{test("P1:A INJ1:2", "08:30", "8"), test("P1:B INJ2:2", "08:31", "8")}
	})
	other := s.H.EditBuild("004", func(b *model.Build) {
		b.EachTest = model.Some(true)
		b.Steps = []model.Ticked{at("cut 110", "12:11", "7"), at("cut 111", "12:12", "7")}
	})
	s = calc.Build(other, s.Cat, nil)
	got, breaks := record.Minutes(s)
	for k := range got {
		got[k].At = 0
	}
	one := []string{"003"}
	want := []record.Spent{{Work: "cut", Key: "cut 102", Serials: one, By: "7", Pieces: 1, Minutes: 3},
		{Work: "cut", Key: "cut 121", Serials: one, By: "8", Pieces: 1, Minutes: 1},
		{Work: "lay", Key: "lay T1 1", Serials: one, By: "7", Pieces: len(s.Branches[0].Layers[1].Members), Minutes: 20},
		{Work: "tests", Key: run.HoldBare, Serials: one, By: "8", Pieces: 1, Minutes: 24},
		{Work: "tests", Key: run.HoldBare, Serials: one, By: "8", Pieces: 1, Minutes: 1},
		{Work: "cut", Key: "cut 110", Serials: []string{"003", "004"}, By: "7", Pieces: 2, Minutes: 10},
		{Work: "cut", Key: "cut 111", Serials: []string{"004"}, By: "7", Pieces: 1, Minutes: 1}}
	if !reflect.DeepEqual(got, want) || breaks != 1 {
		t.Errorf("%+v, %d pauses, want\n%+v", got, breaks, want)
	}
	if r, _ := record.Of(s, "004"); len(r.Minutes) != 2 {
		t.Errorf("of serial 004: %+v", r.Minutes)
	}
	for _, c := range []struct {
		from, to string
		want     int // -1: none
	}{{"2026-12-31 23:50", "2027-01-01 00:05", 15}, {"2028-02-28 23:59", "2028-02-29 00:01", 2},
		{"2028-02-29 23:59", "2028-03-01 00:01", 2}, {"2027-02-28 23:59", "2027-03-01 00:01", 2},
		{"2027-03-01 10:00", "2027-03-01 10:30", 30}, {"2027-03-01 10:00", "2027-03-01 10:31", -1},
		{"yesterday", "2027-03-01 00:01", -1}, {"2027-03-01 00:01", "2027-13-01 00:01", -1},
		{"2027-03-01 00:01", "2027-03-01 24:01", -1}} {
		s := shop(t, func(b *model.Build) {
			b.Steps = []model.Ticked{{Key: "cut 101", At: model.Some(c.from)}, {Key: "cut 102", At: model.Some(c.to)}}
		})
		got, _ := record.Minutes(s)
		if c.want < 0 && len(got) == 0 || len(got) == 1 && got[0].Minutes == c.want {
			continue
		}
		t.Errorf("%s to %s: %+v, want %d", c.from, c.to, got, c.want)
	}
}

// What a harness is expected to take, by hand: of each kind of work its pieces times the minutes of one that
// were accepted; what nothing is accepted of is named. With nothing accepted nothing is expected.
func TestHoursToExpect(t *testing.T) {
	s := calctest.Laid(t, "example")
	if _, known := record.Expect(s); known {
		t.Error("hours are expected by nothing")
	}
	cat := catalogue.Merge(s.Base, &catalogue.Catalogue{Corrections: []catalogue.Correction{
		{Of: "minutes, cut", Each: 1.5, EachSpread: 0.5, Pieces: 60}, {Of: "minutes, weigh", Each: 4, EachSpread: 1, Pieces: 8},
		{Of: "minutes, lay", Each: 2, Pieces: 10}, {Of: "minutes, lay", Withdrawn: true},
		{Of: "minutes, contacts", Each: 0, Pieces: 4}}}) // no minutes tell nothing
	h, known := record.Expect(calc.Build(run.Written(s), cat, nil))
	cuts := float64(len(s.H.Wires))
	off := math.Sqrt(0.25*(cuts+cuts*cuts/60) + 1*(1+1.0/8))
	if !known || h.Kinds != 2 || math.Abs(h.Minutes-(1.5*cuts+4)) > 1e-9 || math.Abs(h.Spread-off) > 1e-9 {
		t.Errorf("%+v, known %v, want %.1f minutes off by %.2f", h, known, 1.5*cuts+4, off)
	}
	if !slices.Contains(h.Lacks, "lay") || !slices.Contains(h.Lacks, "contacts") ||
		!slices.Contains(h.Lacks, record.Tests) || slices.Contains(h.Lacks, "cut") ||
		slices.Contains(h.Lacks, "holds") {
		t.Errorf("without %q", h.Lacks)
	}
}

// By the catalogue that a serial was begun with a branch may have no lay-up: that of today is proposed for other wires. Of its layers the
// record has nothing then; what is read of them is told once the file has them laid.
func TestBegunWithoutALayUp(t *testing.T) {
	s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6}, "", "")
	key := catalogue.WireKey{Spec: "own", Size: "16"}
	wire := s.Base.Wires[key]
	wire.OverMM = 1.20
	other := catalogue.Merge(s.Base, &catalogue.Catalogue{Wires: map[catalogue.WireKey]catalogue.Wire{key: wire}})
	for _, laid := range []bool{false, true} {
		h := s.H.EditBuild("1", func(b *model.Build) {
			b.GoesBy, b.Shelf = built.GoesBy(s), built.Shelf(s)
			b.Readings = []model.Reading{{Branch: "T", Layer: 1, OverMM: []unit.Millimetre{3.3}}}
		})
		if !laid {
			h = h.EditBranch(0, func(b *model.Branch) { b.Layers, b.Make = nil, model.Opt[model.Make]{} })
		}
		now := calc.Complete(h, other, nil)
		if len(now.Branches[0].Layers) != 2 {
			t.Fatalf("today it has %d layers", len(now.Branches[0].Layers))
		}
		want := 0
		if laid {
			want = 2
		}
		if r, ok := record.Of(now, "1"); !ok || len(r.Layers) != want {
			t.Errorf("laid in the file %v: %+v", laid, r.Layers)
		}
	}
}

// Work of which nothing is to be done is not expected: where there is no wire nothing is tested and nothing is cut.
func TestNoWorkOfNothing(t *testing.T) {
	for _, wires := range []int{0, 1} {
		s := calctest.Carrying(t, 20, "", calctest.Repeated(wires, "22 1"), nil, "")
		hours, known := record.Expect(s)
		for _, work := range []string{record.Tests, run.CutStep.Work()} {
			if known || slices.Contains(hours.Lacks, work) != (wires > 0) {
				t.Errorf("%d wires, %s: %+v", wires, work, hours)
			}
		}
	}
}
