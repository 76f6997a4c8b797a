package sheet

import (
	"slices"
)

// Reuse says what a sheet has in common with the one before it, so that a phase may take
// over what it found then. What each phase compares stands beside it, in its reuse.go;
// calc/reuse.go asks them in turn. The zero value holds nothing in common.
type Reuse struct {
	Prior    *Sheet // nil once the sheet is built
	Places   bool   // the harness around its wires is as before: rules, reels, ends, splices, units, the tree
	Ids      bool   // and the wires are those of before, in their order
	All      bool   // and none of them lies otherwise
	Wires    []bool // each lies as before
	Branches []bool // each is as before, and so is every wire that has a say in it
	Planned  bool   // the proposals are those of before
}

// Shares reports whether two lists are one.
func Shares[T any](a, b []T) bool {
	return len(a) == len(b) && (len(a) == 0 || &a[0] == &b[0])
}

// Branch reports whether branch i is as in the prior sheet.
func (r *Reuse) Branch(i int) bool { return r.Branches != nil && r.Branches[i] }

// Wire reports whether wire k lies as in the prior sheet.
func (r *Reuse) Wire(k int) bool { return r.Ids && r.Wires[k] }

// Kept takes over what was said of a part of the prior sheet.
func (s *Sheet) Kept(said []Snag) { s.Snags = append(s.Snags, said...) }

// Unsay forgets what was said from a mark on: of a trial that is put back.
func (s *Sheet) Unsay(mark int) { s.Snags = s.Snags[:mark] }

// Since is what was said from a mark on, to be kept.
func (s *Sheet) Since(mark int) []Snag {
	if mark == len(s.Snags) {
		return nil
	}
	return slices.Clone(s.Snags[mark:])
}
