package bulk_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/bulk"
	"contralay/model"
)

// far is a box and two lamps, a wire to each that pass no breakout together, a pair, and a lamp that nothing leads to.
const far = `format = 1
[[termination]]
id = "BOX"
cavities = ["1", "2", "3", "4", "5", "6", "7", "8"]
[[termination]]
id = "L1"
cavities = ["1", "2", "3", "4", "5", "6"]
[[termination]]
id = "L2"
cavities = ["1"]
[[termination]]
id = "OPEN"
[[breakout]]
id = "J1"
[[splice]]
id = "S1"
at = "J1"
[[wire]]
id = "101"
from = "BOX:1"
to = "L1:1"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "102"
from = "BOX:2"
to = "L1:2"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "103"
from = "BOX:4"
to = "L1:3"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "104"
from = "BOX:5"
to = "L1:4"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "105"
from = "BOX:6"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "106"
from = "OPEN:1"
to = "L1:5"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "107"
from = "BOX:7"
to = "L2:1"
spec = "AS22759/32"
size = "22"
[[unit]]
id = "C7"
wires = ["101", "102"]
shield = true
drain_from = "BOX:3"
[[branch]]
id = "T"
from = "BOX"
to = "L1"
length_mm = 300
[[branch]]
id = "X"
from = "L2"
to = "J1"
length_mm = 300
[[branch]]
id = "Y"
from = "J1"
to = "OPEN"
length_mm = 300
`

// Every refusal names what it is about and what to do, and nothing is made.
func TestEveryRefusal(t *testing.T) {
	s := calctest.Built(t, far)
	like := func(ask bulk.LikeAsk) func() (bulk.Made, error) {
		return func() (bulk.Made, error) { return bulk.Like(s, ask) }
	}
	between := func(ask bulk.RangeAsk) func() (bulk.Made, error) {
		ask.Spec, ask.Size = "AS22759/32", "22"
		return func() (bulk.Made, error) { return bulk.Range(s, ask) }
	}
	unit := func(ask bulk.UnitAsk) func() (bulk.Made, error) {
		ask.Shield = true
		return func() (bulk.Made, error) { return bulk.UnitOf(s, ask) }
	}
	splice := func(ids ...string) func() (bulk.Made, error) {
		return func() (bulk.Made, error) { return bulk.SpliceOf(s, bulk.SpliceAsk{Wires: ids}) }
	}
	box := func(c ...string) bulk.Ends { return bulk.Ends{Termination: "BOX", Cavities: c} }
	var many []string
	for k := range bulk.MostAtOnce + 1 {
		many = append(many, fmt.Sprint(k+2))
	}
	pair := []string{"103", "104"}
	for _, c := range []struct {
		ask  func() (bulk.Made, error)
		want string
	}{
		{like(bulk.LikeAsk{Wire: "9", Count: 1}), `there is no wire "9"`},
		{like(bulk.LikeAsk{Wire: "103", Count: 0}), "0 is out of range: 1 to 200 wires at once"},
		{like(bulk.LikeAsk{Wire: "103", Count: 201}), "201 is out of range: 1 to 200 wires at once"},
		{like(bulk.LikeAsk{Wire: "103", Count: 1, DeadEnd: true}), "wire 103 is no spare: only a spare may end without a cavity"},
		{like(bulk.LikeAsk{Wire: "105", Count: 1}), `nothing is made: wire 105 has an end that leads nowhere: ""`},
		{like(bulk.LikeAsk{Wire: "106", Count: 1}),
			"nothing is made: the cavities of OPEN are not known: choose its insert or list its cavities"},
		{like(bulk.LikeAsk{Wire: "107", Count: 1}), "nothing is made: L2 has no free cavity left"},
		{between(bulk.RangeAsk{From: box("8"), To: bulk.Ends{Termination: "L1", Cavities: []string{"6"}}, Role: "lamp"}),
			`there is no role "lamp"`},
		{between(bulk.RangeAsk{From: bulk.Ends{Termination: "OPEN", Cavities: many}, To: bulk.Ends{Splice: "S1"}}),
			"201 is out of range: 1 to 200 wires at once"},
		{between(bulk.RangeAsk{From: bulk.Ends{Termination: "OPEN", Cavities: []string{""}}, To: bulk.Ends{Splice: "S1"}}),
			"a cavity of OPEN is chosen that has no name"},
		{between(bulk.RangeAsk{From: box("3"), To: bulk.Ends{Splice: "S1"}}), "cavity BOX:3 is taken by the drain of C7"},
		{between(bulk.RangeAsk{From: box("8"), To: bulk.Ends{Splice: "S1"}}), "no branch leads from BOX to S1"},
		{unit(bulk.UnitAsk{Wires: []string{"9", "103"}}), `there is no wire "9"`},
		{unit(bulk.UnitAsk{}), "no wire is chosen"},
		{unit(bulk.UnitAsk{Wires: []string{"103"}}), "1 wire cannot be a unit: a unit has 2 to 4 wires"},
		{unit(bulk.UnitAsk{Wires: []string{"103", "104", "105", "106", "107"}}), "5 wires cannot be a unit: a unit has 2 to 4 wires"},
		{unit(bulk.UnitAsk{Wires: []string{"102", "103"}}), "wire 102 is in unit C7 already"},
		{unit(bulk.UnitAsk{Wires: []string{"103", "105"}}), "wire 105 runs nowhere yet: give it both ends"},
		{unit(bulk.UnitAsk{Wires: pair, DrainFrom: "BOX:1"}), "the drain cannot go to BOX:1: it is no free cavity"},
		{unit(bulk.UnitAsk{Wires: pair, DrainFrom: "BOX:8", DrainTo: "BOX:8"}), "the drain cannot go to BOX:8: it is no free cavity"},
		{unit(bulk.UnitAsk{Wires: pair, DrainTo: "S9"}), `there is no splice "S9" for the drain`},
		{splice("101", "103"), "wire 101 is in unit C7: its end stays with the unit"},
		{splice("103", "104"), "the wires share both ends, BOX and L1: choose which of them the one wire goes to"},
		{splice("104", "105"), "wire 105 runs nowhere yet: give it both ends"},
		{splice("103", "103"), "a splice joins two wires or more: choose more"},
	} {
		if got, err := c.ask(); fmt.Sprint(err) != c.want || got.H != nil || got.Wires != nil {
			t.Errorf("%v, want %s", err, c.want)
		}
	}
	if _, err := bulk.SpliceOf(s, bulk.SpliceAsk{Wires: pair, Common: "BOX"}); fmt.Sprint(err) !=
		"103 and 104 pass no breakout together from BOX: hang one on their way" {
		t.Errorf("%v", err)
	}
	c := calctest.Parse(t, far)
	c.Rules.ColourStock = nil
	if _, err := bulk.Colours(sheetAs(t, c), bulk.ColourAsk{Stock: []string{"", " "}}); fmt.Sprint(err) !=
		"no colour is in stock: give colour_stock in [rules], or leave it out" {
		t.Errorf("%v", err)
	}
}

