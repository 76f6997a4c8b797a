package edittest

import (
	"slices"

	"pgregory.net/rapid"

	"contralay/model"
	"contralay/model/edit"
	"contralay/model/unit"
)

// length draws a length in whole or in hundredths of a millimetre.
func length(t *rapid.T, most unit.Millimetre, what string) unit.Millimetre {
	return unit.Written(unit.Millimetre(rapid.Float64Range(0, float64(most)).Draw(t, what)))
}

var treeEdits = []Edit{
	{"add a leg", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		at, ok := pick(t, places(h), "place")
		if !ok {
			return h, false
		}
		n, _, _ := h.AddLeg(at, length(t, 900, "length")+1, rapid.IntRange(0, 3).Draw(t, "cavities"))
		return n, true
	}},
	{"add a leg at a station", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		k, ok := at(t, len(h.Branches), "branch")
		if !ok {
			return h, false
		}
		b := &h.Branches[k]
		n, _, err := edit.AddLegAt(h, b.ID, length(t, b.LengthMM*1.2, "station"), length(t, 900, "length"), 2)
		return done(t, h, n, err)
	}},
	{"add a branch", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		from, ok := pick(t, places(h), "from")
		if !ok {
			return h, false
		}
		with := *h // where all hangs together, only a place that is new can be joined to it
		to := h.FreeID("X")
		with.Terminations = append(slices.Clone(h.Terminations), model.Termination{ID: to})
		if rapid.Bool().Draw(t, "known") {
			with = *h
			to, _ = pick(t, places(h), "to")
		}
		n, _, err := edit.AddBranch(&with, from, to, length(t, 900, "length"))
		if err != nil {
			n = h
		}
		return done(t, h, n, err)
	}},
	{"split", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		k, ok := at(t, len(h.Branches), "branch")
		if !ok {
			return h, false
		}
		n, _, err := edit.Split(h, h.Branches[k].ID, length(t, h.Branches[k].LengthMM*1.2, "station"))
		return done(t, h, n, err)
	}},
	{"join", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		j, ok := pick(t, edit.IDs(h, edit.Breakout), "breakout")
		if !ok {
			return h, false
		}
		n, _, err := edit.Join(h, j)
		return done(t, h, n, err)
	}},
	{"hang elsewhere", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		k, ok := at(t, len(h.Branches), "branch")
		if !ok {
			return h, false
		}
		b := &h.Branches[k]
		from, _ := pick(t, []string{b.From, b.To}, "end")
		to, _ := pick(t, places(h), "place")
		n, _, err := edit.Rehang(h, b.ID, from, to)
		return done(t, h, n, err)
	}},
	{"turn round", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		id, ok := pick(t, edit.IDs(h, edit.Branch), "branch")
		if !ok {
			return h, false
		}
		n, err := edit.TurnRound(h, id)
		return done(t, h, n, err)
	}},
	{"a breakout of a termination", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		id, ok := pick(t, edit.IDs(h, edit.Termination), "termination")
		if !ok {
			return h, false
		}
		n, err := edit.ToBreakout(h, id, rapid.Bool().Draw(t, "ends may be lost"))
		return done(t, h, n, err)
	}},
	{"a termination of a breakout", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		id, ok := pick(t, edit.IDs(h, edit.Breakout), "breakout")
		if !ok {
			return h, false
		}
		n, err := edit.ToTermination(h, id)
		return done(t, h, n, err)
	}},
	{"a breakout", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		id, ok := pick(t, edit.IDs(h, edit.Breakout), "breakout")
		if !ok {
			return h, false
		}
		return edit.EditBreakout(h, id, func(b *model.Breakout) {
			b.Build, b.Transition = model.Some(rapid.SampledFrom(model.Closures).Draw(t, "closed")), model.Opt[string]{}
			b.ZoneMM = model.Some(length(t, 60, "zone"))
		}), true
	}},
	{"lay anew", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		k, ok := at(t, len(h.Branches), "branch")
		if !ok {
			return h, false
		}
		n, took := h.LayAnew([]int{k})
		return n, took > 0
	}},
}

// ids that are typed: some new, some taken, some that no id may be.
var ids = rapid.SampledFrom([]string{"P1", "J1", "J2", "T1", "S1", "101", "102", "C1", "F1", "X1", "X2", "new one", "é", "a:b", "cut",
	"shell", "",
	"bad\u202e", "bad\n", "L9", "W1", "\"q\"", "#"})

var nameEdits = []Edit{
	{"rename", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		noun, id, ok := anything(t, h)
		if !ok {
			return h, false
		}
		n, _, err := edit.Rename(h, noun, id, ids.Draw(t, "to"))
		return done(t, h, n, err)
	}},
	{"remove", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		noun, id, ok := anything(t, h)
		if !ok {
			return h, false
		}
		n, _, err := edit.Remove(h, noun, id)
		return done(t, h, n, err)
	}},
	{"remove a branch from its other end", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		k, ok := at(t, len(h.Branches), "branch")
		if !ok {
			return h, false
		}
		n, _, err := edit.RemoveBranch(h, h.Branches[k].ID, h.Branches[k].To)
		return done(t, h, n, err)
	}},
	{"rename a cavity", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		k, ok := at(t, len(h.Terminations), "termination")
		if !ok {
			return h, false
		}
		cavity, _ := pick(t, h.Terminations[k].Cavities, "cavity")
		n, err := edit.RenameCavity(h, h.Terminations[k].ID, cavity, rapid.SampledFrom([]string{"1", "2", "3", "A", "+", ""}).Draw(t, "to"))
		return done(t, h, n, err)
	}},
	{"remove a reel", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		k, ok := at(t, len(h.Reels), "reel")
		if !ok {
			return h, false
		}
		return edit.RemoveReel(h, k), true
	}},
	{"remove a part", func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
		k, ok := at(t, len(h.Parts), "part")
		if !ok {
			return h, false
		}
		return edit.RemovePart(h, h.Parts[k].ID), true
	}},
}

// anything draws a thing that has an id.
func anything(t *rapid.T, h *model.Harness) (noun edit.Noun, id string, ok bool) {
	noun = rapid.SampledFrom(edit.Nouns).Draw(t, "noun")
	id, ok = pick(t, edit.IDs(h, noun), "id")
	return noun, id, ok
}
