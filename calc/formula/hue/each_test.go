package hue

import (
	"math/rand"
	"slices"
	"testing"
)

// Three hundred small questions of every kind, the same at every run: wherever trying every way finds a colouring, so does the search,
// and what it finds is one; what it does not find there is none of. With one step it finds what needs no search alone.
func TestThreeHundredQuestions(t *testing.T) {
	chance := rand.New(rand.NewSource(5))
	found, refused := 0, 0
	for n := range 300 {
		a := Ask{Wires: 1 + chance.Intn(6), Colours: 1 + chance.Intn(4)}
		if a.Wires < 6 {
			a.Lacking = chance.Intn(2)
		}
		for range chance.Intn(10) {
			if p := [2]int{chance.Intn(a.Wires), chance.Intn(a.Wires)}; p[0] != p[1] {
				a.Apart = append(a.Apart, p)
			}
		}
		a.Barred = make([][]int, a.Wires)
		for range chance.Intn(6) {
			w := chance.Intn(a.Wires)
			a.Barred[w] = append(a.Barred[w], chance.Intn(a.Colours))
		}
		for range chance.Intn(4) {
			r := Ring{Wires: chance.Perm(a.Wires)[:chance.Intn(a.Wires+1)]}
			for c := range a.Colours {
				switch chance.Intn(5) {
				case 0:
					r.Once = append(r.Once, c)
				case 1:
					r.Often = append(r.Often, c)
				}
			}
			a.Rings = append(a.Rings, r)
		}
		got, again := Solve(a, 100_000), Solve(a, 100_000)
		if got.Spent || got.Found && !a.Holds(got.Colours) || !slices.Equal(got.Colours, again.Colours) {
			t.Fatalf("question %d: %+v, then %+v", n, got, again)
		}
		if there := each(a.Wires, a.Colours+a.Lacking, a.Holds); there != got.Found {
			t.Fatalf("question %d: trying every way finds one: %v, the search: %v", n, there, got.Found)
		}
		if few := Solve(a, 1); few.Found && !a.Holds(few.Colours) || !few.Found && !few.Spent && got.Found {
			t.Fatalf("question %d with one step: %+v", n, few)
		}
		if got.Found {
			found++
		} else {
			refused++
		}
	}
	if found < 50 || refused < 50 {
		t.Errorf("%d with a colouring and %d without", found, refused)
	}
	// A wire that must differ from itself has no colour.
	if Solve(Ask{Wires: 2, Colours: 2, Apart: [][2]int{{1, 1}}}, 100).Found {
		t.Error("a wire differs from itself")
	}
}

// Two colours are swapped along a chain so that a third wire has one. By hand: 0 and 1 differ, 2 differs from both, 3 from 2; with two
// colours for 0 and 1 and 2 there is none, with three there is, and no wire that was given one changes.
func TestSwapAlongAChain(t *testing.T) {
	a := Ask{Wires: 4, Colours: 2, Apart: [][2]int{{0, 1}, {1, 2}, {2, 3}}}
	// 0 and 3 are red at first; the chain 0-1-2-3 alternates, so 3 is of the colour that 0 has not.
	got := Solve(a, 1000)
	if !got.Found || got.Colours[0] == got.Colours[1] || got.Colours[0] != got.Colours[2] || got.Colours[1] != got.Colours[3] {
		t.Errorf("%+v", got)
	}
	// In the order 0, 2, 1, 3 of a path 0-2-1-3 with its ends barred from one colour each the first free colours do not do.
	b := Ask{Wires: 4, Colours: 2, Apart: [][2]int{{0, 2}, {2, 1}, {1, 3}}, Barred: [][]int{nil, nil, nil, {1}}}
	if got := Solve(b, 1000); !got.Found || !slices.Equal(got.Colours, []int{1, 1, 0, 0}) {
		t.Errorf("%+v", got)
	}
	s := open(Ask{Wires: 3, Colours: 2, Apart: [][2]int{{0, 2}, {1, 2}}}, 100)
	s.got[0] = 0 // given by the search: it must stay
	own := s.ownBars()
	got1 := []int{0, 1, none}
	if !s.swapFor(got1, own, 2) || got1[0] != 0 || got1[1] != 0 || got1[2] != 1 {
		t.Errorf("0 is given, so 1 gives way: %v", got1)
	}
	s.got[1] = 1
	if got2 := []int{0, 1, none}; s.swapFor(got2, s.ownBars(), 2) || !slices.Equal(got2, []int{0, 1, none}) {
		t.Errorf("both are given, and one was changed: %v", got2)
	}
}