// What is made is said in one sentence, with what is left for a person to do.
func TestWhatIsMadeIsSaid(t *testing.T) {
	s := calctest.Built(t, far)
	like, err := bulk.Like(s, bulk.LikeAsk{Wire: "102", Count: 1})
	if err != nil || like.Says != "1 wire like 102: 108, in no unit (102 is in C7)" || wire(t, like.H, "108").From.V != "BOX:8" ||
		wire(t, like.H, "108").To.V != "L1:6" {
		t.Errorf("%v %q", err, like.Says)
	}
	one, err := bulk.Range(s, bulk.RangeAsk{From: bulk.Ends{Termination: "BOX", Cavities: []string{"8"}},
		To: bulk.Ends{Termination: "L1", Cavities: []string{"6"}}, Spec: "AS22759/32", Size: "22"})
	if err != nil || one.Says != "1 wire from BOX:8 to L1:6: 108" || wire(t, one.H, "108").Role.Set {
		t.Errorf("%v %q", err, one.Says)
	}
	for _, c := range []struct {
		from, to string
		want     string
	}{
		{"", "", "C8 is a shielded pair of 103 and 104"},
		{"shell", "cut", "C8 is a shielded pair of 103 and 104, its drain to the shell of BOX, its drain cut at L1"},
		// Behind 5, the last cavity of the pair, 6 and 7 are taken: 8 is the next.
		{"cavity", "", "C8 is a shielded pair of 103 and 104, its drain to BOX:8"},
		{"BOX:8", "cavity", "C8 is a shielded pair of 103 and 104, its drain to BOX:8, its drain to L1:6"},
		{"S1", "", "C8 is a shielded pair of 103 and 104, its drain to S1"},
	} {
		got, err := bulk.UnitOf(s, bulk.UnitAsk{Wires: []string{"104", "103"}, Shield: true, DrainFrom: c.from, DrainTo: c.to})
		if err != nil || got.Says != c.want || strings.Join(got.Wires, " ") != "103 104" {
			t.Errorf("%s, %s: %v %q", c.from, c.to, err, got.Says)
		}
	}
	plain, err := bulk.UnitOf(s, bulk.UnitAsk{Wires: []string{"104", "103"}, DrainFrom: "shell"})
	if u := plain.H.Units[1]; err != nil || plain.Says != "C8 is a pair of 103 and 104" || u.Shield.Set || u.DrainFrom.Set {
		t.Errorf("%v %q %+v", err, plain.Says, u)
	}
	// The first unit of a harness is U1.
	none := calctest.Parse(t, far)
	none.Units = nil
	first, err := bulk.UnitOf(sheetAs(t, none), bulk.UnitAsk{Wires: []string{"101", "102", "103"}})
	if err != nil || first.Says != "U1 is a triple of 101, 102 and 103" || first.H.Units[0].Build.V != model.BuildTriple {
		t.Errorf("%v %q", err, first.Says)
	}
}

