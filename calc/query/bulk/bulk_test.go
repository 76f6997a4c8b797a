package bulk_test

import (
	"slices"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/bulk"
	"contralay/model"
	"contralay/model/unit"
)

// board is a controller of six cavities for thin wire and two for thick, a plug sealed for wires
// of 1.0 to 1.4 mm, and a splice.
const board = `format = 1
[[termination]]
id = "ECU"
cavities = ["1", "2", "3", "4", "5", "6", "A", "B"]
contacts = { "20" = ["1", "2", "3", "4", "5", "6"], "12" = ["A", "B"] }
reserved = ["4"]
[[termination]]
id = "P1"
cavities = ["1", "2", "3", "4", "5"]
contacts = { "20" = ["1", "2", "3", "4", "5"] }
seal_mm = [1.0, 1.4]
[[termination]]
id = "X"
[[breakout]]
id = "J1"
[[splice]]
id = "S1"
at = "J1"
[[wire]]
id = "101"
signal = "Lamp"
from = "ECU:2"
to = "P1:1"
spec = "AS22759/32"
size = "22"
colour = "6"
amps = 1.5
note = "as on the old loom"
measured_drop_v = 0.1
return = "102"
[[wire]]
id = "102"
from = "ECU:1"
to = "S1"
spec = "AS22759/32"
size = "22"
role = "ground"
[[wire]]
id = "SP1"
from = "ECU:3"
to = "P1:5"
spec = "AS22759/32"
size = "22"
role = "spare"
[[feed]]
id = "F1"
device = "blade"
amps = 5.0
wires = ["101"]
[[branch]]
id = "T"
from = "ECU"
to = "J1"
length_mm = 300
[[branch]]
id = "L"
from = "J1"
to = "P1"
length_mm = 100
`

func wire(t *testing.T, h *model.Harness, id string) model.Wire {
	t.Helper()
	k := slices.IndexFunc(h.Wires, func(w model.Wire) bool { return w.ID == id })
	if k < 0 {
		t.Fatalf("no wire %s", id)
	}
	return h.Wires[k]
}

// Two more like 101 go to the next cavities behind its own that are free, not reserved, and of
// its contact size.
func TestLikeTakesTheNextCavities(t *testing.T) {
	s := calctest.Built(t, board)
	got, err := bulk.Like(s, bulk.LikeAsk{Wire: "101", Count: 2})
	if err != nil || got.Short != "" || !slices.Equal(got.Wires, []string{"103", "104"}) {
		t.Fatalf("%v %+v", err, got)
	}
	a, b := wire(t, got.H, "103"), wire(t, got.H, "104")
	if a.From.V != "ECU:5" || a.To.V != "P1:2" || b.From.V != "ECU:6" || b.To.V != "P1:3" {
		t.Errorf("%s %s, %s %s", a.From.V, a.To.V, b.From.V, b.To.V)
	}
	if a.Note.Set || a.DropV.Set || a.Return.Set || a.Amps.V != 1.5 || a.Colour.V != "6" || a.Signal.V != "Lamp" {
		t.Errorf("%+v", a)
	}
	if !strings.Contains(got.Says, "on no feed yet") {
		t.Errorf("its feed is not mentioned: %s", got.Says)
	}
}