// Questions whose answer only going back and forth finds: neither the first free colours nor swaps along chains lead to one. Each has
// triangles whose wires are barred from the colours that they would get first. The second by hand: wires 0, 2, 3 and 1, 2, 3 are
// triangles; with 2 for wire 2 the others are 1 for wire 1 and 0 for wire 3, and wire 0 has none, so it is 1, and the rest follows.
func TestBackAndForth(t *testing.T) {
	for n, a := range []Ask{
		{Wires: 5, Colours: 3, Apart: [][2]int{{2, 3}, {3, 4}, {0, 4}, {0, 2}, {2, 4}}, Barred: [][]int{{1}, nil, nil, {0}, nil}},
		{Wires: 4, Colours: 3, Apart: [][2]int{{0, 2}, {2, 3}, {1, 2}, {0, 3}, {1, 3}}, Barred: [][]int{{1}, {0}, {0}, nil}},
		{Wires: 5, Colours: 3, Apart: [][2]int{{2, 4}, {3, 4}, {1, 4}, {0, 4}, {0, 3}, {2, 3}, {1, 2}}},
		{Wires: 6, Colours: 3, Apart: [][2]int{{3, 4}, {0, 5}, {1, 5}, {4, 5}, {0, 4}, {3, 5}, {1, 2}},
			Barred: [][]int{{0}, {1}, nil, {1}, nil, nil}},
		{Wires: 4, Colours: 3, Apart: [][2]int{{0, 2}, {0, 1}, {0, 3}, {1, 2}, {1, 3}}, Barred: [][]int{{0}, nil, {2}, {0}}},
		{Wires: 6, Colours: 3, Apart: [][2]int{{2, 3}, {1, 5}, {1, 2}, {0, 5}, {4, 5}, {3, 4}, {0, 4}},
			Barred: [][]int{{0}, {2}, {0}, {2}, nil, nil}},
		{Wires: 4, Colours: 3, Apart: [][2]int{{1, 3}, {0, 3}, {0, 1}, {0, 2}, {2, 3}}, Barred: [][]int{nil, {1}, {0}, nil}},
		{Wires: 4, Colours: 3, Apart: [][2]int{{1, 3}, {0, 1}, {1, 2}, {2, 3}, {0, 3}}, Barred: [][]int{{1}, {1}, {0}, {0}}},
		{Wires: 5, Colours: 3, Apart: [][2]int{{1, 4}, {1, 3}, {0, 3}, {0, 1}, {3, 4}}, Barred: [][]int{{0}, nil, nil, nil, {1}}},
		{Wires: 5, Colours: 3, Apart: [][2]int{{2, 4}, {3, 4}, {1, 2}, {2, 3}, {1, 4}}, Barred: [][]int{{2}, {0}, nil, {1}, nil}},
		{Wires: 4, Colours: 3, Apart: [][2]int{{0, 2}, {2, 3}, {1, 3}, {1, 2}, {0, 1}}, Barred: [][]int{{0, 0}, {0}, nil, {1}}},
		{Wires: 5, Colours: 3, Apart: [][2]int{{2, 4}, {1, 4}, {1, 2}, {1, 3}, {3, 4}}, Barred: [][]int{nil, {1}, {2}, {1}, nil}},
	} {
		if s := open(a, 1000); s.inOrder() || s.swaps() {
			t.Errorf("question %d needs no search", n)
		}
		got := Solve(a, 30)
		if !got.Found || got.Spent || !a.Holds(got.Colours) {
			t.Errorf("question %d: %+v", n, got)
		}
		if n == 1 && !slices.Equal(got.Colours, []int{2, 2, 1, 0}) {
			t.Errorf("question %d has one answer alone: %v", n, got.Colours)
		}
		// Each step gives one wire a colour, so as many as there are wires are the least.
		if few := Solve(a, a.Wires-1); few.Found || !few.Spent {
			t.Errorf("question %d in fewer steps than wires: %+v", n, few)
		}
		// Two colours are not enough for a triangle, and the search says so.
		a.Colours, a.Barred = 2, nil
		if got := Solve(a, 1000); got.Found || got.Spent {
			t.Errorf("question %d with two colours: %+v", n, got)
		}
	}
}

// What can be seen without a search is told without a step: a wire that must differ from itself or has every colour barred, with a
// layer beside it that could be searched for long. That no step is left is not that they ran out.
func TestNoWithoutAStep(t *testing.T) {
	ring := []Ring{{Wires: []int{1, 2}, Often: []int{0}}, {Wires: []int{2, 3}}}
	for name, a := range map[string]Ask{
		"itself":     {Wires: 4, Colours: 3, Apart: [][2]int{{0, 0}, {1, 2}}, Rings: ring},
		"all barred": {Wires: 4, Colours: 3, Barred: [][]int{{0, 1, 2}, nil, nil, nil}, Rings: ring},
		"no stock":   {Wires: 4, Rings: []Ring{{Wires: []int{1, 2}}}},
	} {
		for _, steps := range []int{0, 1, 100} {
			if got := Solve(a, steps); got.Found || got.Spent || got.Colours != nil {
				t.Errorf("%s in %d steps: %+v", name, steps, got)
			}
		}
	}
	// A pair that is named twice, both ways, is one pair: two wires beside each other and a third that is free.
	a := Ask{Wires: 3, Colours: 2, Apart: [][2]int{{0, 1}, {1, 0}, {0, 1}}, Rings: []Ring{{Wires: []int{0, 1, 2}}}}
	if got := Solve(a, 100); !got.Found || !slices.Equal(got.Colours, []int{0, 1, 0}) {
		t.Errorf("%+v", got)
	}
}

// By hand: the first of three colours is barred from a wire and from two beside it that have the others. One of them changes from
// the second colour to the third, and the wire has the second. What is given bars its colour from its neighbours, and is no
// reason of their own.
func TestSwapOfOtherColours(t *testing.T) {
	s := open(Ask{Wires: 3, Colours: 3, Apart: [][2]int{{0, 2}, {1, 2}}, Barred: [][]int{{0}, {0}, {0}}}, 100)
	got := []int{1, 2, none}
	if !s.swapFor(got, s.ownBars(), 2) || !slices.Equal(got, []int{2, 2, 1}) {
		t.Errorf("%v", got)
	}
	s = open(Ask{Wires: 3, Colours: 3, Apart: [][2]int{{0, 2}, {1, 2}}, Barred: [][]int{nil, nil, {0, 2}}}, 100)
	s.give(0, 1)
	s.give(1, 2)
	if own := s.ownBars()[2]; !slices.Equal(own, []bool{true, false, true}) {
		t.Errorf("barred for its own reasons: %v", own)
	}
	if own := s.ownBars()[0]; slices.Contains(own, true) {
		t.Errorf("barred for no reason: %v", own)
	}
}
