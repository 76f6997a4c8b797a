package add

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// lamp is a kind of device with everything that a row can have.
func lamp() catalogue.Device {
	taken := func(from string) catalogue.Taken { return catalogue.Taken{Standing: catalogue.Practice, From: from} }
	return catalogue.Device{ID: "lamp", Names: []string{"lamp, own", "beacon"}, Prefix: []string{"LMP", "BCN"}, Group: "own", Cavities: 3,
		Layout: taken("own drawing"), Ask: "its colour", Note: "Keep it dry", Carries: []catalogue.DeviceCavity{
			{Cavity: "1", What: "feed, switched", Role: "power", Far: "feed", Feed: "lamps", Size: "20", SizeIs: taken("own list"), Amps: 3,
				AmpsIs: taken("own reading"), OnS: 2, PeriodS: 10, RestA: 1, DutyIs: taken("own reading"), PeakA: 9, PeakS: 0.1,
				PeakIs: taken("own reading"), Return: "2"},
			{Cavity: "2", What: "ground, case", Role: "ground", Far: "star point", Size: "20", SizeIs: taken("own list"), Amps: 3,
				AmpsIs: taken("own reading")},
			{Cavity: "3", What: "signal", Role: "signal", Far: "controller", SizeIs: taken("ask the maker"), LimitA: 1,
				LimitIs: taken("own list")}}}
}

// told is everything that was told: chosen, missing, to ask for or outside, about what.
func told(a Added) []string {
	var out []string
	for _, g := range a.Says {
		kind := map[GuessKind]string{Chosen: "chosen", Missing: "missing", Ask: "ask", Outside: "outside"}[g.Kind]
		out = append(out, fmt.Sprintf("%s %s %s: %s", kind, g.About, strings.Join(g.Of, "+"), g.Says))
	}
	return out
}

func sameLines(t *testing.T, what string, got, want []string) {
	t.Helper()
	for k := range max(len(got), len(want)) {
		switch {
		case k >= len(got):
			t.Errorf("%s: missing: %s", what, want[k])
		case k >= len(want):
			t.Errorf("%s: too many: %s", what, got[k])
		case got[k] != want[k]:
			t.Errorf("%s:\ntold %s\nwant %s", what, got[k], want[k])
		}
	}
}