// Where an end has too few cavities it makes what it can and says what is full; behind the last
// cavity it goes on from the first.
func TestLikeSaysWhyNoMore(t *testing.T) {
	s := calctest.Built(t, board)
	got, err := bulk.Like(s, bulk.LikeAsk{Wire: "101", Count: 9})
	if err != nil || len(got.Wires) != 2 || got.Short != "no free cavity of ECU takes 22 AWG of AS22759/32: its contacts or seals are of "+
		"another size" {
		t.Errorf("%v %+v", err, got)
	}
	got, err = bulk.Like(s, bulk.LikeAsk{Wire: "102", Count: 3})
	if err != nil || len(got.Wires) != 2 || wire(t, got.H, "103").To.V != "S1" || wire(t, got.H, "103").From.V != "ECU:5" {
		t.Errorf("to a splice: %v %+v", err, got)
	}
	full := calctest.Built(t, strings.Replace(board, `cavities = ["1", "2", "3", "4", "5"]`, `cavities = ["1", "5"]`, 1))
	if _, err = bulk.Like(full, bulk.LikeAsk{Wire: "101", Count: 1}); err == nil ||
		err.Error() != "nothing is made: P1 has no free cavity left" {
		t.Errorf("%v", err)
	}
	got, err = bulk.Like(s, bulk.LikeAsk{Wire: "SP1", Count: 1})
	if err != nil || wire(t, got.H, "SP2").To.V != "P1:2" {
		t.Errorf("round the end: %v %+v", err, got)
	}
}

// Spares for which one end has no cavity are dead-ended there, when asked, and no other wire is.
func TestLikeDeadEnds(t *testing.T) {
	full := calctest.Built(t, strings.Replace(board, `cavities = ["1", "2", "3", "4", "5"]`, `cavities = ["1", "2", "5"]`, 1))
	got, err := bulk.Like(full, bulk.LikeAsk{Wire: "SP1", Count: 3, DeadEnd: true})
	if err != nil || len(got.Wires) != 2 || !strings.HasPrefix(got.Short, "no free cavity of ECU") ||
		!strings.HasSuffix(got.Short, "and P1 has no free cavity left") {
		t.Fatalf("%v %+v", err, got)
	}
	if a, b := wire(t, got.H, "SP2"), wire(t, got.H, "SP3"); a.To.V != "P1:2" || a.CappedAt.Set || b.To.Set || b.CappedAt.V != "P1" ||
		b.From.V != "ECU:6" {
		t.Errorf("%+v\n%+v", a, b)
	}
	if _, err := bulk.Like(full, bulk.LikeAsk{Wire: "101", Count: 1, DeadEnd: true}); err == nil {
		t.Error("dead-ended a wire that is no spare")
	}
}

func TestRange(t *testing.T) {
	s := calctest.Built(t, board)
	ask := bulk.RangeAsk{From: bulk.Ends{Termination: "ECU", Cavities: []string{"5", "6"}},
		To:   bulk.Ends{Termination: "P1", Cavities: []string{"3", "2"}},
		Spec: "AS22759/32", Size: "20", Role: model.RoleSignal}
	got, err := bulk.Range(s, ask)
	if err != nil || !slices.Equal(got.Wires, []string{"103", "104"}) {
		t.Fatalf("%v %+v", err, got)
	}
	if a, b := wire(t, got.H, "103"), wire(t, got.H, "104"); a.From.V != "ECU:5" || a.To.V != "P1:3" || b.From.V != "ECU:6" ||
		b.To.V != "P1:2" ||
		a.Size != "20" || b.Role.V != model.RoleSignal {
		t.Errorf("%+v %+v", a, b)
	}
	if got.Says != "2 wires from ECU:5...6 to P1:3...2: 103 and 104" {
		t.Errorf("%q", got.Says)
	}
	ask.To = bulk.Ends{Splice: "S1"}
	if got, err := bulk.Range(s, ask); err != nil || len(got.Wires) != 2 || wire(t, got.H, "104").To.V != "S1" {
		t.Errorf("to a splice: %v", err)
	}
}

