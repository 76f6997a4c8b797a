package whatif

import (
	"errors"
	"fmt"
	"slices"
	"strconv"

	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
	"contralay/model"
)

// spare is another number of spare wires.
type spare int

// mostSpares is how many more spares are offered.
const mostSpares = 12

// sparesIn is the spare wires that are laid by themselves in branch i, in file order, and those of them that can be
// taken out.
func sparesIn(s *sheet.Sheet, i int) (all, free []string) {
	for _, id := range s.Branches[i].Components {
		k, ok := s.Index.Wire[id]
		if !ok || s.H.Wires[k].Role.V != model.RoleSpare {
			continue
		}
		all = append(all, id)
		if _, _, _, held := heldBy(s.H, id); !held && !slices.ContainsFunc(s.H.Wires, func(w model.Wire) bool { return w.Return.V == id }) {
			free = append(free, id)
		}
	}
	return all, free
}

func spares(s *sheet.Sheet, i int) []Kind {
	all, free := sparesIn(s, i)
	least, now := len(all)-len(free), len(all)
	most := now
	if roomiest(s.Branches[i].As, nil) >= 0 {
		most += len(bundle.SparesMore(s, i, mostSpares))
	}
	k := Kind{ID: "spares", Name: "spare wires", Now: now - least}
	for n := least; n <= most; n++ {
		k.Values = append(k.Values, Value{Key: strconv.Itoa(n), Says: strconv.Itoa(n), change: spare(n)})
	}
	return []Kind{k}
}

func (c spare) present(s *sheet.Sheet, i int) bool {
	all, _ := sparesIn(s, i)
	return len(all) == int(c)
}

func (c spare) make(s *sheet.Sheet, i int) (trial, error) {
	all, free := sparesIn(s, i)
	t := trial{h: written(s, s.H, i), lays: true}
	for n := len(all) - int(c); n > 0; n-- {
		if len(free) == 0 {
			return trial{}, errors.New("a locked layer or a pin holds the other spares: unlock it first")
		}
		id := free[len(free)-1]
		free = free[:len(free)-1]
		h, err := t.h.RemoveWire(slices.IndexFunc(t.h.Wires, func(w model.Wire) bool { return w.ID == id }))
		if err != nil {
			return trial{}, err
		}
		t.h = h
	}
	more := int(c) - len(all)
	if more <= 0 {
		return t, nil
	}
	places := bundle.SparesMore(s, i, more)
	if len(places) < more {
		return trial{}, fmt.Errorf("both ends have free cavities for %d more spares only", len(places))
	}
	room := make([]int, len(s.Branches[i].Layers))
	for k := range room {
		room[k] = s.Branches[i].Layers[k].Room
	}
	for _, p := range places {
		k := roomiest(t.h.Branches[i].Layers, room)
		if k < 0 {
			return trial{}, errors.New(allLocked)
		}
		room[k]--
		t.h, _ = planning.AddSpare(s, t.h, i, k, p)
	}
	return t, nil
}

const allLocked = "every layer is locked: unlock one first"

// roomiest is the outermost layer that still takes a piece, else the outermost that is not locked; -1 where all are.
func roomiest(layers []model.Layer, room []int) int {
	last := -1
	for k := len(layers) - 1; k >= 0; k-- {
		switch {
		case layers[k].Locked.V:
		case k < len(room) && room[k] > 0:
			return k
		case last < 0:
			last = k
		}
	}
	return last
}
