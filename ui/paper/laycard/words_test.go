package laycard

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/list"
)

// Clocks by hand: 3 on the wire side is 9 along the bundle, 12 and 6 stay; position 1 lies at 12.
func TestClocksInWords(t *testing.T) {
	for hour, want := range map[int]int{12: 12, 1: 11, 3: 9, 6: 6, 9: 3, 11: 1, 5: 7} {
		if got := mirrored(hour); got != want {
			t.Errorf("%d is %d, want %d", hour, got, want)
		}
	}
	for hour, want := range map[int]string{12: "in line with", 6: "opposite", 9: "a quarter turn clockwise from",
		3:  "a quarter turn anticlockwise from",
		11: "1 hour clockwise from", 10: "2 hours clockwise from", 1: "1 hour anticlockwise from", 2: "2 hours anticlockwise from",
		5: "5 hours anticlockwise from", 7: "5 hours clockwise from"} {
		if got := after(hour); got != want {
			t.Errorf("from %d it is %q, want %q", hour, got, want)
		}
	}
	at := func(hour float64) Row {
		sin, cos := math.Sincos(hour * math.Pi / 6)
		return Row{Of: sheet.Member{X: unit.Millimetre(3 * sin), Y: unit.Millimetre(3 * cos)}}
	}
	for hour, want := range map[float64]string{0: "at 12 o'clock", 3: "at 3 o'clock", 9: "at 9 o'clock", 11.6: "at 12 o'clock",
		11.4: "at 11 o'clock",
		0.4:  "at 12 o'clock", 0.6: "at 1 o'clock", 6: "at 6 o'clock"} {
		if got := clockOf(at(hour)); got != want {
			t.Errorf("%v is %q, want %q", hour, got, want)
		}
		if got := hours(at(hour).Of); math.Abs(got-hour) > 1e-9 {
			t.Errorf("%v is %v", hour, got)
		}
	}
	if got := clockOf(Row{}); got != "in the middle" {
		t.Error(got)
	}
	for degrees, want := range map[float64][2]float64{0: {5, 3}, 90: {7, 5}, 180: {5, 7}, 270: {3, 5}} {
		if x, y := around(5, 2, degrees); math.Abs(x-want[0]) > 1e-9 || math.Abs(y-want[1]) > 1e-9 {
			t.Errorf("%v degrees: %v %v", degrees, x, y)
		}
	}
	for ends, want := range map[string]string{"A:1 A:2 A:3": "A:1 + 2 + 3", "A:1 B:2": "A:1 + B:2", "S S": "S", "A:1": "A:1", "": "",
		"A:1 B:2 A:3": "A:1 + B:2 + A:3",
		"- A:1":       "- + A:1"} {
		if got := joinEnds(strings.Fields(ends)); got != want {
			t.Errorf("%s: %q, want %q", ends, got, want)
		}
	}
}

// Where position 1 lies, and from where to where wires run through a branch, by hand.
func TestWhereALayerStarts(t *testing.T) {
	some := model.Some[string]
	h := &model.Harness{Terminations: []model.Termination{{ID: "A", Clock: model.Some(3), BootClock: model.Some(1)}, {ID: "B",
		BootClock: model.Some(6)}, {ID: "C"}},
		Breakouts: []model.Breakout{{ID: "J"}}, Splices: []model.Splice{{ID: "S", At: "J"}},
		Branches: []model.Branch{{ID: "T", From: "A", To: "J"}, {ID: "L", From: "B", To: "J"}},
		Wires: []model.Wire{{ID: "1", From: some("A:1"), To: some("B:2")}, {ID: "2", From: some("B:3"), To: some("A:4")}, {ID: "3",
			From: some("S"),
			To:   some("A:5")}, {ID: "4", From: some("A:6"), To: some("S")}}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Wires: []sheet.Wire{{Path: []int{0, 1}}, {Path: []int{1, 0}}, {Path: []int{0}},
		{Path: []int{0}}}}
	m := list.MakerOf(s)
	const count = " Count on clockwise."
	for place, want := range map[string]string{
		"A": "Seen from A, along the bundle, position 1 lies a quarter turn clockwise from its key." + count,
		"B": "Seen from B, along the bundle, position 1 lies opposite the way its boot points." + count,
		"C": "The file does not say where the key of C points: position 1 lies on top, as C lies on the board.", "J": ""} {
		got := startOf(m, place)
		if got.Says != want || got.Key.Set != (place == "A") || got.Boot.Set != (place == "A" || place == "B") {
			t.Errorf("%s: %+v, want %q", place, got, want)
		}
	}
	for _, c := range []struct {
		branch  int
		wire    string
		want    string
		forward bool
	}{{0, "1", "1, B:2", true}, {0, "2", "4, B:3", false}, {1, "1", "2, A:1", false}, {1, "2", "3, A:4", true}, {0, "3", "5, splice S",
		false},
		{0, "4", "6, splice S", true}, {0, "none", ", -", false}} {
		near, far := endsOf(m, c.branch, c.wire)
		if got := fmt.Sprintf("%s, %s", near, far); got != c.want {
			t.Errorf("%s in branch %d: %s, want %s", c.wire, c.branch, got, c.want)
		}
		if k, is := s.Index.Wire[c.wire]; is && runsForward(s, c.branch, k) != c.forward {
			t.Errorf("%s runs forward through branch %d: %v", c.wire, c.branch, !c.forward)
		}
	}
	if !runsForward(s, 1, 3) {
		t.Error("what does not run there runs back")
	}
}