// What stands in the way of a range is named, and nothing is made.
func TestRangeRefuses(t *testing.T) {
	s := calctest.Built(t, board)
	ecu := func(c ...string) bulk.Ends { return bulk.Ends{Termination: "ECU", Cavities: c} }
	p1 := func(c ...string) bulk.Ends { return bulk.Ends{Termination: "P1", Cavities: c} }
	for _, c := range []struct {
		from, to   bulk.Ends
		size, want string
	}{
		{ecu("5"), p1("2", "3"), "22", "1 cavity of ECU to 2 cavities of P1: choose as many on both sides"},
		{ecu("1"), p1("2"), "22", "cavity ECU:1 is taken by wire 102"},
		{ecu("4"), p1("2"), "22", "cavity ECU:4 is reserved: free it first"},
		{ecu("7"), p1("2"), "22", `ECU has no cavity "7". It has`},
		{ecu("A"), p1("2"), "22", "cavity ECU:A does not take 22 AWG"},
		{ecu("5"), p1("2"), "12", "cavity ECU:5 does not take 12 AWG"},
		{ecu("5", "5"), p1("2", "3"), "22", "cavity ECU:5 is chosen twice"},
		{ecu("5"), ecu("5"), "22", "cavity ECU:5 is chosen on both sides"},
		{ecu("5"), p1("2"), "7", "AS22759/32 has no size 7 in the catalogue"},
		{ecu("5"), bulk.Ends{Termination: "X", Cavities: []string{"1"}}, "22", "no branch leads from ECU to X"},
		{ecu("5"), bulk.Ends{Termination: "Y"}, "22", `there is no termination "Y"`},
		{bulk.Ends{Splice: "S1"}, bulk.Ends{Splice: "S1"}, "22", "both ends are splices"},
		{ecu(), p1(), "22", "no cavity is chosen"},
	} {
		if _, err := bulk.Range(s, bulk.RangeAsk{From: c.from, To: c.to, Spec: "AS22759/32", Size: c.size}); err == nil ||
			!strings.HasPrefix(err.Error(), c.want) {
			t.Errorf("%v, want %q", err, c.want)
		}
	}
}

// A change is made where it can be, and every wire that cannot have it is named with the reason.
func TestSet(t *testing.T) {
	s := calctest.Built(t, board)
	all := []string{"SP1", "101", "102"}
	got, err := bulk.Set(s, all, bulk.Change{Size: model.Some("16")})
	if err != nil || len(got.Wires) != 0 || got.H != s.H ||
		bulk.LeftText(got.Left) != "101, 102 and SP1: ECU does not take 16 AWG of AS22759/32" {
		t.Errorf("%v %+v", err, got)
	}
	got, err = bulk.Set(s, all, bulk.Change{Size: model.Some("20"), Colour: model.Some("6"), Amps: model.Some(s.H.Wires[0].Amps.V)})
	if err != nil || !slices.Equal(got.Wires, []string{"101", "102", "SP1"}) || got.Says != "3 wires: 20 AWG, colour blue, 1.5 A" {
		t.Errorf("%v %+v", err, got)
	}
	if w := wire(t, got.H, "102"); w.Size != "20" || w.Colour.V != "6" || w.Role.V != model.RoleGround || s.H.Wires[1].Size != "22" {
		t.Errorf("%+v", w)
	}
	got, _ = bulk.Set(s, all, bulk.Change{Role: model.Some(model.RoleGround), Colour: model.Some("")})
	if w := wire(t, got.H, "101"); w.Colour.Set || got.Says != "2 wires: no colour, role ground; 1 had it already" {
		t.Errorf("%+v %s", w, got.Says)
	}
	got, _ = bulk.Set(s, all, bulk.Change{Spec: model.Some("AS22759/99")})
	if bulk.LeftText(got.Left) != "101, 102 and SP1: AS22759/99 has no size 22 in the catalogue" {
		t.Errorf("%+v", got.Left)
	}
	for _, bad := range []bulk.Change{{Amps: model.Some[unit.Ampere](-1)}, {Amps: model.Some[unit.Ampere](1001)}} {
		if _, err := bulk.Set(s, all, bad); err == nil {
			t.Errorf("%+v", bad)
		}
	}
	if _, err := bulk.Set(s, []string{"101", "nobody"}, bulk.Change{}); err == nil || err.Error() != `there is no wire "nobody"` {
		t.Errorf("%v", err)
	}
}
