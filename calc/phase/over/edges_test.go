package over

import (
	"fmt"
	"testing"

	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// A cover lies under the transition that its branch is walked from where it reaches into the 40 mm of its outlet: before 40 mm at
// the from end of a branch of 500 mm, behind 460 mm at its to end. Without a transition it lies under none.
func TestWhatReachesATransition(t *testing.T) {
	for _, c := range []struct {
		turned, none bool
		from, to     unit.Millimetre
		want         bool
	}{
		{false, false, 100, 460, false}, {false, false, 0, 460.5, true}, {false, true, 0, 500, false},
		{true, false, 40, 500, false}, {true, false, 39.5, 400, true}, {true, true, 0, 500, false},
	} {
		s := oneBranch(func(s *sheet.Sheet) {
			b := &s.H.Branches[0]
			if c.turned {
				b.From, b.To = b.To, b.From
			}
			s.H.Breakouts[0].Transition = model.Some("X")
			s.Cat.Transitions = map[string]catalogue.Transition{"X": {ID: "X", Outlets: []catalogue.Outlet{{PortMM: 900}, {PortMM: 40}}}}
			end := 1
			if c.turned {
				end = 0
			}
			if !c.none {
				s.Branches[0].Outlets[end] = model.Some(1)
			}
		})
		if got := Reaches(s, wires.Walk{Branch: 0, From: "J", To: "A"}, sheet.Covered{FromMM: c.from, ToMM: c.to}); got != c.want {
			t.Errorf("%+v: %v", c, got)
		}
	}
}

// The bend of a 90° boot takes 10 / 2 · π / 2 = 7.85 mm of the outer wires of a bundle of 10 mm: a loop of 7.8 mm is gone, one of
// 7.9 is not; a straight boot takes nothing, and of a boot whose sizes are not known nothing is said.
func TestLoopTakenUpByABend(t *testing.T) {
	const gone = "note loop.turn A The bend of B takes 8 mm from its outer wires, and the loop is 8 mm: they have no loop left"
	for _, c := range []struct {
		shape  string
		loop   unit.Millimetre
		length unit.Millimetre
		want   string
	}{{"90", 7.8, 100, gone}, {"90", 7.9, 100, ""}, {"straight", 7.8, 100, ""}, {"90", 0, 100, ""}, {"90", 7.8, 0, ""}} {
		s := oneBranch(func(s *sheet.Sheet) {
			s.H.Terminations[0].Boot, s.H.Terminations[0].LoopMM = model.Some("B"), model.Some(c.loop)
			s.Terms = make([]sheet.Term, 1)
			s.Cat.Boots = map[string]catalogue.Boot{"B": {ID: "B", Shape: c.shape, LengthMM: c.length, LipSuppliedMM: 60}}
		})
		Loops(s)
		if got, want := fmt.Sprint(told(s)), "["+c.want+"]"; got != want {
			t.Errorf("%+v: %s, want %s", c, got, want)
		}
	}
}

// Where a cover that says nothing lies, by hand: a wound one all along; a tube as a sheath would, 25 mm before the breakout, and all
// along where that leaves nothing; over a sheath as that does, under it not.
func TestWhereACoverLiesByItself(t *testing.T) {
	for _, c := range []struct {
		name     string
		long     unit.Millimetre
		part     string
		sheath   bool
		k        int
		from, to unit.Millimetre
	}{
		{"wound", 500, "own", false, 0, 0, 500}, {"a tube", 500, "X", false, 0, 0, 475},
		{"a tube on a short branch", 25, "X", false, 0, 0, 25},
		{"over the sheath", 500, "X", true, 1, 30, 300}, {"wound under it", 500, "own", true, -1, 0, 500},
	} {
		s := oneBranch(func(s *sheet.Sheet) {
			b := &s.H.Branches[0]
			b.LengthMM = c.long
			s.Cat.Tubes = []catalogue.Tube{{ID: "X"}}
			mine := model.Cover{What: model.CoverSleeve, Part: model.Some(c.part)}
			switch {
			case !c.sheath:
				b.Covers = []model.Cover{mine}
			case c.k > 0:
				b.Covers = []model.Cover{{What: model.CoverSheath}, mine}
			default:
				b.Covers = []model.Cover{mine, {What: model.CoverSheath}}
			}
			if c.sheath {
				s.Branches[0].Sheath = sheet.Sheath{Tube: model.Some(catalogue.Tube{ID: "X"}), FromMM: 30, ToMM: 300}
			}
		})
		if from, to := coverEnds(s, 0, max(0, c.k)); from != c.from || to != c.to {
			t.Errorf("%s: %v to %v, want %v to %v", c.name, from, to, c.from, c.to)
		}
	}
	// Walked the other way a sheath starts at 25 mm: what is to stop before that starts at the very end.
	s := oneBranch(func(s *sheet.Sheet) { b := &s.H.Branches[0]; b.From, b.To = b.To, b.From })
	for to, want := range map[unit.Millimetre]unit.Millimetre{10: 0, 25: 0, 60: 25} {
		from, till, ok := placed(s, 0, model.CoverTape, &model.Cover{ToMM: model.Some(to)}, 100, 400)
		if !ok || from != want || till != to {
			t.Errorf("to %v: %v to %v %v, want from %v", to, from, till, ok, want)
		}
	}
}
