package layers

import (
	"fmt"

	"contralay/calc/query/cliff"
	"contralay/ui/bench/desk"
)

// strips is what is worked out of the strips, count by count, by the key of each question: what came of
// a sheet that is gone is found again where the same is asked, and is in nobody's way else.
type strips struct {
	asks   desk.Kept[asking]
	points map[string]map[int]cliff.Point
}

// asking is a question of a branch, or why there is none.
type asking struct {
	cliff.Ask
	why string
}

// mostStrips is how many questions are remembered.
const mostStrips = 40

// askOf is the question about what is counted in the branch in hand.
func askOf(m *desk.Model, of string) asking {
	return desk.State[strips](m).asks.Get(m.Sheet, m.Branch, of, func() asking {
		_, b, ok := m.BranchHere()
		var a asking
		switch {
		case !ok || b.Waiting || len(b.Layers) == 0:
			a.why = "Nothing is laid here yet"
		case of == countSpares:
			a.Ask, a.why = cliff.OfSpares(m.Sheet, m.Branch)
		default:
			a.Ask, a.why = cliff.OfWires(m.Sheet, m.Branch)
		}
		return a
	})
}

// stripOf is the strip of the branch in hand as far as it is worked out, or why there is none.
func stripOf(m *desk.Model, of string) (s *cliff.Strip, why string) {
	a := askOf(m, of)
	if a.why != "" {
		return nil, a.why
	}
	s = cliff.Begin(a.Ask)
	for _, p := range desk.State[strips](m).points[a.Key] {
		s.Put(p)
	}
	return s, ""
}

// PlanCliffs works out what the row of the step says, one count at a time.
func PlanCliffs(m *desk.Model) (desk.Work, bool) {
	return nextCount(m, countWires, (*cliff.Strip).Near)
}

// PlanStrip works out the strip in front, one count at a time, the nearest first.
func PlanStrip(m *desk.Model) (desk.Work, bool) {
	return nextCount(m, m.Subject(), (*cliff.Strip).Next)
}

func nextCount(m *desk.Model, of string, next func(s *cliff.Strip) (int, bool)) (desk.Work, bool) {
	s, why := stripOf(m, of)
	if why != "" {
		return desk.Work{}, false
	}
	n, more := next(s)
	if !more {
		return desk.Work{}, false
	}
	a := s.Ask
	return desk.Work{Key: fmt.Sprintf("count\x00%s\x00%d", a.Key, n), Do: func() func(m *desk.Model) {
		p := a.At(n)
		return func(m *desk.Model) { desk.State[strips](m).put(a.Key, p) }
	}}, true
}

// put takes up a point of a question.
func (s *strips) put(key string, p cliff.Point) {
	if s.points[key] == nil {
		if s.points == nil || len(s.points) >= mostStrips {
			s.points = map[string]map[int]cliff.Point{}
		}
		s.points[key] = map[int]cliff.Point{}
	}
	s.points[key][p.N] = p
}
