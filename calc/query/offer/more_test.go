package offer

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// plug is a box with two like lamps and one of another kind on legs of a joint; the first lamp is wired: a feed, its return, a spare
// that is capped at the lamp, and a drain.
const plug = `format = 1
[[termination]]
id = "BOX"
cavities = ["1", "2", "3", "4", "5", "6", "7"]
[[termination]]
id = "LMP1"
cavities = ["1", "2", "3"]
[[termination]]
id = "LMP02"
cavities = ["1", "2", "3"]
[[termination]]
id = "ODD3"
cavities = ["A", "B"]
[[breakout]]
id = "J"
[[wire]]
id = "101"
signal = "Lamp 1 feed 1"
from = "BOX:1"
to = "LMP1:1"
spec = "AS22759/32"
size = "22"
return = "102"
[[wire]]
id = "102"
signal = "Ground"
from = "LMP1:2"
to = "BOX:2"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "103"
from = "BOX:3"
spec = "AS22759/32"
size = "22"
role = "spare"
capped_at = "LMP1"
[[unit]]
id = "C1"
wires = ["101", "102"]
shield = true
drain_from = "BOX:4"
drain_to = "cut"
[[branch]]
id = "T"
from = "BOX"
to = "J"
length_mm = 300.0
[[branch]]
id = "A"
from = "J"
to = "LMP1"
length_mm = 100.0
[[branch]]
id = "B"
from = "J"
to = "LMP02"
length_mm = 100.0
[[branch]]
id = "C"
from = "J"
to = "ODD3"
length_mm = 100.0
`

// A lamp once more, by hand: its wires to the like cavities from the next that are free in the box, the return of the copy is the copy
// of the return, the number in the signal is that of the lamp, the spare is capped at the like lamp, the unit has no drain cavity yet.
func TestALampOnceMore(t *testing.T) {
	s := calctest.Built(t, plug)
	term := func(id string) int { return s.Index.Termination[id] }
	if got := Like(s, term("LMP1")); !slices.Equal(got, []int{term("LMP02")}) {
		t.Errorf("like LMP1 are %v", got)
	}
	for _, id := range []string{"LMP02", "ODD3", "BOX"} {
		if got := Like(s, term(id)); got != nil {
			t.Errorf("like %s are %v", id, got)
		}
	}
	h, ids, err := Repeated(s, term("LMP1"), term("LMP02"))
	if err != nil || fmt.Sprint(ids) != "[104 105 106]" {
		t.Fatalf("%v %v", ids, err)
	}
	want := []string{`104 "Lamp 2 feed 1" BOX:5-LMP02:1 return 105 capped `, `105 "Ground" LMP02:2-BOX:6 return  capped `,
		`106 "" BOX:7- return  capped LMP02`}
	for k, w := range h.Wires[3:] {
		if got := fmt.Sprintf("%s %q %s-%s return %s capped %s", w.ID, w.Signal.V, w.From.V, w.To.V, w.Return.V,
			w.CappedAt.V); got != want[k] {
			t.Errorf("%s, want %s", got, want[k])
		}
	}
	if u := h.Units[1]; len(h.Units) != 2 || u.ID != "C2" || fmt.Sprint(u.Wires) != "[104 105]" || u.DrainFrom.Set ||
		!u.Shield.V {
		t.Errorf("%+v", h.Units)
	}
	if h.Wires[0].Return.V != "102" || h.Wires[0].Signal.V != "Lamp 1 feed 1" || len(s.H.Wires) != 3 {
		t.Errorf("%+v", h.Wires[0])
	}
	for want, c := range map[string][2]string{
		"BOX has no free cavity for one more like wire 101": {"cavities = [\"1\", \"2\", \"3\", \"4\", \"5\", \"6\", \"7\"]",
			"cavities = [\"1\", \"2\", \"3\", \"4\"]"},
		"BOX has no free cavity for one more like wire 102": {"cavities = [\"1\", \"2\", \"3\", \"4\", \"5\", \"6\", \"7\"]",
			"cavities = [\"1\", \"2\", \"3\", \"4\", \"5\"]"},
		`wire 101 has an end that leads nowhere: ""`: {"from = \"BOX:1\"\nto = \"LMP1:1\"", "to = \"LMP1:1\""},
		"no branch leads from BOX:5 to LMP02:1":      {"from = \"J\"\nto = \"LMP02\"", "from = \"J\"\nto = \"FREE\""},
	} {
		text := strings.Replace(plug, c[0], c[1], 1)
		if strings.Contains(c[1], "FREE") {
			text = "format = 1\n[[termination]]\nid = \"FREE\"\n" + strings.TrimPrefix(text, "format = 1\n")
		}
		spoilt := calctest.Built(t, text)
		h, ids, err := Repeated(spoilt, spoilt.Index.Termination["LMP1"], spoilt.Index.Termination["LMP02"])
		if fmt.Sprint(err) != want || h != spoilt.H || ids != nil {
			t.Errorf("%v %v, want %s", ids, err, want)
		}
	}
	// A bank of other cavities is not like it.
	branch := func(id string) int { return s.Index.Branch[id] }
	if got := LikeBanks(s, branch("B")); !slices.Equal(got, []int{branch("A")}) {
		t.Errorf("like B are %v", got)
	}
	if got := LikeBanks(s, branch("C")); got != nil {
		t.Errorf("like C are %v", got)
	}
	if got := LikeBanks(s, branch("A")); got != nil {
		t.Errorf("like A, which is wired, are %v", got)
	}
}

