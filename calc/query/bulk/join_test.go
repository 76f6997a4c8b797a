package bulk_test

import (
	"slices"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/phase/wires"
	"contralay/calc/query/bulk"
	"contralay/calc/sheet"
	"contralay/model"
)

// bank is a box with four lamps on legs of a trunk of ten metres, 1 A each, all on one fuse, laid.
const bank = `format = 1
[[termination]]
id = "BOX"
cavities = ["1", "2", "3", "4", "5", "6"]
[[termination]]
id = "L1"
cavities = ["1", "2", "3"]
[[termination]]
id = "L2"
cavities = ["1", "2"]
[[breakout]]
id = "J1"
[[breakout]]
id = "J2"
[[wire]]
id = "101"
signal = "Lamp feed"
from = "BOX:2"
to = "L1:1"
spec = "AS22759/32"
size = "20"
amps = 1.0
role = "power"
[[wire]]
id = "102"
signal = "Lamp feed"
from = "L1:2"
to = "BOX:1"
spec = "AS22759/32"
size = "20"
amps = 1.0
role = "power"
[[wire]]
id = "103"
signal = "Lamp feed"
from = "BOX:3"
to = "L2:1"
spec = "AS22759/32"
size = "20"
amps = 1.0
role = "power"
[[wire]]
id = "104"
from = "BOX:4"
to = "L2:2"
spec = "AS22759/32"
size = "20"
role = "ground"
[[wire]]
id = "105"
from = "L1:3"
to = "L2:3"
spec = "AS22759/32"
size = "20"
[[feed]]
id = "F1"
device = "blade"
amps = 10.0
wires = ["101", "102", "103"]
[[branch]]
id = "T"
from = "BOX"
to = "J1"
length_mm = 10000
make = "laid"
[[branch.layer]]
of = ["104"]
[[branch.layer]]
of = ["103", "101", "102"]
[[branch]]
id = "R"
from = "J1"
to = "J2"
length_mm = 100
[[branch]]
id = "LL1"
from = "J2"
to = "L1"
length_mm = 100
[[branch]]
id = "LL2"
from = "J1"
to = "L2"
length_mm = 100
`

// Three wires of 1 A are joined where their ways part. By hand: 3 A over 10 m of trunk may drop
// 0.5 V (AC 43.13-1B table 11-6), that is 16.7 mohm/m at most. Table 11-9 has 15.78 mohm/m for
// 16 AWG and 10.04 for 14 AWG at 20 °C; in air of 40 °C copper has 7.9 % more: 17.0 is too much,
// 10.8 is not.
func TestSpliceOf(t *testing.T) {
	s := calctest.Built(t, bank)
	got, err := bulk.SpliceOf(s, bulk.SpliceAsk{Wires: []string{"101", "102", "103"}})
	if err != nil {
		t.Fatal(err)
	}
	h := got.H
	if sp := h.Splices[0]; len(h.Splices) != 1 || sp.At != "J1" || sp.ID != "S1" {
		t.Errorf("%+v", h.Splices)
	}
	on := wire(t, h, got.Wires[0])
	if on.From.V != "BOX:1" || on.To.V != "S1" || on.Amps.V != 3 || on.Role.V != model.RolePower || on.Signal.V != "Lamp feed" ||
		on.Size != "14" {
		t.Errorf("%+v\n%s", on, got.Says)
	}
	if a, b := wire(t, h, "101"), wire(t, h, "102"); a.From.V != "S1" || a.To.V != "L1:1" || b.To.V != "S1" || b.From.V != "L1:2" {
		t.Errorf("%s %s, %s %s", a.From.V, a.To.V, b.From.V, b.To.V)
	}
	if !slices.Equal(h.Feeds[0].Wires, got.Wires) {
		t.Errorf("on the feed: %v", h.Feeds[0].Wires)
	}
	if l := h.Branches[0].Layers; !slices.Equal(l[1].Of, got.Wires) || !slices.Equal(l[0].Of, []string{"104"}) {
		t.Errorf("%+v", l)
	}
	next := sheetOf(t, h)
	for k := range next.H.Wires {
		if !next.Wires[k].HasPath && next.H.Wires[k].ID != "105" {
			t.Errorf("wire %s runs nowhere", next.H.Wires[k].ID)
		}
	}
	if free := next.Terms[0].Free; !slices.Equal(free, []string{"2", "3", "5", "6"}) {
		t.Errorf("free: %v", free)
	}
	if k := next.Index.Wire[got.Wires[0]]; !wires.Carries(next, k) || next.Wires[k].Circuit > 0.5 {
		t.Errorf("%+v", next.Wires[k])
	}
	if got, err = bulk.SpliceOf(s, bulk.SpliceAsk{Wires: []string{"101", "102"}, Common: "BOX"}); err != nil ||
		got.H.Splices[0].At != "J2" {
		t.Errorf("two of one leg meet at J2: %v", err)
	}
	if got, err = bulk.SpliceOf(s, bulk.SpliceAsk{Wires: []string{"101", "102"}, Common: "L1"}); err != nil ||
		got.H.Splices[0].At != "J1" ||
		wire(t, got.H, got.Wires[0]).From.V != "L1:1" {
		t.Errorf("towards the lamp: %v", err)
	}
	if got, err = bulk.SpliceOf(s, bulk.SpliceAsk{Wires: []string{"101", "102"}, Common: "BOX", At: "J1"}); err != nil ||
		got.H.Splices[0].At != "J1" {
		t.Errorf("at a chosen breakout: %v", err)
	}
	unknown := calctest.Built(t, strings.Replace(bank, "amps = 1.0", "", 1))
	if got, err = bulk.SpliceOf(unknown, bulk.SpliceAsk{Wires: []string{"101", "103"}}); err != nil ||
		wire(t, got.H, got.Wires[0]).Amps.Set ||
		!strings.Contains(got.Says, "The current of 101 is not entered: its size is that of the thickest") {
		t.Errorf("%v %s", err, got.Says)
	}
}

