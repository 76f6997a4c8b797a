package wirelist_test

import (
	"slices"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// of reads a list that stands in a test.
func of(t *testing.T, name, text string) (model.Harness, string) {
	t.Helper()
	return with(t, name, text, draft.Options{})
}

// with reads it so.
func with(t *testing.T, name, text string, opt draft.Options) (model.Harness, string) {
	t.Helper()
	tables, err := table.Read(name, []byte(text), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, rep, err := wirelist.Import(tables, opt)
	if err != nil {
		t.Fatal(err)
	}
	sound(t, h)
	return h, strings.Join(rep.Full(), "\n")
}

// ends is "from to" of each wire, in order.
func ends(h model.Harness) string {
	var all []string
	for _, w := range h.Wires {
		all = append(all, strings.TrimSpace(w.From.V+" "+w.To.V))
	}
	return strings.Join(all, ", ")
}

// Every way of writing two cavities of one connector in a cell gives both, and none of them
// a connector of its own.
func TestSeveralEndsInOneCell(t *testing.T) {
	for cell, want := range map[string]string{
		"ECU:A6, ECU:A7":        "ECU:A6 X:1, ECU:A7 X:1",
		"ECU:A10 & A11":         "ECU:A10 X:1, ECU:A11 X:1",
		"ECU:A14 A15":           "ECU:A14 X:1, ECU:A15 X:1",
		"ECU:A8/A9":             "ECU:A8 X:1, ECU:A9 X:1",
		"ECU:A12+A13":           "ECU:A12 X:1, ECU:A13 X:1",
		"ECU:A1; ECU:A2":        "ECU:A1 X:1, ECU:A2 X:1",
		"ECU:A1 and A2":         "ECU:A1 X:1, ECU:A2 X:1",
		"ECU:3 / TCU:7":         "ECU:3 X:1, TCU:7 X:1",
		"ECU:A16-A18":           "ECU:A16 X:1, ECU:A17 X:1, ECU:A18 X:1",
		"ECU:A16 to A18":        "ECU:A16 X:1, ECU:A17 X:1, ECU:A18 X:1",
		"ECU:3":                 "ECU:3 X:1",
		"ECU: 3":                "ECU:3 X:1",
		"ECU:pin 3":             "ECU:3 X:1",
		"ECU:B2 (shield)":       "ECU:B2 X:1",
		"BAT:+":                 "BAT:+ X:1",
		"BAT:B+":                "BAT:B+ X:1",
		"Relay, fuel pump:30":   "Relay:30 X:1",
		"Relay 30/87:1":         "Relay-30:1 X:1",
		"Dash and console:A, B": "Dash-and-console:A X:1, Dash-and-console:B X:1",
		"ECU:see drawing":       "X:1", // kept in the note
		"PDM:J1:3":              "PDM-J1:3 X:1",
	} {
		h, report := of(t, "list.csv", "Wire,From,To,Gauge\n1,\""+cell+"\",X:1,22\n")
		got := ends(h)
		if got != want {
			t.Errorf("%q: %s, want %s\n%s", cell, got, want, report)
		}
	}
}

// Two lines of a cell, a range and the word for a pin are cavities; a name that has a dash
// in it stays one where others of its table have one too.
func TestCavitiesOfOneCell(t *testing.T) {
	for _, c := range []struct{ name, list, want string }{
		{"two lines", "Pin,Function,Gauge\n\"6\n7\",Ground,22\n8,Lamp,22\n", "list:6, list:7, list:8"},
		{"a range", "Pin,Function,Gauge\n1,Lamp,22\n2,Horn,22\n10-12,Ground,20\n", "list:1, list:2, list:10, list:11, list:12"},
		{"names with dashes", "Pin,Function,Gauge\n1-1,Lamp,22\n1-2,Horn,22\n2-1,Ground,20\n", "list:1-1, list:1-2, list:2-1"},
		{"a range that stands there already", "Pin,Function,Gauge\n1,Lamp,22\n2,Horn,22\n3,Pump,22\n1-3,Ground,20\n",
			"list:1, list:2, list:3, list:1-3"},
		{"rows and numbers", "Pin,Function,Gauge\nA1,Lamp,22\nA16-A18,Ground,20\n", "list:A1, list:A16, list:A17, list:A18"},
		{"zeros", "Pin,Function,Gauge\n01,Lamp,22\n02,Lamp 2,22\n08-10,Ground,20\n", "list:01, list:02, list:08, list:09, list:10"},
		{"a name in two parts", "Pin,Function,Gauge\nA 1,Lamp,22\nA 2,Horn,22\n", "list:A 1, list:A 2"},
		{"the word", "Pin,Function,Gauge\nPin 1,Lamp,22\n#2,Horn,22\n", "list:1, list:2"},
	} {
		if h, report := of(t, "list.csv", c.list); ends(h) != c.want {
			t.Errorf("%s: %s, want %s\n%s", c.name, ends(h), c.want, report)
		}
	}
}

// What a place without a wire is called, in many words; what is a signal stays one.
func TestFreePlaces(t *testing.T) {
	for signal, want := range map[string]string{
		"reserved for traction unit": "reserved", "Reserviert für Pumpe": "reserved", "future CAN 2": "reserved", "TBD": "reserved",
		"???":        "reserved",
		"not fitted": "blank", "Do not use": "blank", "blanking plug": "blank", "open": "blank", "NC - leave empty": "blank",
		"N/C (plug)": "blank", "not used, seal plug": "blank", "nicht bestückt": "blank", "ne pas utiliser": "blank", "SPARE": "blank",
		"spare injector 3": "wire", "open wheel speed": "wire", "plug heater": "wire", "Reserve pump": "wire", "key": "wire",
		"reservoir level": "wire", "futures": "wire", "Tank, reserve": "wire",
	} {
		h, report := of(t, "list.csv", "Pin,Function,Gauge\n1,Lamp,22\n2,\""+signal+"\",\n")
		got := "blank"
		switch {
		case slices.Contains(h.Terminations[0].Reserved, "2"):
			got = "reserved"
		case len(h.Wires) == 2:
			got = "wire"
		}
		if got != want {
			t.Errorf("%q is %s, want %s\n%s", signal, got, want, report)
		}
	}
	for _, signal := range []string{"SPARE 1", "spare (capped)", "Spare-2", "wired spare", "Reserve 3", "spare, capped and stowed"} {
		if h, report := of(t, "list.csv", "Pin,Function,Gauge\n1,Lamp,22\n2,\""+signal+"\",22\n"); len(h.Wires) != 2 ||
			h.Wires[1].Role.V != model.RoleSpare {
			t.Errorf("%q: %+v\n%s", signal, h.Wires, report)
		}
	}
}

// A wire whose far end only one of two pin tables gives is one wire; where the other table
// says that place is free, or calls it otherwise, it is told.
func TestFarEndInOneTableAlone(t *testing.T) {
	list := func(far string) string {
		return "## J1\n\n| Pin | Function | To | Gauge | Colour |\n|---|---|---|---|---|\n| 1 | Oil signal | P7:3 | 22 | red |\n\n## " +
			"P7\n\n| Pin | Function | Colour |\n|---|---|---|\n| 3 | " + far + " |\n| 4 | Lamp | red |\n"
	}
	h, report := of(t, "list.md", list("Oil signal | blue"))
	if ends(h) != "J1:1 P7:3, P7:4" || strings.Count(report, "one net, two colours") != 1 {
		t.Errorf("%s\n%s", ends(h), report)
	}
	if h, report := of(t, "list.md", list("signal | red")); ends(h) != "J1:1 P7:3, P7:4" ||
		!strings.Contains(h.Wires[0].Note.V, "name at P7:3: signal") {
		t.Errorf("%s\n%s", ends(h), report)
	}
	if _, report := of(t, "list.md", list("Water | red")); !strings.Contains(report, "stop: one cavity, two nets") {
		t.Error(report)
	}
	if _, report := of(t, "list.md", list("not used | ")); !strings.Contains(report, "stop: free in one place, wired in another: P7:3") {
		t.Error(report)
	}
}

// Gauges as shops write them.
func TestGaugesOfShops(t *testing.T) {
	for text, want := range map[string]value.Gauge{
		"22 sh":           {Size: "22", Shielded: true},
		"0.5 sq mm":       {Size: "0.5mm2"},
		"0.5 sq. mm":      {Size: "0.5mm2"},
		"0.5 mm sq":       {Size: "0.5mm2"},
		"22AWG M22759/16": {Size: "22", Spec: "AS22759/16"},
		"M22759/16 22AWG": {Size: "22", Spec: "AS22759/16"},
		"M22759/16-22 sh": {Size: "22", Spec: "AS22759/16", Shielded: true},
		"FLRY 0.5":        {Size: "0.5mm2", Spec: "ISO 6722 thin"},
		"FLRY-B 1":        {Size: "1mm2", Spec: "ISO 6722 thin"},
		"FLRY 2x0,5":      {Size: "0.5mm2", Spec: "ISO 6722 thin", Conductors: 2},
		"18 TXL":          {Size: "18", Spec: "SAE J1128 TXL"},
		"2x0,5 gesch.":    {Size: "0.5mm2", Conductors: 2, Shielded: true},
		"2x24 twstd shld": {Size: "24", Conductors: 2, Shielded: true, Twisted: true},
	} {
		if got, ok := value.ParseGauge(text, value.BareAWG, value.MarkUnknown); !ok || got.String() != want.String() ||
			got.Spec != want.Spec {
			t.Errorf("%q: %v %+v", text, ok, got)
		}
	}
	for _, text := range []string{"M22759/16-22 20AWG", "22 FLRY AWG FLRY", "0.5 mm", "sq 22", "22 24"} {
		if got, ok := value.ParseGauge(text, value.BareAWG, value.MarkUnknown); ok {
			t.Errorf("%q is %+v", text, got)
		}
	}
	// A size with its unit is taken, and what else stands there is kept.
	h, report := of(t, "list.csv", "Wire,From,To,Gauge\n1,A:1,B:1,22 AWG high strand\n2,A:2,B:2,2x22 AWG + 1x24 AWG\n3,A:3,B:3,22 hs\n")
	if h.Wires[0].Size != "22" || h.Wires[0].Note.V != "size: 22 AWG high strand" || h.Wires[1].Size != "" || h.Wires[2].Size != "" ||
		strings.Count(report, "more than a size") != 1 {
		t.Errorf("%+v\n%s", h.Wires, report)
	}
}

// Twists and shields in columns of their own make units, and the drain of a shield is no wire.
func TestTwistsAndShields(t *testing.T) {
	h, report := of(t, "list.csv", "Pin,Function,Gauge,Twist,Screen\n1,CAN H,24,TP1,\n2,CRANK +,24,TP2,S1\n3,CAN L,24,TP1,\n4,CRANK "+
		"-,24,TP2,S1\n5,CRANK drain,,,\n6,Lamp,22,no,-\n7,CAM +,24,y,y\n8,CAM -,24,y,y\n")
	if len(h.Units) != 3 || len(h.Wires) != 7 {
		t.Fatalf("%d units, %d wires\n%s", len(h.Units), len(h.Wires), report)
	}
	by := map[string]model.Unit{}
	for _, u := range h.Units {
		by[u.ID], by[u.Name.V] = u, u
	}
	if u := by["TP1"]; u.Shield.V || strings.Join(u.Wires, " ") != "1 3" {
		t.Errorf("%+v", u)
	}
	if u := by["TP2"]; !u.Shield.V || strings.Join(u.Wires, " ") != "2 4" || u.DrainFrom.V != "list:5" {
		t.Errorf("%+v", u)
	}
	if u := by["CAM"]; !u.Shield.V || strings.Join(u.Wires, " ") != "6 7" {
		t.Errorf("%+v", u)
	}
	// One shield over two pairs is none that is made here, and is told once.
	if h, report := of(t, "list.csv", "Pin,Function,Gauge,Pair/Shield\n1,A +,24,\"TP1, SH1\"\n2,A -,24,\"TP1, SH1\"\n3,B +,24,\"TP2, "+
		"SH1\"\n4,B -,24,\"TP2, SH1\"\n"); len(h.Units) != 2 || h.Units[0].Shield.V || strings.Count(report,
		"a shield over more than one unit") != 1 || h.Wires[0].Note.V != "shield: SH1" {
		t.Errorf("%+v\n%s", h.Units, report)
	}
	// A drain of nothing is a wire, in its place.
	if h, _ := of(t, "list.csv", "Pin,Function,Gauge\n1,Lamp,22\n2,Shield,22\n3,Horn,22\n"); ends(h) != "list:1, list:2, list:3" {
		t.Error(ends(h))
	}
	// In a table without ids the wires are called by their cavities.
	if h, report := of(t, "list.csv", "Pin,Function,Gauge,Notes\nA,X +,24,twisted with B\nB,X -,24,\n"); len(h.Units) != 1 {
		t.Errorf("%s", report)
	}
}

// Headings that a shop uses.
func TestHeadingsOfShops(t *testing.T) {
	h, report := of(t, "list.csv", "Plug,Pin,Function,Cond. colour,Gauge\nJ1,1,Lamp,red,22\nJ2,1,Lamp,red,22\n")
	if ends(h) != "J1:1 J2:1" || h.Wires[0].Colour.V != "2" {
		t.Errorf("%s %v\n%s", ends(h), h.Wires, report)
	}
	if h, report := of(t, "liste.tsv", "Rep\tDépart\tArrivée\tSection\n7\tA:1\tB:1\t0,6\n"); len(h.Wires) != 1 || h.Wires[0].ID != "7" {
		t.Errorf("%v\n%s", h.Wires, report)
	}
}

// A row of one text between the rows of a pin table starts a connector where it names one,
// and is a remark where it does not.
func TestConnectorsBetweenRows(t *testing.T) {
	h, report := of(t, "list.csv", "Pin,Function,Gauge\nConnector J1,,\n1,Lamp,22\nto be checked,,\n2,Horn,22\nJ2 "+
		"dash,,\n1,Lamp,22\nRear bulkhead,,\n1,Pump,20\nend of list here,,\n")
	if ends(h) != "J1:1 J2:1, J1:2, Rear-bulkhead:1" {
		t.Errorf("%s\n%s", ends(h), report)
	}
	for _, want := range []string{"remark between the rows: to be checked", "below the table: end of list here"} {
		if !strings.Contains(report, want) {
			t.Errorf("%q is not in\n%s", want, report)
		}
	}
}

// A formula that nobody has worked out and the error of one are no ends, and one list given
// twice is read once.
func TestWhatIsNoValue(t *testing.T) {
	h, report := of(t, "list.csv", "Wire,From,To,Gauge\n1,=A:2,B:1,22\n2,#REF!,B:2,22\n3,\"=\"\"A:3\"\"\",B:3,22\n")
	if ends(h) != "B:1, B:2, A:3 B:3" || !strings.Contains(report, "formula without a value: =A:2") ||
		!strings.Contains(report, "error value of a spreadsheet: #REF!") || h.Wires[0].Note.V != "From: =A:2" {
		t.Errorf("%s\n%s", ends(h), report)
	}
	one, err := table.Read("a.csv", []byte("Wire,From,To\n1,A:1,B:1\n"), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	two, _ := table.Read("b.csv", []byte("Wire,From,To\n1,A:1,B:1\n"), table.Limits{})
	if h, rep, err := wirelist.Import(append(one, two...), draft.Options{}); err != nil || len(h.Wires) != 1 ||
		!strings.Contains(strings.Join(rep.Full(), "\n"), "the same table twice: a.csv; read once") {
		t.Errorf("%v %s", err, rep.Full())
	}
	// Of two lists the row alone does not say where the first one stands.
	two, _ = table.Read("b.csv", []byte("Wire,From,To\n1,A:1,B:2\n"), table.Limits{})
	if _, rep, err := wirelist.Import(append(one, two...), draft.Options{}); err != nil || !strings.Contains(strings.Join(rep.Full(), "\n"),
		"1 as in a.csv row 2, now 1-2") {
		t.Errorf("%v %s", err, rep.Full())
	}
}