// Everything that is told of two lamps of 3 A, on for 2 s in every 10 and 1 A in between, whose feed they share: 6 A and 2 A,
// RMS √((36 · 2 + 4 · 8) / 10) = 3.22 A, for which 20 AWG, no thinner than their own wires, has 7 A (AC 43.13-1B table 11-9).
func TestEverythingIsTold(t *testing.T) {
	s := calctest.Built(t, trunk)
	s = calc.Build(s.H, catalogue.Merge(s.Base, &catalogue.Catalogue{Devices: []catalogue.Device{lamp()}}), nil)
	ask := DevicesAsk{Kind: "lamp", Count: 2, At: "J1", Controller: "P2", LengthsMM: []unit.Millimetre{200}}
	a, err := Devices(s, ask)
	if err != nil {
		t.Fatal(err)
	}
	wires := "101+102+103+104+105+106+107"
	sameLines(t, "two lamps", told(a), []string{
		"chosen id LMP1+LMP2: LMP1, LMP2: the next free ids. Named Lamp 1, Lamp 2",
		"chosen cavities LMP1+LMP2: LMP1, LMP2: 3 cavities each, 1, 2, 3. Names and order differ by maker: check the part",
		"missing contacts LMP1+LMP2: LMP1, LMP2: contact sizes and seals are not known. Read them off the part",
		"chosen branch L1+L2: LMP1, LMP2: legs L1, L2, from J1",
		"missing length_mm L2: L2: not measured yet",
		"chosen splice S1: S1 at J1 joins the feeds of LMP1, LMP2: give its sleeve a place clear of the breakout",
		"chosen amps 101: 101 feeds S1: 2 times 3 A, 6 A",
		"chosen size 101: 101: AS22759/32 20 AWG. Its size may carry 7 A in a full bundle at 70 C",
		"chosen role 102+105: 102, 105: feed, switched, cavity 1; role power",
		"chosen role 103+106: 103, 106: ground, case, cavity 2; role ground",
		"chosen role 104+107: 104, 107: signal, cavity 3; role signal",
		"chosen return 102+105: 102, 105: the current comes back by the wire of cavity 2",
		"chosen size 102+105+103+106: 102, 103, 105, 106: AS22759/32 20 AWG",
		"missing size 104+107: 104, 107: no size is known (ask the maker). AS22759/32 22 AWG holds the place: choose one",
		"chosen amps 102+105+103+106: 102, 103, 105, 106: 3 A",
		"missing amps 104+107: 104, 107: no current is known. The contact may carry 1 A: enter what flows",
		"chosen on_s 102+105: 102, 105: on for 2 s in every 10 s, 1 A in between",
		"chosen peak 102+105: 102, 105: 9 A for 0.1 s at first. The file does not hold that: choose fuse and output by it",
		"chosen from 102+105: 102, 105: from the splice S1",
		"chosen from 101: 101: the other end is put into P2. With this kind it goes to: feed",
		"chosen from 103+106: 103, 106: the other end is put into P2. With this kind it goes to: star point",
		"chosen cavity P2: At P2: 101 in A, 103 in B, 104 in C, 106 in D, 107 in E",
		"chosen colour " + wires + ": 101 to 107: colours are the next in stock that no other wire at the same ends has; the wires of a " +
			"splice share one",
		"ask ask LMP1+LMP2: Such devices differ. Ask for its colour",
		"chosen note LMP1+LMP2: Keep it dry",
	})
	if w := wireOf(t, a.H, "101"); w.Amps.V != 6 || w.OnS.V != 2 || w.PeriodS.V != 10 || w.RestA.V != 2 || w.Signal.V != "Lamps feed" ||
		w.Role.V != model.RolePower || w.Return.Set || w.To.V != "S1" {
		t.Errorf("%+v", w)
	}
	if w := wireOf(t, a.H, "105"); w.Amps.V != 3 || w.OnS.V != 2 || w.PeriodS.V != 10 || w.RestA.V != 1 || w.Return.V != "106" ||
		w.Signal.V != "Lamp 2 feed" || w.To.V != "LMP2:1" || w.Spec != "AS22759/32" || w.Size != "20" {
		t.Errorf("%+v", w)
	}
	if w := wireOf(t, a.H, "104"); w.Amps.Set || w.Size != "22" || w.Signal.V != "Lamp 1 signal" || w.Return.Set || w.OnS.Set {
		t.Errorf("%+v", w)
	}
	// The second name has its own ids; the specification and size are those asked for; what no catalogue has is told.
	a, err = Devices(s, DevicesAsk{Kind: "lamp", Name: "beacon", Count: 3, Spec: "own", Size: "18", Ends: map[string]string{"feed": "P1"}})
	if err != nil {
		t.Fatal(err)
	}
	const missing = "no connector is given for the other end, which goes to: "
	sameLines(t, "three beacons", told(a), []string{
		"chosen id BCN1+BCN2+BCN3: BCN1 to BCN3: the next free ids. Named Beacon 1 to Beacon 3",
		"chosen cavities BCN1+BCN2+BCN3: BCN1 to BCN3: 3 cavities each, 1, 2, 3. Names and order differ by maker: check the part",
		"missing contacts BCN1+BCN2+BCN3: BCN1 to BCN3: contact sizes and seals are not known. Read them off the part",
		"missing branch BCN1+BCN2+BCN3: BCN1 to BCN3: on no branch yet, so the wires have no way",
		"missing splice : A splice lies at a breakout, and the legs hang on none: each device has a feed of its own",
		"chosen role 101+104+107: 101, 104, 107: feed, switched, cavity 1; role power",
		"chosen role 102+105+108: 102, 105, 108: ground, case, cavity 2; role ground",
		"chosen role 103+106+109: 103, 106, 109: signal, cavity 3; role signal",
		"chosen return 101+104+107: 101, 104, 107: the current comes back by the wire of cavity 2",
		"chosen spec 101+104+107+102+105+108+103+106+109: 101 to 109: no catalogue has own: its diameter and its copper are not known",
		"chosen amps 101+104+107+102+105+108: 101, 102, 104, 105, 107, 108: 3 A",
		"missing amps 103+106+109: 103, 106, 109: no current is known. The contact may carry 1 A: enter what flows",
		"chosen on_s 101+104+107: 101, 104, 107: on for 2 s in every 10 s, 1 A in between",
		"chosen peak 101+104+107: 101, 104, 107: 9 A for 0.1 s at first. The file does not hold that: choose fuse and output by it",
		"missing from 102+105+108: 102, 105, 108: " + missing + "star point",
		"missing from 103+106+109: 103, 106, 109: " + missing + "controller",
		"chosen cavity P1: At P1: 101 in 1, 104 in 2, 107 in 3",
		"chosen colour 101+102+103+104+105+106+107+108+109: 101 to 109: colours are the next in stock that no other wire at the same " +
			"ends has; the wires of a splice share one",
		"ask ask BCN1+BCN2+BCN3: Such devices differ. Ask for its colour",
		"chosen note BCN1+BCN2+BCN3: Keep it dry",
	})
}

