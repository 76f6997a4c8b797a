package bulk

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc/formula/hue"
	"contralay/calc/sheet"
	"contralay/model"
)

// smallStock is a palette of three colours over wires w0 to w7, of which w0 to w3 get one; w4 and w5 are red, w6 blue, w7 of a colour
// that is
// not in stock.
func smallStock() *palette {
	h := &model.Harness{Branches: []model.Branch{{ID: "T"}, {ID: "U"}}, Terminations: []model.Termination{{ID: "P1"}, {ID: "P2"}}}
	for k, colour := range []string{"", "", "", "", "2", "rd", "6", "odd"} {
		h.Wires = append(h.Wires, model.Wire{ID: fmt.Sprint("w", k), Colour: model.Some(colour)})
	}
	return &palette{s: &sheet.Sheet{H: h}, free: []int{0, 1, 2, 3}, place: map[int]int{0: 0, 1: 1, 2: 2, 3: 3}, codes: []string{"2", "6",
		"9"},
		known: map[string]int{keyOf("2"): 0, keyOf("6"): 1, keyOf("9"): 2}, ask: hue.Ask{Wires: 4, Colours: 3, Barred: make([][]int, 4)}}
}

// What meets in a connector, by hand: wires of different cavities differ, those of one need not; what has a colour bars it; what the
// connector
// lacks is the cavities that want a colour less the colours that nobody there has.
func TestApartInAConnector(t *testing.T) {
	for _, c := range []struct {
		name                string
		cavities            [][]int
		apart, barred, free string
		lack                int
		alike               string
	}{
		{"three", [][]int{{0}, {1}, {2}}, "[[0 1] [0 2] [1 2]]", "[[] [] [] []]", "[0 1 2]", 0, "[]"},
		{"four of three colours", [][]int{{0}, {1}, {2}, {3}}, "[[0 1] [0 2] [1 2] [0 3] [1 3] [2 3]]", "[[] [] [] []]", "[0 1 2 3]", 1,
			"[]"},
		{"two in one cavity", [][]int{{0, 1}, {2}}, "[[0 2] [1 2]]", "[[] [] [] []]", "[0 1 2]", 0, "[]"},
		{"beside red and blue", [][]int{{0}, {1}, {4}, {6}}, "[[0 1]]", "[[0 1] [0 1] [] []]", "[0 1]", 1, "[]"},
		{"beside red twice", [][]int{{0}, {1}, {4}, {5}}, "[[0 1]]", "[[0] [0] [] []]", "[0 1]", 0, "[[4 5]]"},
		{"beside what is not in stock", [][]int{{7}, {0}, {1}, {2}}, "[[0 1] [0 2] [1 2]]", "[[] [] [] []]", "[0 1 2]", 0, "[]"},
		{"shared with one that has its colour", [][]int{{0, 4}, {1}}, "[[0 1]]", "[[] [0] [] []]", "[0 1]", 0, "[]"},
		{"one wire in two cavities", [][]int{{0}, {0}}, "[]", "[[] [] [] []]", "[0]", 0, "[]"},
	} {
		p, j := smallStock(), joint{}
		p.keepApart(&j, c.cavities)
		if got := fmt.Sprint(p.ask.Apart); got != c.apart {
			t.Errorf("%s: apart %s, want %s", c.name, got, c.apart)
		}
		if got := fmt.Sprint(p.ask.Barred); got != c.barred {
			t.Errorf("%s: barred %s, want %s", c.name, got, c.barred)
		}
		if fmt.Sprint(j.free) != c.free || j.lack != c.lack || fmt.Sprint(j.alike) != c.alike {
			t.Errorf("%s: free %v, lacks %d, alike %v", c.name, j.free, j.lack, j.alike)
		}
	}
	p := smallStock()
	if p.given(0) != "" || p.given(4) != p.given(5) || p.given(4) == p.given(6) {
		t.Error("which colours are given")
	}
}

