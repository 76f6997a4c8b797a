package whatif

import (
	"cmp"
	"fmt"
	"slices"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// spec is every wire of the branch in another specification. Wires of a unit whose OD is given stay: such a unit is
// bought or measured as it is.
type spec string

// ofSpec is the wires of branch i whose specification is the branch's to choose.
func ofSpec(s *sheet.Sheet, i int) []int {
	var out []int
	for _, id := range s.Branches[i].Components {
		c, ok := s.Index.Component(id)
		switch {
		case !ok:
		case !c.Unit:
			out = append(out, c.At)
		case s.H.Units[c.At].OverMM.V <= 0:
			for _, w := range s.H.Units[c.At].Wires {
				if k, ok := s.Index.Wire[w]; ok {
					out = append(out, k)
				}
			}
		}
	}
	return out
}

// specs is the specifications that have every size of the branch, thin to thick by its commonest size.
func specs(s *sheet.Sheet, i int) []Kind {
	wires := ofSpec(s, i)
	if len(wires) == 0 {
		return nil
	}
	count := map[string]int{}
	for _, k := range wires {
		count[catalogue.CanonicalSize(s.H.Wires[k].Size)]++
	}
	common := ""
	for size, n := range count {
		if common == "" || n > count[common] || n == count[common] && size < common {
			common = size
		}
	}
	type found struct {
		name string
		over unit.Millimetre
	}
	var all []found
	for _, name := range s.Cat.Specs() {
		has := true
		for size := range count {
			_, ok := s.Cat.Wire(name, size)
			has = has && ok
		}
		if has {
			e, _ := s.Cat.Wire(name, common)
			all = append(all, found{name, e.OverMM})
		}
	}
	slices.SortStableFunc(all, func(a, b found) int { return cmp.Compare(a.over, b.over) })
	is := func(f found) bool { return spec(f.name).present(s, i) }
	k := Kind{ID: "spec", Name: "specification", Now: slices.IndexFunc(all, is)}
	for _, f := range all {
		k.Values = append(k.Values, Value{Key: f.name, Says: f.name, change: spec(f.name)})
	}
	return []Kind{k}
}

func (c spec) present(s *sheet.Sheet, i int) bool {
	return !slices.ContainsFunc(ofSpec(s, i), func(k int) bool { return s.H.Wires[k].Spec != string(c) })
}

func (c spec) make(s *sheet.Sheet, i int) (trial, error) {
	t := trial{h: written(s, s.H, i), lays: true, resized: true}
	n := *t.h
	n.Wires = slices.Clone(n.Wires)
	for _, k := range ofSpec(s, i) {
		w := &n.Wires[k]
		if w.Spec == string(c) {
			continue
		}
		if _, ok := s.Cat.Wire(string(c), w.Size); !ok {
			return trial{}, fmt.Errorf("%s has no size %s, which wire %s is", string(c), w.Size, w.ID)
		}
		if err := mayResize(s, w.ID); err != nil {
			return trial{}, err
		}
		w.Spec = string(c)
	}
	t.h = &n
	return t, nil
}

// mayResize says why a wire keeps its size: it, or its unit, lies in a locked layer.
func mayResize(s *sheet.Sheet, wire string) error {
	id := wire
	if u, in := s.Index.UnitOf[wire]; in {
		id = s.H.Units[u].ID
	}
	if branch, layer, locked, _ := heldBy(s.H, id); locked {
		return fmt.Errorf("%s of %s is locked, and %s in it would be another size: unlock it first", model.LayerName(layer), branch, id)
	}
	return nil
}
