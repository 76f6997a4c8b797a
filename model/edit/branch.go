package edit

import (
	"fmt"
	"slices"
	"strconv"

	"contralay/model"
	"contralay/model/unit"
)

// AddBranch puts a branch of a length, mm, between two places that nothing joins yet, and returns its id;
// to is "" for a new breakout. A length of 0 is not measured yet. It is a leg where it ends in a
// termination, a trunk where it only comes from one, else a rail.
func AddBranch(h *model.Harness, from, to string, length unit.Millimetre) (out *model.Harness, branch string, err error) {
	if _, err := place(h, from); err != nil {
		return h, "", err
	}
	if to != "" {
		if err := mayJoin(h, from, to); err != nil {
			return h, "", err
		}
	}
	if !(length >= 0) {
		return h, "", fmt.Errorf("a branch cannot be %s mm long: 0 where it is not measured yet, or more", plain(length))
	}
	n := *h
	if to == "" {
		to = h.FreeID("J")
		n.Breakouts = append(slices.Clone(h.Breakouts), model.Breakout{ID: to})
	}
	ends := func(id string) bool { return slices.Contains(IDs(h, Termination), id) }
	letter := "R"
	switch {
	case ends(to):
		letter = "L"
	case ends(from):
		letter = "T"
	}
	b := model.Branch{ID: n.FreeID(letter), From: from, To: to, LengthMM: length}
	n.Branches = append(slices.Clone(h.Branches), b)
	return &n, b.ID, nil
}

// mayJoin says why no branch can run between two places, if none can.
func mayJoin(h *model.Harness, from, to string) error {
	if _, err := place(h, from); err != nil {
		return err
	}
	if _, err := place(h, to); err != nil {
		return err
	}
	if from == to {
		return fmt.Errorf("a branch cannot run from %s to itself: take two different places", from)
	}
	if _, joined := model.NewIndex(h).Between(from, to); joined {
		return fmt.Errorf("%s and %s are joined already, and a second way would close a loop: take a place that nothing joins to %s",
			from, to, from)
	}
	return nil
}

// A Leg is a branch that was hung on the station of another: its id, and those of the new
// places at both its ends.
type Leg struct{ Breakout, Branch, Termination string }

// AddLegAt hangs a leg of a length on a station of a branch, so far from its from end: the
// branch is split there, and the leg runs from the new breakout to a new termination with some
// cavities, numbered from 1.
func AddLegAt(h *model.Harness, branch string, station, length unit.Millimetre, cavities int) (*model.Harness, Leg, error) {
	if !(length >= 0) {
		return h, Leg{}, fmt.Errorf("a branch cannot be %s mm long: 0 where it is not measured yet, or more", plain(length))
	}
	out, j, err := Split(h, branch, station)
	if err != nil {
		return h, Leg{}, err
	}
	out, leg, termination := out.AddLeg(j, length, cavities)
	return out, Leg{j, leg, termination}, nil
}

// Rehang takes the end of a branch that is at one place to another. What hangs on the branch
// comes along; a splice whose sleeve lay along it from the old place lies at the centre of its
// breakout then.
func Rehang(h *model.Harness, branch, from, to string) (out *model.Harness, says []string, err error) {
	i, err := at(h, Branch, branch)
	if err != nil {
		return h, nil, err
	}
	b := h.Branches[i]
	if from != b.From && from != b.To {
		return h, nil, fmt.Errorf("%s does not end at %q: it runs from %s to %s", branch, from, b.From, b.To)
	}
	if _, err := place(h, to); err != nil {
		return h, nil, err
	}
	if from == to {
		return h, nil, nil
	}
	x := model.NewIndex(h)
	if beyond(x, i, from)[to] {
		return h, nil, fmt.Errorf("%s cannot hang on %s, which hangs on it: that would close a loop. Allowed: %s", branch, to,
			few(MayHang(h, branch, from)))
	}
	n := *h
	n.Branches = slices.Clone(h.Branches)
	if b.From == from {
		b.From = to
	} else {
		b.To = to
	}
	var drawn []string
	if b.LeavesDeg.Set && (from == h.Branches[i].To) == backward(h, i) { // the turn was one against what came to the old place
		b.LeavesDeg = model.Opt[unit.Degree]{}
		drawn = []string{branch + " leaves " + to + " on the drawing by rule now"}
	}
	n.Branches[i] = b
	n.Splices = changed(h.Splices, func(s *model.Splice) bool {
		if s.At != from || s.Toward.V != branch {
			return false
		}
		s.Toward, s.OffsetMM = model.Opt[string]{}, model.Opt[unit.Millimetre]{}
		return true
	})
	return &n, append(Lost(h, &n), drawn...), nil
}

// MayHang is the places where the end of a branch that is at one place could hang, breakouts
// first, in the order of the file: those that do not hang on the branch.
func MayHang(h *model.Harness, branch, from string) []string {
	i, err := at(h, Branch, branch)
	if err != nil || from != h.Branches[i].From && from != h.Branches[i].To {
		return nil
	}
	far := beyond(model.NewIndex(h), i, from)
	return slices.DeleteFunc(slices.Concat(IDs(h, Breakout), IDs(h, Termination)), func(p string) bool { return p == from || far[p] })
}

// TurnRound exchanges the ends of a branch, and turns everything that counts from its from end:
// where its covers start and stop, and where the drawing bends it. Its layers stay: a hand is the same from both ends.
func TurnRound(h *model.Harness, branch string) (*model.Harness, error) {
	i, err := at(h, Branch, branch)
	if err != nil {
		return h, err
	}
	n := *h
	n.Branches = slices.Clone(h.Branches)
	n.Branches[i] = turned(h.Branches[i])
	return &n, nil
}

// turned is a branch seen from its other end.
func turned(b model.Branch) model.Branch {
	b.From, b.To = b.To, b.From
	b.Vias = turnedBends(&b)
	station := func(v model.Opt[unit.Millimetre]) model.Opt[unit.Millimetre] {
		if v.Set {
			v.V = max(0, unit.Written(b.LengthMM-v.V))
		}
		return v
	}
	round := func(all []model.Cover) []model.Cover {
		return changed(all, func(c *model.Cover) bool {
			c.FromMM, c.ToMM = station(c.ToMM), station(c.FromMM)
			return c.FromMM.Set || c.ToMM.Set
		})
	}
	b.Covers = round(b.Covers)
	b.Asides = changed(b.Asides, func(a *model.Aside) bool {
		a.Covers = round(a.Covers)
		return len(a.Covers) > 0
	})
	return b
}

// plain is a figure as an error has it.
func plain[Q ~float64](v Q) string { return strconv.FormatFloat(float64(v), 'f', -1, 64) }
