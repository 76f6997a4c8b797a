package missing

import (
	"contralay/calc/sheet"
	"contralay/model"
)

// What keeps the harness from being built.

// wires is what wires lack to be wires at all: a size, a specification, ends.
func wires(s *sheet.Sheet) []Need {
	var sizes, specs, none, single []string
	for i := range s.H.Wires {
		w := &s.H.Wires[i]
		if w.Size == "" {
			sizes = append(sizes, w.ID)
		}
		if w.Spec == "" {
			specs = append(specs, w.ID)
		}
		_, from := s.Index.End(w.From.V)
		_, to := s.Index.End(w.To.V)
		switch capped := w.CappedAt.V != ""; {
		case !from && !to:
			none = append(none, w.ID)
		case (!from || !to) && !capped:
			single = append(single, w.ID)
		}
	}
	out := one(Need{Kind: Ends, Of: Wire, IDs: none, Rules: []string{"wire.path"}}, "wire %s has no ends", "%d wires have no ends: %s")
	out = append(out, one(Need{Kind: End, Of: Wire, IDs: single, Rules: []string{"wire.path"}}, "wire %s has no second end",
		"%d wires have no second end: %s")...)
	out = append(out, one(Need{Kind: Size, Of: Wire, IDs: sizes, Rules: []string{"wire.size"}}, "wire %s has no size",
		"%d wires have no size: %s")...)
	return append(out, one(Need{Kind: Spec, Of: Wire, IDs: specs, Rules: []string{"wire.size"}}, "wire %s has no specification",
		"%d wires have no specification: %s")...)
}

// lengths is the branches that are not measured yet.
func lengths(s *sheet.Sheet) []Need {
	var ids []string
	for i := range s.H.Branches {
		if b := &s.H.Branches[i]; !b.Measured() {
			ids = append(ids, b.ID)
		}
	}
	return one(Need{Kind: Length, Of: Branch, IDs: ids, Rules: []string{"branch.length"}}, "the length of %s is not known yet",
		"the lengths of %d branches are not known yet: %s")
}

// units is those of which nothing says what they are made of, or how thick they are.
func units(s *sheet.Sheet) []Need {
	var empty, over []string
	for i := range s.H.Units {
		switch u := &s.H.Units[i]; {
		case len(u.Wires) == 0:
			empty = append(empty, u.ID)
		case !s.Units[i].Dia.Known() && known(s, u.Wires):
			over = append(over, u.ID)
		}
	}
	out := one(Need{Kind: UnitWires, Of: Unit, IDs: empty, Rules: []string{"unit.build"}}, "unit %s has no wires",
		"%d units have no wires: %s")
	return append(out, one(Need{Kind: UnitOver, Of: Unit, IDs: over, Rules: []string{"unit.size"}}, "the OD of unit %s is not known",
		"the ODs of %d units are not known: %s")...)
}

// known reports whether the OD of each wire is known: else that is what is missing.
func known(s *sheet.Sheet, wires []string) bool {
	for _, id := range wires {
		if k, ok := s.Index.Wire[id]; !ok || !s.Wires[k].Dia.Known() {
			return false
		}
	}
	return true
}

// fillers is the branches with a layer of nothing but filler whose size is not given.
func fillers(s *sheet.Sheet) []Need {
	var ids []string
	for i := range s.H.Branches {
		if _, bare := BareFiller(&s.H.Branches[i]); bare {
			ids = append(ids, s.H.Branches[i].ID)
		}
	}
	return one(Need{Kind: Filler, Of: Branch, IDs: ids, Rules: []string{"layer.filler"}}, "the size of the filler in %s is not known",
		"the size of the filler in %d branches is not known: %s")
}

// BareFiller is the first layer of a branch that is nothing but filler of a size that is not given.
func BareFiller(b *model.Branch) (layer int, ok bool) {
	for k := range b.Layers {
		if l := &b.Layers[k]; len(l.Of) == 0 && l.Fillers.V > 0 && l.FillerMM.V <= 0 {
			return k, true
		}
	}
	return 0, false
}
