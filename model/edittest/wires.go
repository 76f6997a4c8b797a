package edittest

import (
	"slices"

	"pgregory.net/rapid"

	"contralay/model"
	"contralay/model/edit"
	"contralay/model/unit"
)

// end draws where a wire may end.
func end(t *rapid.T, h *model.Harness) model.Opt[string] {
	all := slices.Concat([]string{""}, edit.IDs(h, edit.Splice))
	for _, id := range edit.IDs(h, edit.Termination) {
		all = append(all, id+":1", id+":A")
	}
	text, _ := pick(t, all, "end")
	return model.Opt[string]{V: text, Set: text != ""}
}

// loose are the wires that no unit has.
func loose(h *model.Harness) []string {
	x := model.NewIndex(h)
	return slices.DeleteFunc(edit.IDs(h, edit.Wire), func(id string) bool { _, in := x.UnitOf[id]; return in })
}

var wireEdits = []Edit{
	{"add a wire", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		w := model.Wire{ID: h.NextID(rapid.SampledFrom([]string{"101", "W1"}).Draw(t, "like")), From: end(t, h), To: end(t, h),
			Spec: "AS22759/32", Size: rapid.SampledFrom([]string{"20", "22", "24"}).Draw(t, "size")}
		var along []int
		for k := range h.Branches {
			if rapid.Bool().Draw(t, "along") {
				along = append(along, k)
			}
		}
		return h.AddWire(w, along), true
	}},
	{"a wire", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		k, ok := at(t, len(h.Wires), "wire")
		if !ok {
			return h, false
		}
		from, to := end(t, h), end(t, h)
		back, _ := pick(t, edit.IDs(h, edit.Wire), "return")
		return h.EditWire(k, func(w *model.Wire) { w.From, w.To, w.Return = from, to, model.Some(back) }), true
	}},
	{"remove a wire that nothing names", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		k, ok := at(t, len(h.Wires), "wire")
		if !ok {
			return h, false
		}
		n, err := h.RemoveWire(k)
		return done(t, h, n, err)
	}},
	{"move a piece", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		var of []int // the branch of each piece that is laid
		var laid []string
		for b := range h.Branches {
			for _, l := range h.Branches[b].Layers {
				for _, id := range l.Of {
					of, laid = append(of, b), append(laid, id)
				}
			}
		}
		k, ok := at(t, len(laid), "piece")
		if !ok {
			return h, false
		}
		n, err := h.Move(of[k], laid[k], rapid.IntRange(-1, len(h.Branches[of[k]].Layers)+1).Draw(t, "to"))
		return done(t, h, n, err)
	}},
	{"make a unit", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		all := loose(h)
		if len(all) < 2 {
			return h, false
		}
		k := rapid.IntRange(0, len(all)-2).Draw(t, "first")
		return h.AddUnit(model.Unit{ID: h.NextID("C1"), Wires: slices.Clone(all[k : k+2]), Build: model.Some(model.BuildPair)}), true
	}},
	{"a unit", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		k, ok := at(t, len(h.Units), "unit")
		if !ok {
			return h, false
		}
		drain := rapid.SampledFrom([]string{"cut", "shell"}).Draw(t, "drain")
		if e := end(t, h); e.Set {
			drain = e.V
		}
		return h.EditUnit(k, func(u *model.Unit) { u.Shield, u.DrainFrom = model.Some(true), model.Some(drain) }), true
	}},
	{"a feed with a wire", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		id, ok := pick(t, edit.IDs(h, edit.Wire), "wire")
		if !ok {
			return h, false
		}
		return h.AddFeed(model.Feed{Device: model.Some(model.ProtectionBlade), Amps: model.Some[unit.Ampere](5)}, id), true
	}},
	{"put a wire on a feed", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		id, ok := pick(t, edit.IDs(h, edit.Wire), "wire")
		if !ok {
			return h, false
		}
		return h.Feed(id, rapid.IntRange(-1, len(h.Feeds)-1).Draw(t, "feed")), true
	}},
	{"remove a feed", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		k, ok := at(t, len(h.Feeds), "feed")
		if !ok {
			return h, false
		}
		return h.RemoveFeed(k), true
	}},
	{"a splice", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		k, ok := at(t, len(h.Splices), "splice")
		if !ok {
			return h, false
		}
		var along []string
		x := model.NewIndex(h)
		for _, b := range x.Meeting(h.Splices[k].At) {
			along = append(along, h.Branches[b].ID)
		}
		toward, ok := pick(t, along, "toward")
		off := length(t, 300, "offset")
		return h.EditSplice(k, func(s *model.Splice) { s.Toward, s.OffsetMM = model.Some(toward), model.Some(off) }), ok
	}},
}

var valueEdits = []Edit{
	{"a termination", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		k, ok := at(t, len(h.Terminations), "termination")
		if !ok {
			return h, false
		}
		clock := rapid.IntRange(1, 12).Draw(t, "clock")
		return h.EditTermination(k, func(x *model.Termination) { x.Clock, x.Name = model.Some(clock), model.Some("\"é\\") }), true
	}},
	{"a branch", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		k, ok := at(t, len(h.Branches), "branch")
		if !ok {
			return h, false
		}
		long, from, to := length(t, 900, "length")+1, length(t, 500, "from"), length(t, 500, "to")
		what := rapid.SampledFrom(model.CoverKinds()).Draw(t, "cover")
		return h.EditBranch(k, func(b *model.Branch) {
			b.LengthMM = long
			b.Covers = append(b.Covers, model.Cover{What: what, FromMM: model.Some(from), ToMM: model.Some(from + to)})
			b.Asides = append(b.Asides, model.Aside{Name: "kept", Letter: b.FreeLetter(), Spec: model.Some("AS22759/34"),
				Sizes: map[string]string{"22": "24"}, Spares: model.Some(len(b.Asides)), Layers: b.Layers, Covers: b.Covers})
		}), true
	}},
	{"hold a layer", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		k, ok := at(t, len(h.Branches), "branch")
		if !ok || len(h.Branches[k].Layers) == 0 {
			return h, false
		}
		l, _ := at(t, len(h.Branches[k].Layers), "layer")
		locked := rapid.Bool().Draw(t, "locked")
		return h.EditBranch(k, func(b *model.Branch) {
			b.Layers[l].Locked, b.Layers[l].Pinned = model.Some(locked), slices.Clone(b.Layers[l].Of)
		}), true
	}},
	{"a reel", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		return h.SetReel("AS22759/32", rapid.SampledFrom([]string{"20", "22"}).Draw(t, "size"), length(t, 2, "over")), true
	}},
	{"a part", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		v := length(t, 3, "wall") + 0.01
		return h.EditPart("AS23053/16 9.5", func(p *model.Part) { p.WallMM = model.Opt[unit.Millimetre]{V: v, Set: v > 1} }), true
	}},
	{"tick a step", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		key := rapid.SampledFrom([]string{"cut 101", "lay T1 0", "pin P1"}).Draw(t, "key")
		return h.EditBuild("1", func(b *model.Build) {
			b.Tick(model.Ticked{Key: key, What: model.Some(model.What{Members: []string{"101"}})})
		}), true
	}},
}
