package sheet

import (
	"slices"
)

// same is what a sheet has in common with the one before it.
type same struct {
	Prior    *Sheet
	Places   bool   // rules, reels, catalogue, terminations, breakouts, splices, units, and the tree of branches
	Ids      bool   // and the wires are those of before, in their order
	All      bool   // and none of them lies otherwise
	Wires    []bool // each lies as before: ends, size, colour, role
	Branches []bool // each is as before, and so is every wire that runs through it
	Planned  bool   // the proposals are those of before
}

// Shares reports whether two lists are one.
func Shares[T any](a, b []T) bool {
	return len(a) == len(b) && (len(a) == 0 || &a[0] == &b[0])
}

// Branch reports whether branch i is as in the prior sheet.
func (m *same) Branch(i int) bool { return m.Branches != nil && m.Branches[i] }

// Wire reports whether wire k lies as in the prior sheet.
func (m *same) Wire(k int) bool { return m.Ids && m.Wires[k] }

// Kept takes over what was said of a part of the prior sheet.
func (s *Sheet) Kept(said []Snag) { s.Snags = append(s.Snags, said...) }

// Since is what was said from a mark on, to be kept.
func (s *Sheet) Since(mark int) []Snag {
	if mark == len(s.Snags) {
		return nil
	}
	return slices.Clone(s.Snags[mark:])
}
