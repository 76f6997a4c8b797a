package model

import (
	"fmt"
	"slices"
	"strconv"

	"contralay/model/unit"
)

// Hang puts a termination of the harness on a breakout, or on another termination, by a branch
// of its own, and returns the branch's id. A length of 0 is one that is not measured yet. The
// error says what stands in the way; nothing is changed then.
func (h *Harness) Hang(at, termination string, length unit.Millimetre) (*Harness, string, error) {
	isTermination := func(id string) bool {
		return slices.ContainsFunc(h.Terminations, func(t Termination) bool { return t.ID == id })
	}
	isBreakout := slices.ContainsFunc(h.Breakouts, func(b Breakout) bool { return b.ID == at })
	tree := joined{}
	for i := range h.Branches {
		tree.join(h.Branches[i].From, h.Branches[i].To)
	}
	switch {
	case !isTermination(termination):
		return h, "", fmt.Errorf("there is no termination %q to hang", termination)
	case !isBreakout && !isTermination(at):
		return h, "", fmt.Errorf("there is no breakout and no termination %q to hang %s on", at, termination)
	case !(length >= 0):
		return h, "", fmt.Errorf("a branch cannot be %s mm long: 0 where it is not measured yet, or more",
			strconv.FormatFloat(float64(length), 'f', -1, 64))
	case at == termination || !tree.join(at, termination):
		return h, "", fmt.Errorf("%s and %s are joined already: a second way would close a loop", at, termination)
	}
	n := *h
	b := Branch{ID: h.FreeID("L"), From: at, To: termination, LengthMM: length}
	n.Branches = append(slices.Clone(h.Branches), b)
	return &n, b.ID, nil
}