// The number of the new end stands in a signal where that of the old one did, the first time, and as a word of its own.
func TestNumbersInSignals(t *testing.T) {
	for id, want := range map[string]string{"INJ1": "1", "INJ007": "7", "OIL": "", "12": "12", "": "", "A1B": "", "P10": "10", "X0": "0"} {
		if got := tailNumber(id); got != want {
			t.Errorf("%s ends in %q, want %q", id, got, want)
		}
	}
	h := &model.Harness{Terminations: []model.Termination{{ID: "INJ1"}, {ID: "INJ12"}, {ID: "OIL"}, {ID: "P1"}}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h)}
	for _, c := range []struct {
		signal, from, to string
		terms            map[int]int
		want             string
	}{
		{"Injector 1 feed", "P1:1", "INJ1:2", map[int]int{0: 1}, "Injector 12 feed"},
		{"Injector 1 of 1", "INJ1:2", "P1:1", map[int]int{0: 1}, "Injector 12 of 1"},
		{"Injector 11 feed", "P1:1", "INJ1:2", map[int]int{0: 1}, "Injector 11 feed"},
		{"Injector 1 feed", "P1:1", "INJ1:2", map[int]int{3: 1}, "Injector 12 feed"},
		{"Injector 1 feed", "OIL:1", "INJ1:2", map[int]int{2: 1, 0: 1}, "Injector 12 feed"},
		{"Injector 1 feed", "P1:1", "INJ1:2", map[int]int{0: 2}, "Injector 1 feed"},
		{"Injector 1 feed", "P1:1", "OIL:2", map[int]int{0: 1}, "Injector 1 feed"},
		{"1", "P1:1", "INJ1:2", map[int]int{0: 1}, "12"},
	} {
		w := model.Wire{From: model.Some(c.from), To: model.Some(c.to)}
		if got := renumbered(s, model.Some(c.signal), &w, c.terms); got.V != c.want {
			t.Errorf("%s at %s and %s: %s, want %s", c.signal, c.from, c.to, got.V, c.want)
		}
	}
}

// What is thinner than the shop uses: gauges by their number, metric sizes by their copper. 24 AWG is 0.205 mm² of solid copper
// (ASTM B258).
func TestThinnerThanTheShopUses(t *testing.T) {
	for _, c := range []struct {
		least, size string
		area        unit.SquareMM
		want        bool
	}{
		{"24", "26", 0.14, true}, {"24", "24", 0.1, false}, {"24", "22", 0.3, false}, {"24", "0.13mm2", 0.13, true},
		{"24", "0.22mm2", 0.22, false}, {"24", "0.13mm2", 0, false}, {"0.5mm2", "0.35mm2", 0.35, true}, {"0.5mm2", "0.5mm2", 0.5, false},
		{"0.5mm2", "22", 0.33, true}, {"0.5mm2", "20", 0.6, false}, {"none such", "26", 0.1, false},
	} {
		s := &sheet.Sheet{Limits: model.Limits{SizeMin: c.least}}
		if got := thin(s, catalogue.Wire{Size: c.size, AreaMM2: c.area}); got != c.want {
			t.Errorf("%s of %v mm² where %s is the least: %v", c.size, c.area, c.least, got)
		}
	}
}

// Why a size does not do, in one sentence; the first that is true.
func TestWhyItDoesNotDo(t *testing.T) {
	bound := model.Some(sheet.Limit{Amps: 5, Where: "contact P1:A"})
	h := &model.Harness{Wires: []model.Wire{{ID: "1", Amps: model.Some(unit.Ampere(2))}}}
	for _, c := range []struct {
		w    sheet.Wire
		want string
	}{
		{sheet.Wire{}, "its current limit is not known"},
		{sheet.Wire{Bound: bound, Heats: 5.1}, "may carry 5 A: contact P1:A"},
		{sheet.Wire{Bound: bound, Heats: 5, PulseBurns: true}, "its device does not protect it, or a pulse is too much for it"},
		{sheet.Wire{Bound: bound, Heats: 5, FeedBurns: true}, "its device does not protect it, or a pulse is too much for it"},
		{sheet.Wire{Bound: bound, Heats: 5}, "its voltage drop is not known"},
		{sheet.Wire{Bound: bound, Drop: model.Some(unit.Volt(0.3)), Circuit: 0.61}, "drops 0.61 V of 0.50 V allowed"},
		{sheet.Wire{Bound: bound, Drop: model.Some(unit.Volt(0.3)), Circuit: 0.5}, ""},
	} {
		s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Wires: []sheet.Wire{c.w}, Limits: model.Rules{}.Resolve()}
		if got := Doubts(s, 0); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
	s := calctest.Built(t, calctest.OneSize(2, "22", "length_mm = 300.0\n"))
	for size, want := range map[string]string{"22": "", "7": "AS22759/32 has no size 7", "26": "thinner than the shop uses, 24"} {
		if got := Handles(s, 0, size); got != want {
			t.Errorf("%s: %q, want %q", size, got, want)
		}
	}
	if got := Doubt(s, 0, "22"); got != "no current is entered" {
		t.Errorf("%q", got)
	}
	if size, ok := SmallestThatDoes(s, 0); ok || size != "" {
		t.Errorf("of a wire without a current %s does", size)
	}
	if got, _ := (catalogue.MetricArea("0.35mm2")); got != 0.35 {
		t.Errorf("%v", got)
	}
}