// A feed that no size of the table bears is told, and one for which the size that is asked for is too thin.
func TestFeedsThatAreTooThin(t *testing.T) {
	kind := lamp()
	kind.Carries[0].Amps, kind.Carries[0].OnS, kind.Carries[0].PeakA, kind.Carries[0].RestA = 200, 0, 0, 0
	s := calctest.Built(t, trunk)
	s = calc.Build(s.H, catalogue.Merge(s.Base, &catalogue.Catalogue{Devices: []catalogue.Device{kind}}), nil)
	ask := DevicesAsk{Kind: "lamp", Count: 2, At: "J1", Controller: "P2", LengthsMM: []unit.Millimetre{200, 200}, Spec: "own"}
	a, err := Devices(s, ask)
	if got := says(a, Missing, "size"); err != nil || !strings.HasPrefix(got,
		"101 carries more than any size of the table may: use several feeds; ") {
		t.Errorf("%v %q", err, got)
	}
	if got := says(a, Chosen, "amps"); !strings.HasPrefix(got, "101 feeds S1: 2 times 200 A, 400 A; ") {
		t.Errorf("%q", got)
	}
	ask.Size = "4/0"
	a, err = Devices(s, ask)
	if got := says(a, Missing, "size"); err != nil || got != "101 carries an RMS current of 400 A: 4/0 AWG is too thin for it in a "+
		"full bundle" {
		t.Errorf("%v %q", err, got)
	}
	// Outside what the sheet rates no current and no size of a feed is told, though a splice joins them.
	kind.Outside = "above 60 V"
	s = calc.Build(s.H, catalogue.Merge(s.Base, &catalogue.Catalogue{Devices: []catalogue.Device{kind}}), nil)
	ask.Size, ask.Spec = "", ""
	a, err = Devices(s, ask)
	if err != nil || len(a.Splices) != 1 || says(a, Chosen, "amps")+says(a, Missing, "amps") != "" || wireOf(t, a.H, "101").Amps.Set ||
		strings.Contains(says(a, Chosen, "size"), "may carry") || says(a, Outside, "outside") == "" {
		t.Errorf("%v %q", err, told(a))
	}
}

// All that is told of a connector, by its insert and by its number of cavities.
func TestConnectorsAreTold(t *testing.T) {
	s := calctest.Built(t, trunk)
	number, err := Connector(s, ConnectorAsk{Cavities: 3, Boot: model.Some("boot-45-8")})
	if err != nil {
		t.Fatal(err)
	}
	sameLines(t, "by number", told(number), []string{
		"chosen id P3: P3: the next free number",
		"chosen cavities P3: P3 has cavities 1 to 3. Give them the names that are on the part",
		"missing contacts P3: The contact size of P3 is not known: give it from the part",
		"chosen datum P3: P3: lengths start at the boot lip",
	})
	if c := number.H.Terminations[2]; c.Boot.V != "boot-45-8" || c.Datum.V != model.DatumBootLip || len(number.Terminations) != 1 {
		t.Errorf("%+v", c)
	}
	own := catalogue.Merge(s.Base, &catalogue.Catalogue{Inserts: map[string]catalogue.Insert{"own": {ID: "own",
		Cavities: []string{"1", "2", "3", "4"}, Shell: 99}}})
	insert, err := Connector(calc.Build(s.H, own, nil), ConnectorAsk{Insert: "own", ID: "Q", Datum: model.Some(model.DatumGrommet)})
	if err != nil {
		t.Fatal(err)
	}
	got := told(insert)
	sameLines(t, "by insert", got, []string{
		got[0],
		"chosen gender Q: Q has pins",
		"chosen key Q: Q has key N",
		"chosen mount Q: Q is in line",
		"missing boot Q: The catalogue has no straight boot for shell 99: Q has none",
	})
	if !strings.HasPrefix(got[0], "chosen cavities Q: Q has 4 cavities: ") {
		t.Errorf("%s", got[0])
	}
	with, err := Connector(s, ConnectorAsk{Insert: "14-35", Gender: model.Some(model.GenderPin), Key: model.Some("A"),
		Mount: model.Some(model.MountFlange), ID: "R"})
	if err != nil {
		t.Fatal(err)
	}
	got = told(with)
	sameLines(t, "answered", got[1:], []string{
		"chosen boot R: R has the straight boot of its shell, boot-straight-14",
		"chosen datum R: R: lengths start at the boot lip",
	})
}

// Wires are numbered on behind the highest of the kind that stands last; behind a name without a number they start at 101.
func TestNumbersOfNewWires(t *testing.T) {
	for _, c := range []struct {
		have []string
		want string
	}{{nil, "101"}, {[]string{"105", "103"}, "106"}, {[]string{"105", "lamp"}, "101"}, {[]string{"W9", "7"}, "8"}, {[]string{"7", "W9"},
		"W10"},
		{[]string{"101", "x"}, "102"}} {
		h := &model.Harness{}
		for _, id := range c.have {
			h.Wires = append(h.Wires, model.Wire{ID: id})
		}
		if got := (&maker{h: h}).wireID(); got != c.want {
			t.Errorf("behind %v: %s, want %s", c.have, got, c.want)
		}
	}
	if got := listOf(nil, "none at all"); got != "none at all" {
		t.Error(got)
	}
	for n, want := range map[int]string{1: "a", 8: "a, b, c, d, e, f, g, h", 9: "a, b, c, d, e, f, g, h and 1 more"} {
		if got := listOf(strings.Split("abcdefghi", "")[:n], ""); got != want {
			t.Errorf("%d: %s", n, got)
		}
	}
}

