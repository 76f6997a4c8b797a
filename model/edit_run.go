package model

import (
	"slices"

	"contralay/model/unit"
)

// AddRun puts a branch of a length from a termination or a breakout to a new breakout. It
// is a trunk where it comes from a termination, else a rail. It returns the ids of both.
func (h *Harness) AddRun(from string, length unit.Millimetre) (out *Harness, branch, breakout string) {
	letter := "R"
	if slices.ContainsFunc(h.Terminations, func(t Termination) bool { return t.ID == from }) {
		letter = "T"
	}
	n := *h
	j := Breakout{ID: h.FreeID("J")}
	n.Breakouts = append(slices.Clone(h.Breakouts), j)
	b := Branch{ID: n.FreeID(letter), From: from, To: j.ID, LengthMM: length}
	n.Branches = append(slices.Clone(h.Branches), b)
	return &n, b.ID, j.ID
}
