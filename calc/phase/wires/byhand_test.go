package wires

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// The walls that a shop measured, by hand: a quarter more of each tube of that kind, and the catalogue as it was.
func TestLearnedWallsByHand(t *testing.T) {
	tubes := []catalogue.Tube{{ID: "a", Kind: "x", WallMM: 0.8}, {ID: "b", Kind: "y", WallMM: 0.6}, {ID: "c", Kind: "x", WallMM: 1}}
	cat := &catalogue.Catalogue{Tubes: tubes}
	if learnedWalls(cat) != cat {
		t.Error("nothing was measured, and it is another catalogue")
	}
	cat.Corrections = []catalogue.Correction{{Of: "wall, x", Bias: 0.25}, {Of: "wall, z", Bias: 1}}
	got := learnedWalls(cat)
	for k, want := range []unit.Millimetre{1, 0.6, 1.25} {
		is := got.Tubes[k]
		if is.WallMM != want || (is.WallStanding == catalogue.House) != (is.Kind == "x") {
			t.Errorf("%s: %v mm, %v", is.ID, is.WallMM, is.WallStanding)
		}
	}
	if cat.Tubes[0].WallMM != 0.8 || cat.Tubes[2].WallMM != 1 || cat.Tubes[0].WallStanding == catalogue.House {
		t.Errorf("the catalogue itself was changed: %+v", cat.Tubes)
	}
}

// The tree as it is walked, by hand: from the end with the most cavities, of as many that with the most wires, of as many the first of
// the file; what hangs on no end from where its first branch begins; a loop, which no file that loads has, once.
func TestWalkedByHand(t *testing.T) {
	for _, c := range []struct {
		name     string
		branches string // "FROM-TO", in file order
		terms    []sheet.Term
		want     string
	}{
		{"most cavities", "P-J J-Q R-J", []sheet.Term{{}, {Cavities: []string{"1"}}, {}}, "1 Q>J 0, 0 J>P 1, 2 J>R 1"},
		{"most wires", "P-J J-Q R-J", []sheet.Term{{Used: 1}, {Used: 1}, {Used: 2}}, "2 R>J 0, 0 J>P 1, 1 J>Q 1"},
		{"the first", "J-Q P-J", []sheet.Term{{}, {}, {}}, "1 P>J 0, 0 J>Q 1"},
		{"no end at all", "K-J L-K", []sheet.Term{{}, {}, {}}, "0 K>J 0, 1 K>L 0"},
		{"an end, and a piece without", "K-L P-J", []sheet.Term{{}, {}, {}}, "1 P>J 0, 0 K>L 0"},
		{"a loop", "P-J J-K K-L L-J J-Q", []sheet.Term{{}, {}, {}}, "0 P>J 0, 1 J>K 1, 2 K>L 2, 3 L>J 3, 4 J>Q 4"},
		{"nothing", "", nil, ""},
	} {
		h := &model.Harness{Terminations: []model.Termination{{ID: "P"}, {ID: "Q"}, {ID: "R"}},
			Breakouts: []model.Breakout{{ID: "J"}, {ID: "K"}, {ID: "L"}}}
		for k, b := range strings.Fields(c.branches) {
			from, to, _ := strings.Cut(b, "-")
			h.Branches = append(h.Branches, model.Branch{ID: fmt.Sprint(k), From: from, To: to})
		}
		s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Terms: c.terms}
		met := map[int]int{}
		var got []string
		for _, w := range Walked(s) {
			met[w.Branch]++
			got = append(got, fmt.Sprintf("%d %s>%s %d", w.Branch, w.From, w.To, w.Deep))
		}
		if c.name == "a loop" { // in what order a loop is walked is nobody's matter
			for k := range h.Branches {
				if met[k] != 1 {
					t.Errorf("branch %d of a loop is walked %d times", k, met[k])
				}
			}
			continue
		}
		if strings.Join(got, ", ") != c.want {
			t.Errorf("%s: %s, want %s", c.name, strings.Join(got, ", "), c.want)
		}
	}
}

// What a circuit may drop: more where its load only comes for a short time.
func TestDropLimitByHand(t *testing.T) {
	s := &sheet.Sheet{Limits: model.Limits{DropMaxV: 0.5, DropShortV: 1},
		H: &model.Harness{Wires: []model.Wire{{Amps: model.Some[unit.Ampere](5)},
			{Amps: model.Some[unit.Ampere](5), OnS: model.Some[unit.Second](1), PeriodS: model.Some[unit.Second](60)}}}}
	if a, b := DropLimit(s, 0), DropLimit(s, 1); a != 0.5 || b != 1 {
		t.Errorf("%v all the time, %v for a short time", a, b)
	}
}