func TestSpliceOfRefuses(t *testing.T) {
	s := calctest.Built(t, bank)
	two := calctest.Built(t, bank+"[[feed]]\nid = \"F2\"\nwires = [\"104\"]\n")
	two.H = two.H.EditWire(3, func(w *model.Wire) { w.Role = model.Some(model.RolePower) })
	for _, c := range []struct {
		s    *sheet.Sheet
		ask  bulk.SpliceAsk
		want string
	}{
		{s, bulk.SpliceAsk{Wires: []string{"101"}}, "a splice joins two wires or more"},
		{s, bulk.SpliceAsk{Wires: []string{"101", "104"}}, "101 is power and 104 is ground: a splice would join them"},
		{two, bulk.SpliceAsk{Wires: []string{"101", "104"}}, "feed F1 and feed F2 would be joined: wire 104 is on F2"},
		{s, bulk.SpliceAsk{Wires: []string{"101", "105", "103"}}, "101, 103 and 105 share no connector"},
		{s, bulk.SpliceAsk{Wires: []string{"101", "102"}}, "the wires share both ends, BOX and L1: choose which"},
		{s, bulk.SpliceAsk{Wires: []string{"101", "103"}, At: "J2"}, "they do not all pass J2: choose J1"},
		{s, bulk.SpliceAsk{Wires: []string{"101", "103"}, Common: "L1"}, "not every wire ends at L1"},
		{s, bulk.SpliceAsk{Wires: []string{"101", "no"}}, `there is no wire "no"`},
	} {
		if _, err := bulk.SpliceOf(c.s, c.ask); err == nil || !strings.HasPrefix(err.Error(), c.want) {
			t.Errorf("%v, want %q", err, c.want)
		}
	}
}

func TestUnitOf(t *testing.T) {
	s := calctest.Built(t, bank)
	got, err := bulk.UnitOf(s, bulk.UnitAsk{Wires: []string{"102", "101"}, Shield: true, DrainFrom: bulk.DrainCavity,
		DrainTo: bulk.DrainCut})
	if err != nil {
		t.Fatal(err)
	}
	u := got.H.Units[0]
	// 101 and 102 stand in BOX:2 and BOX:1; 3 and 4 are taken: the next free is 5.
	if u.ID != "U1" || u.Build.V != model.BuildPair || !u.Shield.V || u.DrainFrom.V != "BOX:5" || u.DrainTo.V != "cut" ||
		!slices.Equal(u.Wires, []string{"101", "102"}) {
		t.Errorf("%+v", u)
	}
	if got.Says != "U1 is a shielded pair of 101 and 102, its drain to BOX:5, its drain cut at L1" {
		t.Errorf("%q", got.Says)
	}
	if l := got.H.Branches[0].Layers[1]; !slices.Equal(l.Of, []string{"103", "U1"}) {
		t.Errorf("%+v", l)
	}
	for _, c := range []struct {
		ask  bulk.UnitAsk
		want string
	}{
		{bulk.UnitAsk{Wires: []string{"101", "103"}},
			"wires 101 and 103 do not run the same way: 101 runs through T R LL1, 103 through T LL2"},
		{bulk.UnitAsk{Wires: []string{"101"}}, "1 wire cannot be a unit: a unit has 2 to 4 wires"},
		{bulk.UnitAsk{Wires: []string{"101", "102", "103", "104", "105"}}, "5 wires cannot be a unit"},
		{bulk.UnitAsk{Wires: []string{"101", "102"}, Shield: true, DrainFrom: "BOX:1"},
			"the drain cannot go to BOX:1: it is no free cavity"},
		{bulk.UnitAsk{Wires: []string{"101", "102"}, Shield: true, DrainTo: bulk.DrainCavity},
			"the drain has no cavity: L1 has no free cavity left"},
	} {
		if _, err := bulk.UnitOf(s, c.ask); err == nil || !strings.HasPrefix(err.Error(), c.want) {
			t.Errorf("%v, want %q", err, c.want)
		}
	}
	again := sheetOf(t, got.H)
	if _, err := bulk.UnitOf(again, bulk.UnitAsk{Wires: []string{"101", "102"}}); err == nil ||
		err.Error() != "wire 101 is in unit U1 already" {
		t.Errorf("%v", err)
	}
}

// What a unit holds and what a wire that stays needs is left and named; a return goes with the
// wire that names it.
func TestRemove(t *testing.T) {
	s := calctest.Built(t, strings.Replace(bank, `id = "101"`, "id = \"101\"\nreturn = \"104\"", 1)+
		"[[unit]]\nid = \"U1\"\nwires = [\"102\"]\n")
	got, err := bulk.Remove(s, []string{"104", "102"})
	if err != nil || len(got.Wires) != 0 || bulk.LeftText(got.Left) != "102: belongs to unit U1: take the unit apart first; 104: is the "+
		"return of wire 101: "+
		"give that wire another return first" {
		t.Errorf("%v %+v", err, got.Left)
	}
	got, err = bulk.Remove(s, []string{"104", "101"})
	if err != nil || len(got.H.Wires) != 3 || len(got.Left) != 0 || got.Says != "2 wires removed: 101 and 104" {
		t.Errorf("%v %+v", err, got)
	}
	if slices.Contains(got.H.Feeds[0].Wires, "101") || len(got.H.Branches[0].Layers) != 1 {
		t.Errorf("%+v %+v", got.H.Feeds, got.H.Branches[0].Layers)
	}
}