// One wire more where a branch on the way is not laid is not worked out; nor is one for which there is no cavity or no way.
func TestOneMoreThatIsNotWorkedOut(t *testing.T) {
	s := calctest.Built(t, calctest.OneSize(9, "22", "length_mm = 300.0\n", 12))
	if _, _, _, ok := OneMore(s, Pairing{A: 0, B: 1, More: 3}); ok {
		t.Error("a branch that waits was worked out")
	}
	laid := calc.Complete(s.H, s.Base, nil)
	if b, thicker, _, ok := OneMore(laid, Pairing{A: 0, B: 1, More: 3}); !ok || b != 0 || thicker < 0 {
		t.Errorf("%d %v %v", b, thicker, ok)
	}
	if _, _, _, ok := OneMore(laid, Pairing{A: 0, B: 1}); ok {
		t.Error("without a cavity it was worked out")
	}
	// Pairings of that end: nine wires, none of them a spare, three more.
	if got := Pairings(laid, 0); len(got) != 1 || got[0] != (Pairing{A: 0, B: 1, Wires: 9, More: 3}) {
		t.Errorf("%+v", got)
	}
	h := laid.H.EditWire(4, func(w *model.Wire) { w.Role = model.Some(model.RoleSpare) })
	h = h.EditWire(4, func(w *model.Wire) { w.From, w.To = w.To, w.From })
	spare := calc.Build(h, s.Base, nil)
	if got := Pairings(spare, 1); len(got) != 1 || got[0] != (Pairing{A: 1, B: 0, Wires: 9, Spares: 1, More: 3}) {
		t.Errorf("%+v", got)
	}
	if got := Substitutes(spare, 0); len(got) != 1 || got[0] != (Substitute{4, "A:0", "Z:0", "A:4", "Z:4"}) {
		t.Errorf("%+v", got)
	}
}

// A datum further back leaves a branch shorter by what lies between, where it comes from that end and where it goes to it; stations
// are counted from the from end alone. By hand: from the mating face to the rear of a shell of 30 mm, 30 mm less.
func TestDatumAtEitherEnd(t *testing.T) {
	for _, from := range []bool{true, false} {
		text := calctest.OneSize(2, "22", "length_mm = 300.0\n  [[branch.cover]]\n  what = \"tape\"\n  from_mm = 20.0\n  to_mm = 100.0\n")
		id := map[bool]string{true: "A", false: "Z"}[from]
		s := calctest.Built(t, strings.Replace(text, fmt.Sprintf("id = %q\n", id),
			fmt.Sprintf("id = %q\npart_mm = 30.0\ndatum = \"mating face\"\n", id), 1))
		at := s.Index.Termination[id]
		h, ok := Redatum(s, at, model.DatumShellRear)
		cover := h.Branches[0].Covers[0]
		want := [2]unit.Millimetre{20, 100}
		if from {
			want = [2]unit.Millimetre{0, 70}
		}
		if !ok || h.Branches[0].LengthMM != 270 || cover.FromMM.V != want[0] || cover.ToMM.V != want[1] ||
			h.Terminations[at].Datum.V != model.DatumShellRear {
			t.Errorf("%s: %v %+v %+v", id, ok, h.Branches[0].LengthMM, cover)
		}
		if back, ok := Redatum(calc.Build(h, s.Base, nil), at, model.DatumMatingFace); !ok || back.Branches[0].LengthMM != 300 {
			t.Errorf("%s: and back %v", id, back.Branches[0].LengthMM)
		}
		short := calc.Build(s.H.EditBranch(0, func(b *model.Branch) { b.LengthMM = 30 }), s.Base, nil)
		if h, ok := Redatum(short, at, model.DatumGrommet); ok || h.Branches[0].LengthMM != 30 ||
			h.Terminations[at].Datum.V != model.DatumGrommet {
			t.Errorf("%s: nothing of 30 mm is left, and %v", id, h.Branches[0].LengthMM)
		}
		if h, ok := Redatum(s, at, model.DatumBootLip); ok || h.Branches[0].LengthMM != 300 {
			t.Errorf("%s: without a boot its lip is at %v", id, h.Branches[0].LengthMM)
		}
	}
}
