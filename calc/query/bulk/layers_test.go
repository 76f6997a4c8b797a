package bulk

import (
	"fmt"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
)

// The layers that need a tracer, by hand: of a laid branch, two pieces or more, the centre apart; the codes of the stock that others have
// once, and often, in order; none where something that gets no colour now is a tracer already. A colour is one however it is written.
func TestLayersThatNeedATracer(t *testing.T) {
	colours := map[string]string{"w0": "", "w1": "", "w2": "", "r1": "2", "r2": "rd", "r3": "RD", "g1": "5", "g2": "5", "b1": "6",
		"y1": "4",
		"v1": " Odd ", "v2": "odd", "n1": "", "o1": "other"}
	h := &model.Harness{Branches: []model.Branch{{ID: "T"}}}
	for _, id := range []string{"w0", "w1", "w2", "r1", "r2", "r3", "g1", "g2", "b1", "y1", "v1", "v2", "n1", "o1"} {
		h.Wires = append(h.Wires, model.Wire{ID: id, Colour: model.Some(colours[id])})
	}
	h.Units = []model.Unit{{ID: "U", Build: model.Some(model.UnitBuild("pair"))}, {ID: "V", Build: model.Some(model.UnitBuild("pair"))}}
	for _, c := range []struct {
		name   string
		layers [][]string
		want   string
	}{
		{"centre only", [][]string{{"w0", "w1"}}, "[]"},
		{"one piece", [][]string{{"r1"}, {"w0"}}, "[]"},
		{"two", [][]string{{"r1"}, {"w0", "w1"}}, "[1:[0 1][][]]"},
		{"not asked", [][]string{{"r1"}, {"g1", "g2"}}, "[]"},
		{"others once", [][]string{{"r1"}, {"w0", "y1", "b1", "r1"}}, "[1:[0][2 4 6][]]"},
		{"others often", [][]string{{"r1"}, {"w1", "g1", "g2", "r3", "r2", "r1"}}, "[1:[1][][2 5]]"},
		{"unstocked once is its tracer", [][]string{{"r1"}, {"w0", "o1"}}, "[]"},
		{"unstocked often", [][]string{{"r1"}, {"w0", "v1", "v2"}}, "[1:[0][][]]"},
		{"no colour at all", [][]string{{"r1"}, {"w0", "n1"}}, "[1:[0][][]]"},
		{"a filler once", [][]string{{"r1"}, {"w0", "filler"}}, "[1:[0][9][]]"},
		{"fillers", [][]string{{"r1"}, {"w0", "filler", "filler"}}, "[1:[0][][9]]"},
		{"asked, not coloured", [][]string{{"r1"}, {"w2", "g1", "g2"}}, "[1:[][][5] barren]"},
		{"asked, and one once", [][]string{{"r1"}, {"w2", "g1"}}, "[]"},
		{"a unit once is its tracer", [][]string{{"r1"}, {"w1", "U"}}, "[]"},
		{"units often", [][]string{{"r1"}, {"w1", "U", "V"}}, "[1:[1][][]]"},
		{"units alone", [][]string{{"r1"}, {"U", "V"}}, "[]"},
		{"two layers", [][]string{{"r1"}, {"w0", "g1", "g2"}, {"g1", "g2"}, {"w1", "r1"}}, "[1:[0][][5] 3:[1][2][]]"},
	} {
		s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Branches: []sheet.Branch{{Make: model.MakeLaid}}}
		for _, ids := range c.layers {
			var l sheet.Layer
			for _, id := range ids {
				l.Members = append(l.Members, sheet.Member{ID: id})
			}
			s.Branches[0].Layers = append(s.Branches[0].Layers, l)
		}
		p := palette{s: s, at: []int{0, 1, 2}, free: []int{0, 1}, place: map[int]int{0: 0, 1: 1},
			known: map[string]int{keyOf("2"): 2, keyOf("5"): 5, keyOf("6"): 6, keyOf("4"): 4, keyOf("9"): 9}}
		for range 8 { // the colours are counted in a map
			p.rings = nil
			p.layers()
			var got []string
			for _, r := range p.rings {
				text := fmt.Sprintf("%d:%v%v%v", r.layer, r.Wires, r.Once, r.Often)
				if r.barren {
					text += " barren"
				}
				got = append(got, text)
			}
			if fmt.Sprint(got) != c.want {
				t.Errorf("%s: %v, want %s", c.name, got, c.want)
				break
			}
		}
	}
}

// A branch that is not laid up yet is told of where it has a wire that gets a colour; one that is twisted, or has none, is not.
func TestBranchesNotLaidYet(t *testing.T) {
	h := &model.Harness{Wires: []model.Wire{{ID: "w0"}, {ID: "w1"}}, Branches: []model.Branch{{ID: "A"}, {ID: "B"}, {ID: "C"}, {ID: "D"}}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Branches: []sheet.Branch{{Make: model.MakeTwisted, Components: []string{"w0"}},
		{Make: model.MakeLaid, Components: []string{"w1"}}, {Make: model.MakeLaid, Components: []string{"w1", "w0"}},
		{Make: model.MakeLaid}}}
	p := palette{s: s, at: []int{0}, free: []int{0}, place: map[int]int{0: 0}}
	p.layers()
	if fmt.Sprint(p.unlaid) != "[C]" || len(p.rings) != 0 {
		t.Error(p.unlaid, p.rings)
	}
}

// A colour is one however it is written; what is none is told apart by its letters alone.
func TestKeyOfAColour(t *testing.T) {
	for _, c := range [][2]string{{"WHBU", "96"}, {"rd", "2"}, {" Odd ", "odd"}} {
		if keyOf(c[0]) != keyOf(c[1]) {
			t.Errorf("%q and %q are two", c[0], c[1])
		}
	}
	if keyOf("odd") == keyOf("other") || keyOf("2") == keyOf("6") {
		t.Error("two colours are one")
	}
}