// What was not to be had, by hand: connectors that lack a colour for certain first, each wire told once; then wires that were given one
// colour;
// then layers without a tracer, and branches that are not laid.
func TestWhatIsLackingIsSaid(t *testing.T) {
	p := smallStock()
	p.joints = []joint{{term: 1, free: []int{0, 1}, alike: [][]int{{5, 4}}}, {term: 0, free: []int{1, 2, 3}, lack: 1}}
	p.unlaid = []string{"T", "U"}
	rings := []ring{{branch: 1, layer: 2, barren: true}, {branch: 0, layer: 1}}
	for _, c := range []struct {
		got   []int
		spent bool
		want  []string
	}{
		{[]int{0, 1, 2, 0}, false, nil},
		{[]int{0, 3, 2, 0}, false, []string{"P1: P1 needs 1 colour more in stock: w1 gets none, 1"}},
		{[]int{3, 3, 4, 0}, false, []string{"P1: P1 needs 2 colours more in stock: w1 and w2 get none, 2",
			"P2: P2 needs 1 colour more in stock: w0 gets none, 1"}},
		{[]int{3, 2, 1, 0}, true, []string{"P2: P2 needs 1 colour more in stock: w0 gets none (there may be a way that was not found), 1"}},
	} {
		var said []string
		for _, l := range p.lacks(c.got, short{spent: c.spent}) {
			said = append(said, fmt.Sprintf("%s%s: %s, %d", l.Connector, l.Branch, l.Says, l.Colours))
		}
		want := append(slices.Clone(c.want), "P2: P2: w5 and w4 were given one colour, "+model.ColourWords("rd")+", 0",
			"T: T and U have no lay-up yet: tracers there are not looked at, 0")
		if !slices.Equal(said, want) {
			t.Errorf("%v:\n%q\nwant\n%q", c.got, said, want)
		}
	}
	p.joints, p.unlaid = nil, []string{"T"}
	var said []string
	for _, l := range p.lacks([]int{0, 0, 0, 0}, short{rings: rings, spent: true}) {
		said = append(said, fmt.Sprintf("%s %d: %s, %d", l.Branch, l.Layer, l.Says, l.Colours))
	}
	if want := []string{"U 2: Layer 2 of U has no tracer: the colours of its wires are all given, 0",
		"T 1: Layer 1 of T gets no tracer: it needs 1 colour more in stock (there may be a way that was not found), 1",
		"T 0: T has no lay-up yet: tracers there are not looked at, 0"}; !slices.Equal(said, want) {
		t.Errorf("%q", said)
	}
}

// A wire with a made-up colour takes the first of the stock that it may have.
func TestFewerMadeUpColours(t *testing.T) {
	for _, c := range []struct {
		got    []int
		apart  [][2]int
		barred [][]int
		want   string
	}{
		{[]int{3, 0, 1, 2}, nil, make([][]int, 4), "[0 0 1 2]"}, {[]int{3, 0, 1, 2}, [][2]int{{0, 1}}, make([][]int, 4), "[1 0 1 2]"},
		{[]int{3, 0, 1, 2}, [][2]int{{0, 1}, {0, 2}, {0, 3}}, make([][]int, 4), "[3 0 1 2]"},
		{[]int{4, 3, 1, 2}, [][2]int{{0, 1}}, [][]int{{0}, nil, nil, nil}, "[1 0 1 2]"},
	} {
		p := smallStock()
		p.ask.Apart, p.ask.Barred, p.ask.Lacking = c.apart, c.barred, 2
		before := fmt.Sprint(c.got)
		if got := fmt.Sprint(p.fewer(c.got, nil)); got != c.want {
			t.Errorf("%s: %s, want %s", before, got, c.want)
		}
	}
}

// The next wire is numbered after the last that is no spare.
func TestNumberOfTheNextWire(t *testing.T) {
	wires := func(ids string) (out []model.Wire) {
		for _, id := range strings.Fields(ids) {
			w := model.Wire{ID: id}
			if strings.HasPrefix(id, "S") {
				w.Role = model.Some(model.RoleSpare)
			}
			out = append(out, w)
		}
		return out
	}
	for ids, want := range map[string]string{"": "101", "S1": "101", "7": "8", "7 S1 S2": "8", "12 7": "8", "7 12 S9": "13",
		"S3 41": "42"} {
		if got := nextWire(&model.Harness{Wires: wires(ids)}); got != want {
			t.Errorf("after %q comes %s, want %s", ids, got, want)
		}
	}
}
