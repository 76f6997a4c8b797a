package hue

import (
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// each goes through every way of giving so many wires so many colours.
func each(wires, colours int, is func(all []int) bool) bool {
	all := make([]int, wires)
	for {
		if is(all) {
			return true
		}
		k := 0
		for ; k < wires; k++ {
			if all[k]++; all[k] < colours {
				break
			}
			all[k] = 0
		}
		if k == wires {
			return false
		}
	}
}

// someAsk is a small question of any kind.
func someAsk(t *rapid.T) Ask {
	a := Ask{Wires: rapid.IntRange(1, 6).Draw(t, "wires"), Colours: rapid.IntRange(1, 4).Draw(t, "colours")}
	if a.Wires < 6 {
		a.Lacking = rapid.IntRange(0, 1).Draw(t, "lacking")
	}
	wire, colour := rapid.IntRange(0, a.Wires-1), rapid.IntRange(0, a.Colours-1)
	for range rapid.IntRange(0, 9).Draw(t, "pairs") {
		if p := [2]int{wire.Draw(t, "one"), wire.Draw(t, "other")}; p[0] != p[1] {
			a.Apart = append(a.Apart, p)
		}
	}
	a.Barred = make([][]int, a.Wires)
	for range rapid.IntRange(0, 4).Draw(t, "barred") {
		w := wire.Draw(t, "wire")
		a.Barred[w] = append(a.Barred[w], colour.Draw(t, "colour"))
	}
	for range rapid.IntRange(0, 3).Draw(t, "rings") {
		r := Ring{Wires: rapid.SliceOfNDistinct(wire, 0, a.Wires, rapid.ID[int]).Draw(t, "ring")}
		for c := range a.Colours {
			switch rapid.IntRange(0, 5).Draw(t, "others") {
			case 0:
				r.Once = append(r.Once, c)
			case 1:
				r.Often = append(r.Often, c)
			}
		}
		a.Rings = append(a.Rings, r)
	}
	return a
}

// Wherever trying every way finds a colouring, so does the search; and where it finds one, it is
// one. That both occur TestThreeHundredQuestions holds, whose questions are the same at every run.
func TestFindsOneWhereThereIsOne(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := someAsk(t)
		got := Solve(a, 1_000_000)
		if got.Spent {
			t.Fatal("out of steps")
		}
		if got.Found && !a.Holds(got.Colours) {
			t.Fatalf("no colouring: %v", got.Colours)
		}
		if there := each(a.Wires, a.Colours+a.Lacking, a.Holds); there != got.Found {
			t.Fatalf("trying every way finds one: %v, the search: %v", there, got.Found)
		}
	})
}

// Holds itself, by hand.
func TestHolds(t *testing.T) {
	ring := Ask{Wires: 3, Colours: 3, Rings: []Ring{{Wires: []int{0, 1, 2}}}}
	taken := Ask{Wires: 2, Colours: 2, Rings: []Ring{{Wires: []int{0, 1}, Once: []int{0}}}}
	for _, c := range []struct {
		name    string
		ask     Ask
		colours []int
		want    bool
	}{
		{"two alike in a connector", Ask{Wires: 2, Colours: 2, Apart: [][2]int{{0, 1}}}, []int{1, 1}, false},
		{"two that differ", Ask{Wires: 2, Colours: 2, Apart: [][2]int{{0, 1}}}, []int{1, 0}, true},
		{"a colour that a given wire has", Ask{Wires: 1, Colours: 2, Barred: [][]int{{1}}}, []int{1}, false},
		{"three alike in a layer", ring, []int{2, 2, 2}, false},
		{"one apart in a layer", ring, []int{2, 0, 2}, true},
		{"the given wire is the tracer", taken, []int{1, 1}, true},
		{"the given wire has a twin", taken, []int{0, 0}, false},
		{"a wire without a colour is no tracer",
			Ask{Wires: 2, Colours: 1, Lacking: 1, Rings: []Ring{{Wires: []int{0, 1}, Often: []int{0}}}},
			[]int{0, 1}, false},
	} {
		if got := c.ask.Holds(c.colours); got != c.want {
			t.Errorf("%s: %v", c.name, got)
		}
	}
}

// As many wires as colours in every connector is the tightest there is. König, 1916: where wires
// run between two kinds of connector only, as many colours as the fullest connector has wires
// always do. Here: devices of ten wires each, every wire to one of as many boxes of ten.
func TestTightestBetweenTwoKinds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		const colours, ends = 10, 8
		a := Ask{Colours: colours}
		at := make([][]int, 2*ends)
		for range colours { // one wire more at every device and at every box
			for device, box := range rapid.Permutation([]int{0, 1, 2, 3, 4, 5, 6, 7}).Draw(t, "boxes") {
				at[device], at[ends+box] = append(at[device], a.Wires), append(at[ends+box], a.Wires)
				a.Wires++
			}
		}
		for _, all := range at {
			for k, w := range all {
				for _, x := range all[:k] {
					a.Apart = append(a.Apart, [2]int{w, x})
				}
			}
		}
		if got := Solve(a, 20_000); !got.Found || !a.Holds(got.Colours) {
			t.Fatalf("none found, out of steps: %v", got.Spent)
		}
	})
}

// Three connectors with two wires between each two of them: six colours, though none has more
// than four wires (Shannon, 1949: half as many again as the fullest has, and no fewer here).
func TestThreeConnectorsRoundACorner(t *testing.T) {
	a := Ask{Wires: 6}
	for w := range 6 {
		for x := range w {
			a.Apart = append(a.Apart, [2]int{x, w}) // any two share a connector
		}
	}
	if a.Colours = 5; Solve(a, 10_000).Found {
		t.Error("five colours were enough")
	}
	if a.Colours = 6; !Solve(a, 10_000).Found {
		t.Error("six were not enough")
	}
}

// The same question has the same answer, and the stock is used from its first colour on.
func TestTakesTheFirstColours(t *testing.T) {
	a := Ask{Wires: 3, Colours: 50, Apart: [][2]int{{0, 1}, {1, 2}}, Rings: []Ring{{Wires: []int{0, 1, 2}}}}
	got := Solve(a, 1000)
	if !got.Found || !slices.Equal(got.Colours, []int{0, 1, 0}) { // 1 is the tracer
		t.Errorf("%+v", got)
	}
	if a.Colours = 0; Solve(a, 1000).Found {
		t.Error("coloured out of an empty stock")
	}
}
