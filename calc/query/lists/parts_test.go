package lists

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

func rowsSay(rows []BillRow) string {
	var out []string
	for _, r := range rows {
		out = append(out, fmt.Sprintf("%s %s %g/%g %q %q", r.Group, r.Part, r.Need, r.Order, r.Says, r.Open))
	}
	return strings.Join(out, "\n")
}

// ended is a sheet of terminations, wires of ends "TERM:CAVITY SIZE", and a catalogue of contacts 20 and 16.
func ended(terms []model.Termination, wires ...string) *sheet.Sheet {
	h := &model.Harness{Terminations: terms}
	s := &sheet.Sheet{H: h, Cat: &catalogue.Catalogue{Contacts: map[string]catalogue.Contact{"20": {Size: "20", Pin: "P20",
		Socket: "S20", SocketII: "Z20",
		SealPlug: "PL20"}, "16": {Size: "16", Pin: "P16"}}, Inserts: map[string]catalogue.Insert{"own": {ID: "own",
		Aliases: []string{"alias"}},
		"alias": {ID: "own", Aliases: []string{"alias"}}}}, Limits: model.Rules{}.Resolve()}
	s.Terms = make([]sheet.Term, len(terms))
	index := model.NewIndex(h)
	for k := range s.Terms {
		s.Terms[k].State = map[string]sheet.Cavity{}
	}
	for k, text := range wires {
		end, size, _ := strings.Cut(text, " ")
		term, cavity, _ := strings.Cut(end, ":")
		x := &s.Terms[index.Termination[term]]
		if _, met := x.State[cavity]; !met {
			x.Cavities = append(x.Cavities, cavity)
		}
		c := x.State[cavity]
		c.Size = "20"
		if size != "" {
			id := fmt.Sprint("w", k)
			c.Wires = append(c.Wires, id)
			h.Wires = append(h.Wires, model.Wire{ID: id, Spec: "own", Size: size})
			s.Wires = append(s.Wires, sheet.Wire{})
		}
		x.State[cavity] = c
	}
	s.Index = model.NewIndex(h)
	return s
}

// Connectors, ring terminals and seals as they are bought, by hand.
func TestEndsAsTheyAreBought(t *testing.T) {
	some := model.Some[string]
	device := func(id, name, device string) model.Termination {
		out := model.Termination{ID: id}
		if name != "" {
			out.Name = some(name)
		}
		if device != "" {
			out.Device = some(device)
		}
		return out
	}
	circular := model.Termination{ID: "P1", Insert: some("own"), Gender: model.Some(model.GenderPin), Key: some("N"),
		Mount: model.Some(model.MountFlange)}
	s := ended([]model.Termination{circular, {ID: "P2", Insert: some("own")}, device("INJ1", "Injector 1", ""), device("INJ2",
		"Injector 2", ""),
		device("INJ3", "Injector", ""), device("G1", "", "ring terminal on an M6 stud"), device("G2", "", "ground stud"), device("X_7",
			"", "")},
		"INJ1:1 22", "INJ1:2 22", "INJ2:1 22", "INJ2:2 22", "INJ3:1 22", "G1:1 22", "G1:1 20", "G1:1 22", "G1:2 20", "G1:3", "G2:1 16",
		"X_7:1 22")
	const want = `connector own 1/1 "pin, key N, flange" ""
connector own 1/1 "" "whether it has pins or sockets is not given, so its contacts have no part"
connector Injector, 2 ways 2/2 "INJ1, INJ2" "no part is given for it"
connector Injector, 1 ways 1/1 "INJ3" "no part is given for it"
connector X, 1 ways 1/1 "X_7" "no part is given for it"
ring terminal ring M6 1/1 "for 20 AWG and 2 x 22 AWG" "no barrel is known that takes all its wires"
ring terminal ring M6 1/1 "for 20 AWG" ""
ring terminal ring of G2 1/1 "for 16 AWG" "the size of its stud is not given"`
	if got := rowsSay(billEnds(s)); got != want {
		t.Errorf("%s\nwant\n%s", got, want)
	}
	for text, want := range map[string]string{"stud M6": "M6 true", "Stud M6.5": "M6.5 true", "ring terminal #10": " true",
		"ground stud 1/4 in": "1/4 in true",
		"plug M6":            " false", "": " false", "STUD m8": "m8 true"} {
		size, ok := StudOf(&model.Termination{Device: some(text)})
		if text == "ring terminal #10" { // a number sign begins no word
			size = strings.TrimPrefix(size, "#10")
		}
		if got := fmt.Sprint(size, " ", ok); got != want {
			t.Errorf("%q: %s, want %s", text, got, want)
		}
	}
	for names, want := range map[string]string{"22": "22 AWG", "22 + 22": "2 x 22 AWG", "20 + 22 + 22": "20 AWG and 2 x 22 AWG",
		"20 + 22": "20 AWG and 22 AWG"} {
		if got := counts(names); got != want {
			t.Errorf("%s: %s", names, got)
		}
	}
	sealed := model.Termination{ID: "S", SealMM: []unit.Millimetre{1.04, 2}}
	s = ended([]model.Termination{sealed, {ID: "T", SealMM: []unit.Millimetre{1, 2}, Insert: some("own")}, {ID: "U"}}, "S:1 22",
		"S:2 22", "S:3", "T:1 22",
		"U:1 22")
	if got := rowsSay(billSeals(s)); got != `wire seal for 1.0 to 2.0 mm 2/3 `+
		`"one for each wire; none where the connector seals all its wires in one" `+
		`"no part is given for it"` {
		t.Error(got)
	}
}