// Three wires, each of which meets both others in one connector or another, want three colours though no connector holds more than
// two: of two in stock one wire gets none. A layer that lacks its tracer whatever they get is named beside it.
func TestColoursRoundARing(t *testing.T) {
	of := loom{terms: 4, wires: [][2]int{{0, 1}, {1, 2}, {2, 0}}, colour: make([]string, 3), stock: []string{"0", "1"}}
	got, err := bulk.Colours(built(t, of.text()), bulk.ColourAsk{})
	if err != nil || len(got.Lacks) != 1 || got.Lacks[0].Colours != 1 || len(got.Wires) != 2 || got.Kept != 0 {
		t.Fatalf("%v %+v", err, got)
	}
	bare := ""
	for _, w := range got.H.Wires {
		if !w.Colour.Set {
			bare += w.ID
		}
	}
	l := got.Lacks[0]
	if want := l.Connector + " needs 1 colour more in stock: " + bare + " gets none"; l.Says != want ||
		got.Text() != "2 wires coloured. "+want {
		t.Errorf("%q, want %q; %q", l.Says, want, got.Text())
	}
	of.stock = []string{"0", "1", "2"}
	if got, err = bulk.Colours(built(t, of.text()), bulk.ColourAsk{}); err != nil || len(got.Lacks) != 0 ||
		got.Text() != "3 wires coloured" {
		t.Errorf("with three: %v %+v", err, got)
	}
	if again, err := bulk.Colours(built(t, of.text()), bulk.ColourAsk{Wires: []string{"100"}}); err != nil ||
		again.Text() != "1 wire coloured" || len(again.Wires) != 1 || again.Wires[0] != "100" {
		t.Errorf("of one: %v %+v", err, again)
	}
	of.colour = []string{"0", "", "7"}
	if got, err = bulk.Colours(built(t, of.text()), bulk.ColourAsk{}); err != nil || got.Text() != "1 wire coloured, 2 keep theirs" ||
		got.H.Wires[1].Colour.V != "1" {
		t.Errorf("two are given: %v %q", err, got.Text())
	}
	of.colour = []string{"1", "7", "7"}
	got, err = bulk.Colours(built(t, of.text()), bulk.ColourAsk{Again: true})
	if err != nil || len(got.Lacks) != 0 || got.Kept+len(got.Wires) != 3 || got.H.Wires[1].Colour.V == "7" ||
		got.H.Wires[2].Colour.V == "7" {
		t.Errorf("all again: %v %q %v", err, got.Text(), got.Colours)
	}
	of.colour = []string{"0", "1", "7"}
	if got, err = bulk.Colours(built(t, of.text()), bulk.ColourAsk{}); err != nil || got.Text() != "no wire gets a colour, 3 keep theirs" {
		t.Errorf("all are given: %v %q", err, got.Text())
	}
}

// Cavities are taken from behind the last on, round to the first; what is taken, reserved or of another size is passed over.
func TestFreeCavitiesInOrder(t *testing.T) {
	s := calctest.Built(t, board) // ECU: 1 to 3 are wired, 4 is reserved, A and B take thick wire
	ecu := s.Index.Termination["ECU"]
	for _, c := range []struct {
		after, size string
		n           int
		taken       string
		want        string
	}{
		{"", "22", 9, "", "5 6"}, {"5", "22", 9, "", "6 5"}, {"6", "22", 1, "", "5"}, {"1", "22", 1, "", "5"}, {"", "22", 0, "", ""},
		{"", "22", 2, "ECU:5", "6"}, {"", "12", 9, "", "A B"}, {"A", "12", 1, "", "B"}, {"B", "12", 1, "", "A"},
		{"", "12", 9, "ECU:B", "A"},
	} {
		got := bulk.FreeFrom(s, ecu, c.after, "AS22759/32", c.size, c.n, map[string]bool{c.taken: true})
		if strings.Join(got, " ") != c.want {
			t.Errorf("%d of %s behind %q: %v, want %s", c.n, c.size, c.after, got, c.want)
		}
	}
}
