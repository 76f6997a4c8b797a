package edit

import (
	"fmt"
	"slices"

	"contralay/model"
	"contralay/model/unit"
)

// Split parts a branch at a new breakout so far from its from end, and returns the breakout's
// id. The first part keeps the branch's id, what was set aside and what was measured. The second
// has a new one; both have the lay-up, the surroundings, the tolerance and the bend, since no
// file says where on it a branch bends; the bends of the drawing stay where they are. Each has
// the covers that lie on it, cut at the breakout.
//
// A splice stays where its sleeve is: one that lies beyond the cut from its breakout lies at the
// new breakout then, and its wires change their way with it, in the layers too.
func Split(h *model.Harness, branch string, station unit.Millimetre) (out *model.Harness, breakout string, err error) {
	i, err := at(h, Branch, branch)
	if err != nil {
		return h, "", err
	}
	b := h.Branches[i]
	if !b.Measured() {
		return h, "", fmt.Errorf("the length of %s is not known yet: give it before you split it", branch)
	}
	rest := unit.Written(b.LengthMM - station)
	if !(station > 0) || !(station < b.LengthMM) || rest <= 0 {
		return h, "", fmt.Errorf("%s is %s mm long: split it between its ends, not %s mm from %s", branch, plain(b.LengthMM),
			plain(station), b.From)
	}
	n := *h
	j := model.Breakout{ID: h.FreeID("J")}
	n.Breakouts = append(slices.Clone(h.Breakouts), j)
	first, second := b, b
	first.To, first.LengthMM = j.ID, station
	first.Covers = covered(b.Covers, 0, station, b.LengthMM)
	first.Asides = changed(b.Asides, func(a *model.Aside) bool {
		a.Covers = covered(a.Covers, 0, station, b.LengthMM)
		return true
	})
	second.ID, second.From, second.LengthMM = n.FreeID("R"), j.ID, rest
	second.Name, second.Asides, second.AsBuilt = model.Opt[string]{}, nil, nil
	second.Layers = model.CloneLayers(b.Layers)
	second.Covers = covered(b.Covers, station, b.LengthMM, b.LengthMM)
	splitDrawing(&first, &second, &b, station, backward(h, i))
	n.Branches = append(slices.Clone(h.Branches), second)
	n.Branches[i] = first
	moved := map[string]bool{}
	n.Splices = changed(h.Splices, func(s *model.Splice) bool {
		if s.Toward.V != branch {
			return false
		}
		off := s.OffsetMM.V
		switch {
		case s.At == b.To && off < rest || s.At == b.To && off > b.LengthMM:
			s.Toward = model.Some(second.ID)
			return true
		case s.At == b.To:
			s.At, s.Toward, s.OffsetMM = j.ID, model.Some(first.ID), model.Some(unit.Written(off-rest))
		case s.At == b.From && off > station && off <= b.LengthMM:
			s.At, s.Toward, s.OffsetMM = j.ID, model.Some(second.ID), model.Some(unit.Written(off-station))
		default:
			return false
		}
		moved[s.ID] = true
		return true
	})
	if len(moved) > 0 {
		follow(h, &n, moved, first.ID, second.ID)
	}
	return &n, j.ID, nil
}

// follow lays the wires of splices that moved the way they go now: a piece leaves the layers of
// a part that it no longer runs through, and comes into the outermost layer of one that it runs
// through since.
func follow(was, is *model.Harness, moved map[string]bool, parts ...string) {
	a, b := model.NewIndex(was), model.NewIndex(is)
	runs := func(x *model.Index, w string, branch string) bool {
		k, known := x.Wire[w]
		if !known {
			return false
		}
		from, to, ok := x.Places(&x.H.Wires[k])
		path, led := x.Between(from, to)
		at, here := x.Branch[branch]
		return ok && led && here && slices.Contains(path, at)
	}
	pieces := map[string][]string{}
	var order []string
	for i := range is.Wires {
		w := &is.Wires[i]
		if !moved[w.From.V] && !moved[w.To.V] {
			continue
		}
		id, wires := w.ID, []string{w.ID}
		if u, in := b.UnitOf[w.ID]; in {
			id, wires = is.Units[u].ID, is.Units[u].Wires
		}
		if pieces[id] == nil {
			pieces[id], order = wires, append(order, id)
		}
	}
	for _, part := range parts {
		k := b.Branch[part]
		br := is.Branches[k]
		if len(br.Layers) == 0 {
			continue
		}
		br.Layers = model.CloneLayers(br.Layers)
		for _, id := range order {
			through := func(x *model.Index, branch string) bool {
				return slices.ContainsFunc(pieces[id], func(w string) bool { return runs(x, w, branch) })
			}
			laid := slices.ContainsFunc(br.Layers, func(l model.Layer) bool { return slices.Contains(l.Of, id) })
			before, now := through(a, parts[0]), through(b, part)
			switch {
			case laid && before && !now:
				br.Take(id)
			case !laid && !before && now && len(br.Layers) > 0:
				br.AddTo(len(br.Layers)-1, id)
			}
		}
		is.Branches[k] = br
	}
}

// covered is the covers of a part of a branch, from one station to another, stations counted
// from its own beginning; what runs on over the cut is left to stop where it would by itself.
func covered(all []model.Cover, from, to, length unit.Millimetre) []model.Cover {
	var out []model.Cover
	for _, c := range all {
		if c.FromMM.Set && c.FromMM.V >= to || c.ToMM.Set && c.ToMM.V <= from {
			continue
		}
		switch {
		case !c.FromMM.Set:
		case from > 0 && c.FromMM.V <= from:
			c.FromMM = model.Opt[unit.Millimetre]{}
		case from > 0:
			c.FromMM.V = unit.Written(c.FromMM.V - from)
		}
		switch {
		case !c.ToMM.Set:
		case to < length && c.ToMM.V >= to:
			c.ToMM = model.Opt[unit.Millimetre]{}
		case from > 0:
			c.ToMM.V = unit.Written(c.ToMM.V - from)
		}
		out = append(out, c)
	}
	return out
}
