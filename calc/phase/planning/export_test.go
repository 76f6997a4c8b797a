package planning

import (
	"contralay/calc/sheet"
	"contralay/model/unit"
)

// NewSearch is a search before anything is asked: the units it wants in the centre, the weight of what is buried, and the answers
// to a question with them there or anywhere.
func NewSearch(s *sheet.Sheet, i int) (inCentre []string, weight unit.Millimetre, ask func(unitsIn bool) []sheet.Option) {
	q := newSearch(s, i)
	return q.inCentre, q.weight, func(unitsIn bool) []sheet.Option { return q.ask(asked{unitsIn: unitsIn}).options }
}