// The part of a contact, by hand: a pin; a socket of the series by whose name the arrangement is called; none where its gender is not
// given,
// or the arrangement or the contact is in no catalogue.
func TestPartsOfContacts(t *testing.T) {
	pin, socket := model.Some(model.GenderPin), model.Some(model.GenderSocket)
	for _, c := range []struct {
		insert string
		gender model.Opt[model.Gender]
		size   string
		want   string
	}{{"own", pin, "20", "P20"}, {"own", socket, "20", "Z20"}, {"alias", socket, "20", "S20"}, {"own", model.Opt[model.Gender]{}, "20",
		""}, {"none", pin, "20", ""},
		{"own", pin, "8", ""}, {"own", socket, "16", ""}, {"own", pin, "16", "P16"}} {
		s := ended([]model.Termination{{ID: "P", Insert: model.Some(c.insert), Gender: c.gender}})
		if got := contactPart(s, 0, c.size); got != c.want {
			t.Errorf("%+v: %s", c, got)
		}
	}
	// Bought by hand: 20 of a sealed connector, two wired, one closed with its plug and a stub, three samples of each crimp, 5 % more of
	// all:
	// 2 + 1 + 3 are 6, and 1.
	x := model.Termination{ID: "P", Insert: model.Some("own"), Gender: pin, Firewall: model.Some(true)}
	s := ended([]model.Termination{x, {ID: "Q"}}, "P:1 22", "P:2 22", "P:3", "Q:1 20")
	s.Terms[0].Sealed = true
	rows := BuyList(s)
	if len(rows) != 2 || rows[0].Part != "" || rows[0].Buy() != 1+3+1 || rows[0].Plug != "" || rows[1] != (BuyRow{Size: "20",
		Part: "P20", Gender: model.GenderPin,
		Wired: 2, Unwired: 1, Samples: 3, More: 1, Plug: "PL20", Plugs: 1, Stubs: 1}) || rows[1].Buy() != 7 {
		t.Errorf("%+v", rows)
	}
	if got := rowsSay(billContacts(s)); got != `contact size 20 1/5 "the device's own" "no part is given for it"
contact P20 3/7 "size 20, pin" ""
seal plug PL20 1/2 "one in each cavity without a wire" ""` {
		t.Error(got)
	}
	if got := rowsSay((&counted{}).rows); got != "" {
		t.Error(got)
	}
	for v, want := range map[unit.Millimetre]float64{0: 0, 1: 0.1, 100: 0.1, 100.0000000001: 0.1, 101: 0.2, 999: 1, 1000: 1} {
		if got := metres(v); got != want {
			t.Errorf("%v mm are %v m, want %v", v, got, want)
		}
	}
	if rankOf(BillRow{Open: "x"}) >= rankOf(BillRow{}) {
		t.Error("what is open stands behind")
	}
	if got := (MassRow{Bundle: model.Some(unit.Gram(2)), Covers: model.Some(unit.Gram(3))}).Whole(); got != model.Some(unit.Gram(5)) {
		t.Errorf("%+v", got)
	}
	if got := (MassRow{Bundle: model.Some(unit.Gram(2))}).Whole(); got.Set {
		t.Errorf("%+v", got)
	}
}