// A spare for which one end has no cavity is not made, and the end is named.
func TestSparesWithoutRoom(t *testing.T) {
	full := strings.Replace(trunk, "insert = \"18-32\"", "cavities = [\"1\"]", 1)
	s := calctest.Built(t, full)
	for _, ask := range []SparesAsk{{Count: 3, From: "P1", To: "P2"}, {Count: 3, From: "P2", To: "P1"}} {
		a, err := Spares(s, ask)
		if err != nil || len(a.Wires) != 1 ||
			says(a, Missing, "cavity") != "P2 has 1 free cavities that take 22 AWG, and 3 are needed: 2 wires are not made" {
			t.Errorf("%v %v %q", err, a.Wires, says(a, Missing, "cavity"))
		}
		made := calc.Build(a.H, s.Base, nil)
		if _, err := Spares(made, ask); err == nil || !strings.HasPrefix(err.Error(),
			"P2 has no free cavity that takes AS22759/32 22 AWG") {
			t.Errorf("%v", err)
		}
	}
	// One that has no room is told as well.
	if a, err := Spares(s, SparesAsk{Count: 2, From: "P1", To: "P2"}); err != nil ||
		says(a, Missing, "cavity") != "P2 has 1 free cavities that take 22 AWG, and 2 are needed: 1 wires are not made" {
		t.Errorf("%v %q", err, says(a, Missing, "cavity"))
	}
	if a, err := Spares(s, SparesAsk{Count: 1, From: "P1", To: "P2"}); err != nil || says(a, Missing, "cavity") != "" {
		t.Errorf("%v %q", err, says(a, Missing, "cavity"))
	}
	if _, err := Spares(s, SparesAsk{Count: 1, From: "P1", To: "P9"}); err == nil ||
		err.Error() != `there is no termination "P9"; allowed: P1, P2` {
		t.Errorf("%v", err)
	}
	empty := calc.Build(&model.Harness{}, s.Base, nil)
	if _, err := Spares(empty, SparesAsk{Count: 1, From: "P1", To: "P2"}); err == nil ||
		err.Error() != `there is no termination "P1"; allowed: none: the harness has no termination` {
		t.Errorf("%v", err)
	}
	// Of one colour in stock the second spare gets none.
	h := *s.H
	h.Rules.ColourStock = []string{"7"}
	a, err := Spares(calc.Build(&h, s.Base, nil), SparesAsk{Count: 3, From: "P1", CappedAt: "J1"})
	if err != nil || says(a, Missing, "colour") != "102, 103: no colour code is left at their ends: choose one" ||
		a.H.Wires[0].Colour.V != "7" ||
		a.H.Wires[1].Colour.Set {
		t.Errorf("%v %q", err, says(a, Missing, "colour"))
	}
}

// What was written over a harness, in words; branches that no tube fits are named and left bare.
func TestWhatWasProposedIsSaid(t *testing.T) {
	for want, c := range map[string]Covered{"": {}, "1 sheath": {Sheaths: 1}, "2 sheaths, 1 boot": {Sheaths: 2, Boots: 1},
		"3 boots": {Boots: 3},
		"1 sheath, 2 boots, other sheaths on T1, L2, where those named do not fit": {Sheaths: 1, Boots: 2,
			Replaced: []string{"T1", "L2"}}} {
		if got := c.Text(); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	bare := *calctest.Catalogue(t)
	bare.Tubes = nil
	s := calctest.Built(t, strings.ReplaceAll(calctest.OneSize(3, "22", "length_mm = 300.0\n"), "id = \"A\"\n",
		"id = \"A\"\ninsert = \"14-35\"\n"))
	got := Proposed(calc.Build(s.H, &bare, nil))
	if !slices.Equal(got.Bare, []string{"T1"}) || got.Sheaths != 0 || got.Boots != 1 ||
		got.H.Terminations[0].Boot.V != "boot-straight-14" ||
		got.H.Terminations[1].Boot.Set || len(got.H.Branches[0].Covers) != 0 || got.Text() != "1 boot" {
		t.Errorf("%+v", got)
	}
	full := Proposed(s)
	if full.Sheaths != 1 || full.Bare != nil || len(full.H.Branches[0].Covers) != 1 || full.Text() != "1 sheath, 1 boot" {
		t.Errorf("%+v", full)
	}
}
