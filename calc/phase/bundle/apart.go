package bundle

import (
	"slices"

	"contralay/calc/sheet"
	"contralay/model"
)

// kinOf is what a component is for the wish to keep trigger and data from power.
type kin byte

const (
	neutral kin = iota
	listens     // trigger and data: a data wire, a unit that holds signal or data
	shouts      // power, which is switched
)

func kinOf(s *sheet.Sheet, id string) (out kin) {
	c, ok := s.Index.Component(id)
	if !ok {
		return
	}
	wires := []string{id}
	if c.Unit {
		wires = s.H.Units[c.At].Wires
	}
	for _, w := range wires {
		k, ok := s.Index.Wire[w]
		if !ok {
			continue
		}
		switch s.H.Wires[k].Role.V {
		case model.RolePower:
			return shouts
		case model.RoleData:
			out = listens
		case model.RoleSignal:
			if c.Unit {
				out = listens
			}
		}
	}
	return out
}

// besides counts the places round a layer where one that listens lies beside one
// that shouts; a filler between them parts them.
func besides(s *sheet.Sheet, ids []string) int {
	n := 0
	for k, id := range ids {
		if clash(s, id, ids[(k+1)%len(ids)]) {
			n++
		}
	}
	return n
}

func clash(s *sheet.Sheet, a, b string) bool {
	x, y := kinOf(s, a), kinOf(s, b)
	return x == listens && y == shouts || x == shouts && y == listens
}

// setApart turns tails round, or sorts one from listening over neutral to shouting,
// where that leaves fewer listening ones beside shouting ones. The tails stay side
// by side and in their order. Each is tried in turn against the others as they
// lie, so it is good rather than best, and the same each time.
func setApart(s *sheet.Sheet, tails [][]string) {
	all := func() int { return besides(s, slices.Concat(tails...)) }
	for range 2 { // a second round, for the first tail was set before the last
		for _, t := range tails {
			best, least := slices.Clone(t), all()
			sorted := slices.Clone(t)
			slices.SortStableFunc(sorted, func(a, b string) int { return order3(kinOf(s, a)) - order3(kinOf(s, b)) })
			for _, try := range [][]string{reversed(t), sorted, reversed(sorted), between(s, sorted)} {
				copy(t, try)
				if n := all(); n < least {
					best, least = slices.Clone(t), n
				}
			}
			copy(t, best)
		}
	}
}

// between sets the neutral ones half on each side of the shouting ones, for a tail
// that goes all the way round.
func between(s *sheet.Sheet, sorted []string) []string {
	var byKin [3][]string
	for _, id := range sorted {
		k := order3(kinOf(s, id))
		byKin[k] = append(byKin[k], id)
	}
	half := len(byKin[1]) / 2
	return slices.Concat(byKin[0], byKin[1][:half], byKin[2], byKin[1][half:])
}

func order3(k kin) int { return map[kin]int{listens: 0, neutral: 1, shouts: 2}[k] }

func reversed(in []string) []string {
	out := slices.Clone(in)
	slices.Reverse(out)
	return out
}
